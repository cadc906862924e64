#pragma once

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// Makes one vertex of all that stand at the very same place; triangles follow. Returns how many were taken away.
std::size_t weldSamePlace(TriangleMesh& mesh);

/// Joins those of the given vertices that lie nearer to each other than `distance`: each to the first such one. The
/// joined ones stay in the list, unused. Returns how many were joined.
std::size_t weldNear(TriangleMesh& mesh, const std::vector<std::uint32_t>& vertices, float distance);

/// Takes away vertices that no triangle uses; normals and occlusion are not looked after. Returns how many.
std::size_t dropUnused(TriangleMesh& mesh);

/// The mesh with each open border filled by a fan of triangles around the border's middle: enough to tell inside from
/// outside, not to look at. Normals and occlusion are dropped. Borders that touch themselves are filled loop by loop;
/// edges with more than two triangles stay, so the result need not be closed (`examine` tells).
TriangleMesh withHolesClosed(const TriangleMesh& mesh);

}  // namespace zyga::solid
