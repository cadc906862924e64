#pragma once

#include "core/picture/horizon.h"
#include "core/picture/shading.h"

namespace zyga::picture {

/// What lies behind the bones: a gradient, and on it the shadow and the lines of the ground z = 0.
class Ground {
 public:
  Ground(const BoneScene& scene, const CameraRays& camera, const Lighting& lighting, const PictureOptions& options);

  /// Linear colour, premultiplied, and alpha where no bone is hit: background, horizon, shadow and lines. `y` is the
  /// picture's row in pixels.
  Eigen::Vector4f behind(const Ray& ray, float y, SampleSequences& sequences) const;

 private:
  /// Share of a sample's row at `y` that the horizon covers.
  float horizon(float y) const;

  struct Ink {
    float shadow = 0;  ///< share of the light taken away
    float line = 0;    ///< strength of a drawn line
  };

  Ink onPlane(const Ray& ray, SampleSequences& sequences) const;
  Ink onEdge(const Ray& ray, SampleSequences& sequences) const;
  float grid(const Eigen::Vector3f& p_W, float footprint, float slant) const;
  float nearness(const Eigen::Vector3f& p_W, float width) const;

  const BoneScene& scene_;
  const CameraRays& camera_;
  const Lighting& lighting_;
  const PictureOptions& options_;
  Eigen::AlignedBox3f box_;
  std::optional<HorizonLine> horizon_;
  float halfRow_;   ///< half the height of a sample, pixels
  float size_ = 1;  ///< of the animal, m
  bool onEdge_;     ///< the view runs along the ground, which is then a line
};

}  // namespace zyga::picture
