#include "core/kinematics/bend.h"

#include <gtest/gtest.h>

#include "core/anatomy/build_specimen.h"

namespace zyga::kinematics {
namespace {

using anatomy::Specimen;
using Eigen::Vector3d;

const Specimen& animal() {
  static const Specimen specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::MeasurementTable{}));
  return specimen;
}

TEST(Bend, TheGrabbedPointComesToTheTarget) {
  const Articulation rest = restArticulation(animal());
  const Pose pose = Pose::neutral(animal());
  const BoneIndex skull = *animal().findBone("skull");
  const Pull pull{dragChain(animal(), skull), {true, true, false}, skull, Vector3d(0.2, 0, 0)};
  const Vector3d p = place(animal(), rest, pose)[skull.value] * pull.p_BPoint;
  const Vector3d target = p + Vector3d(-0.5, 0.4, 0.8);
  const Pose bent = pullTowards(animal(), rest, pose, pull, target);
  EXPECT_LT((place(animal(), rest, bent)[skull.value] * pull.p_BPoint - target).norm(), 1e-3);
}

// A grabbed bone brought nearer to the chain's root makes an arch, not two kinks: no joint turns by much more than the
// rest.
TEST(Bend, TheBendIsSharedAlongTheChain) {
  const Articulation rest = restArticulation(animal());
  const Pose pose = Pose::neutral(animal());
  const BoneIndex c9 = *animal().findBone("C9");
  const Pull pull{dragChain(animal(), c9), {true, true, false}, c9, Vector3d(0.1, 0.05, 0.05)};
  const Vector3d p = place(animal(), rest, pose)[c9.value] * pull.p_BPoint;
  const Pose bent = pullTowards(animal(), rest, pose, pull, p + Vector3d(-0.35, 0.2, 0.9));
  double most = 0, sum = 0;
  for (const JointIndex j : pull.joints) {
    most = std::max(most, bent[j].norm());
    sum += bent[j].norm();
  }
  EXPECT_LT((place(animal(), rest, bent)[c9.value] * pull.p_BPoint - (p + Vector3d(-0.35, 0.2, 0.9))).norm(), 1e-3);
  EXPECT_LT(most, 2.5 * sum / static_cast<double>(pull.joints.size()));
}

TEST(Bend, OnlyTheChainAnswers) {
  const Articulation rest = restArticulation(animal());
  const BoneIndex c5 = *animal().findBone("C5");
  const Pull pull{dragChain(animal(), c5), {true, false, false}, c5, Vector3d::Zero()};
  const Pose pose = Pose::neutral(animal());
  const Pose bent = pullTowards(animal(), rest, pose, pull, Vector3d(2, 0, 6));
  for (std::size_t j = 0; j < animal().joints.size(); ++j) {
    const bool inChain = std::find(pull.joints.begin(), pull.joints.end(), JointIndex{j}) != pull.joints.end();
    if (!inChain) {
      EXPECT_EQ(bent.angles[j], pose.angles[j]) << animal().joints[j].id;
    }
    EXPECT_EQ(bent.angles[j].tail<2>(), Eigen::Vector2d::Zero()) << "the pull asked for dorsiflexion alone";
  }
  EXPECT_NE(bent[*animal().findJoint("C6-C7")][0], 0);
  EXPECT_EQ(bent[*animal().findJoint("C3-C4")][0], 0) << "beyond the grabbed bone nothing turns";
}

TEST(Bend, APullInTheMidPlaneStaysInTheMidPlane) {
  const Articulation rest = restArticulation(animal());
  const BoneIndex c3 = *animal().findBone("C3");
  const Pull pull{dragChain(animal(), c3), {true, true, false}, c3, Vector3d::Zero()};
  const Pose bent = pullTowards(animal(), rest, Pose::neutral(animal()), pull, Vector3d(3, 0, 5));
  for (const Vector3d& angles : bent.angles) EXPECT_EQ(angles[1], 0);
}

TEST(Bend, OutOfReachEndsStretchedTowardsTheTarget) {
  const Articulation rest = restArticulation(animal());
  const BoneIndex skull = *animal().findBone("skull");
  const Pull pull{dragChain(animal(), skull), {true, true, false}, skull, Vector3d::Zero()};
  Pose pose = Pose::neutral(animal());
  const Vector3d target(0, 0, 100);
  for (int i = 0; i < 40; ++i) pose = pullTowards(animal(), rest, pose, pull, target);
  const Placement X = place(animal(), rest, pose);
  EXPECT_TRUE(X[skull.value].translation().allFinite());
  EXPECT_GT(X[skull.value].translation().z(), 4.0) << "the neck of five metres points upwards";
}

TEST(Bend, ChainsStartWhereAPersonExpects) {
  const auto first = [&](const char* bone) {
    return animal()[dragChain(animal(), *animal().findBone(bone)).front()].id;
  };
  EXPECT_EQ(first("skull"), "C13-D1");
  EXPECT_EQ(first("C5"), "C13-D1");
  EXPECT_EQ(first("Ca20"), "S5-Ca1");
  EXPECT_EQ(first("D3"), "D11-S1");
  EXPECT_EQ(first("tibia.L"), "hip.L");
  EXPECT_EQ(first("radius.R").substr(0, 5), "scapu");
  const JointIndex base = *animal().findJoint("C9-C10");
  EXPECT_EQ(dragChain(animal(), *animal().findBone("C2"), base).front(), base);
  EXPECT_EQ(animal()[neckChain(animal()).back()].id, "skull-C1");
  EXPECT_EQ(animal()[tailChain(animal()).back()].id, "Ca51-Ca52");
}

TEST(Bend, SpreadSharesByWeight) {
  const auto chain = neckChain(animal());
  std::vector<double> weights(chain.size(), 1.0 / static_cast<double>(chain.size()));
  const Pose bent = spreadTurn(Pose::neutral(animal()), chain, weights, Vector3d(0.6, 0, 0));
  double sum = 0;
  for (const JointIndex j : chain) sum += bent[j][0];
  EXPECT_NEAR(sum, 0.6, 1e-12);
}

}  // namespace
}  // namespace zyga::kinematics
