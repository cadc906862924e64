#include "core/range/findings.h"

#include <gtest/gtest.h>

#include <future>

#include "core/range/explain.h"
#include "core/range/limit_search.h"
#include "core/range/neutral.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using anatomy::Side;
using Eigen::Vector3d;
using test::kDegree;
using test::kOnlyJoint;

/// Facets of 60 mm at 200 mm over the centre: dorsiflexion q leaves 1 - 400 mm tan(q/2) / 60 mm of their length.
anatomy::Specimen neck() { return test::twoVertebrae(); }

double angleThatLeaves(double share) { return 2 * std::atan((1 - share) * 0.06 / 0.4); }

JointVerdict judge(const anatomy::Specimen& specimen, const Vector3d& angles, const Assumptions& assumptions = {}) {
  return assessJoint(specimen, articulate(specimen, assumptions), assumptions, kOnlyJoint, angles);
}

/// What explain() says of the same.
Explanation explained(const anatomy::Specimen& specimen, const Vector3d& angles, const Assumptions& assumptions = {}) {
  const auto articulation = articulate(specimen, assumptions);
  const JointVerdict verdict = assessJoint(specimen, articulation, assumptions, kOnlyJoint, angles);
  return explain(specimen, articulation, assumptions, verdict, angles);
}

std::vector<MotionState> motions(const anatomy::Specimen& specimen, const Vector3d& angles) {
  return explained(specimen, angles).motions;
}

Level level(const anatomy::Specimen& specimen, const Vector3d& angles, const Assumptions& assumptions = {}) {
  return levelAt(specimen, articulate(specimen, assumptions), assumptions, kOnlyJoint, angles);
}

anatomy::Specimen typedJoint(std::string id, anatomy::Region region, anatomy::AngleLimits first) {
  anatomy::Specimen specimen = neck();
  anatomy::Joint& joint = specimen.joints[0];
  joint.id = std::move(id);
  joint.kind = anatomy::JointKind::Typed;
  joint.region = region;
  joint.typed = anatomy::TypedLimits{{first, {-10 * kDegree, 10 * kDegree}, {0, 0}}, anatomy::kProgramDefault};
  return specimen;
}

anatomy::Specimen hip() { return typedJoint("hip.L", anatomy::Region::Hindlimb, {-30 * kDegree, 40 * kDegree}); }

/// The postzygs lifted off the prezygs, m; pressed in when negative.
anatomy::Specimen lifted(double by) {
  anatomy::Specimen specimen = neck();
  for (anatomy::Facet& facet : specimen.bones[1].facets) facet.centre.z() += by;
  return specimen;
}

TEST(Findings, levelsFollowTheOverlap) {
  constexpr double kTiny = 1e-6;
  const double limit = angleThatLeaves(0.5);
  const double edge = angleThatLeaves(0.55);  // a tenth of the way from 50 % to full cover
  for (const double sign : {1.0, -1.0}) {
    EXPECT_EQ(level(neck(), {0, 0, 0}), Level::Supported);
    EXPECT_EQ(level(neck(), {sign * (edge - kTiny), 0, 0}), Level::Supported);
    EXPECT_EQ(level(neck(), {sign * (edge + kTiny), 0, 0}), Level::Near);
    EXPECT_EQ(level(neck(), {sign * (limit - kTiny), 0, 0}), Level::Near);
    EXPECT_EQ(level(neck(), {sign * (limit + kTiny), 0, 0}), Level::Beyond);
  }
}

TEST(Findings, aSmallerLeastOverlapSupportsMore) {
  Assumptions assumptions;
  const Vector3d angles(angleThatLeaves(0.3), 0, 0);
  EXPECT_EQ(level(neck(), angles, assumptions), Level::Beyond);
  assumptions.minOverlap = 0.25;
  EXPECT_EQ(level(neck(), angles, assumptions), Level::Near);
  assumptions.minOverlap = 0;
  EXPECT_EQ(level(neck(), angles, assumptions), Level::Supported);
}

