#include "core/range/findings.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <future>

#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using anatomy::Side;
using Eigen::Vector3d;
using test::kDegree;
using test::kOnlyJoint;
using ::testing::HasSubstr;
using ::testing::Not;

/// Facets of 60 mm at 200 mm over the centre: dorsiflexion q leaves 1 - 400 mm tan(q/2) / 60 mm of their length.
anatomy::Specimen neck() { return test::twoVertebrae(); }

double angleThatLeaves(double share) { return 2 * std::atan((1 - share) * 0.06 / 0.4); }

JointVerdict judge(const anatomy::Specimen& specimen, const Vector3d& angles, const Assumptions& assumptions = {}) {
  return assessJoint(specimen, articulate(specimen, assumptions), assumptions, kOnlyJoint, angles);
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
  joint.typed = anatomy::TypedLimits{{first, {-10 * kDegree, 10 * kDegree}, {0, 0}}, "author's choice"};
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
  assumptions.leastOverlap = 0.25;
  EXPECT_EQ(level(neck(), angles, assumptions), Level::Near);
  assumptions.leastOverlap = 0;
  EXPECT_EQ(level(neck(), angles, assumptions), Level::Supported);
}

TEST(Findings, facetsThatPartAreBeyondEvenWhenNoCoverIsAsked) {
  Assumptions assumptions;
  assumptions.leastOverlap = 0;
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
  EXPECT_THAT(judge(specimen, angles, assumptions).sentence, HasSubstr("right of area (least 50 %)"));
}

TEST(Findings, sentenceBeyondNamesSharesLimitAndMotion) {
  const JointVerdict verdict = judge(neck(), {angleThatLeaves(0.38), 0, 0});
  EXPECT_EQ(verdict.level, Level::Beyond);
  EXPECT_EQ(verdict.sentence,
            "C6-C7 beyond: facets share 38 % left, 38 % right (least 50 %), dorsiflexion 10.6° of 8.6°");
  ASSERT_EQ(verdict.findings.size(), 2u);
  EXPECT_EQ(verdict.findings[0].text, "left facets share 38 % (least 50 %)");
  EXPECT_EQ(verdict.findings[0].kind, FindingKind::Overlap);
  EXPECT_NEAR(verdict.findings[0].measured, 0.38, 1e-9);
  EXPECT_EQ(verdict.findings[0].limit, 0.5);
}

TEST(Findings, sentenceNearAndSupported) {
  EXPECT_EQ(judge(neck(), {-angleThatLeaves(0.54), 0, 0}).sentence,
            "C6-C7 near the edge: facets share 54 % left, 54 % right (least 50 %), ventriflexion 7.9° of 8.6°");
  const JointVerdict supported = judge(neck(), {angleThatLeaves(0.82), 0, 0});
  EXPECT_EQ(supported.sentence, "C6-C7 supported: facets share 82 % left, 82 % right, dorsiflexion 3.1°");
  EXPECT_TRUE(supported.findings.empty());
  EXPECT_EQ(judge(neck(), Vector3d::Zero()).sentence, "C6-C7 supported: facets share 100 % left, 100 % right");
}

TEST(Findings, neverTellsTwoEqualNumbersApartByWordsOnly) {
  const JointVerdict verdict = judge(neck(), {angleThatLeaves(0.4999), 0, 0});
  EXPECT_THAT(verdict.sentence, HasSubstr("49.99 % left"));
  EXPECT_THAT(verdict.sentence, HasSubstr("dorsiflexion 8.58° of 8.57"));
}

// Bending right swings the right facet caudally, on top of the dorsiflexion.
TEST(Findings, namesTheSideThatFails) {
  const JointVerdict verdict = judge(neck(), {7 * kDegree, -12 * kDegree, 0});
  EXPECT_EQ(verdict.level, Level::Beyond);
  EXPECT_THAT(verdict.sentence, HasSubstr("C6-C7 beyond: right facets share "));
  EXPECT_THAT(verdict.sentence, Not(HasSubstr("left facets")));
  EXPECT_THAT(verdict.sentence, HasSubstr("dorsiflexion 7° of "));
  EXPECT_THAT(verdict.sentence, HasSubstr("right bend 12° of "));
  EXPECT_LT(verdict.right->overlapLength, 0.5);
  EXPECT_GT(verdict.left->overlapLength, 0.5);
}

TEST(Findings, theAngleAfterOfIsTheBandsEnd) {
  const anatomy::Specimen specimen = neck();
  const Assumptions assumptions;
  const auto articulation = articulate(specimen, assumptions);
  const Vector3d angles(7 * kDegree, -12 * kDegree, 0);
  const double end = band(specimen, articulation, assumptions, kOnlyJoint, angles, 0).most;
  const std::string text = std::to_string(std::round(end / kDegree * 10) / 10).substr(0, 3);
  EXPECT_THAT(judge(specimen, angles).sentence, HasSubstr("dorsiflexion 7° of " + text + "°"));
}

TEST(Findings, saysWhenAnAngleIsTooMuchByItself) {
  // Each of the two is too much already, so that neither has a range left beside the other.
  const JointVerdict verdict = judge(neck(), {9 * kDegree, -80 * kDegree, 0});
  EXPECT_THAT(verdict.sentence, HasSubstr("dorsiflexion 9° of 8.6° by itself"));
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
    EXPECT_NEAR(plain.left->gapMost, other.right->gapMost, 1e-7);
  }
}

