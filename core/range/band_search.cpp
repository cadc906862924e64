#include "core/range/band_search.h"

#include <cmath>
#include <numbers>

namespace zyga::range {
namespace {

using Eigen::Vector3d;

constexpr double kStep = std::numbers::pi / 180;
constexpr int kSteps = 90;
/// Contact costs much more than facets do, and bones that have come close stay so for some degrees.
constexpr double kContactStep = 3 * kStep;

/// Between a value that holds and one that fails; returns the last one that holds.
template <class Fails>
double bisect(double holds, double fails, double precision, const Fails& failsAt) {
  while (std::abs(fails - holds) > precision) {
    const double middle = 0.5 * (holds + fails);
    (failsAt(middle) ? fails : holds) = middle;
  }
  return holds;
}

/// The present value where it is supported, else the supported value of a grid that is nearest to zero.
std::optional<double> seedOf(const JointJudge& judge, const Vector3d& angles, int motion) {
  if (!judge.beyond(angles)) return angles[motion];
  for (int i = 0; i <= kSteps; ++i) {
    if (!judge.beyond(withMotion(angles, motion, i * kStep))) return i * kStep;
    if (!judge.beyond(withMotion(angles, motion, -i * kStep))) return -i * kStep;
  }
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

Interval facetInterval(const JointJudge& judge, const Vector3d& angles, int motion) {
  const std::optional<double> seed = seedOf(judge, angles, motion);
  if (!seed) return {0, 0, true};
  return {endTowards(judge, angles, motion, *seed, -1), endTowards(judge, angles, motion, *seed, 1)};
}

/// Shortens an interval to the part in which the bones do not enter each other.
class ContactCut {
 public:
  ContactCut(const JointJudge& judge, const Vector3d& angles, int motion)
      : judge_(judge), angles_(angles), motion_(motion) {}

  Interval operator()(const Interval& whole) const {
    const std::optional<double> seed = freeSeed(whole);
    if (!seed) return {0, 0, true, true, true};
    Interval cut;
    cut.least = lastFree(*seed, whole.least, cut.contactAtLeast);
    cut.most = lastFree(*seed, whole.most, cut.contactAtMost);
    return cut;
  }

 private:
  bool enters(double value) const { return judge_.contactBeyond(withMotion(angles_, motion_, value)); }

  /// The present value, else the free one nearest to zero, as for facets.
  std::optional<double> freeSeed(const Interval& whole) const {
    const auto isFree = [&](double value) { return whole.least <= value && value <= whole.most && !enters(value); };
    if (isFree(angles_[motion_])) return angles_[motion_];
    const int steps = static_cast<int>(std::ceil(std::max(std::abs(whole.least), std::abs(whole.most)) / kContactStep));
    for (int i = 0; i <= steps; ++i) {
      for (const double value : {i * kContactStep, -i * kContactStep}) {
        if (isFree(value)) return value;
      }
    }
    return std::nullopt;
  }

  double lastFree(double from, double end, bool& stopped) const {
    const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(end - from) / kContactStep)));
    double free = from;
    for (int i = 1; i <= steps; ++i) {
      const double next = i == steps ? end : from + (end - from) * i / steps;
      stopped = enters(next);
      if (stopped) return bisect(free, next, kContactPrecision, [&](double value) { return enters(value); });
      free = next;
    }
    return end;
  }

  const JointJudge& judge_;
  const Vector3d& angles_;
  int motion_;
};

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
  const auto failsAt = [&](double value) { return judge.beyond(withMotion(angles, motion, value)); };
  const double step = std::copysign(kStep, sign);
  double holds = from;
  // Whole degrees wherever it starts, so that an end does not hang on the value it was looked for from.
  for (double i = std::floor(from / step) + 1; i <= kSteps; ++i) {
    if (failsAt(i * step)) return bisect(holds, i * step, kBandPrecision, failsAt);
    holds = i * step;
  }
  return std::copysign(std::max(kSearchedFar, from * sign), sign);
}

Interval supportedInterval(const JointJudge& judge, const Vector3d& angles, int motion) {
  const Interval whole =
      judge.hasFacets() ? facetInterval(judge, angles, motion) : typedInterval(judge, angles, motion);
  return whole.empty || !judge.asksContact() ? whole : ContactCut(judge, angles, motion)(whole);
}

}  // namespace zyga::range
