// Claims against hand trigonometry and brute force on a neck of three joints, and against the closed forms of facets on
// arcs.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <thread>

#include "core/study/claims/claim_book.h"
#include "core/study/claims/claim_site.h"
#include "tests/support/three_joint_neck.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::study {
namespace {

using test::kDegree;
using test::ThreeJointNeck;
using testing::ElementsAre;

range::Scenario scenarioOf(const ThreeJointNeck& neck) {
  auto specimen = std::make_shared<const anatomy::Specimen>(test::specimenOf(neck));
  return {specimen, {}, test::poseOf(neck, *specimen)};
}

ClaimAnswer ask(const range::Scenario& scenario, const Claim& claim) {
  return answerClaim(scenario, claim, {.needs = false}).value();
}
ClaimAnswer ask(const ThreeJointNeck& neck, const Claim& claim) { return ask(scenarioOf(neck), claim); }

std::array<double, 3> anglesOf(const ClaimAnswer& answer) {
  return {answer.pose.angles[0][0], answer.pose.angles[1][0], answer.pose.angles[2][0]};
}

ThreeJointNeck stiffNeck() {
  ThreeJointNeck neck;
  neck.limits = {{{-10 * kDegree, 30 * kDegree}, {-15 * kDegree, 20 * kDegree}, {-40 * kDegree, 25 * kDegree}}};
  return neck;
}

/// Every combination of `steps` angles a joint.
template <class See>
void tryAll(const ThreeJointNeck& neck, int steps, const See& see) {
  const auto angle = [&](std::size_t joint, int i) {
    const anatomy::AngleLimits& limits = neck.limits[joint];
    return limits.min + (limits.max - limits.min) * i / (steps - 1);
  };
  for (int a = 0; a < steps; ++a)
    for (int b = 0; b < steps; ++b)
      for (int c = 0; c < steps; ++c) see(std::array{angle(0, a), angle(1, b), angle(2, c)});
}

// Base at 2 m; slopes 30, 50, 75 degrees: 2 + sin 30 + 0.8 sin 50 + 0.5 sin 75.
TEST(ClaimByHand, headHeightIsThatOfTheUpperLimits) {
  const ClaimAnswer answer = ask(stiffNeck(), {ClaimKind::HeadHeight, Bound::AtLeast, 3.75});
  const double byHand = 2 + 0.5 + 0.8 * std::sin(50 * kDegree) + 0.5 * std::sin(75 * kDegree);
  EXPECT_FALSE(answer.supported);
  EXPECT_NEAR(answer.best.value(), byHand, 1e-9);
  EXPECT_NEAR(answer.shortBy, 3.75 - byHand, 1e-9);
  EXPECT_NEAR(anglesOf(answer)[0], 30 * kDegree, 1e-9);
  // The lever of each joint: how far ahead of it the snout is, times its range.
  std::vector<std::string> ids;
  const anatomy::Specimen specimen = test::specimenOf(stiffNeck());
  double sum = 0;
  for (const ClaimStop& stop : answer.stopping) {
    ids.push_back(specimen[stop.joint].id);
    sum += stop.share;
  }
  EXPECT_THAT(ids, ElementsAre("C2-D1", "C1-C2", "skull-C1"));
  EXPECT_NEAR(sum, 1, 1e-12);
  ASSERT_FALSE(answer.stopping.empty());
  const ClaimStop& worst = answer.stopping.front();
  EXPECT_FALSE(worst.atNoAngle);
  EXPECT_EQ(worst.stop.motion, 0);
  EXPECT_GT(worst.stop.sign, 0);
  EXPECT_NEAR(worst.stop.turned, 30 * kDegree, 1e-9);
  EXPECT_EQ(worst.stop.stop.kind, range::FindingKind::TypedLimit);
  EXPECT_NEAR(worst.stop.stop.limit, 30 * kDegree, 1e-9);
}

TEST(ClaimByHand, theAnswerTurnsExactlyAtTheBest) {
  const double byHand = 2 + 0.5 + 0.8 * std::sin(50 * kDegree) + 0.5 * std::sin(75 * kDegree);
  EXPECT_TRUE(ask(stiffNeck(), {ClaimKind::HeadHeight, Bound::AtLeast, byHand - 1e-6}).supported);
  EXPECT_FALSE(ask(stiffNeck(), {ClaimKind::HeadHeight, Bound::AtLeast, byHand + 1e-6}).supported);
}

// With room to stand upright the head is as high as all bones end to end, and no joint is at its limit.
TEST(ClaimByHand, aFreeNeckStandsUpright) {
  ThreeJointNeck neck;
  neck.baseSlope = 20 * kDegree;
  neck.limits.fill({-80 * kDegree, 80 * kDegree});
  const ClaimAnswer answer = ask(neck, {ClaimKind::HeadHeight, Bound::AtLeast, 5});
  EXPECT_NEAR(answer.best.value(), 2 + 1.0 + 0.8 + 0.5, 1e-9);
  EXPECT_TRUE(answer.stopping.empty());
}

TEST(ClaimByHand, slopesOfNeckAndItsBase) {
  const ThreeJointNeck neck = stiffNeck();
  const double steepest = neck.slope({30 * kDegree, 20 * kDegree, 0});
  EXPECT_NEAR(ask(neck, {ClaimKind::NeckSlope, Bound::AtLeast, 1}).best.value(), steepest, 1e-9);
  const double flattest = neck.slope({-10 * kDegree, -15 * kDegree, 0});
  EXPECT_NEAR(ask(neck, {ClaimKind::NeckSlope, Bound::AtMost, -1}).best.value(), flattest, 1e-9);
  const ClaimAnswer base = ask(neck, {ClaimKind::NeckBaseSlope, Bound::AtLeast, 30 * kDegree});
  EXPECT_TRUE(base.supported);
  EXPECT_NEAR(base.best.value(), 30 * kDegree, 1e-9);
  EXPECT_EQ(base.joints, 1u);
  EXPECT_TRUE(ask(neck, {ClaimKind::NeckBaseSlope, Bound::AtMost, -10 * kDegree}).supported);
  EXPECT_FALSE(ask(neck, {ClaimKind::NeckBaseSlope, Bound::AtMost, -10.001 * kDegree}).supported);
}

/// Brute force over the whole box: what no combination shows is not supported, what one shows is.
class ClaimByBruteForce : public testing::TestWithParam<double> {
 protected:
  static ThreeJointNeck neck() {
    ThreeJointNeck neck = stiffNeck();
    neck.baseSlope = GetParam() * kDegree;
    neck.limits = {{{-50 * kDegree, 35 * kDegree}, {-40 * kDegree, 60 * kDegree}, {-70 * kDegree, 30 * kDegree}}};
    return neck;
  }
};

TEST_P(ClaimByBruteForce, nothingStandsHigherThanTheBest) {
  double highest = 0;
  tryAll(neck(), 41,
         [&](const std::array<double, 3>& angles) { highest = std::max(highest, neck().snout(angles).y()); });
  const ClaimAnswer answer = ask(neck(), {ClaimKind::HeadHeight, Bound::AtLeast, 10});
  EXPECT_GE(answer.best.value(), highest - 1e-9);
  EXPECT_LT(answer.best.value(), highest + 0.003) << "a grid of 2 degrees comes that near";
  EXPECT_NEAR(neck().snout(anglesOf(answer)).y(), *answer.best, 1e-9);
}

TEST_P(ClaimByBruteForce, nothingIsSteeperThanTheBest) {
  double steepest = -10, flattest = 10;
  tryAll(neck(), 41, [&](const std::array<double, 3>& angles) {
    steepest = std::max(steepest, neck().slope(angles));
    flattest = std::min(flattest, neck().slope(angles));
  });
  const double most = ask(neck(), {ClaimKind::NeckSlope, Bound::AtLeast, 1.5}).best.value();
  const double least = ask(neck(), {ClaimKind::NeckSlope, Bound::AtMost, -1.5}).best.value();
  EXPECT_NEAR(most, steepest, 0.1 * kDegree);
  EXPECT_GE(most, steepest - 1e-9);
  EXPECT_NEAR(least, flattest, 0.1 * kDegree);
  EXPECT_LE(least, flattest + 1e-9);
}

TEST_P(ClaimByBruteForce, aSupportedClaimIsShownInsideTheBoxByTheLeastShare) {
  const double best = ask(neck(), {ClaimKind::HeadHeight, Bound::AtLeast, 10}).best.value();
  const double height = neck().snout({}).y() + 0.6 * (best - neck().snout({}).y());
  const ClaimAnswer answer = ask(neck(), {ClaimKind::HeadHeight, Bound::AtLeast, height});
  ASSERT_TRUE(answer.supported);
  const std::array<double, 3> angles = anglesOf(answer);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_GE(angles[i], neck().limits[i].min);
    EXPECT_LE(angles[i], neck().limits[i].max);
  }
  EXPECT_NEAR(neck().snout(angles).y(), height, 1e-6);
  EXPECT_TRUE(answer.stopping.empty());
}

