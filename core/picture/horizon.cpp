#include "core/picture/horizon.h"

#include <algorithm>
#include <cmath>

#include "core/picture/colour.h"

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

}  // namespace zyga::picture
