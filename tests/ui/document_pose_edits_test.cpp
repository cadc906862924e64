#include <gtest/gtest.h>

#include <random>

#include "core/kinematics/bend.h"
#include "core/kinematics/placement.h"
#include "core/range/neutral.h"
#include "tests/ui/document_sample.h"
#include "ui/commands/pose_edits.h"

namespace zyga::ui {
namespace {

kinematics::Pose randomPose(const anatomy::Specimen& specimen, unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> angle(-0.3, 0.3);
  kinematics::Pose pose = kinematics::Pose::neutral(specimen);
  for (auto& angles : pose.angles) angles = {angle(random), angle(random), angle(random)};
  pose.X_WRoot.linear() = Eigen::AngleAxisd(0.3, Eigen::Vector3d(1, 2, 3).normalized()).toRotationMatrix();
  pose.X_WRoot.translation() = Eigen::Vector3d(0.1, 0.2, 2);
  return pose;
}

/// The property that defines the mirror image: every bone lies where the other side's bone was seen in the mirror.
TEST(MirroredPose, PutsEveryBoneWhereTheMirrorShowsItsPartner) {
  const anatomy::Specimen specimen = sampleProject().specimen();
  const auto articulation = kinematics::restArticulation(specimen);
  const auto pose = randomPose(specimen, 7);
  const auto before = kinematics::forwardKinematics(specimen, articulation, pose);
  const auto after = kinematics::forwardKinematics(specimen, articulation, mirrored(specimen, pose));
  const Eigen::Vector3d flip(1, -1, 1);
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const auto partner = specimen.findBone(toId(anatomy::mirrored(specimen.bones[i].name)));
    ASSERT_TRUE(partner) << specimen.bones[i].id;
    const Eigen::Vector3d seen = flip.cwiseProduct(before[partner->value].translation());
    EXPECT_LT((after[i].translation() - seen).norm(), 1e-9) << specimen.bones[i].id;
  }
}

TEST(MirroredPose, TwiceIsThePoseItself) {
  const anatomy::Specimen specimen = sampleProject().specimen();
  const auto pose = randomPose(specimen, 8);
  const auto twice = mirrored(specimen, mirrored(specimen, pose));
  EXPECT_TRUE(twice.X_WRoot.isApprox(pose.X_WRoot));
  for (std::size_t j = 0; j < pose.angles.size(); ++j) EXPECT_EQ(twice.angles[j], pose.angles[j]);
}

TEST(AtNeutral, LeavesTheOtherJointsAlone) {
  const anatomy::Specimen specimen = sampleProject().specimen();
  const auto pose = randomPose(specimen, 9);
  const auto neck = kinematics::neckChain(specimen);
  const auto neutral = atNeutral(pose, neck);
  for (std::size_t j = 0; j < pose.angles.size(); ++j) {
    const bool inNeck = std::find(neck.begin(), neck.end(), kinematics::JointIndex{j}) != neck.end();
    EXPECT_EQ(neutral.angles[j], inNeck ? Eigen::Vector3d(Eigen::Vector3d::Zero()) : pose.angles[j]);
  }
}

}  // namespace
}  // namespace zyga::ui
