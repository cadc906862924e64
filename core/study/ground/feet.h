#pragma once

#include <Eigen/Core>
#include <vector>

#include "core/kinematics/feet.h"

namespace zyga::study {

/// One foot of a posed animal, in the world, m.
struct StandingFoot {
  kinematics::Foot foot;
  std::vector<Eigen::Vector3d> soles;                ///< lowest points of the bones it stands on, pads included
  Eigen::Vector2d centre = Eigen::Vector2d::Zero();  ///< of the area its soles span, seen from above
  double lowest = 0;                                 ///< height of its lowest sole over the ground

  /// Whether it touches the ground or has sunk into it.
  bool planted() const { return lowest < kinematics::kOnGround; }
};

/// The feet that the specimen has, in the order of kinematics::kFeet.
std::vector<StandingFoot> feetOf(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB);

/// Points at which something other than a foot may rest on the ground: undersides of the tail's bones that are within
/// kinematics::kOnGround of it, m, world.
std::vector<Eigen::Vector3d> tailRests(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB);

}  // namespace zyga::study