TEST(Findings, facetsThatPartAreBeyondEvenWhenNoCoverIsAsked) {
  Assumptions assumptions;
  assumptions.minOverlap = 0;
  EXPECT_EQ(level(neck(), {angleThatLeaves(0.001), 0, 0}, assumptions), Level::Near);
  EXPECT_EQ(level(neck(), {angleThatLeaves(-0.001), 0, 0}, assumptions), Level::Beyond);
}

// Half the length of an ellipse is 39.1 % of its area, and half its area is left at 59.6 % of its length.
TEST(Findings, overlapByAreaJudgesTheArea) {
  const anatomy::Specimen specimen = test::twoVertebrae({.outline = test::Outline::Ellipse});
  const Vector3d angles(angleThatLeaves(0.55), 0, 0);
  Assumptions assumptions;
  EXPECT_EQ(level(specimen, angles, assumptions), Level::Near);
  assumptions.overlapBy = OverlapBy::Area;
  EXPECT_EQ(level(specimen, angles, assumptions), Level::Beyond);
  const JointVerdict verdict = judge(specimen, angles, assumptions);
  ASSERT_EQ(verdict.findings.size(), 2u);
  EXPECT_EQ(verdict.findings[0].measured, verdict.left->overlapArea);
  EXPECT_EQ(verdict.findings[0].limit, 0.5);
}

// Both facets of the cranial bone slipped 86 % of their width to the left: half of their length is still covered, and
// little of their area.
TEST(Findings, aPairShiftedSidewaysDoesNotPass) {
  anatomy::Specimen specimen = test::twoVertebrae({.outline = test::Outline::Ellipse});
  for (anatomy::Facet& facet : specimen.bones[1].facets) facet.centre.y() += 0.86 * facet.width();
  const kinematics::Articulation rest = kinematics::restArticulation(specimen);
  const JointVerdict verdict = assessJoint(specimen, rest, {}, kOnlyJoint, Vector3d::Zero());
  EXPECT_GT(verdict.left->overlapLength, 0.5);
  EXPECT_LT(verdict.left->overlapArea, 0.1);
  EXPECT_NEAR(verdict.left->overlapWidth, 0.14, 0.01);
  EXPECT_EQ(verdict.level, Level::Beyond);
  ASSERT_FALSE(verdict.findings.empty());
  EXPECT_EQ(verdict.findings[0].kind, FindingKind::OverlapAcross);
  EXPECT_EQ(verdict.findings[0].measured, verdict.left->overlapWidth);
  EXPECT_EQ(verdict.findings[0].limit, 0.5);
}

TEST(Findings, beyondNamesSharesLimitAndMotion) {
  const double angle = angleThatLeaves(0.38);
  const JointVerdict verdict = judge(neck(), {angle, 0, 0});
  EXPECT_EQ(verdict.level, Level::Beyond);
  ASSERT_EQ(verdict.findings.size(), 2u);
  EXPECT_EQ(verdict.findings[0].kind, FindingKind::Overlap);
  EXPECT_EQ(verdict.findings[0].side, Side::Left);
  EXPECT_EQ(verdict.findings[1].side, Side::Right);
  EXPECT_NEAR(verdict.findings[0].measured, 0.38, 1e-9);
  EXPECT_EQ(verdict.findings[0].limit, 0.5);
  EXPECT_NEAR(verdict.findings[0].excess, 0.12, 1e-9);
  const auto told = motions(neck(), {angle, 0, 0});
  ASSERT_EQ(told.size(), 1u);
  EXPECT_EQ(told[0].how, MotionState::How::Past);
  EXPECT_EQ(told[0].angle, angle);
  EXPECT_NEAR(told[0].end, angleThatLeaves(0.5), 1e-5);
}

TEST(Findings, nearNamesTheEndAheadAndSupportedHowItIsTurned) {
  const double angle = -angleThatLeaves(0.54);
  EXPECT_EQ(judge(neck(), {angle, 0, 0}).level, Level::Near);
  const auto near = motions(neck(), {angle, 0, 0});
  ASSERT_EQ(near.size(), 1u);
  EXPECT_EQ(near[0].how, MotionState::How::Within);
  EXPECT_NEAR(near[0].end, -angleThatLeaves(0.5), 1e-5);
  const Vector3d raised(angleThatLeaves(0.82), 0, 0);
  EXPECT_TRUE(judge(neck(), raised).findings.empty());
  ASSERT_EQ(motions(neck(), raised).size(), 1u);
  EXPECT_EQ(motions(neck(), raised)[0].how, MotionState::How::Turned);
  EXPECT_TRUE(motions(neck(), Vector3d::Zero()).empty());
}

