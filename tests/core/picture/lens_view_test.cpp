#include "core/picture/lens_view.h"

#include <gtest/gtest.h>

#include <numbers>

#include "tests/core/picture/shapes.h"

namespace zyga::picture {
namespace {

using namespace test;
using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;

std::vector<Vector3d> cornersOf(const Eigen::AlignedBox3d& box) {
  std::vector<Vector3d> corners;
  for (int i = 0; i < 8; ++i) corners.push_back(box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i)));
  return corners;
}

const Eigen::AlignedBox3d kAnimal(Vector3d(-9, -1, 0), Vector3d(9, 1, 8));

/// Place in the picture, from the upper left, as shares of width and height.
Eigen::Vector2d onPicture(const Camera& camera, double aspect, const Vector3d& p_W) {
  const Vector3d p = camera.X_WCamera.inverse() * p_W;
  const double tall = 2 * std::tan(camera.fieldOfView / 2) * -p.z();
  return {0.5 + p.x() / (tall * aspect), 0.5 + camera.rise - p.y() / tall};
}

TEST(LensView, AnglesOfViewAreThoseOfTheBooks) {
  // Full frame, side to side: 24 mm 73.7, 35 mm 54.4, 50 mm 39.6, 85 mm 23.9 degrees (2 atan(18 / f)).
  EXPECT_NEAR(angleOfView(24) / kDegree, 73.7, 0.05);
  EXPECT_NEAR(angleOfView(35) / kDegree, 54.4, 0.05);
  EXPECT_NEAR(angleOfView(50) / kDegree, 39.6, 0.05);
  EXPECT_NEAR(angleOfView(85) / kDegree, 23.9, 0.05);
}

TEST(LensView, AKnownThingHasTheSizeThatThinLensesGive) {
  // 1 m at 20 m under 50 mm: 50 / 20000 * 1000 = 2.5 mm on film, of 36: 2.5 / 36 of the width.
  const LensShot shot{50, 1.6, 90 * kDegree, 20.0};
  const LensView view = lensView(shot, cornersOf(kAnimal), 1.5);
  const Vector3d a(0, 0, 1), b(1, 0, 1);
  EXPECT_NEAR(std::abs((onPicture(view.camera, 1.5, a) - onPicture(view.camera, 1.5, b)).x()), 2.5 / 36, 1e-9);
  // And through the rays that trace the picture: a box of 1 m whose near side is 20 m away.
  const std::vector<Instance> things{{box(1, 0.001, 1), at(0, 0, 1.6)}};
  PictureOptions options;
  options.width = 720;
  options.height = 480;
  options.transparentGround = true;
  options.ground = options.outline = false;
  options.occlusionRays = options.shadowRays = 1;
  const LensView close = lensView(shot, cornersOf({Vector3d(-0.5, 0, 1.1), Vector3d(0.5, 0, 2.1)}), 1.5);
  const Image image = trace(things, close.camera, options);
  double columns = 0;
  for (int x = 0; x < options.width; ++x)
    columns += image.rgba[4 * (240UL * 720 + static_cast<unsigned>(x)) + 3] / 255.0;
  EXPECT_NEAR(columns, 720 * 2.5 / 36, 0.5);
}

TEST(LensView, TheHorizonIsWhereEyeHeightIs) {
  const LensView view = lensView({50, 1.6, 49 * kDegree, std::nullopt}, cornersOf(kAnimal), 1.5);
  // Whatever stands as high as the eye meets the horizon, near and far.
  for (const double x : {-8.0, 0.0, 8.0})
    EXPECT_NEAR(onPicture(view.camera, 1.5, Vector3d(x, 0.3, 1.6)).y(), view.horizon, 1e-9);
  // Points far away on the ground come to it.
  const Vector3d far = view.camera.X_WCamera.translation() - 1e6 * view.camera.X_WCamera.linear().col(2);
  EXPECT_NEAR(onPicture(view.camera, 1.5, Vector3d(far.x(), far.y(), 0)).y(), view.horizon, 1e-4);
}

TEST(LensView, ShowsAllWithTheMarginAndStaysLevel) {
  for (const double lens : {24.0, 50.0, 135.0})
    for (const double turn : {0.0, 49.0, 90.0, 200.0}) {
      const LensView view = lensView({lens, 1.6, turn * kDegree, std::nullopt}, cornersOf(kAnimal), 1.5);
      EXPECT_FALSE(view.cropped);
      double least = 1;
      for (const Vector3d& p : cornersOf(kAnimal)) {
        const auto at = onPicture(view.camera, 1.5, p);
        least = std::min({least, at.x(), 1 - at.x(), at.y(), 1 - at.y()});
      }
      EXPECT_NEAR(least, 0.04, 0.004) << lens << " mm from " << turn;
      EXPECT_NEAR(view.camera.X_WCamera.linear().col(1).z(), 1, 1e-12);
      EXPECT_NEAR(view.camera.X_WCamera.translation().z(), 1.6, 1e-12);
    }
}

TEST(LensView, TellsWhatIsOutside) {
  EXPECT_TRUE(lensView({50, 1.6, 90 * kDegree, 5.0}, cornersOf(kAnimal), 1.5).cropped);
  EXPECT_FALSE(lensView({50, 1.6, 90 * kDegree, 60.0}, cornersOf(kAnimal), 1.5).cropped);
  EXPECT_THROW(lensView({0, 1.6, 0, std::nullopt}, {}, 1.5), std::invalid_argument);
}

TEST(Horizon, IsALineBehindWhatIsThere) {
  Image image{10, 100, std::vector<std::uint8_t>(4000)};
  image.rgba[4 * (50 * 10 + 3)] = 200;
  image.rgba[4 * (50 * 10 + 3) + 3] = 255;  // a bone on the horizon
  drawHorizon(image, 0.505, {107, 101, 91});
  EXPECT_EQ(image.rgba[4 * (50 * 10 + 3)], 200);
  EXPECT_EQ(image.rgba[4 * (50 * 10 + 4)], 107);
  EXPECT_EQ(image.rgba[4 * (50 * 10 + 4) + 3], 255);
  EXPECT_EQ(image.rgba[4 * (40 * 10 + 4) + 3], 0);
}

}  // namespace
}  // namespace zyga::picture
