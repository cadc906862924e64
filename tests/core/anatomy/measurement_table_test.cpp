#include "core/anatomy/tables/measurement_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

using ::testing::HasSubstr;

TableReading read(const std::string& text) { return readMeasurementTable(text, "t.csv"); }

/// The only message there must be.
std::string only(const std::string& text) {
  const TableReading reading = read(text);
  EXPECT_EQ(reading.messages.size(), 1u);
  return reading.messages.empty() ? "" : debugText(reading.messages.front());
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
  EXPECT_THAT(only("bone,length (mm)\nC20,400\n"),
              HasSubstr("t.csv:2: table.beyond-count(C20, 19, vertebrae.cervical)"));
  EXPECT_THAT(only("# cervicals: 12\nbone,length (mm)\nC13,400\n"),
              HasSubstr("table.beyond-count(C13, 12, vertebrae.cervical)"));
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
  for (const auto& m : reading.messages) texts.push_back(debugText(m));
  EXPECT_THAT(texts, ::testing::UnorderedElementsAre(
                         HasSubstr("t.csv:2, column 2: table.not-a-number(abc); table.write-number(mm)"),
                         HasSubstr("t.csv:3, column 1: table.unknown-bone(X9)"),
                         HasSubstr("t.csv:4, column 3: table.not-a-length(-7, mm)"),
                         HasSubstr("t.csv:5, column 1: table.bone-twice(C3, 2)"),
                         HasSubstr("t.csv:6, column 4: table.surplus-cells(4, 3)"),
                         HasSubstr("t.csv:7, column 2: table.too-long(300000, mm)")));
}

TEST(MeasurementTable, WrongHeadersAreNamed) {
  EXPECT_THAT(only("bone,length\nC3,240\n"),
              HasSubstr("t.csv:1, column 2: table.no-unit(length); table.write-length-unit(length)"));
  EXPECT_THAT(only("bone,length (in)\nC3,240\n"), HasSubstr("table.wrong-unit(in, measure.length)"));
  EXPECT_THAT(only("bone,wedge (mm)\nC3,2\n"),
              HasSubstr("table.wrong-unit(mm, measure.wedge); table.write-angle-unit(wedge)"));
  EXPECT_THAT(only("bone,girth (mm)\nC3,240\n"), HasSubstr("table.unknown-measure(girth (mm))"));
  EXPECT_THAT(only("bone,length (mm),length (cm)\nC3,240,24\n"), HasSubstr("table.second-column(length)"));
  EXPECT_THAT(only("remark,length (mm)\nC3,240\n"), HasSubstr("table.no-column(bone)"));
  EXPECT_THAT(only(""), HasSubstr("table.empty"));
}

// A22 of the checks: the same bone 100 cm with and 87 cm without its condyle (Janensch 1950, in Taylor's data).
TEST(MeasurementTable, UnclearLengthIsAWarningNotAGuessInSilence) {
  const auto reading = read("bone,centrum length (cm)\nC10,100\n");
  EXPECT_TRUE(reading.usable());
  ASSERT_EQ(reading.messages.size(), 1u);
  EXPECT_EQ(reading.messages[0].severity, TableMessage::Severity::Warning);
  EXPECT_EQ(reading.messages[0].cause.id, table::kCondyleUnclear);
  const auto both = read("bone,length (cm),length with condyle (cm)\nC10,87,100\n");
  EXPECT_TRUE(both.messages.empty());
  EXPECT_DOUBLE_EQ(both.table.rows[0].measures.value(Measure::Length), 0.87);
  EXPECT_DOUBLE_EQ(both.table.rows[0].measures.value(Measure::LengthWithCondyle), 1.0);
  EXPECT_THAT(only("bone,length (cm),length with condyle (cm)\nC10,100,87\n"),
              HasSubstr("table.shorter-with-condyle(C10)"));
}

