#pragma once

#include "core/kinematics/placement.h"

namespace zyga::kinematics {

/// How one shoulder blade lies on the ribs.
struct BladePlace {
  double slope = 0;  ///< against the horizontal as seen from the animal's side, rad; the lower end forward
  double slide = 0;  ///< along the ribs from where the specimen's builder laid it, up positive, m
};

/// Slope of a blade's long axis (z of its frame) against the horizontal in the upright plane of the animal's heading,
/// rad.
double bladeSlope(const Eigen::Matrix3d& R_WBlade, const Eigen::Matrix3d& R_WRoot);

/// NaN for a specimen without this blade. `side` is left or right.
BladePlace bladePlace(const anatomy::Specimen& specimen, const Pose& pose, const Placement& X_WB, anatomy::Side side);

/// The pose with the blade at this slope and slide, as far as the typed range of its joint allows; the forelimb goes
/// with it. The trunk stays.
Pose placeBlade(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                anatomy::Side side, const BladePlace& wanted);

/// What the typed range allows in the present pose: slopes (rad) and slides (m), least and most.
struct BladeRange {
  anatomy::AngleLimits slope, slide;
};
BladeRange bladeRange(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                      anatomy::Side side);

}  // namespace zyga::kinematics
