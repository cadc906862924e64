#include "core/study/stances/stances.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <set>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/bend.h"
#include "core/kinematics/shoulder_blade.h"
#include "core/kinematics/stand_readings.h"
#include "core/kinematics/standing.h"
#include "core/range/findings.h"
#include "core/range/presets.h"
#include "core/study/mass/balance.h"
#include "core/study/stances/rearing.h"

namespace zyga::study {
namespace {

using kinematics::Foot;
using kinematics::Placement;
using kinematics::Pose;

constexpr double kDegree = std::numbers::pi / 180;

struct Animal {
  range::Scenario scenario;  ///< every joint neutral
  const anatomy::Specimen& s;

  explicit Animal(anatomy::BodyPlan plan = anatomy::BodyPlan::HighBrowser,
                  const range::Assumptions& assumptions = range::grownAnimal())
      : scenario(neutral(plan, assumptions)), s(scenario.specimen()) {}

  static range::Scenario neutral(anatomy::BodyPlan plan, const range::Assumptions& assumptions) {
    anatomy::MeasurementTable table;
    table.plan = plan;
    if (plan == anatomy::BodyPlan::LowBrowser) table.counts = {15, 10, 5, 80};
    auto specimen = std::make_shared<const anatomy::Specimen>(anatomy::buildSpecimen(anatomy::fillBlanks(table)));
    return {specimen, assumptions, Pose::neutral(*specimen)};
  }

