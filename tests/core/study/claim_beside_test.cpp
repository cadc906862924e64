// What stands beside the answer to a claim: the margin of all ranges, the foremost dorsals, the postures published as
// habitual. Against hand trigonometry on a neck of three joints, and against answers found in another way.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/range/limits.h"
#include "core/study/claims/claim_answer.h"
#include "tests/core/study/standing_scenario.h"
#include "tests/support/three_joint_neck.h"

namespace zyga::study {
namespace {

using test::ThreeJointNeck;
using testing::ElementsAre;

constexpr double kOneDegree = std::numbers::pi / 180;

range::Scenario besideScenario(const ThreeJointNeck& neck) {
  auto specimen = std::make_shared<const anatomy::Specimen>(test::specimenOf(neck));
  return {specimen, {}, test::poseOf(neck, *specimen)};
}

ThreeJointNeck limitedNeck() {
  ThreeJointNeck neck;
  neck.limits = {
      {{-10 * kOneDegree, 30 * kOneDegree}, {-15 * kOneDegree, 20 * kOneDegree}, {-40 * kOneDegree, 25 * kOneDegree}}};
  return neck;
}

ClaimAnswer answerTo(const range::Scenario& scenario, const Claim& claim) {
  return answerClaim(scenario, claim).value();
}

/// The highest that the limited neck gets with every upper limit moved by so much, rad; none of its bones passes the
/// vertical before 5 degrees.
double highest(double by) {
  return limitedNeck().snout({30 * kOneDegree + by, 20 * kOneDegree + by, 25 * kOneDegree + by}).y();
}

TEST(Widened, MovesEndsNoFartherThanNeutral) {
  range::MotionRange range;
  range.min = -3 * kOneDegree;
  range.max = 8 * kOneDegree;
  EXPECT_NEAR(widened(range, 2 * kOneDegree).min, -5 * kOneDegree, 1e-12);
  EXPECT_NEAR(widened(range, 2 * kOneDegree).max, 10 * kOneDegree, 1e-12);
  EXPECT_NEAR(widened(range, -2 * kOneDegree).min, -1 * kOneDegree, 1e-12);
  EXPECT_NEAR(widened(range, -5 * kOneDegree).min, 0, 1e-12);
  EXPECT_NEAR(widened(range, -5 * kOneDegree).max, 3 * kOneDegree, 1e-12);
  EXPECT_NEAR(widened(range, -9 * kOneDegree).max, 0, 1e-12);
  range.min = 2 * kOneDegree;  // neutral is no value of this one: the nearest to it stays
  EXPECT_NEAR(widened(range, -20 * kOneDegree).min, 2 * kOneDegree, 1e-12);
  EXPECT_NEAR(widened(range, -20 * kOneDegree).max, 2 * kOneDegree, 1e-12);
  range.empty = true;
  EXPECT_EQ(widened(range, 5 * kOneDegree).max, range.max);
}

TEST(ClaimMargin, NarrowsToTheLastHalfDegreeThatHolds) {
  for (const double by : {0.7, 3.2, 8.9}) {
    const ClaimAnswer answer =
        answerTo(besideScenario(limitedNeck()), {ClaimKind::HeadHeight, Bound::AtLeast, highest(-by * kOneDegree)});
    ASSERT_TRUE(answer.supported && answer.margin);
    EXPECT_FALSE(answer.margin->widening);
    EXPECT_NEAR(answer.margin->narrowing.value(), std::floor(by * 2) / 2 * kOneDegree, 1e-9) << by;
  }
  const auto atHeight = [](double height) {
    return answerTo(besideScenario(limitedNeck()), {ClaimKind::HeadHeight, Bound::AtLeast, height}).margin->narrowing;
  };
  EXPECT_EQ(atHeight(highest(0) - 1e-6), 0.0);
  EXPECT_EQ(atHeight(2.0), kMostMargin) << "the neutral neck is as high";
}

TEST(ClaimMargin, WidensToTheFirstHalfDegreeThatDoes) {
  for (const double by : {0.3, 2.6, 4.9}) {
    const ClaimAnswer answer =
        answerTo(besideScenario(limitedNeck()), {ClaimKind::HeadHeight, Bound::AtLeast, highest(by * kOneDegree)});
    ASSERT_TRUE(!answer.supported && answer.margin);
    EXPECT_FALSE(answer.margin->narrowing);
    EXPECT_NEAR(answer.margin->widening.value(), std::ceil(by * 2) / 2 * kOneDegree, 1e-9) << by;
  }
  EXPECT_FALSE(answerTo(besideScenario(limitedNeck()), {ClaimKind::HeadHeight, Bound::AtLeast, 29}).margin->widening);
}

TEST(ClaimMargin, IsAskedForWithTheNeedsAlone) {
  const range::Scenario scenario = besideScenario(limitedNeck());
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 3};
  EXPECT_FALSE(answerClaim(scenario, claim, {.needs = false})->margin);
  EXPECT_FALSE(answerClaim(scenario, claim, {.needs = false, .beside = false})->habit);
  EXPECT_TRUE(answerClaim(scenario, claim, {.needs = false})->habit);
}

// A point needs the neck to pass what its facets allow, not only what it is used to.
TEST(ClaimMargin, WidensForPointsToo) {
  const range::Scenario scenario = standingScenario();
  Claim claim{ClaimKind::HeadAhead, Bound::AtLeast, 3, 1};
  const ClaimAnswer far = answerClaim(scenario, claim, {.needs = false, .beside = false}).value();
  ASSERT_TRUE(far.best);
  // The best is that of all heights that hang together; past it single ones may still be reached.
  const auto reached = [&] { return answerClaim(scenario, claim, {.needs = false, .beside = false})->supported; };
  for (claim.value = *far.best + 0.1; reached() && claim.value < *far.best + 2;) claim.value += 0.1;
  const ClaimAnswer answer = answerTo(scenario, claim);
  ASSERT_FALSE(answer.supported);
  ASSERT_TRUE(answer.margin && answer.margin->widening);
  EXPECT_GT(*answer.margin->widening, 0);
  EXPECT_LT(*answer.margin->widening, 5 * kOneDegree);
}

TEST(ClaimDorsals, GiveWhatTheNeckReachesFromThemWhenTheyAreBent) {
  const range::Scenario scenario = standingScenario();
  for (const Claim& claim :
       {Claim{ClaimKind::HeadHeight, Bound::AtLeast, 29}, Claim{ClaimKind::NeckSlope, Bound::AtLeast, 89 * kOneDegree},
        Claim{ClaimKind::NeckBaseSlope, Bound::AtLeast, 89 * kOneDegree},
        Claim{ClaimKind::NeckBaseSlope, Bound::AtMost, -89 * kOneDegree}}) {
    const ClaimAnswer answer = answerClaim(scenario, claim, {.needs = false}).value();
    ASSERT_TRUE(answer.dorsals && answer.dorsals->best && answer.best);
    const ClaimDorsals& dorsals = *answer.dorsals;
    std::vector<std::string> ids;
    for (const auto joint : dorsals.joints) ids.push_back(scenario.specimen()[joint].id);
    EXPECT_THAT(ids, ElementsAre("D3-D4", "D2-D3", "D1-D2"));
    const double sign = claim.bound == Bound::AtLeast ? 1 : -1;
    EXPECT_GT(sign * *dorsals.gain, 0.01);
    EXPECT_NEAR(*dorsals.gain, *dorsals.best - *answer.best, 1e-12);
    // The animal bent so by hand, and the same asked of its neck alone.
    kinematics::Pose bent = scenario.pose();
    for (std::size_t i = 0; i < dorsals.joints.size(); ++i) {
      const auto joint = dorsals.joints[i];
      bent[joint][0] += dorsals.turned[i];
      const range::MotionRange range = range::motionRange(scenario.specimen(), scenario.articulation(),
                                                          scenario.assumptions(), joint, Eigen::Vector3d::Zero(), 0);
      EXPECT_GE(bent[joint][0], range.min - 1e-9);
      EXPECT_LE(bent[joint][0], range.max + 1e-9);
    }
    const ClaimAnswer byHand = answerClaim(scenario.withPose(bent), claim, {.needs = false, .beside = false}).value();
    EXPECT_NEAR(byHand.best.value(), *dorsals.best, 2e-4) << static_cast<int>(claim.kind);
  }
}

TEST(ClaimDorsals, TurnTheAnswerWhereTheyGiveEnough) {
  const range::Scenario scenario = standingScenario();
  Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 29};
  const ClaimAnswer far = answerClaim(scenario, claim, {.needs = false}).value();
  EXPECT_FALSE(far.dorsals->supported);
  claim.value = *far.best + 0.5 * *far.dorsals->gain;
  const ClaimAnswer between = answerClaim(scenario, claim, {.needs = false}).value();
  EXPECT_FALSE(between.supported) << "the answer itself stays";
  EXPECT_TRUE(between.dorsals->supported);
  EXPECT_NEAR(*between.best, *far.best, 1e-6);
}

