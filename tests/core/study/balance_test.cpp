#include "core/study/mass/balance.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/kinematics/standing_animal.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using kinematics::Foot;
using kinematics::StandingAnimal;
using testing::ElementsAre;
using testing::HasSubstr;

struct Weighed {
  StandingAnimal animal;
  std::vector<BodySegment> segments = bodySegments(animal.s, animal.rest);

  Balance balance(const kinematics::Pose& pose) const {
    return balanceOf(animal.s, segments, {}, kinematics::place(animal.s, animal.rest, pose));
  }
};

TEST(Feet, OfAStandingAnimalAreOnTheGround) {
  const StandingAnimal animal;
  const auto feet = feetOf(animal.s, kinematics::place(animal.s, animal.rest, animal.pose));
  ASSERT_EQ(feet.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_EQ(feet[i].foot, kinematics::kFeet[i]);
    EXPECT_TRUE(feet[i].planted()) << feet[i].lowest;
    EXPECT_GT(feet[i].soles.size(), 5u);
  }
  EXPECT_GT(feet[0].centre.y(), 0);
  EXPECT_NEAR(feet[0].centre.y(), -feet[2].centre.y(), 1e-9);
  EXPECT_GT(feet[1].centre.x(), feet[0].centre.x());
}

TEST(Balance, AStandingAnimalStandsOverItsFeet) {
  const Weighed weighed;
  const auto balance = weighed.balance(weighed.animal.pose);
  EXPECT_EQ(balance.planted.size(), 4u);
  EXPECT_FALSE(balance.onTail);
  ASSERT_TRUE(balance.margin && balance.foreShare);
  EXPECT_TRUE(balance.inside());
  // The margin is the distance to the point it names, and that point lies on an edge of the polygon.
  EXPECT_NEAR((balance.p_WNearest - balance.body.p_WCentre.head<2>()).norm(), *balance.margin, 1e-12);
  EXPECT_GT(*balance.foreShare, 0.2);
  EXPECT_LT(*balance.foreShare, 0.6);
  EXPECT_THAT(sentence(balance, {1, 0}), HasSubstr("over the 4 planted feet"));
}

TEST(Balance, SinkingOrTurningTheAnimalDoesNotChangeIt) {
  const Weighed weighed;
  const auto before = weighed.balance(weighed.animal.pose);
  auto pose = weighed.animal.pose;
  pose.X_WRoot =
      Eigen::Isometry3d(Eigen::Translation3d(4, 1, -0.02) * Eigen::AngleAxisd(2, Vector3d::UnitZ())) * pose.X_WRoot;
  const auto after = weighed.balance(pose);
  EXPECT_NEAR(*after.margin, *before.margin, 1e-9);
  EXPECT_NEAR(*after.foreShare, *before.foreShare, 1e-9);
}

TEST(Balance, InTheAirNothingCarries) {
  const Weighed weighed;
  auto pose = weighed.animal.pose;
  pose.X_WRoot.translation().z() += 0.5;
  const auto balance = weighed.balance(pose);
  EXPECT_FALSE(balance.margin || balance.foreShare || balance.inside());
  EXPECT_TRUE(balance.polygon.empty());
  EXPECT_THAT(sentence(balance, {1, 0}), HasSubstr("Nothing touches the ground"));
}

// Tipped forward about the fore feet until the hind feet are off the ground, the centre of mass lies behind them.
TEST(Balance, OnTheForeFeetAloneItTips) {
  const Weighed weighed;
  auto pose = weighed.animal.pose;
  const auto feet = feetOf(weighed.animal.s, kinematics::place(weighed.animal.s, weighed.animal.rest, pose));
  const Eigen::Translation3d toFeet(feet[1].centre.x(), 0, 0);
  pose.X_WRoot = toFeet * Eigen::AngleAxisd(0.1, Vector3d::UnitY()) * toFeet.inverse() * pose.X_WRoot;
  const auto balance = weighed.balance(pose);
  EXPECT_THAT(balance.planted, ElementsAre(Foot::LeftFore, Foot::RightFore));
  ASSERT_TRUE(balance.margin);
  EXPECT_LT(*balance.margin, -0.5);
  EXPECT_FALSE(balance.foreShare);
  EXPECT_THAT(sentence(balance, {1, 0}), HasSubstr("outside the 2 planted feet, behind: the animal would tip over."));
  EXPECT_THAT(sentence(balance, {-1, 0}), HasSubstr("in front"));
}

TEST(Balance, TheTailCanCarryToo) {
  const Weighed weighed;
  auto pose = weighed.animal.pose;
  const auto tail = *weighed.animal.s.findJoint("S5-Ca1");
  double turn = 0;
  Balance balance;
  // Lower the tail as a whole until it touches.
  while (!balance.onTail && turn < 1.5) {
    turn += 0.02;
    pose[tail][0] = -turn;
    balance = weighed.balance(pose);
  }
  ASSERT_TRUE(balance.onTail);
  EXPECT_FALSE(balance.foreShare);  // three places share the weight: mechanics alone does not tell how
  EXPECT_THAT(sentence(balance, {1, 0}), HasSubstr("4 planted feet and the tail"));
  EXPECT_GT(balance.polygon.size(), 4u);
}

}  // namespace
}  // namespace zyga::study