INSTANTIATE_TEST_SUITE_P(TrunkSlopes, ClaimByBruteForce, testing::Values(-40.0, -10.0, 0.0, 25.0, 60.0));

TEST(Claim, thePresentPoseShowsWhatItShows) {
  const ThreeJointNeck neck = stiffNeck();
  const range::Scenario neutral = scenarioOf(neck);
  kinematics::Pose pose = neutral.pose();
  pose.angles[0][0] = 12 * kDegree;
  const double height = neck.snout({12 * kDegree, 0, 0}).y();
  const auto at = [&](double claimed) {
    return ask(neutral.withPose(pose), {ClaimKind::HeadHeight, Bound::AtLeast, claimed});
  };
  EXPECT_EQ(at(height - 1e-6).pose, pose);
  EXPECT_TRUE(at(height + 1e-6).supported);
  EXPECT_FALSE(at(height + 1e-6).pose == pose);
}

TEST(Claim, aPosePastItsRangeShowsNothing) {
  const range::Scenario neutral = scenarioOf(stiffNeck());
  kinematics::Pose pose = neutral.pose();
  pose.angles[0][0] = 80 * kDegree;
  const ClaimAnswer answer = ask(neutral.withPose(pose), {ClaimKind::HeadHeight, Bound::AtLeast, 3.6});
  EXPECT_FALSE(answer.supported);
  EXPECT_NEAR(answer.pose.angles[0][0], 30 * kDegree, 1e-9);
}

