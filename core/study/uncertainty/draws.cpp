#include "core/study/uncertainty/draws.h"

#include <algorithm>
#include <cmath>

namespace zyga::study {
namespace {

using Polynomial = std::array<double, 8>;  // lowest power first

double valueOf(const Polynomial& p, double x) {
  double value = 0;
  for (std::size_t i = p.size(); i-- > 0;) value = value * x + p[i];
  return value;
}

// Coefficients of AS 241: near the middle, in the tails, far out.
constexpr Polynomial kMiddleOver{3.3871328727963666080e0,  1.3314166789178437745e+2, 1.9715909503065514427e+3,
                                 1.3731693765509461125e+4, 4.5921953931549871457e+4, 6.7265770927008700853e+4,
                                 3.3430575583588128105e+4, 2.5090809287301226727e+3};
constexpr Polynomial kMiddleUnder{1,
                                  4.2313330701600911252e+1,
                                  6.8718700749205790830e+2,
                                  5.3941960214247511077e+3,
                                  2.1213794301586595867e+4,
                                  3.9307895800092710610e+4,
                                  2.8729085735721942674e+4,
                                  5.2264952788528545610e+3};
constexpr Polynomial kTailOver{1.42343711074968357734e0,  4.63033784615654529590e0, 5.76949722146069140550e0,
                               3.64784832476320460504e0,  1.27045825245236838258e0, 2.41780725177450611770e-1,
                               2.27238449892691845833e-2, 7.74545014278341407640e-4};
constexpr Polynomial kTailUnder{1,
                                2.05319162663775882187e0,
                                1.67638483018380384940e0,
                                6.89767334985100004550e-1,
                                1.48103976427480074590e-1,
                                1.51986665636164571966e-2,
                                5.47593808499534494600e-4,
                                1.05075007164441684324e-9};
constexpr Polynomial kFarOver{6.65790464350110377720e0,  5.46378491116411436990e0,  1.78482653991729133580e0,
                              2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3,
                              2.71155556874348757815e-5, 2.01033439929228813265e-7};
constexpr Polynomial kFarUnder{1,
                               5.99832206555887937690e-1,
                               1.36929880922735805310e-1,
                               1.48753612908506148525e-2,
                               7.86869131145613259100e-4,
                               1.84631831751005468180e-5,
                               1.42151175831644588870e-7,
                               2.04426310338993978564e-15};

struct Product {
  std::uint32_t high, low;
};
Product product(std::uint32_t a, std::uint32_t b) {
  const std::uint64_t both = static_cast<std::uint64_t>(a) * b;
  return {static_cast<std::uint32_t>(both >> 32), static_cast<std::uint32_t>(both)};
}

}  // namespace

std::array<std::uint32_t, 4> philox(const std::array<std::uint32_t, 4>& counter,
                                    const std::array<std::uint32_t, 2>& key) {
  auto [a, b, c, d] = counter;
  auto [k, l] = key;
  for (int round = 0; round < 10; ++round) {
    const Product one = product(0xD2511F53u, a), other = product(0xCD9E8D57u, c);
    a = other.high ^ b ^ k;
    b = other.low;
    c = one.high ^ d ^ l;
    d = one.low;
    k += 0x9E3779B9u;
    l += 0xBB67AE85u;
  }
  return {a, b, c, d};
}

double Draw::uniform(std::uint64_t stream) const {
  const auto out = philox({static_cast<std::uint32_t>(stream), static_cast<std::uint32_t>(stream >> 32), number_, 0},
                          {static_cast<std::uint32_t>(seed_), static_cast<std::uint32_t>(seed_ >> 32)});
  // 52 bits and a half, so that neither 0 nor 1 comes.
  const std::uint64_t bits = (static_cast<std::uint64_t>(out[0]) << 20) | (out[1] >> 12);
  return (static_cast<double>(bits) + 0.5) * 0x1p-52;
}

double Draw::normal(std::uint64_t stream) const { return normalQuantile(uniform(stream)); }

double normalQuantile(double p) {
  const double q = p - 0.5;
  if (std::abs(q) <= 0.425) {
    const double r = 0.180625 - q * q;
    return q * valueOf(kMiddleOver, r) / valueOf(kMiddleUnder, r);
  }
  const double r = std::sqrt(-std::log(q < 0 ? p : 1 - p));
  const double size = r <= 5 ? valueOf(kTailOver, r - 1.6) / valueOf(kTailUnder, r - 1.6)
                             : valueOf(kFarOver, r - 5) / valueOf(kFarUnder, r - 5);
  return q < 0 ? -size : size;
}

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
