#include <gtest/gtest.h>

#include "core/kinematics/placement.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "tests/support/two_vertebrae.h"

/// Published values about the joints of necks. Each test names the row's source beside it.
namespace zyga::range {
namespace {

using Eigen::Vector3d;
using test::kDegree;
using test::kOnlyJoint;
using test::TwoVertebrae;

/// How far cartilage of the given thickness (m) turns the neutral pose dorsally, degrees.
double extraExtension(const TwoVertebrae& spec, double cartilage) {
  const anatomy::Specimen specimen = test::twoVertebrae(spec);
  const anatomy::Joint& joint = specimen.joints[0];
  const auto bare = articulate(specimen, kOnlyJoint, 0);
  const auto padded = articulate(specimen, kOnlyJoint, cartilage);
  EXPECT_TRUE(bare.solved && padded.solved);
  return kinematics::jointAngles(joint, bare.rotation.transpose() * padded.rotation)[0] / kDegree;
}

/// The most dorsiflexion that these facets support, degrees.
double limitOf(const TwoVertebrae& spec, double minOverlap) {
  const anatomy::Specimen specimen = test::twoVertebrae(spec);
  Assumptions assumptions;
  assumptions.minOverlap = minOverlap;
  const auto articulation = articulate(specimen, assumptions);
  return motionRange(specimen, articulation, assumptions, kOnlyJoint, Vector3d::Zero(), 0).max / kDegree;
}

double shareAt(const TwoVertebrae& spec, double dorsiflexion) {
  const anatomy::Specimen specimen = test::twoVertebrae(spec);
  return assessJoint(specimen, kinematics::restArticulation(specimen), {}, kOnlyJoint, {dorsiflexion, 0, 0})
      .left->overlapLength;
}

// A1. Taylor 2014, PeerJ 2:e712: cartilage t turns the neutral pose by about t/h rad, h the height of the facets over
// the centre of rotation. The bones part by t along their axes, which opens them by 2 atan(t/2h): the law to within
// (t/h)^3 / 12 (derived), up to t/h = 0.58.
TEST(PublishedNecks, cartilageTurnsTheNeutralPoseByThicknessOverHeight) {
  for (const double tilt : {0.0, 30.0, 60.0}) {
    for (const bool flat : {false, true}) {
      for (const double ratio : {0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.58}) {
        const TwoVertebrae spec{.tilt = tilt * kDegree, .flatFaces = flat};
        const double turned = extraExtension(spec, ratio * spec.height) * kDegree;
        EXPECT_NEAR(turned, 2 * std::atan(ratio / 2), 5e-4) << tilt << " " << ratio;
        EXPECT_NEAR(turned, ratio, ratio * ratio * ratio / 12 + 5e-4) << tilt << " " << ratio;
      }
    }
  }
}

// A2. Taylor & Wedel 2013, PLoS ONE 8(10):e78214: turkey, cartilage 4.56 % of the centrum's length, 15 degrees; the
// facets' height 0.1742 L is derived from the two by the law, from which the bones are 0.09 degrees off.
TEST(PublishedNecks, turkey) {
  const TwoVertebrae spec{.height = 0.1742, .centrumLength = 1};
  EXPECT_NEAR(extraExtension(spec, 0.0456), 15.0, 0.1);
}

// A3. Taylor & Wedel 2013, PLoS ONE 8(10):e78214: facets 11 % longer, limits 11 % larger.
TEST(PublishedNecks, longerFacetsCarryTheJointFurtherInProportion) {
  for (const double least : {0.5, 0.25, 0.0}) {
    const double plain = limitOf({.prezygLength = 0.060, .postzygLength = 0.060}, least);
    const double longer = limitOf({.prezygLength = 0.0666, .postzygLength = 0.0666}, least);
    EXPECT_NEAR(longer / plain, 1.11, 0.0025) << least;
  }
}

// A4. Apatosaurus louisae CM 3018, mean of its joints (L/h = 2.058), Taylor 2014, PeerJ 2:e712: cartilage of 4.5, 10
// and 18 % of centrum length turns a joint by 5.5, 11.8 and 21.2 degrees. The first mean lies off the linear law, the
// others lie on it, which the bones leave by (t/h)^3 / 12.
TEST(PublishedNecks, apatosaurus) {
  const TwoVertebrae spec{.height = 1 / 2.058, .centrumLength = 1};
  EXPECT_NEAR(extraExtension(spec, 0.045), 5.5, 0.3);
  EXPECT_NEAR(extraExtension(spec, 0.10), 11.8, 0.1);
  EXPECT_NEAR(extraExtension(spec, 0.18), 21.2, 0.25);
}

// A8. Derived geometry: equal facets of length L on an arc of radius R reach (1 - s) L / R. Planes instead of arcs
// reach 2 atan((1 - s) L / 2R), which is at most 0.8 % less here; contact of the flat facets is not in question.
TEST(PublishedNecks, facetsSlideOnAnArc) {
  const TwoVertebrae spec{.height = 0.200, .prezygLength = 0.060, .postzygLength = 0.060};
  const std::array<std::pair<double, double>, 3> rows{{{0.50, 8.59}, {0.25, 12.89}, {0.0, 17.19}}};
  for (const auto& [least, expected] : rows) {
    EXPECT_NEAR(limitOf(spec, least), expected, 0.008 * expected) << least;
    EXPECT_NEAR(limitOf(spec, least), 2 * std::atan((1 - least) * 0.060 / 0.400) / kDegree, 0.001) << least;
  }
  const double whole = limitOf(spec, 0.0);
  EXPECT_NEAR(limitOf(spec, 0.50) / whole, 0.50, 0.005);
  EXPECT_NEAR(limitOf(spec, 0.25) / whole, 0.75, 0.005);
}

// A9. Derived; long prezyg facets raise mobility (Vidal et al. 2020, Sci. Rep. 10:6638): nothing is lost until the
// slide R q exceeds half the difference of the lengths.
TEST(PublishedNecks, longPrezygsCostNothingAtFirst) {
  const TwoVertebrae spec{.height = 0.200, .prezygLength = 0.080, .postzygLength = 0.060};
  const double free = 0.5 * (0.080 - 0.060) / 0.200;
  for (const double sign : {1.0, -1.0}) {
    EXPECT_DOUBLE_EQ(shareAt(spec, 0), 1);
    EXPECT_NEAR(shareAt(spec, sign * 0.99 * free), 1, 1e-12);
    EXPECT_LT(shareAt(spec, sign * 1.01 * free), 1);
  }
  EXPECT_GT(limitOf(spec, 0.5), limitOf({.height = 0.200, .prezygLength = 0.060, .postzygLength = 0.060}, 0.5));
}

// A10. Geometry: discs at 50 % overlap by length share 0.391 of their area; ellipses share half their area when shifted
// by 0.4040 of their length.
TEST(PublishedNecks, overlapByLengthAgainstByArea) {
  anatomy::Facet prezyg, postzyg;
  postzyg.normal = -prezyg.normal;
  const auto slid = [&](double length, double width, double shift) {
    prezyg.outline = postzyg.outline = anatomy::ellipseOutline(length, width);
    return facetOverlap(prezyg, postzyg, Eigen::Isometry3d(Eigen::Translation3d(shift * length, 0, 0)));
  };
  const FacetMeeting discs = slid(0.05, 0.05, 0.5);
  EXPECT_NEAR(discs.overlapLength, 0.5, 0.001);
  EXPECT_NEAR(discs.overlapArea, 0.391, 0.001);
  EXPECT_NEAR(slid(0.06, 0.04, 0.4040).overlapArea, 0.5, 0.001);
}

// A11. Kambic et al. 2017, Front. Zool. 14:37: lateral bend is coupled to dorsoventral flexion, so the supported set is
// no box. With facets that slide on an arc the overlap left over is shared between the two: at s of the dorsal limit
// there is no more than about 1 - s of the lateral range left on the side whose facets come apart.
TEST(PublishedNecks, overlapSpentOnDorsiflexionIsGoneForBending) {
  const anatomy::Specimen specimen = test::twoVertebrae();
  const auto articulation = kinematics::restArticulation(specimen);
  const auto from = [&](double dorsiflexion) {
    return limits(specimen, articulation, {}, kOnlyJoint, {dorsiflexion, 0, 0});
  };
  const JointLimits neutral = from(0);
  const double most = neutral[Direction::Dorsal].angle;
  for (const double spent : {0.25, 0.5, 0.75, 0.95}) {
    const JointLimits raised = from(spent * most);
    EXPECT_NEAR(raised[Direction::Left].angle / neutral[Direction::Left].angle, 1 - spent, 0.05) << spent;
    EXPECT_NEAR(raised[Direction::Dorsal].angle, most, 1e-9) << "its own motion starts from neutral";
  }
}

// A17. Derived: 20 degrees up and then 20 left, against the reverse order, differ by a rotation of 6.912 degrees. The
// model's order is the standard one, dorsiflexion first (Grood & Suntay 1983; Wu et al. 2002).
TEST(PublishedNecks, orderOfTheMotionsMatters) {
  const anatomy::Joint joint = test::twoVertebrae().joints[0];
  const Eigen::Matrix3d up = kinematics::jointRotation(joint, {20 * kDegree, 0, 0});
  const Eigen::Matrix3d left = kinematics::jointRotation(joint, {0, 20 * kDegree, 0});
  const Eigen::Matrix3d upThenLeft = kinematics::jointRotation(joint, {20 * kDegree, 20 * kDegree, 0});
  EXPECT_TRUE(upThenLeft.isApprox(up * left, 1e-12));
  EXPECT_NEAR(Eigen::AngleAxisd(upThenLeft.transpose() * left * up).angle() / kDegree, 6.912, 0.0005);
}

}  // namespace
}  // namespace zyga::range