// Bending right swings the right facet caudally, on top of the dorsiflexion.
TEST(Findings, namesTheSideThatFails) {
  const Vector3d angles(7 * kDegree, -12 * kDegree, 0);
  const JointVerdict verdict = judge(neck(), angles);
  EXPECT_EQ(verdict.level, Level::Beyond);
  for (const Finding& finding : verdict.findings) {
    if (finding.level == Level::Beyond) {
      EXPECT_EQ(finding.side, Side::Right);
    }
  }
  const auto told = motions(neck(), angles);
  ASSERT_EQ(told.size(), 2u);
  EXPECT_EQ(told[0].motion, 0);
  EXPECT_EQ(told[1].motion, 1);
  EXPECT_LT(verdict.right->overlapLength, 0.5);
  EXPECT_GT(verdict.left->overlapLength, 0.5);
}

TEST(Findings, theLimitToldIsTheBandsEnd) {
  const anatomy::Specimen specimen = neck();
  const Assumptions assumptions;
  const auto articulation = articulate(specimen, assumptions);
  const Vector3d angles(7 * kDegree, -12 * kDegree, 0);
  EXPECT_EQ(motions(specimen, angles).at(0).end,
            motionRange(specimen, articulation, assumptions, kOnlyJoint, angles, 0).max);
}

TEST(Findings, saysWhenAnAngleIsTooMuchByItself) {
  // Each of the two is too much already, so that neither has a range left beside the other.
  const auto told = motions(neck(), {9 * kDegree, -80 * kDegree, 0});
  ASSERT_FALSE(told.empty());
  EXPECT_EQ(told[0].how, MotionState::How::PastByItself);
  EXPECT_NEAR(told[0].end, angleThatLeaves(0.5), 1e-5);
}

TEST(Findings, mirrorImagesAreJudgedAlikeWithSidesSwapped) {
  anatomy::Specimen specimen = test::twoVertebrae({.tilt = 40 * kDegree, .outline = test::Outline::Ellipse});
  specimen.bones[1].facets[0].centre += Vector3d(0.006, 0.001, 0.002);
  const anatomy::Specimen mirrored = test::mirroredFacets(specimen);
  for (const double lateral : {-8.0, 0.0, 3.0, 9.0}) {
    const Vector3d angles(5 * kDegree, lateral * kDegree, 2 * kDegree);
    const JointVerdict plain = judge(specimen, angles);
    const JointVerdict other = judge(mirrored, angles.cwiseProduct(Vector3d(1, -1, -1)));
    EXPECT_EQ(plain.level, other.level);
    EXPECT_NEAR(plain.left->overlapLength, other.right->overlapLength, 1e-7);
    EXPECT_NEAR(plain.right->overlapArea, other.left->overlapArea, 1e-7);
    EXPECT_NEAR(plain.left->maxGap, other.right->maxGap, 1e-7);
  }
}

TEST(Findings, facetsThatGapeAreToldInMillimetres) {
  EXPECT_EQ(level(lifted(0.0134), Vector3d::Zero()), Level::Supported);
  EXPECT_EQ(level(lifted(0.0136), Vector3d::Zero()), Level::Near);  // tolerated: a quarter of 60 mm
  const JointVerdict verdict = judge(lifted(0.0204), Vector3d::Zero());
  EXPECT_EQ(verdict.level, Level::Beyond);
  EXPECT_EQ(explained(lifted(0.0204), Vector3d::Zero()).remark, Explanation::Remark::NeutralPose);
  ASSERT_EQ(verdict.findings.size(), 2u);
  EXPECT_EQ(verdict.findings[0].kind, FindingKind::FacetGap);
  EXPECT_NEAR(verdict.findings[0].measured, 0.0204, 1e-9);
  EXPECT_NEAR(verdict.findings[0].limit, 0.015, 1e-9);
}

