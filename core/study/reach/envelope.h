#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/study/reach/reach_space.h"
#include "core/study/reach/sagittal_plane.h"

namespace zyga::study {

/// A stretch of ground, m ahead of the neck's base.
struct GroundStretch {
  double from = 0;
  double to = 0;
};

/// What the snout reaches with every joint of neck and head inside its range, the rest of the animal as it stands.
struct Envelope {
  SagittalPlane plane;
  /// Closed outlines in the plane's coordinates, m: the neck only goes up and down. Outer ones counter-clockwise, holes
  /// clockwise, largest first. What lies under the ground is part of them.
  std::vector<Line> outlines;
  double area = 0;       ///< m2, inside the outlines and over the ground
  double precision = 0;  ///< m, of the outlines
  /// Points of the outlines, m; farthest is the farthest ahead, lowest may be under the ground.
  Eigen::Vector2d highest = Eigen::Vector2d::Zero(), lowest = Eigen::Vector2d::Zero(),
                  farthest = Eigen::Vector2d::Zero();
  std::vector<GroundStretch> ground;  ///< where the outline crosses z = 0; empty when the snout stays above it
  std::optional<ReachSpace> space;    ///< neck swung sideways and twisted too; none when it was not asked for

  Line neck;                          ///< neckLine of the present pose
  std::vector<Line> body;             ///< bodyLines of the present pose
  std::optional<double> foreFeet;     ///< foreFeetAhead
  std::vector<std::string> unjudged;  ///< joints that nothing vouches for; they stay as the neutral neck has them
  double outOfPlane = 0;       ///< m, how far the neutral neck leaves its plane: an uneven neck is drawn flattened
  bool contactJudged = false;  ///< bones that enter each other ended ranges too
};

struct EnvelopeOptions {
  int rings = 600;    ///< of the plane's region; its outlines are good to about reach / rings
  bool space = true;  ///< also the space that the snout reaches sideways, which takes much longer
  ReachSpaceOptions reach;
};

/// Throws reason::Failure (kNoNeck, kNoSnout) for a specimen without neck or skull. Nothing when cancelled. About a
/// second, and with the space some twenty seconds on one core.
std::optional<Envelope> envelope(const range::Scenario& scenario, const EnvelopeOptions& options = {},
                                 const task::Task& task = {});

}  // namespace zyga::study
