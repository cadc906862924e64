#include "core/anatomy/tables/landmark_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

using testing::AllOf;
using testing::HasSubstr;

TEST(LandmarkTable, ReadsUnitsFromTheHeader) {
  const auto reading = readLandmarkTable(
      "# picked in the landmark editor\n"
      "bone,landmark,x (mm),y (cm),z (m),remark\n"
      "C5,cranialRim,10,-2.5,0.3,first\n"
      "femur.L,proximal,1,2,3,\n",
      "marks.csv");
  ASSERT_TRUE(reading.usable());
  EXPECT_TRUE(
      reading.table.points.at(*parseBoneId("C5")).at("cranialRim").isApprox(Eigen::Vector3d(0.01, -0.025, 0.3)));
  EXPECT_EQ(reading.table.points.size(), 2u);
}

TEST(LandmarkTable, ComesBackAsWritten) {
  LandmarkTable table;
  table.points[*parseBoneId("C5")]["canal"] = {0.0123, -0.0004567, 1.5};
  table.points[*parseBoneId("C5")]["a, b"] = {0, 0, 1e-6};
  table.points[*parseBoneId("femur.R")]["distal"] = {-1, 2, 3};
  const auto reading = readLandmarkTable(writeLandmarkTable(table), "again.csv");
  ASSERT_TRUE(reading.usable());
  for (const auto& [bone, points] : table.points)
    for (const auto& [name, p] : points) EXPECT_LT((reading.table.points.at(bone).at(name) - p).norm(), 1e-9);
  EXPECT_EQ(writeLandmarkTable(reading.table), writeLandmarkTable(table));
}

// Found by the fuzzer: numbers so large that writing them in nanometres lost their digits.
TEST(LandmarkTable, APointFartherThanAKilometreIsAFault) {
  const std::string header = "bone,landmark,x (mm),y (m),z (mm)\n";
  EXPECT_TRUE(readLandmarkTable(header + "C5,tip,1e6,-1000,0\n", "far.csv").usable());
  for (const char* row : {"C5,tip,1.1e6,0,0\n", "C5,tip,0,-1001,0\n", "C5,tip,0,0,4e53\n"}) {
    const auto reading = readLandmarkTable(header + row, "far.csv");
    ASSERT_EQ(reading.messages.size(), 1u) << row;
    EXPECT_EQ(reading.messages.front().cause.id, landmark::kTooFar);
    EXPECT_EQ(reading.messages.front().line, 2);
    EXPECT_TRUE(reading.table.points.empty());
  }
}

TEST(LandmarkTable, TellsEveryFaultWithItsPlace) {
  const auto reading = readLandmarkTable(
      "bone,landmark,x (mm),y (furlong),z (mm)\n"
      "C5,tip,1,2,3\nC5,tip,1,2,3\nQ7,tip,1,2,3\nC6,,1,2,3\nC6,tip,1,two,3\nC6,other\n",
      "marks.csv");
  EXPECT_FALSE(reading.usable());
  std::vector<std::string> texts;
  for (const auto& message : reading.messages) texts.push_back(debugText(message));
  EXPECT_THAT(texts, testing::IsSupersetOf<testing::Matcher<std::string>>(
                         {AllOf(HasSubstr("marks.csv:1, column 4"), HasSubstr("table.no-unit(y (furlong))")),
                          AllOf(HasSubstr("marks.csv:3"), HasSubstr("landmark.twice(C5, tip)")),
                          AllOf(HasSubstr("marks.csv:4"), HasSubstr("landmark.unknown-bone(Q7)")),
                          AllOf(HasSubstr("marks.csv:5"), HasSubstr("landmark.unnamed")),
                          AllOf(HasSubstr("marks.csv:6, column 4"), HasSubstr("table.not-a-number(two)")),
                          AllOf(HasSubstr("marks.csv:7"), HasSubstr("table.not-a-number()"))}));
  EXPECT_FALSE(readLandmarkTable("", "empty.csv").usable());
  EXPECT_FALSE(readLandmarkTable("bone,x (mm),y (mm),z (mm)\n", "short.csv").usable());
}

}  // namespace
}  // namespace zyga::anatomy
