#include "core/study/pace.h"

#include <gtest/gtest.h>

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

}  // namespace
}  // namespace zyga::study
