// Claims on the sample animals: whole necks and tails with coupled facets.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/kinematics/bend.h"
#include "core/kinematics/feet.h"
#include "core/kinematics/stand_readings.h"
#include "core/range/reach_ranges.h"
#include "core/study/claims/claim_answer.h"
#include "core/study/claims/claim_site.h"
#include "core/study/reach/elevation.h"
#include "core/study/stances/stances.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using kinematics::Pose;
using test::kDegree;

struct Animal {
  range::Scenario scenario;

  explicit Animal(anatomy::Specimen made) {
    range::Assumptions assumptions;
    assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = 4.5;
    const Pose neutral = Pose::neutral(made);
    const range::Scenario plain(std::make_shared<const anatomy::Specimen>(std::move(made)), assumptions, neutral);
    scenario = plain.withPose(takeStance(plain, Stance::Alert).pose);
  }
  const anatomy::Specimen& specimen() const { return scenario.specimen(); }
  const Pose& pose() const { return scenario.pose(); }
  ClaimAnswer ask(const Claim& claim, const ClaimOptions& options = {.needs = false}) const {
    return answerClaim(scenario, claim, options).value();
  }
  kinematics::Placement placed(const Pose& at) const {
    return kinematics::forwardKinematics(specimen(), scenario.articulation(), at);
  }
  Vector3d snout(const Pose& at) const {
    const auto skull = *specimen().findBone("skull");
    return placed(at)[skull.value] * specimen()[skull].landmark("snout");
  }
  kinematics::StandReadings readings(const Pose& at) const { return kinematics::readStand(specimen(), placed(at)); }
};

class SampleClaims : public testing::TestWithParam<const char*> {
 protected:
  /// Nothing moved but the joints that may bend, and those are inside their ranges.
  void expectHonest(const Claim& claim, const ClaimAnswer& answer) const {
    const ClaimSite site = siteOf(animal_.scenario, claim);
    EXPECT_TRUE(answer.pose.X_WRoot.matrix() == animal_.pose().X_WRoot.matrix());
    for (std::size_t j = 0; j < animal_.specimen().joints.size(); ++j) {
      const kinematics::JointIndex joint{j};
      if (std::find(site.joints.begin(), site.joints.end(), joint) == site.joints.end()) {
        EXPECT_EQ(answer.pose[joint], animal_.pose()[joint]);
        continue;
      }
      EXPECT_NE(range::levelAt(animal_.specimen(), animal_.scenario.articulation(), animal_.scenario.assumptions(),
                               joint, answer.pose[joint]),
                range::Level::Beyond)
          << animal_.specimen()[joint].id;
    }
  }

  const Animal animal_{test::sampleAnimal(GetParam())};
};

TEST_P(SampleClaims, noStanceRaisesTheHeadHigherThanTheBest) {
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 25};
  const ClaimAnswer answer = animal_.ask(claim);
  const StanceAnswer browsing = takeStance(animal_.scenario, Stance::Browse);
  EXPECT_GE(answer.best.value(), animal_.snout(browsing.pose).z());
  EXPECT_NEAR(animal_.snout(answer.pose).z(), *answer.best, 1e-9);
  EXPECT_FALSE(answer.stopping.empty());
  expectHonest(claim, answer);
}

// The general solver of reaching, sent far over the animal, comes no higher.
TEST_P(SampleClaims, reachingComesNoHigherThanTheBest) {
  const ClaimAnswer answer = animal_.ask({ClaimKind::HeadHeight, Bound::AtLeast, 25});
  const range::ReachRanges ranges(animal_.specimen(), animal_.scenario.articulation(), animal_.scenario.assumptions());
  kinematics::IkGoal goal;
  goal.joints = kinematics::neckChain(animal_.specimen());
  goal.motions = {true, false, false};
  goal.bone = *animal_.specimen().findBone("skull");
  goal.p_BPoint = animal_.specimen()[goal.bone].landmark("snout");
  goal.p_WTarget = animal_.snout(animal_.pose()) + Vector3d(0, 0, 400);
  const kinematics::IkResult reached =
      kinematics::reach(animal_.specimen(), animal_.scenario.articulation(), ranges, animal_.pose(), goal);
  EXPECT_LE(reached.p_WPoint.z(), *answer.best + 1e-3);
  EXPECT_NEAR(reached.p_WPoint.z(), *answer.best, 0.02);
}

