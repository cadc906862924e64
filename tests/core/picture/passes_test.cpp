#include "core/picture/passes.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/core/picture/shapes.h"

namespace zyga::picture {
namespace {

using namespace test;
using Eigen::Vector3d;

constexpr Pass kAll[] = {Pass::Shaded,    Pass::Shadow, Pass::Outline, Pass::Depth,
                         Pass::Direction, Pass::Bones,  Pass::Evidence};

std::vector<Instance> twoBalls() { return {{sphere(0.5, 48), at(0, 0, 1)}, {sphere(0.4, 48), at(0.5, 0.8, 0.9)}}; }

PictureOptions small() {
  PictureOptions options;
  options.width = 120;
  options.height = 90;
  options.occlusionRays = 2;
  options.shadowRays = 1;
  return options;
}

PassPictures traced() {
  const auto balls = twoBalls();
  const Camera camera = frame(StandardView::Left, {Vector3d(-0.6, -0.6, 0), Vector3d(1, 1.3, 1.6)}, 4.0 / 3);
  return tracePasses(balls, camera, small(),
                     {{std::begin(kAll), std::end(kAll)}, {{255, 0, 0}, {0, 255, 0}}, {{10, 20, 30}, {40, 50, 60}}});
}

const Image& imageOf(const PassPictures& pictures, Pass pass) {
  for (const auto& [known, image] : pictures.images)
    if (known == pass) return image;
  throw std::logic_error("the pass is missing");
}

TEST(Passes, HaveOneAndTheSameMask) {
  const PassPictures pictures = traced();
  ASSERT_TRUE(pictures.whole);
  const Image& shaded = imageOf(pictures, Pass::Shaded);
  int covered = 0, partly = 0;
  for (std::size_t i = 0; i < shaded.rgba.size() / 4; ++i) {
    const int alpha = shaded.rgba[4 * i + 3];
    covered += alpha == 255;
    partly += alpha > 0 && alpha < 255;
    for (const Pass pass : {Pass::Direction, Pass::Bones, Pass::Evidence})
      ASSERT_EQ(imageOf(pictures, pass).rgba[4 * i + 3], alpha) << i;
    ASSERT_EQ(pictures.depth.alpha[i], alpha * 257) << i;
  }
  EXPECT_GT(covered, 500);
  EXPECT_GT(partly, 50);
}

TEST(Passes, FlatColoursAreNeverMixed) {
  const PassPictures pictures = traced();
  std::set<std::array<int, 3>> bones, evidence;
  const auto collect = [&](Pass pass, auto& colours) {
    const Image& image = imageOf(pictures, pass);
    for (std::size_t i = 0; i < image.rgba.size(); i += 4)
      if (image.rgba[i + 3] > 0) colours.insert({image.rgba[i], image.rgba[i + 1], image.rgba[i + 2]});
  };
  collect(Pass::Bones, bones);
  collect(Pass::Evidence, evidence);
  EXPECT_EQ(bones, (std::set<std::array<int, 3>>{{255, 0, 0}, {0, 255, 0}}));
  EXPECT_EQ(evidence, (std::set<std::array<int, 3>>{{10, 20, 30}, {40, 50, 60}}));
}

TEST(Passes, DirectionAndDepthOfABallAreThoseOfGeometry) {
  const std::vector<Instance> ball{{sphere(1, 96), at(0, 0, 1)}};
  Camera camera = frame(StandardView::Left, {Vector3d(-1, -1, 0), Vector3d(1, 1, 2)}, 1);
  PictureOptions options = small();
  options.width = options.height = 101;
  const PassPictures pictures = tracePasses(ball, camera, options, {{Pass::Direction, Pass::Depth}, {}, {}});
  const Image& direction = imageOf(pictures, Pass::Direction);
  const auto at = [&](int x, int y) { return static_cast<std::size_t>(y) * 101 + x; };
  // In the middle the ball faces the viewer: (0, 0, 1), stored as 0.5 + 0.5 n.
  EXPECT_NEAR(direction.rgba[4 * at(50, 50)], 128, 2);
  EXPECT_NEAR(direction.rgba[4 * at(50, 50) + 1], 128, 2);
  EXPECT_NEAR(direction.rgba[4 * at(50, 50) + 2], 255, 1);
  // Half a radius to the right it faces right by one half: sin = 0.5.
  const double pixel = camera.viewHeight / 101;
  const int right = 50 + static_cast<int>(std::lround(0.5 / pixel));
  EXPECT_NEAR(direction.rgba[4 * at(right, 50)], 127.5 * (1 + (right - 50) * pixel), 2);
  EXPECT_NEAR(pictures.depth.farthest - pictures.depth.nearest, 2, 1e-3);
  EXPECT_NEAR(pictures.depth.grey[at(50, 50)], 65535, 60);
  // There the surface lies 1 - cos behind the foremost point, of 2 m in all.
  const double behind = 1 - std::sqrt(1 - std::pow((right - 50) * pixel, 2));
  EXPECT_NEAR(pictures.depth.grey[at(right, 50)], 65535 * (1 - behind / 2), 130);
}

TEST(Passes, LinesAreInkOnNothing) {
  const Image image = imageOf(traced(), Pass::Outline);
  int inked = 0;
  for (std::size_t i = 0; i < image.rgba.size(); i += 4) {
    inked += image.rgba[i + 3] > 128;
    if (image.rgba[i + 3] > 128) {
      EXPECT_LT(image.rgba[i], 90);
    }
  }
  EXPECT_GT(inked, 50);
  EXPECT_LT(inked, 120 * 90 / 4);
}

TEST(Passes, RefuseTooFewColoursAndCanBeCancelled) {
  EXPECT_THROW(tracePasses(twoBalls(), Camera(), small(), {{Pass::Bones}, {{1, 2, 3}}, {}}), std::invalid_argument);
  PictureOptions options = small();
  const std::atomic<bool> cancel = true;
  options.task = task::Task(&cancel);
  EXPECT_FALSE(tracePasses(twoBalls(), Camera(), options, {{Pass::Shaded}, {}, {}}).whole);
}

TEST(Passes, ComeInGroupsThatFitInMemory) {
  const std::vector<Pass> all(std::begin(kAll), std::end(kAll));
  EXPECT_EQ(groupsOf(all, 100, 2800), (std::vector<std::vector<Pass>>{all}));  // 7 passes of 400 bytes
  const auto pairs = groupsOf(all, 100, 1100);
  ASSERT_EQ(pairs.size(), 4U);
  EXPECT_EQ(pairs[1], (std::vector<Pass>{Pass::Outline, Pass::Depth}));
  EXPECT_EQ(groupsOf(all, 100, 1).size(), 7U) << "one at a time when memory is short";
  EXPECT_TRUE(groupsOf({}, 100, 1).empty());
}

TEST(Passes, AreKnownByTheirWords) {
  for (const Pass pass : kAllPasses) EXPECT_EQ(passOf(wordOf(pass)), pass);
  EXPECT_EQ(wordOf(Pass::Evidence), "evidence");
  EXPECT_FALSE(passOf("glow"));
}

TEST(DistinctColours, NoTwoAreAlike) {
  const auto colours = distinctColours(600);
  EXPECT_EQ(std::set(colours.begin(), colours.end()).size(), 600U);
}

}  // namespace
}  // namespace zyga::picture
