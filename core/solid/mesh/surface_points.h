#pragma once

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// Points of the mesh, corners first: gaps are no wider than about `spacing` (m), and of points nearer to each other
/// than about half of that one is left.
std::vector<Eigen::Vector3f> pointsOver(const TriangleMesh& mesh, float spacing);

}  // namespace zyga::solid
