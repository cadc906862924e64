#pragma once

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// The mesh with each open border filled by a fan of triangles around the border's middle: enough to tell inside from
/// outside, not to look at. Normals and occlusion are dropped. Borders that touch themselves are filled loop by loop;
/// edges with more than two triangles stay, so the result need not be closed (`examine` tells).
TriangleMesh withHolesClosed(const TriangleMesh& mesh);

}  // namespace zyga::solid