  StanceAnswer take(Stance stance, const Pose* present = nullptr) const {
    return takeStance(present ? scenario.withPose(*present) : scenario, stance);
  }
  Placement placed(const StanceAnswer& answer) const {
    return kinematics::forwardKinematics(s, scenario.articulation(), answer.pose);
  }
  range::Level level(kinematics::JointIndex joint, const Pose& pose) const {
    return range::levelAt(s, scenario.articulation(), scenario.assumptions(), joint, pose[joint]);
  }
  double snout(const StanceAnswer& answer) const {
    const auto skull = *s.findBone("skull");
    return (placed(answer)[skull.value] * s[skull].landmark("snout")).z();
  }
};

class EveryStance : public testing::TestWithParam<anatomy::BodyPlan> {
 protected:
  Animal a{GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Plans, EveryStance,
                         testing::Values(anatomy::BodyPlan::HighBrowser, anatomy::BodyPlan::LowBrowser));

TEST_P(EveryStance, IsInsideEveryRangeWithItsFeetInPlace) {
  for (const Stance stance : kStances) {
    const StanceAnswer answer = a.take(stance);
    const std::string_view word = idOf(stance);
    EXPECT_TRUE(answer.complete()) << word << " " << (answer.notes.empty() ? "" : debugText(answer.notes.front()));
    for (std::size_t j = 0; j < a.s.joints.size(); ++j) {
      const kinematics::JointIndex joint{j};
      EXPECT_NE(a.level(joint, answer.pose), range::Level::Beyond) << word << " " << a.s[joint].id;
    }
    for (const kinematics::LegFit& fit : answer.fits) EXPECT_LT(fit.miss, 1e-3) << word << toText(fit.foot);
    for (const kinematics::FootPlace& at : kinematics::footPlaces(a.s, a.placed(answer)))
      EXPECT_GT(at.height, -2e-3) << word << " " << toText(at.foot);
    EXPECT_GT(lowestOfTail(a.s, a.placed(answer)), -0.011) << word;
  }
}

TEST_P(EveryStance, IsTheSameOnBothSidesWhereItShouldBe) {
  for (const Stance stance : {Stance::Alert, Stance::Browse, Stance::Drink, Stance::Rear}) {
    const Pose pose = a.take(stance).pose;
    for (std::size_t j = 0; j < a.s.joints.size(); ++j) {
      const std::string& id = a.s.joints[j].id;
      if (!id.ends_with(".L")) continue;
      const auto right = *a.s.findJoint(id.substr(0, id.size() - 1) + "R");
      EXPECT_LT((pose.angles[j] - pose[right]).norm(), 1e-5) << id;
    }
  }
  // Left and right halves of the walk are mirror images.
  const Pose left = a.take(Stance::WalkLeftHind).pose, right = a.take(Stance::WalkRightHind).pose;
  for (const char* stem : {"hip", "knee", "ankle", "shoulder", "elbow", "wrist"}) {
    const auto l = *a.s.findJoint(std::string(stem) + ".L"), r = *a.s.findJoint(std::string(stem) + ".R");
    EXPECT_LT((left[l] - right[r]).norm(), 1e-5) << stem;
    EXPECT_LT((left[r] - right[l]).norm(), 1e-5) << stem;
  }
}

TEST_P(EveryStance, BrowseIsTheHighestAndDrinkTheLowest) {
  const double alert = a.snout(a.take(Stance::Alert)), browse = a.snout(a.take(Stance::Browse));
  EXPECT_GT(browse, alert + 0.3);
  EXPECT_NEAR(a.snout(a.take(Stance::Drink)), 0, 0.006);
  // No single joint of the neck can bring the head higher by a small turn that its range allows.
  StanceAnswer answer = a.take(Stance::Browse);
  for (const kinematics::JointIndex joint : kinematics::neckChain(a.s)) {
    if (joint == kinematics::neckChain(a.s).back()) continue;  // the head's own joint carries no more neck
    for (const double turn : {-0.5 * kDegree, 0.5 * kDegree}) {
      StanceAnswer other = answer;
      other.pose[joint][0] += turn;
      if (a.level(joint, other.pose) == range::Level::Beyond) continue;
      const auto skull = *a.s.findBone("skull");
      const double before = a.placed(answer)[skull.value].translation().z();
      EXPECT_LT(a.placed(other)[skull.value].translation().z(), before + 2e-3) << a.s[joint].id << " by " << turn;
    }
  }
}

TEST_P(EveryStance, WalkIsALateralSequence) {
  const Foot order[] = {Foot::LeftHind, Foot::LeftFore, Foot::RightHind, Foot::RightFore};
  const Stance stances[] = {Stance::WalkLeftHind, Stance::WalkLeftFore, Stance::WalkRightHind, Stance::WalkRightFore};
  std::array<std::array<double, 4>, 4> ahead{};  // of the foot's place under its hip or shoulder, by moment and foot
  for (std::size_t moment = 0; moment < 4; ++moment) {
    const StanceAnswer answer = a.take(stances[moment]);
    const Placement X_WB = a.placed(answer);
    for (const kinematics::FootPlace& at : kinematics::footPlaces(a.s, X_WB)) {
      const bool swings = at.foot == order[moment];
      EXPECT_EQ(at.height > 0.05, swings) << moment << " " << toText(at.foot);
      EXPECT_LT(swings ? 0 : std::abs(at.height), 1e-3);
      const kinematics::FootRig rig = kinematics::footRig(a.s, at.foot);
      ahead[moment][static_cast<std::size_t>(at.foot)] = (X_WB[rig.bone.value] * rig.p_BSole).x();
    }
  }
  // Once set down a foot goes back under the body by the same step in each moment, until it swings again.
  for (const Foot foot : order) {
    const std::size_t f = static_cast<std::size_t>(foot);
    const double first = ahead[(f + 2) % 4][f] - ahead[(f + 1) % 4][f],
                 second = ahead[(f + 3) % 4][f] - ahead[(f + 2) % 4][f];
    EXPECT_LT(first, -0.3) << toText(foot);
    EXPECT_NEAR(first, second, 0.02) << toText(foot);
  }
}

// One answer to what an animal weighs: the panel's densities are those that it rears with. Numbers invented.
TEST_P(EveryStance, RearingWeighsWithTheDensitiesGiven) {
  Densities heavy;
  heavy.byPart[static_cast<std::size_t>(BodyPart::Tail)] = 1400;
  const StanceAnswer answer = takeStance(a.scenario, Stance::Rear, heavy);
  ASSERT_TRUE(answer.balance);
  const Balance own = balanceOf(a.scenario.withPose(answer.pose), bodySegments(a.scenario), heavy);
  EXPECT_EQ(answer.balance->margin, own.margin);
  EXPECT_EQ(answer.balance->body.mass, own.body.mass);
  const Balance usual = balanceOf(a.scenario.withPose(answer.pose), bodySegments(a.scenario), {});
  EXPECT_GT(answer.balance->body.mass.mass, usual.body.mass.mass);
}

TEST_P(EveryStance, RearingStandsOnHindFeetAndTailInBalance) {
  const StanceAnswer answer = a.take(Stance::Rear);
  const Placement X_WB = a.placed(answer);
  EXPECT_EQ(kinematics::plantedFeet(a.s, X_WB), (std::vector{Foot::LeftHind, Foot::RightHind}));
  const Balance balance = balanceOf(a.scenario.withPose(answer.pose), bodySegments(a.scenario), {});
  EXPECT_TRUE(balance.onTail);
  EXPECT_TRUE(balance.inside());
  EXPECT_GT(kinematics::readStand(a.s, X_WB).trunkSlope, 29 * kDegree);
  // What the tail carries goes with the answer, and is between nothing and all.
  ASSERT_TRUE(answer.balance && answer.balance->tailLoad && answer.balance->feetMargin);
  const TailLoad& load = *answer.balance->tailLoad;
  EXPECT_EQ(answer.balance->margin, balance.margin);
  EXPECT_GE(load.least, 0);
  EXPECT_LT(load.least, load.most);
  EXPECT_LE(load.most, 1);
  EXPECT_EQ(load.least == 0, *answer.balance->feetMargin >= 0) << "feet alone would do where the tail need not carry";
  EXPECT_LE(*answer.balance->feetMargin, *answer.balance->margin);
  EXPECT_FALSE(a.take(Stance::Alert).balance);
}

TEST(Stances, KeepPlaceHeadingAndBlades) {
  const Animal a;
  Pose present = Pose::neutral(a.s);
  present.X_WRoot =
      Eigen::Translation3d(4, -3, 1) * Eigen::Isometry3d(Eigen::AngleAxisd(2.0, Eigen::Vector3d::UnitZ()));
  for (const char* id : {"scapula.L", "scapula.R"}) present[*a.s.findJoint(id)] = {0.05, 0.04, 0};
  for (const Stance stance : {Stance::Alert, Stance::WalkLeftFore, Stance::Rear}) {
    const Pose pose = a.take(stance, &present).pose;
    EXPECT_EQ(pose[*a.s.findJoint("scapula.L")], present[*a.s.findJoint("scapula.L")]);
    EXPECT_NEAR(std::atan2(pose.X_WRoot.linear()(1, 0), pose.X_WRoot.linear()(0, 0)), 2.0, 1e-6);
    EXPECT_LT((pose.X_WRoot.translation() - present.X_WRoot.translation()).head<2>().norm(), 1.0);
  }
}

TEST(Stances, WhatAStiffNeckCannotReachIsTold) {
  range::Assumptions strict = range::grownAnimal();
  strict.minOverlap = 0.95;
  const Animal a(anatomy::BodyPlan::HighBrowser, strict);
  const StanceAnswer answer = a.take(Stance::Drink);
  EXPECT_FALSE(answer.complete());
  EXPECT_GT(answer.shortBy, 0.05);
  EXPECT_NEAR(answer.shortBy, a.snout(answer), 1e-6);
  ASSERT_FALSE(answer.notes.empty());
  EXPECT_EQ(answer.notes.back(),
            reason::Reason(kSnoutOverGround, {reason::Quantity{answer.shortBy, reason::Unit::Length}}));
}

TEST(Stances, IdsAreInOrderAndDiffer) {
  std::set<std::string_view> ids;
  for (std::size_t i = 0; i < kStances.size(); ++i) {
    EXPECT_EQ(static_cast<std::size_t>(kStances[i]), i);
    ids.insert(idOf(kStances[i]));
  }
  EXPECT_EQ(ids.size(), kStances.size());
}

// A foot held up does not carry: the others take the ground, and it is told.
TEST(Stances, StandingAsPosedTellsAFootThatIsHeldUp) {
  const Animal a;
  const Pose alert = a.take(Stance::Alert).pose;
  const Pose lifted = kinematics::liftFoot(a.s, a.scenario.articulation(), alert, Foot::LeftFore, 0.3, 0).pose;
  const StanceAnswer answer = standAsPosed(a.scenario.withPose(lifted));
  EXPECT_TRUE(answer.complete());
  ASSERT_EQ(answer.notes.size(), 1u);
  EXPECT_EQ(answer.notes[0], reason::Reason(kFootHeldUp, {reason::Term{"foot.left-fore"}}));
  EXPECT_TRUE(standAsPosed(a.scenario.withPose(alert)).notes.empty());
}

}  // namespace
}  // namespace zyga::study
