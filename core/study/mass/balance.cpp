#include "core/study/mass/balance.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/study/mass/convex_hull.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;

/// Soles this much higher than the lowest one of a planted foot are off the ground, m. Program default, no source.
constexpr double kRaised = 0.05;

void addSoles(std::vector<Vector2d>& points, const StandingFoot& foot) {
  for (const auto& sole : foot.soles) {
    if (sole.z() < foot.lowest + kRaised) points.emplace_back(sole.head<2>());
  }
}

Vector2d nearestOn(const Vector2d& a, const Vector2d& b, const Vector2d& p) {
  const Vector2d edge = b - a;
  const double length = edge.squaredNorm();
  return length > 0 ? Vector2d(a + std::clamp((p - a).dot(edge) / length, 0.0, 1.0) * edge) : a;
}

/// Distance of the centre from the nearest edge, positive inside, m; none without corners. `nearest`: the point of that
/// edge.
std::optional<double> marginIn(const std::vector<Vector2d>& corners, const Vector2d& centre, Vector2d& nearestOf) {
  double least = std::numeric_limits<double>::infinity();
  bool inside = corners.size() >= 3;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Vector2d &a = corners[i], &b = corners[(i + 1) % corners.size()];
    const Vector2d nearest = nearestOn(a, b, centre);
    if ((nearest - centre).norm() < least) {
      least = (nearest - centre).norm();
      nearestOf = nearest;
    }
    const Vector2d edge = b - a, way = centre - a;
    inside = inside && edge.x() * way.y() - edge.y() * way.x() >= 0;
  }
  if (corners.empty()) return std::nullopt;
  return inside ? least : -least;
}

Along stretchOf(const std::vector<Vector2d>& points, const Vector2d& forward) {
  Along along{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  for (const Vector2d& point : points) {
    along.min = std::min(along.min, point.dot(forward));
    along.max = std::max(along.max, point.dot(forward));
  }
  return along;
}

double meanAlong(const std::vector<Vector2d>& points, const Vector2d& forward) {
  double sum = 0;
  for (const Vector2d& point : points) sum += point.dot(forward);
  return sum / static_cast<double>(points.size());
}

/// What a tail that rests on these points carries beside feet that stand on those.
std::optional<TailLoad> tailLoadOn(const std::vector<StandingFoot>& feet, const std::vector<Vector2d>& soles,
                                   const std::vector<Vector2d>& rests, const Vector2d& centre,
                                   const Vector2d& forward) {
  const double at = centre.dot(forward);
  auto load = tailLoadOf(at, stretchOf(soles, forward), stretchOf(rests, forward));
  if (!load) return load;
  std::vector<Vector2d> middles;
  for (const auto& foot : feet) {
    if (!foot.planted()) continue;
    if (isFore(foot.foot)) return load;
    middles.push_back(foot.centre);
  }
  const double foot = meanAlong(middles, forward), tail = meanAlong(rests, forward);
  const double share = std::abs(foot - tail) > 1e-6 ? (foot - at) / (foot - tail) : -1;
  if (share >= 0 && share <= 1) load->middle = share;
  return load;
}

/// Along the line from the middle of the hind to the middle of the fore feet.
std::optional<double> foreShareOn(const std::vector<StandingFoot>& feet, const Vector2d& centre) {
  std::array<Vector2d, 2> sums{Vector2d::Zero(), Vector2d::Zero()};
  std::array<int, 2> counts{};
  for (const auto& foot : feet) {
    if (!foot.planted()) continue;
    const std::size_t fore = isFore(foot.foot) ? 1 : 0;
    sums.at(fore) += foot.centre;
    ++counts.at(fore);
  }
  if (counts[0] == 0 || counts[1] == 0) return {};
  const Vector2d hind = sums[0] / counts[0], base = sums[1] / counts[1] - hind;
  if (base.norm() < 1e-6) return {};
  return foreShareOf((centre - hind).dot(base.normalized()), 0, base.norm());
}

}  // namespace

std::optional<TailLoad> tailLoadOf(double centre, const Along& feet, const Along& tail) {
  if (centre < std::min(feet.min, tail.min) || centre > std::max(feet.max, tail.max)) return std::nullopt;
  TailLoad load;
  // Least where the tail presses as far off as it can and the feet as near as they can.
  if (centre < feet.min) load.least = (feet.min - centre) / (feet.min - tail.min);
  if (centre > feet.max) load.least = (centre - feet.max) / (tail.max - feet.max);
  load.most = 1;
  if (centre > tail.max) load.most = (feet.max - centre) / (feet.max - tail.max);
  if (centre < tail.min) load.most = (centre - feet.min) / (tail.min - feet.min);
  return load;
}

double foreShareOf(double centre, double hindFeet, double foreFeet) {
  return (centre - hindFeet) / (foreFeet - hindFeet);
}

Balance balanceOf(const range::Scenario& scenario, const std::vector<BodySegment>& segments,
                  const Densities& densities) {
  const anatomy::Specimen& specimen = scenario.specimen();
  const kinematics::Placement& X_WB = scenario.placement();
  Balance balance;
  balance.body = weigh(segments, densities, X_WB);
  const auto feet = feetOf(specimen, X_WB);
  balance.hasFeet = !feet.empty();
  if (!balance.hasFeet) return balance;
  std::vector<Vector2d> points;
  for (const auto& foot : feet) {
    if (!foot.planted()) continue;
    balance.planted.push_back(foot.foot);
    addSoles(points, foot);
  }
  const Vector2d centre = balance.body.p_WCentre.head<2>();
  Vector2d unused;
  balance.feetMargin = marginIn(convexPolygon(points), centre, unused);
  std::vector<Vector2d> rests;
  for (const auto& rest : tailRests(specimen, X_WB)) rests.emplace_back(rest.head<2>());
  balance.onTail = !rests.empty();
  const Vector2d forward = scenario.pose().X_WRoot.linear().col(0).head<2>();
  if (balance.onTail && !points.empty() && forward.norm() > 1e-6)
    balance.tailLoad = tailLoadOn(feet, points, rests, centre, forward.normalized());
  points.insert(points.end(), rests.begin(), rests.end());
  balance.polygon = convexPolygon(std::move(points));
  balance.margin = marginIn(balance.polygon, centre, balance.p_WNearest);
  if (!balance.onTail) balance.foreShare = foreShareOn(feet, balance.body.p_WCentre.head<2>());
  return balance;
}

Way nearestEdge(const Balance& balance, const Vector2d& forward_W) {
  Vector2d way = balance.p_WNearest - balance.body.p_WCentre.head<2>();
  if (!balance.inside()) way = -way;
  const double ahead = way.dot(forward_W.normalized());
  const double left = Vector2d(-forward_W.y(), forward_W.x()).normalized().dot(way);
  if (std::abs(ahead) > std::abs(left)) return ahead > 0 ? Way::Ahead : Way::Behind;
  return left > 0 ? Way::Left : Way::Right;
}

}  // namespace zyga::study
