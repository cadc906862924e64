#include "ui/viewport/frame_view.h"

#include <algorithm>
#include <cmath>

namespace zyga::ui {

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

}  // namespace zyga::ui