TEST(ClaimDorsals, AreNoneForTheTailAndWhereThereAreNone) {
  EXPECT_FALSE(
      answerClaim(standingScenario(), {ClaimKind::TailBaseLevel, Bound::AtLeast, 0.2}, {.needs = false})->dorsals);
  EXPECT_FALSE(answerClaim(besideScenario(limitedNeck()), {ClaimKind::HeadHeight, Bound::AtLeast, 3}, {.needs = false})
                   ->dorsals);
}

TEST(ClaimHabit, ReadsBothPostures) {
  const ThreeJointNeck neck = limitedNeck();
  const ClaimAnswer answer =
      answerClaim(besideScenario(neck), {ClaimKind::HeadHeight, Bound::AtLeast, 3}, {.needs = false}).value();
  ASSERT_TRUE(answer.habit);
  EXPECT_NEAR(answer.habit->undeflected, 2, 1e-9);
  EXPECT_FALSE(answer.habit->undeflectedShows);
  // Base and middle at their upper limits, the head bent down as far as it goes.
  EXPECT_NEAR(answer.habit->extended, neck.snout({30 * kOneDegree, 20 * kOneDegree, -40 * kOneDegree}).y(), 1e-9);
  EXPECT_TRUE(answer.habit->extendedShows);
  EXPECT_FALSE(answer.habit->extendedCollides);
  EXPECT_NEAR(answer.habit->share.value(), (3 - 2) / (highest(0) - 2), 1e-9);
}

