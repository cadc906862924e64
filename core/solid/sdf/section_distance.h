#pragma once

#include <algorithm>
#include <cmath>

/// Distances to elliptical sections. Exact on the surface and first-order near it: with k0 = |p/r| and k1 = |p/r^2|,
/// k0 (k0 - 1) / k1 is the value of the implicit function k0^2 - k0 over its gradient.
namespace zyga::solid {

inline float ellipseDistance(float u, float v, float ru, float rv) {
  const float a = u / ru, b = v / rv;
  const float k0 = std::sqrt(a * a + b * b);
  const float c = a / ru, d = b / rv;
  const float k1 = std::sqrt(c * c + d * d);
  return k1 > 1e-9f ? k0 * (k0 - 1) / k1 : -std::min(ru, rv);
}

inline float ellipsoidDistance(float u, float v, float w, float ru, float rv, float rw) {
  const float a = u / ru, b = v / rv, c = w / rw;
  const float k0 = std::sqrt(a * a + b * b + c * c);
  const float d = a / ru, e = b / rv, f = c / rw;
  const float k1 = std::sqrt(d * d + e * e + f * f);
  return k1 > 1e-9f ? k0 * (k0 - 1) / k1 : -std::min(ru, std::min(rv, rw));
}

/// The same from the squares of the coordinates: half the roots and divisions.
inline float ellipsoidDistanceOfSquares(float u2, float v2, float w2, float ru, float rv, float rw) {
  const float iu = 1 / ru, iv = 1 / rv, iw = 1 / rw;
  const float a2 = u2 * iu * iu, b2 = v2 * iv * iv, c2 = w2 * iw * iw;
  const float k0 = a2 + b2 + c2, k1 = a2 * iu * iu + b2 * iv * iv + c2 * iw * iw;
  return k1 > 1e-18f ? (k0 - std::sqrt(k0)) / std::sqrt(k1) : -std::min(ru, std::min(rv, rw));
}

/// Rectangle with corners rounded by half of its smaller half extent.
inline float roundedRectangleDistance(float u, float v, float ru, float rv) {
  const float round = 0.5f * std::min(ru, rv);
  const float a = std::fabs(u) - ru + round, b = std::fabs(v) - rv + round;
  const float p = std::max(a, 0.0f), q = std::max(b, 0.0f);
  return std::sqrt(p * p + q * q) + std::min(std::max(a, b), 0.0f) - round;
}

/// Intersection of two fields whose common edge is rounded by `round`; flat parts stay exactly where they were.
inline float roundedMax(float a, float b, float round) {
  const float p = std::max(a + round, 0.0f), q = std::max(b + round, 0.0f);
  return std::min(-round, std::max(a, b)) + std::sqrt(p * p + q * q);
}

}  // namespace zyga::solid
