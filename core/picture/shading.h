#pragma once

#include "core/picture/bone_scene.h"
#include "core/picture/camera_rays.h"
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

}  // namespace zyga::picture
