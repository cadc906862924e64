// Placement against Orocos KDL, a general-purpose kinematics library, on trees that have nothing to do with animals.
#include <gtest/gtest.h>

#include <kdl/treefksolverpos_recursive.hpp>
#include <random>

#include "core/anatomy/build_specimen.h"
#include "core/kinematics/placement.h"
#include "tests/support/kdl_tree.h"

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;

class Chance {
 public:
  explicit Chance(unsigned seed) : random_(seed) {}

  double in(double least, double most) { return std::uniform_real_distribution<double>(least, most)(random_); }
  std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random_); }
  Vector3d point() {
    const double x = in(-1, 1), y = in(-1, 1), z = in(-1, 1);
    return {x, y, z};
  }
  Vector3d unit() { return point().normalized(); }
  Eigen::Matrix3d rotation() { return Eigen::AngleAxisd(in(-3, 3), unit()).toRotationMatrix(); }

 private:
  std::mt19937 random_;
};

/// Any three square axes, of either hand, along the coordinate axes or not.
std::array<Vector3d, 3> randomAxes(Chance& chance) {
  Eigen::Matrix3d R = chance.below(2) ? chance.rotation() : Eigen::Matrix3d(Eigen::Matrix3d::Identity());
  for (int k = 0; k < 3; ++k)
    if (chance.below(2)) R.col(k) = -R.col(k);
  return {R.col(0), R.col(1), R.col(2)};
}

anatomy::Joint randomJoint(Chance& chance, std::size_t distal) {
  anatomy::Joint joint;
  joint.kind = chance.below(4) == 0 ? anatomy::JointKind::Fixed : anatomy::JointKind::Typed;
  joint.proximal = {chance.below(distal)};
  joint.distal = {distal};
  joint.centreProximal = chance.point();
  joint.centreDistal = chance.point();
  joint.axes = randomAxes(chance);
  joint.longAxisProximal = chance.unit();
  joint.longAxisDistal = chance.unit();
  joint.cartilageShareProximal = chance.in(0, 1);
  return joint;
}

struct RandomTree {
  anatomy::Specimen specimen;
  Articulation articulation;
  Pose pose;

  RandomTree(Chance& chance, std::size_t bones) {
    specimen.bones.resize(bones);
    for (std::size_t i = 1; i < bones; ++i) {
      specimen.joints.push_back(randomJoint(chance, i));
      if (i == 1) specimen.joints.back().kind = anatomy::JointKind::Typed;  // KDL does not take a tree without joints
      articulation.rests.push_back({chance.rotation(), chance.in(0, 0.1)});
      const bool fixed = specimen.joints.back().kind == anatomy::JointKind::Fixed;
      pose.angles.push_back(fixed ? Vector3d(Vector3d::Zero()) : Vector3d(3 * chance.point()));
    }
    pose.X_WRoot.linear() = chance.rotation();
    pose.X_WRoot.translation() = 10 * chance.point();
  }
};

void expectSameFrames(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                      double tolerance) {
  const Placement X_WB = place(specimen, articulation, pose);
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
