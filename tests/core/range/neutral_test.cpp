#include "core/range/neutral.h"

#include <gtest/gtest.h>

#include <random>

#include "core/kinematics/placement.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;
using kinematics::Articulation;
using test::kDegree;
using test::kOnlyJoint;

/// Dorsal turn of a rotation about the transverse axis, rad.
double dorsal(const anatomy::Specimen& specimen, const Matrix3d& rotation) {
  return kinematics::jointAngles(specimen.joints[0], rotation)[0];
}

Matrix3d turn(const Vector3d& axisAngle) {
  return Eigen::AngleAxisd(axisAngle.norm(), axisAngle.normalized()).toRotationMatrix();
}

TEST(Articulate, leavesSeatedFacetsAsTheyAre) {
  for (const bool tail : {false, true}) {
    const anatomy::Specimen specimen = test::twoVertebrae({.tilt = 40 * kDegree, .tail = tail});
    const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0);
    EXPECT_TRUE(rest.solved);
    EXPECT_TRUE(rest.rotation.isApprox(Matrix3d::Identity(), 1e-10));
    EXPECT_NEAR(rest.residual, 0, 1e-10);
    EXPECT_EQ(rest.cartilage, 0);
  }
}

// Known by construction: the postzygs are turned away by a rotation, which the neutral articulation has to undo.
TEST(Articulate, findsTheRotationTheFacetsAskFor) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> u(-20 * kDegree, 20 * kDegree);
  for (int i = 0; i < 200; ++i) {
    anatomy::Specimen specimen = test::twoVertebrae({.tilt = 35 * kDegree});
    const Matrix3d asked = turn(Vector3d{u(random), u(random), u(random)});
    test::askForRotation(specimen, asked);
    const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0);
    ASSERT_TRUE(rest.solved) << i;
    ASSERT_TRUE(rest.rotation.isApprox(asked, 1e-8)) << i;
    ASSERT_NEAR(rest.residual, 0, 1e-9) << i;
  }
}

TEST(Articulate, doesNotDependOnTheFirstGuess) {
  anatomy::Specimen specimen = test::twoVertebrae({.tilt = 35 * kDegree});
  const Matrix3d asked = turn(Vector3d(0.02, -0.15, 0.03));
  test::askForRotation(specimen, asked);
  specimen.joints[0].restRotation = turn(Vector3d(0, -0.3, 0));
  EXPECT_TRUE(articulate(specimen, kOnlyJoint, 0).rotation.isApprox(asked, 1e-8));
}

TEST(Articulate, ofSymmetricBonesIsAPurePitch) {
  for (const bool tail : {false, true}) {
    for (const double tilt : {0.0, 30.0, 65.0}) {
      const anatomy::Specimen specimen = test::twoVertebrae({.tilt = tilt * kDegree, .tail = tail});
      const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0.03);
      ASSERT_TRUE(rest.solved);
      const Vector3d angles = kinematics::jointAngles(specimen.joints[0], rest.rotation);
      EXPECT_GT(angles[0], 0.1);
      EXPECT_NEAR(angles[1], 0, 1e-9);
      EXPECT_NEAR(angles[2], 0, 1e-9);
    }
  }
}

// The published law, t/h (Taylor 2014, PeerJ 2:e712), in neck and tail, for both kinds of joint, level or tilted.
TEST(Articulate, cartilageTurnsTheDistalBoneDorsally) {
  for (const bool tail : {false, true}) {
    for (const bool flat : {false, true}) {
      for (const double tilt : {0.0, 45.0}) {
        const anatomy::Specimen specimen =
            test::twoVertebrae({.tilt = tilt * kDegree, .tail = tail, .flatFaces = flat});
        const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0.04);
        EXPECT_NEAR(dorsal(specimen, rest.rotation) / kDegree, 0.04 / 0.2 / kDegree, 0.05) << tail << flat << tilt;
      }
    }
  }
}

// Nothing is scaled to meet the published law: the centra stand apart by the cartilage, and level facets over the joint
// then open it by 2 atan(t / 2h).
TEST(Articulate, holdsTheCentraAtTheCartilagesThickness) {
  const anatomy::Specimen specimen = test::twoVertebrae();
  const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0.06);
  EXPECT_EQ(rest.cartilage, 0.06);
  EXPECT_NEAR(dorsal(specimen, rest.rotation), 2 * std::atan(0.06 / (2 * 0.2)), 1e-5);
}

TEST(Articulate, reportsHowFarDistortedFacetsAreFromCentred) {
  anatomy::Specimen specimen = test::twoVertebrae({.tilt = 40 * kDegree});
  specimen.bones[1].facets[0].centre.z() += 0.010;  // the left postzyg has slipped upwards
  const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0);
  EXPECT_TRUE(rest.solved);
  EXPECT_GT(rest.residual, 1e-4);
  EXPECT_LT(rest.residual, 0.010);
}

