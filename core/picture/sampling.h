#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace zyga::picture {

/// Samples of a pixel along each side, for so many in all: the nearest square number is meant.
inline int sampleGrid(int samplesPerPixel) {
  return std::max(1, static_cast<int>(std::lround(std::sqrt(std::max(1, samplesPerPixel)))));
}

/// Points in the unit square spread evenly for any count: the additive recurrence on the plastic number, started at an
/// offset hashed from the pixel, so that neighbouring pixels err differently and the same pixel always alike.
class PixelSequence {
 public:
  enum class Stream : std::uint32_t { Fill, Key, Place };  ///< uses within one pixel

  /// `first` is the index of the first point.
  PixelSequence(std::uint32_t x, std::uint32_t y, Stream use, std::uint32_t first) : index_(first) {
    const auto stream = static_cast<std::uint32_t>(use);
    if (use == Stream::Place) step_ = {1779033703u, 3144134277u};
    const std::uint32_t h = mix(x + mix(y + mix(stream)));
    offset_ = {unit(h), unit(mix(h + 0x9e3779b9u))};
  }

  Eigen::Vector2f next() {
    const std::uint32_t i = ++index_;
    return {wrap(offset_.x() + unit(i * step_[0])), wrap(offset_.y() + unit(i * step_[1]))};
  }

 private:
  static float unit(std::uint32_t bits) { return static_cast<float>(bits >> 8) * 0x1p-24f; }
  static float wrap(float x) { return x >= 1.0f ? x - 1.0f : x; }
  /// Integer finaliser with full avalanche.
  static std::uint32_t mix(std::uint32_t h) {
    h = (h ^ (h >> 16)) * 0x7feb352du;
    h = (h ^ (h >> 15)) * 0x846ca68bu;
    return h ^ (h >> 16);
  }

  std::uint32_t index_;
  /// The recurrence's steps as 0.32 fixed point, so that wrapping is exact: 1 / plastic number and its square. Places
  /// are paired with directions, so they step by other irrationals, the square roots of 2 and 3.
  std::array<std::uint32_t, 2> step_{3242174889u, 2447445414u};
  Eigen::Vector2f offset_;
};

/// What one sample of the picture draws from: separate sequences, because a subset of one sequence is less even than a
/// sequence of its own.
struct SampleSequences {
  PixelSequence fill, key, place;
};

/// Two unit vectors that complete `normal` (unit) to a right-handed frame.
struct TangentFrame {
  Eigen::Vector3f tangent, bitangent, normal;

  explicit TangentFrame(const Eigen::Vector3f& n) : normal(n) {
    // Branch-free construction of Duff et al. 2017, J. Comp. Graph. Tech. 6(1):1.
    const float sign = std::copysign(1.0f, n.z());
    const float a = -1.0f / (sign + n.z());
    const float b = n.x() * n.y() * a;
    tangent = {1.0f + sign * n.x() * n.x() * a, sign * b, -sign * n.x()};
    bitangent = {b, sign + n.y() * n.y() * a, -n.y()};
  }

  Eigen::Vector3f world(float x, float y, float z) const { return x * tangent + y * bitangent + z * normal; }
};

/// Direction about the frame's normal with density proportional to the cosine: the disc projected up to the hemisphere.
inline Eigen::Vector3f cosineDirection(const TangentFrame& frame, const Eigen::Vector2f& u) {
  const float phi = 2.0f * std::numbers::pi_v<float> * u.x();
  const float r = std::sqrt(u.y());
  return frame.world(r * std::cos(phi), r * std::sin(phi), std::sqrt(1.0f - u.y()));
}

/// Direction within a narrow cone about the frame's normal; `spread` is the tangent of the half angle.
inline Eigen::Vector3f coneDirection(const TangentFrame& frame, float spread, const Eigen::Vector2f& u) {
  const float phi = 2.0f * std::numbers::pi_v<float> * u.x();
  const float r = spread * std::sqrt(u.y());
  return frame.world(r * std::cos(phi), r * std::sin(phi), 1.0f).normalized();
}

}  // namespace zyga::picture
