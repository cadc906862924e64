#include <gtest/gtest.h>

#include <QMatrix4x4>
#include <QVector4D>
#include <algorithm>
#include <cmath>
#include <random>

#include "ui/viewport/camera.h"
#include "ui/viewport/screen_tiles.h"

namespace zyga::ui {
namespace {

using picture::StandardView;

constexpr double kPi = 3.14159265358979323846;

class Dice {
 public:
  double in(double a, double b) { return std::uniform_real_distribution<double>(a, b)(engine_); }
  Eigen::Vector3d point(double reach) { return {in(-reach, reach), in(-reach, reach), in(-reach, reach)}; }
  Camera camera(bool perspective) {
    Camera c;
    c.target = point(5);
    c.azimuth = in(-kPi, kPi);
    c.elevation = in(-1.4, 1.4);
    c.viewHeight = in(0.5, 20);
    c.perspective = perspective;
    c.lens = in(20, 120);
    c.size = {in(300, 2000), in(300, 1200)};
    return c;
  }

 private:
  std::mt19937 engine_{20240917};
};

QVector3D qt(const Eigen::Vector3d& v) {
  return {static_cast<float>(v.x()), static_cast<float>(v.y()), static_cast<float>(v.z())};
}

Eigen::AlignedBox3d animalBox() { return {Eigen::Vector3d(-9, -1.2, 0), Eigen::Vector3d(9, 1.2, 6)}; }

// Directions of the standard views: the animal faces +x, y is left, z dorsal (design, section 3).
TEST(Camera, LeftViewShowsTheHeadOnTheLeftAndTheBackOnTop) {
  Camera c;
  c.turnTo(StandardView::Left);
  EXPECT_TRUE(c.back().isApprox(Eigen::Vector3d::UnitY(), 1e-12));
  EXPECT_TRUE(c.right().isApprox(-Eigen::Vector3d::UnitX(), 1e-12));
  EXPECT_TRUE(c.up().isApprox(Eigen::Vector3d::UnitZ(), 1e-12));
}

TEST(Camera, OtherStandardViewsLookFromTheirSides) {
  const std::pair<StandardView, Eigen::Vector3d> views[] = {{StandardView::Right, {0, -1, 0}},
                                                            {StandardView::Cranial, {1, 0, 0}},
                                                            {StandardView::Caudal, {-1, 0, 0}},
                                                            {StandardView::Dorsal, {0, 0, 1}}};
  for (const auto& [view, back] : views) {
    Camera c;
    c.turnTo(view);
    EXPECT_LT((c.back() - back).norm(), 1e-12);
    EXPECT_NEAR(c.up().dot(c.back()), 0, 1e-12);
    EXPECT_TRUE(c.right().cross(c.up()).isApprox(c.back(), 1e-12));
  }
  Camera top;
  top.turnTo(StandardView::Dorsal);
  EXPECT_TRUE(top.right().isApprox(-Eigen::Vector3d::UnitX(), 1e-12)) << "the head stays on the left";
}

TEST(Camera, SideAndTopViewsAreRecognisedOnlyWhenExact) {
  Camera c;
  c.turnTo(StandardView::Right);
  EXPECT_TRUE(isSideView(c));
  EXPECT_FALSE(isTopView(c));
  c.perspective = true;
  EXPECT_FALSE(isSideView(c));
  c.perspective = false;
  c.orbit({2, 0});
  EXPECT_FALSE(isSideView(c));
  c.turnTo(StandardView::Dorsal);
  EXPECT_TRUE(isTopView(c));
}

// Field of view of a rectilinear lens: 2 atan(h / 2f); 24 mm film and 50 mm give 26.99 degrees.
TEST(Camera, LensGivesTheFieldOfViewOfThirtyFiveMillimetreFilm) {
  Camera c;
  c.lens = 50;
  EXPECT_NEAR(c.fieldOfView() * 180 / kPi, 26.9915, 1e-3);
  c.lens = 12;
  EXPECT_NEAR(c.fieldOfView(), 0.5 * kPi, 1e-12);
}

TEST(Camera, RayThroughAPointsPlaceMeetsThePoint) {
  Dice dice;
  for (int i = 0; i < 400; ++i) {
    const Camera c = dice.camera(i % 2 == 0);
    const Eigen::Vector3d p = c.target + dice.point(0.5 * c.viewHeight);
    const auto at = c.project(p);
    if (!at) continue;
    const Ray ray = c.ray(*at);
    const Eigen::Vector3d d = p - ray.p_WOrigin;
    EXPECT_NEAR(ray.direction_W.norm(), 1, 1e-12);
    EXPECT_LT(d.cross(ray.direction_W).norm(), 1e-8 * d.norm());
    EXPECT_GT(d.dot(ray.direction_W), 0);
    EXPECT_LT((c.onPlane(*at, p) - p).norm(), 1e-8 * (1 + d.norm()));
  }
}

// Against Qt's own matrices, built from eye, target and up.
TEST(Camera, AgreesWithQtMatrices) {
  Dice dice;
  for (int i = 0; i < 200; ++i) {
    const Camera c = dice.camera(i % 2 == 0);
    const ClipRange range{c.eyeDistance() * 0.2, c.eyeDistance() * 4};
    QMatrix4x4 matrix;
    const auto h = static_cast<float>(0.5 * c.viewHeight), w = static_cast<float>(0.5 * c.viewHeight * c.aspect());
    const auto n = static_cast<float>(range.nearest), f = static_cast<float>(range.farthest);
    if (c.perspective)
      matrix.perspective(static_cast<float>(c.fieldOfView() * 180 / kPi), static_cast<float>(c.aspect()), n, f);
    else
      matrix.ortho(-w, w, -h, h, n, f);
    // Orthographic distances count from the target, so that is where its eye is.
    const Eigen::Vector3d eye = c.perspective ? c.eye() : c.target;
    matrix.lookAt(qt(eye), qt(eye - c.back()), qt(Eigen::Vector3d::UnitZ()));
    const Eigen::Vector3d p = c.target + dice.point(0.4 * c.viewHeight);
    const QVector4D theirs = matrix.map(QVector4D(qt(p), 1));
    const Eigen::Vector4d ours = clipOfWorld(c, range) * p.homogeneous();
    const double scale = 1e-4 * (1 + std::abs(ours.w()));
    EXPECT_NEAR(ours.x(), theirs.x(), 10 * scale);
    EXPECT_NEAR(ours.y(), theirs.y(), 10 * scale);
    EXPECT_NEAR(ours.z(), theirs.z(), 30 * scale);
    EXPECT_NEAR(ours.w(), theirs.w(), 10 * scale);
    const auto at = c.project(p);
    ASSERT_TRUE(at);
    EXPECT_NEAR(at->x(), (0.5 + 0.5 * ours.x() / ours.w()) * c.size.x(), 1e-6 * c.size.x());
    EXPECT_NEAR(at->y(), (0.5 - 0.5 * ours.y() / ours.w()) * c.size.y(), 1e-6 * c.size.y());
  }
}

TEST(Camera, WhatIsUnderThePointerStaysWhileZooming) {
  Dice dice;
  for (int i = 0; i < 100; ++i) {
    Camera c = dice.camera(i % 2 == 0);
    const Eigen::Vector2d pixel(dice.in(0, c.size.x()), dice.in(0, c.size.y()));
    const Eigen::Vector3d p = c.onPlane(pixel, c.target);
    const double before = c.viewHeight;
    c.zoomAt(pixel, 1.5);
    EXPECT_NEAR(c.viewHeight, before / 1.5, 1e-9);
    EXPECT_LT((*c.project(p) - pixel).norm(), 1e-6);
  }
}

TEST(Camera, PanMovesThePictureWithThePointer) {
  Dice dice;
  for (int i = 0; i < 100; ++i) {
    Camera c = dice.camera(i % 2 == 0);
    const Eigen::Vector3d p = c.target;
    const Eigen::Vector2d before = *c.project(p), travel(dice.in(-80, 80), dice.in(-80, 80));
    c.pan(travel);
    EXPECT_LT((*c.project(p) - before - travel).norm(), 1e-6);
  }
}

TEST(Camera, OrbitStopsAtThePolesAndKeepsItsTarget) {
  Camera c;
  const Eigen::Vector3d target = c.target;
  c.orbit({0, 1e5});
  EXPECT_DOUBLE_EQ(c.elevation, 0.5 * kPi);
  EXPECT_NEAR(c.up().norm(), 1, 1e-12);
  c.orbit({123, -2e5});
  EXPECT_DOUBLE_EQ(c.elevation, -0.5 * kPi);
  EXPECT_EQ(c.target, target);
}

TEST(Camera, FrameShowsTheWholeBoxAndWastesNoRoom) {
  for (const bool perspective : {false, true})
    for (const auto view :
         {StandardView::Left, StandardView::Dorsal, StandardView::Cranial, StandardView::ThreeQuarter})
      for (const Eigen::Vector2d& size : {Eigen::Vector2d(1200, 700), Eigen::Vector2d(500, 900)}) {
        Camera c;
        c.perspective = perspective;
        c.size = size;
        c.turnTo(view);
        c.frame(animalBox(), 0.05);
        Eigen::AlignedBox2d seen;
        for (int i = 0; i < 8; ++i)
          seen.extend(*c.project(animalBox().corner(static_cast<Eigen::AlignedBox3d::CornerType>(i))));
        const Eigen::Vector2d low = seen.min().cwiseQuotient(size);
        const Eigen::Vector2d high = (size - seen.max()).cwiseQuotient(size);
        EXPECT_GT(low.minCoeff(), 0.045);
        EXPECT_GT(high.minCoeff(), 0.045);
        EXPECT_NEAR(std::min(low.minCoeff(), high.minCoeff()), 0.05, 0.005);
      }
}

TEST(Camera, DepthRangeHoldsTheBox) {
  Dice dice;
  for (int i = 0; i < 100; ++i) {
    Camera c = dice.camera(i % 2 == 0);
    c.frame(animalBox());
    const auto clip = clipOfWorld(c, clipRange(c, animalBox()));
    for (int k = 0; k < 8; ++k) {
      const Eigen::Vector4d p =
          clip * animalBox().corner(static_cast<Eigen::AlignedBox3d::CornerType>(k)).homogeneous();
      EXPECT_GT(p.w(), 0);
      EXPECT_LE(std::abs(p.z() / p.w()), 1.0);
    }
  }
}

TEST(Camera, GlideStartsAndEndsExactlyAndTurnsTheShortWay) {
  Dice dice;
  Camera a = dice.camera(false), b = dice.camera(true);
  b.size = a.size;
  EXPECT_EQ(between(a, b, 1), b);
  a.azimuth = 3.0;
  b.azimuth = -3.0;
  const Camera half = between(a, b, 0.5);
  EXPECT_NEAR(std::cos(half.azimuth), -1, 1e-9);
  EXPECT_NEAR(half.viewHeight, std::sqrt(a.viewHeight * b.viewHeight), 1e-9);
}

// A bone must never be left out while a part of it is on screen.
TEST(FrameView, NeverMissesASphereThatShows) {
  Dice dice;
  int hidden = 0;
  for (int i = 0; i < 3000; ++i) {
    const Camera c = dice.camera(i % 2 == 0);
    const FrameView view(c, {Eigen::Vector3d::Constant(-20), Eigen::Vector3d::Constant(20)});
    const Eigen::Vector3d centre = c.target + dice.point(2 * c.viewHeight);
    const double radius = dice.in(0.05, 0.5) * c.viewHeight;
    const bool seen = view.sees(centre, radius);
    hidden += seen ? 0 : 1;
    for (int k = 0; k < 20 && !seen; ++k) {
      const auto at = c.project(centre + radius * dice.point(1).normalized());
      const bool shows = at && (at->array() > 0).all() && (at->array() < c.size.array()).all();
      EXPECT_FALSE(shows);
    }
  }
  EXPECT_GT(hidden, 500) << "culling must spare something";
}

TEST(ScreenTiles, CoverWhatWasTakenInOnceAndLittleMore) {
  Dice dice;
  const QSize size(613, 407);  // no multiple of a tile
  for (int round = 0; round < 50; ++round) {
    ScreenTiles tiles(size);
    std::vector<Eigen::AlignedBox2d> boxes;
    for (int i = 0; i < 5; ++i) {
      const Eigen::Vector2d low(dice.in(-60, 640), dice.in(-60, 440));
      boxes.emplace_back(low, low + Eigen::Vector2d(dice.in(0, 90), dice.in(0, 90)));
      tiles.add(boxes.back());
    }
    const auto rectangles = tiles.rectangles();
    const auto holding = [&](double x, double y) {
      const Eigen::Vector2f part(static_cast<float>(x / size.width()), static_cast<float>(1 - y / size.height()));
      return std::count_if(rectangles.begin(), rectangles.end(), [&](const auto& r) { return r.contains(part); });
    };
    for (int k = 0; k < 200; ++k) {
      const double x = dice.in(0, size.width()), y = dice.in(0, size.height());
      const bool inside =
          std::any_of(boxes.begin(), boxes.end(), [&](const auto& box) { return box.contains(Eigen::Vector2d(x, y)); });
      EXPECT_LE(holding(x, y), 1);
      EXPECT_GE(holding(x, y), inside ? 1 : 0);
    }
  }
  ScreenTiles none(size), outside(size), all(size);
  outside.add({Eigen::Vector2d(-200, 10), Eigen::Vector2d(-100, 50)});
  all.addAll();
  EXPECT_EQ(none.share(), 0);
  EXPECT_EQ(outside.share(), 0);
  EXPECT_EQ(all.share(), 1);
}

TEST(Pace, DrawsFewerPixelsWhenSlowAndComesBack) {
  Pace pace;
  const double first = pace.scale();
  pace.took(200);
  EXPECT_LT(pace.scale(), first);
  for (int i = 0; i < 20; ++i) pace.took(200);
  EXPECT_GT(pace.scale(), 0.3);
  for (int i = 0; i < 100; ++i) pace.took(5);
  EXPECT_DOUBLE_EQ(pace.scale(), 1);
}

TEST(Pace, DoesNotSwing) {
  Pace pace;
  const double first = pace.scale();
  for (int i = 0; i < 50; ++i) pace.took(i % 2 == 0 ? 10 : 40);
  EXPECT_DOUBLE_EQ(pace.scale(), first);
}

}  // namespace
}  // namespace zyga::ui
