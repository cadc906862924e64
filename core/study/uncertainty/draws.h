#pragma once

#include <array>
#include <cstdint>
#include <vector>

namespace zyga::study {

/// Random numbers by place instead of by order: the same seed, draw and stream give the same number on every machine
/// and whichever thread asks first. Philox 4x32-10 (Salmon, Moraes, Dror & Shaw 2011, Proc. SC11, article 16).
std::array<std::uint32_t, 4> philox(const std::array<std::uint32_t, 4>& counter,
                                    const std::array<std::uint32_t, 2>& key);

/// The numbers of one draw.
class Draw {
 public:
  Draw(std::uint64_t seed, std::uint32_t number) : seed_(seed), number_(number) {}
  /// Evenly between 0 and 1, neither of them reached; `stream` says what for.
  double uniform(std::uint64_t stream) const;
  /// From the normal distribution with mean 0 and standard deviation 1.
  double normal(std::uint64_t stream) const;

 private:
  std::uint64_t seed_;
  std::uint32_t number_;
};

/// The value below which a standard normal number falls with this probability (0 < p < 1). Algorithm AS 241, PPND16
/// (Wichura 1988, Appl. Statist. 37:477), to about 1 part in 10^16.
double normalQuantile(double p);

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
