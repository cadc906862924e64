#include "core/study/mass/balance.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/study/standing_scenario.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using kinematics::Foot;
using testing::ElementsAre;

struct Weighed {
  range::Scenario scenario = standingScenario();
  std::vector<BodySegment> segments = bodySegments(scenario);

  const kinematics::Pose& pose() const { return scenario.pose(); }
  Balance balance(const kinematics::Pose& pose) const { return balanceOf(scenario.withPose(pose), segments, {}); }
};

TEST(Feet, OfAStandingAnimalAreOnTheGround) {
  const range::Scenario scenario = standingScenario();
  const auto feet = feetOf(scenario.specimen(), scenario.placement());
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
  const auto balance = weighed.balance(weighed.pose());
  EXPECT_EQ(balance.planted.size(), 4u);
  EXPECT_FALSE(balance.onTail);
  ASSERT_TRUE(balance.margin && balance.foreShare);
  EXPECT_TRUE(balance.inside());
  // The margin is the distance to the point it names, and that point lies on an edge of the polygon.
  EXPECT_NEAR((balance.p_WNearest - balance.body.p_WCentre.head<2>()).norm(), *balance.margin, 1e-12);
  EXPECT_GT(*balance.foreShare, 0.2);
  EXPECT_LT(*balance.foreShare, 0.6);
}

TEST(Balance, SinkingOrTurningTheAnimalDoesNotChangeIt) {
  const Weighed weighed;
  const auto before = weighed.balance(weighed.pose());
  auto pose = weighed.pose();
  pose.X_WRoot =
      Eigen::Isometry3d(Eigen::Translation3d(4, 1, -0.02) * Eigen::AngleAxisd(2, Vector3d::UnitZ())) * pose.X_WRoot;
  const auto after = weighed.balance(pose);
  EXPECT_NEAR(*after.margin, *before.margin, 1e-9);
  EXPECT_NEAR(*after.foreShare, *before.foreShare, 1e-9);
}

TEST(Balance, InTheAirNothingCarries) {
  const Weighed weighed;
  auto pose = weighed.pose();
  pose.X_WRoot.translation().z() += 0.5;
  const auto balance = weighed.balance(pose);
  EXPECT_FALSE(balance.margin || balance.foreShare || balance.inside());
  EXPECT_TRUE(balance.polygon.empty());
}

// Tipped forward about the fore feet until the hind feet are off the ground, the centre of mass lies behind them.
TEST(Balance, OnTheForeFeetAloneItTips) {
  const Weighed weighed;
  auto pose = weighed.pose();
  const auto feet = feetOf(weighed.scenario.specimen(), weighed.scenario.placement());
  const Eigen::Translation3d toFeet(feet[1].centre.x(), 0, 0);
  pose.X_WRoot = toFeet * Eigen::AngleAxisd(0.1, Vector3d::UnitY()) * toFeet.inverse() * pose.X_WRoot;
  const auto balance = weighed.balance(pose);
  EXPECT_THAT(balance.planted, ElementsAre(Foot::LeftFore, Foot::RightFore));
  ASSERT_TRUE(balance.margin);
  EXPECT_LT(*balance.margin, -0.5);
  EXPECT_FALSE(balance.foreShare);
  EXPECT_EQ(nearestEdge(balance, {1, 0}), Way::Behind);
  EXPECT_EQ(nearestEdge(balance, {-1, 0}), Way::Ahead);
  EXPECT_EQ(nearestEdge(balance, {0, 1}), Way::Left);
  EXPECT_EQ(nearestEdge(balance, {0, -1}), Way::Right);
}

TEST(Balance, TheTailCanCarryToo) {
  const Weighed weighed;
  auto pose = weighed.pose();
  const auto tail = *weighed.scenario.specimen().findJoint("S5-Ca1");
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
  EXPECT_EQ(balance.planted.size(), 4u);
  EXPECT_GT(balance.polygon.size(), 4u);
  // Over the four feet it stays up with a tail that only touches.
  ASSERT_TRUE(balance.tailLoad && balance.feetMargin);
  EXPECT_GT(*balance.feetMargin, 0);
  EXPECT_EQ(balance.tailLoad->least, 0);
  EXPECT_GT(balance.tailLoad->most, 0.01);
  EXPECT_FALSE(balance.tailLoad->middle);
  EXPECT_FALSE(weighed.balance(weighed.pose()).tailLoad) << "no tail on the ground";
  EXPECT_EQ(weighed.balance(weighed.pose()).feetMargin, weighed.balance(weighed.pose()).margin);
}

// Moments by hand: feet from 0 to 0.4 m, tail from -3 to -2 m, weight at -0.5 m.
TEST(TailLoad, IsTheBalanceOfMoments) {
  const Along feet{0, 0.4}, tail{-3, -2};
  const TailLoad load = tailLoadOf(-0.5, feet, tail).value();
  EXPECT_NEAR(load.least, 0.5 / 3, 1e-12);   // tail at -3, feet at 0
  EXPECT_NEAR(load.most, 0.9 / 2.4, 1e-12);  // tail at -2, feet at 0.4
  EXPECT_NEAR(load.least * -3, -0.5, 1e-12);
  EXPECT_NEAR(load.most * -2 + (1 - load.most) * 0.4, -0.5, 1e-12);
  EXPECT_EQ(tailLoadOf(0.1, feet, tail)->least, 0) << "over the feet";
  EXPECT_NEAR(tailLoadOf(0.1, feet, tail)->most, 0.3 / 2.4, 1e-12);
  EXPECT_EQ(tailLoadOf(-2.5, feet, tail)->most, 1) << "over the tail";
  EXPECT_FALSE(tailLoadOf(0.41, feet, tail)) << "it tips forwards";
  EXPECT_FALSE(tailLoadOf(-3.1, feet, tail)) << "and backwards";
  // The same seen from the other side.
  EXPECT_NEAR(tailLoadOf(0.5, {-0.4, 0}, {2, 3})->least, load.least, 1e-12);
  EXPECT_NEAR(tailLoadOf(0.5, {-0.4, 0}, {2, 3})->most, load.most, 1e-12);
}

}  // namespace
}  // namespace zyga::study