TEST(Claim, tellsWhatIsLackingAndWhatMakesNoSense) {
  const ThreeJointNeck neck = stiffNeck();
  EXPECT_EQ(ask(neck, {ClaimKind::TailBaseLevel, Bound::AtLeast, 0.1}).unanswerable.id, kClaimNeedsFiveCaudals);
  EXPECT_EQ(ask(neck, {ClaimKind::SnoutToGround, Bound::AtLeast, 2}).unanswerable.id, kClaimNeedsForefeet);
  const reason::Reason noNumber = ask(neck, {ClaimKind::HeadHeight, Bound::AtLeast, std::nan("")}).unanswerable;
  using reason::Quantity, reason::Unit;
  EXPECT_EQ(noNumber,
            reason::Reason(kClaimValueOutOfBounds, {reason::Term{"claim.kind.head-height"}, Quantity{0, Unit::Distance},
                                                    Quantity{30, Unit::Distance}}));
  EXPECT_EQ(ask(neck, {ClaimKind::HeadHeight, Bound::AtMost, 3}).unanswerable.id, kClaimHasNoUpperBound);
}

TEST(Claim, usualClaimsMakeSense) {
  for (const ClaimKind kind : kClaimKinds) {
    EXPECT_EQ(traitsOf(kind).kind, kind);
    EXPECT_TRUE(validate(usualClaim(kind)).empty());
  }
}

