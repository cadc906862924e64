#include "core/kinematics/placement.h"

#include <gtest/gtest.h>

#include <numbers>
#include <random>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/bend.h"

namespace zyga::kinematics {
namespace {

using anatomy::Specimen;
using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;

const Specimen& animal() {
  static const Specimen specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::MeasurementTable{}));
  return specimen;
}

Eigen::Isometry3d placed(const Pose& pose, std::string_view bone) {
  return forwardKinematics(animal(), restArticulation(animal()), pose)[animal().findBone(bone)->value];
}

/// The animal with one joint turned, against the animal at rest: how the distal bone's axes moved.
Eigen::Matrix3d turnOf(const char* joint, const char* distal, const Vector3d& angles) {
  Pose pose = Pose::neutral(animal());
  const Eigen::Matrix3d before = placed(pose, distal).linear();
  pose[*animal().findJoint(joint)] = angles;
  return placed(pose, distal).linear() * before.transpose();
}

TEST(Placement, SignsAreAnatomicalAndTheSameInNeckAndTail) {
  const double a = 10 * kDegree;
  for (const auto& [joint, distal, outwards] :
       {std::tuple("C6-C7", "C6", 1.0), std::tuple("Ca9-Ca10", "Ca10", -1.0), std::tuple("D5-D6", "D5", 1.0)}) {
    const Vector3d away = outwards * Vector3d::UnitX();
    EXPECT_GT((turnOf(joint, distal, {a, 0, 0}) * away).z(), 0.1) << joint << ": dorsiflexion raises the free end";
    EXPECT_GT((turnOf(joint, distal, {0, a, 0}) * away).y(), 0.1) << joint << ": left bends to the left";
    EXPECT_GT((turnOf(joint, distal, {0, 0, a}) * Vector3d::UnitY()).z(), 0.1) << joint << ": torsion raises the left";
  }
}

TEST(Placement, ADegreeAtAJointIsADegreeForEverythingBeyond) {
  const Eigen::Matrix3d R = turnOf("C12-C13", "skull", {10 * kDegree, 0, 0});
  EXPECT_NEAR(std::acos((R.trace() - 1) / 2), 10 * kDegree, 1e-12);
}

// A17 of the checks (derived): 20 degrees up then 20 left, against the reverse order, differ by a rotation of 6.912.
TEST(Placement, OrderOfTurnsMatters) {
  anatomy::Joint upFirst = animal()[*animal().findJoint("C6-C7")];
  anatomy::Joint leftFirst = upFirst;
  std::swap(leftFirst.axes[0], leftFirst.axes[1]);
  const Vector3d angles(20 * kDegree, 20 * kDegree, 0);
  const Eigen::Matrix3d between = jointRotation(upFirst, angles).transpose() * jointRotation(leftFirst, angles);
  EXPECT_NEAR(std::acos((between.trace() - 1) / 2) / kDegree, 6.912, 0.0005);
}

TEST(Placement, AnglesInvertRotations) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> angle(-1.4, 1.4);
  for (const anatomy::Joint& joint : animal().joints) {
    const Vector3d angles{angle(random), angle(random), angle(random)};
    EXPECT_TRUE(jointAngles(joint, jointRotation(joint, angles)).isApprox(angles, 1e-9)) << joint.id;
  }
}

TEST(Placement, CentresOfAJointMeetAtEveryAngle) {
  const anatomy::Joint& joint = animal()[*animal().findJoint("C6-C7")];
  for (const double a : {-0.3, 0.0, 0.2}) {
    const Eigen::Isometry3d X = jointTransform(joint, {.rotation = joint.restRotation}, {a, 0.1, -0.2});
    EXPECT_TRUE((X * joint.centreDistal).isApprox(joint.centreProximal, 1e-12));
  }
}

TEST(Placement, CartilageHoldsTheCentresApartAlongTheLongAxis) {
  for (const char* id : {"C6-C7", "Ca9-Ca10"}) {
    const anatomy::Joint& joint = animal()[*animal().findJoint(id)];
    const Eigen::Isometry3d X = jointTransform(joint, {.rotation = joint.restRotation, .cartilage = 0.02}, {0, 0, 0});
    const Vector3d apart = X * joint.centreDistal - joint.centreProximal;
    EXPECT_NEAR(apart.norm(), 0.02, 1e-3) << id;
    EXPECT_GT(apart.dot(joint.longAxisProximal), 0.0199) << id << ": away from the proximal bone";
  }
}

TEST(Placement, MirroredPoseGivesMirroredBones) {
  std::mt19937 random(3);
  std::uniform_real_distribution<double> angle(-0.2, 0.2);
  Pose pose = Pose::neutral(animal());
  Pose twin = pose;
  for (std::size_t j = 0; j < animal().joints.size(); ++j) {
    const anatomy::Bone& distal = animal()[animal().joints[j].distal];
    if (distal.name.side != anatomy::Side::Midline) continue;
    pose.angles[j] = Vector3d{angle(random), angle(random), angle(random)};
    twin.angles[j] = pose.angles[j].cwiseProduct(Vector3d(1, -1, -1));
  }
  const auto rest = restArticulation(animal());
  const Placement a = forwardKinematics(animal(), rest, pose);
  const Placement b = forwardKinematics(animal(), rest, twin);
  const Vector3d flip(1, -1, 1);
  for (std::size_t i = 0; i < animal().bones.size(); ++i) {
    if (animal().bones[i].name.side != anatomy::Side::Midline) continue;
    EXPECT_TRUE(b[i].translation().isApprox(a[i].translation().cwiseProduct(flip), 1e-9)) << animal().bones[i].id;
    EXPECT_TRUE(b[i].linear().isApprox(flip.asDiagonal() * a[i].linear() * flip.asDiagonal(), 1e-9));
  }
}

// B7 and A12 of the checks (Vidal et al. 2020, Sci. Rep. 10:6638; the turn is geometry): a wedge of 10 degrees in the
// sacrum turns everything beyond it by exactly 10 degrees.
TEST(Placement, SacralWedgeTurnsTheTrunkAgainstTheTail) {
  anatomy::MeasurementTable table = anatomy::fillBlanks(anatomy::MeasurementTable{});
  const auto slopeBetween = [](const anatomy::MeasurementTable& t) {
    const Specimen s = anatomy::buildSpecimen(t);
    const Placement X = forwardKinematics(s, restArticulation(s), Pose::neutral(s));
    const Eigen::Matrix3d R = X[s.findBone("Ca5")->value].linear().transpose() * X[s.findBone("C5")->value].linear();
    return std::atan2(R(2, 0), R(0, 0));
  };
  const double before = slopeBetween(table);
  table.find({anatomy::BoneKind::Sacral, 3, 0, anatomy::Side::Midline})->measures[anatomy::Measure::Wedge].value +=
      10 * kDegree;
  EXPECT_NEAR((slopeBetween(table) - before) / kDegree, 10, 1e-9);
}

}  // namespace
}  // namespace zyga::kinematics
