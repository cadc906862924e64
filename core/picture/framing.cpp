#include "core/picture/framing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace zyga::picture {

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

bool cropped(const Camera& camera, double aspect, const std::vector<Eigen::Vector3d>& points) {
  const Eigen::Isometry3d X_CameraW = camera.X_WCamera.inverse();
  return std::any_of(points.begin(), points.end(), [&](const Eigen::Vector3d& p_W) {
    const Eigen::Vector3d p = X_CameraW * p_W;
    double tall = camera.viewHeight, rise = 0;  // m of the world from bottom to top where the point is
    if (camera.perspective) {
      if (-p.z() < kNearest) return true;
      tall = 2 * std::tan(camera.fieldOfView / 2) * -p.z();
      rise = camera.rise;
    }
    return std::abs(p.x() / (tall * aspect)) > 0.5 + kSlack || std::abs(p.y() / tall - rise) > 0.5 + kSlack;
  });
}

}  // namespace zyga::picture
