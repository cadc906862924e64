#pragma once

#include "core/kinematics/limb_reach.h"
#include "core/range/scenario.h"
#include "core/study/ground/standing_feet.h"
#include "core/study/ground/trackway_ground.h"

namespace zyga::study {

/// How a foot of the animal meets the trackway.
struct FootFit {
  Foot foot = Foot::LeftHind;
  std::optional<std::size_t> print;                     ///< the nearest print of this foot, into LaidTrackway::prints
  Eigen::Vector2d p_WCentre = Eigen::Vector2d::Zero();  ///< of the sole
  Eigen::Vector2d miss =
      Eigen::Vector2d::Zero();  ///< from the print to the foot: ahead and to the left of its heading, m
  double distance() const { return miss.norm(); }
};

/// Each foot of the animal against the nearest print of its own kind and side.
std::vector<FootFit> fitFeet(const std::vector<StandingFoot>& feet, const std::vector<PlacedPrint>& prints);

/// The trackway moved, not turned, to where its prints lie best under these feet: least sum of squared misses.
Trackway movedUnder(const Trackway& trackway, const std::vector<StandingFoot>& feet);

/// What the legs have to do to bring every foot that has a print flat onto the middle of it; a foot keeps its heading.
std::vector<kinematics::LegTask> tasksOnto(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                                           const std::vector<FootFit>& fits, const std::vector<PlacedPrint>& prints);

/// A pose with its feet on the prints, as well as its legs can.
struct SteppedOn {
  kinematics::FeetAnswer feet;
  double lowered = 0;  ///< how far the trunk had to come down for feet apart, m
};

/// Sets every foot that has a print onto it. Where the legs are too short for that the trunk comes down as far as
/// needed and at most by `maxLowered` (m); where that is not enough, the pose in which the worst foot misses least.
SteppedOn stepOnto(const range::Scenario& scenario, const std::vector<PlacedPrint>& prints, double maxLowered);

}  // namespace zyga::study