TEST(Findings, facetsThatPressIntoEachOtherAreToldInMillimetres) {
  EXPECT_EQ(level(lifted(-0.0053), Vector3d::Zero()), Level::Supported);
  EXPECT_EQ(level(lifted(-0.0055), Vector3d::Zero()), Level::Near);  // tolerated: a tenth of 60 mm
  anatomy::Specimen specimen = lifted(-0.008);
  const JointVerdict both = judge(specimen, Vector3d::Zero());
  EXPECT_EQ(both.level, Level::Beyond);
  ASSERT_EQ(both.findings.size(), 2u);
  EXPECT_NEAR(both.findings[0].measured, 0.008, 1e-9);
  specimen.bones[1].facets[0].centre.z() += 0.008;
  const JointVerdict oneSided =
      assessJoint(specimen, kinematics::restArticulation(specimen), {}, kOnlyJoint, Vector3d::Zero());
  EXPECT_EQ(oneSided.findings[0].kind, FindingKind::FacetContact);
  EXPECT_EQ(oneSided.findings[0].side, Side::Right);
  EXPECT_NEAR(oneSided.findings[0].measured, 0.008, 1e-9);
  EXPECT_NEAR(oneSided.findings[0].limit, 0.006, 1e-9);
}

TEST(Findings, centrumGapIsTheCartilage) {
  Assumptions assumptions;
  assumptions.neck = {Cartilage::In::Millimetres, 8};
  assumptions.settling = 0.5;
  EXPECT_NEAR(judge(neck(), Vector3d::Zero(), assumptions).centrumGap, 0.008, 1e-5);
  EXPECT_NEAR(judge(neck(), {5 * kDegree, 0, 0}, assumptions).centrumGap, 0.008, 0.5 * 0.008) << "the bones settle";
  assumptions.settling = 0;
  EXPECT_NEAR(judge(neck(), {5 * kDegree, 0, 0}, assumptions).centrumGap, 0.008, 1e-9);
}

TEST(Findings, typedLimitsAreFindingsOfTheirMotion) {
  const JointVerdict verdict = judge(hip(), {52 * kDegree, 0, 0});
  EXPECT_EQ(verdict.level, Level::Beyond);
  ASSERT_EQ(verdict.findings.size(), 1u);
  EXPECT_EQ(verdict.findings[0].kind, FindingKind::TypedLimit);
  EXPECT_EQ(verdict.findings[0].measured, 52 * kDegree);
  EXPECT_EQ(verdict.findings[0].limit, 40 * kDegree);
  EXPECT_TRUE(motions(hip(), {52 * kDegree, 0, 0}).empty()) << "the finding names its motion";
  const JointVerdict near = judge(hip(), {-28 * kDegree, 0, 0});
  EXPECT_EQ(near.level, Level::Near);
  EXPECT_EQ(near.findings.at(0).limit, -30 * kDegree);
  const auto within = motions(hip(), {12 * kDegree, 0, 0});
  ASSERT_EQ(within.size(), 1u);
  EXPECT_EQ(within[0], (MotionState{0, 12 * kDegree, 40 * kDegree, MotionState::How::Within}));
}

// Near from nine tenths of the way between zero and the end.
TEST(Findings, typedLevelsFollowTheRange) {
  EXPECT_EQ(level(hip(), {35.9 * kDegree, 0, 0}), Level::Supported);
  EXPECT_EQ(level(hip(), {36.1 * kDegree, 0, 0}), Level::Near);
  EXPECT_EQ(level(hip(), {40 * kDegree, 0, 0}), Level::Near);
  EXPECT_EQ(level(hip(), {40.001 * kDegree, 0, 0}), Level::Beyond);
  EXPECT_EQ(level(hip(), {-30.001 * kDegree, 0, 0}), Level::Beyond);
  EXPECT_EQ(level(hip(), {0, 0, 0.001 * kDegree}), Level::Beyond) << "a motion that is not allowed at all";
}

TEST(Findings, aJointWhoseRangeEndsAtZeroRestsThereQuietly) {
  const auto knee = typedJoint("knee.L", anatomy::Region::Hindlimb, {-85 * kDegree, 0});
  EXPECT_EQ(level(knee, Vector3d::Zero()), Level::Supported);
  EXPECT_EQ(level(knee, {-0.1 * kDegree, 0, 0}), Level::Supported);
  EXPECT_EQ(level(knee, {0.1 * kDegree, 0, 0}), Level::Beyond);
}

