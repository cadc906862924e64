#include "core/study/reach/swept_region.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/random_tree.h"

namespace zyga::study {
namespace {

using Eigen::Rotation2Dd;
using Eigen::Vector2d;
using std::numbers::pi;

std::vector<Vector2d> flat(const std::vector<std::vector<Vector2d>>& outlines) {
  std::vector<Vector2d> all;
  for (const auto& outline : outlines) all.insert(all.end(), outline.begin(), outline.end());
  return all;
}

double totalArea(const SweptRegion& region) {
  double area = 0;
  for (const auto& outline : outlinesOf(region)) area += areaOf(outline);
  return area;
}

/// Distance to the nearest of very many postures.
double bruteDistance(const std::vector<Vector2d>& tips, const Vector2d& p) {
  double nearest = 1e9;
  for (const Vector2d& tip : tips) nearest = std::min(nearest, (tip - p).norm());
  return nearest;
}

// One joint: the tip runs along an arc, which has no area.
TEST(SweptRegion, OfOneJointIsAnArc) {
  const SweptRegion region({{{1, 2}, -0.5, 1.0}}, {3, 2}, 400);
  for (const double turn : {-0.5, 0.0, 0.7, 1.0}) {
    EXPECT_NEAR(region.distance(Vector2d(1, 2) + Rotation2Dd(turn) * Vector2d(2, 0)), 0, region.step()) << turn;
  }
  EXPECT_NEAR(region.distance(Vector2d(1, 2) + Rotation2Dd(0.3) * Vector2d(1.5, 0)), 0.5, region.step());
  const Vector2d past = Vector2d(1, 2) + Rotation2Dd(1.4) * Vector2d(2, 0);
  EXPECT_NEAR(region.distance(past), 2 * 2 * std::sin(0.2), region.step());
  EXPECT_NEAR(totalArea(region), 0, 3 * region.step());
}

// Two joints that turn all the way round: the ring between the sum and the difference of their links.
TEST(SweptRegion, OfTwoFreeJointsIsARing) {
  const SweptRegion region({{{0, 0}, -pi, pi}, {{2, 0}, -pi, pi}}, {3, 0}, 600);
  EXPECT_NEAR(totalArea(region), pi * (9 - 1), 0.01 * pi * 8);
  const auto outlines = outlinesOf(region);
  ASSERT_EQ(outlines.size(), 2u);
  EXPECT_GT(areaOf(outlines[0]), 0);
  EXPECT_LT(areaOf(outlines[1]), 0) << "the hole around the base";
  for (const Vector2d& p : outlines[0]) EXPECT_NEAR(p.norm(), 3, 2 * region.step());
  for (const Vector2d& p : outlines[1]) EXPECT_NEAR(p.norm(), 1, 2 * region.step());
}

// Base over an angle A, elbow from straight to E: a sector's sweep, whose area is the integral of r dr A.
TEST(SweptRegion, OfABoundedElbowHasTheAreaOfItsSector) {
  const double A = 0.9, E = 1.2, a = 2, b = 1;
  const SweptRegion region({{{0, 0}, 0, A}, {{a, 0}, 0, E}}, {a + b, 0}, 800);
  const double least = std::sqrt(a * a + b * b + 2 * a * b * std::cos(E));
  EXPECT_NEAR(totalArea(region), 0.5 * A * ((a + b) * (a + b) - least * least), 0.01);
}

// Small random chains against a hundred thousand postures each: nothing that is reached lies outside, and what lies
// inside is near something that is reached.
TEST(SweptRegion, AgreesWithBruteForceOnRandomChains) {
  test::Chance chance(20261128);
  for (int trial = 0; trial < 4; ++trial) {
    std::vector<PlanarJoint> joints;
    Vector2d at(0, 0);
    for (int k = 0; k < 4; ++k) {
      joints.push_back({at, -chance.in(0.05, 0.6), chance.in(0.05, 0.6)});
      at += chance.in(0.4, 1) * Vector2d(1, chance.in(-0.5, 0.5));
    }
    const SweptRegion region(joints, at, 300);
    std::vector<Vector2d> tips;
    constexpr int kSteps = 19;
    for (int i = 0; i < kSteps * kSteps * kSteps * kSteps; ++i) {
      std::vector<double> angles;
      for (int k = 0, rest = i; k < 4; ++k, rest /= kSteps) {
        const auto& joint = joints[static_cast<std::size_t>(k)];
        angles.push_back(std::lerp(joint.min, joint.max, static_cast<double>(rest % kSteps) / (kSteps - 1)));
      }
      tips.push_back(tipAt(joints, at, angles));
      ASSERT_LT(region.distance(tips.back()), 1.5 * region.step());
    }
    const double coarse = 0.06;  // m, between postures
    for (int i = 0; i < 150; ++i) {
      const Vector2d p = at + 2 * chance.in(0, 1) * Vector2d(chance.in(-1, 1), chance.in(-1, 1));
      const double brute = bruteDistance(tips, p);
      if (brute < 0.3) {
        EXPECT_NEAR(region.distance(p), brute, coarse) << trial << ": " << p.transpose();
      } else {
        EXPECT_GT(region.distance(p), 0.3 - coarse);
      }
    }
  }
}

TEST(SweptRegion, OutlineIsWhereTheReachEnds) {
  const std::vector<PlanarJoint> joints{{{0, 0}, -0.3, 0.5}, {{1, 0}, -0.4, 0.4}, {{2, 0}, -0.4, 0.6}};
  const SweptRegion region(joints, {2.7, 0}, 500);
  const auto points = flat(outlinesOf(region));
  ASSERT_GT(points.size(), 100u);
  for (const Vector2d& p : points) EXPECT_NEAR(region.distance(p), 0, 2 * region.step());
  const Vector2d up = tipAt(joints, {2.7, 0}, {0.5, 0.4, 0.6});
  EXPECT_NEAR(bruteDistance(points, up), 0, 3 * region.step()) << "the corner with every joint at its limit";
}

TEST(SweptRegion, StopsWhenCancelled) {
  const std::atomic<bool> cancel = true;
  const SweptRegion region({{{0, 0}, -1, 1}}, {1, 0}, 100, task::Task(&cancel));
  EXPECT_TRUE(region.empty());
  EXPECT_TRUE(outlinesOf(region).empty());
}

}  // namespace
}  // namespace zyga::study