// The study of elevation finds its highest snout by another way: over the slopes that each link may take.
TEST_P(SampleClaims, theBestIsTheHighestSnoutOfTheStudy) {
  const ClaimAnswer answer = animal_.ask({ClaimKind::HeadHeight, Bound::AtLeast, 25});
  const Elevation study = elevation(animal_.scenario);
  EXPECT_NEAR(study[NeckCarriage::Highest].carriage.snoutHeight, answer.best.value(), 1e-4);
}

TEST_P(SampleClaims, aSnoutAtTheGroundLeavesTheNeckOverIt) {
  for (const double ahead : {1.0, 3.0, 4.0}) {
    const ClaimAnswer answer = animal_.ask({ClaimKind::SnoutToGround, Bound::AtLeast, ahead});
    EXPECT_TRUE(!answer.supported || answer.inGround <= 0.05) << ahead;
    EXPECT_TRUE(!answer.throughGround || answer.shortBy > 0.05) << ahead;
  }
}

TEST_P(SampleClaims, slopesAreTheReadingsOfTheStand) {
  for (const Bound bound : {Bound::AtLeast, Bound::AtMost}) {
    const double far = bound == Bound::AtLeast ? 89 : -89;
    const Claim base{ClaimKind::NeckBaseSlope, bound, far * kDegree};
    const ClaimAnswer answer = animal_.ask(base);
    EXPECT_NEAR(animal_.readings(answer.pose).neckBaseSlope, answer.best.value(), 1e-6);
    expectHonest(base, answer);
  }
  const Claim tail{ClaimKind::TailBaseLevel, Bound::AtLeast, 3 * kDegree};
  const ClaimAnswer level = animal_.ask(tail);
  ASSERT_TRUE(level.supported);
  EXPECT_LE(std::abs(animal_.readings(level.pose).tailBaseSlope), 3 * kDegree + 1e-6);
  expectHonest(tail, level);
}

TEST_P(SampleClaims, pointsAreReachedWhereTheClaimHasThem) {
  const Claim claim{ClaimKind::HeadAhead, Bound::AtLeast, animal_.snout(animal_.pose()).z() - 0.5, 0};
  const ClaimSite site = siteOf(animal_.scenario, claim);
  Claim there = claim;
  there.ahead = (animal_.snout(animal_.pose()) - site.p_WForefeet).dot(site.ahead_W) + 0.2;
  const ClaimAnswer answer = animal_.ask(there);
  ASSERT_TRUE(answer.supported);
  const Vector3d miss = animal_.snout(answer.pose) - site.pointAt(there.ahead, there.value);
  EXPECT_LT(Vector3d(miss.x(), 0, miss.z()).norm(), 1.1e-3);
  EXPECT_GE(answer.best.value(), there.value);
  expectHonest(there, answer);
  // The best is supported, and a hand's breadth more is not.
  there.value = *answer.best;
  EXPECT_TRUE(animal_.ask(there).supported);
  there.value += 0.1;
  EXPECT_FALSE(animal_.ask(there).supported);
}

TEST_P(SampleClaims, theGroundOutOfReachIsToldWithTheNearestPlace) {
  const Claim claim{ClaimKind::SnoutToGround, Bound::AtLeast, 25};
  const ClaimAnswer answer = animal_.ask(claim);
  EXPECT_FALSE(answer.supported);
  EXPECT_GT(answer.shortBy, 1);
  if (answer.best) {
    EXPECT_LT(*answer.best, 25);
    EXPECT_TRUE(animal_.ask({ClaimKind::SnoutToGround, Bound::AtLeast, *answer.best}).supported);
  }
  expectHonest(claim, answer);
}

