#pragma once

#include <Eigen/Geometry>
#include <optional>

#include "core/picture/picture.h"

namespace zyga::ui {

/// A half line in the world; `direction_W` is a unit vector.
struct Ray {
  Eigen::Vector3d p_WOrigin = Eigen::Vector3d::Zero();
  Eigen::Vector3d direction_W = -Eigen::Vector3d::UnitZ();
};

/// Looks at a target from azimuth and elevation, z up. A value: copy it to remember a view. Lengths in m, angles in
/// rad, places in the window in pixels from the upper left. Azimuth 0 looks from in front of the animal (+x), 90
/// degrees from its left.
struct Camera {
  Eigen::Vector3d target = Eigen::Vector3d::Zero();
  double azimuth = 1.5707963267948966;
  double elevation = 0;
  double viewHeight = 5;  ///< of the world from bottom to top, in the plane through the target
  bool perspective = false;
  double lens = 50;                ///< mm, on film 24 mm high (35 mm film)
  Eigen::Vector2d size{800, 600};  ///< of the window, pixels

  bool operator==(const Camera&) const = default;

  Eigen::Vector3d right() const;
  Eigen::Vector3d up() const;
  Eigen::Vector3d back() const;  ///< from the target to the eye

  double aspect() const { return size.x() / size.y(); }
  double fieldOfView() const;  ///< from bottom to top, perspective
  double eyeDistance() const;  ///< from the target, perspective
  Eigen::Vector3d eye() const;
  double metresPerPixel() const { return viewHeight / size.y(); }  ///< in the plane through the target
  double metresPerPixelAt(const Eigen::Vector3d& p_W) const;

  /// Camera frame in the world: x right, y up, looks along -z. Origin at the eye (orthographic: at the target).
  Eigen::Isometry3d X_WCamera() const;
  Ray ray(const Eigen::Vector2d& pixel) const;
  /// Where a point appears; nothing when it is behind the eye.
  std::optional<Eigen::Vector2d> project(const Eigen::Vector3d& p_W) const;
  /// The point under the pixel in the plane through `p_WPlane` parallel to the screen.
  Eigen::Vector3d onPlane(const Eigen::Vector2d& pixel, const Eigen::Vector3d& p_WPlane) const;

  void orbit(const Eigen::Vector2d& pixels);
  void pan(const Eigen::Vector2d& pixels);
  /// Magnifies by `factor`; what is under the pixel in the target's plane stays there.
  void zoomAt(const Eigen::Vector2d& pixel, double factor);

  void turnTo(picture::StandardView view);
  /// Centres the box and shows all of it, with `margin` as a share of the window on each side.
  void frame(const Eigen::AlignedBox3d& box, double margin = 0.06);
};

/// Nearest and farthest distance along the line of sight, m, for depth; orthographic distances count from the target
/// and may be negative.
struct ClipRange {
  double nearest = 0.1;
  double farthest = 100;
};
ClipRange clipRange(const Camera& camera, const Eigen::AlignedBox3d& box);

/// Clip coordinates of the world, depth as OpenGL has it.
Eigen::Matrix4d clipOfWorld(const Camera& camera, const ClipRange& range);

/// On the way from `a` to `b`, t in [0, 1]: turns the short way round, magnifies evenly.
Camera between(const Camera& a, const Camera& b, double t);

/// Whether the camera looks along the animal's y axis without perspective, so that pulling in the view can only
/// raise or lower.
bool isSideView(const Camera& camera);
/// The same from above or below.
bool isTopView(const Camera& camera);

}  // namespace zyga::ui
