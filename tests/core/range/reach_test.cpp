// Reaching inside the ranges that the bones give: the neck of the high browser, 42 angles. The comparison on a thousand
// targets with other solvers is tests/bench/reach_bench.cpp.
#include "core/kinematics/reach.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

#include "core/kinematics/following.h"
#include "core/range/findings.h"
#include "tests/support/ceres_reach.h"

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;

const test::ReachTask& task() {
  static const test::ReachTask made;
  return made;
}

IkResult reached(const IkGoal& goal, const Pose* from = nullptr) {
  return reach(task().specimen, task().articulation, *task().ranges, task().neutral, goal, from);
}

/// Three angles that go each by itself, as a general optimiser has them.
IkResult reachedBoxes(const IkGoal& goal) {
  Articulation articulation = task().articulation;
  for (Articulation::Rest& rest : articulation.rests) rest.axialTyped = true;
  return reach(task().specimen, articulation, *task().boxes, task().neutral, goal);
}

std::vector<std::string> beyond(const Pose& pose) {
  std::vector<std::string> ids;
  for (const JointIndex j : task().snout.joints) {
    if (range::levelAt(task().specimen, task().articulation, task().assumptions, j, pose[j]) == range::Level::Beyond) {
      ids.push_back(task().specimen[j].id);
    }
  }
  return ids;
}

double apart(const Pose& a, const Pose& b) {
  double most = 0;
  for (const JointIndex j : task().snout.joints) most = std::max(most, (a[j] - b[j]).cwiseAbs().maxCoeff());
  return most;
}

Vector3d snoutAtRest() { return task().pointIn(task().neutral); }

/// Where the snout is when every joint has spent these shares of its range.
Vector3d snoutWith(double dorsal, double left) {
  Pose pose = task().neutral;
  for (const JointIndex j : task().snout.joints) {
    const Vector3d half = task().ranges->halfWidths(j);
    pose[j] = Vector3d(dorsal * half[0], left * half[1], 0);
    while (!task().ranges->supports(j, pose[j])) pose[j] *= 0.9;
  }
  return task().pointIn(pose);
}

TEST(Reach, MeetsWhatTheNeckCanReachAndStaysInItsRanges) {
  std::mt19937 random(20261125);
  int met = 0;
  for (int i = 0; i < 150; ++i) {
    const Vector3d target = task().pointIn(task().randomSupported(random, *task().ranges));
    const IkResult result = reached(task().goalFor(target));
    met += result.reached;
    EXPECT_TRUE(result.broken.empty());
    EXPECT_THAT(beyond(result.pose), testing::IsEmpty()) << "target " << i;
    EXPECT_NEAR((task().pointIn(result.pose) - target).norm(), result.distance, 1e-9);
  }
  EXPECT_GE(met, 149);
}

// Ceres (general least squares with bounds) on the ranges as boxes; a pose may cost us what its effort is worth.
TEST(Reach, NearestPoseIsNoFartherThanThatOfAGeneralOptimiser) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> unit(-1, 1);
  for (int i = 0; i < 12; ++i) {
    const double x = unit(random), y = unit(random), z = unit(random);
    const Vector3d target = snoutAtRest() + (i % 2 ? 20.0 : 11.0) * Vector3d(x, y, z).normalized();
    const IkResult result = reachedBoxes(task().goalFor(target));
    EXPECT_LT(result.distance, test::ceresDistance(task(), target) + 1e-3) << target.transpose();
    EXPECT_FALSE(result.reached);
    EXPECT_THAT(result.stopping, testing::Not(testing::IsEmpty()));
  }
}

TEST(Reach, OutOfReachTheAnswerIsOneAndInRange) {
  std::mt19937 random(3);
  for (const Vector3d& way : {Vector3d(-1, 0.3, 1), Vector3d(0.2, 1, -0.4), Vector3d(1, 0, 0)}) {
    const IkGoal goal = task().goalFor(snoutAtRest() + 8 * way);
    const IkResult result = reached(goal);
    EXPECT_THAT(beyond(result.pose), testing::IsEmpty());
    const Pose elsewhere = task().randomSupported(random, *task().ranges);
    EXPECT_NEAR(reached(goal, &elsewhere).distance, result.distance, 1e-3) << "where the search began must not show";
    EXPECT_LT(apart(reached(goal, &result.pose).pose, result.pose), 0.2 * kDegree) << "the found pose rests";
  }
}

