#include "ui/viewport/screen_tiles.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace zyga::ui {

namespace {

constexpr double kAround = 6;  // pixels: room for the widest outline

int tileAt(double pixel, int count) {
  const double tile = std::floor(pixel / ScreenTiles::kTile);
  return static_cast<int>(std::clamp(tile, 0.0, static_cast<double>(count - 1)));
}

}  // namespace

ScreenTiles::ScreenTiles(QSize pixels)
    : pixels_(pixels),
      columns_(std::max(1, (pixels.width() + kTile - 1) / kTile)),
      rows_(std::max(1, (pixels.height() + kTile - 1) / kTile)),
      taken_(static_cast<std::size_t>(columns_ * rows_), 0) {}

void ScreenTiles::add(const Eigen::AlignedBox2d& box) {
  const Eigen::AlignedBox2d window(Eigen::Vector2d::Zero(), Eigen::Vector2d(pixels_.width(), pixels_.height()));
  const Eigen::AlignedBox2d wide(box.min().array() - kAround, box.max().array() + kAround);
  if (box.isEmpty() || !window.intersects(wide)) return;
  const int left = tileAt(wide.min().x(), columns_), right = tileAt(wide.max().x(), columns_);
  const int top = tileAt(wide.min().y(), rows_), bottom = tileAt(wide.max().y(), rows_);
  for (int row = top; row <= bottom; ++row)
    std::fill(taken_.begin() + row * columns_ + left, taken_.begin() + row * columns_ + right + 1, char{1});
}

void ScreenTiles::addAll() { std::fill(taken_.begin(), taken_.end(), char{1}); }

std::vector<Eigen::AlignedBox2f> ScreenTiles::rectangles() const {
  std::vector<Eigen::AlignedBox2f> out;
  const Eigen::Array2f pixels(static_cast<float>(pixels_.width()), static_cast<float>(pixels_.height()));
  const auto place = [&](int column, int row) {
    const Eigen::Array2f at(static_cast<float>(column * kTile), static_cast<float>(row * kTile));
    const Eigen::Array2f part = at.min(pixels) / pixels;
    return Eigen::Vector2f(part.x(), 1 - part.y());
  };
  for (int row = 0; row < rows_; ++row)
    for (int first = 0; first < columns_;) {
      int end = first;
      while (end < columns_ && taken_[static_cast<std::size_t>(row * columns_ + end)] != 0) ++end;
      if (end > first) {
        const Eigen::Vector2f upper = place(first, row), lower = place(end, row + 1);
        out.emplace_back(Eigen::Vector2f(upper.x(), lower.y()), Eigen::Vector2f(lower.x(), upper.y()));
      }
      first = std::max(end, first + 1);
    }
  return out;
}

double ScreenTiles::share() const {
  return static_cast<double>(std::count(taken_.begin(), taken_.end(), char{1})) / static_cast<double>(taken_.size());
}

FrameView::FrameView(const Camera& seen, const Eigen::AlignedBox3d& box) : camera(seen), range(clipRange(seen, box)) {
  clipOfWorld = ui::clipOfWorld(camera, range).cast<float>();
  // From the upper front left of the animal, steep enough to keep the shadow under it.
  light_W = Eigen::Vector3f(0.42f, 0.48f, 0.77f).normalized();
}

bool FrameView::sees(const Eigen::Vector3d& p_WCentre, double radius) const {
  const Eigen::Vector3d d = p_WCentre - camera.target;
  double halfHeight = 0.5 * camera.viewHeight, slack = radius;
  if (camera.perspective) {
    const double depth = camera.eyeDistance() - d.dot(camera.back());
    if (depth < -radius) return false;
    halfHeight *= std::max(depth, 0.0) / camera.eyeDistance();
    // The sphere's reach across a slanted side of the field of view.
    slack *= std::sqrt(1 + std::pow(std::tan(0.5 * camera.fieldOfView()) * std::max(1.0, camera.aspect()), 2));
  }
  return std::abs(d.dot(camera.up())) < halfHeight + slack &&
         std::abs(d.dot(camera.right())) < halfHeight * camera.aspect() + slack;
}

double FrameView::edgeAt(const Eigen::Vector3d& p_W, double radius) const {
  const Eigen::Vector3d nearest = p_W + radius * camera.back();
  return edgePixels * camera.metresPerPixelAt(nearest) / std::max(0.25f, pixelScale);
}

namespace {

constexpr std::array kScales{1.0, 0.8, 0.65, 0.5, 0.4};
// A tenth of a second a frame is the aim; the rest of it belongs to the pose, the findings and the other panels.
constexpr double kTooLong = 55, kQuick = 22;  // ms
constexpr int kPatience = 12;                 // quick frames before drawing finer, so that it does not swing

}  // namespace

double Pace::scale() const { return kScales[static_cast<std::size_t>(step_)]; }

void Pace::took(double milliseconds) {
  quickFrames_ = milliseconds < kQuick ? quickFrames_ + 1 : 0;
  if (milliseconds > kTooLong)
    step_ = std::min(step_ + 1, static_cast<int>(kScales.size()) - 1);
  else if (quickFrames_ >= kPatience && step_ > 0) {
    --step_;
    quickFrames_ = 0;
  }
}

}  // namespace zyga::ui
