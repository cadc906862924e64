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

/// Width of the picture of a full-frame camera, mm: what a focal length is stated for. The height of our pictures may
/// be another one.
inline constexpr double kFullFrame = 36;

/// m before the eye: what is nearer cannot be seen.
inline constexpr double kNearest = 0.05;

/// A camera as a person would set it up before the animal: level, at eye height, its front raised or lowered so that
/// the animal is in the middle and upright things stay upright.
struct LensShot {
  bool operator==(const LensShot&) const = default;

  double lens = 50;                ///< mm, for a picture kFullFrame wide
  double eyeHeight = 1.6;          ///< m over the ground
  double turn = 0;                 ///< rad about the vertical: 0 from in front of the animal, +90 degrees from its left
  std::optional<double> distance;  ///< m, level, from the eye to the middle of the animal; none: as near as shows all
};

struct LensView {
  Camera camera;
  double distance = 0;   ///< m, level, from the eye to the middle of the animal
  double horizon = 0;    ///< row of the horizon as a share of the height from the top; outside [0, 1] it is not in view
  bool cropped = false;  ///< some of the points are outside the picture or behind the eye
};

/// `points`: of the world, m, that are to be seen, all of them with a margin of 4 % where no distance is given.
/// `aspect` = width / height. Throws std::invalid_argument when lens, distance or aspect is not positive.
LensView lensView(const LensShot& shot, const std::vector<Eigen::Vector3d>& points, double aspect);

/// Angle from side to side of a picture under a lens (mm), rad: 39.6 degrees for 50 mm.
double angleOfView(double lens);

}  // namespace zyga::picture