// A pointer that moves by two centimetres moves the head by no more, in reach and beyond it.
TEST(Reach, ADragIsContinuous) {
  Pose last = task().neutral;
  Vector3d p_last = snoutAtRest();
  for (int k = 1; k <= 120; ++k) {
    const Vector3d target = snoutAtRest() + k * 0.02 * Vector3d(-0.5, 0.3, 1).normalized();
    const IkResult result = reached(task().goalFor(target), &last);
    EXPECT_LT((result.p_WPoint - p_last).norm(), 0.022) << "step " << k;
    p_last = result.p_WPoint;
    last = result.pose;
  }
  EXPECT_GT((p_last - snoutAtRest()).norm(), 0.3);
}

TEST(Reach, StoppingJointsAreAtTheirLimitsAndTold) {
  const IkResult result = reached(task().goalFor(snoutAtRest() + Vector3d(-6, 0, 9)));
  ASSERT_FALSE(result.reached);
  ASSERT_FALSE(result.stopping.empty());
  double sum = 0;
  for (const StoppingJoint& stop : result.stopping) {
    sum += stop.share;
    const Vector3d further = result.pose[stop.joint] + 0.01 * stop.push;
    EXPECT_EQ(range::levelAt(task().specimen, task().articulation, task().assumptions, stop.joint, further),
              range::Level::Beyond);
    const range::JointStop told = task().ranges->stopOf(result.pose, stop);
    EXPECT_EQ(told.joint, stop.joint);
    EXPECT_EQ(range::motionName(task().specimen[stop.joint], told.motion, told.sign), range::Motion::Dorsiflexion);
    EXPECT_EQ(told.stop.why, range::Stop::Why::Criterion);
  }
  EXPECT_NEAR(sum, 1, 1e-9);
}

// Vidal, Graf & Berthoz 1986 (Exp. Brain Res. 61:549): in raising the head mostly the head joint and the base of the
// neck move, and the neck between them keeps its shape.
TEST(Reach, FromTheBaseBendsBaseAndHead) {
  IkGoal goal = task().goalFor(snoutWith(0.25, 0));
  const auto shareOfTheMiddle = [&](BendStyle style) {
    goal.style = style;
    const IkResult result = reached(goal);
    EXPECT_TRUE(result.reached);
    double middle = 0, all = 0;
    for (std::size_t i = 0; i < goal.joints.size(); ++i) {
      const double turn = std::abs(result.pose[goal.joints[i]][0]);
      all += turn;
      if (i >= 5 && i + 2 < goal.joints.size()) middle += turn;
    }
    return middle / all;
  };
  EXPECT_LT(shareOfTheMiddle(BendStyle::FromTheBase), 0.25);
  EXPECT_GT(shareOfTheMiddle(BendStyle::Even), 0.3);
}

TEST(Reach, GazeStaysWhereItWas) {
  IkGoal goal = task().goalFor(snoutWith(0.1, 0.05));
  const Vector3d ahead =
      forwardKinematics(task().specimen, task().articulation, task().neutral)[goal.bone.value].linear().col(0);
  goal.directions = {{Vector3d::UnitX(), ahead}};
  const IkResult result = reached(goal);
  EXPECT_TRUE(result.reached);
  EXPECT_LT(result.directionError, 0.2 * kDegree);
  EXPECT_THAT(beyond(result.pose), testing::IsEmpty());
  goal.directions.clear();
  const Eigen::Matrix3d R_free =
      forwardKinematics(task().specimen, task().articulation, reached(goal).pose)[goal.bone.value].linear();
  EXPECT_GT(std::acos(R_free.col(0).dot(ahead)), 5 * kDegree) << "left to itself the head turns";
}

TEST(Reach, AGazeThatCannotBeHadLeavesTheTargetMet) {
  IkGoal goal = task().goalFor(snoutWith(0.3, 0.1));
  const Eigen::Isometry3d free =
      forwardKinematics(task().specimen, task().articulation, reached(goal).pose)[goal.bone.value];
  goal.directions = {{Vector3d::UnitX(), -free.linear().col(0)}};
  const IkResult result = reached(goal);
  EXPECT_LT(result.distance, 0.002) << "an impossible gaze pulls by little";
  EXPECT_GT(result.directionError, 20 * kDegree);
}

TEST(Reach, TwoBearingsHoldTheWholeAttitude) {
  std::mt19937 random(5);
  const Pose there = task().randomSupported(random, *task().ranges);
  const Eigen::Isometry3d X = forwardKinematics(task().specimen, task().articulation, there)[task().snout.bone.value];
  IkGoal goal = task().goalFor(X * task().snout.p_BPoint);
  goal.directions = {{Vector3d::UnitX(), X.linear().col(0)}, {Vector3d::UnitZ(), X.linear().col(2)}};
  const IkResult result = reached(goal);
  EXPECT_TRUE(result.reached);
  EXPECT_LT(result.directionError, 0.2 * kDegree);
}