/// Two vertebrae with facets of length L = 60 mm sliding on an arc of radius R = 200 mm; C6 is the neck's base here.
struct Arc {
  anatomy::Specimen specimen = test::twoVertebrae();
  range::Assumptions assumptions;
  Arc() {
    specimen.counts.cervical = 6;
    // Overlap alone is to decide.
    assumptions.facetContactTolerated = assumptions.facetGapTolerated = 10;
  }
  range::Scenario scenario() const {
    return {std::make_shared<const anatomy::Specimen>(specimen), assumptions, kinematics::Pose::neutral(specimen)};
  }
  ClaimAnswer ask(double slope) const {
    return answerClaim(scenario(), {ClaimKind::NeckBaseSlope, Bound::AtLeast, slope}).value();
  }
};

// checks A8, derived geometry: the limit at least overlap s is (1 - s) L / R on an arc, 8.59, 12.89 and 17.19 degrees
// at 50, 25 and 0 %. Flat facets slide on the chord, 2 R tan(q/2), which is the exact value here.
TEST(ClaimNeeds, leastOverlapFollowsTheArc) {
  for (const double degrees : {3.0, 8.59, 12.89, 16.0}) {
    const double slope = degrees * kDegree;
    const ClaimAnswer answer = Arc().ask(slope);
    EXPECT_NEAR(answer.minOverlap.value(), 1 - slope * 0.2 / 0.06, 0.01) << degrees;
    EXPECT_NEAR(answer.minOverlap.value(), 1 - 2 * 0.2 * std::tan(slope / 2) / 0.06, 2e-4) << degrees;
    EXPECT_EQ(answer.supported, degrees < 8.5) << degrees;
  }
  EXPECT_FALSE(Arc().ask(40 * kDegree).minOverlap) << "facets have parted by then";
}

// Taylor 2014, PeerJ 2:e712: cartilage t turns the neutral pose by t/h; h = 200 mm, and a per cent of the centrum is
// 4 mm: 0.02 rad. So much more of a claim is met for each per cent.
TEST(ClaimNeeds, leastCartilageFollowsThePublishedLaw) {
  const double byOverlap = 2 * std::atan(0.5 * 0.06 / 0.4);
  for (const double percent : {2.0, 5.0, 12.0}) {
    const ClaimAnswer answer = Arc().ask(byOverlap + 0.02 * percent);
    EXPECT_FALSE(answer.supported);
    EXPECT_NEAR(answer.minCartilage.value(), percent, 0.03 * percent + 0.05);
    EXPECT_EQ(answer.mostCartilage.value(), kMaxCartilage);
  }
  EXPECT_EQ(Arc().ask(0).minCartilage.value(), 0);
}

TEST(ClaimNeeds, noneWhereNoValueDoes) {
  const ClaimAnswer answer = Arc().ask(85 * kDegree);
  EXPECT_FALSE(answer.minOverlap);
  EXPECT_FALSE(answer.minCartilage);
}

TEST(ClaimNeeds, stopWhenCancelledAndTellHowFarTheyAre) {
  const range::Scenario scenario = Arc().scenario();
  std::atomic<bool> cancel = false;
  double last = 0;
  std::size_t calls = 0;
  const auto ask = [&](std::size_t cancelAt) {
    last = 0;
    calls = 0;
    const task::Task task(&cancel, [&](double share) {
      EXPECT_GE(share, last);
      EXPECT_LE(share, 1);
      last = share;
      if (++calls == cancelAt) cancel = true;
    });
    return answerClaim(scenario, {ClaimKind::NeckBaseSlope, Bound::AtLeast, 0.1}, {}, task);
  };
  EXPECT_TRUE(ask(0));
  EXPECT_GT(calls, 10u);
  EXPECT_FALSE(ask(4));
  EXPECT_EQ(calls, 4u) << "nothing more was asked";
}