TEST(Articulate, mirroredBonesRestMirrored) {
  anatomy::Specimen specimen = test::twoVertebrae({.tilt = 40 * kDegree});
  specimen.bones[1].facets[0].centre += Vector3d(0.012, 0.002, 0.006);
  specimen.bones[0].facets[1].normal = Vector3d(0.05, 0.6, 0.8).normalized();
  const Matrix3d flip = Vector3d(1, -1, 1).asDiagonal();
  const Matrix3d rotation = articulate(specimen, kOnlyJoint, 0.02).rotation;
  const Matrix3d mirrored = articulate(test::mirroredFacets(specimen), kOnlyJoint, 0.02).rotation;
  EXPECT_FALSE(rotation.isApprox(flip * rotation * flip, 1e-3)) << "the case is not asymmetric";
  EXPECT_TRUE(mirrored.isApprox(flip * rotation * flip, 1e-8));
}

TEST(Articulate, isNotSolvedWhereFacetsAreMissing) {
  anatomy::Specimen specimen = test::twoVertebrae();
  specimen.joints[0].restRotation = turn(Vector3d(0, -0.1, 0));
  specimen.bones[1].facets.pop_back();
  const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0.01);
  EXPECT_FALSE(rest.solved);
  EXPECT_EQ(rest.rotation, specimen.joints[0].restRotation);
  EXPECT_EQ(rest.cartilage, 0.01);
}

TEST(Articulate, isNotSolvedWhereFacetsFaceTheSameWay) {
  anatomy::Specimen specimen = test::twoVertebrae();
  for (anatomy::Facet& facet : specimen.bones[1].facets) facet.normal = -facet.normal;
  const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0.01);
  EXPECT_FALSE(rest.solved);
  EXPECT_TRUE(rest.rotation.allFinite());
  EXPECT_TRUE(std::isfinite(rest.cartilage + rest.residual));
}

TEST(Articulate, typedJointsKeepTheirOwnRest) {
  anatomy::Specimen specimen = test::twoVertebrae();
  specimen.joints[0].kind = anatomy::JointKind::Typed;
  specimen.joints[0].restRotation = turn(Vector3d(0.1, -0.2, 0));
  const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0.01);
  EXPECT_TRUE(rest.solved);
  EXPECT_EQ(rest.rotation, specimen.joints[0].restRotation);
}

TEST(Articulate, takesCartilageFromTheAssumptions) {
  const anatomy::Specimen specimen = test::twoVertebrae();
  Assumptions assumptions;
  assumptions.neck.amount = 10;  // % of 0.4 m
  const Articulation articulation = articulate(specimen, assumptions);
  ASSERT_EQ(articulation.rests.size(), 1u);
  const Articulation::Rest alone = articulate(specimen, kOnlyJoint, 0.04);
  EXPECT_TRUE(articulation[kOnlyJoint].rotation.isApprox(alone.rotation, 1e-12));
  EXPECT_NEAR(articulation[kOnlyJoint].cartilage, alone.cartilage, 1e-12);
}

// Facets that ask for a turn where parallel faces ask for none. The two demands have the same lever in pitch.
TEST(Articulate, parallelFacesMeetTheFacetsHalfWay) {
  for (const bool tail : {false, true}) {
    for (const double turnAsked : {-0.2, 0.05, 0.2}) {
      anatomy::Specimen specimen = test::twoVertebrae({.tilt = 30 * kDegree, .tail = tail});
      for (anatomy::Facet& facet : specimen.bones[1].facets) {
        const Vector3d centre = specimen.joints[0].centreDistal;
        const Matrix3d back = turn(turnAsked * -specimen.joints[0].axes[0]);
        facet.centre = centre + back * (facet.centre - centre);
        facet.normal = back * facet.normal;
        facet.slide = back * facet.slide;
      }
      EXPECT_NEAR(dorsal(specimen, articulate(specimen, kOnlyJoint, 0).rotation), turnAsked, 1e-8);
      const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0, NeutralBy::FacetsAndCentra);
      EXPECT_TRUE(rest.solved);
      EXPECT_NEAR(dorsal(specimen, rest.rotation), 0.5 * turnAsked, 0.02 * std::abs(turnAsked));
      EXPECT_NEAR(rest.residual, 0.2 * 0.5 * std::abs(turnAsked), 1e-3) << "half of the way stays open";
    }
  }
}

// A disc of even thickness between parallel faces turns nothing by itself.
TEST(Articulate, parallelFacesHalveWhatCartilageTurns) {
  const anatomy::Specimen specimen = test::twoVertebrae({.tilt = 30 * kDegree});
  const double byFacets = dorsal(specimen, articulate(specimen, kOnlyJoint, 0.02).rotation);
  const double byBoth = dorsal(specimen, articulate(specimen, kOnlyJoint, 0.02, NeutralBy::FacetsAndCentra).rotation);
  EXPECT_NEAR(byBoth / byFacets, 0.5, 0.01);
}

