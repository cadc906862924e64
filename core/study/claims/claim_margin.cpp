#include "core/study/claims/claim_margin.h"

#include <algorithm>

namespace zyga::study {

range::MotionRange widened(range::MotionRange range, double by) {
  if (range.empty) return range;
  const double neutral = std::clamp(0.0, range.min, range.max);
  range.min = std::min(range.min - by, neutral);
  range.max = std::max(range.max + by, neutral);
  return range;
}

ClaimMargin marginOf(bool supported, const std::function<bool(double)>& holds) {
  constexpr int kSteps = 20;
  ClaimMargin margin;
  // Between the widest that fails and the narrowest that holds, in steps from the range as it is.
  const auto at = [&](int steps) { return holds(steps * kMarginStep); };
  int fails = supported ? -kSteps : 0, holding = supported ? 0 : kSteps;
  if (!at(holding)) return margin;
  if (supported && at(fails)) {
    margin.narrowing = kMostMargin;
    return margin;
  }
  while (holding - fails > 1) {
    const int middle = fails + (holding - fails) / 2;
    (at(middle) ? holding : fails) = middle;
  }
  (supported ? margin.narrowing : margin.widening) = (supported ? -holding : holding) * kMarginStep;
  return margin;
}

}  // namespace zyga::study