TEST(Findings, jointsWithFacetsHonourTypedLimitsToo) {
  anatomy::Specimen specimen = neck();
  specimen.joints[0].typed = hip().joints[0].typed;
  specimen.joints[0].typed->angles[0] = {-5 * kDegree, 5 * kDegree};
  EXPECT_EQ(level(specimen, {4 * kDegree, 0, 0}), Level::Supported);
  const JointVerdict verdict = judge(specimen, {6 * kDegree, 0, 0});
  EXPECT_EQ(verdict.level, Level::Beyond);
  ASSERT_EQ(verdict.findings.size(), 1u);
  EXPECT_EQ(verdict.findings[0].limit, 5 * kDegree);
  EXPECT_TRUE(motions(specimen, {6 * kDegree, 0, 0}).empty());
}

TEST(Findings, aJointThatNothingJudgesIsNeverSupported) {
  anatomy::Specimen specimen = neck();
  specimen.joints[0].kind = anatomy::JointKind::Typed;
  for (const double angle : {0.0, 0.1, 3.0}) {
    const JointVerdict verdict = judge(specimen, {angle, 0, 0});
    EXPECT_EQ(verdict.level, Level::NotJudged);
    EXPECT_FALSE(verdict.judged);
  }
}

TEST(Findings, anglesThatAreNoNumbersAreNeverSupported) {
  const double nan = std::nan("");
  EXPECT_EQ(level(neck(), {nan, 0, 0}), Level::Beyond);
  EXPECT_EQ(level(hip(), {0, nan, 0}), Level::Beyond);
}

TEST(Findings, oneSideAloneCanCondemnButNotVouch) {
  anatomy::Specimen specimen = neck();
  specimen.bones[0].facets.pop_back();  // no right prezyg
  EXPECT_EQ(judge(specimen, Vector3d::Zero()).level, Level::NotJudged);
  EXPECT_NE(judge(specimen, Vector3d::Zero()).left, std::nullopt);
  EXPECT_EQ(judge(specimen, Vector3d::Zero()).right, std::nullopt);
  EXPECT_EQ(level(specimen, {12 * kDegree, 0, 0}), Level::Beyond);
}

TEST(Findings, fixedJointsAreLeftOut) {
  anatomy::Specimen specimen = neck();
  specimen.joints.push_back(specimen.joints[0]);
  specimen.joints[0].kind = anatomy::JointKind::Fixed;
  const auto articulation = kinematics::restArticulation(specimen);
  auto pose = kinematics::Pose::neutral(specimen);
  pose.angles[1][0] = 12 * kDegree;
  const Assessment assessment = assess(specimen, articulation, {}, pose);
  ASSERT_EQ(assessment.joints.size(), 1u);
  EXPECT_EQ(assessment.level, Level::Beyond);
  EXPECT_EQ(assessment.find(kOnlyJoint), nullptr);
  ASSERT_NE(assessment.find(kinematics::JointIndex{1}), nullptr);
  EXPECT_EQ(assessment.find(kinematics::JointIndex{1})->level, Level::Beyond);
}

TEST(Findings, areTheSameFromManyThreads) {
  const anatomy::Specimen specimen = test::twoVertebrae({.tilt = 40 * kDegree, .outline = test::Outline::Ellipse});
  const auto toldAt = [&](int i) { return motions(specimen, {0.003 * i, -0.002 * i, 0}); };
  std::vector<std::future<std::vector<MotionState>>> told;
  for (int i = 0; i < 100; ++i) told.push_back(std::async(std::launch::async, toldAt, i));
  for (int i = 0; i < 100; ++i) EXPECT_EQ(told[static_cast<std::size_t>(i)].get(), toldAt(i));
}

