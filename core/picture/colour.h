#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace zyga::picture {

/// Transfer functions of IEC 61966-2-1 (sRGB), channel values in [0, 1].
inline float linearFromSrgb(float c) { return c <= 0.04045f ? c / 12.92f : std::pow((c + 0.055f) / 1.055f, 2.4f); }
inline float srgbFromLinear(float c) {
  return c <= 0.0031308f ? 12.92f * c : 1.055f * std::pow(c, 1.0f / 2.4f) - 0.055f;
}

inline Eigen::Vector3f linearFromSrgb(const std::array<float, 3>& colour) {
  return {linearFromSrgb(colour[0]), linearFromSrgb(colour[1]), linearFromSrgb(colour[2])};
}

inline Eigen::Vector4f withAlpha(const Eigen::Vector3f& colour, float alpha) {
  return {colour.x(), colour.y(), colour.z(), alpha};
}

/// Nearest of 256 steps.
inline std::uint8_t byteOf(float share) {
  return static_cast<std::uint8_t>(std::lround(std::clamp(share, 0.0f, 1.0f) * 255.0f));
}

/// 0 below `from`, 1 above `to`, smooth between.
inline float smoothStep(float from, float to, float x) {
  const float t = std::clamp((x - from) / (to - from), 0.0f, 1.0f);
  return t * t * (3.0f - 2.0f * t);
}

}  // namespace zyga::picture