TEST(Articulate, parallelFacesLeaveTorsionToTheFacets) {
  anatomy::Specimen specimen = test::twoVertebrae({.tilt = 30 * kDegree});
  const Matrix3d asked = turn(Vector3d(0.1, 0, 0));
  test::askForRotation(specimen, asked);
  const Matrix3d rotation = articulate(specimen, kOnlyJoint, 0, NeutralBy::FacetsAndCentra).rotation;
  EXPECT_TRUE(rotation.isApprox(asked, 1e-8));
}

TEST(Articulate, leavesAloneWhatTheFacetsCannotTell) {
  // Facets level with the centre of rotation: a pitch only tips them.
  const anatomy::Specimen specimen = test::twoVertebrae({.height = 0});
  const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0);
  EXPECT_TRUE(rest.solved);
  EXPECT_TRUE(rest.rotation.isApprox(Matrix3d::Identity(), 1e-9));
  // All in the mid-plane: they say nothing about a turn about the line through them and the centre.
  const Articulation::Rest inLine = articulate(test::twoVertebrae({.spread = 0}), kOnlyJoint, 0.02);
  EXPECT_TRUE(inLine.solved);
  EXPECT_TRUE(inLine.rotation.allFinite());
}

// Whatever the bones, the answer is a rotation with finite numbers, or says that it is none.
TEST(Articulate, survivesAnyBones) {
  std::mt19937 random(5);
  std::normal_distribution<double> n;
  int solved = 0;
  for (int i = 0; i < 300; ++i) {
    anatomy::Specimen specimen = test::twoVertebrae({.tilt = 0.5 * n(random), .tail = i % 2 == 0});
    const double wild = i % 3 == 0 ? 1 : 0.1;
    for (anatomy::Bone& bone : specimen.bones) {
      for (anatomy::Facet& facet : bone.facets) {
        const Matrix3d R = turn(wild * Vector3d{n(random), n(random), n(random)});
        facet.normal = R * facet.normal;
        facet.slide = R * facet.slide;
        facet.centre += 0.1 * wild * Vector3d{n(random), n(random), n(random)};
      }
    }
    for (const NeutralBy by : {NeutralBy::Facets, NeutralBy::FacetsAndCentra}) {
      const Articulation::Rest rest = articulate(specimen, kOnlyJoint, i % 5 * 0.02, by);
      ASSERT_TRUE((rest.rotation * rest.rotation.transpose()).isIdentity(1e-9)) << i;
      ASSERT_TRUE(std::isfinite(rest.residual + rest.cartilage)) << i;
      ASSERT_GE(std::min(rest.pressGranted[0], rest.gapeGranted[1]), 0) << i;
      solved += rest.solved;
      EXPECT_EQ(rest.solved, articulationNote(specimen, kOnlyJoint, rest).outcome <= ArticulationNote::Outcome::Poor);
    }
  }
  EXPECT_GT(solved, 400);
}

// Facets of two scans that lie 2 mm in each other at rest are granted that, of a table's nothing, and none more than a
// quarter of a facet's length.
TEST(Articulate, grantsScansWhatTheirMarksDoNotFit) {
  anatomy::Specimen specimen = test::twoVertebrae();
  const auto deepen = [](anatomy::Specimen of, double by) {
    for (anatomy::Bone& bone : of.bones)
      for (anatomy::Facet& facet : bone.facets)
        if (isPrezyg(facet.role)) facet.centre += by * facet.normal;
    return of;
  };
  const double length = facetsOf(specimen, kOnlyJoint)[0].prezyg->length();
  EXPECT_EQ(articulate(deepen(specimen, 0.002), kOnlyJoint, 0).pressGranted, (std::array<double, 2>{0, 0}));
  for (anatomy::Bone& bone : specimen.bones) bone.scanned = true;
  const Articulation::Rest rest = articulate(deepen(specimen, 0.002), kOnlyJoint, 0);
  EXPECT_NEAR(rest.pressGranted[0], 0.002, 2e-4);
  EXPECT_NEAR(rest.misfitGranted, 0.002, 2e-4);
  EXPECT_NEAR(articulate(deepen(specimen, 0.4 * length), kOnlyJoint, 0).pressGranted[1], 0.25 * length, 1e-9);
}

// Cartilage wedges the facets of a joint open; a pose is not blamed for it, but has no more room than before.
TEST(Articulate, tellsWhatCartilageDoesToTheFacets) {
  const anatomy::Specimen specimen = test::twoVertebrae();
  EXPECT_EQ(articulate(specimen, kOnlyJoint, 0).pressGranted, (std::array<double, 2>{0, 0}));
  const Articulation::Rest rest = articulate(specimen, kOnlyJoint, 0.06);  // turns 0.3 rad, seen over half of 60 mm
  for (const int side : {0, 1}) {
    const auto s = static_cast<std::size_t>(side);
    EXPECT_NEAR(rest.pressGranted[s] + rest.gapeGranted[s], 0.06 * std::tan(0.3), 0.0015);
  }
}

}  // namespace
}  // namespace zyga::range
