#pragma once

#include <vector>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// A connected part of a surface.
struct FacingPatch {
  std::vector<std::uint32_t> triangles;
  Eigen::Vector3d middle = Eigen::Vector3d::Zero();  ///< of its area
  double area = 0;
};

/// Where bones that were scanned in articulation meet: the parts of `mesh` that look at `other` (normals more than 120
/// degrees apart) from less than `reach` away, middle to middle of triangles; connected over shared vertices, largest
/// first. Both meshes in the same axes and unit.
std::vector<FacingPatch> facingPatches(const TriangleMesh& mesh, const TriangleMesh& other, double reach);

}  // namespace zyga::solid
