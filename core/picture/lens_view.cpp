#include "core/picture/lens_view.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "core/picture/colour.h"
#include "core/picture/framing.h"

namespace zyga::picture {

HorizonLine::HorizonLine(double share, int height) : middle_(share * height), half_(std::max(0.75, height / 2200.0)) {}

double HorizonLine::cover(double top, double bottom) const {
  const double covered = std::min(bottom, middle_ + half_) - std::max(top, middle_ - half_);
  return std::clamp(covered / (bottom - top), 0.0, 1.0);
}

std::optional<double> horizonOf(const Camera& camera) {
  constexpr double kLevel = 1e-6;
  const Eigen::Matrix3d R = camera.X_WCamera.linear();
  if (!camera.perspective || std::abs(R(2, 0)) > kLevel || R(2, 1) < kLevel) return std::nullopt;
  // A level direction d = -back + s up has no height: s = back.z / up.z is the slope of the horizon over the axis.
  const double slope = R(2, 2) / R(2, 1);
  return 0.5 + camera.rise - slope / (2 * std::tan(camera.fieldOfView / 2));
}

Image horizonImage(double share, int width, int height) {
  Image image{width, height, std::vector<std::uint8_t>(4 * static_cast<std::size_t>(width) * height)};
  const HorizonLine line(share, height);
  for (int y = std::max(0, static_cast<int>(std::floor(line.middle() - line.half())));
       y < std::min<double>(height, std::ceil(line.middle() + line.half())); ++y)
    for (int x = 0; x < width; ++x) {
      std::uint8_t* rgba = &image.rgba[4 * (static_cast<std::size_t>(y) * width + x)];
      std::copy(kHorizonInk.begin(), kHorizonInk.end(), rgba);
      rgba[3] = byteOf(static_cast<float>(line.cover(y, y + 1)));
    }
  return image;
}

namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

constexpr double kLensMargin = 0.04;  // of the picture, on each side

/// Columns right, up and back of a level camera.
Matrix3d level(double turn) {
  Matrix3d R;
  R.col(2) = Vector3d(std::cos(turn), std::sin(turn), 0);
  R.col(1) = Vector3d::UnitZ();
  R.col(0) = R.col(1).cross(R.col(2));
  return R;
}

/// Slopes against the axis within which all points are seen from a distance.
struct Spread {
  double left = 1e30, right = -1e30, bottom = 1e30, top = -1e30;
  bool behind = false;
};

Spread spreadOf(const std::vector<Vector3d>& local, double distance) {
  Spread s;
  for (const Vector3d& p : local) {
    const double depth = distance - p.z();
    if (depth < kNearest) {
      s.behind = true;
      continue;
    }
    s.left = std::min(s.left, p.x() / depth);
    s.right = std::max(s.right, p.x() / depth);
    s.bottom = std::min(s.bottom, p.y() / depth);
    s.top = std::max(s.top, p.y() / depth);
  }
  return s;
}

bool fits(const Spread& s, double width, double height) {
  return !s.behind && s.right - s.left <= width && s.top - s.bottom <= height;
}

/// As near as the slopes allow: farther away everything gets smaller.
double fittingDistance(const std::vector<Vector3d>& local, double width, double height) {
  double near = kNearest, far = 1;
  while (!fits(spreadOf(local, far), width, height) && far < 1e6) far *= 2;
  for (int i = 0; i < 60; ++i) {
    const double middle = (near + far) / 2;
    (fits(spreadOf(local, middle), width, height) ? far : near) = middle;
  }
  return far;
}

}  // namespace

double angleOfView(double lens) { return 2 * std::atan(kFullFrame / 2 / lens); }

LensView lensView(const LensShot& shot, const std::vector<Vector3d>& points, double aspect) {
  if (!(shot.lens > 0) || !(aspect > 0) || (shot.distance && !(*shot.distance > 0)))
    throw std::invalid_argument("lens, distance and aspect of a picture must be more than 0");
  const Matrix3d R = level(shot.turn);
  Eigen::AlignedBox3d box;
  for (const Vector3d& p : points) box.extend(p);
  if (box.isEmpty()) box.extend(Vector3d::Zero());
  Vector3d target(box.center().x(), box.center().y(), shot.eyeHeight);
  const double width = kFullFrame / shot.lens, height = width / aspect;  // slopes from side to side
  LensView view;
  std::vector<Vector3d> local;
  // The eye moves sideways until the animal is in the middle, which changes the distance a little: a few rounds settle.
  for (int round = 0; round < 8; ++round) {
    local.clear();
    for (const Vector3d& p : points) local.push_back(R.transpose() * (p - target));
    view.distance = shot.distance ? *shot.distance
                                  : fittingDistance(local, width * (1 - 2 * kLensMargin), height * (1 - 2 * kMargin));
    const Spread s = spreadOf(local, view.distance);
    if (s.left > s.right) break;
    target += R.col(0) * (s.left + s.right) / 2 * view.distance;
  }
  local.clear();
  for (const Vector3d& p : points) local.push_back(R.transpose() * (p - target));
  const Spread s = spreadOf(local, view.distance);
  view.camera.perspective = true;
  view.camera.fieldOfView = 2 * std::atan(height / 2);
  view.camera.X_WCamera.linear() = R;
  view.camera.X_WCamera.translation() = target + R.col(2) * view.distance;
  if (s.bottom <= s.top) view.camera.rise = (s.bottom + s.top) / 2 / height;
  view.horizon = horizonOf(view.camera).value();
  view.cropped = cropped(view.camera, aspect, points);
  return view;
}

}  // namespace zyga::picture