/// Counts how often the needs of a claim are asked: each question tells once.
struct Counted {
  std::atomic<int> told = 0;
  task::Task task() {
    return task::Task(nullptr, [this](double) { ++told; });
  }
};

TEST(ClaimBook, AsksEveryQuestionOnce) {
  const range::Scenario scenario = Arc().scenario();
  const Claim claim{ClaimKind::NeckBaseSlope, Bound::AtLeast, 0.1};
  ClaimBook book;
  Counted asked;
  EXPECT_EQ(book.find(scenario, claim), nullptr);
  const auto first = book.answer(scenario, claim, asked.task());
  ASSERT_TRUE(first);
  const int once = asked.told;
  EXPECT_GT(once, 10);
  Claim quoted = claim;
  quoted.source = "somebody, 2020";
  EXPECT_EQ(book.answer(scenario, quoted, asked.task()), first) << "who claims it changes no answer";
  EXPECT_EQ(book.find(scenario, claim), first);
  // An equal pose and equal assumptions of the same animal are the same scenario.
  kinematics::Pose bent = scenario.pose();
  bent.angles[0][0] = 0.05;
  EXPECT_EQ(book.answer(scenario.withPose(bent).withPose(scenario.pose()), claim, asked.task()), first);
  EXPECT_EQ(asked.told, once);
  EXPECT_NE(book.answer(scenario.withPose(bent), claim, asked.task()), first);
  EXPECT_GT(asked.told, once);
  EXPECT_EQ(first->best, answerClaim(scenario, claim)->best);
}

TEST(ClaimBook, ManyThreadsWaitForOneAnswer) {
  const range::Scenario scenario = Arc().scenario();
  const Claim claim{ClaimKind::NeckBaseSlope, Bound::AtLeast, 0.1};
  Counted alone, together;
  ClaimBook().answer(scenario, claim, alone.task());
  ClaimBook book;
  std::vector<std::shared_ptr<const ClaimAnswer>> answers(8);
  std::vector<std::thread> threads;
  for (auto& answer : answers) threads.emplace_back([&] { answer = book.answer(scenario, claim, together.task()); });
  for (std::thread& thread : threads) thread.join();
  for (const auto& answer : answers) EXPECT_EQ(answer, answers.front());
  ASSERT_TRUE(answers.front());
  EXPECT_EQ(together.told, alone.told);
}

TEST(ClaimBook, WhatIsCancelledIsAskedAgain) {
  const range::Scenario scenario = Arc().scenario();
  const Claim claim{ClaimKind::NeckBaseSlope, Bound::AtLeast, 0.1};
  ClaimBook book;
  const std::atomic<bool> cancelled = true;
  EXPECT_EQ(book.answer(scenario, claim, task::Task(&cancelled)), nullptr);
  EXPECT_EQ(book.size(), 0u);
  EXPECT_TRUE(book.answer(scenario, claim));
}

TEST(ClaimBook, KeepsTheLatestOnly) {
  const range::Scenario scenario = Arc().scenario();
  ClaimBook book(3);
  for (int i = 0; i < 5; ++i) book.answer(scenario, {ClaimKind::NeckBaseSlope, Bound::AtLeast, 0.01 * i});
  EXPECT_EQ(book.size(), 3u);
  EXPECT_EQ(book.find(scenario, {ClaimKind::NeckBaseSlope, Bound::AtLeast, 0.01}), nullptr);
  EXPECT_TRUE(book.find(scenario, {ClaimKind::NeckBaseSlope, Bound::AtLeast, 0.04}));
}

}  // namespace
}  // namespace zyga::study
