#pragma once

#include <span>

#include "core/solid/facets/face_surface.h"

namespace zyga::solid {

/// The plane in which surfaces are their own mirror image.
struct MidPlane {
  Eigen::Vector3d point = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal = Eigen::Vector3d::UnitY();  ///< unit, either way
  /// How far the mirrored surfaces lie from what is there, root mean square of the nearer four fifths, in the meshes'
  /// unit.
  double residual = 0;

  double side(const Eigen::Vector3d& p) const { return normal.dot(p - point); }
  Eigen::Vector3d mirrored(const Eigen::Vector3d& p) const { return p - 2 * side(p) * normal; }
  Eigen::Vector3d mirroredDirection(const Eigen::Vector3d& d) const { return d - 2 * normal.dot(d) * normal; }
};

/// The mid-plane of bones that lie in articulation. Mirrored points are laid on the nearest of the surface and the
/// plane is solved anew until it settles (as iterated closest points do: Besl & McKay 1992, IEEE Trans. Pattern Anal.
/// Mach. Intell. 14:239), from the principal planes of the surfaces; the fifth that fits worst, broken or bent parts,
/// is left out each time. Planes across `along` (unit: the way the column runs) are not looked for. The first of two
/// planes that fit as well is taken, which makes the answer always the same.
MidPlane findMidPlane(std::span<const FaceSurface* const> surfaces, const Eigen::Vector3d& along);

}  // namespace zyga::solid
