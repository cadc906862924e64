#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/study/reach/rotation_volume.h"
#include "core/study/stress/pressure.h"

/// Published values about the space of rotations and about blood pressure. Each test names its source.
namespace zyga::study {
namespace {

using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;
const double kCubicDegree = std::pow(kDegree, 3);

// Manafzadeh & Gatesy 2020, abstract: three-angle spaces distort volume. Figures derived: all rotations are 360 x 180 x
// 360 degrees plain, and with the cosine of the middle angle 360 x 360 x 2 x 57.29578.
TEST(PublishedRotations, WholeSpacePlainAndCorrected) {
  const RotationVolume all = rotationVolume(Vector3d(-180, -90, -180) * kDegree, Vector3d(180, 90, 180) * kDegree);
  EXPECT_NEAR(all.plain / kCubicDegree, 23'328'000, 1);
  EXPECT_NEAR(all.corrected / kCubicDegree, 14'851'066, 1);
}

// Seymour & Lillywhite 2000, abstract, and Mitchell et al. 2006 (formula, second hand): blood of density 1.055 against
// mercury of 13.6; 2 m of it are 155.1 mmHg, a metre 77.2 to 78.0.
TEST(PublishedPressure, OfTwoMetresOfBlood) {
  EXPECT_NEAR(columnPressure(2), 155.1, 0.05);
  EXPECT_NEAR(columnPressure(1, kThinBlood), 77.2, 0.05);
  EXPECT_NEAR(columnPressure(1, kThickBlood), 78.0, 0.06);
  EXPECT_LT(columnPressure(-1), 0) << "head under the heart";
}

// Aalkjær & Wang 2021, abstract: a mean arterial pressure of about 200 mmHg in giraffes appears necessary for a
// cerebral perfusion pressure on the order of 100 mmHg. A column between them of about 1.3 m says as much.
TEST(PublishedPressure, OfAGiraffesHeart) {
  EXPECT_NEAR(heartPressure(columnPressure(1.3)), 200, 5);
  EXPECT_EQ(heartPressure(columnPressure(-2)), 100) << "a lowered head asks for its perfusion all the same";
}

}  // namespace
}  // namespace zyga::study
