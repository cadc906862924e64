#include "core/study/ground/trackway.h"

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
  EXPECT_EQ(hipSource(4.2), kOwnHipRule);
}

TEST(Speed, FollowsThePowersOfStrideAndHipHeight) {
  EXPECT_NEAR(speedOf(2, 1) / speedOf(1, 1), std::pow(2, 1.67), 1e-12);
  EXPECT_NEAR(speedOf(1, 2) / speedOf(1, 1), std::pow(2, -1.17), 1e-12);
}

TEST(FootNames, AsTablesWriteThem) {
  EXPECT_EQ(footFromText("LP1"), Foot::LeftHind);
  EXPECT_EQ(footFromText("S1-RM12"), Foot::RightFore);
  EXPECT_EQ(footFromText("L"), Foot::LeftHind);
  EXPECT_EQ(footFromText("r3"), Foot::RightHind);
  EXPECT_EQ(footFromText("Left fore 2"), Foot::LeftFore);
  EXPECT_EQ(footFromText("manus, right"), Foot::RightFore);
  EXPECT_EQ(footFromText("right pes"), Foot::RightHind);
}

TEST(FootNames, WithoutASideAreNone) {
  for (const char* name : {"", "1", "pes", "S1-P3", "lamp", "upright"}) EXPECT_FALSE(footFromText(name)) << name;
}

Footprint wholePrint() {
  return {
      .foot = "LP1", .pace = 0.6, .nextPace = 0.8, .stride = 1.0, .length = 0.3, .width = {}, .gauge = {}, .ahead = {}};
}

TEST(Figures, FollowFromOneRow) {
  const auto figures = valuesOf(wholePrint(), 4);
  EXPECT_NEAR(*figures.paceAngulation, std::acos(0.0), 1e-12);
  EXPECT_NEAR(*figures.gauge, 0.48, 1e-12);
  EXPECT_NEAR(*figures.gaugeToLength, 1.6, 1e-12);
  EXPECT_NEAR(*figures.hipHeight, 1.2, 1e-12);
  EXPECT_NEAR(*figures.relativeStride, 1.0 / 1.2, 1e-12);
  EXPECT_NEAR(*figures.speed, speedOf(1.0, 1.2), 1e-12);
}

// Each figure goes with the lengths it needs, and only with them.
TEST(Figures, WhatIsUnknownStaysUnknown) {
  auto print = wholePrint();
  print.pace.reset();
  EXPECT_FALSE(valuesOf(print, 4).paceAngulation || valuesOf(print, 4).gauge);
  EXPECT_TRUE(valuesOf(print, 4).speed);
  print = wholePrint();
  print.length.reset();
  EXPECT_FALSE(valuesOf(print, 4).hipHeight || valuesOf(print, 4).speed || valuesOf(print, 4).gaugeToLength);
  EXPECT_TRUE(valuesOf(print, 4).paceAngulation);
  print = wholePrint();
  print.stride.reset();
  EXPECT_FALSE(valuesOf(print, 4).paceAngulation || valuesOf(print, 4).relativeStride || valuesOf(print, 4).speed);
  EXPECT_TRUE(valuesOf(print, 4).hipHeight);
}

TEST(Figures, AForePrintTellsNothingOfTheHip) {
  auto print = wholePrint();
  print.foot = "LM1";
  const auto figures = valuesOf(print, 4);
  EXPECT_FALSE(figures.hipHeight || figures.relativeStride || figures.speed);
  EXPECT_TRUE(figures.paceAngulation);
}

TEST(Figures, ATypedGaugeStands) {
  auto print = wholePrint();
  print.gauge = 0.5;
  EXPECT_EQ(valuesOf(print, 4).gauge, 0.5);
}

TEST(TrackwaySummary, SpreadsOverTheHindPrintsThatTell) {
  Trackway trackway;
  trackway.prints = {wholePrint(), wholePrint(), wholePrint(), wholePrint()};
  trackway.prints[1].length = 0.4;
  trackway.prints[2].foot = "LM1";
  trackway.prints[2].length = 9;
  trackway.prints[3].length.reset();
  const auto summary = summarise(trackway);
  ASSERT_TRUE(summary.hipHeight);
  EXPECT_EQ(summary.hipHeight->count, 2);
  EXPECT_NEAR(summary.hipHeight->min, 1.2, 1e-12);
  EXPECT_NEAR(summary.hipHeight->mean, 1.4, 1e-12);
  EXPECT_NEAR(summary.hipHeight->max, 1.6, 1e-12);
  EXPECT_EQ(summary.paceAngulation->count, 3);
  EXPECT_FALSE(summarise({}).speed);
}

}  // namespace
}  // namespace zyga::study
