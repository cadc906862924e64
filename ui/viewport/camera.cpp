#include "ui/viewport/camera.h"

#include <algorithm>
#include <cmath>

namespace zyga::ui {
namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr double kFilmHeight = 24;                        // mm
constexpr double kOrbitPerPixel = 0.008;                  // rad; half a turn in the width of a small window
constexpr double kLongLens = 1200;                        // mm
constexpr double kLeastHeight = 0.02, kMostHeight = 500;  // m

// A fraction of a degree, so that an orbit back to the side snaps to nothing but a true standard view.
constexpr double kAlong = 1 - 1e-5;

std::array<Eigen::Vector3d, 8> corners(const Eigen::AlignedBox3d& box) {
  std::array<Eigen::Vector3d, 8> out;
  for (int i = 0; i < 8; ++i) out[i] = box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i));
  return out;
}

// The middle and the half height of a field of view that just holds the points (a, z): |a - middle| <= half - k z,
// where z counts towards the eye and k is the growth of the field per metre (0 without perspective).
struct Fit {
  double most = -1e300, least = 1e300;
  void add(double a, double kz) {
    most = std::max(most, a + kz);
    least = std::min(least, a - kz);
  }
  double middle() const { return 0.5 * (most + least); }
  double half() const { return 0.5 * (most - least); }
};

}  // namespace

Eigen::Vector3d Camera::right() const { return {-std::sin(azimuth), std::cos(azimuth), 0}; }

Eigen::Vector3d Camera::up() const { return back().cross(right()); }

Eigen::Vector3d Camera::back() const {
  const double c = std::cos(elevation);
  return {c * std::cos(azimuth), c * std::sin(azimuth), std::sin(elevation)};
}

double Camera::fieldOfView() const { return 2 * std::atan(0.5 * kFilmHeight / lens); }

double Camera::eyeDistance() const { return viewHeight * lens / kFilmHeight; }

Eigen::Vector3d Camera::eye() const { return target + eyeDistance() * back(); }

double Camera::metresPerPixelAt(const Eigen::Vector3d& p_W) const {
  if (!perspective) return metresPerPixel();
  return metresPerPixel() * std::max(1e-6, (eye() - p_W).dot(back()) / eyeDistance());
}

Eigen::Isometry3d Camera::X_WCamera() const {
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  X.linear() << right(), up(), back();
  X.translation() = perspective ? eye() : target;
  return X;
}

Ray Camera::ray(const Eigen::Vector2d& pixel) const {
  const Eigen::Vector2d at = (pixel - 0.5 * size) * metresPerPixel();
  const Eigen::Vector3d p_W = target + at.x() * right() - at.y() * up();
  if (perspective) return {eye(), (p_W - eye()).normalized()};
  return {p_W + kMostHeight * back(), -back()};
}

std::optional<Eigen::Vector2d> Camera::project(const Eigen::Vector3d& p_W) const {
  const Eigen::Vector3d d = p_W - target;
  double scale = 1 / metresPerPixel();
  if (perspective) {
    const double depth = eyeDistance() - d.dot(back());
    if (depth < 1e-6) return std::nullopt;
    scale *= eyeDistance() / depth;
  }
  return Eigen::Vector2d(0.5 * size.x() + scale * d.dot(right()), 0.5 * size.y() - scale * d.dot(up()));
}

Eigen::Vector3d Camera::onPlane(const Eigen::Vector2d& pixel, const Eigen::Vector3d& p_WPlane) const {
  const Ray r = ray(pixel);
  const double along = (p_WPlane - r.p_WOrigin).dot(back()) / r.direction_W.dot(back());
  return r.p_WOrigin + along * r.direction_W;
}

void Camera::orbit(const Eigen::Vector2d& pixels) {
  azimuth = std::remainder(azimuth - kOrbitPerPixel * pixels.x(), 2 * kPi);
  elevation = std::clamp(elevation + kOrbitPerPixel * pixels.y(), -0.5 * kPi, 0.5 * kPi);
}

void Camera::pan(const Eigen::Vector2d& pixels) {
  target += metresPerPixel() * (-pixels.x() * right() + pixels.y() * up());
}

void Camera::zoomAt(const Eigen::Vector2d& pixel, double factor) {
  const Eigen::Vector3d before = onPlane(pixel, target);
  viewHeight = std::clamp(viewHeight / factor, kLeastHeight, kMostHeight);
  target += before - onPlane(pixel, target);
}

