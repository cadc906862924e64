#include "core/range/range_end.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/range/band_search.h"

namespace zyga::range {
namespace {

/// Keeps the sign of a violation told by the level, which knows about rounding.
constexpr double kLeast = 1e-12;
constexpr double kStep = std::numbers::pi / 180;

const Criterion* same(const Criteria& criteria, const Criterion& as) {
  const auto found = std::find_if(criteria.begin(), criteria.end(), [&](const Criterion& c) {
    return c.kind == as.kind && c.side == as.side && c.motion == as.motion;
  });
  return found == criteria.end() ? nullptr : found;
}

/// The share of the way at which the first criterion passes its limit, each taken as linear.
double firstCrossing(const Criteria& holds, double weightHolds, const Criteria& fails, double weightFails) {
  double first = 1;
  for (const Criterion& past : fails) {
    if (past.level != Level::Beyond) continue;
    const Criterion* before = same(holds, past);
    if (!before || before->excess >= 0) return 0.5;
    const double from = weightHolds * before->excess, to = weightFails * std::max(past.excess, kLeast);
    first = std::min(first, from / (from - to));
  }
  return first;
}

}  // namespace

double Tried::violation() const {
  double worst = -1;
  for (const Criterion& c : criteria) {
    worst = std::max(worst, c.level == Level::Beyond ? std::max(c.excess, kLeast) : std::min(c.excess, -kLeast));
  }
  return worst;
}

Tried RangeEnd::at(double value) const {
  const Criteria criteria = judge_.criteria(withMotion(angles_, motion_, value));
  return {value, criteria, criteria.level() != Level::Beyond};
}

/// False position that halves the weight of an end kept twice (the Illinois rule; Dowell & Jarratt 1971, BIT 11:168),
/// of each criterion for itself, because each is nearly linear in an angle and their maximum is not. Three or four
/// questions do.
Tried RangeEnd::crossing(Tried holds, Tried fails) const {
  double weightHolds = 1, weightFails = 1;
  bool lastHeld = true;
  for (int step = 1; std::abs(fails.value - holds.value) > kBandPrecision; ++step) {
    const double way = fails.value - holds.value;
    // A hair to the far side, so that a good guess closes the bracket from both ends.
    const double hair = 0.4 * kBandPrecision / std::abs(way);
    double part = step % 5 == 0 ? 0.5 : firstCrossing(holds.criteria, weightHolds, fails.criteria, weightFails);
    part = std::clamp(part + (part < 0.5 ? hair : -hair), hair, 1 - hair);
    Tried next = at(holds.value + part * way);
    // The end that stays for the second time.
    const bool again = step > 1 && next.holds == lastHeld;
    weightHolds = next.holds ? 1 : again ? 0.5 * weightHolds : weightHolds;
    weightFails = !next.holds ? 1 : again ? 0.5 * weightFails : weightFails;
    lastHeld = next.holds;
    (next.holds ? holds : fails) = std::move(next);
  }
  return holds;
}

/// The search jumps: where the support has a gap it may find the end of a part behind it. So the way to what it found
/// is walked by whole degrees, as the bands are.
double RangeEnd::between(const Tried& holds, const Tried& fails) const {
  const Tried end = crossing(holds, fails);
  const double way = end.value - holds.value, step = std::copysign(kStep, way);
  for (int i = 1; i * kStep < std::abs(way); ++i) {
    const double value = holds.value + i * step;
    if (judge_.beyond(withMotion(angles_, motion_, value))) return crossing(at(value - step), at(value)).value;
  }
  return end.value;
}

double RangeEnd::beyond(Tried holds, double sign) const {
  while (std::abs(holds.value) < kSearchedFar) {
    const Tried next = at(holds.value + std::copysign(kStep, sign));
    if (!next.holds) return crossing(holds, next).value;
    holds = next;
  }
  return holds.value;
}

/// Facets that have parted say nothing about the way back until they meet again, so it goes out on both sides.
double RangeEnd::wayDown(const Tried& zero) const {
  for (double far = kStep; far < kSearchedFar; far += 3 * kStep) {
    const double up = at(far).violation(), down = at(-far).violation();
    if (std::min(up, down) < zero.violation()) return up < down ? far : -far;
    if (std::min(up, down) > zero.violation()) return 0;
  }
  return 0;
}

std::optional<Tried> RangeEnd::supported() const {
  Tried best = at(0);
  if (best.holds) return best;
  double step = wayDown(best);
  Tried before = step == 0 ? at(-kStep) : best;
  Tried next = at(step == 0 ? kStep : step);
  while (next.violation() < best.violation() && std::abs(next.value) < kSearchedFar) {
    if (next.holds) return next;
    before = best;
    best = next;
    step *= 2;
    next = at(best.value + step);
  }
  // The least violation lies between `before` and `next`, around `best`: golden section.
  constexpr double kGolden = 0.381966011250105;
  double a = before.value, b = next.value;
  for (int i = 0; i < 24 && !best.holds && std::abs(b - a) > kBandPrecision; ++i) {
    const bool towardsB = std::abs(b - best.value) > std::abs(best.value - a);
    const Tried tried = at(best.value + kGolden * ((towardsB ? b : a) - best.value));
    if (tried.violation() < best.violation()) {
      (towardsB ? a : b) = best.value;
      best = tried;
    } else {
      (towardsB ? b : a) = tried.value;
    }
  }
  return best.holds ? std::optional(best) : std::nullopt;
}

}  // namespace zyga::range