TEST(ClaimHabit, ExtendsTheNeckUntilItsMiddleIsUpright) {
  ThreeJointNeck neck = limitedNeck();
  neck.baseSlope = 70 * kOneDegree;  // 20 degrees of the base bring the second bone upright
  const ClaimAnswer answer =
      answerClaim(besideScenario(neck), {ClaimKind::HeadHeight, Bound::AtLeast, 3}, {.needs = false}).value();
  EXPECT_NEAR(answer.habit->extended, neck.snout({20 * kOneDegree, 0, -40 * kOneDegree}).y(), 1e-9);
}

TEST(ClaimHabit, OfSlopesGoesByTheirBound) {
  const ThreeJointNeck neck = limitedNeck();
  const auto habit = [&](Bound bound, double slope) {
    return *answerClaim(besideScenario(neck), {ClaimKind::NeckSlope, bound, slope}, {.needs = false})->habit;
  };
  const double extended = neck.slope({30 * kOneDegree, 20 * kOneDegree, 0});
  EXPECT_NEAR(habit(Bound::AtLeast, 0.1).extended, extended, 1e-9);
  EXPECT_TRUE(habit(Bound::AtLeast, 0.1).extendedShows);
  EXPECT_FALSE(habit(Bound::AtMost, 0.1).extendedShows);
  EXPECT_TRUE(habit(Bound::AtMost, 0.1).undeflectedShows);
}

TEST(ClaimHabit, IsNoneForPointsAndTheTail) {
  const range::Scenario scenario = standingScenario();
  const auto habit = [&](const Claim& claim) { return answerClaim(scenario, claim, {.needs = false})->habit; };
  EXPECT_FALSE(habit({ClaimKind::SnoutToGround, Bound::AtLeast, 2}));
  EXPECT_FALSE(habit({ClaimKind::TailBaseLevel, Bound::AtLeast, 0.2}));
  EXPECT_TRUE(habit({ClaimKind::NeckBaseSlope, Bound::AtLeast, 0.2}));
}

}  // namespace
}  // namespace zyga::study
