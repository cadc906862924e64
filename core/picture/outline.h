#pragma once

#include <cstdint>
#include <vector>

#include "core/picture/bone_scene.h"

namespace zyga::picture {

/// What the eye sees through one sample of the picture.
struct SeenPoint {
  static constexpr std::uint32_t kNothing = ~0u;
  std::uint32_t instance = kNothing;
  float footprint = 0;                            ///< width of a sample there, m
  Eigen::Vector3f p_W, face_W, normal_W, back_W;  ///< back_W: unit, towards the viewer

  bool bone() const { return instance != kNothing; }
};

/// A block of samples, row by row.
struct SeenBlock {
  int width = 0;
  int height = 0;
  std::vector<SeenPoint> points;

  const SeenPoint& at(int x, int y) const { return points[static_cast<std::size_t>(y) * width + x]; }
};

/// Draws lines where one bone ends before another, where a bone folds over itself, and along its edges.
class Outliner {
 public:
  /// `radius`: half the width of a line, in samples.
  explicit Outliner(double radius);

  /// Samples that must be known on every side of the one asked for.
  int border() const { return border_; }
  /// Darkness of the line at a sample of the block, 0 to 1.
  float strength(const SeenBlock& block, int x, int y) const;

 private:
  struct Offset {
    int x, y;
    float weight;
  };
  int border_ = 0;
  std::vector<Offset> offsets_;
};

}  // namespace zyga::picture
