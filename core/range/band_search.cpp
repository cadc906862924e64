#include "core/range/band_search.h"

#include <cmath>
#include <numbers>

#include "core/range/range_end.h"

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

/// How far a joint is past its worst criterion at whole degrees of one motion, and between them.
class Violation {
 public:
  Violation(const JointJudge& judge, const Vector3d& angles, int motion) : search_(judge, angles, motion) {
    for (int i = -kSteps; i <= kSteps; ++i) grid_[index(i)] = at(i * kStep);
  }

  double at(double value) const { return search_.at(value).violation(); }

  /// A supported value within a degree of the grid value i.
  std::optional<double> supportedNear(int i) const {
    if (grid_[index(i)] < 0) return i * kStep;
    if (std::abs(i) == kSteps || grid_[index(i)] > kFar) return std::nullopt;
    if (grid_[index(i - 1)] < grid_[index(i)] || grid_[index(i + 1)] < grid_[index(i)]) return std::nullopt;
    return leastBetween((i - 1) * kStep, (i + 1) * kStep);
  }

 private:
  /// Half of a facet's length or cover are not made good within a degree.
  static constexpr double kFar = 0.5;
  static std::size_t index(int i) { return static_cast<std::size_t>(i + kSteps); }

  /// Golden section down the violation, until it is none.
  std::optional<double> leastBetween(double lower, double upper) const {
    constexpr double kGolden = 0.6180339887498949;
    double a = upper - kGolden * (upper - lower), b = lower + kGolden * (upper - lower);
    double atA = at(a), atB = at(b);
    while (upper - lower > kBandPrecision) {
      if (atA < 0) return a;
      if (atB < 0) return b;
      if (atA < atB) {
        upper = b, b = a, atB = atA;
        atA = at(a = upper - kGolden * (upper - lower));
      } else {
        lower = a, a = b, atA = atB;
        atB = at(b = lower + kGolden * (upper - lower));
      }
    }
    return std::nullopt;
  }

  RangeEnd search_;
  std::array<double, 2 * kSteps + 1> grid_;
};

/// The present value where it is supported, else the supported one nearest to zero, to a degree. What is supported may
/// be a sliver between two values of the grid, so the search goes down to the least violation there.
std::optional<double> seedOf(const JointJudge& judge, const Vector3d& angles, int motion) {
  if (!judge.beyond(angles)) return angles[motion];
  if (!judge.beyond(withMotion(angles, motion, 0))) return 0;
  const Violation violation(judge, angles, motion);
  for (int i = 0; i <= kSteps; ++i) {
    for (const int at : {i, -i}) {
      if (const auto value = violation.supportedNear(at)) return value;
    }
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
  // By whole degrees wherever it starts, so that an end does not hang on the value it was looked for from.
  const double before = std::floor(from / step);
  double holds = before * step != from && failsAt(before * step) ? from : before * step;
  for (double i = before + 1; i <= kSteps; ++i) {
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
