#pragma once

#include "ui/viewport/camera.h"

namespace zyga::ui {

/// Where a frame is looked at from and how finely it is to be drawn, worked out once a frame.
struct FrameView {
  Camera camera;
  ClipRange range;
  Eigen::Matrix4f clipOfWorld = Eigen::Matrix4f::Identity();
  Eigen::Vector3f light_W = Eigen::Vector3f::UnitZ();  ///< towards the key light, unit
  float pixelScale = 1;                                ///< pixels of the target per pixel of the design
  double edgePixels = 2.5;                             ///< triangles need not have edges shorter than this on screen

  FrameView(const Camera& camera, const Eigen::AlignedBox3d& box);

  /// Whether any of the sphere (world, m) can be on screen.
  bool sees(const Eigen::Vector3d& p_WCentre, double radius) const;
  /// The longest edge of a triangle near this place that is fine enough, m.
  double edgeAt(const Eigen::Vector3d& p_W, double radius) const;
};

}  // namespace zyga::ui
