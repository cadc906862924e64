#include "ui/words/study_words.h"

#include <gtest/gtest.h>

#include <numbers>

#include "ui/words/assumption_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

const QString kNoBreak = QStringLiteral("\u00A0");

study::Elevation elevation() {
  study::Elevation e;
  for (const auto which : study::kNeckCarriages) {
    auto& one = e.cases[static_cast<std::size_t>(which)];
    one.which = which;
    one.carriage.snoutHeight = 3;
    one.carriage.lowest = 1;
  }
  return e;
}

TEST(StudyWords, ElevationHasASentenceForEachCase) {
  const QStringList words = sentences(elevation());
  ASSERT_EQ(words.size(), static_cast<qsizetype>(study::kNeckCarriages.size()));
  EXPECT_EQ(words[0], "Neutral: snout 3.00" + kNoBreak + "m over the ground, neck rising by 0.0°, its base at 0.0°.");
  EXPECT_TRUE(words[1].startsWith("Maximum dorsiflexion: "));
}

TEST(StudyWords, FallingNeckAndSnoutInTheGroundAreSaid) {
  study::Elevation e = elevation();
  e.cases[4].slope = -std::numbers::pi / 6;
  e.cases[4].carriage.lowest = -0.25;
  const QString words = sentences(e)[4];
  EXPECT_TRUE(words.contains("neck falling by 30.0°")) << words.toStdString();
  EXPECT_TRUE(words.endsWith("It would be 0.25" + kNoBreak + "m in the ground."));
}

TEST(StudyWords, EnvelopeTellsHeightsAndGround) {
  study::Envelope e;
  EXPECT_TRUE(sentences(e).isEmpty()) << "nothing was reached";
  e.outlines = {{{0, 1}, {2, 5}, {4, 0}}};
  e.highest = {2, 5};
  e.farthest = {4, 0};
  e.lowest = {4, 0.5};
  EXPECT_TRUE(sentences(e)[0].contains("5.00" + kNoBreak + "m high and 4.00" + kNoBreak + "m ahead"));
  EXPECT_TRUE(sentences(e)[1].startsWith("It does not reach the ground"));
  e.ground = {{1, 3}};
  EXPECT_TRUE(
      sentences(e)[1].endsWith("from 1.00" + kNoBreak + "m to 3.00" + kNoBreak + "m ahead of the neck's base."));
  e.foreFeet = 0.5;
  EXPECT_TRUE(
      sentences(e)[1].endsWith("from 0.50" + kNoBreak + "m to 2.50" + kNoBreak + "m ahead of the foremost fore foot."));
  e.space.emplace().volume = 12.34;
  EXPECT_TRUE(sentences(e).last().contains("12.3" + kNoBreak + "m³"));
}

TEST(StudyWords, RangesNameTheRegionsAndTheMotions) {
  study::RangeChart chart;
  chart.neck = {0.5, -0.25, 0.1, -0.2, 0, 0};
  const QStringList words = sentences(chart);
  ASSERT_EQ(words.size(), 3);
  EXPECT_EQ(words[0],
            "Neck and head: dorsiflexion 28.6°, ventriflexion 14.3°, left lateral flexion 5.7°, right lateral flexion "
            "11.5° in all, one motion at a time.");
}

TEST(StudyWords, UncertaintyTellsSharesAndWhatWasLeftOut) {
  study::SpreadStudy spread;
  EXPECT_EQ(sentences(spread), QStringList{"No animal could be built from any of the samples."});
  spread.draws.resize(20);
  spread.supportedShare = 0.45;
  spread.options.seed = 7;
  EXPECT_TRUE(sentences(spread).last().contains("45" + kNoBreak + "% of 20 samples (seed 7)"));
  spread.failed = 3;
  EXPECT_TRUE(sentences(spread).last().startsWith("3 samples gave no animal"));
}

// Both views are told, the one with about 700 mmHg and the one with the siphon.
TEST(StudyWords, PressureGoesWithBothViewsAndItsCaution) {
  const QStringList words = cautions(study::StudyResult(study::Pressure()));
  EXPECT_TRUE(words[0].contains("700 mmHg"));
  EXPECT_TRUE(words[1].contains("siphon"));
  EXPECT_EQ(words[2], pressureCaution());
  EXPECT_TRUE(cautions(study::StudyResult(study::Elevation())).contains(bareBoneCaution()));
  for (const char* source : {"Hicks & Badeer 1989", "Hughes et al. 2016"})
    EXPECT_TRUE(words[1].contains(source)) << source;
  const files::StudyTold told = toldOf(study::StudyResult(study::Pressure()));
  EXPECT_EQ(told.views.size(), 2u);
  EXPECT_FALSE(told.caution.empty());
}

TEST(StudyWords, PressureAddsThePerfusion) {
  study::Pressure pressure;
  pressure.rows[0] = {study::NeckCarriage::Neutral, 6, 2, 155.1, 154.4, 155.9, 255.1};
  const QStringList words = sentences(pressure);
  EXPECT_EQ(words[1],
            QString("Neutral: head 2.00_m over the heart, column 155_mmHg (154 to 156), at the heart 255_mmHg.")
                .replace('_', kNoBreak));
  EXPECT_TRUE(words.last().startsWith("At the heart 100" + kNoBreak + "mmHg are added")) << words.last().toStdString();
}

