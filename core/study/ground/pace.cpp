#include "core/study/ground/pace.h"

#include <algorithm>
#include <cmath>

namespace zyga::study {

std::optional<double> paceAngulation(double pace, double nextPace, double stride) {
  if (!(pace > 0 && nextPace > 0 && stride > 0)) return {};
  const double cosine = (pace * pace + nextPace * nextPace - stride * stride) / (2 * pace * nextPace);
  if (!(std::abs(cosine) <= 1)) return {};
  return std::acos(cosine);
}

std::optional<double> gaugeOf(double pace, double nextPace, double stride) {
  const auto angle = paceAngulation(pace, nextPace, stride);
  if (!angle) return {};
  // Twice the triangle's area over the stride.
  return pace * nextPace * std::sin(*angle) / stride;
}

std::string_view hipSource(double multiplier) {
  const auto* rule = std::find_if(kHipRules.begin(), kHipRules.end(),
                                  [&](const HipRule& r) { return std::abs(r.multiplier - multiplier) < 1e-9; });
  return rule == kHipRules.end() ? "own choice" : rule->source;
}

double speedOf(double stride, double hipHeight) {
  constexpr double kGravity = 9.81;
  return 0.25 * std::sqrt(kGravity) * std::pow(stride, 1.67) * std::pow(hipHeight, -1.17);
}

}  // namespace zyga::study
