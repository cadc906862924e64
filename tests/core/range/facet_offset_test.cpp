// What facets that stand before or behind the centre of rotation do to a range, and what curved ones do to the gap.
#include <gtest/gtest.h>

#include "core/anatomy/plan/build_specimen.h"
#include "core/range/facet_pair.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using anatomy::Measure;
using test::kDegree;

/// C7-C8 of the high browser, the facets of C8 moved forward by a share of its length and those of C7 with them. No
/// cartilage, nothing settles, no axial rotation.
JointLimits limitsWithOffset(double share) {
  anatomy::MeasurementTable table = test::tableOfTheOtherImplementation();
  anatomy::TableRow* c8 = table.find(*anatomy::parseBoneId("C8"));
  if (share != 0)
    c8->measures[Measure::FacetOffset] = {
        share * c8->measures.value(Measure::Length), anatomy::CellOrigin::Measured, {}};
  const anatomy::Specimen specimen = anatomy::buildSpecimen(anatomy::fillBlanks(table));
  Assumptions assumptions;
  assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = 0;
  assumptions.settling = 0;
  kinematics::Articulation articulation = articulate(specimen, assumptions);
  for (auto& rest : articulation.rests) rest.axialTyped = true;
  const auto joint = *specimen.findJoint("C7-C8");
  return limits(specimen, articulation, assumptions, joint, Eigen::Vector3d::Zero());
}

double degreesOf(const JointLimits& limits, Direction direction) {
  return signOf(direction) * limits[direction].angle / kDegree;
}

// Source: an independent implementation in another language (a review of the model, item 3), ventral 12.3 / 12.3 / 8.0
// and lateral 23.0 / 14.3 / 9.2 degrees at offsets of 0 / 0.05 / 0.10 of the length, printed to a tenth. Ends that the
// overlap sets agree to that. Lateral ends over an offset are set by facets that press into each other: here the depth
// is read at every corner of the shared area; where the other reads it is not told, and it ends a little later. A tenth
// of the range covers that (12.97 and 8.75 here).
TEST(FacetOffset, ForwardFacetsShortenVentralAndLateralRanges) {
  const double share[] = {0, 0.05, 0.10}, ventral[] = {12.3, 12.3, 8.0}, lateral[] = {23.0, 14.3, 9.2};
  double before = 90;
  for (int i = 0; i < 3; ++i) {
    const JointLimits found = limitsWithOffset(share[i]);
    EXPECT_NEAR(degreesOf(found, Direction::Ventral), ventral[i], 0.1) << share[i];
    for (const Direction direction : {Direction::Left, Direction::Right}) {
      const bool pressed = found[direction].stop.kind == FindingKind::FacetContact;
      EXPECT_EQ(pressed, i > 0) << share[i];
      EXPECT_NEAR(degreesOf(found, direction), lateral[i], pressed ? 0.1 * lateral[i] : 0.1) << share[i];
      EXPECT_LT(degreesOf(found, direction), before) << share[i];
    }
    before = degreesOf(found, Direction::Left);
  }
}

/// A pair of equal facets, one laid on the other, slid by s along the slide, turned by `turn` about its centre's
/// transverse axis (front down) and lowered by `drop`.
FacetMeasures slid(double radius, double s, double turn, double drop) {
  anatomy::Facet prezyg, postzyg;
  postzyg.normal = -prezyg.normal;
  prezyg.outline = postzyg.outline = anatomy::ellipseOutline(0.060, 0.040);
  prezyg.radius = postzyg.radius = radius;
  Eigen::Isometry3d X_PrePost = Eigen::Isometry3d::Identity();
  X_PrePost.translation() = Eigen::Vector3d(s, 0, -drop);
  X_PrePost.linear() = Eigen::AngleAxisd(turn, Eigen::Vector3d::UnitY()).toRotationMatrix();
  return FacetPair(prezyg, postzyg).measure(X_PrePost);
}

// On a circle of radius R a slide by s is a turn by asin(s/R) that drops the centre by R - sqrt(R^2 - s^2).
TEST(FacetCurvature, FacetsOfOneCurvatureSlideOnTheirCurve) {
  for (const double R : {0.200, -0.200}) {
    for (const double s : {0.005, 0.010, 0.020}) {
      const double turn = std::asin(s / R), drop = std::copysign(std::abs(R) - std::sqrt(R * R - s * s), R);
      const FacetMeasures curved = slid(R, s, turn, drop), flat = slid(0, s, turn, drop);
      const double bound = 2 * s * s * s / (R * R) + 0.04 * s * s / std::abs(R);
      EXPECT_NEAR(curved.minGap, 0, bound) << R << " " << s;
      EXPECT_NEAR(curved.maxGap, 0, bound) << R << " " << s;
      EXPECT_GT(flat.maxGap - flat.minGap, 5 * (curved.maxGap - curved.minGap)) << "flat ones gape or press";
      EXPECT_EQ(curved.overlapLength, flat.overlapLength);
    }
  }
}

TEST(FacetCurvature, AFlatFacetOnARoundOneTouchesInTheMiddle) {
  anatomy::Facet prezyg, postzyg;
  postzyg.normal = -prezyg.normal;
  prezyg.outline = postzyg.outline = anatomy::ellipseOutline(0.060, 0.040);
  prezyg.radius = 0.300;
  const FacetMeasures found = FacetPair(prezyg, postzyg).measure(Eigen::Isometry3d::Identity());
  EXPECT_NEAR(found.maxGap, 0.030 * 0.030 / (2 * 0.300), 1e-12) << "at its ends: half length squared over 2R";
  EXPECT_NEAR(found.minGap, 0, 1e-4);
}

}  // namespace
}  // namespace zyga::range
