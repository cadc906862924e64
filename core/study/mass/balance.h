#pragma once

#include <optional>
#include <vector>

#include "core/study/ground/standing_feet.h"
#include "core/study/mass/body_segments.h"

namespace zyga::study {

/// What share of the weight a tail on the ground carries, from the balance of moments seen from the side. Feet and tail
/// are long, and where along them the load lies is not known: hence from the least to the most.
struct TailLoad {
  double least = 0, most = 0;
  /// With the load in the middle of the hind feet and of what the tail rests on; none where other feet carry as well,
  /// or where the weight does not lie between those two.
  std::optional<double> middle;
};

/// A stretch along the animal, m.
struct Along {
  double min = 0, max = 0;
};

/// Of loads that only press, anywhere on the two stretches; none where the centre of mass lies beyond both, so that the
/// animal tips. Its `middle` is left empty.
std::optional<TailLoad> tailLoadOf(double centre, const Along& feet, const Along& tail);

/// Whether an animal would stay up as it stands: its centre of mass against what it stands on. An estimate, like the
/// mass it rests on.
struct Balance {
  BodyMass body;
  std::vector<kinematics::Foot> planted;
  bool onTail = false;                   ///< the tail touches the ground as well
  std::vector<Eigen::Vector2d> polygon;  ///< around all that touches the ground, counter-clockwise, m; world
  /// Distance of the centre of mass, seen from above, from the nearest edge: positive inside, m. Absent when nothing
  /// touches the ground.
  std::optional<double> margin;
  Eigen::Vector2d p_WNearest = Eigen::Vector2d::Zero();  ///< the point of the polygon's edge nearest to the centre
  /// Share of the weight that the fore feet carry: (centre - hind feet) / (fore feet - hind feet) along the animal;
  /// absent unless a hind and a fore foot are planted and nothing else. Below 0 or above 1: it tips.
  std::optional<double> foreShare;
  /// As `margin`, over the planted feet alone, as if the tail carried nothing. Absent where no foot is planted.
  std::optional<double> feetMargin;
  std::optional<TailLoad> tailLoad;  ///< where the tail and a foot touch the ground

  bool hasFeet = true;  ///< a column alone has none, and stands on nothing

  bool inside() const { return margin && *margin >= 0; }
};

/// (x of the centre of mass - x of the hind feet) / base, all in m along one line.
double foreShareOf(double centre, double hindFeet, double foreFeet);

/// Of the scenario's pose; `segments` are bodySegments of the animal.
Balance balanceOf(const range::Scenario& scenario, const std::vector<BodySegment>& segments,
                  const Densities& densities);

/// Which way something lies, as the animal faces.
enum class Way { Ahead, Behind, Left, Right };

/// Inside, where the nearest edge lies from the centre of mass; outside, where the centre of mass lies from the
/// polygon. `forward_W`: where the animal faces, of any length.
Way nearestEdge(const Balance& balance, const Eigen::Vector2d& forward_W);

}  // namespace zyga::study
