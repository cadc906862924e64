// How probable a claim is: closed forms on one joint whose facets slide on an arc, the study of uncertainty on a sample
// animal, and what rests on what.
#include "core/study/claims/claim_probability.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <cmath>
#include <fstream>
#include <set>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/standing.h"
#include "core/range/evidence.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/study/claims/claim_book.h"
#include "core/study/claims/claim_site.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::study {
namespace {

using anatomy::Evidence;
using anatomy::Measure;
using range::EvidenceClass;
using test::kDegree;

// Mastrandrea et al. 2010, guidance note for the fifth assessment report of the IPCC, table 1.
TEST(Likelihood, HasTheBoundsOfTheGuideline) {
  const std::vector<std::pair<double, Likelihood>> bounds{{1.0, Likelihood::VirtuallyCertain},
                                                          {0.99, Likelihood::VirtuallyCertain},
                                                          {0.989, Likelihood::VeryLikely},
                                                          {0.90, Likelihood::VeryLikely},
                                                          {0.899, Likelihood::Likely},
                                                          {0.66, Likelihood::Likely},
                                                          {0.659, Likelihood::AboutAsLikelyAsNot},
                                                          {0.5, Likelihood::AboutAsLikelyAsNot},
                                                          {0.331, Likelihood::AboutAsLikelyAsNot},
                                                          {0.33, Likelihood::Unlikely},
                                                          {0.101, Likelihood::Unlikely},
                                                          {0.10, Likelihood::VeryUnlikely},
                                                          {0.011, Likelihood::VeryUnlikely},
                                                          {0.01, Likelihood::ExceptionallyUnlikely},
                                                          {0.0, Likelihood::ExceptionallyUnlikely}};
  for (const auto& [probability, expected] : bounds) EXPECT_EQ(likelihoodOf(probability), expected) << probability;
  EXPECT_EQ(toText(Likelihood::AboutAsLikelyAsNot), "about-as-likely-as-not");
}

/// One joint of a neck, facets on an arc (claim_test.cpp): the claim is on the slope of its only cervical.
struct ArcNeck {
  anatomy::Specimen specimen = test::twoVertebrae();
  range::Assumptions assumptions;
  ArcNeck() {
    specimen.counts.cervical = 6;
    assumptions.facetContactTolerated = assumptions.facetGapTolerated = 10;  // overlap alone is to decide
  }
  range::Scenario scenario() const {
    return {std::make_shared<const anatomy::Specimen>(specimen), assumptions, kinematics::Pose::neutral(specimen)};
  }
  static Claim claim(double slope) { return {ClaimKind::NeckBaseSlope, Bound::AtLeast, slope}; }
  ClaimProbability ask(double slope, const ProbabilityOptions& options) const {
    return claimProbability(scenario(), claim(slope), {}, options).value();
  }
};

/// Only what is set afterwards varies.
ProbabilityOptions stillOptions() {
  ProbabilityOptions options;
  options.overlap = {0.5, 0.5};
  options.cartilage = {{0, 0}, 0, 0};
  options.toleranceFactor = 1;
  options.varyDefinitions = false;
  return options;
}

double errorOf(double p, double n) { return std::sqrt(p * (1 - p) / n); }

// The overlap at which a slope q is met is s = 1 - 2 R tan(q / 2) / L (checks A8): drawn evenly from 0 to 1/2 it is met
// in 2 s of the samples.
TEST(ClaimProbability, OfTheOverlapAloneIsTheClosedForm) {
  ProbabilityOptions options = stillOptions();
  options.overlap = {0, 0.5};
  options.samples = 4000;
  for (const double degrees : {9.5, 12.0, 15.0}) {
    const double slope = degrees * kDegree;
    const double expected = 2 * (1 - 2 * 0.2 * std::tan(slope / 2) / 0.06);
    const ClaimProbability found = ArcNeck().ask(slope, options);
    EXPECT_NEAR(found.probability, expected, 4 * errorOf(expected, 4000)) << degrees;
    EXPECT_NEAR(found.standardError, errorOf(found.probability, 4000), 1e-4);
    EXPECT_EQ(found.answered(), 4000);
    EXPECT_FALSE(found.measures);
    EXPECT_FALSE(found.contact);
  }
}

// Three quarters evenly from 2 to 6 %, a quarter from there to 10 %: how much lies over what the claim needs.
TEST(ClaimProbability, OfTheCartilageAloneIsTheClosedForm) {
  ProbabilityOptions options = stillOptions();
  options.cartilage = {{2, 6}, 10, 0.25};
  options.samples = 4000;
  const auto shareOver = [](double percent) {
    return percent < 6 ? 0.75 * (6 - percent) / 4 + 0.25 : 0.25 * (10 - percent) / 4;
  };
  const double byOverlap = 2 * std::atan(0.5 * 0.06 / 0.4);
  for (const double percent : {3.0, 5.0, 8.0}) {
    const double slope = byOverlap + 0.02 * percent;
    const double needed = answerClaim(ArcNeck().scenario(), ArcNeck::claim(slope))->minCartilage.value();
    const double expected = shareOver(needed);
    EXPECT_NEAR(ArcNeck().ask(slope, options).probability, expected, 4 * errorOf(expected, 4000)) << percent;
  }
}

TEST(ClaimProbability, WithoutVariationIsNothingOrAll) {
  ProbabilityOptions options;
  options.varyMeasures = options.varyAssumptions = options.varyDefinitions = false;
  const ClaimProbability yes = ArcNeck().ask(8 * kDegree, options), no = ArcNeck().ask(9 * kDegree, options);
  EXPECT_EQ(yes.probability, 1);
  EXPECT_EQ(no.probability, 0);
  EXPECT_EQ(yes.supported, yes.options.samples);
  // Beta(1001, 1): the mean of what it may be is 1001/1002, its deviation sqrt(1001 / 1003) / 1002.
  EXPECT_NEAR(yes.standardError, std::sqrt(1001.0 / 1003) / 1002, 1e-12);
  EXPECT_NEAR(no.standardError, yes.standardError, 1e-15) << "never as if it were certain";
}

TEST(ClaimProbability, HasAThousandSamplesAtLeast) {
  ProbabilityOptions options = stillOptions();
  options.samples = 10;
  EXPECT_EQ(ArcNeck().ask(0.1, options).options.samples, kLeastSamples);
  EXPECT_EQ(ArcNeck().ask(0.1, options).answered(), kLeastSamples);
}

TEST(ClaimProbability, SameSeedSameNumberOnAnyNumberOfThreads) {
  ProbabilityOptions options;
  options.threads = 1;
  const ClaimProbability one = ArcNeck().ask(0.32, options);
  options.threads = 4;
  EXPECT_EQ(ArcNeck().ask(0.32, options).supported, one.supported);
  EXPECT_GT(one.supported, 0);
  EXPECT_LT(one.supported, one.options.samples);
  std::set<int> others;
  for (options.seed = 2; options.seed < 8; ++options.seed) others.insert(ArcNeck().ask(0.32, options).supported);
  EXPECT_GT(others.size(), 1u) << "another seed gives other samples";
}

TEST(ClaimProbability, ConvergesWithTheNumberOfSamples) {
  ProbabilityOptions options;
  const ClaimProbability some = ArcNeck().ask(0.32, options);
  options.samples = 16000;
  options.seed = 99;
  const ClaimProbability many = ArcNeck().ask(0.32, options);
  EXPECT_NEAR(some.standardError / many.standardError, 4, 0.1);
  EXPECT_NEAR(some.probability, many.probability, 4 * std::hypot(some.standardError, many.standardError));
}

// Facets that lie a third of their width beside each other cover two thirds of each other at most: rules from 1/2 to
// 5/6, drawn evenly, leave half of the samples without any angle.
TEST(ClaimProbability, SamplesWithoutRangeAreToldApart) {
  ArcNeck arc;
  arc.assumptions.overlapBy = range::OverlapBy::Area;
  for (anatomy::Bone& bone : arc.specimen.bones)
    for (anatomy::Facet& facet : bone.facets)
      if (!anatomy::isPrezyg(facet.role)) facet.centre.y() += (anatomy::isLeft(facet.role) ? 1 : -1) * 0.04 / 3;
  ProbabilityOptions options = stillOptions();
  options.overlap = {0.5, 5.0 / 6};
  options.samples = 4000;
  const ClaimProbability found = arc.ask(-10 * kDegree, options);
  EXPECT_NEAR(found.notAnswered / 4000.0, 0.5, 4 * errorOf(0.5, 4000));
  EXPECT_EQ(found.failed, 0);
  EXPECT_EQ(found.probability, 1) << "of those that gave an answer";
}

TEST(ClaimProbability, CancelledGivesNothing) {
  const std::atomic<bool> cancel = true;
  EXPECT_FALSE(claimProbability(ArcNeck().scenario(), ArcNeck::claim(0.1), {}, {}, task::Task(&cancel)));
}

TEST(ClaimProbability, TheBookKeepsIt) {
  ClaimBook book;
  const range::Scenario scenario = ArcNeck().scenario();
  const auto first = book.probability(scenario, ArcNeck::claim(0.2), {});
  EXPECT_EQ(book.probability(scenario, ArcNeck::claim(0.2), {}), first);
  ProbabilityOptions other;
  other.threads = 1;
  EXPECT_EQ(book.probability(scenario, ArcNeck::claim(0.2), {}, other), first) << "threads change nothing";
  other.seed = 2;
  EXPECT_NE(book.probability(scenario, ArcNeck::claim(0.2), {}, other), first);
  const std::atomic<bool> cancelled = true;
  EXPECT_EQ(book.probability(scenario, ArcNeck::claim(0.3), {}, {}, task::Task(&cancelled)), nullptr);
}

anatomy::MeasurementTable filledSample() {
  std::stringstream text;
  text << std::ifstream(std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/high_browser.csv").rdbuf();
  return anatomy::fillBlanks(anatomy::readMeasurementTable(text.str(), "high_browser.csv").table);
}

class SampleProbability : public testing::Test {
 protected:
  range::Scenario scenario() const {
    const auto specimen = std::make_shared<const anatomy::Specimen>(anatomy::buildSpecimen(table_));
    const range::Scenario plain(specimen, range::grownAnimal(), kinematics::Pose::neutral(*specimen));
    return plain.withPose(kinematics::stand(*specimen, plain.articulation(), plain.pose()));
  }
  Measures measures() const {
    return {std::make_shared<const anatomy::MeasurementTable>(table_), anatomy::buildSpecimen};
  }
  const anatomy::MeasurementTable table_ = filledSample();
};

// The study of uncertainty finds the highest snout by another way, over the slopes that each link may take, and from
// samples of its own: both say in what share of the animals it is so high.
TEST_F(SampleProbability, OfTheMeasuresAloneIsThatOfTheStudyOfUncertainty) {
  const range::Scenario animal = scenario();
  SpreadOptions spreadOptions;
  spreadOptions.varyAssumptions = false;
  spreadOptions.seed = 7;
  const SpreadStudy study = spread(animal, table_, anatomy::buildSpecimen, spreadOptions).value();
  ProbabilityOptions options;
  options.varyAssumptions = options.varyDefinitions = false;
  options.distortion = {0, 0, 0, 0};
  const Quantiles& heights = study.quantiles[static_cast<std::size_t>(SpreadOf::HighestSnout)];
  for (const double height : {heights.q50, heights.mean + 1.5 * heights.deviation}) {
    const double expected = study.shareAtLeast(SpreadOf::HighestSnout, height);
    const ClaimProbability found =
        claimProbability(animal, {ClaimKind::HeadHeight, Bound::AtLeast, height}, measures(), options).value();
    EXPECT_TRUE(found.measures);
    EXPECT_EQ(found.failed, 0);
    const double error = std::hypot(errorOf(std::max(expected, 0.02), spreadOptions.draws), found.standardError);
    EXPECT_NEAR(found.probability, expected, 4 * error) << height;
  }
  EXPECT_NEAR(study.shareAtLeast(SpreadOf::HighestSnout, heights.q50), 0.5, 0.01);
}

// Animals are made once for all claims: no claim's numbers hang on what else is asked.
TEST_F(SampleProbability, OfSeveralClaimsAtOnceAreThoseOfEachAlone) {
  const range::Scenario animal = scenario();
  const std::vector<Claim> claims{{ClaimKind::HeadHeight, Bound::AtLeast, 8.5},
                                  {ClaimKind::TailBaseLevel, Bound::AtLeast, 0.1},
                                  {ClaimKind::SnoutToGround, Bound::AtLeast, 99999}};
  const auto together = claimProbabilities(animal, claims, measures()).value();
  ASSERT_EQ(together.size(), claims.size());
  for (std::size_t i = 0; i < claims.size(); ++i) {
    const ClaimProbability alone = claimProbability(animal, claims[i], measures()).value();
    EXPECT_EQ(together[i].supported, alone.supported) << i;
    EXPECT_EQ(together[i].failed, alone.failed) << i;
    EXPECT_EQ(together[i].notAnswered, alone.notAnswered) << i;
    EXPECT_EQ(together[i].probability, alone.probability) << i;
    EXPECT_EQ(together[i].standardError, alone.standardError) << i;
  }
  EXPECT_GT(together[0].supported, 0);
  EXPECT_EQ(together[2].answered(), 0) << "makes no sense";
}

TEST(ClaimProbability, TheBookWorksOutTogetherWhatIsNotThere) {
  const ArcNeck neck;
  const range::Scenario scenario = neck.scenario();
  const std::vector<Claim> claims{ArcNeck::claim(0.1), ArcNeck::claim(0.2), ArcNeck::claim(0.3)};
  ClaimBook book;
  const auto first = book.probability(scenario, claims[1], {});
  const auto all = book.probabilities(scenario, claims, {});
  ASSERT_EQ(all.size(), claims.size());
  EXPECT_EQ(all[1], first) << "what is there is taken";
  EXPECT_EQ(book.probability(scenario, claims[2], {}), all[2]);
  EXPECT_EQ(all[0]->supported, neck.ask(0.1, {}).supported);
  const std::atomic<bool> cancelled{true};
  const task::Task stopped(&cancelled);
  EXPECT_TRUE(book.probabilities(scenario, {ArcNeck::claim(0.4)}, {}, {}, stopped).empty());
  EXPECT_EQ(book.probabilities(scenario, {ArcNeck::claim(0.4)}, {}).size(), 1) << "no place stays taken";
}

// A pose near to the nearest one spares the search where the point lies out of reach, and nothing else.
TEST_F(SampleProbability, APointOutOfReachIsToldFromAPoseNearIt) {
  const range::Scenario animal = scenario();
  int outOfReach = 0, reached = 0;
  for (const double height : {-1.0, 2.0, 4.0, 6.0, 6.7, 7.0, 8.0, 9.0, 12.0}) {
    const Claim claim{ClaimKind::HeadAhead, Bound::AtLeast, height, 3};
    const ClaimSite site = siteOf(animal, claim);
    const RangeOfJoint ranges = [&](kinematics::JointIndex joint) {
      return range::motionRange(animal.specimen(), animal.articulation(), animal.assumptions(), joint,
                                Eigen::Vector3d::Zero(), 0);
    };
    const bool plain = claimTrial(animal, site, claim, {.ranges = ranges, .rangesAlone = true})->supported();
    const auto near = claimTrial(animal, site, claim)->farthest();
    ASSERT_TRUE(near) << height;
    EXPECT_EQ(claimTrial(animal, site, claim, {.ranges = ranges, .rangesAlone = true, .near = &*near})->supported(),
              plain)
        << height;
    // Ranges that hold alone are those of the criteria here.
    EXPECT_EQ(claimTrial(animal, site, claim)->supported(), plain) << height;
    ++(plain ? reached : outOfReach);
  }
  EXPECT_GT(reached, 1);
  EXPECT_GT(outOfReach, 3);
}

TEST_F(SampleProbability, AnimalsThatCannotBeBuiltAreCounted) {
  Measures refusing = measures();
  refusing.build = [](const anatomy::MeasurementTable& table) {
    if (table.find({anatomy::BoneKind::Femur, 0, 0, anatomy::Side::Left})->measures.value(Measure::Length) > 0)
      throw std::invalid_argument("no such animal");
    return anatomy::buildSpecimen(table);
  };
  const ClaimProbability found =
      claimProbability(scenario(), {ClaimKind::HeadHeight, Bound::AtLeast, 8}, refusing).value();
  EXPECT_EQ(found.failed, found.options.samples);
  EXPECT_EQ(found.answered(), 0);
  EXPECT_EQ(found.probability, 0);
}

// Only bones that were deformed or scanned are put through a map of their own.
TEST_F(SampleProbability, DistortionGoesByTheClassOfEvidence) {
  anatomy::Specimen specimen = anatomy::buildSpecimen(table_);
  const auto c5 = specimen.findBone("C5").value(), c6 = specimen.findBone("C6").value(),
             c7 = specimen.findBone("C7").value();
  for (anatomy::Bone& bone : specimen.bones) bone.evidence = Evidence::Found;
  specimen.bones[c6.value].evidence = Evidence::FoundDeformed;
  specimen.bones[c7.value].scanned = true;
  const auto stretchOf = [&](anatomy::BoneIndex bone) {
    double squares = 0;
    constexpr int kDraws = 2000;
    for (std::uint32_t i = 0; i < kDraws; ++i) {
      const anatomy::Specimen other = distorted(specimen, {}, Draw(5, i));
      const double ratio = other[bone].landmark("spineTop").z() / specimen[bone].landmark("spineTop").z() - 1;
      squares += ratio * ratio / kDraws;
    }
    return std::sqrt(squares);
  };
  EXPECT_EQ(stretchOf(c5), 0);
  // Four standard errors of a deviation; cutting off at three deviations takes 1.4 % away.
  EXPECT_NEAR(stretchOf(c6), 0.05 * 0.986, 0.05 * 4 / std::sqrt(2 * 2000.0));
  EXPECT_NEAR(stretchOf(c7), 0.02 * 0.986, 0.02 * 4 / std::sqrt(2 * 2000.0));
  const anatomy::Specimen same = distorted(specimen, {0, 0, 0, 0}, Draw(5, 0));
  EXPECT_EQ(same[c6].landmark("spineTop"), specimen[c6].landmark("spineTop"));
}

// A facet goes with its bone: its corners lie where the map of the bone's landmarks takes them, in its own plane.
TEST_F(SampleProbability, DistortedFacetsGoWithTheirBone) {
  anatomy::Specimen specimen = anatomy::buildSpecimen(table_);
  const auto c6 = specimen.findBone("C6").value();
  specimen.bones[c6.value].evidence = Evidence::FoundDeformed;
  for (const char* axis : {"x", "y", "z"})
    specimen.bones[c6.value].landmarks[axis] = Eigen::Vector3d::Unit(axis[0] - 'x');  // tell how the bone is mapped
  const anatomy::Specimen other = distorted(specimen, {}, Draw(5, 3));
  Eigen::Matrix3d A;
  A << other[c6].landmark("x"), other[c6].landmark("y"), other[c6].landmark("z");
  EXPECT_GT((A - Eigen::Matrix3d::Identity()).norm(), 0.01);
  for (std::size_t f = 0; f < specimen[c6].facets.size(); ++f) {
    const anatomy::Facet &before = specimen[c6].facets[f], &after = other[c6].facets[f];
    EXPECT_NEAR(after.normal.norm(), 1, 1e-12);
    EXPECT_NEAR(after.normal.dot(after.slide), 0, 1e-12);
    for (std::size_t i = 0; i < before.outline.size(); ++i)
      EXPECT_NEAR((after.corner(i) - A * before.corner(i)).norm(), 0, 1e-12);
  }
  const auto joint = specimen.jointAbove(c6).value();
  EXPECT_NEAR((other[joint].centreDistal - A * specimen[joint].centreDistal).norm(), 0, 1e-12);
  EXPECT_EQ(other[joint].centreProximal, specimen[joint].centreProximal);
}

/// What the joint between C6 and C7 rests on, with the facet cells of both bones as `measured` says.
EvidenceClass evidenceWith(Evidence evidence, bool cranialMeasured, bool caudalMeasured) {
  anatomy::Specimen specimen = anatomy::buildSpecimen(filledSample());
  const auto set = [&](const char* id, bool measured) {
    anatomy::Bone& bone = specimen.bones[specimen.findBone(id)->value];
    bone.evidence = evidence;
    for (const anatomy::FacetMates& mates : anatomy::kFacetMates)
      for (const Measure measure : {mates.prezyg, mates.postzyg})
        if (bone.measures[measure].known())
          bone.measures[measure].origin = measured ? anatomy::CellOrigin::Measured : anatomy::CellOrigin::ByProportion;
  };
  set("C6", cranialMeasured);
  set("C7", caudalMeasured);
  return range::evidenceOf(specimen, specimen.findJoint("C6-C7").value()).value();
}

TEST(EvidenceOfJoints, GoesByTheCellsOfBothBones) {
  EXPECT_EQ(evidenceWith(Evidence::Found, true, true), EvidenceClass::Measured);
  EXPECT_EQ(evidenceWith(Evidence::FoundDeformed, true, true), EvidenceClass::Measured);
  EXPECT_EQ(evidenceWith(Evidence::Found, true, false), EvidenceClass::PartlyMeasured);
  EXPECT_EQ(evidenceWith(Evidence::Found, false, true), EvidenceClass::PartlyMeasured);
  EXPECT_EQ(evidenceWith(Evidence::Found, false, false), EvidenceClass::Inferred);
  EXPECT_EQ(evidenceWith(Evidence::Mirrored, true, true), EvidenceClass::Inferred) << "measured on another bone";
  EXPECT_EQ(evidenceWith(Evidence::Scaled, true, true), EvidenceClass::Inferred);
}

TEST(EvidenceOfJoints, ScansAndTypedLimits) {
  anatomy::Specimen specimen = anatomy::buildSpecimen(filledSample());
  const auto joint = specimen.findJoint("C6-C7").value();
  for (const char* id : {"C6", "C7"}) {
    anatomy::Bone& bone = specimen.bones[specimen.findBone(id)->value];
    bone.evidence = Evidence::Found;
    bone.scanned = true;
  }
  EXPECT_EQ(range::evidenceOf(specimen, joint), EvidenceClass::Measured);
  anatomy::TypedLimits limits{{}, anatomy::kProgramDefault};
  specimen.joints[joint.value].typed = limits;
  EXPECT_EQ(range::evidenceOf(specimen, joint), EvidenceClass::Default) << "the weaker of the two";
  const auto atlas = specimen.findJoint("skull-C1").value();
  EXPECT_EQ(range::evidenceOf(specimen, atlas), EvidenceClass::Default);
  specimen.joints[atlas.value].typed->source = "an invented paper, 2020";
  EXPECT_EQ(range::evidenceOf(specimen, atlas), EvidenceClass::Measured);
  specimen.joints[atlas.value].typed->source.clear();
  EXPECT_EQ(range::evidenceOf(specimen, atlas), EvidenceClass::Default);
  specimen.joints[atlas.value].typed.reset();
  EXPECT_EQ(range::evidenceOf(specimen, atlas), std::nullopt);
}

// The sample has the lengths and widths of some facets measured, the joints of head and atlas have no facets.
TEST_F(SampleProbability, TheTallyIsOfTheJointsThatBend) {
  const range::Scenario animal = scenario();
  const ClaimAnswer answer = answerClaim(animal, {ClaimKind::HeadHeight, Bound::AtLeast, 8}, {.needs = false}).value();
  EXPECT_EQ(static_cast<std::size_t>(answer.tally.all()), answer.joints);
  EXPECT_EQ(answer.tally.measured, 0);
  EXPECT_GT(answer.tally.partly, 5);
  EXPECT_EQ(answer.tally.byDefault, 2);
  EXPECT_EQ(answer.tally, range::tallyOf(animal.specimen(), siteOf(animal, {ClaimKind::HeadHeight}).joints));
}

// A joint without any supported angle answers nothing; the same animal answers claims that do not ask it.
TEST_F(SampleProbability, AJointWithoutRangeIsNotAnswered) {
  anatomy::Specimen specimen = anatomy::buildSpecimen(table_);
  const auto joint = specimen.findJoint("C6-C7").value();
  for (anatomy::Facet& facet : specimen.bones[specimen.findBone("C6")->value].facets)
    if (!anatomy::isPrezyg(facet.role)) facet.centre.y() *= 4;  // far outside their mates
  const range::Scenario animal(std::make_shared<const anatomy::Specimen>(specimen), {},
                               kinematics::Pose::neutral(specimen));
  const ClaimAnswer answer = answerClaim(animal, {ClaimKind::HeadHeight, Bound::AtLeast, 5}).value();
  EXPECT_FALSE(answer.answered());
  EXPECT_FALSE(answer.supported);
  EXPECT_TRUE(answer.unanswerable.empty());
  ASSERT_EQ(answer.notAnswered.size(), 1u);
  EXPECT_EQ(answer.notAnswered.front().joint, joint);
  EXPECT_TRUE(answer.notAnswered.front().atNoAngle);
  EXPECT_TRUE(answer.stopping.empty());
  EXPECT_TRUE(answerClaim(animal, {ClaimKind::TailBaseLevel, Bound::AtLeast, 0.5}, {.needs = false})->answered());
}

}  // namespace
}  // namespace zyga::study
