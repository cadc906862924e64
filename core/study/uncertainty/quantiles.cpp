#include "core/study/uncertainty/quantiles.h"

#include <algorithm>
#include <cmath>

namespace zyga::study {

double quantile(const std::vector<double>& sorted, double share) {
  const double place = share * static_cast<double>(sorted.size() - 1);
  const auto below = static_cast<std::size_t>(place);
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  return std::lerp(sorted[below], sorted[above], place - static_cast<double>(below));
}

Quantiles quantilesOf(std::vector<double> draws) {
  Quantiles q;
  if (draws.empty()) return q;
  std::sort(draws.begin(), draws.end());
  q.q05 = quantile(draws, 0.05);
  q.q50 = quantile(draws, 0.50);
  q.q95 = quantile(draws, 0.95);
  const auto n = static_cast<double>(draws.size());
  for (const double d : draws) q.mean += d / n;
  for (const double d : draws) q.deviation += (d - q.mean) * (d - q.mean) / std::max(1.0, n - 1);
  q.deviation = std::sqrt(q.deviation);
  return q;
}

}  // namespace zyga::study
