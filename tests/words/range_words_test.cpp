#include "ui/words/range_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/range/neutral.h"
#include "tests/support/two_vertebrae.h"
#include "ui/words/assumption_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::FacetRole;
using Eigen::Vector3d;
using range::Assumptions;
using range::Level;
using test::kDegree;
using test::kOnlyJoint;
using ::testing::HasSubstr;
using ::testing::Not;

/// As people read it, with plain spaces where lines may not break.
std::string read(QString words) { return words.replace(QChar(0xA0), QLatin1Char(' ')).toStdString(); }

/// Facets of 60 mm at 200 mm over the centre: dorsiflexion q leaves 1 - 400 mm tan(q/2) / 60 mm of their length.
anatomy::Specimen neck() { return test::twoVertebrae(); }

double angleThatLeaves(double share) { return 2 * std::atan((1 - share) * 0.06 / 0.4); }

std::string sentence(const anatomy::Specimen& specimen, const Vector3d& angles, const Assumptions& assumptions = {}) {
  auto pose = kinematics::Pose::neutral(specimen);
  pose[kOnlyJoint] = angles;
  const range::Scenario scenario(std::make_shared<const anatomy::Specimen>(specimen), assumptions, pose);
  return read(verdictSentence(scenario, scenario.assessment().joints.at(0)));
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

TEST(RangeWords, outOfRangeNamesSharesLimitAndMotion) {
  EXPECT_EQ(sentence(neck(), {angleThatLeaves(0.38), 0, 0}),
            "C6-C7 out of range: zygapophyseal overlap 38 % left, 38 % right (minimum 50 %), dorsiflexion 10.6° "
            "(limit 8.6°)");
}

TEST(RangeWords, nearLimitAndWithinRange) {
  EXPECT_EQ(sentence(neck(), {-angleThatLeaves(0.54), 0, 0}),
            "C6-C7 near limit: zygapophyseal overlap 54 % left, 54 % right (minimum 50 %), ventriflexion 7.9° "
            "(limit 8.6°)");
  EXPECT_EQ(sentence(neck(), {angleThatLeaves(0.82), 0, 0}),
            "C6-C7 within range: zygapophyseal overlap 82 % left, 82 % right, dorsiflexion 3.1°");
  EXPECT_EQ(sentence(neck(), Vector3d::Zero()), "C6-C7 within range: zygapophyseal overlap 100 % left, 100 % right");
}

TEST(RangeWords, neverTellsTwoEqualNumbersApartByWordsOnly) {
  const std::string words = sentence(neck(), {angleThatLeaves(0.4999), 0, 0});
  EXPECT_THAT(words, HasSubstr("49.99 % left"));
  EXPECT_THAT(words, HasSubstr("dorsiflexion 8.580° (limit 8.578°)"));
}

TEST(RangeWords, namesTheSideThatFailsAndEachMotion) {
  const std::string words = sentence(neck(), {7 * kDegree, -12 * kDegree, 0});
  EXPECT_THAT(words, HasSubstr("C6-C7 out of range: right zygapophyseal overlap "));
  EXPECT_THAT(words, Not(HasSubstr("left zyga")));
  EXPECT_THAT(words, HasSubstr("dorsiflexion 7.0° (limit "));
  EXPECT_THAT(words, HasSubstr("right lateral flexion 12.0° (limit "));
}

TEST(RangeWords, saysWhenAnAngleIsTooMuchByItself) {
  EXPECT_THAT(sentence(neck(), {9 * kDegree, -80 * kDegree, 0}), HasSubstr("dorsiflexion 9.0° (limit 8.6° by itself)"));
}

TEST(RangeWords, overlapByAreaSaysSo) {
  const anatomy::Specimen specimen = test::twoVertebrae({.outline = test::Outline::Ellipse});
  Assumptions assumptions;
  assumptions.overlapBy = range::OverlapBy::Area;
  EXPECT_THAT(sentence(specimen, {angleThatLeaves(0.55), 0, 0}, assumptions),
              HasSubstr("zygapophyseal overlap by area "));
}

TEST(RangeWords, facetsSeparateAndInterpenetrateInMillimetres) {
  EXPECT_EQ(sentence(lifted(0.0204), Vector3d::Zero()),
            "C6-C7 out of range: facets separate by 20.4 mm left, 20.4 mm right (tolerated 15.0 mm), in the neutral "
            "pose");
  EXPECT_EQ(sentence(lifted(-0.008), Vector3d::Zero()),
            "C6-C7 out of range: facets interpenetrate by 8.0 mm left, 8.0 mm right (tolerated 6.0 mm), in the "
            "neutral pose");
  const range::Finding right{
      range::FindingKind::FacetContact, anatomy::Side::Right, 0, 0.008, 0.006, Level::Beyond, 0.03, std::nullopt};
  EXPECT_EQ(read(findingWords(neck(), {}, kOnlyJoint, right)),
            "right facets interpenetrate by 8.0 mm (tolerated 6.0 mm)");
}

TEST(RangeWords, typedLimitsSayWhereTheyComeFrom) {
  EXPECT_EQ(sentence(hip(), {52 * kDegree, 0, 0}),
            "hip.L out of range: flexion 52.0° (limit 40.0°, program default, no source)");
  EXPECT_EQ(sentence(hip(), {-28 * kDegree, 0, 0}),
            "hip.L near limit: extension 28.0° (limit 30.0°, program default, no source)");
  EXPECT_EQ(sentence(hip(), {12 * kDegree, 0, 0}),
            "hip.L within range: flexion 12.0° (limit 40.0°, program default, no source)");
  anatomy::Specimen cited = hip();
  cited.joints[0].typed->source = "measured on the mount";
  EXPECT_THAT(sentence(cited, {52 * kDegree, 0, 0}), HasSubstr("(limit 40.0°, measured on the mount)"));
  anatomy::Specimen both = neck();
  both.joints[0].typed = hip().joints[0].typed;
  both.joints[0].typed->angles[0] = {-5 * kDegree, 5 * kDegree};
  EXPECT_EQ(sentence(both, {6 * kDegree, 0, 0}),
            "C6-C7 out of range: dorsiflexion 6.0° (limit 5.0°, program default, no source)");
}

TEST(RangeWords, whatIsNotAssessedSaysWhy) {
  anatomy::Specimen bare = neck();
  bare.joints[0].kind = anatomy::JointKind::Typed;
  EXPECT_EQ(sentence(bare, {0.1, 0, 0}), "C6-C7 not assessed: no facets and no typed limits");
  anatomy::Specimen oneSided = neck();
  oneSided.bones[0].facets.pop_back();  // no right prezyg
  EXPECT_EQ(sentence(oneSided, Vector3d::Zero()), "C6-C7 not assessed: the right facets are not known");
}

TEST(RangeWords, bonesCollideWhereNothingElseIsWrong) {
  const anatomy::Specimen specimen = neck();
  range::Assessment assessment =
      range::assess(specimen, range::articulate(specimen, Assumptions{}), {}, kinematics::Pose::neutral(specimen));
  range::ContactFinding contact;
  contact.bone = {0};
  contact.other = {1};
  contact.parts = {{{0}, range::BonePart::Spine}, {{1}, range::BonePart::Spine}};
  contact.depth = 0.012;
  contact.tolerated = 0.005;
  contact.joint = kOnlyJoint;
  assessment.setContacts(true, {contact});
  EXPECT_EQ(read(stateWords(assessment.joints.at(0))), "bones collide");
  EXPECT_EQ(read(contactWords(specimen, contact)), "spines of C6 and C7 interpenetrate by 12.0 mm (tolerated 5.0 mm)");
  EXPECT_EQ(read(verdictSentence(specimen, {}, assessment.joints.at(0), {})),
            "C6-C7 bones collide: spines of C6 and C7 interpenetrate by 12.0 mm (tolerated 5.0 mm)");
}

TEST(RangeWords, partsAreNamedInOrderAlongTheColumn) {
  using range::BonePart;
  const anatomy::Specimen specimen = neck();  // bone 0 is C7, bone 1 is C6
  EXPECT_EQ(read(partsWords(specimen, {{{0}, BonePart::Rib}, {{1}, BonePart::Rib}})), "ribs of C6 and C7");
  EXPECT_EQ(read(partsWords(specimen, {{{1}, BonePart::Rib}, {{0}, BonePart::Centrum}})),
            "rib of C6 and centrum of C7");
  EXPECT_EQ(read(partsWords(specimen, {{{0}, BonePart::Bone}, {{1}, BonePart::Bone}})), "C7 and C6");
}

TEST(RangeWords, stopsSayWhatIsReached) {
  const anatomy::Specimen specimen = neck();
  const auto articulation = range::articulate(specimen, Assumptions{});
  const auto stop = [&](const Vector3d& angles, int motion) {
    return range::motionRange(specimen, articulation, {}, kOnlyJoint, angles, motion).maxStop;
  };
  EXPECT_EQ(read(stopWords(specimen, kOnlyJoint, stop(Vector3d::Zero(), 0))),
            "zygapophyseal overlap 50 % on both sides");
  const range::Stop left = stop({7 * kDegree, 0, 0}, 1);
  EXPECT_EQ(read(stopWords(specimen, kOnlyJoint, left)), "left zygapophyseal overlap 50 %");
  EXPECT_EQ(read(stopWords(specimen, kOnlyJoint, left, StopSide::Same)), "zygapophyseal overlap 50 % on that side");
  EXPECT_EQ(read(stopWords(hip(), kOnlyJoint,
                           {range::Stop::Why::Criterion, range::FindingKind::TypedLimit, anatomy::Side::Midline,
                            -30 * kDegree, std::nullopt})),
            "limit −30.0° (program default, no source)");
  EXPECT_EQ(read(stopWords(specimen, {kOnlyJoint, 0, 1, 7.1 * kDegree, left})),
            "C6-C7 dorsiflexion 7.1°: left zygapophyseal overlap 50 %");
}

TEST(RangeWords, articulationSaysWhatIsWrong) {
  const auto said = [](const anatomy::Specimen& specimen) {
    const auto rest = range::articulate(specimen, kOnlyJoint, 0);
    return read(articulationWords(specimen, kOnlyJoint, range::articulationNote(specimen, kOnlyJoint, rest)));
  };
  EXPECT_EQ(said(neck()), "");
  anatomy::Specimen missing = neck();
  missing.bones[1].facets.erase(missing.bones[1].facets.begin());
  EXPECT_EQ(said(missing), "C6-C7 cannot be articulated: C6 has no left postzygapophyseal facet");
  anatomy::Specimen turned = neck();
  for (anatomy::Facet& facet : turned.bones[1].facets) facet.normal = -facet.normal;
  EXPECT_EQ(said(turned), "C6-C7 cannot be articulated: the facets of C6 and C7 face the same way");
  anatomy::Specimen crushed = neck();
  for (anatomy::Facet& facet : crushed.bones[1].facets) facet.centre.y() *= 1.5;  // 25 mm farther out on either side
  EXPECT_EQ(said(crushed), "C6-C7: poor articulation, facet centres 25.0 mm apart");
  anatomy::Specimen mixed = neck();
  mixed.bones[0].scanned = true;
  EXPECT_EQ(said(mixed),
            "C6-C7: C7 is a scan, the facets of C6 are inferred; a verdict on the joint is one against an inferred "
            "neighbour");
}

TEST(RangeWords, aScanBesideInferredFacetsIsNotAssessedOrSaysWhatItIsAssessedAgainst) {
  anatomy::Specimen specimen = neck();
  specimen.bones[1].scanned = true;
  const auto said = [&](const Assumptions& assumptions) {
    const range::Scenario scenario(std::make_shared<const anatomy::Specimen>(specimen), assumptions,
                                   kinematics::Pose::neutral(specimen));
    return read(verdictSentence(scenario, scenario.assessment().joints.front()));
  };
  EXPECT_EQ(said({}), "C6-C7 not assessed: a scan beside a bone whose facets are inferred");
  Assumptions accepted;
  accepted.inferredNeighbours = true;
  EXPECT_THAT(said(accepted), testing::EndsWith("assessed against an inferred neighbour"));
  EXPECT_THAT(said(accepted), testing::StartsWith("C6-C7 within range: "));
}

TEST(AssumptionWords, areTheRuleAndTheCartilage) {
  Assumptions assumptions;
  EXPECT_EQ(read(assumptionsInShort(assumptions)), "at least 50 % overlap (by length), 0 % cartilage");
  assumptions.overlapBy = range::OverlapBy::Area;
  assumptions.neck = {range::Cartilage::In::PercentOfCentrum, 4.56};
  assumptions.tail = {range::Cartilage::In::Millimetres, 12};
  EXPECT_EQ(read(assumptionsInShort(assumptions)), "at least 50 % overlap (by area), 4.56 % / 0 % / 12 mm cartilage");
}

TEST(AssumptionWords, contactIsOfTheBoneOrInMillimetres) {
  EXPECT_EQ(read(contactToleranceWords({})), "1.3 % of the smaller bone's mean extent");
  EXPECT_EQ(read(contactToleranceWords({range::ContactTolerance::In::Millimetres, 2.5})), "2.5 mm");
}

TEST(VerdictCount, isProvisionalUntilContactIsJudgedAndThenSaysWhatHasChanged) {
  EXPECT_EQ(read(provisionally("3 out of range", true)), "provisional: 3 out of range");
  EXPECT_EQ(read(provisionally("3 out of range", false)), "3 out of range");
  const auto assessmentOf = [](std::vector<Level> levels) {
    range::Assessment result;
    for (const Level level : levels) {
      result.joints.push_back({});
      result.joints.back().level = level;
    }
    return result;
  };
  const range::Assessment before = assessmentOf({Level::Beyond, Level::Supported, Level::Near});
  EXPECT_EQ(read(contactArrivedWords(before, before)), "");
  range::Assessment after = assessmentOf({Level::Beyond, Level::Beyond, Level::Beyond});
  EXPECT_EQ(read(contactArrivedWords(before, after)), "Collisions have been assessed: 2 joints more are out of range");
  after.contacts.push_back({});  // beyond, of no one joint
  EXPECT_THAT(read(contactArrivedWords(before, after)), testing::HasSubstr("collide apart from any one joint"));
}

TEST(AssumptionWords, presetsAreNamed) {
  EXPECT_EQ(read(presetWords(range::kCartilagePresets[2])), "Turkey: 4.56 %");
  EXPECT_EQ(read(presetWords(range::kCartilagePresets[3])), "Ostrich: 6.3 %");
  EXPECT_EQ(read(say(range::kCartilagePresets[3].source)),
            "Taylor & Wedel 2013, PLoS ONE 8(10):e78214, quoted second hand");
  EXPECT_EQ(read(presetWords(range::kOverlapPresets[0])), "published rule");
}

TEST(VerdictCount, speaksOfWhatThereIs) {
  const auto said = [](std::vector<Level> levels) {
    range::Assessment result;
    for (const Level level : levels) {
      result.joints.push_back({});
      result.joints.back().level = level;
    }
    return read(verdictCount(result));
  };
  EXPECT_EQ(said({Level::Supported, Level::Supported}), "all 2 joints within range");
  EXPECT_EQ(said({Level::Beyond, Level::Near, Level::Near}), "1 out of range, 2 near limit of 3 joints");
  EXPECT_EQ(said({Level::Supported, Level::NotJudged}), "1 of 2 joints within range, 1 not assessed");
}

}  // namespace
}  // namespace zyga::ui
