#include "core/study/reach/extremes.h"

#include <gtest/gtest.h>

#include "core/kinematics/standing.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "tests/support/sample_animal.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using kinematics::Pose;
using range::Direction;

constexpr double kOneDegree = std::numbers::pi / 180;

class Extremes : public testing::TestWithParam<const char*> {
 protected:
  Extreme extreme(Chain chain, Direction direction) const {
    return study::extreme(specimen_, articulation_, assumptions_, standing_, chain, direction);
  }
  range::Level levelAt(kinematics::JointIndex joint, const Vector3d& angles) const {
    return range::levelAt(specimen_, articulation_, assumptions_, joint, angles);
  }

  const anatomy::Specimen specimen_ = test::sampleAnimal(GetParam());
  const range::Assumptions assumptions_ = range::grownAnimal();
  const kinematics::Articulation articulation_ = range::articulate(specimen_, assumptions_);
  const Pose standing_ = kinematics::stand(specimen_, articulation_, Pose::neutral(specimen_));
};

TEST_P(Extremes, chainsRunFromTheirBaseOutwards) {
  const auto neck = jointsOf(specimen_, Chain::Neck);
  const auto tail = jointsOf(specimen_, Chain::Tail);
  const std::string last = "C" + std::to_string(specimen_.counts.cervical);
  ASSERT_EQ(neck.size(), static_cast<std::size_t>(specimen_.counts.cervical));
  EXPECT_EQ(specimen_[neck.front()].id, last + "-D1");
  EXPECT_EQ(specimen_[neck.back()].id, "C1-C2");
  ASSERT_EQ(tail.size(), static_cast<std::size_t>(specimen_.counts.caudal));
  EXPECT_EQ(specimen_[tail.front()].id, "S" + std::to_string(specimen_.counts.sacral) + "-Ca1");
}

TEST_P(Extremes, everyJointStandsAtItsLimitAndNotPastIt) {
  for (const Chain chain : {Chain::Neck, Chain::Tail}) {
    for (const Direction direction : {Direction::Dorsal, Direction::Ventral, Direction::Left, Direction::Right}) {
      const Extreme found = extreme(chain, direction);
      double sum = 0;
      for (const auto& [joint, judged, limit] : found.joints) {
        ASSERT_TRUE(judged && limit.supported) << specimen_[joint].id;
        Vector3d angles = found.pose[joint];
        EXPECT_NE(levelAt(joint, angles), range::Level::Beyond) << specimen_[joint].id;
        angles[range::motionOf(direction)] += range::signOf(direction) * 2e-5;
        EXPECT_EQ(levelAt(joint, angles), range::Level::Beyond) << specimen_[joint].id;
        sum += limit.angle;
      }
      EXPECT_DOUBLE_EQ(found.total, sum);
    }
  }
}

TEST_P(Extremes, touchNothingBesideTheChain) {
  const Extreme found = extreme(Chain::Tail, Direction::Left);
  Pose back = found.pose;
  for (const auto joint : jointsOf(specimen_, Chain::Tail)) back[joint] = standing_[joint];
  EXPECT_EQ(back, standing_);
}

TEST_P(Extremes, neckGoesUpDownAndToBothSides) {
  const Carriage neutral = carriage(specimen_, articulation_, standing_, Chain::Neck);
  const Carriage up = extreme(Chain::Neck, Direction::Dorsal).carriage;
  const Carriage down = extreme(Chain::Neck, Direction::Ventral).carriage;
  const Carriage left = extreme(Chain::Neck, Direction::Left).carriage;
  const Carriage right = extreme(Chain::Neck, Direction::Right).carriage;
  EXPECT_LT(down.slope, neutral.slope);
  EXPECT_GT(up.slope, neutral.slope);
  EXPECT_LT(down.eyeHeight, neutral.eyeHeight);
  EXPECT_GT(left.left, 1);
  EXPECT_GT(left.swing, 10 * kOneDegree);
  EXPECT_NEAR(left.left, -right.left, 1e-3) << "the sample is symmetric";
  EXPECT_NEAR(left.ahead, right.ahead, 1e-3);
  EXPECT_NEAR(left.tipHeight, right.tipHeight, 1e-3);
  EXPECT_NEAR(neutral.left, 0, 1e-9);
}

