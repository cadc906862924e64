#pragma once

#include <optional>
#include <vector>

#include "core/range/scenario.h"
#include "core/reason/reason.h"
#include "core/task/task.h"

namespace zyga::study {

/// There is no skull whose snout could reach anything.
inline constexpr reason::Id kNoSnout{"study.no-snout", 0};

/// The space that the snout reaches with neck and head free to bend, swing and twist inside their ranges.
struct ReachSpace {
  Eigen::Vector3d p_WBase = Eigen::Vector3d::Zero();  ///< rays are sent from here: the base of the neck, m
  double volume = 0;                                  ///< m3, over the ground
  double volumeWithGround = 0;                        ///< m3, as if there were no ground
  double share = 0;  ///< of all directions from the base, in how many there is a place that is reached
  int rays = 0;
  double precision = 0;  ///< m, along each ray
  /// The strip on the ground z = 0, world, m: for each bearing from the point under the neck's base where the reach
  /// begins and where it ends. Bearings follow each other from right to left; those without reach are left out.
  struct Strip {
    double bearing = 0;  ///< rad, left of where the neck points in neutral
    Eigen::Vector2d from = Eigen::Vector2d::Zero(), to = Eigen::Vector2d::Zero();
  };
  std::vector<Strip> strip;
  double stripArea = 0;  ///< m2
};

struct ReachSpaceOptions {
  double spacing = 0.18;    ///< rad between neighbouring rays
  double precision = 0.02;  ///< m, at which a ray counts as arrived
  int bearings = 72;        ///< of the strip on the ground, in a full turn
  unsigned threads = 0;     ///< 0: all cores; the answer is the same
};

/// Each ray from the neck's base is walked from its far end inwards and from the base outwards by as much as the
/// nearest reachable point is away, until it is there: what lies in between is taken as reached. The nearest point
/// comes from kinematics::reach inside the bones' coupled ranges, which may stop short of it, so that the space is told
/// rather too small than too large. Throws reason::Failure (kNoNeck, kNoSnout) for a specimen without neck or skull.
/// Nothing when cancelled.
std::optional<ReachSpace> reachSpace(const range::Scenario& scenario, const ReachSpaceOptions& options = {},
                                     const task::Task& task = {});

}  // namespace zyga::study