TEST(Findings, worstComesFirst) {
  anatomy::Specimen specimen = neck();
  specimen.joints[0].typed = hip().joints[0].typed;
  specimen.joints[0].typed->angles[0] = {-12 * kDegree, 11 * kDegree};
  const JointVerdict verdict = judge(specimen, {10.5 * kDegree, 0, 0});
  ASSERT_EQ(verdict.findings.size(), 3u);
  EXPECT_EQ(verdict.findings[0].level, Level::Beyond);
  EXPECT_EQ(verdict.findings[1].level, Level::Beyond);
  EXPECT_EQ(verdict.findings[2].level, Level::Near);
  EXPECT_EQ(verdict.findings[2].kind, FindingKind::TypedLimit);
}

// One order for the whole program: by level, then by how far past the limit.
TEST(Findings, severityOrdersByLevelThenExcess) {
  EXPECT_TRUE(worse({Level::Beyond, 0.01}, {Level::Near, 5}));
  EXPECT_TRUE(worse({Level::Beyond, 0.2}, {Level::Beyond, 0.1}));
  EXPECT_FALSE(worse({Level::Near, 0.1}, {Level::Near, 0.1}));
  EXPECT_TRUE(worse({Level::Near, -0.5}, {Level::NotJudged, -1}));
}

TEST(Findings, assessingSearchesNothing) {
  const anatomy::Specimen specimen = neck();
  auto pose = kinematics::Pose::neutral(specimen);
  pose[kOnlyJoint][0] = 12 * kDegree;
  const auto articulation = articulate(specimen, Assumptions{});
  const std::uint64_t before = limitSearches();
  const Assessment assessment = assess(specimen, articulation, {}, pose);
  EXPECT_EQ(limitSearches(), before);
  explain(specimen, articulation, {}, assessment.joints.at(0), pose[kOnlyJoint]);
  EXPECT_GT(limitSearches(), before) << "the counter counts";
}

// A joint's level counts the contacts of its own bones, and forgets them when they are gone.
TEST(Findings, contactsOfItsBonesLevelAJoint) {
  const anatomy::Specimen specimen = neck();
  Assessment assessment =
      assess(specimen, articulate(specimen, Assumptions{}), {}, kinematics::Pose::neutral(specimen));
  ContactFinding contact;
  contact.depth = 0.012;
  contact.tolerated = 0.005;
  contact.joint = kOnlyJoint;
  assessment.setContacts(true, {contact});
  const JointVerdict& verdict = assessment.joints.at(0);
  EXPECT_EQ(assessment.level, Level::Beyond);
  EXPECT_EQ(verdict.level, Level::Beyond);
  EXPECT_TRUE(verdict.onlyCollides());
  ASSERT_EQ(verdict.findings.size(), 1u);
  EXPECT_EQ(verdict.findings[0].kind, FindingKind::BoneContact);
  EXPECT_NEAR(verdict.severity().excess, 1.4, 1e-9) << "as a share of what is tolerated";
  contact.joint.reset();
  assessment.setContacts(true, {contact});
  EXPECT_EQ(verdict.level, Level::Supported) << "no joint alone moves these bones against each other";
  EXPECT_EQ(assessment.level, Level::Beyond);
  assessment.setContacts(false, {});
  EXPECT_EQ(assessment.level, Level::Supported);
}

TEST(MotionName, followsTheTradeByRegionAndJoint) {
  const anatomy::Joint column = neck().joints[0];
  EXPECT_EQ(motionName(column, 0, 1), Motion::Dorsiflexion);
  EXPECT_EQ(motionName(column, 0, -1), Motion::Ventriflexion);
  EXPECT_EQ(motionName(column, 1, 1), Motion::LeftLateralFlexion);
  EXPECT_EQ(motionName(column, 2, -1), Motion::AxialRotationRightUp);
  EXPECT_EQ(motionName(hip().joints[0], 0, 1), Motion::Flexion);
  EXPECT_EQ(motionName(hip().joints[0], 1, -1), Motion::Adduction);
  const auto knee = typedJoint("knee.R", anatomy::Region::Hindlimb, {-1, 1});
  EXPECT_EQ(motionName(knee.joints[0], 0, -1), Motion::Flexion) << "the shank swings back as a knee bends";
  const auto jaw = typedJoint("jaw", anatomy::Region::Skull, {-1, 1});
  EXPECT_EQ(motionName(jaw.joints[0], 0, -1), Motion::Opening);
}

}  // namespace
}  // namespace zyga::range