TEST(MeasurementTable, ImpossibleRatiosAreFaults) {
  EXPECT_THAT(only("bone,length (mm),cotyle height (mm)\nC7,4600,144\n"), HasSubstr("table.impossible-shape(C7, 31.9"));
  EXPECT_THAT(only("# cervicals: 25\nbone,length (mm)\nC7,460\n"),
              HasSubstr("t.csv:1: table.impossible-count(25, vertebrae.cervical); table.write-count(2, 19)"));
  EXPECT_THAT(only("bone,length (mm)\nrib.D12.L,900\n"), HasSubstr("table.no-such-bone(rib.D12.L)"));
}

TEST(MeasurementTable, AFacetThatNothingCouldLieOnIsAFault) {
  EXPECT_EQ(only("bone,facet length (mm),facet width (mm)\nC5,60,40\nC6,60,0\n"),
            "t.csv:3, column 3: table.facet-without-width(C6); table.write-facet-width");
  EXPECT_THAT(only("bone,facet width (mm)\nC6,0\n"), HasSubstr("t.csv:2, column 2: table.facet-without-width(C6)"));
  EXPECT_THAT(only("bone,facet length (mm),facet height (mm)\nC6,60,0\n"),
              HasSubstr("t.csv:2, column 3: table.facet-without-height(C6)"));
  // A rod has no facets, and may say so in any of its cells.
  EXPECT_TRUE(read("bone,facet length (mm),facet width (mm),facet height (mm)\nCa40,0,0,0\n").messages.empty());
  EXPECT_TRUE(read("bone,facet height (mm)\nCa40,0\n").messages.empty());
}

TEST(MeasurementTable, ACountThatStretchesARegionIsToldWithWhatWouldHelp) {
  EXPECT_EQ(only("# cervicals: 19\nbone,length (mm)\nfemur.L,1500\n"),
            "t.csv:1: table.count-stretches(19, vertebrae.cervical, 13, 1.461538); table.measure-region");
  EXPECT_THAT(only("bone,length (mm)\nC3,240\nC17,400\n"), HasSubstr("t.csv:3: table.count-stretches(17,"));
  EXPECT_THAT(only("# caudals: 30\nbone,length (mm)\nfemur.L,1500\n"),
              HasSubstr("table.count-stretches(30, vertebrae.caudal, 52"));
  for (const char* silent :
       {"# cervicals: 19\nbone,length (mm)\nneck,9000\n",                          // the total says how long
        "# cervicals: 15\n# plan: low browser\nbone,length (mm)\nfemur.L,1500\n",  // the plan's own
        "# dorsals: 12\nbone,length (mm)\nfemur.L,1500\n",                         // less than a tenth
        "# sacrals: 4\nbone,length (mm)\nS1,230\nS2,235\n"}) {                     // half of them measured
    const auto reading = read(silent);
    EXPECT_TRUE(reading.messages.empty()) << silent << debugText(reading.messages.front());
  }
  EXPECT_TRUE(read("# cervicals: 19\nbone,length (mm)\nfemur.L,1500\n").usable()) << "a warning, not a refusal";
}

TEST(MeasurementTable, WritesWhatItReads) {
  const auto first = read(
      "# specimen: Y\n# plan: low browser\n# dorsals: 12\nbone,length (mm),wedge (deg),evidence,source\n"
      "neck,7000\nC7,460.25,1.5,found,\"a, b\"\nhumerus.L,980,,\"found, deformed\",c\n");
  ASSERT_TRUE(first.usable());
  const auto second = read(writeMeasurementTable(first.table));
  ASSERT_TRUE(second.usable()) << debugText(second.messages.front());
  EXPECT_EQ(writeMeasurementTable(second.table), writeMeasurementTable(first.table));
  EXPECT_EQ(second.table.rows.size(), first.table.rows.size());
  EXPECT_NEAR(second.table.rows[0].measures.value(Measure::Length), 0.46025, 1e-12);
  EXPECT_EQ(second.table.regionTotals.at("neck"), 7.0);
}

}  // namespace
}  // namespace zyga::anatomy