TEST_P(Extremes, tailRunsBackwards) {
  const Carriage neutral = carriage(specimen_, articulation_, standing_, Chain::Tail);
  EXPECT_LT(neutral.ahead, -3);
  EXPECT_NEAR(neutral.swing, 0, 1e-9);
  const Carriage left = extreme(Chain::Tail, Direction::Left).carriage;
  EXPECT_GT(left.left, 0.1) << "the tail curls, its tip comes back";
  EXPECT_GT(left.swing, 10 * kOneDegree);
  EXPECT_GT(extreme(Chain::Tail, Direction::Dorsal).carriage.slope, neutral.slope);
}

// The neutral neck of the sample by hand: frames placed one by one.
TEST_P(Extremes, carriageIsWhereTheBonesAre) {
  const kinematics::Placement X_WB = kinematics::forwardKinematics(specimen_, articulation_, standing_);
  const auto at = [&](const std::string& bone, const char* landmark) -> Vector3d {
    const auto index = *specimen_.findBone(bone);
    return X_WB[index.value] * specimen_[index].landmark(landmark);
  };
  const Carriage neck = carriage(specimen_, articulation_, standing_, Chain::Neck);
  const Vector3d base = at("D1", "cranial");
  EXPECT_NEAR(neck.snoutHeight, at("skull", "snout").z(), 1e-12);
  EXPECT_NEAR(neck.eyeHeight, at("skull", "eye.L").z(), 1e-9);
  EXPECT_NEAR(neck.baseHeight, base.z(), 1e-9);
  EXPECT_NEAR(neck.ahead, at("skull", "snout").x() - base.x(), 1e-9);
  const Vector3d line = at("C1", "cranial") - base;
  EXPECT_NEAR(neck.slope, std::atan2(line.z(), line.x()), 1e-9);
}

TEST_P(Extremes, carriageTurnsAndRisesWithTheAnimal) {
  Pose moved = standing_;
  moved.X_WRoot = Eigen::Translation3d(3, -2, 1) * Eigen::AngleAxisd(0.8, Vector3d::UnitZ()) * moved.X_WRoot;
  const Carriage here = carriage(specimen_, articulation_, standing_, Chain::Neck);
  const Carriage there = carriage(specimen_, articulation_, moved, Chain::Neck);
  EXPECT_NEAR(there.snoutHeight, here.snoutHeight + 1, 1e-9);
  EXPECT_NEAR(there.lowest, here.lowest + 1, 1e-9);
  EXPECT_NEAR(there.ahead, here.ahead, 1e-9);
  EXPECT_NEAR(there.left, here.left, 1e-9);
  EXPECT_NEAR(there.slope, here.slope, 1e-9);
  EXPECT_NEAR(there.swing, here.swing, 1e-9);
}

TEST_P(Extremes, listGivesBothChainsInFourDirections) {
  const std::vector<Extreme> all = extremes(specimen_, articulation_, assumptions_, standing_);
  ASSERT_EQ(all.size(), 8u);
  for (const Extreme& one : all) EXPECT_EQ(one.pose, extreme(one.chain, one.direction).pose);
}

/// A joint that nothing judges stays neutral and is named.
TEST_P(Extremes, nameTheJointsNobodyVouchesFor) {
  anatomy::Specimen bare = specimen_;
  const auto joint = jointsOf(bare, Chain::Neck)[3];
  bare.joints[joint.value].kind = anatomy::JointKind::Typed;
  bare.joints[joint.value].typed.reset();
  const Extreme found = study::extreme(bare, range::articulate(bare, assumptions_), assumptions_, standing_,
                                       Chain::Neck, Direction::Left);
  EXPECT_FALSE(found.joints[3].judged);
  EXPECT_EQ(found.pose[joint], Vector3d::Zero());
  EXPECT_TRUE(found.joints[2].judged);
}

INSTANTIATE_TEST_SUITE_P(Animals, Extremes, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::study
