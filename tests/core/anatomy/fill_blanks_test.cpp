#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/summary.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {
namespace {

using ::testing::HasSubstr;

MeasurementTable filled(const std::string& text) {
  const TableReading reading = readMeasurementTable(text, "t.csv");
  EXPECT_TRUE(reading.usable()) << (reading.messages.empty() ? "" : reading.messages.front().text());
  return fillBlanks(reading.table);
}

const Cell& cell(const MeasurementTable& table, std::string_view id, Measure measure) {
  return table.find(*parseBoneId(id))->measures[measure];
}

TEST(FillBlanks, EveryCellABoneNeedsIsKnownAfterwards) {
  const MeasurementTable table = filled("bone,length (mm)\nfemur.L,1700\n");
  for (const TableRow& row : table.rows) {
    for (const Measure measure : measuresOf(row.name.kind)) {
      const Cell& c = row.measures[measure];
      EXPECT_TRUE(c.known()) << toId(row.name) << " " << title(measure);
      EXPECT_EQ(c.rule.empty(), c.measured()) << toId(row.name) << ": a filled cell says by which rule";
    }
  }
}

TEST(FillBlanks, MeasuredCellsStayAsTheyAre) {
  const MeasurementTable table = filled("bone,length (mm),cotyle height (mm)\nC5,400,130\nfemur.R,1700,\n");
  EXPECT_DOUBLE_EQ(cell(table, "C5", Measure::Length).value, 0.4);
  EXPECT_TRUE(cell(table, "C5", Measure::Length).measured());
  EXPECT_DOUBLE_EQ(cell(table, "C5", Measure::CotyleHeight).value, 0.13);
}

TEST(FillBlanks, BetweenNeighboursFollowsThePlansRhythm) {
  // Both neighbours are twice the plan's size, so the bone between is too.
  const RegionCounts counts{13, 11, 5, 52};
  const auto plan = [&](int k) {
    return planValue(BodyPlan::HighBrowser, counts, {BoneKind::Cervical, k, 0, Side::Midline}, Measure::Length);
  };
  const MeasurementTable table =
      filled("bone,length (mm)\nC5," + std::to_string(2e3 * plan(5)) + "\nC8," + std::to_string(2e3 * plan(8)) + "\n");
  const Cell& c6 = cell(table, "C6", Measure::Length);
  EXPECT_NEAR(c6.value, 2 * plan(6), 1e-6);
  EXPECT_EQ(c6.origin, CellOrigin::BetweenNeighbours);
  EXPECT_EQ(c6.rule, "between C5 and C8 along the column");
}

TEST(FillBlanks, MirrorsTheOtherSide) {
  const MeasurementTable table = filled("bone,length (mm)\nhumerus.L,1234\nrib.D4.R,1500\n");
  const Cell& right = cell(table, "humerus.R", Measure::Length);
  EXPECT_DOUBLE_EQ(right.value, 1.234);
  EXPECT_EQ(right.origin, CellOrigin::Mirrored);
  EXPECT_EQ(right.rule, "mirrored from humerus.L");
  EXPECT_EQ(table.find(*parseBoneId("humerus.R"))->evidence, Evidence::Mirrored);
  EXPECT_DOUBLE_EQ(cell(table, "rib.D4.L", Measure::Length).value, 1.5);
}

TEST(FillBlanks, ProportionScalesTheWholeAnimalButNoAngles) {
  const MeasurementTable one = filled("bone,length (mm)\nfemur.L,1500\n");
  const MeasurementTable two = filled("bone,length (mm)\nfemur.L,3000\n");
  for (const char* id : {"C7", "Ca20", "skull", "metacarpal3.L", "rib.D5.L"}) {
    EXPECT_NEAR(cell(two, id, Measure::Length).value, 2 * cell(one, id, Measure::Length).value, 1e-9) << id;
  }
  EXPECT_DOUBLE_EQ(cell(two, "C7", Measure::FacetTilt).value, cell(one, "C7", Measure::FacetTilt).value);
  EXPECT_THAT(cell(two, "C7", Measure::Length).rule, HasSubstr("by proportion to the measured bones"));
}

TEST(FillBlanks, LengthWithCondyleGivesTheLengthWithout) {
  const MeasurementTable table = filled("bone,length with condyle (mm)\nC13,638\n");
  const Cell& length = cell(table, "C13", Measure::Length);
  EXPECT_LT(length.value, 0.638);
  EXPECT_GT(length.value, 0.638 * 0.6);
  EXPECT_THAT(length.rule, HasSubstr("less a condyle"));
}

TEST(FillBlanks, RegionTotalIsMet) {
  const MeasurementTable table = filled("bone,length (mm)\nneck,8780\nC6,700\ntrunk,3920\nsacrum,1070\n");
  const Summary s = summarise(buildSpecimen(table));
  EXPECT_NEAR(s.neck, 8.78, 1e-9);
  EXPECT_NEAR(s.trunk, 3.92, 1e-9);
  EXPECT_NEAR(s.sacrum, 1.07, 1e-9);
  EXPECT_DOUBLE_EQ(cell(table, "C6", Measure::Length).value, 0.7);
  EXPECT_THAT(cell(table, "C9", Measure::Length).rule, HasSubstr("fitted to the measured neck"));
}

TEST(FillBlanks, IsDoneOnce) {
  const MeasurementTable once = filled("bone,length (mm)\nfemur.L,1700\nC7,500\n");
  EXPECT_EQ(fillBlanks(once), once);
}

// B9 of the checks: humerus to femur 0.57 to 1.09 (Paramo 2025 data set; Taylor data).
TEST(ProportionWarnings, OutsideThePublishedRangeWarns) {
  EXPECT_TRUE(proportionWarnings(filled("bone,length (mm)\nfemur.L,1500\nhumerus.L,1180\n")).empty());
  const auto warnings = proportionWarnings(filled("bone,length (mm)\nfemur.L,1500\nhumerus.L,1700\n"));
  ASSERT_EQ(warnings.size(), 1u);
  EXPECT_EQ(warnings[0].severity, TableMessage::Severity::Warning);
  EXPECT_THAT(warnings[0].cause, HasSubstr("humerus to femur is 1.13, outside the published 0.57 to 1.09"));
}

}  // namespace
}  // namespace zyga::anatomy