// A stricter rule never gives more.
TEST_P(SampleClaims, theBestFallsAsTheOverlapRuleRises) {
  double last = 1e9;
  for (const double overlap : {0.0, 0.2, 0.4, 0.5, 0.6, 0.8, 0.9}) {
    range::Assumptions assumptions = animal_.scenario.assumptions();
    assumptions.minOverlap = overlap;
    const ClaimAnswer answer = answerClaim(animal_.scenario.withAssumptions(assumptions),
                                           {ClaimKind::HeadHeight, Bound::AtLeast, 25}, {.needs = false})
                                   .value();
    if (!answer.best) break;
    EXPECT_LE(*answer.best, last + 1e-6) << overlap;
    last = *answer.best;
  }
}

TEST_P(SampleClaims, theNeedsAreWhereTheAnswerTurns) {
  const double best = animal_.ask({ClaimKind::HeadHeight, Bound::AtLeast, 25}).best.value();
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, best + 0.01};
  const ClaimAnswer answer = animal_.ask(claim, {});
  ASSERT_FALSE(answer.supported);
  ASSERT_TRUE(answer.minOverlap);
  EXPECT_LT(*answer.minOverlap, 0.5);
  range::Assumptions assumptions = animal_.scenario.assumptions();
  const auto supported = [&] {
    return answerClaim(animal_.scenario.withAssumptions(assumptions), claim, {.needs = false})->supported;
  };
  assumptions.minOverlap = *answer.minOverlap;
  EXPECT_TRUE(supported());
  assumptions.minOverlap = *answer.minOverlap + 2e-4;
  EXPECT_FALSE(supported());
  if (!answer.minCartilage) return;
  assumptions = animal_.scenario.assumptions();
  assumptions.neck.amount = *answer.minCartilage;
  EXPECT_TRUE(supported());
}

/// Left and right exchanged gives the same answer to a claim seen from the side.
TEST_P(SampleClaims, aMirroredAnimalGetsTheSameAnswer) {
  anatomy::Specimen lopsided = test::sampleAnimal(GetParam());
  for (anatomy::Bone& bone : lopsided.bones) {
    if (bone.name.kind != anatomy::BoneKind::Cervical) continue;
    for (anatomy::Facet& facet : bone.facets)
      if (facet.role == anatomy::FacetRole::PrezygLeft) facet.centre.x() += 0.004;
  }
  const Animal one(lopsided), other(test::mirroredFacets(lopsided));
  for (const Claim& claim :
       {Claim{ClaimKind::HeadHeight, Bound::AtLeast, 6}, Claim{ClaimKind::NeckSlope, Bound::AtLeast, 0.9},
        Claim{ClaimKind::NeckBaseSlope, Bound::AtMost, 0.1}}) {
    const ClaimAnswer a = one.ask(claim), b = other.ask(claim);
    EXPECT_EQ(a.supported, b.supported) << traitsOf(claim.kind).word;
    EXPECT_NEAR(a.best.value(), b.best.value(), 1e-4) << traitsOf(claim.kind).word;
    EXPECT_EQ(a.stopping.size(), b.stopping.size()) << traitsOf(claim.kind).word;
  }
}

TEST_P(SampleClaims, theSameQuestionHasTheSameAnswerToTheBit) {
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 7};
  const ClaimAnswer a = animal_.ask(claim, {}), b = animal_.ask(claim, {});
  EXPECT_EQ(a.pose, b.pose);
  EXPECT_EQ(a.best, b.best);
  EXPECT_EQ(a.minOverlap, b.minOverlap);
  EXPECT_EQ(a.minCartilage, b.minCartilage);
}

TEST_P(SampleClaims, aJointThatNothingJudgesStaysAndIsNamed) {
  anatomy::Specimen specimen = test::sampleAnimal(GetParam());
  const kinematics::JointIndex joint = jointsOf(specimen, Chain::Neck)[3];
  specimen.joints[joint.value].kind = anatomy::JointKind::Typed;
  specimen.joints[joint.value].typed.reset();
  const Animal animal(specimen);
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 25};
  const ClaimAnswer answer = animal.ask(claim);
  EXPECT_THAT(answer.notJudged, testing::ElementsAre(joint));
  EXPECT_EQ(answer.pose[joint], animal.pose()[joint]);
}

INSTANTIATE_TEST_SUITE_P(Animals, SampleClaims, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::study
