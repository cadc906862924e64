#pragma once

#include <Eigen/Geometry>
#include <QSize>
#include <vector>

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

}  // namespace zyga::ui
