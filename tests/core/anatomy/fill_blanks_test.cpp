#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/summary.h"
#include "core/anatomy/tables/measurement_table.h"
#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

MeasurementTable filled(const std::string& text) {
  const TableReading reading = readMeasurementTable(text, "t.csv");
  EXPECT_TRUE(reading.usable()) << (reading.messages.empty() ? "" : debugText(reading.messages.front()));
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
      EXPECT_TRUE(c.known()) << toId(row.name) << " " << toText(measure);
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
  EXPECT_EQ(c6.rule, (FillRule{FillBy::Between, *parseBoneId("C5"), *parseBoneId("C8")}));
}

TEST(FillBlanks, MirrorsTheOtherSide) {
  const MeasurementTable table = filled("bone,length (mm)\nhumerus.L,1234\nrib.D4.R,1500\n");
  const Cell& right = cell(table, "humerus.R", Measure::Length);
  EXPECT_DOUBLE_EQ(right.value, 1.234);
  EXPECT_EQ(right.origin, CellOrigin::Mirrored);
  EXPECT_EQ(right.rule, (FillRule{FillBy::Mirrored, *parseBoneId("humerus.L")}));
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
  EXPECT_EQ(cell(two, "C7", Measure::Length).rule.by, FillBy::MeasuredBones);
  EXPECT_EQ(cell(two, "C7", Measure::Length).rule.count, 2) << "the femur and its mirror image";
}

TEST(FillBlanks, LengthWithCondyleGivesTheLengthWithout) {
  const MeasurementTable table = filled("bone,length with condyle (mm)\nC13,638\n");
  const Cell& length = cell(table, "C13", Measure::Length);
  EXPECT_LT(length.value, 0.638);
  EXPECT_GT(length.value, 0.638 * 0.6);
  EXPECT_EQ(length.rule.by, FillBy::LessCondyle);
}

TEST(FillBlanks, RegionTotalIsMet) {
  const MeasurementTable table = filled("bone,length (mm)\nneck,8780\nC6,700\ntrunk,3920\nsacrum,1070\n");
  const Summary s = summarise(buildSpecimen(table));
  EXPECT_NEAR(s.neck, 8.78, 1e-9);
  EXPECT_NEAR(s.trunk, 3.92, 1e-9);
  EXPECT_NEAR(s.sacrum, 1.07, 1e-9);
  EXPECT_DOUBLE_EQ(cell(table, "C6", Measure::Length).value, 0.7);
  EXPECT_EQ(cell(table, "C9", Measure::Length).rule.fittedTo, Region::Cervical);
  EXPECT_EQ(cell(table, "D2", Measure::Length).rule.fittedTo, Region::Dorsal);
}

TEST(FillBlanks, ABoneWithoutFacetsSaysNothingOfItsNeighbours) {
  const std::string others = "C5,,60,,170\nC9,,70,,190\n";
  const std::string head = "bone,length (mm),facet length (mm),facet width (mm),facet height (mm)\n";
  const MeasurementTable without = filled(head + others), with = filled(head + others + "C7,,0,,\nCa3,,,,0\n");
  for (const Measure measure :
       {Measure::FacetLength, Measure::FacetWidth, Measure::FacetHeight, Measure::FacetSpread}) {
    for (const char* id : {"C4", "C6", "C8", "C10", "Ca2", "Ca4", "Ca5"}) {
      EXPECT_DOUBLE_EQ(cell(with, id, measure).value, cell(without, id, measure).value) << id << toText(measure);
    }
  }
  EXPECT_EQ(cell(with, "C7", Measure::FacetLength).value, 0);
  EXPECT_EQ(cell(with, "Ca3", Measure::FacetLength).value, 0) << "a facet 0 high is none";
  EXPECT_EQ(cell(with, "Ca3", Measure::FacetLength).rule.by, FillBy::NoFacet);
  const Specimen s = buildSpecimen(with);
  EXPECT_FALSE(s[*s.findJoint("C6-C7")].hasFacets());
  EXPECT_FALSE(s[*s.findJoint("Ca2-Ca3")].hasFacets());
  EXPECT_TRUE(s[*s.findJoint("C7-C8")].hasFacets());
  EXPECT_TRUE(s[*s.findJoint("Ca3-Ca4")].hasFacets());
}

