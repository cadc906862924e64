#include "core/anatomy/tables/measurement_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

namespace zyga::anatomy {
namespace {

using ::testing::HasSubstr;

TableReading read(const std::string& text) { return readMeasurementTable(text, "t.csv"); }

/// The only message there must be.
std::string only(const std::string& text) {
  const TableReading reading = read(text);
  EXPECT_EQ(reading.messages.size(), 1u);
  return reading.messages.empty() ? "" : reading.messages.front().text();
}

TEST(MeasurementTable, ReadsUnitsOfTheHeader) {
  const auto reading = read("bone,length (cm),cotyle height (mm),facet tilt (deg),source\nC7,46,144.5,40,field book\n");
  ASSERT_TRUE(reading.usable());
  ASSERT_EQ(reading.table.rows.size(), 1u);
  const TableRow& row = reading.table.rows[0];
  EXPECT_DOUBLE_EQ(row.measures.value(Measure::Length), 0.46);
  EXPECT_DOUBLE_EQ(row.measures.value(Measure::CotyleHeight), 0.1445);
  EXPECT_NEAR(row.measures.value(Measure::FacetTilt), 40 * std::numbers::pi / 180, 1e-15);
  EXPECT_FALSE(row.measures[Measure::CotyleWidth].known());
  EXPECT_EQ(row.source, "field book");
  EXPECT_EQ(row.evidence, Evidence::Found);
}

TEST(MeasurementTable, DirectivesSetPlanAndCounts) {
  const auto reading = read("# specimen: X\n# plan: low browser\n# cervicals: 16\nbone,length (mm)\nC2,100\n");
  ASSERT_TRUE(reading.usable());
  EXPECT_EQ(reading.table.name, "X");
  EXPECT_EQ(reading.table.plan, BodyPlan::LowBrowser);
  EXPECT_EQ(reading.table.counts.cervical, 16);
  EXPECT_EQ(reading.table.counts.caudal, 80);  // the plan's own where nothing is said
}

TEST(MeasurementTable, CountsGrowToTheLastVertebraNamed) {
  EXPECT_EQ(read("bone,length (mm)\nC17,400\n").table.counts.cervical, 17);
  EXPECT_THAT(only("bone,length (mm)\nC20,400\n"), HasSubstr("t.csv:2: C20 is beyond the 19 cervicals"));
  EXPECT_THAT(only("# cervicals: 12\nbone,length (mm)\nC13,400\n"), HasSubstr("C13 is beyond the 12 cervicals"));
}

TEST(MeasurementTable, TellsAllFaultsAtOnceWithPlaceAndMend) {
  const auto reading = read(
      "bone,length (mm),cotyle height (mm)\n"
      "C3,abc,95\n"
      "X9,100,50\n"
      "C4,300,-7\n"
      "C3,240,95\n"
      "C5,360,119,12\n"
      "D2,300000,100\n");
  EXPECT_FALSE(reading.usable());
  std::vector<std::string> texts;
  for (const auto& m : reading.messages) texts.push_back(m.text());
  EXPECT_THAT(
      texts, ::testing::UnorderedElementsAre(
                 HasSubstr("t.csv:2, column 2: 'abc' is not a number; write a number in mm"),
                 HasSubstr("t.csv:3, column 1: 'X9' is no bone"), HasSubstr("t.csv:4, column 3: -7 mm is not a length"),
                 HasSubstr("t.csv:5, column 1: C3 stands in line 2 already"),
                 HasSubstr("t.csv:6, column 4: 4 cells under 3 titles"),
                 HasSubstr("t.csv:7, column 2: 300000 mm is more than 20 m")));
}

TEST(MeasurementTable, WrongHeadersAreNamed) {
  EXPECT_THAT(only("bone,length\nC3,240\n"), HasSubstr("t.csv:1, column 2: 'length' has no unit"));
  EXPECT_THAT(only("bone,length (in)\nC3,240\n"), HasSubstr("'in' is no unit for length"));
  EXPECT_THAT(only("bone,wedge (mm)\nC3,2\n"), HasSubstr("'mm' is no unit for wedge"));
  EXPECT_THAT(only("bone,girth (mm)\nC3,240\n"), HasSubstr("'girth (mm)' is no measure"));
  EXPECT_THAT(only("bone,length (mm),length (cm)\nC3,240,24\n"), HasSubstr("a second column 'length'"));
  EXPECT_THAT(only("remark,length (mm)\nC3,240\n"), HasSubstr("there is no column 'bone'"));
  EXPECT_THAT(only(""), HasSubstr("the table is empty"));
}

// A22 of the checks: the same bone 100 cm with and 87 cm without its condyle (Janensch 1950, in Taylor's data).
TEST(MeasurementTable, UnclearLengthIsAWarningNotAGuessInSilence) {
  const auto reading = read("bone,centrum length (cm)\nC10,100\n");
  EXPECT_TRUE(reading.usable());
  ASSERT_EQ(reading.messages.size(), 1u);
  EXPECT_EQ(reading.messages[0].severity, TableMessage::Severity::Warning);
  EXPECT_THAT(reading.messages[0].text(), HasSubstr("does not say whether the condyle is counted"));
  const auto both = read("bone,length (cm),length with condyle (cm)\nC10,87,100\n");
  EXPECT_TRUE(both.messages.empty());
  EXPECT_DOUBLE_EQ(both.table.rows[0].measures.value(Measure::Length), 0.87);
  EXPECT_DOUBLE_EQ(both.table.rows[0].measures.value(Measure::LengthWithCondyle), 1.0);
  EXPECT_THAT(only("bone,length (cm),length with condyle (cm)\nC10,100,87\n"), HasSubstr("shorter with its condyle"));
}

TEST(MeasurementTable, ImpossibleRatiosAreFaults) {
  EXPECT_THAT(only("bone,length (mm),cotyle height (mm)\nC7,4600,144\n"), HasSubstr("C7 would be 31.9 times as long"));
  EXPECT_THAT(only("# cervicals: 25\nbone,length (mm)\nC7,460\n"), HasSubstr("t.csv:1: '25' cervicals cannot be"));
  EXPECT_THAT(only("bone,length (mm)\nrib.D12.L,900\n"), HasSubstr("has no rib.D12.L"));
}

TEST(MeasurementTable, WritesWhatItReads) {
  const auto first = read(
      "# specimen: Y\n# plan: low browser\n# dorsals: 12\nbone,length (mm),wedge (deg),evidence,source\n"
      "neck,7000\nC7,460.25,1.5,found,\"a, b\"\nhumerus.L,980,,\"found, deformed\",c\n");
  ASSERT_TRUE(first.usable());
  const auto second = read(writeMeasurementTable(first.table));
  ASSERT_TRUE(second.usable()) << second.messages.front().text();
  EXPECT_EQ(writeMeasurementTable(second.table), writeMeasurementTable(first.table));
  EXPECT_EQ(second.table.rows.size(), first.table.rows.size());
  EXPECT_NEAR(second.table.rows[0].measures.value(Measure::Length), 0.46025, 1e-12);
  EXPECT_EQ(second.table.regionTotals.at("neck"), 7.0);
}

}  // namespace
}  // namespace zyga::anatomy
