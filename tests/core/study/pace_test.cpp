#include "core/study/ground/pace.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace zyga::study {
namespace {

TEST(PaceAngulation, EqualSidesGiveSixtyDegrees) {
  ASSERT_TRUE(paceAngulation(0.7, 0.7, 0.7));
  EXPECT_NEAR(*paceAngulation(0.7, 0.7, 0.7), std::numbers::pi / 3, 1e-12);
}

TEST(PaceAngulation, PrintsInLineGiveAStraightAngle) {
  ASSERT_TRUE(paceAngulation(3, 4, 7));
  EXPECT_NEAR(*paceAngulation(3, 4, 7), std::numbers::pi, 1e-12);
}

TEST(PaceAngulation, LengthsThatCloseNoTriangleGiveNone) {
  EXPECT_FALSE(paceAngulation(0.6, 0.6, 1.3));
  EXPECT_FALSE(paceAngulation(0.6, 2.0, 1.0));
  EXPECT_FALSE(paceAngulation(0, 0.6, 0.6));
  EXPECT_FALSE(paceAngulation(0.6, 0.6, -0.1));
}

TEST(Gauge, IsTheHeightOfTheTriangleOnTheStride) {
  // A right angle at the middle print, legs 3 and 4: height 12/5 on the stride of 5.
  ASSERT_TRUE(gaugeOf(3, 4, 5));
  EXPECT_NEAR(*gaugeOf(3, 4, 5), 2.4, 1e-12);
  EXPECT_NEAR(*gaugeOf(4, 3, 5), 2.4, 1e-12);
  EXPECT_NEAR(*gaugeOf(3, 4, 7), 0, 1e-7);
  EXPECT_FALSE(gaugeOf(3, 4, 7.1));
}

TEST(HipRules, EveryMultiplierHasItsSource) {
  for (const auto& rule : kHipRules) EXPECT_EQ(hipSource(rule.multiplier), rule.source);
  EXPECT_EQ(hipSource(4.2), "own choice");
}

TEST(Speed, FollowsThePowersOfStrideAndHipHeight) {
  EXPECT_NEAR(speedOf(2, 1) / speedOf(1, 1), std::pow(2, 1.67), 1e-12);
  EXPECT_NEAR(speedOf(1, 2) / speedOf(1, 1), std::pow(2, -1.17), 1e-12);
}

}  // namespace
}  // namespace zyga::study
