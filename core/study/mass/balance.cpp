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

void measureMargin(Balance& balance) {
  const Vector2d centre = balance.body.p_WCentre.head<2>();
  const auto& corners = balance.polygon;
  double least = std::numeric_limits<double>::infinity();
  bool inside = corners.size() >= 3;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Vector2d &a = corners[i], &b = corners[(i + 1) % corners.size()];
    const Vector2d nearest = nearestOn(a, b, centre);
    if ((nearest - centre).norm() < least) {
      least = (nearest - centre).norm();
      balance.p_WNearest = nearest;
    }
    const Vector2d edge = b - a, way = centre - a;
    inside = inside && edge.x() * way.y() - edge.y() * way.x() >= 0;
  }
  if (!corners.empty()) balance.margin = inside ? least : -least;
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
  std::vector<Vector2d> points;
  for (const auto& foot : feet) {
    if (!foot.planted()) continue;
    balance.planted.push_back(foot.foot);
    addSoles(points, foot);
  }
  const auto rests = tailRests(specimen, X_WB);
  balance.onTail = !rests.empty();
  for (const auto& rest : rests) points.emplace_back(rest.head<2>());
  balance.polygon = convexPolygon(std::move(points));
  measureMargin(balance);
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
