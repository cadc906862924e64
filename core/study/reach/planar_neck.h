#pragma once

#include <string>

#include "core/range/scenario.h"
#include "core/study/reach/sagittal_plane.h"

namespace zyga::study {

/// A joint of a chain that moves in one plane: where it turns with all angles zero, m, and its range, rad,
/// counter-clockwise positive. The range need not hold zero.
struct PlanarJoint {
  Eigen::Vector2d centre = Eigen::Vector2d::Zero();
  double min = 0;
  double max = 0;
};

/// The neck and head of a specimen as a chain in the neck's plane: only dorsiflexion, everything else zero.
struct PlanarNeck {
  SagittalPlane plane;
  std::vector<kinematics::JointIndex> joints;     ///< base first; the head's joints are the last ones
  std::vector<PlanarJoint> chain;                 ///< the same joints
  Eigen::Vector2d tip = Eigen::Vector2d::Zero();  ///< snout (or head's joint) with all angles zero
  kinematics::Pose neutral;                       ///< the scenario's pose with neck and head neutral
  std::vector<std::string> unjudged;              ///< joints that nothing vouches for; they have no range here
  double outOfPlane = 0;                          ///< m, how far the neutral neck leaves its plane
};

/// Throws reason::Failure (kNoNeck) for a specimen without a neck.
PlanarNeck planarNeck(const range::Scenario& scenario);

/// The angles, one a joint and each inside its range, that bring the tip farthest in a direction: of all combinations,
/// found by working from the tip inwards over the slopes that each link may take, and settled to rounding.
std::vector<double> farthestAngles(const std::vector<PlanarJoint>& chain, const Eigen::Vector2d& tip,
                                   const Eigen::Vector2d& direction);

/// Where the tip is with these angles.
Eigen::Vector2d tipAt(const std::vector<PlanarJoint>& chain, Eigen::Vector2d tip, const std::vector<double>& angles);

}  // namespace zyga::study
