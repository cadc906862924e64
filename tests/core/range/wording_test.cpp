#include "core/range/wording.h"

#include <gtest/gtest.h>

#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using test::kDegree;

TEST(Wording, dropsTrailingZerosAndKeepsTheUnit) {
  EXPECT_EQ(degreesText(9.44 * kDegree), "9.4°");
  EXPECT_EQ(degreesText(40 * kDegree), "40°");
  EXPECT_EQ(degreesText(0.06 * kDegree), "0.1°");
  EXPECT_EQ(degreesText(100.05 * kDegree), "100.1°");
  EXPECT_EQ(percentText(0.384), "38 %");
  EXPECT_EQ(percentText(1), "100 %");
  EXPECT_EQ(millimetresText(0.0042), "4.2 mm");
  EXPECT_EQ(millimetresText(0), "0 mm");
}

TEST(Wording, hasATrueMinusButNoMinusZero) {
  EXPECT_EQ(degreesText(-7.1 * kDegree), "−7.1°");
  EXPECT_EQ(degreesText(-0.01 * kDegree), "0°");
}

TEST(Wording, survivesValuesThatAreNoNumbers) {
  EXPECT_EQ(degreesText(std::nan("")), "?°");
  EXPECT_EQ(millimetresText(INFINITY), "? mm");
}

TEST(Wording, addsDecimalsUntilMeasuredAndLimitDiffer) {
  const TextPair plain = degreesApart(9.4 * kDegree, 7.1 * kDegree);
  EXPECT_EQ(plain.measured + " of " + plain.limit, "9.4° of 7.1°");
  const TextPair close = degreesApart(7.13 * kDegree, 7.1 * kDegree);
  EXPECT_EQ(close.measured + " of " + close.limit, "7.13° of 7.1°");
  Criterion criterion;
  criterion.measured = 0.498;
  criterion.limit = 0.5;
  EXPECT_EQ(textApart(criterion).measured, "49.8 %");
  EXPECT_EQ(textApart(criterion).limit, "50 %");
}

}  // namespace
}  // namespace zyga::range
