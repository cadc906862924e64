#include "core/kinematics/settling.h"

#include <gtest/gtest.h>

#include <Eigen/Dense>
#include <random>

#include "core/kinematics/following.h"
#include "core/kinematics/jacobian.h"
#include "core/kinematics/placement.h"
#include "core/range/neutral.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using Eigen::Isometry3d;
using Eigen::Vector3d;
using kinematics::Articulation;
using kinematics::facetMisfit;
using kinematics::jointTransform;
using kinematics::kFaceStiffness;
using kinematics::settled;
using kinematics::Settling;
using test::kDegree;
using test::kOnlyJoint;

constexpr double kDisc = 0.020;  // m

Articulation::Rest restWith(const anatomy::Specimen& specimen, double share) {
  Articulation::Rest rest = articulate(specimen, kOnlyJoint, kDisc);
  rest.settling = settlingOf(specimen, kOnlyJoint, rest, share);
  return rest;
}

Isometry3d prezygView(const Settling& settling, const Isometry3d& X_PD) {
  return settling.distalHasPostzygs ? X_PD : X_PD.inverse();
}

/// What is minimised, written anew: misfit of both sides' planes along their mean normals, and the faces.
double energy(const Settling& settling, const Isometry3d& X_PrePost, const Vector3d& d) {
  const double bound = settling.bound;
  double sum = -kFaceStiffness * bound * bound * std::log1p(-d.squaredNorm() / (bound * bound));
  for (const Settling::Side& side : settling.sides) {
    const Vector3d mean = (side.normal + X_PrePost.linear() * side.opposed).normalized();
    const double apart = mean.dot(X_PrePost * side.postzyg + d - side.prezyg) - side.gapAtRest;
    sum += apart * apart;
  }
  return sum;
}

TEST(Settling, isNothingAtRestAndWithoutCartilage) {
  for (const bool tail : {false, true}) {
    const anatomy::Specimen specimen = test::twoVertebrae({.tilt = 0.6, .tail = tail});
    const Articulation::Rest settles = restWith(specimen, 0.5), rigid = restWith(specimen, 0);
    const anatomy::Joint& joint = specimen[kOnlyJoint];
    EXPECT_TRUE(jointTransform(joint, settles, Vector3d::Zero())
                    .isApprox(jointTransform(joint, rigid, Vector3d::Zero()), 1e-12));
    const Vector3d turned(0.1, 0.2, 0.05);
    EXPECT_FALSE(jointTransform(joint, settles, turned).isApprox(jointTransform(joint, rigid, turned), 1e-6));
    Articulation::Rest bare = articulate(specimen, kOnlyJoint, 0);
    bare.settling = settlingOf(specimen, kOnlyJoint, bare, 0.5);
    EXPECT_EQ(bare.settling.bound, 0);
  }
}

TEST(Settling, turnsNothingAndLessensTheMisfitWithinItsBound) {
  std::mt19937 random(3);
  std::uniform_real_distribution<double> u(-1, 1);
  for (const bool tail : {false, true}) {
    const anatomy::Specimen specimen = test::twoVertebrae({.tilt = 0.6, .tail = tail});
    const Articulation::Rest settles = restWith(specimen, 0.5), rigid = restWith(specimen, 0);
    for (int i = 0; i < 200; ++i) {
      const Vector3d angles = 0.3 * Vector3d(u(random), u(random), u(random));
      const Isometry3d X = jointTransform(specimen[kOnlyJoint], settles, angles);
      const Isometry3d X0 = jointTransform(specimen[kOnlyJoint], rigid, angles);
      EXPECT_TRUE(X.linear().isApprox(X0.linear(), 1e-15));
      EXPECT_LE((X.translation() - X0.translation()).norm(), 0.5 * kDisc * (1 + 1e-9));
      const double before = facetMisfit(settles.settling, prezygView(settles.settling, X0)).norm();
      const double after = facetMisfit(settles.settling, prezygView(settles.settling, X)).norm();
      EXPECT_LE(after, before * (1 + 1e-9));
    }
  }
}

/// Against brute force: no translation within the bound has less energy, on a grid and from random places.
TEST(Settling, isTheLeastOfItsEnergy) {
  std::mt19937 random(8);
  std::normal_distribution<double> n;
  const anatomy::Specimen specimen = test::twoVertebrae({.tilt = 0.6});
  for (const double share : {0.05, 0.5}) {
    const Articulation::Rest rest = restWith(specimen, share), rigid = restWith(specimen, 0);
    for (int i = 0; i < 40; ++i) {
      const Vector3d angles = 0.15 * Vector3d(n(random), n(random), n(random));
      const Isometry3d X = jointTransform(specimen[kOnlyJoint], rigid, angles);
      const Vector3d d = settled(rest.settling, X);
      const double least = energy(rest.settling, X, d);
      EXPECT_LT(d.norm(), rest.settling.bound);
      for (int k = 0; k < 500; ++k) {
        Vector3d other = d + rest.settling.bound * 0.3 * Vector3d(n(random), n(random), n(random));
        if (other.norm() >= rest.settling.bound) other *= 0.999 * rest.settling.bound / other.norm();
        EXPECT_GE(energy(rest.settling, X, other), least * (1 - 1e-9)) << share << " " << i;
      }
    }
  }
}