void Camera::turnTo(picture::StandardView view) {
  using picture::StandardView;
  elevation = 0;
  switch (view) {
    case StandardView::Left:
      azimuth = 0.5 * kPi;
      break;
    case StandardView::Right:
      azimuth = -0.5 * kPi;
      break;
    case StandardView::Cranial:
      azimuth = 0;
      break;
    case StandardView::Caudal:
      azimuth = kPi;
      break;
    case StandardView::Dorsal:
      azimuth = 0.5 * kPi;
      elevation = 0.5 * kPi;
      break;
    case StandardView::Ventral:
      azimuth = 0.5 * kPi;
      elevation = -0.5 * kPi;
      break;
    case StandardView::ThreeQuarter:
      azimuth = kPi * 55 / 180;
      elevation = kPi * 14 / 180;
      break;
  }
}

void Camera::frame(const Eigen::AlignedBox3d& box, double margin) {
  if (box.isEmpty()) return;
  // Half the field of view per metre of distance, the margins taken off.
  const double room = 1 - 2 * margin;
  const double kUp = perspective ? room * std::tan(0.5 * fieldOfView()) : 0, kRight = kUp * aspect();
  Fit across, upward;
  for (const auto& corner : corners(box)) {
    const Eigen::Vector3d d = corner - box.center();
    across.add(d.dot(right()), kRight * d.dot(back()));
    upward.add(d.dot(up()), kUp * d.dot(back()));
  }
  const double half = std::max(upward.half(), across.half() / aspect()) / room;
  target = box.center() + across.middle() * right() + upward.middle() * up();
  viewHeight = std::clamp(2 * half, kLeastHeight, kMostHeight);
}

ClipRange clipRange(const Camera& camera, const Eigen::AlignedBox3d& box) {
  if (box.isEmpty()) return {};
  const Eigen::Vector3d origin = camera.X_WCamera().translation();
  ClipRange range{1e9, -1e9};
  for (const auto& corner : corners(box)) {
    const double away = (origin - corner).dot(camera.back());
    range.nearest = std::min(range.nearest, away);
    range.farthest = std::max(range.farthest, away);
  }
  const double slack = 0.02 * (range.farthest - range.nearest) + 0.01;
  range.nearest -= slack;
  range.farthest += slack;
  if (camera.perspective) {
    range.farthest = std::max(range.farthest, 0.1);
    range.nearest = std::max(range.nearest, 0.002 * range.farthest);
  }
  return range;
}

Eigen::Matrix4d clipOfWorld(const Camera& camera, const ClipRange& range) {
  const double n = range.nearest, f = range.farthest;
  Eigen::Matrix4d clip = Eigen::Matrix4d::Zero();
  if (camera.perspective) {
    const double k = 1 / std::tan(0.5 * camera.fieldOfView());
    clip(0, 0) = k / camera.aspect();
    clip(1, 1) = k;
    clip(2, 2) = (f + n) / (n - f);
    clip(2, 3) = 2 * f * n / (n - f);
    clip(3, 2) = -1;
  } else {
    clip(0, 0) = 2 / (camera.viewHeight * camera.aspect());
    clip(1, 1) = 2 / camera.viewHeight;
    clip(2, 2) = -2 / (f - n);
    clip(2, 3) = -(f + n) / (f - n);
    clip(3, 3) = 1;
  }
  return clip * camera.X_WCamera().inverse().matrix();
}

Camera between(const Camera& a, const Camera& b, double t) {
  if (t >= 1) return b;
  Camera c = b;
  c.azimuth = a.azimuth + t * std::remainder(b.azimuth - a.azimuth, 2 * kPi);
  c.elevation = a.elevation + t * (b.elevation - a.elevation);
  c.target = a.target + t * (b.target - a.target);
  c.viewHeight = a.viewHeight * std::pow(b.viewHeight / a.viewHeight, t);
  c.lens = a.lens + t * (b.lens - a.lens);
  if (a.perspective != b.perspective) {
    // Without perspective is what a very long lens shows: the change glides instead of jumping.
    const double from = a.perspective ? a.lens : kLongLens, to = b.perspective ? b.lens : kLongLens;
    c.perspective = true;
    c.lens = from * std::pow(to / from, t);
  }
  return c;
}

bool isSideView(const Camera& camera) { return !camera.perspective && std::abs(camera.back().y()) > kAlong; }

bool isTopView(const Camera& camera) { return !camera.perspective && std::abs(camera.back().z()) > kAlong; }

}  // namespace zyga::ui
