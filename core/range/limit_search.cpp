#include "core/range/limit_search.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <functional>
#include <numbers>

namespace zyga::range {
namespace {

using Eigen::Vector3d;

constexpr double kStep = std::numbers::pi / 180;
constexpr int kSteps = 90;
/// Contact costs much more than facets do, and bones that have come close stay so for some degrees.
constexpr double kContactStep = 3 * kStep;
/// Keeps the sign of a violation told by the level, which knows about rounding.
constexpr double kLeastViolation = 1e-12;

std::atomic<std::uint64_t> searches = 0;

/// Between a value that holds and one that fails; returns the last one that holds.
template <class Fails>
double bisect(double holds, double fails, double precision, const Fails& failsAt) {
  while (std::abs(fails - holds) > precision) {
    const double middle = 0.5 * (holds + fails);
    (failsAt(middle) ? fails : holds) = middle;
  }
  return holds;
}

/// How far the worst criterion is past its limit, as a share of its own scale; negative where none is.
double violationOf(const Criteria& criteria) {
  double worst = -1;
  for (const Finding& c : criteria) {
    const bool beyond = c.level == Level::Beyond;
    worst = std::max(worst, beyond ? std::max(c.excess, kLeastViolation) : std::min(c.excess, -kLeastViolation));
  }
  return worst;
}

/// How far a joint is past its worst criterion at whole degrees of one motion, and between them.
class Violation {
 public:
  /// `angles`: the joint's with the motion at a value, rad.
  Violation(const JointEvaluator& judge, std::function<Vector3d(double)> angles)
      : judge_(judge), angles_(std::move(angles)) {
    for (int i = -kSteps; i <= kSteps; ++i) grid_[index(i)] = at(i * kStep);
  }

  double at(double value) const { return violationOf(judge_.criteria(angles_(value))); }

  /// A supported value within a degree of the grid value i.
  std::optional<double> supportedNear(int i) const {
    if (grid_[index(i)] < 0) return i * kStep;
    if (std::abs(i) == kSteps || grid_[index(i)] > kFar) return std::nullopt;
    if (grid_[index(i - 1)] < grid_[index(i)] || grid_[index(i + 1)] < grid_[index(i)]) return std::nullopt;
    return supportedBetween((i - 1) * kStep, (i + 1) * kStep);
  }

 private:
  /// Half of a facet's length or cover are not made good within a degree.
  static constexpr double kFar = 0.5;
  static std::size_t index(int i) { return static_cast<std::size_t>(i + kSteps); }

  /// Golden section towards the least violation, until there is none.
  std::optional<double> supportedBetween(double lower, double upper) const {
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

  const JointEvaluator& judge_;
  std::function<Vector3d(double)> angles_;
  std::array<double, 2 * kSteps + 1> grid_;
};

}  // namespace

const double kSearchedFar = kSteps * kStep;

std::uint64_t limitSearches() { return searches; }

Vector3d LimitSearch::at(double value) const {
  if (motion_ == 2) return {angles_[0], angles_[1], value};
  Vector3d own = own_;
  own[motion_] = value;
  return judge_.fromOwn(own);
}

/// The present value where it is supported, else the supported one nearest to zero, to a degree. What is supported may
/// be a sliver between two values of the grid, so the search goes down to the least violation there.
std::optional<double> LimitSearch::seed() const {
  if (!judge_.beyond(angles_)) return angles_[motion_];
  if (!beyondAt(0)) return 0;
  const Violation violation(judge_, [this](double value) { return at(value); });
  for (int i = 0; i <= kSteps; ++i) {
    for (const int at : {i, -i}) {
      if (const auto value = violation.supportedNear(at)) return value;
    }
  }
  return std::nullopt;
}

/// Where facets and typed limits end the support, going from a supported value in the direction of `sign`. By whole
/// degrees wherever it starts, so that an end does not hang on the value it was looked for from.
double LimitSearch::endFrom(double from, double sign) const {
  const auto failsAt = [this](double value) { return beyondAt(value); };
  const double step = std::copysign(kStep, sign);
  const double before = std::floor(from / step);
  double holds = before * step != from && failsAt(before * step) ? from : before * step;
  for (double i = before + 1; i <= kSteps; ++i) {
    if (failsAt(i * step)) return bisect(holds, i * step, kBandPrecision, failsAt);
    holds = i * step;
  }
  return std::copysign(std::max(kSearchedFar, from * sign), sign);
}

/// Typed limits are their own answer, unless another motion has left its own.
Interval LimitSearch::typedInterval() const {
  const auto& limits = judge_.joint().typed->angles;
  const anatomy::AngleLimits& own = limits[static_cast<std::size_t>(motion_)];
  Interval interval{own.min, own.max, own.min > own.max};
  for (int k = 0; k < 3; ++k) {
    interval.empty = interval.empty || (k != motion_ && outside(limits[static_cast<std::size_t>(k)], angles_[k]));
  }
  return interval.empty ? Interval{0, 0, true} : interval;
}

Interval LimitSearch::facetInterval() const {
  const std::optional<double> from = seed();
  if (!from) return {0, 0, true};
  return {endFrom(*from, -1), endFrom(*from, 1)};
}

/// The present value, else the one free of contact nearest to zero, as for facets.
std::optional<double> LimitSearch::freeSeed(const Interval& whole) const {
  const auto isFree = [&](double value) { return whole.min <= value && value <= whole.max && !entersAt(value); };
  if (isFree(angles_[motion_])) return angles_[motion_];
  const int steps = static_cast<int>(std::ceil(std::max(std::abs(whole.min), std::abs(whole.max)) / kContactStep));
  for (int i = 0; i <= steps; ++i) {
    for (const double value : {i * kContactStep, -i * kContactStep}) {
      if (isFree(value)) return value;
    }
  }
  return std::nullopt;
}

double LimitSearch::lastFree(double from, double end, bool& stopped) const {
  const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(end - from) / kContactStep)));
  double free = from;
  for (int i = 1; i <= steps; ++i) {
    const double next = i == steps ? end : from + (end - from) * i / steps;
    stopped = entersAt(next);
    if (stopped) return bisect(free, next, kContactPrecision, [this](double value) { return entersAt(value); });
    free = next;
  }
  return end;
}

