#include "core/study/reach/rotation_volume.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/range/neutral.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using std::numbers::pi;

// A ball of radius r around zero: plain (4/3) pi r3; corrected: the integral of cos(y) pi (r2 - y2) dy,
// 4 pi (sin r - r cos r).
TEST(RotationVolume, OfABallByClosedForm) {
  const double r = 0.8;
  const auto ball = [&](const Vector3d& a) { return a.norm() <= r; };
  const RotationVolume v = rotationVolume(ball, Vector3d::Zero(), Vector3d::Constant(r / 30));
  EXPECT_NEAR(v.plain, 4.0 / 3 * pi * r * r * r, 0.005 * v.plain);
  EXPECT_NEAR(v.corrected, 4 * pi * (std::sin(r) - r * std::cos(r)), 0.005 * v.corrected);
}

TEST(RotationVolume, CountsTheConnectedPartAlone) {
  const auto two = [](const Vector3d& a) { return a.norm() < 0.2 || (a - Vector3d(1, 0, 0)).norm() < 0.2; };
  const RotationVolume one = rotationVolume(two, Vector3d::Zero(), Vector3d::Constant(0.01));
  EXPECT_NEAR(one.plain, 4.0 / 3 * pi * 0.008, 0.02 * one.plain);
}

TEST(RotationVolume, StopsAtThePolesOfTheMiddleAngle) {
  const auto all = [](const Vector3d& a) { return std::abs(a[0]) < 0.1 && std::abs(a[2]) < 0.1; };
  const RotationVolume v = rotationVolume(all, Vector3d::Zero(), Vector3d(0.02, pi / 101, 0.02));
  EXPECT_NEAR(v.corrected, 0.18 * 0.18 * 2, 1e-3 * v.corrected + 1e-6);
}

TEST(RotationVolume, OfTypedLimitsIsThatOfTheirBox) {
  anatomy::Specimen specimen = test::twoVertebrae();
  specimen.joints[0].kind = anatomy::JointKind::Typed;
  specimen.joints[0].typed = anatomy::TypedLimits{{{{-0.2, 0.3}, {-0.5, 0.5}, {0, 0.1}}}, anatomy::kProgramDefault};
  const auto v =
      supportedRotations(specimen, kinematics::restArticulation(specimen), range::Assumptions{}, test::kOnlyJoint);
  EXPECT_NEAR(v.plain, 0.5 * 1 * 0.1, 1e-12);
  EXPECT_NEAR(v.corrected, 0.5 * 2 * std::sin(0.5) * 0.1, 1e-12);
}

// Bones support less the more their facets have to share, and never more corrected than plain.
TEST(RotationVolume, ShrinksAsFacetsHaveToShareMore) {
  const anatomy::Specimen specimen = test::sampleAnimal("high_browser");
  double before = 1e9;
  for (const double share : {0.25, 0.5, 0.75}) {
    range::Assumptions assumptions;
    assumptions.minOverlap = share;
    const auto articulation = range::articulate(specimen, assumptions);
    const auto v = supportedRotations(specimen, articulation, assumptions, *specimen.findJoint("C6-C7"));
    EXPECT_GT(v.corrected, 0) << share;
    EXPECT_LT(v.corrected, v.plain);
    EXPECT_LT(v.corrected, before);
    before = v.corrected;
  }
}

TEST(RotationVolume, IsNothingWhereNothingJudges) {
  anatomy::Specimen specimen = test::twoVertebrae();
  specimen.bones[0].facets.clear();
  const auto v =
      supportedRotations(specimen, kinematics::restArticulation(specimen), range::Assumptions{}, test::kOnlyJoint);
  EXPECT_EQ(v.corrected, 0);
}

}  // namespace
}  // namespace zyga::study
