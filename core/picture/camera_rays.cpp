#include "core/picture/camera_rays.h"

#include <cmath>

namespace zyga::picture {

namespace {

/// How far the camera's plane must move backwards to have the whole box before it, m.
double retreat(const Eigen::Isometry3d& X_WCamera, const Eigen::AlignedBox3d& box) {
  if (box.isEmpty()) return 0;
  const Eigen::Vector3d back = X_WCamera.linear().col(2);
  const Eigen::Vector3d half = box.sizes() / 2;
  const double nearest = (box.center() - X_WCamera.translation()).dot(back) + back.cwiseAbs().dot(half);
  return nearest + 0.01 * box.diagonal().norm() + 1e-3;
}

}  // namespace

CameraRays::CameraRays(const Camera& camera, int width, int height, const Eigen::AlignedBox3d& box)
    : perspective_(camera.perspective),
      width_(width),
      middle_((0.5 + (camera.perspective ? camera.rise : 0)) * height) {
  const Eigen::Matrix3d R = camera.X_WCamera.linear();
  Eigen::Vector3d origin = camera.X_WCamera.translation();
  if (!perspective_) origin += retreat(camera.X_WCamera, box) * R.col(2);
  const double tall = perspective_ ? 2 * std::tan(camera.fieldOfView / 2) : camera.viewHeight;
  pixel_ = static_cast<float>(tall / height);
  origin_ = origin.cast<float>();
  right_ = R.col(0).cast<float>();
  up_ = R.col(1).cast<float>();
  back_ = R.col(2).cast<float>();
}

Ray CameraRays::through(double x, double y) const {
  const Eigen::Vector3f aside =
      static_cast<float>(x - 0.5 * width_) * pixel_ * right_ + static_cast<float>(middle_ - y) * pixel_ * up_;
  if (perspective_) return {origin_, (aside - back_).normalized()};
  return {origin_ + aside, -back_};
}

}  // namespace zyga::picture
