#pragma once

#include <Eigen/Core>
#include <vector>

#include "core/kinematics/feet.h"
#include "core/reason/reason.h"

namespace zyga::study {

/// "foot.left-hind", for reasons that name a foot.
constexpr reason::Term termOf(kinematics::Foot foot) {
  switch (foot) {
    case kinematics::Foot::LeftHind:
      return {"foot.left-hind"};
    case kinematics::Foot::LeftFore:
      return {"foot.left-fore"};
    case kinematics::Foot::RightHind:
      return {"foot.right-hind"};
    case kinematics::Foot::RightFore:
      break;
  }
  return {"foot.right-fore"};
}

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
