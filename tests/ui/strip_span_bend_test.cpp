#include <gtest/gtest.h>

#include "ui/strip/shown_bands.h"

namespace zyga::ui {
namespace {

using kinematics::JointIndex;
using kinematics::Pose;

Pose flatPose(std::size_t joints) {
  Pose pose;
  pose.angles.assign(joints, Eigen::Vector3d::Zero());
  return pose;
}

const std::vector<JointIndex> kJoints{{1}, {2}, {3}};

TEST(SpanBend, TurnsInProportionToTheBands) {
  Pose pose = flatPose(5);
  pose.angles[2].y() = 0.02;
  const Pose bent = bendSpan(pose, kJoints, {0.2, 0.4, 0.1}, 1, 1, 0.08);
  EXPECT_NEAR(bent.angles[1].y(), 0.04, 1e-12);
  EXPECT_NEAR(bent.angles[2].y(), 0.02 + 0.08, 1e-12) << "the grabbed joint follows the pointer";
  EXPECT_NEAR(bent.angles[3].y(), 0.02, 1e-12);
  EXPECT_EQ(bent.angles[0], pose.angles[0]);
  EXPECT_EQ(bent.angles[4], pose.angles[4]);
  for (int other : {0, 2}) EXPECT_EQ(bent.angles[2][other], 0) << "the other motions stay";
}

TEST(SpanBend, LeavesJointsWithoutABandAlone) {
  const Pose bent = bendSpan(flatPose(5), kJoints, {0.2, 0, 0.1}, 0, 1, 0.06);
  EXPECT_NEAR(bent.angles[1].x(), 0.06, 1e-12) << "the widest band stands in for the grabbed joint";
  EXPECT_EQ(bent.angles[2].x(), 0);
  EXPECT_NEAR(bent.angles[3].x(), 0.03, 1e-12);
}

TEST(SpanBend, SharesAlikeWhereNoJointHasABand) {
  const Pose bent = bendSpan(flatPose(5), kJoints, {0, 0, 0}, 2, 0, -0.05);
  for (std::size_t j : {1u, 2u, 3u}) EXPECT_NEAR(bent.angles[j].z(), -0.05, 1e-12);
}

TEST(SpanBend, OfOneJointIsItsOwnTurn) {
  const Pose bent = bendSpan(flatPose(5), {{4}}, {0.3}, 0, 0, 0.123);
  EXPECT_NEAR(bent.angles[4].x(), 0.123, 1e-12);
}

TEST(SpanBend, OfNoJointsChangesNothing) { EXPECT_EQ(bendSpan(flatPose(2), {}, {}, 0, 0, 1), flatPose(2)); }

}  // namespace
}  // namespace zyga::ui
