#include "core/picture/lens_view.h"

#include <gtest/gtest.h>

#include <numbers>

#include "core/picture/framing.h"
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

/// What a picture of nothing but a ball on the line shows.
Image withHorizon(bool transparent) {
  PictureOptions options;
  options.width = options.height = 100;
  options.ground = options.outline = false;
  options.transparentGround = transparent;
  options.horizon = 0.505;
  options.occlusionRays = options.shadowRays = 1;
  Camera camera = lensView({50, 1.6, 90 * kDegree, 20.0}, cornersOf(kAnimal), 1).camera;
  camera.rise = 0;
  return trace({{sphere(1, 48), at(0, 0, 1.6)}}, camera, options);
}

TEST(Horizon, IsALineBehindWhatIsThere) {
  const Image image = withHorizon(true), paper = withHorizon(false), alone = horizonImage(0.505, 100, 100);
  const auto at = [](const Image& picture, int x, int y) {
    return &picture.rgba[4 * (static_cast<std::size_t>(y) * 100 + x)];
  };
  // A line of 1.5 pixels about 50.5: all of row 50, a quarter of its neighbours.
  for (const Image* drawn : {&image, &alone}) {
    EXPECT_EQ(at(*drawn, 5, 50)[3], 255);
    EXPECT_NEAR(at(*drawn, 5, 49)[3], 64, 1);
    EXPECT_NEAR(at(*drawn, 5, 51)[3], 64, 1);
    EXPECT_EQ(at(*drawn, 5, 40)[3], 0);
    EXPECT_NEAR(at(*drawn, 5, 50)[0], kHorizonInk[0], 1);
  }
  EXPECT_NEAR(at(paper, 5, 50)[0], kHorizonInk[0], 1);
  EXPECT_GT(at(paper, 5, 40)[0], 200);
  EXPECT_NE(at(image, 50, 50)[0], kHorizonInk[0]) << "the ball stands before it";
}

TEST(Horizon, IsWhereFarThingsAtTheHeightOfTheEyeAre) {
  // Looking down by 10 degrees under 50 mm on 24 mm: the horizon lies tan 10 * 50 / 24 heights over the middle.
  Camera camera;
  camera.perspective = true;
  camera.fieldOfView = 2 * std::atan(12.0 / 50);
  const double down = 10 * kDegree;
  camera.X_WCamera.linear().col(0) = Vector3d::UnitY();
  camera.X_WCamera.linear().col(2) = Vector3d(std::cos(down), 0, std::sin(down));
  camera.X_WCamera.linear().col(1) = camera.X_WCamera.linear().col(2).cross(camera.X_WCamera.linear().col(0));
  camera.X_WCamera.translation() = Vector3d(10, 0, 3);
  EXPECT_NEAR(horizonOf(camera).value(), 0.5 - std::tan(down) * 50 / 24, 1e-12);
  EXPECT_NEAR(horizonOf(camera).value(), onPicture(camera, 1.5, Vector3d(-1e7, 40, 3)).y(), 1e-5);
  camera.perspective = false;
  EXPECT_FALSE(horizonOf(camera));
}

TEST(Framing, KnowsWhatIsOutside) {
  const Camera parallel = frameParallel(StandardView::ThreeQuarter, kAnimal, 1.6);
  EXPECT_FALSE(parallel.perspective);
  EXPECT_FALSE(cropped(parallel, 1.6, cornersOf(kAnimal)));
  EXPECT_TRUE(cropped(parallel, 0.6, cornersOf(kAnimal)));
  const LensView view = lensView({50, 1.6, 90 * kDegree, 20.0}, {Vector3d(0, 0, 1)}, 1.5);
  // At 20 m under 50 mm the picture is 20 * 36 / 50 = 14.4 m wide.
  EXPECT_FALSE(cropped(view.camera, 1.5, {Vector3d(7.1, 0, 1)}));
  EXPECT_TRUE(cropped(view.camera, 1.5, {Vector3d(7.3, 0, 1)}));
  EXPECT_TRUE(cropped(view.camera, 1.5, {Vector3d(0, 30, 1)})) << "behind the eye";
}

TEST(Framing, TurnsAreThoseOfTheStandardSides) {
  // The sides are those of the parallel views: from where their cameras look.
  for (const StandardView view :
       {StandardView::Left, StandardView::Right, StandardView::Cranial, StandardView::Caudal}) {
    const Vector3d back = frame(view, kAnimal, 1.5).X_WCamera.linear().col(2);
    EXPECT_NEAR(std::remainder(std::atan2(back.y(), back.x()) - turnOf(view).value(), 2 * std::numbers::pi), 0, 1e-9);
  }
  EXPECT_FALSE(turnOf(StandardView::Dorsal));
  EXPECT_EQ(sideAt(-180 * kDegree), StandardView::Caudal);
  EXPECT_EQ(sideAt(49 * kDegree), StandardView::ThreeQuarter);
  EXPECT_FALSE(sideAt(60 * kDegree));
}

// What a picture of 85 mm from 6 m beside an animal's middle showed: nothing at all.
TEST(LensView, AnEmptyPictureIsKnown) {
  const std::vector<Instance> bones{{box(0.2, 0.2, 0.2), at(8, 0, 2.5)}, {box(0.2, 0.2, 0.2), at(-8, 0, 2.5)}};
  const LensView near = lensView({85, 2.5, 90 * kDegree, 6.0}, cornersOf(boundsOf(bones)), 1.5);
  EXPECT_FALSE(anyInside(near.camera, 1.5, bones)) << "both lie left and right of the picture";
  const LensView far = lensView({85, 2.5, 90 * kDegree, 60.0}, cornersOf(boundsOf(bones)), 1.5);
  EXPECT_TRUE(anyInside(far.camera, 1.5, bones));
  const LensView at = lensView({85, 2.5, 90 * kDegree, 6.0}, cornersOf(boundsOf({bones[0]})), 1.5);
  EXPECT_TRUE(anyInside(at.camera, 1.5, bones)) << "one is looked at";
}

}  // namespace
}  // namespace zyga::picture
