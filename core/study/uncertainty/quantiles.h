#pragma once

#include <vector>

namespace zyga::study {

/// How a number spreads over many draws.
struct Quantiles {
  double q05 = 0, q50 = 0, q95 = 0;  ///< a twentieth of the draws lies below, half, all but a twentieth
  double mean = 0, deviation = 0;    ///< deviation: standard, of the draws
};

/// The value below which this share of the draws lies, between the two nearest ones as definition 7 of Hyndman & Fan
/// 1996, Am. Stat. 50:361. `sorted` must not be empty.
double quantile(const std::vector<double>& sorted, double share);
/// Draws in any order; all zero for none.
Quantiles quantilesOf(std::vector<double> draws);

}  // namespace zyga::study