study::NeckLoads loads(study::NeckCarriage which, const std::vector<double>& stresses) {
  study::NeckLoads made;
  made.which = which;
  for (const double stress : stresses) {
    study::JointLoad load;
    load.stress = stress;
    load.moment = 1000;
    made.joints.push_back(load);
  }
  made.evenness = study::evennessOf(stresses);
  made.variationLow = made.variationHigh = made.evenness.variation;
  return made;
}

study::JointStress twoJoints() {
  study::JointStress stress;
  stress.mass = {960, 1200, 1440};
  stress.joints = {{{0}, "C3-D1", 0.03, true}, {{1}, "C2-C3", 0.02, false}};
  for (const study::NeckCarriage which : study::kNeckCarriages)
    stress.postures[static_cast<std::size_t>(which)] = loads(which, {3e5, 1e5});
  stress.postures[3] = loads(study::NeckCarriage::Highest, {1.1e5, 0.9e5});
  stress.postures[4] = loads(study::NeckCarriage::Lowest, {-3e5, 1e5});
  return stress;
}

TEST(StudyWords, StressTellsEveryPostureAndComparesThem) {
  study::JointStress stress = twoJoints();
  stress.bends = {{-1, -0.5, 0.9}, {0.6, 0.35, 0.08}};
  stress.evenest = 1;
  stress.alike = {0.1, 0.5};
  QStringList words = sentences(stress);
  for (QString& one : words) one.replace(kNoBreak, "_");
  ASSERT_EQ(words.size(), 12) << words.join('\n').toStdString();
  EXPECT_EQ(words[0],
            "Ahead of the neck’s base there are 1.2_t (960_kg to 1.4_t) of head and neck: hulls of the bones at 900 "
            "kg/m³ for the head and 600 for the neck.");
  EXPECT_EQ(
      words[1],
      "Neutral, neck at 0.0°: stress 0.20_MPa on average, coefficient of variation 50_% (50_% to 50_%); largest at "
      "C3-D1, 1.5 times the average.");
  EXPECT_TRUE(words[5].contains("pulls the joints apart")) << words[5].toStdString();
  EXPECT_EQ(words[7],
            "Of these postures the stress is most even in this one: highest (coefficient of variation 10_%).");
  EXPECT_EQ(words[8],
            "With every joint bent by the same share of its range it is most even at 60_% of maximum dorsiflexion, the "
            "neck at 20.1° (coefficient of variation 8_%).");
  EXPECT_EQ(words[9],
            "The error of the masses does not tell this apart from some postures with the neck anywhere from 5.7° to "
            "28.6°.");
  EXPECT_EQ(words[10], "Present pose, joint by joint from the neck’s base: C3-D1 0.30_MPa, C2-C3 0.10_MPa.");
  EXPECT_EQ(words[11], "Centrum and neural spines are measured at 1 of 2 joints and inferred at the others.");
}

TEST(StudyWords, StressSaysWhichPosturesAreNotToldApart) {
  study::JointStress stress = twoJoints();
  stress.postures[3].variationHigh = 0.6;
  EXPECT_TRUE(sentences(stress)[7].endsWith(
      "does not tell it apart from: neutral, maximum dorsiflexion, maximum ventriflexion, present pose."))
      << sentences(stress)[7].toStdString();
}

TEST(StudyWords, StressSaysWhenMuchActsSideways) {
  study::JointStress stress = twoJoints();
  EXPECT_FALSE(sentences(stress).join(' ').contains("sideways"));
  stress.postures[5].joints[1].sideways = 400;
  EXPECT_TRUE(sentences(stress).join(' ').contains(
      QString("up to 0.4_kN_m act sideways or twist the neck, at C2-C3").replace('_', kNoBreak)));
}

// Why, why not, and what it rests on.
TEST(StudyWords, StressGoesWithItsCritiqueAndItsSources) {
  const QStringList words = cautions(study::StudyResult(twoJoints()));
  EXPECT_EQ(words[0], stressViews()[0]);
  for (const char* source : {"Christian & Heinrich 1998", "Christian 2002", "Christian & Dzemski 2007", "from memory"})
    EXPECT_TRUE(words[0].contains(source)) << source;
  EXPECT_TRUE(words[1].contains("common criticism, no source"));
  EXPECT_EQ(words[2], stressCaution());
  const files::StudyTold told = toldOf(study::StudyResult(twoJoints()));
  EXPECT_EQ(told.views.size(), 2u);
  EXPECT_EQ(told.caution, stressCaution().toStdString());
}

TEST(StudyWords, EveryKindHasATitleAndEveryReasonAWording) {
  QStringList titles;
  for (const study::StudyKind kind : study::kStudyKinds) {
    EXPECT_FALSE(titles.contains(title(kind)));
    titles << title(kind);
    EXPECT_TRUE(tells(kind).endsWith('.'));
  }
  for (const reason::Id& id : {study::kNoNeck, study::kNoSnout, study::kNoSkull, study::kNoDorsals, study::kNoMeasures})
    EXPECT_TRUE(say(reason::Reason(id)).endsWith('.')) << id.text;
  EXPECT_EQ(say(reason::Reason(study::kNoSpineOrCentrum, {reason::text("C3-C4")})),
            "Nothing is known of the size of the centrum or the neural spines at C3-C4.");
  EXPECT_TRUE(say(reason::Reason(study::kUnforeseen, {reason::text("no bone")})).endsWith("no bone"));
}

}  // namespace
}  // namespace zyga::ui