TEST(FillBlanks, IsDoneOnce) {
  const MeasurementTable once = filled("bone,length (mm)\nfemur.L,1700\nC7,500\n");
  EXPECT_EQ(fillBlanks(once), once);
}

TEST(FillRules, ComeBackAsFilesWriteThem) {
  const BoneName c4 = *parseBoneId("C4"), c7 = *parseBoneId("C7");
  const std::vector<std::pair<FillRule, std::string>> written{
      {{FillBy::Mirrored, *parseBoneId("rib.D3.L")}, "mirrored rib.D3.L"},
      {{FillBy::Between, c4, c7}, "between C4 C7"},
      {{FillBy::Nearest, c7}, "nearest C7"},
      {{FillBy::MeasuredBones, {}, {}, 12}, "measured-bones 12"},
      {{FillBy::PlanSize}, "plan-size"},
      {{FillBy::LessCondyle}, "less-condyle"},
      {{FillBy::OwnLength}, "own-length"},
      {{FillBy::PlanAngle}, "plan-angle"},
      {{FillBy::SameLimb}, "same-limb"},
      {{FillBy::OtherLimb}, "other-limb"},
      {{FillBy::NoFacet}, "no-facet"},
      {{FillBy::Between, c4, c7, 0, Region::Cervical}, "between C4 C7, fitted-to neck"},
      {{FillBy::PlanSize, {}, {}, 0, Region::Caudal}, "plan-size, fitted-to tail"},
      {{}, ""}};
  for (const auto& [rule, text] : written) {
    EXPECT_EQ(toText(rule), text);
    EXPECT_EQ(fillRuleFromText(text), rule) << text;
  }
}

TEST(FillRules, SentencesOfOlderFilesBecomeRules) {
  const std::vector<std::pair<std::string, std::string>> sentences{
      {"mirrored from humerus.L", "mirrored humerus.L"},
      {"between C4 and C7 along the column", "between C4 C7"},
      {"by proportion to C7", "nearest C7"},
      {"by proportion to the measured bones (median of 12)", "measured-bones 12"},
      {"by the body plan's own size", "plan-size"},
      {"length with condyle less a condyle by proportion", "less-condyle"},
      {"by proportion to the length", "own-length"},
      {"by the body plan's angle", "plan-angle"},
      {"by proportion to the measured bones of the limb", "same-limb"},
      {"by proportion to the other limb", "other-limb"},
      {"between C4 and C7 along the column, fitted to the measured neck", "between C4 C7, fitted-to neck"},
      {"by the body plan's own size, fitted to the measured tail", "plan-size, fitted-to tail"}};
  for (const auto& [sentence, text] : sentences) {
    EXPECT_NE(fillRuleFromText(sentence).by, FillBy::Other) << sentence;
    EXPECT_EQ(toText(fillRuleFromText(sentence)), text);
  }
}

TEST(FillRules, WhatNobodyKnowsIsKept) {
  for (const char* text :
       {"measured on a cast", "between C4", "between C4 X9", "nearest", "measured-bones many", "measured-bones 0",
        "plan-size C4", "mirrored from the left", "own-length, fitted-to wing"}) {
    const FillRule rule = fillRuleFromText(text);
    EXPECT_EQ(rule.by, FillBy::Other) << text;
    EXPECT_EQ(toText(rule), text);
  }
}

// B9 of the checks: humerus to femur 0.57 to 1.09 (Paramo 2025 data set; Taylor data).
TEST(ProportionWarnings, OutsideThePublishedRangeWarns) {
  EXPECT_TRUE(proportionWarnings(filled("bone,length (mm)\nfemur.L,1500\nhumerus.L,1180\n")).empty());
  const auto warnings = proportionWarnings(filled("bone,length (mm)\nfemur.L,1500\nhumerus.L,1700\n"));
  ASSERT_EQ(warnings.size(), 1u);
  EXPECT_EQ(warnings[0].severity, TableMessage::Severity::Warning);
  EXPECT_EQ(warnings[0].cause,
            reason::Reason(table::kHumerusToFemur,
                           {reason::Quantity{1.7 / 1.5}, reason::Quantity{0.57}, reason::Quantity{1.09}}));
}

}  // namespace
}  // namespace zyga::anatomy
