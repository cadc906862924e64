#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <mutex>

#include "tests/core/picture/shapes.h"

namespace zyga::picture {
namespace {

using namespace test;
using Eigen::Vector3d;

std::vector<Instance> group() {
  return {{sphere(0.5), at(0, 0, 0.5)}, {sphere(0.4), at(0.8, 0.1, 0.4)}, {box(0.5, 0.5, 1), at(-1, 0, 0.5)}};
}

Camera lookAt(StandardView view, const std::vector<Instance>& instances, const PictureOptions& options) {
  return frame(view, worldBox(instances), static_cast<double>(options.width) / options.height);
}

TEST(Trace, SameBytesEveryTimeAndForAnyThreadCount) {
  const auto instances = group();
  PictureOptions options = quick(150, 90);
  const Camera camera = lookAt(StandardView::ThreeQuarter, instances, options);
  options.task = task::Task().withThreads(1);
  const Image one = trace(instances, camera, options);
  const Image again = trace(instances, camera, options);
  options.task = task::Task().withThreads(2);
  const Image two = trace(instances, camera, options);
  options.task = task::Task().withThreads(7);
  const Image seven = trace(instances, camera, options);
  EXPECT_EQ(one.rgba, again.rgba);
  EXPECT_EQ(one.rgba, two.rgba);
  EXPECT_EQ(one.rgba, seven.rgba);
}

/// First and last pixel of a row, or of a column, with any bone in it.
std::pair<int, int> extent(const Image& image, bool alongX) {
  int first = -1, last = -1;
  for (int y = 0; y < image.height; ++y)
    for (int x = 0; x < image.width; ++x)
      if (pixel(image, x, y).alpha > 127) {
        const int at = alongX ? x : y;
        if (first < 0 || at < first) first = at;
        last = std::max(last, at);
      }
  return {first, last};
}

TEST(Trace, OrthographicScaleIsExact) {
  const std::vector<Instance> instances{{box(1, 1, 1), at(3, 2, 5)}};
  PictureOptions options = quick(200, 160);
  options.outline = options.ground = false;
  options.transparentGround = true;
  for (const StandardView view :
       {StandardView::Left, StandardView::Right, StandardView::Dorsal, StandardView::Cranial, StandardView::Caudal}) {
    Camera camera = lookAt(view, instances, options);
    camera.viewHeight = 1.6;  // 100 pixels a metre
    const Image image = trace(instances, camera, options);
    for (const bool alongX : {true, false}) {
      const auto [first, last] = extent(image, alongX);
      EXPECT_NEAR(last - first + 1, 100, 1) << static_cast<int>(view);
      EXPECT_NEAR((first + last + 1) / 2.0, alongX ? 100 : 80, 1) << static_cast<int>(view);
    }
  }
}

TEST(Trace, PerspectiveScaleFollowsDistance) {
  const std::vector<Instance> instances{{box(0.001, 1, 1), at(0, 0, 5)}};
  PictureOptions options = quick(200, 160);
  options.outline = options.ground = false;
  options.transparentGround = true;
  Camera camera = lookAt(StandardView::Cranial, instances, options);
  camera.perspective = true;
  camera.fieldOfView = 2 * std::atan(0.8 / 4);  // 1.6 m tall at 4 m
  camera.X_WCamera.translation() = Vector3d(4, 0, 5);
  const auto [first, last] = extent(trace(instances, camera, options), true);
  EXPECT_NEAR(last - first + 1, 100, 1);
}

TEST(Trace, HeadIsLeftInTheLeftViewAndRightInTheRight) {
  const std::vector<Instance> instances{{box(2, 0.2, 0.2), at(0, 0, 0.5)},
                                        {sphere(0.3), at(1, 0, 0.5), {0.9f, 0.1f, 0.1f}}};
  PictureOptions options = quick(120, 60);
  const Image left = trace(instances, lookAt(StandardView::Left, instances, options), options);
  const Image right = trace(instances, lookAt(StandardView::Right, instances, options), options);
  const auto reds = [](const Image& image, int from, int to) {
    int count = 0;
    for (int y = 0; y < image.height; ++y)
      for (int x = from; x < to; ++x) {
        const Pixel p = pixel(image, x, y);
        count += p.red > p.green + 60;
      }
    return count;
  };
  EXPECT_GT(reds(left, 0, 60), 100);
  EXPECT_EQ(reds(left, 60, 120), 0);
  EXPECT_EQ(reds(right, 0, 60), 0);
  EXPECT_GT(reds(right, 60, 120), 100);
}

TEST(Trace, BackgroundRunsFromTopToBottom) {
  PictureOptions options = quick(40, 400);
  const Image image = trace({}, Camera(), options);
  const Pixel top = pixel(image, 20, 0), bottom = pixel(image, 20, 399);
  // 0.933 and 0.851 of 255.
  EXPECT_NEAR(top.red, 238, 1);
  EXPECT_NEAR(bottom.red, 217, 1);
  EXPECT_EQ(top.alpha, 255);
}

TEST(Trace, TransparentGroundIsClearButForTheShadow) {
  const std::vector<Instance> instances{{sphere(0.3), at(0, 0, 0.3)}};
  PictureOptions options = quick(200, 200);
  options.transparentGround = true;
  Camera camera = lookAt(StandardView::Dorsal, instances, options);
  camera.viewHeight = 3;
  const Image image = trace(instances, camera, options);
  EXPECT_EQ(pixel(image, 100, 100).alpha, 255);
  for (const int corner : {2, 197})
    EXPECT_EQ(pixel(image, corner, 2), (Pixel{0, 0, 0, 0})) << "the key light comes from this side";
  EXPECT_EQ(pixel(image, 2, 197), (Pixel{0, 0, 0, 0}));
  // The light comes from the upper left, so the shadow falls to the lower right of the sphere.
  const int shadow = pixel(image, 116, 120).alpha, opposite = pixel(image, 84, 80).alpha;
  EXPECT_GT(shadow, 40);
  EXPECT_LT(shadow, 255);
  EXPECT_GT(shadow, opposite + 20);
}

TEST(Trace, ShadowDarkensTheGround) {
  const std::vector<Instance> instances{{sphere(0.3), at(0, 0, 0.3)}};
  PictureOptions options = quick(200, 200);
  Camera camera = lookAt(StandardView::Dorsal, instances, options);
  camera.viewHeight = 3;
  const Image with = trace(instances, camera, options);
  options.ground = false;
  const Image without = trace(instances, camera, options);
  EXPECT_LT(brightness(with, 116, 120), brightness(without, 116, 120) - 20);
  EXPECT_EQ(pixel(with, 3, 3), pixel(without, 3, 3));
}

TEST(Trace, CornersAreDarkerThanTheOpen) {
  // A wide floor before a tall wall, the wall on the side away from the light.
  const std::vector<Instance> instances{{box(4, 4, 0.2), at(0, 0, 0.1)}, {box(0.2, 4, 2), at(-2.1, 0, 1)}};
  PictureOptions options = quick(160, 160);
  options.outline = false;
  options.occlusionRays = 32;
  const Image image = trace(instances, lookAt(StandardView::Dorsal, instances, options), options);
  // The dorsal view has the head, and with it +x, to the left: the wall stands at the right edge.
  const double open = brightness(image, 80, 80), corner = brightness(image, 143, 80);
  EXPECT_LT(corner, open - 6);
}

TEST(Trace, SphereIsLightestTowardsTheUpperLeft) {
  const std::vector<Instance> instances{{sphere(1, 48), at(0, 0, 5)}};
  PictureOptions options = quick(160, 160);
  options.ground = false;
  for (const StandardView view : {StandardView::Left, StandardView::Right, StandardView::Cranial}) {
    const Image image = trace(instances, lookAt(view, instances, options), options);
    EXPECT_GT(brightness(image, 55, 50), brightness(image, 105, 110) + 40);
    EXPECT_GT(brightness(image, 55, 50), brightness(image, 105, 50) + 5);
    EXPECT_GT(brightness(image, 55, 50), brightness(image, 55, 110) + 10);
  }
}

TEST(Trace, OutlinesDarkenTheRim) {
  const std::vector<Instance> instances{{sphere(1, 48), at(0, 0, 5)}};
  PictureOptions options = quick(160, 160);
  options.ground = false;
  const Camera camera = lookAt(StandardView::Left, instances, options);
  const Image with = trace(instances, camera, options);
  options.outline = false;
  const Image without = trace(instances, camera, options);
  const auto darkest = [](const Image& image) {
    int least = 765;
    for (int x = 0; x < 60; ++x) least = std::min(least, pixel(image, x, 80).sum());
    return least;
  };
  EXPECT_LT(darkest(with), darkest(without) - 60);
  EXPECT_EQ(pixel(with, 80, 80), pixel(without, 80, 80));
}

TEST(Trace, GridLinesStandAMetreApart) {
  const std::vector<Instance> instances{{box(0.2, 0.2, 0.2), at(0.5, 0.5, 0.1)}};
  PictureOptions options = quick(300, 300);
  options.groundGrid = true;
  Camera camera = lookAt(StandardView::Dorsal, {{box(8, 8, 1), at(0, 0, 0)}}, options);
  camera.viewHeight = 3;
  camera.X_WCamera.translation().head<2>() = Eigen::Vector2d(0.5, 0.5);
  std::vector<Instance> wide = instances;
  wide.push_back({box(0.1, 0.1, 0.1), at(8, 8, 0.05)});  // keeps the lines from fading
  wide.push_back({box(0.1, 0.1, 0.1), at(-8, -8, 0.05)});
  const Image with = trace(wide, camera, options);
  options.groundGrid = false;
  const Image without = trace(wide, camera, options);
  std::vector<int> columns;
  for (int x = 0; x < 300; ++x)
    if (pixel(without, x, 70).sum() - pixel(with, x, 70).sum() > 12) columns.push_back(x);
  // x = 0 and 1 m lie half a metre to either side of the middle: 50 pixels.
  EXPECT_THAT(columns, ::testing::Contains(::testing::AllOf(::testing::Ge(99), ::testing::Le(100))));
  EXPECT_THAT(columns, ::testing::Contains(::testing::AllOf(::testing::Ge(199), ::testing::Le(200))));
  EXPECT_LE(columns.size(), 8u);
}

TEST(Trace, ReportsProgressUpToOne) {
  PictureOptions options = quick(100, 100);
  std::mutex mutex;
  double most = 0;
  int calls = 0;
  options.task = task::Task(nullptr, [&](double share) {
    const std::lock_guard lock(mutex);
    most = std::max(most, share);
    ++calls;
  });
  trace(group(), lookAt(StandardView::Left, group(), options), options);
  EXPECT_DOUBLE_EQ(most, 1);
  EXPECT_GT(calls, 4);
}

TEST(Trace, CancelGivesAnEmptyImage) {
  PictureOptions options = quick(300, 300);
  std::atomic<bool> cancel = false;
  options.task = task::Task(&cancel, [&](double) { cancel = true; });
  const Image image = trace(group(), lookAt(StandardView::Left, group(), options), options);
  EXPECT_EQ(image.width, 0);
  EXPECT_TRUE(image.rgba.empty());
}

TEST(Trace, RefusesAPictureWithoutPixels) {
  PictureOptions options = quick(0, 10);
  EXPECT_THROW(trace({}, Camera(), options), std::invalid_argument);
  options = quick(10, -1);
  EXPECT_THROW(trace({}, Camera(), options), std::invalid_argument);
}

TEST(Trace, LeavesOutBonesWithoutAMesh) {
  const std::vector<Instance> instances{{nullptr, at(0, 0, 0)}, {sphere(0.3), at(0, 0, 1)}};
  PictureOptions options = quick(60, 60);
  options.transparentGround = true;
  const Image image = trace(instances, frame(StandardView::Left, {Vector3d(-1, -1, 0), Vector3d(1, 1, 2)}, 1), options);
  EXPECT_EQ(pixel(image, 30, 30).alpha, 255);
}

}  // namespace
}  // namespace zyga::picture
