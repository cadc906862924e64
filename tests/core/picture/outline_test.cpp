#include "core/picture/outline.h"

#include <gtest/gtest.h>

#include <functional>

namespace zyga::picture {
namespace {

using Eigen::Vector3f;

constexpr int kSide = 9;

/// A block looked at along -z, samples 1 mm apart, one column after the other from `column`.
SeenBlock blockOf(const std::function<SeenPoint(float x)>& column) {
  SeenBlock block{kSide, kSide, {}};
  for (int y = 0; y < kSide; ++y)
    for (int x = 0; x < kSide; ++x) {
      SeenPoint p = column(0.001f * static_cast<float>(x));
      p.p_W.y() = 0.001f * static_cast<float>(y);
      block.points.push_back(p);
    }
  return block;
}

SeenPoint surface(std::uint32_t instance, float x, float z, const Vector3f& normal = Vector3f::UnitZ()) {
  SeenPoint p;
  p.instance = instance;
  p.footprint = 0.001f;
  p.p_W = {x, 0, z};
  p.face_W = p.normal_W = normal;
  p.back_W = Vector3f::UnitZ();
  return p;
}

float middle(const SeenBlock& block) { return Outliner(1).strength(block, kSide / 2, kSide / 2); }
bool isRightHalf(float x) { return x > 0.0045f; }

TEST(Outliner, LeavesPaperAndFlatBoneAlone) {
  EXPECT_EQ(middle(blockOf([](float) { return SeenPoint(); })), 0);
  EXPECT_EQ(middle(blockOf([](float x) { return surface(0, x, 0); })), 0);
}

TEST(Outliner, LeavesASteepSlopeAlone) {
  // 80 degrees to the view: depth changes by nearly six samples a sample, yet nothing ends here.
  const float slope = std::tan(80 * M_PI / 180);
  const Vector3f normal = Vector3f(-slope, 0, 1).normalized();
  EXPECT_EQ(middle(blockOf([&](float x) { return surface(0, x, slope * x, normal); })), 0);
}

TEST(Outliner, DrawsTheEndOfABone) {
  const auto block = blockOf([](float x) { return isRightHalf(x) ? SeenPoint() : surface(0, x, 0); });
  EXPECT_GT(middle(block), 0.5f);
  EXPECT_EQ(Outliner(1).strength(block, 1, kSide / 2), 0) << "away from the end";
}

TEST(Outliner, DrawsTheMeetingOfTwoBonesStrongerWithDepth) {
  const float touching = middle(blockOf([](float x) { return surface(isRightHalf(x), x, 0); }));
  const float apart = middle(blockOf([](float x) { return surface(isRightHalf(x), x, isRightHalf(x) ? -0.1f : 0); }));
  EXPECT_GT(touching, 0.2f);
  EXPECT_GT(apart, touching + 0.2f);
}

TEST(Outliner, DrawsAFoldOfOneBoneOnlyWhenDeep) {
  const auto fold = [](float depth) {
    return middle(blockOf([=](float x) { return surface(0, x, isRightHalf(x) ? -depth : 0); }));
  };
  EXPECT_EQ(fold(0.001f), 0);
  EXPECT_GT(fold(0.05f), 0.4f);
}

TEST(Outliner, DrawsAnEdgeButNotACurve) {
  const Vector3f side = Vector3f(1, 0, 1).normalized();
  const auto edge =
      blockOf([&](float x) { return isRightHalf(x) ? surface(0, x, -(x - 0.0045f), side) : surface(0, x, 0); });
  EXPECT_GT(middle(edge), 0.1f);
  const auto curve = blockOf([&](float x) {
    const float angle = 200 * x;  // the same turn spread over the block
    return surface(0, x, std::cos(angle) / 200, {std::sin(angle), 0, std::cos(angle)});
  });
  EXPECT_LT(middle(curve), 0.02f);
}

TEST(Outliner, BorderCoversTheRadius) {
  EXPECT_EQ(Outliner(1).border(), 1);
  EXPECT_EQ(Outliner(1.5).border(), 2);
  EXPECT_EQ(Outliner(4).border(), 4);
}

}  // namespace
}  // namespace zyga::picture
