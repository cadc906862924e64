// Jacobians against central differences of the placement and against Orocos KDL, a general-purpose kinematics library.
#include "core/kinematics/jacobian.h"

#include <gtest/gtest.h>

#include <kdl/chainjnttojacsolver.hpp>

#include "core/anatomy/plan/build_specimen.h"
#include "tests/support/kdl_tree.h"
#include "tests/support/random_tree.h"

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;
using test::Chance;
using test::RandomTree;

/// The joints that move between the root and a bone, all motions.
std::vector<FreeMotion> movingTo(const anatomy::Specimen& specimen, BoneIndex bone) {
  std::vector<JointIndex> joints = specimen.chainTo(bone);
  std::erase_if(joints, [&](JointIndex j) { return specimen[j].kind == anatomy::JointKind::Fixed; });
  return freeMotions(joints, {true, true, true});
}

/// Vector of the small turn from one attitude to another, rad.
Vector3d turnBetween(const Eigen::Matrix3d& from, const Eigen::Matrix3d& to) {
  const Eigen::Matrix3d R = to * from.transpose();
  return 0.5 * Vector3d(R(2, 1) - R(1, 2), R(0, 2) - R(2, 0), R(1, 0) - R(0, 1));
}

TEST(Jacobian, AgreesWithCentralDifferences) {
  Chance chance(77);
  for (int i = 0; i < 20; ++i) {
    const RandomTree tree(chance, 2 + chance.below(40));
    const BoneIndex bone{1 + chance.below(tree.specimen.bones.size() - 1)};
    const auto free = movingTo(tree.specimen, bone);
    const Vector3d p_BPoint = chance.point();
    const auto boneAt = [&](const Pose& pose) {
      return forwardKinematics(tree.specimen, tree.articulation, pose)[bone.value];
    };
    const Jacobian J =
        jacobian(tree.specimen, tree.articulation, tree.pose,
                 forwardKinematics(tree.specimen, tree.articulation, tree.pose), free, boneAt(tree.pose) * p_BPoint);
    ASSERT_EQ(J.point.cols(), static_cast<Eigen::Index>(free.size()));
    constexpr double h = 1e-6;
    for (std::size_t c = 0; c < free.size(); ++c) {
      Pose before = tree.pose, after = tree.pose;
      before[free[c].joint][free[c].motion] -= h;
      after[free[c].joint][free[c].motion] += h;
      const Eigen::Isometry3d X_before = boneAt(before), X_after = boneAt(after);
      const Vector3d point = (X_after * p_BPoint - X_before * p_BPoint) / (2 * h);
      const Vector3d turn = turnBetween(X_before.linear(), X_after.linear()) / (2 * h);
      EXPECT_LT((J.point.col(static_cast<Eigen::Index>(c)) - point).norm(), 1e-7);
      EXPECT_LT((J.turn.col(static_cast<Eigen::Index>(c)) - turn).norm(), 1e-7);
    }
  }
}

void expectKdls(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose, BoneIndex bone,
                const Vector3d& p_BPoint, double tolerance) {
  const test::KdlTree kdl(specimen, articulation);
  KDL::Chain chain;
  ASSERT_TRUE(kdl.tree.getChain("0", std::to_string(bone.value), chain));
  chain.addSegment(KDL::Segment(KDL::Joint(KDL::Joint::None), KDL::Frame(test::kdlVector(p_BPoint))));
  const auto free = movingTo(specimen, bone);
  ASSERT_EQ(chain.getNrOfJoints(), free.size());
  KDL::JntArray q(chain.getNrOfJoints());
  for (unsigned c = 0; c < free.size(); ++c) q(c) = pose[free[c].joint][free[c].motion];
  KDL::Jacobian expected(chain.getNrOfJoints());
  ASSERT_EQ(KDL::ChainJntToJacSolver(chain).JntToJac(q, expected), 0);

  // KDL speaks in the root's frame.
  const Placement X_WB = forwardKinematics(specimen, articulation, pose);
  const Eigen::Matrix3d R_RootW = pose.X_WRoot.linear().transpose();
  const Jacobian J = jacobian(specimen, articulation, pose, X_WB, free, X_WB[bone.value] * p_BPoint);
  if (free.empty()) return;
  EXPECT_LT((R_RootW * J.point - expected.data.topRows<3>()).cwiseAbs().maxCoeff(), tolerance);
  EXPECT_LT((R_RootW * J.turn - expected.data.bottomRows<3>()).cwiseAbs().maxCoeff(), tolerance);
}

TEST(JacobianAgainstKdl, RandomTrees) {
  Chance chance(4);
  for (int i = 0; i < 60; ++i) {
    const RandomTree tree(chance, 2 + chance.below(80));
    const BoneIndex bone{1 + chance.below(tree.specimen.bones.size() - 1)};
    expectKdls(tree.specimen, tree.articulation, tree.pose, bone, chance.point(), 1e-12);
  }
}

TEST(JacobianAgainstKdl, HeadAndTailTipOfTheAnimal) {
  Chance chance(5);
  const auto specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::MeasurementTable{}));
  const Articulation articulation = restArticulation(specimen);
  Pose pose = Pose::neutral(specimen);
  pose.X_WRoot.linear() = chance.rotation();
  for (std::size_t j = 0; j < specimen.joints.size(); ++j)
    if (specimen.joints[j].kind != anatomy::JointKind::Fixed) pose.angles[j] = 0.2 * chance.point();
  for (const char* id : {"skull", "C7", "Ca50", "tibia.L"})
    expectKdls(specimen, articulation, pose, *specimen.findBone(id), chance.point(), 1e-11);
}

}  // namespace
}  // namespace zyga::kinematics
