#include "core/study/ground/trackway_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace zyga::study {
namespace {

using testing::HasSubstr;
using Severity = anatomy::TableMessage::Severity;

constexpr const char* kHeader = "foot,pace_cm,next_pace_cm,stride_cm,length_cm\n";

std::string faultsOf(const std::string& text) {
  std::string all;
  for (const auto& message : readTrackwayTable(text, "tracks.csv").messages) {
    if (message.severity == Severity::Error) all += debugText(message) + "\n";
  }
  return all;
}
std::string warningsOf(const std::string& text) {
  const auto reading = readTrackwayTable(text, "tracks.csv");
  EXPECT_TRUE(reading.usable());
  std::string all;
  for (const auto& message : reading.messages) all += debugText(message) + "\n";
  return all;
}

TEST(TrackwayTable, ReadsEveryColumn) {
  const auto reading = readTrackwayTable(
      "# a remark\nfoot,pace_cm,next_pace_cm,stride_cm,length_cm,width_cm,gauge_cm,ahead_cm\n"
      "LP1,62,66,106,33,14,36,\nRM1,,,,8.5,18.5,,40\n",
      "tracks.csv");
  EXPECT_TRUE(reading.messages.empty());
  ASSERT_EQ(reading.trackway.prints.size(), 2u);
  const auto& first = reading.trackway.prints[0];
  EXPECT_EQ(first.foot, "LP1");
  EXPECT_EQ(first.pace, 62 * 1e-2);
  EXPECT_EQ(first.nextPace, 66 * 1e-2);
  EXPECT_EQ(first.stride, 106 * 1e-2);
  EXPECT_EQ(first.length, 33 * 1e-2);
  EXPECT_EQ(first.width, 14 * 1e-2);
  EXPECT_EQ(first.gauge, 36 * 1e-2);
  EXPECT_FALSE(first.ahead);
  EXPECT_FALSE(reading.trackway.prints[1].pace);
  EXPECT_EQ(reading.trackway.prints[1].ahead, 40 * 1e-2);
}

TEST(TrackwayTable, TakesOtherUnitsAndSeparators) {
  const auto reading = readTrackwayTable("foot;pace_m;next_pace_mm;stride_cm\nL;0,62;660;106\n", "tracks.csv");
  ASSERT_TRUE(reading.usable());
  EXPECT_NEAR(*reading.trackway.prints[0].pace, 0.62, 1e-12);
  EXPECT_NEAR(*reading.trackway.prints[0].nextPace, 0.66, 1e-12);
  EXPECT_NEAR(*reading.trackway.prints[0].stride, 1.06, 1e-12);
}

TEST(TrackwayTable, BlankCellsAndShortRowsAreUnknown) {
  const auto reading = readTrackwayTable(std::string(kHeader) + "L1,,66,,\nR1\n", "tracks.csv");
  ASSERT_TRUE(reading.usable());
  ASSERT_EQ(reading.trackway.prints.size(), 2u);
  EXPECT_FALSE(reading.trackway.prints[0].pace || reading.trackway.prints[0].length);
  EXPECT_TRUE(reading.trackway.prints[0].nextPace);
}

TEST(TrackwayTable, TellsEveryFaultWithItsPlaceAndMend) {
  const auto faults = faultsOf(std::string(kHeader) + "L1,abc,66,106,33\nR1,66,-72,104,35\nL2,7200,58.5,102.5,32\n");
  EXPECT_THAT(faults, HasSubstr("tracks.csv:2, column 2: table.not-a-number(abc); table.write-number(cm)"));
  EXPECT_THAT(faults, HasSubstr("tracks.csv:3, column 3: track.no-distance(-72, cm)"));
  EXPECT_THAT(faults, HasSubstr("tracks.csv:4, column 2: table.too-long(7200, cm); table.check-header-unit"));
}

TEST(TrackwayTable, RefusesATriangleThatDoesNotClose) {
  EXPECT_THAT(faultsOf(std::string(kHeader) + "L1,62,66,1060,33\n"),
              HasSubstr("tracks.csv:2, column 4: track.no-triangle(0.62"));
  EXPECT_EQ(faultsOf(std::string(kHeader) + "L1,62,66,128,33\n"), "");  // prints in one line
}

TEST(TrackwayTable, RefusesWhatIsNoTrackwayTable) {
  EXPECT_THAT(faultsOf(""), HasSubstr("tracks.csv:1: table.empty"));
  EXPECT_THAT(faultsOf("bone,length (mm)\nC4,200\n"), HasSubstr("track.no-distances"));
  EXPECT_THAT(faultsOf(kHeader), HasSubstr("track.no-print"));
  EXPECT_THAT(faultsOf("foot,pace\nL,60\n"),
              HasSubstr("column 2: table.no-unit(pace); track.write-unit(pace_cm, pace_mm, pace_m)"));
  EXPECT_THAT(faultsOf("foot,pace_cm,pace_mm\nL,60,600\n"), HasSubstr("column 3: table.second-column(pace_mm)"));
  EXPECT_THAT(faultsOf("foot,pace_cm\nL,60,70\n"), HasSubstr("table.surplus-cells(3, 2)"));
}

TEST(TrackwayTable, WarnsOfWhatLooksWrong) {
  EXPECT_THAT(warningsOf("foot,pace_cm,rotation\nL,60,3\n"), HasSubstr("column 3: track.column-not-used(rotation)"));
  EXPECT_THAT(warningsOf("foot,pace_cm\n7,60\n"), HasSubstr("track.unclear-side(7)"));
  EXPECT_THAT(warningsOf(std::string(kHeader) + "L1,62,66,106,33\nR1,68,72,104,35\n"),
              HasSubstr("tracks.csv:3, column 2: track.paces-differ(0.680000, L1, 0.660000)"));
  EXPECT_THAT(warningsOf(std::string(kHeader) + "L1,62,66,106,33\nL2,66,72,104,35\n"),
              HasSubstr("track.same-side(L1, L2); track.print-missing(L1)"));
}

TEST(TrackwayTable, WhatIsWrittenReadsBackTheSame) {
  Trackway trackway;
  trackway.prints = {{.foot = "LP1",
                      .pace = 0.62,
                      .nextPace = 0.66,
                      .stride = 1.06,
                      .length = {},
                      .width = {},
                      .gauge = {},
                      .ahead = {}},
                     {.foot = "a, \"b\" left",
                      .pace = {},
                      .nextPace = {},
                      .stride = {},
                      .length = 0.333,
                      .width = {},
                      .gauge = {},
                      .ahead = -0.05}};
  const auto text = writeTrackwayTable(trackway);
  EXPECT_THAT(text, HasSubstr("foot,pace_cm,next_pace_cm,stride_cm,length_cm,ahead_cm\nLP1,62,66,106,,\n"));
  const auto reading = readTrackwayTable(text, "tracks.csv");
  ASSERT_TRUE(reading.usable());
  ASSERT_EQ(reading.trackway.prints.size(), 2u);
  EXPECT_EQ(reading.trackway.prints[1].foot, trackway.prints[1].foot);
  EXPECT_NEAR(*reading.trackway.prints[1].length, 0.333, 1e-12);
  EXPECT_NEAR(*reading.trackway.prints[1].ahead, -0.05, 1e-12);
  EXPECT_FALSE(reading.trackway.prints[0].length);
}

// Found by the fuzzer: what was read could not be read again once it had been written.
TEST(TrackwayTable, ARowThatSaysNothingOfAPrintIsLeftOut) {
  const auto reading = readTrackwayTable("foot,rotation,pace_cm\n,3,\nL1,4,60\n", "tracks.csv");
  ASSERT_TRUE(reading.usable());
  ASSERT_EQ(reading.trackway.prints.size(), 1u);
  EXPECT_EQ(reading.trackway.prints[0].foot, "L1");
  EXPECT_THAT(warningsOf("foot,rotation,pace_cm\n,3,\nL1,4,60\n"), HasSubstr("tracks.csv:2: track.says-nothing"));
  EXPECT_THAT(faultsOf("foot,rotation,pace_cm\n,3,\n"), HasSubstr("track.no-print"));
}

TEST(TrackwayTable, ALengthTooShortToBeWrittenIsNone) {
  EXPECT_THAT(faultsOf(std::string(kHeader) + "L1,0.00004,66,106,33\n"),
              HasSubstr("column 2: track.no-distance(0.00004, cm)"));
  EXPECT_EQ(faultsOf(std::string(kHeader) + "L1,0.0001,66,66,33\n"), "");
}

TEST(TrackwayTable, IsKnownByItsTitles) {
  EXPECT_TRUE(isTrackwayTable("# remark\n\nfoot,stride_cm\n"));
  EXPECT_FALSE(isTrackwayTable("bone,length (mm)\nC4,200\n"));
  EXPECT_FALSE(isTrackwayTable(""));
}

TEST(TrackwayTable, NeverThrowsOnRubbish) {
  std::mt19937 random(5);
  const std::string pieces = "foot,pace_cm\nLR12.5;\"-e\xff\xc3#\t ";
  for (int i = 0; i < 3000; ++i) {
    std::string text;
    for (unsigned n = random() % 80; n > 0; --n) text += pieces[random() % pieces.size()];
    EXPECT_NO_THROW(readTrackwayTable(text, "tracks.csv")) << text;
  }
}

}  // namespace
}  // namespace zyga::study