TEST(Reach, OnlyTheNamedJointsAndMotionsAnswer) {
  IkGoal goal = task().goalFor(snoutWith(0.3, 0.2));
  const JointIndex locked = *task().specimen.findJoint("C6-C7");
  std::erase(goal.joints, locked);
  goal.motions = {true, true, false};
  Pose start = task().neutral;
  start[locked] = Vector3d(0.05, 0.02, 0.01);
  start.X_WRoot.translation() = Vector3d(0.1, 0, 0.2);
  const IkResult result = reach(task().specimen, task().articulation, *task().ranges, start, goal);
  EXPECT_TRUE(result.reached);
  EXPECT_EQ(result.pose[locked], start[locked]);
  EXPECT_EQ(result.pose.X_WRoot.matrix(), start.X_WRoot.matrix());
  for (std::size_t j = 0; j < start.angles.size(); ++j) {
    const auto axial = [&](const Pose& pose) {
      return toOwn(task().specimen.joints[j], task().articulation.rests[j], pose.angles[j])[2];
    };
    EXPECT_NEAR(axial(result.pose), axial(start), 1e-9) << "nothing but what the facets ask for";
    const bool named = std::find(goal.joints.begin(), goal.joints.end(), JointIndex{j}) != goal.joints.end();
    if (!named) {
      EXPECT_EQ(result.pose.angles[j], start.angles[j]);
    }
  }
}

TEST(Reach, InTheMidPlaneItStaysInTheMidPlane) {
  const IkResult result = reached(task().goalFor(snoutAtRest() + Vector3d(-0.5, 0, -1)));
  EXPECT_TRUE(result.reached);
  for (const JointIndex j : task().snout.joints) EXPECT_LT(result.pose[j].tail<2>().norm(), 0.01 * kDegree);
}

TEST(Reach, AnywhereOnALineOfSightWillDo) {
  IkGoal goal = task().goalFor(snoutAtRest() + Vector3d(0.3, 0.6, 5));
  goal.alongLine_W = Vector3d::UnitZ();
  goal.motions = {false, true, false};
  goal.p_WTarget.x() = snoutAtRest().x();
  const IkResult result = reached(goal);
  const Vector3d away = result.p_WPoint - goal.p_WTarget;
  EXPECT_NEAR(away.head<2>().norm(), result.distance, 1e-12);
  EXPECT_LT(result.distance, 0.1);
  EXPECT_GT(away.norm(), 4);
}

TEST(Reach, PastTheRangesItSaysWhatBreaks) {
  IkGoal goal = task().goalFor(snoutWith(0, 0) + Vector3d(-6, 0.3, -4));
  EXPECT_FALSE(reached(goal).reached);
  goal.pastRanges = true;
  const IkResult result = reached(goal);
  EXPECT_TRUE(result.reached);
  std::vector<std::string> broken;
  for (const JointIndex j : result.broken) broken.push_back(task().specimen[j].id);
  EXPECT_THAT(broken, testing::Not(testing::IsEmpty()));
  EXPECT_EQ(broken, beyond(result.pose));
}

TEST(Reach, AJointThatStartsOutsideIsBroughtIn) {
  Pose start = task().neutral;
  const JointIndex joint = *task().specimen.findJoint("C8-C9");
  start[joint] = Vector3d(0.6, 0.2, 0.1);
  const IkResult result =
      reach(task().specimen, task().articulation, *task().ranges, start, task().goalFor(snoutAtRest()));
  EXPECT_TRUE(result.reached);
  EXPECT_THAT(beyond(result.pose), testing::IsEmpty());
}

TEST(Reach, ATargetThatIsNoNumberChangesNothing) {
  const IkResult result = reached(task().goalFor(Vector3d(0, std::nan(""), 0)));
  EXPECT_FALSE(result.reached);
  EXPECT_EQ(result.pose, task().neutral);
}

TEST(Reach, TheTailReachesToo) {
  IkGoal goal;
  goal.bone = *task().specimen.findBone("Ca40");
  goal.joints = dragChain(task().specimen, goal.bone);
  const Vector3d p =
      forwardKinematics(task().specimen, task().articulation, task().neutral)[goal.bone.value].translation();
  goal.p_WTarget = p + Vector3d(0.3, 1, 0.5);
  const IkResult result = reached(goal);
  EXPECT_TRUE(result.reached);
  EXPECT_TRUE(result.broken.empty());
}

}  // namespace
}  // namespace zyga::kinematics
