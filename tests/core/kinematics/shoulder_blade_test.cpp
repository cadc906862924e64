#include "core/kinematics/shoulder_blade.h"

#include <gtest/gtest.h>

#include <numbers>

#include "core/kinematics/stand_readings.h"
#include "tests/core/kinematics/standing_animal.h"

namespace zyga::kinematics {
namespace {

using anatomy::Side;

constexpr double kDegree = std::numbers::pi / 180;

BladePlace placeOf(const StandingAnimal& a, const Pose& pose, Side side) {
  return bladePlace(a.s, pose, forwardKinematics(a.s, a.rest, pose), side);
}

TEST(ShoulderBlade, TakesTheSlopeAndSlideAskedForInsideItsRange) {
  for (const anatomy::BodyPlan plan : {anatomy::BodyPlan::HighBrowser, anatomy::BodyPlan::LowBrowser}) {
    const StandingAnimal a(plan);
    for (const Side side : {Side::Left, Side::Right}) {
      for (const double slope : {55.0, 58.0, 65.0}) {
        for (const double slide : {-0.03, 0.0, 0.05}) {
          const Pose placed = placeBlade(a.s, a.rest, a.pose, side, {slope * kDegree, slide});
          const BladePlace got = placeOf(a, placed, side);
          EXPECT_NEAR(got.slope / kDegree, slope, 1e-6);
          EXPECT_NEAR(got.slide, slide, 1e-9);
        }
      }
    }
  }
}

TEST(ShoulderBlade, StopsAtTheEndsOfItsTypedRange) {
  const StandingAnimal a;
  const BladeRange range = bladeRange(a.s, a.rest, a.pose, Side::Left);
  EXPECT_LT(range.slope.min, kPublishedBladeSlope.min);
  EXPECT_GT(range.slope.max, kPublishedBladeSlope.max);
  const Pose steep = placeBlade(a.s, a.rest, a.pose, Side::Left, {89 * kDegree, 5.0});
  const BladePlace got = placeOf(a, steep, Side::Left);
  EXPECT_NEAR(got.slide, range.slide.max, 1e-9);
  EXPECT_NEAR(got.slope, range.slope.max, 4.2 * kDegree);
  const Eigen::Vector3d& angles = steep[a.joint("scapula.L")];
  const anatomy::TypedLimits& typed = *a.s[a.joint("scapula.L")].typed;
  EXPECT_EQ(angles[0], typed.angles[0].min);
  EXPECT_EQ(angles[1], typed.angles[1].max);
}

TEST(ShoulderBlade, SlidesAlongTheRibsWithoutLeavingThem) {
  const StandingAnimal a;
  const auto distanceToRibs = [&](double slide) {
    const Pose placed = placeBlade(a.s, a.rest, a.pose, Side::Left, {60 * kDegree, slide});
    const Placement X = forwardKinematics(a.s, a.rest, placed);
    const Eigen::Vector3d p_W = X[a.s.findBone("scapula.L")->value].translation();
    // The ribs under the blade as the bow from head over the middle to the tip: nearest of points on it.
    double least = 1e9;
    for (const char* id : {"rib.D3.L", "rib.D4.L", "rib.D5.L", "rib.D6.L"}) {
      const auto rib = a.s.findBone(id);
      if (!rib) continue;
      const anatomy::Bone& bone = a.s[*rib];
      const Eigen::Vector3d from = bone.landmark("tuberculum"), over = bone.landmark("middle"),
                            to = bone.landmark("tip");
      for (double t = 0; t <= 1; t += 0.01) {
        const Eigen::Vector3d p =
            (1 - t) * (1 - t) * from + 2 * t * (1 - t) * (2 * over - (from + to) / 2) + t * t * to;
        least = std::min(least, (X[rib->value] * p - p_W).norm());
      }
    }
    return least;
  };
  const double laid = distanceToRibs(0);
  ASSERT_LT(laid, 1) << "ribs found";
  // Ribs stand a quarter of a metre apart, lean and bow back, so that the nearest one changes on the way.
  for (const double slide : {-0.06, 0.06}) EXPECT_NEAR(distanceToRibs(slide), laid, 0.045) << slide;
  // Up is up.
  const auto height = [&](double slide) {
    const Pose placed = placeBlade(a.s, a.rest, a.pose, Side::Left, {60 * kDegree, slide});
    return forwardKinematics(a.s, a.rest, placed)[a.s.findBone("scapula.L")->value].translation().z();
  };
  EXPECT_NEAR(height(0.05) - height(-0.05), 0.09, 0.015);
}

TEST(ShoulderBlade, BothSidesAlike) {
  const StandingAnimal a;
  Pose both = a.pose;
  for (const Side side : {Side::Left, Side::Right}) both = placeBlade(a.s, a.rest, both, side, {63 * kDegree, 0.04});
  EXPECT_TRUE(both[a.joint("scapula.L")].isApprox(both[a.joint("scapula.R")], 1e-9));
}

}  // namespace
}  // namespace zyga::kinematics
