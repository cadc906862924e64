#pragma once

#include "core/picture/bone_scene.h"
#include "core/picture/lens_view.h"
#include "core/picture/sampling.h"

namespace zyga::picture {

/// The light of a picture: one broad key light and the glow of sky and ground.
class Lighting {
 public:
  Lighting(const BoneScene& scene, const CameraRays& camera, const PictureOptions& options);

  /// Linear colour of a bone of this linear albedo where the ray has met it.
  Eigen::Vector3f bone(const SurfaceHit& hit, const Eigen::Vector3f& albedo, SampleSequences& sequences) const;
  /// Share [0, 1] of the key light that bones keep from the point, `normal_W` its surface.
  float keyShadow(const Eigen::Vector3f& p_W, const Eigen::Vector3f& normal_W, PixelSequence& sequence) const;
  /// Share [0, 1] of the sky, weighted by the cosine, that bones within `reach` (m) take away.
  float occlusion(const Eigen::Vector3f& p_W, const Eigen::Vector3f& normal_W, float reach,
                  PixelSequence& sequence) const;

  /// How far bones darken each other, m.
  float reach() const { return reach_; }
  int occlusionRays() const { return occlusionRays_; }
  int shadowRays() const { return shadowRays_; }

 private:
  Eigen::Vector3f fill(const SurfaceHit& hit, const Eigen::Vector3f& albedo, PixelSequence& sequence) const;

  const BoneScene& scene_;
  TangentFrame key_;
  float reach_;
  int occlusionRays_, shadowRays_;
};

/// Keeps bright colours below 1 without a hard edge.
Eigen::Vector3f shoulder(const Eigen::Vector3f& colour);

/// A start just off the surface, so that a ray does not meet the triangle it leaves.
Eigen::Vector3f liftOff(const Eigen::Vector3f& p_W, const Eigen::Vector3f& face_W);

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
