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
  EXPECT_EQ(cautions(study::StudyResult(study::Elevation())), QStringList{bareBoneCaution()});
  const files::StudyTold told = toldOf(study::StudyResult(study::Pressure()));
  EXPECT_EQ(told.views.size(), 2u);
  EXPECT_FALSE(told.caution.empty());
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
  EXPECT_TRUE(say(reason::Reason(study::kUnforeseen, {reason::text("no bone")})).endsWith("no bone"));
}

}  // namespace
}  // namespace zyga::ui