/// The Jacobian of a settled animal against central differences of its placement.
TEST(Settling, isPartOfTheJacobian) {
  const anatomy::Specimen specimen = test::sampleAnimal("high_browser");
  Assumptions assumptions;
  assumptions.neck.amount = 10;
  assumptions.settling = 0.5;
  const Articulation articulation = articulate(specimen, assumptions);
  kinematics::Pose pose = kinematics::Pose::neutral(specimen);
  const anatomy::BoneIndex skull = *specimen.findBone("skull");
  const auto free = kinematics::freeMotions(specimen.chainTo(skull), {true, true, true});
  for (const auto& motion : free)
    if (specimen[motion.joint].hasFacets()) pose[motion.joint] = {0.05, 0.07, 0.02};
  const auto tipAt = [&](const kinematics::Pose& at) {
    return Vector3d(kinematics::forwardKinematics(specimen, articulation, at)[skull.value] *
                    specimen[skull].landmark("snout"));
  };
  const kinematics::Jacobian J = kinematics::jacobian(
      specimen, articulation, pose, kinematics::forwardKinematics(specimen, articulation, pose), free, tipAt(pose));
  constexpr double h = 1e-5;  // rad
  for (std::size_t c = 0; c < free.size(); ++c) {
    kinematics::Pose more = pose, less = pose;
    const auto nudged = [&](double by) {
      const Vector3d& at = pose[free[c].joint];
      return kinematics::withMotion(specimen[free[c].joint], articulation[free[c].joint], at, free[c].motion,
                                    at[free[c].motion] + by);
    };
    more[free[c].joint] = nudged(h);
    less[free[c].joint] = nudged(-h);
    const Vector3d slope = (tipAt(more) - tipAt(less)) / (2 * h);
    EXPECT_LT((J.point.col(static_cast<Eigen::Index>(c)) - slope).norm(), 1e-6 * (1 + slope.norm()))
        << specimen[free[c].joint].id << " " << free[c].motion;
  }
}

/// A mirrored turn settles to the mirror image.
TEST(Settling, isTheSameOnBothSides) {
  const anatomy::Specimen specimen = test::twoVertebrae({.tilt = 0.5});
  const Articulation::Rest rest = restWith(specimen, 0.5);
  const Vector3d left = jointTransform(specimen[kOnlyJoint], rest, {0.1, 0.2, 0.07}).translation();
  const Vector3d right = jointTransform(specimen[kOnlyJoint], rest, {0.1, -0.2, -0.07}).translation();
  EXPECT_TRUE(left.isApprox(right.cwiseProduct(Vector3d(1, -1, 1)), 1e-12));
}

/// Bones that settle have no less room than bones that don't, in every joint of neck, trunk and tail.
TEST(Settling, givesRoom) {
  const anatomy::Specimen specimen = test::sampleAnimal("high_browser");
  Assumptions assumptions;
  assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = 4.56;
  assumptions.settling = 0.5;
  const Articulation settles = articulate(specimen, assumptions);
  assumptions.settling = 0;
  const Articulation rigid = articulate(specimen, assumptions);
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    if (!specimen.joints[j].hasFacets() || !settles.rests[j].solved) continue;
    EXPECT_GT(settles.rests[j].settling.bound, 0) << specimen.joints[j].id;
    EXPECT_EQ(settles.rests[j].rotation, rigid.rests[j].rotation) << specimen.joints[j].id;
    for (const Vector3d& angles : {Vector3d(0.05, 0, 0), Vector3d(0, 0.05, 0), Vector3d(0, 0, 0.03)}) {
      const Isometry3d X = jointTransform(specimen.joints[j], settles.rests[j], angles);
      const Isometry3d X0 = jointTransform(specimen.joints[j], rigid.rests[j], angles);
      const Settling& how = settles.rests[j].settling;
      EXPECT_LE(facetMisfit(how, prezygView(how, X)).norm(), facetMisfit(how, prezygView(how, X0)).norm() + 1e-12)
          << specimen.joints[j].id;
    }
  }
}

}  // namespace
}  // namespace zyga::range
