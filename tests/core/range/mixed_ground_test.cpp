// A marked scan beside a bone whose facets are inferred: not assessed, unless the assumptions say so.
#include "core/range/mixed_ground.h"

#include <gtest/gtest.h>

#include "core/range/limits.h"
#include "core/range/scenario.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using test::kDegree;
using test::kOnlyJoint;

anatomy::Specimen withScanned(std::initializer_list<std::size_t> bones, bool tail = false) {
  anatomy::Specimen specimen = test::twoVertebrae({.tail = tail});
  for (const std::size_t bone : bones) specimen.bones[bone].scanned = true;
  return specimen;
}

Scenario posed(const anatomy::Specimen& specimen, double degrees, const Assumptions& assumptions = {}) {
  kinematics::Pose pose = kinematics::Pose::neutral(specimen);
  pose[kOnlyJoint].x() = degrees * kDegree;
  return {std::make_shared<const anatomy::Specimen>(specimen), assumptions, pose};
}

TEST(MixedGround, isWhereOneBoneAloneIsAMarkedScan) {
  for (const bool tail : {false, true}) {
    EXPECT_EQ(inferredNeighbour(withScanned({}, tail), kOnlyJoint), std::nullopt);
    EXPECT_EQ(inferredNeighbour(withScanned({0, 1}, tail), kOnlyJoint), std::nullopt);
    EXPECT_EQ(inferredNeighbour(withScanned({0}, tail), kOnlyJoint), anatomy::BoneIndex{1});
    EXPECT_EQ(inferredNeighbour(withScanned({1}, tail), kOnlyJoint), anatomy::BoneIndex{0});
  }
  anatomy::Specimen unmarked = withScanned({0});
  unmarked.bones[0].facets.clear();
  EXPECT_EQ(inferredNeighbour(unmarked, kOnlyJoint), std::nullopt) << "its facets are missing: that is told instead";
}

TEST(MixedGround, isNotAssessedHoweverFarTheJointIsTurned) {
  for (const double degrees : {0.0, 3.0, 60.0}) {
    const Scenario mixed = posed(withScanned({0}), degrees);
    const JointVerdict& verdict = mixed.assessment().joints.front();
    EXPECT_EQ(verdict.level, Level::NotJudged) << degrees;
    EXPECT_TRUE(verdict.findings.empty());
    EXPECT_EQ(verdict.articulation.inferredNeighbour, anatomy::BoneIndex{1});
    EXPECT_FALSE(verdict.articulation.good());
    EXPECT_EQ(
        levelAt(mixed.specimen(), mixed.articulation(), mixed.assumptions(), kOnlyJoint, mixed.pose()[kOnlyJoint]),
        Level::NotJudged);
    EXPECT_FALSE(mixed.limits(kOnlyJoint).judged);
    EXPECT_FALSE(mixed.motionRange(kOnlyJoint, 0).judged);
    EXPECT_TRUE(mixed.explain(verdict).motions.empty());
  }
}

// The same joint with both bones scanned, neither, or by choice, is judged as ever.
TEST(MixedGround, isAssessedByChoiceAndSaysSo) {
  Assumptions accepted;
  accepted.inferredNeighbours = true;
  for (const double degrees : {0.0, 3.0, 60.0}) {
    const Scenario plain = posed(withScanned({}), degrees);
    const Scenario chosen = posed(withScanned({0}), degrees, accepted);
    const JointVerdict& verdict = chosen.assessment().joints.front();
    EXPECT_EQ(verdict.level, plain.assessment().joints.front().level) << degrees;
    EXPECT_EQ(verdict.findings.size(), plain.assessment().joints.front().findings.size());
    EXPECT_TRUE(verdict.articulation.inferredNeighbour.has_value()) << "it is still told";
    EXPECT_EQ(chosen.motionRange(kOnlyJoint, 0).max, plain.motionRange(kOnlyJoint, 0).max);
    EXPECT_TRUE(chosen.limits(kOnlyJoint).judged);
    EXPECT_EQ(posed(withScanned({0, 1}), degrees).assessment().level, plain.assessment().level);
  }
}

}  // namespace
}  // namespace zyga::range
