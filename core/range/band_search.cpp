#include "core/range/band_search.h"

#include <cmath>
#include <numbers>

namespace zyga::range {
namespace {

using Eigen::Vector3d;

constexpr double kStep = std::numbers::pi / 180;
constexpr int kSteps = 90;

/// Between a value that holds and one that fails; returns the last one that holds.
double bisect(const JointJudge& judge, const Vector3d& angles, int motion, double holds, double fails) {
  while (std::abs(fails - holds) > kBandPrecision) {
    const double middle = 0.5 * (holds + fails);
    (judge.beyond(withMotion(angles, motion, middle)) ? fails : holds) = middle;
  }
  return holds;
}

/// The supported grid value nearest to zero; failing that the present value, which a narrow range may hold between
/// two grid values.
std::optional<double> seedOf(const JointJudge& judge, const Vector3d& angles, int motion) {
  for (int i = 0; i <= kSteps; ++i) {
    if (!judge.beyond(withMotion(angles, motion, i * kStep))) return i * kStep;
    if (!judge.beyond(withMotion(angles, motion, -i * kStep))) return -i * kStep;
  }
  if (!judge.beyond(angles)) return angles[motion];
  return std::nullopt;
}

/// Typed limits are their own answer, unless another motion has left its own.
Interval typedInterval(const JointJudge& judge, const Vector3d& angles, int motion) {
  const auto& limits = judge.joint().typed->angles;
  const anatomy::AngleLimits& own = limits[static_cast<std::size_t>(motion)];
  Interval interval{own.least, own.most, own.least > own.most};
  for (int k = 0; k < 3; ++k) {
    interval.empty = interval.empty || (k != motion && outside(limits[static_cast<std::size_t>(k)], angles[k]));
  }
  return interval.empty ? Interval{0, 0, true} : interval;
}

}  // namespace

const double kSearchedFar = kSteps * kStep;

Vector3d withMotion(Vector3d angles, int motion, double value) {
  angles[motion] = value;
  return angles;
}

double endTowards(const JointJudge& judge, const Vector3d& angles, int motion, double from, double sign) {
  if (!judge.hasFacets()) {
    const anatomy::AngleLimits& limits = judge.joint().typed->angles[static_cast<std::size_t>(motion)];
    return sign < 0 ? limits.least : limits.most;
  }
  const double step = std::copysign(kStep, sign);
  double holds = from;
  while (holds * sign < kSearchedFar) {
    const double next = holds + step;
    if (judge.beyond(withMotion(angles, motion, next))) return bisect(judge, angles, motion, holds, next);
    holds = next;
  }
  return std::copysign(kSearchedFar, sign);
}

Interval supportedInterval(const JointJudge& judge, const Vector3d& angles, int motion) {
  if (!judge.hasFacets()) return typedInterval(judge, angles, motion);
  const std::optional<double> seed = seedOf(judge, angles, motion);
  if (!seed) return {0, 0, true};
  return {endTowards(judge, angles, motion, *seed, -1), endTowards(judge, angles, motion, *seed, 1), false};
}

}  // namespace zyga::range
