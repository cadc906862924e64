#include "ui/words/anatomy_words.h"

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <set>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/specimen_reasons.h"
#include "core/anatomy/tables/landmark_table.h"
#include "core/anatomy/tables/plausibility.h"
#include "core/anatomy/tables/table_reasons.h"
#include "core/study/ground/trackway_table.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::ui {
namespace {

using anatomy::FillBy;
using anatomy::FillRule;

std::string nameOf(std::string_view id) { return boneName(*anatomy::parseBoneId(id)).toStdString(); }

TEST(AnatomyWords, BonesHaveNamesOfTheTrade) {
  EXPECT_EQ(nameOf("C1"), "atlas");
  EXPECT_EQ(nameOf("C2"), "axis");
  EXPECT_EQ(nameOf("C7"), "cervical vertebra 7");
  EXPECT_EQ(nameOf("humerus.L"), "left humerus");
  EXPECT_EQ(nameOf("manus2.1.L"), "left finger 2, phalanx 1");
  EXPECT_EQ(nameOf("pes3.4.R"), "right toe 3, phalanx 4");
  EXPECT_EQ(nameOf("rib.D4.R"), "right dorsal rib 4");
  EXPECT_EQ(nameOf("skull"), "skull");
  EXPECT_EQ(boneNameAndId(*anatomy::parseBoneId("C7")), "Cervical vertebra 7 (C7)");
  EXPECT_EQ(boneNameAndId(*anatomy::parseBoneId("skull")), "Skull");
}

TEST(AnatomyWords, EveryBoneIsToldFromEveryOther) {
  std::set<QString> names;
  for (const auto& name : anatomy::allBones(anatomy::BodyPlan::HighBrowser, {19, 14, 6, 90}))
    EXPECT_TRUE(names.insert(boneName(name)).second) << toId(name);
}

TEST(AnatomyWords, EveryTermOfAnatomyIsWorded) {
  std::set<QString> measures;
  for (int m = 0; m < anatomy::kMeasureCount; ++m)
    EXPECT_TRUE(measures.insert(measureName(static_cast<anatomy::Measure>(m))).second) << m;
  for (int r = 0; r <= static_cast<int>(anatomy::Region::Pes); ++r)
    EXPECT_FALSE(regionName(static_cast<anatomy::Region>(r)).isEmpty());
  for (int e = 0; e <= static_cast<int>(anatomy::Evidence::Inferred); ++e)
    EXPECT_FALSE(evidenceName(static_cast<anatomy::Evidence>(e)).isEmpty());
  for (int b = 0; b <= static_cast<int>(anatomy::NoteBasis::Conjecture); ++b)
    EXPECT_FALSE(noteBasisName(static_cast<anatomy::NoteBasis>(b)).isEmpty());
}

// Names as "ribTip.L" are for files: no mark is shown under one.
TEST(AnatomyWords, EveryMarkOfABoneHasItsOwnWord) {
  const anatomy::Specimen sculpted = buildSpecimen(fillBlanks(anatomy::MeasurementTable{}));
  for (const anatomy::Bone& bone : sculpted.bones) {
    std::set<QString> names;
    for (const anatomy::WantedMark& mark : marksFor(bone)) {
      const QString name = markName(mark);
      EXPECT_TRUE(names.insert(name).second) << bone.id << " " << name.toStdString();
      EXPECT_FALSE(name.contains(QRegularExpression("[.A-Z]"))) << name.toStdString();
      EXPECT_FALSE(say(mark.purpose).isEmpty()) << name.toStdString();
      if (mark.role) {
        EXPECT_EQ(name, say(termOf(*mark.role)));
      }
    }
  }
}

TEST(AnatomyWords, ACellSaysByWhichRuleItWasFilled) {
  const auto said = [](const FillRule& rule) {
    return originOf({0.4, anatomy::CellOrigin::ByProportion, rule}).toStdString();
  };
  const auto c4 = *anatomy::parseBoneId("C4"), c7 = *anatomy::parseBoneId("C7");
  EXPECT_EQ(originOf({0.4, anatomy::CellOrigin::Measured, {}}), "measured");
  EXPECT_EQ(said({FillBy::Between, c4, c7}), "inferred: between C4 and C7 along the column");
  EXPECT_EQ(said({FillBy::Mirrored, *anatomy::parseBoneId("humerus.L")}), "inferred: mirrored from humerus.L");
  EXPECT_EQ(said({FillBy::MeasuredBones, {}, {}, 12}), "inferred: by proportion to the measured bones (median of 12)");
  EXPECT_EQ(said({FillBy::Nearest, c7, {}, 0, anatomy::Region::Cervical}),
            "inferred: by proportion to C7, fitted to the measured length of the neck");
  EXPECT_EQ(said(anatomy::fillRuleFromText("measured on a cast")), "inferred: measured on a cast");
  EXPECT_EQ(said({FillBy::MatesWith, c7}), "inferred: meets C7");
  EXPECT_EQ(said({FillBy::FacetTurn}), "inferred: half of the joint's facet turn");
  EXPECT_EQ(said({FillBy::OnArc}), "inferred: tangent to the arc on which the facet slides");
}

TEST(AnatomyWords, ACellSaysHowFarItMayBeOff) {
  using anatomy::CellOrigin;
  using anatomy::Measure;
  const FillRule meets{FillBy::MatesWith, *anatomy::parseBoneId("C7")};
  EXPECT_EQ(originOf(Measure::PostzygHeight, {0.19, CellOrigin::ByProportion, meets, 0.012}),
            "inferred: meets C7; ± 12.0\u00A0mm");
  EXPECT_EQ(originOf(Measure::PostzygTilt, {0.5, CellOrigin::ByProportion, meets, 0.0349065850398866}),
            "inferred: meets C7; ± 2.0°");
  EXPECT_EQ(originOf(Measure::Length, {0.4, CellOrigin::Measured, {}}), "measured");
}

TEST(TableWords, AMessageTellsPlaceCauseAndMend) {
  const auto messages = anatomy::readMeasurementTable("bone,length (mm)\nC3,abc\n", "t.csv").messages;
  ASSERT_EQ(messages.size(), 1u);
  EXPECT_EQ(
      say(messages[0]),
      "t.csv:2, column 2 (C3, length): 'abc' is not a number; write a number in mm, or leave the cell blank when it "
      "is not known");
  const auto empty = anatomy::readMeasurementTable("", "t.csv").messages;
  EXPECT_TRUE(say(empty).startsWith("t.csv:1: the table is empty; ")) << say(empty).toStdString();
  anatomy::TableMessage whole;
  whole.cause = {anatomy::table::kHumerusToFemur,
                 {reason::Quantity{1.133}, reason::Quantity{0.57}, reason::Quantity{1.09}}};
  whole.mend = {anatomy::table::kCheckTwoLengths};
  EXPECT_EQ(say(whole), "humerus to femur is 1.13, outside the published 0.57 to 1.09; check the two lengths");
}

/// Every message is worded, with all of its values in it.
void expectWorded(const std::vector<anatomy::TableMessage>& messages, std::size_t least) {
  EXPECT_GE(messages.size(), least);
  for (const auto& message : messages) {
    for (const reason::Reason& reason : {message.cause, message.mend}) {
      const QString said = say(reason);
      EXPECT_NE(said.toStdString(), std::string(reason.id.text)) << "has no wording";
      EXPECT_FALSE(said.contains(QRegularExpression("%[1-9n]"))) << said.toStdString();
      for (const reason::Value& value : reason.values)
        EXPECT_TRUE(said.contains(say(value))) << said.toStdString() << " without " << say(value).toStdString();
    }
  }
}

// Invented tables with every kind of fault.
TEST(TableWords, EveryFaultIsWorded) {
  expectWorded(anatomy::readMeasurementTable("length (mm)\n", "t.csv").messages, 1);
  expectWorded(anatomy::readMeasurementTable("# plan: crawler\n# cervicals: many\n# dorsals: 12\n"
                                             "bone,centrum length (mm),length,length (mm),length (mm),width (stone),"
                                             "mood,cotyle height (mm),wedge (deg),evidence\n"
                                             "C2,,,abc,,,,,,\nC3,,,-4,,,,,,\nC4,,,90000,,,,,,\nC5,,,5,,,,500,,\n"
                                             "C5,,,300,,,,,,\nD14,,,300,,,,,,\nQ9,,,1,,,,,,\nC6,,,300,,,,,120,\n"
                                             "C7,,,300,,,,,,guessed\n,,,300,,,,,,\nC8,1,2,3,4,5,6,7,8,found,10,11\n"
                                             "neck,,,,,,,,,\nneck,,,300,,,,,,\nneck,,,300,,,,,,\n",
                                             "t.csv")
                   .messages,
               14);
  expectWorded(
      anatomy::readMeasurementTable("# cervicals: 19\nbone,facet length (mm),facet width (mm),facet height (mm)\n"
                                    "C5,,0,\nC6,60,40,0\n",
                                    "t.csv")
          .messages,
      3);
  expectWorded(anatomy::readMeasurementTable(
                   "bone,facet height (mm),facet tilt (deg)\nC5,150,40\nC6,1600,-80\nC7,170,41\n", "t.csv")
                   .messages,
               2);
  // Every way in which a cell can be hard to believe, with every slip that may be behind it.
  std::vector<anatomy::TableMessage> implausible;
  using anatomy::Misfit;
  using anatomy::Slip;
  for (const Misfit misfit :
       {Misfit::Neighbours, Misfit::OtherSide, Misfit::SameBone, Misfit::Animal, Misfit::Column}) {
    for (const Slip slip : {Slip::Unclear, Slip::TooLarge, Slip::TooSmall, Slip::DigitsSwapped, Slip::NoFacet}) {
      const anatomy::ImplausibleCell cell{
          *anatomy::parseBoneId("C5"), anatomy::Measure::Length, 0.63, 0.36, misfit, slip, 10, 0.36};
      anatomy::TableMessage message;
      message.cause = causeOf(cell);
      message.mend = mendOf(cell);
      implausible.push_back(message);
    }
  }
  expectWorded(implausible, 25);
  expectWorded(anatomy::readLandmarkTable("bone,mark,x,y (mm),z (mm)\n", "m.csv").messages, 2);
  expectWorded(anatomy::readLandmarkTable("bone,landmark,x (mm),y (mm),z (mm)\nQ9,cranialRim,1,2,3\nC5,,1,2,3\n"
                                          "C5,cranialRim,a,2,3\nC5,caudalRim,1e9,2,3\nC5,top,1,2,3\nC5,top,1,2,3\n",
                                          "m.csv")
                   .messages,
               5);
  expectWorded(study::readTrackwayTable("foot,pace,mood\nLP1,1,2\n", "w.csv").messages, 2);
  expectWorded(study::readTrackwayTable("foot,pace_cm,next_pace_cm,stride_cm,length_cm,pace_cm,mood\n"
                                        "LP1,120,130,400,60,,\nRP1,abc,120,190,-5,,\nRP2,110,120,190,60,,\n"
                                        ",100,,,,,\nLP2,9000,,,,,\nLP3,1,2,3,4,5,6,7,8\n",
                                        "w.csv")
                   .messages,
               7);
}

TEST(TableWords, FootprintsAreToldWithTheirUnits) {
  const auto messages =
      study::readTrackwayTable("foot,pace_cm,next_pace_cm,stride_cm\nL1,62,66,106\nR1,68,72,104\n", "w.csv").messages;
  ASSERT_EQ(messages.size(), 1u);
  EXPECT_EQ(say(messages[0].cause), "the pace 680.0\u00A0mm differs from the next pace of L1, 660.0\u00A0mm");
}

TEST(ScanWords, WhatAJointLacksIsASentence) {
  EXPECT_EQ(
      say(reason::Reason(anatomy::scan::kLacksFacet, {reason::text("C6"), termOf(anatomy::FacetRole::PostzygLeft)})),
      "the left postzygapophyseal facet of C6 has not been marked");
  EXPECT_EQ(
      say(reason::Reason(anatomy::specimen::kNotFilled, {reason::text("C5"), termOf(anatomy::Measure::CotyleWidth)})),
      "the cotyle width of C5 has not been filled in");
}

}  // namespace
}  // namespace zyga::ui
