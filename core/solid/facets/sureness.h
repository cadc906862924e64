#pragma once

#include <algorithm>
#include <cmath>
#include <initializer_list>

/// What confidences of suggestions are made of.
namespace zyga::solid {

/// 1 at 0, falling as a bell of this scale; of the same unit.
inline double fallOff(double value, double scale) { return std::exp(-std::pow(value / scale, 2)); }

/// Of parts from 0 to 1; those below count as 0.
inline double geometricMean(std::initializer_list<double> parts) {
  double product = 1;
  for (const double part : parts) product *= std::max(0.0, part);
  return std::pow(product, 1.0 / static_cast<double>(parts.size()));
}

}  // namespace zyga::solid
