#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/picture/picture.h"

namespace zyga::picture {

namespace {

constexpr double kMargin = 0.04;  // of the picture, on each side

Eigen::AlignedBox3d orUnitBox(const Eigen::AlignedBox3d& box) {
  return box.isEmpty() ? Eigen::AlignedBox3d(Eigen::Vector3d::Constant(-0.5), Eigen::Vector3d::Constant(0.5)) : box;
}

struct Attitude {
  Eigen::Vector3d back;  // from the animal towards the viewer
  Eigen::Vector3d up;    // of the picture
};

Attitude attitudeOf(StandardView view) {
  using Eigen::Vector3d;
  switch (view) {
    case StandardView::Left:
      return {Vector3d::UnitY(), Vector3d::UnitZ()};
    case StandardView::Right:
      return {-Vector3d::UnitY(), Vector3d::UnitZ()};
    // Head to the left, so that the dorsal view lies under the left view without a turn.
    case StandardView::Dorsal:
      return {Vector3d::UnitZ(), -Vector3d::UnitY()};
    case StandardView::Cranial:
      return {Vector3d::UnitX(), Vector3d::UnitZ()};
    case StandardView::Caudal:
      return {-Vector3d::UnitX(), Vector3d::UnitZ()};
    case StandardView::ThreeQuarter:
      break;
  }
  return {Vector3d(0.66, 0.75, 0.20), Vector3d::UnitZ()};
}

Eigen::Matrix3d rotationOf(const Attitude& attitude) {
  Eigen::Matrix3d R;
  R.col(2) = attitude.back.normalized();
  R.col(0) = attitude.up.cross(R.col(2)).normalized();
  R.col(1) = R.col(2).cross(R.col(0));
  return R;
}

Camera frameOrthographic(const Eigen::Matrix3d& R, const Eigen::AlignedBox3d& box, double aspect) {
  const Eigen::Vector3d extent = R.transpose().cwiseAbs() * box.sizes();
  Camera camera;
  camera.viewHeight = std::max({extent.y(), extent.x() / aspect, 1e-6}) / (1 - 2 * kMargin);
  camera.X_WCamera.linear() = R;
  camera.X_WCamera.translation() = box.center() + R.col(2) * (extent.z() / 2 + camera.viewHeight);
  return camera;
}

/// Tight fit of the box's corners: the four side planes of the view are pushed out until each touches a corner; the eye
/// is where the wider pair of planes meets, midway between the other pair.
Camera framePerspective(const Eigen::Matrix3d& R, const Eigen::AlignedBox3d& box, double aspect) {
  Camera camera;
  camera.perspective = true;
  camera.fieldOfView = 0.42;
  const double slopeUp = std::tan(camera.fieldOfView / 2) * (1 - 2 * kMargin);
  const Eigen::Vector2d slope(slopeUp * aspect, slopeUp);
  Eigen::Vector2d low = Eigen::Vector2d::Constant(-1e30), high = low;
  for (int i = 0; i < 8; ++i) {
    const Eigen::Vector3d p =
        R.transpose() * (box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i)) - box.center());
    for (int k = 0; k < 2; ++k) {
      high[k] = std::max(high[k], p[k] + slope[k] * p.z());
      low[k] = std::max(low[k], -p[k] + slope[k] * p.z());
    }
  }
  const Eigen::Vector2d away = (high + low).cwiseQuotient(2 * slope);
  const Eigen::Vector3d eye((high.x() - low.x()) / 2, (high.y() - low.y()) / 2, std::max(away.maxCoeff(), 1e-3));
  camera.X_WCamera.linear() = R;
  camera.X_WCamera.translation() = box.center() + R * eye;
  return camera;
}

}  // namespace

Camera frame(StandardView view, const Eigen::AlignedBox3d& box, double aspect) {
  if (view != StandardView::ThreeQuarter) return frameParallel(view, box, aspect);
  return framePerspective(rotationOf(attitudeOf(view)), orUnitBox(box), aspect);
}

Camera frameParallel(StandardView view, const Eigen::AlignedBox3d& box, double aspect) {
  return frameOrthographic(rotationOf(attitudeOf(view)), orUnitBox(box), aspect);
}

}  // namespace zyga::picture
