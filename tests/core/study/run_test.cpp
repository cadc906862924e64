#include "core/study/run.h"

#include <gtest/gtest.h>

#include "tests/support/small_neck.h"

namespace zyga::study {
namespace {

range::Scenario scenarioOf(anatomy::Specimen specimen) {
  const auto shared = std::make_shared<const anatomy::Specimen>(std::move(specimen));
  return {shared, {}, kinematics::restArticulation(*shared), test::smallPose(*shared, 3)};
}

anatomy::Specimen headless() {
  anatomy::Specimen specimen = test::smallNeck();
  specimen.bones.pop_back();
  specimen.joints.pop_back();
  return specimen;
}

TEST(RunStudy, GivesTheAlternativeOfItsKind) {
  const range::Scenario scenario = scenarioOf(test::smallNeck());
  for (const StudyKind kind : {StudyKind::Elevation, StudyKind::Envelope, StudyKind::Range}) {
    const StudyOutcome outcome = run(kind, scenario);
    ASSERT_TRUE(outcome.result) << toText(kind) << ": " << reason::debugText(outcome.failure);
    EXPECT_EQ(kindOf(*outcome.result), kind);
    EXPECT_FALSE(outcome.cancelled());
  }
}

TEST(RunStudy, FindsWhatTheStudyItselfFinds) {
  const range::Scenario scenario = scenarioOf(test::smallNeck());
  const StudyOutcome outcome = run(StudyKind::Elevation, scenario);
  const auto& found = std::get<Elevation>(*outcome.result);
  const Elevation direct = elevation(scenario);
  for (const NeckCarriage which : kNeckCarriages)
    EXPECT_EQ(found[which].carriage.snoutHeight, direct[which].carriage.snoutHeight);
}

TEST(RunStudy, SaysWhyThereIsNoResult) {
  const range::Scenario scenario = scenarioOf(headless());
  const StudyOutcome outcome = run(StudyKind::Envelope, scenario);
  EXPECT_FALSE(outcome.result);
  EXPECT_FALSE(outcome.cancelled());
  EXPECT_EQ(outcome.failure, reason::Reason(kNoSnout));
  EXPECT_EQ(run(StudyKind::Spread, scenario).failure, reason::Reason(kNoMeasures));
}

/// A skull that does not say where its snout is: nobody has foreseen that, and still no exception leaves the study.
TEST(RunStudy, UnforeseenTroubleIsAReasonToo) {
  anatomy::Specimen specimen = test::smallNeck();
  specimen.bones.back().landmarks.erase("snout");
  const StudyOutcome outcome = run(StudyKind::Elevation, scenarioOf(std::move(specimen)));
  EXPECT_FALSE(outcome.result);
  EXPECT_EQ(outcome.failure.id, kUnforeseen);
}

TEST(RunStudy, CancelledIsNeitherResultNorFailure) {
  const std::atomic<bool> cancel = true;
  for (const StudyKind kind : kStudyKinds)
    EXPECT_TRUE(run(kind, scenarioOf(test::smallNeck()), {}, {}, task::Task(&cancel)).cancelled()) << toText(kind);
}

TEST(StudyAnswers, AreWorkedOutOnceForAScenario) {
  StudyAnswers answers;
  const range::Scenario scenario = scenarioOf(test::smallNeck());
  const auto first = answers.run(StudyKind::Elevation, scenario).result;
  EXPECT_EQ(answers.run(StudyKind::Elevation, scenario).result, first);
  kinematics::Pose pose = scenario.pose();
  pose.angles.back()[0] += 0.01;
  const auto moved = answers.run(StudyKind::Elevation, scenario.withPose(pose)).result;
  EXPECT_NE(moved, first);
  EXPECT_EQ(answers.run(StudyKind::Elevation, scenario.withPose(scenario.pose())).result, first)
      << "an equal pose of the same specimen is the same question";
  EXPECT_NE(answers.run(StudyKind::Elevation, scenarioOf(test::smallNeck())).result, first)
      << "another specimen is another question, be it an equal one";
}

TEST(StudyAnswers, LookAtTheSettingsOfTheirKindAlone) {
  StudyAnswers answers;
  const range::Scenario scenario = scenarioOf(test::smallNeck());
  StudySettings settings;
  const auto first = answers.run(StudyKind::Elevation, scenario, settings).result;
  settings.spread.seed = 99;
  EXPECT_EQ(answers.run(StudyKind::Elevation, scenario, settings).result, first);
}

TEST(StudyAnswers, ForgetTheOldestOfAKind) {
  StudyAnswers answers(2);
  const range::Scenario one = scenarioOf(test::smallNeck()), two = scenarioOf(test::smallNeck()),
                        three = scenarioOf(test::smallNeck());
  const auto first = answers.run(StudyKind::Elevation, one).result;
  const auto chart = answers.run(StudyKind::Range, one).result;
  answers.run(StudyKind::Elevation, two);
  answers.run(StudyKind::Elevation, three);
  EXPECT_NE(answers.run(StudyKind::Elevation, one).result, first);
  EXPECT_EQ(answers.run(StudyKind::Range, one).result, chart) << "other kinds do not count";
}

TEST(StudyAnswers, KeepNoFailureAndNothingCancelled) {
  StudyAnswers answers;
  const range::Scenario scenario = scenarioOf(test::smallNeck());
  const std::atomic<bool> cancel = true;
  EXPECT_TRUE(answers.run(StudyKind::Range, scenario, {}, {}, task::Task(&cancel)).cancelled());
  EXPECT_TRUE(answers.run(StudyKind::Range, scenario).result);
}

}  // namespace
}  // namespace zyga::study
