#include "core/study/ground/trackway.h"

#include <gtest/gtest.h>

namespace zyga::study {
namespace {

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
  const auto figures = figuresOf(wholePrint(), 4);
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
  EXPECT_FALSE(figuresOf(print, 4).paceAngulation || figuresOf(print, 4).gauge);
  EXPECT_TRUE(figuresOf(print, 4).speed);
  print = wholePrint();
  print.length.reset();
  EXPECT_FALSE(figuresOf(print, 4).hipHeight || figuresOf(print, 4).speed || figuresOf(print, 4).gaugeToLength);
  EXPECT_TRUE(figuresOf(print, 4).paceAngulation);
  print = wholePrint();
  print.stride.reset();
  EXPECT_FALSE(figuresOf(print, 4).paceAngulation || figuresOf(print, 4).relativeStride || figuresOf(print, 4).speed);
  EXPECT_TRUE(figuresOf(print, 4).hipHeight);
}

TEST(Figures, AForePrintTellsNothingOfTheHip) {
  auto print = wholePrint();
  print.foot = "LM1";
  const auto figures = figuresOf(print, 4);
  EXPECT_FALSE(figures.hipHeight || figures.relativeStride || figures.speed);
  EXPECT_TRUE(figures.paceAngulation);
}

TEST(Figures, ATypedGaugeStands) {
  auto print = wholePrint();
  print.gauge = 0.5;
  EXPECT_EQ(figuresOf(print, 4).gauge, 0.5);
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
  EXPECT_NEAR(summary.hipHeight->least, 1.2, 1e-12);
  EXPECT_NEAR(summary.hipHeight->mean, 1.4, 1e-12);
  EXPECT_NEAR(summary.hipHeight->most, 1.6, 1e-12);
  EXPECT_EQ(summary.paceAngulation->count, 3);
  EXPECT_FALSE(summarise({}).speed);
}

}  // namespace
}  // namespace zyga::study
