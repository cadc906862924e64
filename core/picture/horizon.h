#pragma once

#include "core/picture/picture.h"

namespace zyga::picture {

/// Warm grey that stays behind the bones, sRGB.
inline constexpr std::array<std::uint8_t, 3> kHorizonInk{0x6B, 0x65, 0x5B};

/// The horizon as a level line across a picture.
class HorizonLine {
 public:
  /// `share`: where, as a share of the height from the top. `height`: of the picture, pixels.
  HorizonLine(double share, int height);

  double middle() const { return middle_; }  ///< pixels from the top
  double half() const { return half_; }      ///< half its width, pixels
  /// Share of the rows from `top` to `bottom` (pixels) that the line covers.
  double cover(double top, double bottom) const;

 private:
  double middle_, half_;
};

/// Row of the horizon as a share of the height from the top, outside [0, 1] when it is not in the picture; none without
/// perspective and for a camera that is rolled or looks straight up or down.
std::optional<double> horizonOf(const Camera& camera);

/// The horizon alone on nothing.
Image horizonImage(double share, int width, int height);

}  // namespace zyga::picture
