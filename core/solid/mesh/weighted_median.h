#pragma once

#include <algorithm>
#include <utility>
#include <vector>

namespace zyga::solid {

/// The least value that half of the weight does not exceed; 0 of nothing. Pairs of value and weight.
inline double weightedMedian(std::vector<std::pair<double, double>> valueAndWeight) {
  std::sort(valueAndWeight.begin(), valueAndWeight.end());
  double total = 0, passed = 0;
  for (const auto& [value, weight] : valueAndWeight) total += weight;
  for (const auto& [value, weight] : valueAndWeight)
    if ((passed += weight) >= total / 2) return value;
  return 0;
}

}  // namespace zyga::solid
