#include "ui/words/numbers.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

// How numbers and their units are written. No source: a matter of house style.
namespace zyga::ui {
namespace {

constexpr double kOneDegree = std::numbers::pi / 180;

TEST(Numbers, KeepTheirDecimalsAndTheUnitOnTheirLine) {
  EXPECT_EQ(degrees(9.44 * kOneDegree), "9.4°");
  EXPECT_EQ(degrees(40 * kOneDegree), "40.0°");
  EXPECT_EQ(degrees(0.06 * kOneDegree), "0.1°");
  EXPECT_EQ(degrees(100.05 * kOneDegree), "100.1°");
  EXPECT_EQ(percent(0.384), "38\u00A0%");
  EXPECT_EQ(percent(1), "100\u00A0%");
  EXPECT_EQ(millimetres(0.0042), "4.2\u00A0mm");
  EXPECT_EQ(millimetres(0), "0.0\u00A0mm");
  EXPECT_EQ(metres(8.5), "8.50\u00A0m");
}

TEST(Numbers, HaveATrueMinusButNoMinusZero) {
  EXPECT_EQ(degrees(-7.1 * kOneDegree), "\u22127.1°");
  EXPECT_EQ(degrees(-0.01 * kOneDegree), "0.0°");
  EXPECT_EQ(signedDegrees(7.1 * kOneDegree), "+7.1°");
  EXPECT_EQ(signedDegrees(0.01 * kOneDegree), "0.0°");
  EXPECT_EQ(signedDegrees(-0.01 * kOneDegree), "0.0°");
}

TEST(Numbers, OfAnglesStandBareUnderAHeadThatNamesTheUnit) {
  EXPECT_EQ(plainDegrees(9.44 * kOneDegree), "9.4");
  EXPECT_EQ(plainDegrees(-7.1 * kOneDegree), "\u22127.1");
  EXPECT_EQ(plainDegrees(-0.01 * kOneDegree), "0.0");
  EXPECT_EQ(plainDegrees(100.05 * kOneDegree, 2), "100.05");
}

TEST(Numbers, OfEstimatesHaveTwoFiguresThatCount) {
  EXPECT_EQ(roughly(5680.2), "5700");
  EXPECT_EQ(roughly(996), "1000");
  EXPECT_EQ(roughly(14.4), "14");
  EXPECT_EQ(roughly(0.0123), "0.012");
  EXPECT_EQ(roughly(-345), "\u2212350");
  EXPECT_EQ(roughly(0), "0");
  EXPECT_EQ(roughly(std::nan("")), "?");
}

TEST(Numbers, SurviveValuesThatAreNone) {
  EXPECT_EQ(degrees(std::nan("")), "?°");
  EXPECT_EQ(millimetres(INFINITY), "?\u00A0mm");
}

TEST(Numbers, TakeMoreDecimalsUntilMeasuredAndLimitDiffer) {
  const Apart plain = apart(9.4 * kOneDegree, 7.1 * kOneDegree, reason::Unit::Angle);
  EXPECT_EQ(plain.measured + " (limit " + plain.limit + ")", "9.4° (limit 7.1°)");
  const Apart close = apart(7.13 * kOneDegree, 7.1 * kOneDegree, reason::Unit::Angle);
  EXPECT_EQ(close.measured, "7.13°");
  EXPECT_EQ(close.limit, "7.10°");
  const Apart share = apart(0.498, 0.5, reason::Unit::Share);
  EXPECT_EQ(share.measured, "49.8\u00A0%");
  EXPECT_EQ(share.limit, "50.0\u00A0%");
}

}  // namespace
}  // namespace zyga::ui
