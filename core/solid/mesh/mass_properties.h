#pragma once

#include <Eigen/Core>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// Of the volume a mesh encloses, filled with uniform stuff of density 1, in powers of the mesh's unit. A mesh with
/// holes is closed by the cone over each hole from the middle of its box: an estimate.
struct MassProperties {
  double area = 0;
  double volume = 0;  ///< positive when triangles face outwards
  Eigen::Vector3d centroid = Eigen::Vector3d::Zero();
  /// Second moments about the principal axes through the centroid, integral of the squared distance from the plane
  /// across each axis divided by the volume, largest first: the bone is longest along axis 0.
  Eigen::Vector3d variances = Eigen::Vector3d::Zero();
  Eigen::Matrix3d axes = Eigen::Matrix3d::Identity();  ///< columns, unit, right-handed
};

/// Exact integrals over tetrahedra between a reference point and each triangle. Where the volume is (nearly) zero, as
/// of an open sheet, centroid and axes are those of the surface instead.
MassProperties massProperties(const TriangleMesh& mesh);

}  // namespace zyga::solid