/// The part of an interval in which the bones do not enter each other.
Interval LimitSearch::cutByContact(const Interval& whole) const {
  const std::optional<double> from = freeSeed(whole);
  if (!from) return {0, 0, true, true, true};
  // Where the bones enter each other as the joint stands, that place ends the range, however thin what meets there.
  const double present = angles_[motion_];
  const bool enters = *from != present && whole.min <= present && present <= whole.max;
  Interval cut;
  cut.min = lastFree(*from, enters && present < *from ? present : whole.min, cut.contactAtMin);
  cut.max = lastFree(*from, enters && present > *from ? present : whole.max, cut.contactAtMax);
  return cut;
}

Interval LimitSearch::interval() const {
  ++searches;
  const Interval whole = judge_.hasFacets() ? facetInterval() : typedInterval();
  return whole.empty || !judge_.asksContact() ? whole : cutByContact(whole);
}

Interval LimitSearch::firm(const Interval& supported) const {
  const auto firmAt = [this](double value) { return judge_.level(at(value)) == Level::Supported; };
  if (supported.empty) return {0, 0, true};
  const double width = supported.max - supported.min;
  const auto endTowards = [&](double inside, double edge) {
    return firmAt(edge) ? edge : bisect(inside, edge, 1e-3 * width, [&](double value) { return !firmAt(value); });
  };
  // From the middle outwards, in turns to both sides.
  constexpr int kTries = 9;
  for (int i = 0; i < kTries; ++i) {
    const double share = 0.5 + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 0.1;
    const double inside = supported.min + share * width;
    if (firmAt(inside)) return {endTowards(inside, supported.min), endTowards(inside, supported.max)};
  }
  return {0, 0, true};
}

Stop LimitSearch::contactStop(const Vector3d& at) const {
  const ContactPlace place = judge_.contact(at);
  return {Stop::Why::Criterion, FindingKind::BoneContact, anatomy::Side::Midline, place.tolerated, place.parts};
}

Stop LimitSearch::stop(const Interval& interval, double sign) const {
  const bool contact = sign < 0 ? interval.contactAtMin : interval.contactAtMax;
  if (interval.empty) return contact ? contactStop(angles_) : stopOf(judge_.criteria(angles_));
  const double precision = contact ? kContactPrecision : kBandPrecision;
  const double end = sign < 0 ? interval.min : interval.max;
  const Vector3d past = at(end + std::copysign(2 * precision, sign));
  return contact ? contactStop(past) : stopOf(judge_.criteria(past));
}

Stop stopOf(const Criteria& justPast) {
  const auto [worst, both] = stopping(justPast);
  if (!worst) return {};
  return {Stop::Why::Criterion, worst->kind, both ? anatomy::Side::Midline : worst->side, worst->limit, std::nullopt};
}

namespace {

/// The last angles on a straight way at which nothing fails, by steps and then by bisection to `precision`, rad.
template <class Fails>
Vector3d lastAlong(const Vector3d& from, const Vector3d& to, double step, double precision, const Fails& fails) {
  const Vector3d way = to - from;
  const double length = way.norm();
  const auto failsAt = [&](double part) { return fails(from + part * way); };
  const int steps = std::max(1, static_cast<int>(std::ceil(length / step)));
  double holds = 0;
  for (int i = 1; i <= steps; ++i) {
    const double next = static_cast<double>(i) / steps;
    if (failsAt(next)) return from + bisect(holds, next, precision / std::max(length, precision), failsAt) * way;
    holds = next;
  }
  return to;
}

}  // namespace

Vector3d lastSupported(const JointEvaluator& judge, const Vector3d& from, const Vector3d& to) {
  const Vector3d begun = judge.toOwn(from), sought = judge.toOwn(to);
  const Vector3d held = lastAlong(begun, sought, kStep, kBandPrecision,
                                  [&](const Vector3d& own) { return judge.beyond(judge.fromOwn(own)); });
  const Vector3d there = held == sought ? to : judge.fromOwn(held);
  if (!judge.asksContact() || judge.contactBeyond(from)) return there;
  const Vector3d clear = lastAlong(begun, held, kContactStep, kContactPrecision,
                                   [&](const Vector3d& own) { return judge.contactBeyond(judge.fromOwn(own)); });
  return clear == held ? there : judge.fromOwn(clear);
}

}  // namespace zyga::range
