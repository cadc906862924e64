#pragma once

#include <Eigen/Core>
#include <array>
#include <vector>

#include "core/solid/mesh/triangle_mesh.h"
#include "core/task/task.h"

namespace zyga::solid {

/// Nearest point of a triangle (Ericson 2005, Real-Time Collision Detection, 5.1.5).
Eigen::Vector3d nearestOn(const std::array<Eigen::Vector3d, 3>& triangle, const Eigen::Vector3d& p);

/// The greatest of the distances of the points from the surface, in the mesh's unit: how far at most a surface is off
/// that stands for theirs (the Hausdorff distance, one way). 0 without points, infinite without triangles. A point is
/// asked only until it is known not to be the farthest (early break: Taha & Hanbury 2015, IEEE Trans. Pattern Anal.
/// Mach. Intell. 37:2153), by a tree of boxes. The least that is known so far when cancelled.
double greatestDistance(const std::vector<Eigen::Vector3f>& points, const TriangleMesh& surface,
                        const task::Task& task = {});

}  // namespace zyga::solid