TEST(Findings, facetsThatGapeAreToldInMillimetres) {
  EXPECT_EQ(level(lifted(0.0134), Vector3d::Zero()), Level::Supported);
  EXPECT_EQ(level(lifted(0.0136), Vector3d::Zero()), Level::Near);  // tolerated: a quarter of 60 mm
  const JointVerdict verdict = judge(lifted(0.0204), Vector3d::Zero());
  EXPECT_EQ(verdict.level, Level::Beyond);
  EXPECT_EQ(verdict.sentence,
            "C6-C7 beyond: facets gape 20.4 mm left, 20.4 mm right (tolerated 15 mm), in the neutral pose");
  EXPECT_EQ(verdict.findings[0].kind, FindingKind::FacetGap);
  EXPECT_NEAR(verdict.findings[0].measured, 0.0204, 1e-9);
}

TEST(Findings, facetsThatPressIntoEachOtherAreToldInMillimetres) {
  EXPECT_EQ(level(lifted(-0.0053), Vector3d::Zero()), Level::Supported);
  EXPECT_EQ(level(lifted(-0.0055), Vector3d::Zero()), Level::Near);  // tolerated: a tenth of 60 mm
  anatomy::Specimen specimen = lifted(-0.008);
  EXPECT_EQ(judge(specimen, Vector3d::Zero()).sentence,
            "C6-C7 beyond: facets press 8 mm left, 8 mm right into each other (tolerated 6 mm), in the neutral pose");
  specimen.bones[1].facets[0].centre.z() += 0.008;
  const JointVerdict oneSided =
      assessJoint(specimen, kinematics::restArticulation(specimen), {}, kOnlyJoint, Vector3d::Zero());
  EXPECT_EQ(oneSided.findings[0].text, "right facets press 8 mm into each other (tolerated 6 mm)");
}

TEST(Findings, centrumGapIsTheCartilage) {
  Assumptions assumptions;
  assumptions.neck = {Cartilage::In::Millimetres, 8};
  EXPECT_NEAR(judge(neck(), Vector3d::Zero(), assumptions).centrumGap, 0.008, 1e-5);
  EXPECT_NEAR(judge(neck(), {5 * kDegree, 0, 0}, assumptions).centrumGap, 0.008, 1e-5);
}

TEST(Findings, typedLimitsSayWhoChoseThem) {
  const JointVerdict verdict = judge(hip(), {52 * kDegree, 0, 0});
  EXPECT_EQ(verdict.level, Level::Beyond);
  EXPECT_EQ(verdict.sentence, "hip.L beyond: flexion 52° of 40° (author's choice)");
  ASSERT_EQ(verdict.findings.size(), 1u);
  EXPECT_EQ(verdict.findings[0].kind, FindingKind::TypedLimit);
  EXPECT_EQ(judge(hip(), {-28 * kDegree, 0, 0}).sentence,
            "hip.L near the edge: extension 28° of 30° (author's choice)");
  EXPECT_EQ(judge(hip(), {12 * kDegree, 0, 0}).sentence, "hip.L supported: flexion 12° of 40° (author's choice)");
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
  EXPECT_EQ(judge(specimen, {6 * kDegree, 0, 0}).sentence, "C6-C7 beyond: dorsiflexion 6° of 5° (author's choice)");
}

TEST(Findings, aJointThatNothingJudgesIsNeverSupported) {
  anatomy::Specimen specimen = neck();
  specimen.joints[0].kind = anatomy::JointKind::Typed;
  for (const double angle : {0.0, 0.1, 3.0}) {
    const JointVerdict verdict = judge(specimen, {angle, 0, 0});
    EXPECT_EQ(verdict.level, Level::NotJudged);
    EXPECT_EQ(verdict.sentence, "C6-C7 not judged: no facets and no typed limits");
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
  EXPECT_EQ(judge(specimen, Vector3d::Zero()).sentence, "C6-C7 not judged: the right facets are not known");
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
  const auto sentenceAt = [&](int i) { return judge(specimen, {0.003 * i, -0.002 * i, 0}).sentence; };
  std::vector<std::future<std::string>> told;
  for (int i = 0; i < 100; ++i) told.push_back(std::async(std::launch::async, sentenceAt, i));
  for (int i = 0; i < 100; ++i) EXPECT_EQ(told[static_cast<std::size_t>(i)].get(), sentenceAt(i));
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

TEST(MotionName, followsTheTradeByRegionAndJoint) {
  const anatomy::Joint column = neck().joints[0];
  EXPECT_EQ(motionName(column, 0, 1), "dorsiflexion");
  EXPECT_EQ(motionName(column, 0, -1), "ventriflexion");
  EXPECT_EQ(motionName(column, 1, 1), "left bend");
  EXPECT_EQ(motionName(column, 2, -1), "right-up torsion");
  EXPECT_EQ(motionName(hip().joints[0], 0, 1), "flexion");
  EXPECT_EQ(motionName(hip().joints[0], 1, -1), "adduction");
  const auto knee = typedJoint("knee.R", anatomy::Region::Hindlimb, {-1, 1});
  EXPECT_EQ(motionName(knee.joints[0], 0, -1), "flexion") << "the shank swings back as a knee bends";
  const auto jaw = typedJoint("jaw", anatomy::Region::Skull, {-1, 1});
  EXPECT_EQ(motionName(jaw.joints[0], 0, -1), "opening");
}

}  // namespace
}  // namespace zyga::range
