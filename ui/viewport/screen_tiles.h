#pragma once

#include <Eigen/Geometry>
#include <QSize>
#include <vector>

#include "ui/viewport/camera.h"

namespace zyga::ui {

/// The part of the window that bones may cover, in square tiles, so that costly work is done only there.
class ScreenTiles {
 public:
  static constexpr int kTile = 16;  ///< pixels

  explicit ScreenTiles(QSize pixels);
  /// Takes in all tiles that the box (pixels from the upper left) touches, with a few pixels around it.
  void add(const Eigen::AlignedBox2d& box);
  void addAll();

  /// Rectangles that together cover what was taken in and nothing twice; parts of the window from 0 to 1, from the
  /// lower left, as OpenGL counts.
  std::vector<Eigen::AlignedBox2f> rectangles() const;
  /// Share of the window that was taken in.
  double share() const;

 private:
  QSize pixels_;
  int columns_, rows_;
  std::vector<char> taken_;
};

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

/// Keeps moving pictures fluent on a machine without a graphics processor: draws fewer pixels when frames take too
/// long, more when there is time to spare.
class Pace {
 public:
  /// Tells what the last frame took at the present scale, ms.
  void took(double milliseconds);
  /// Pixels drawn per pixel of the window, each way.
  double scale() const;

 private:
  int step_ = 1;
  int quickFrames_ = 0;
};

}  // namespace zyga::ui
