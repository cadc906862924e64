// Placement against Orocos KDL, a general-purpose kinematics library, on trees that have nothing to do with animals.
#include <gtest/gtest.h>

#include <kdl/treefksolverpos_recursive.hpp>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/placement.h"
#include "tests/support/kdl_tree.h"
#include "tests/support/random_tree.h"

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;
using test::Chance;
using test::randomJoint;
using test::RandomTree;

void expectSameFrames(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                      double tolerance) {
  const Placement X_WB = forwardKinematics(specimen, articulation, pose);
  const test::KdlTree kdl(specimen, articulation);
  KDL::TreeFkSolverPos_recursive solver(kdl.tree);
  const KDL::JntArray q = kdl.positions(pose);
  ASSERT_EQ(X_WB.size(), specimen.bones.size());
  EXPECT_EQ(X_WB[0].matrix(), pose.X_WRoot.matrix());
  for (const anatomy::Joint& joint : specimen.joints) {
    KDL::Frame frame;
    ASSERT_EQ(solver.JntToCart(q, frame, std::to_string(joint.distal.value)), 0);
    const Eigen::Isometry3d expected = pose.X_WRoot * test::eigenFrame(frame);
    const double off = (X_WB[joint.distal.value].matrix() - expected.matrix()).cwiseAbs().maxCoeff();
    EXPECT_LT(off, tolerance) << "bone " << joint.distal.value << " of " << specimen.bones.size();
  }
}

TEST(PlacementAgainstKdl, RandomTrees) {
  Chance chance(20240612);
  for (int i = 0; i < 60; ++i) {
    const RandomTree tree(chance, 2 + chance.below(80));
    expectSameFrames(tree.specimen, tree.articulation, tree.pose, 1e-12);
  }
}

TEST(PlacementAgainstKdl, LongChain) {
  Chance chance(5);
  RandomTree tree(chance, 150);
  for (anatomy::Joint& joint : tree.specimen.joints) joint.proximal = {joint.distal.value - 1};
  // Rounding adds up along a chain of 150 bones that wanders some ten metres.
  expectSameFrames(tree.specimen, tree.articulation, tree.pose, 1e-11);
}

TEST(PlacementAgainstKdl, TheWholeAnimal) {
  Chance chance(9);
  const auto specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::MeasurementTable{}));
  const Articulation articulation = restArticulation(specimen);
  Pose pose = Pose::neutral(specimen);
  for (std::size_t j = 0; j < specimen.joints.size(); ++j)
    if (specimen.joints[j].kind != anatomy::JointKind::Fixed) pose.angles[j] = 0.3 * chance.point();
  expectSameFrames(specimen, articulation, pose, 1e-11);
}

TEST(PlacementAgainstKdl, JointRotationIsTheProductOfThree) {
  Chance chance(3);
  for (int i = 0; i < 200; ++i) {
    const anatomy::Joint joint = randomJoint(chance, 1);
    const Vector3d a = 3 * chance.point();
    KDL::Rotation R = KDL::Rotation::Identity();
    for (int k = 0; k < 3; ++k)
      R = R * KDL::Rotation::Rot2(test::kdlVector(joint.axes[static_cast<std::size_t>(k)]), a[k]);
    const Eigen::Matrix3d expected = test::eigenFrame(KDL::Frame(R)).linear();
    EXPECT_LT((jointRotation(joint, a) - expected).cwiseAbs().maxCoeff(), 1e-14);
  }
}

}  // namespace
}  // namespace zyga::kinematics
