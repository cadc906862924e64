#include "core/picture/framing.h"

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
    case StandardView::Ventral:
      return {-Vector3d::UnitZ(), Vector3d::UnitY()};
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

namespace {

constexpr double kDegree = std::numbers::pi / 180;
constexpr double kSlack = 1e-9;  // of the picture: a point on the edge is inside

}  // namespace

double aspectOf(StandardView view, const Eigen::Vector3d& size) {
  const auto ratio = [&] {
    switch (view) {
      case StandardView::Left:
      case StandardView::Right:
        return size.x() / size.z();
      case StandardView::Dorsal:
      case StandardView::Ventral:
        return size.x() / size.y();
      case StandardView::Cranial:
      case StandardView::Caudal:
        return size.y() / size.z();
      case StandardView::ThreeQuarter:
        break;
    }
    return 1.6;
  };
  return std::clamp(ratio(), 0.6, 3.0);
}

int heightOf(int width, double aspect) { return std::max(1, static_cast<int>(std::lround(width / aspect))); }

std::optional<double> turnOf(StandardView view) {
  switch (view) {
    case StandardView::Left:
      return 90 * kDegree;
    case StandardView::Right:
      return -90 * kDegree;
    case StandardView::Cranial:
      return 0;
    case StandardView::Caudal:
      return 180 * kDegree;
    case StandardView::Dorsal:
    case StandardView::Ventral:
      return std::nullopt;
    case StandardView::ThreeQuarter:
      break;
  }
  return 49 * kDegree;
}

std::optional<StandardView> sideAt(double turn) {
  constexpr double kAlike = 0.05 * kDegree;
  for (const auto view : {StandardView::Left, StandardView::Right, StandardView::Cranial, StandardView::Caudal,
                          StandardView::ThreeQuarter})
    if (std::abs(std::remainder(turn - *turnOf(view), 2 * std::numbers::pi)) < kAlike) return view;
  return std::nullopt;
}

std::vector<Eigen::Vector3d> cornersOf(const std::vector<Instance>& instances) {
  std::vector<Eigen::Vector3d> corners;
  for (const Instance& instance : instances) {
    if (!instance.mesh || instance.mesh->positions.empty()) continue;
    Eigen::AlignedBox3d box;
    for (const auto& p : instance.mesh->positions) box.extend(p.cast<double>());
    for (int i = 0; i < 8; ++i)
      corners.push_back(instance.X_WB * box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i)));
  }
  return corners;
}

Eigen::AlignedBox3d boundsOf(const std::vector<Instance>& instances) {
  Eigen::AlignedBox3d box;
  for (const Instance& instance : instances) {
    if (!instance.mesh) continue;
    for (const auto& p : instance.mesh->positions) box.extend(instance.X_WB * p.cast<double>());
  }
  return box;
}

namespace {

bool inside(const Camera& camera, const Eigen::Isometry3d& X_CameraW, double aspect, const Eigen::Vector3d& p_W) {
  const Eigen::Vector3d p = X_CameraW * p_W;
  double tall = camera.viewHeight, rise = 0;  // m of the world from bottom to top where the point is
  if (camera.perspective) {
    if (-p.z() < kNearest) return false;
    tall = 2 * std::tan(camera.fieldOfView / 2) * -p.z();
    rise = camera.rise;
  }
  return std::abs(p.x() / (tall * aspect)) <= 0.5 + kSlack && std::abs(p.y() / tall - rise) <= 0.5 + kSlack;
}

}  // namespace

bool cropped(const Camera& camera, double aspect, const std::vector<Eigen::Vector3d>& points) {
  const Eigen::Isometry3d X_CameraW = camera.X_WCamera.inverse();
  return !std::all_of(points.begin(), points.end(),
                      [&](const Eigen::Vector3d& p_W) { return inside(camera, X_CameraW, aspect, p_W); });
}

bool anyInside(const Camera& camera, double aspect, const std::vector<Instance>& instances) {
  const Eigen::Isometry3d X_CameraW = camera.X_WCamera.inverse();
  return std::any_of(instances.begin(), instances.end(), [&](const Instance& instance) {
    return instance.mesh &&
           std::any_of(instance.mesh->positions.begin(), instance.mesh->positions.end(), [&](const auto& p_B) {
             return inside(camera, X_CameraW, aspect, instance.X_WB * p_B.template cast<double>());
           });
  });
}

}  // namespace zyga::picture
