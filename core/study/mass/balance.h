#pragma once

#include <optional>
#include <vector>

#include "core/study/ground/standing_feet.h"
#include "core/study/mass/body_segments.h"

namespace zyga::study {

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
