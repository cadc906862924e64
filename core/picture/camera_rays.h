#pragma once

#include "core/picture/bone_scene.h"
#include "core/picture/picture.h"

namespace zyga::picture {

/// The rays of a camera's picture. Picture coordinates are in pixels from the top left corner, y downwards.
class CameraRays {
 public:
  /// Orthographic rays start in front of `box` (world, m), so that nothing is cut off.
  CameraRays(const Camera& camera, int width, int height, const Eigen::AlignedBox3d& box);

  Ray through(double x, double y) const;
  /// Width of a pixel in the world at this distance along a ray, m.
  float footprint(float distance) const { return perspective_ ? pixel_ * distance : pixel_; }

  bool perspective() const { return perspective_; }
  const Eigen::Vector3f& right() const { return right_; }
  const Eigen::Vector3f& up() const { return up_; }
  /// Unit, from the scene towards the viewer.
  const Eigen::Vector3f& back() const { return back_; }

 private:
  bool perspective_;
  int width_;
  double middle_;  ///< row that the camera's axis meets, pixels
  float pixel_;    ///< m a pixel: anywhere, or at 1 m from the eye
  Eigen::Vector3f origin_, right_, up_, back_;
};

}  // namespace zyga::picture
