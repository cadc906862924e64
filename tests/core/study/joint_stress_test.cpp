#include "core/study/stress/joint_stress.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/range/presets.h"
#include "core/study/run.h"
#include "tests/core/study/standing_scenario.h"
#include "tests/support/sample_animal.h"
#include "tests/support/small_neck.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;

// Straight links of 1 m with centra of 0.2 x 0.2 m and spines 0.4 m high, each a block that is the same before and
// behind its middle, and a skull around its own joint's line; so weights and arms are known by hand.
constexpr double kLink = 1, kSize = 0.2, kSpine = 0.4;

void give(anatomy::Bone& bone, anatomy::Measure measure, double value) {
  bone.measures[measure] = {value, anatomy::CellOrigin::Measured, {}};
}

/// `size`: factor on every length. The neck of n cervicals, the origin of each at its joint with the one behind.
anatomy::Specimen blockNeck(int cervicals, double size = 1) {
  test::SmallNeck plan;
  plan.cervicals = cervicals;
  plan.link = size * kLink;
  plan.head = size * 0.5;
  anatomy::Specimen specimen = test::smallNeck(plan);
  for (anatomy::Joint& joint : specimen.joints) joint.centreProximal.x() = size * kLink;
  for (anatomy::Bone& bone : specimen.bones) {
    if (bone.name.kind == anatomy::BoneKind::Skull) {
      for (auto& [name, point] : bone.landmarks)
        if (name.starts_with("eye")) point.y() *= size;
      give(bone, anatomy::Measure::Length, plan.head);
      give(bone, anatomy::Measure::Width, size * 0.2);
      give(bone, anatomy::Measure::Height, size * 0.2);
      bone.landmarks["jawHinge"] = Vector3d(0.1, 0, -0.05) * size;
      continue;
    }
    give(bone, anatomy::Measure::CotyleHeight, size * kSize);
    give(bone, anatomy::Measure::CotyleWidth, size * kSize);
    give(bone, anatomy::Measure::SpineHeight, size * kSpine);
    bone.landmarks["cranialRim"] = Vector3d(size * kLink, 0, 0);
    bone.landmarks["caudalRim"] = Vector3d::Zero();
    bone.landmarks["spineTop"] = Vector3d(size * 0.5 * kLink, 0, size * kSpine);
  }
  return specimen;
}

range::Scenario scenarioOf(const anatomy::Specimen& specimen, const kinematics::Pose& pose) {
  const auto shared = std::make_shared<const anatomy::Specimen>(specimen);
  return {shared, {}, kinematics::restArticulation(*shared), pose};
}

/// The trunk turned so that the neck rises by this angle over the horizontal, straight.
range::Scenario straight(const anatomy::Specimen& specimen, double rise) {
  kinematics::Pose pose = test::smallPose(specimen, 3);
  pose.X_WRoot.linear() = Eigen::AngleAxisd(-rise, Vector3d::UnitY()).toRotationMatrix();
  return scenarioOf(specimen, pose);
}

const NeckLoads& present(const JointStress& found) { return found[NeckCarriage::Present]; }

/// What hangs ahead of the i-th joint, by hand from the pieces: mass in kg and moment in N m of a level neck.
struct ByHand {
  double mass = 0, moment = 0;
};
ByHand byHand(const range::Scenario& scenario, std::size_t i) {
  ByHand hand;
  const auto& specimen = scenario.specimen();
  const auto joints = jointsOf(specimen, Chain::Neck);
  const auto& X_WB = scenario.placement();
  const double at = (X_WB[specimen[joints[i]].proximal.value] * specimen[joints[i]].centreProximal).x();
  for (const BodySegment& segment : bodySegments(scenario)) {
    const double x = (X_WB[segment.bone.value] * segment.p_BCentre).x();
    if (segment.part == BodyPart::Trunk || x < at) continue;
    const double mass = segment.hullVolume * kHullFactor * Densities{}[segment.part];
    hand.mass += mass;
    hand.moment += mass * 9.80665 * (x - at);
  }
  return hand;
}

TEST(JointStress, FormulaAndAreaByHand) {
  // 1000 N m over 0.5 m are 2000 N; a weight of 300 N along half of it adds 150.
  EXPECT_NEAR(compressiveForce(1000, 0.5, 300, 0.5), 2150, 1e-9);
  EXPECT_NEAR(compressiveForce(-1000, 0.5, 300, 0.5), 2150, 1e-9) << "the member under the centra presses as well";
  EXPECT_NEAR(compressiveForce(0, 0.5, 300, -1), -300, 1e-12) << "hanging straight down it is pulled";
  EXPECT_NEAR(centrumArea(0.2, 0.3), 0.0471238898, 1e-9);
}

// 2, 4, 4, 4, 5, 5, 7, 9: mean 5, standard deviation 2, as textbooks have it.
TEST(JointStress, EvennessByHand) {
  const Evenness found = evennessOf({2, 4, 4, 4, 5, 5, 7, 9});
  EXPECT_NEAR(found.mean, 5, 1e-12);
  EXPECT_NEAR(found.variation.value(), 0.4, 1e-12);
  EXPECT_NEAR(found.peakToMean.value(), 1.8, 1e-12);
  EXPECT_EQ(found.peak, 7u);
  EXPECT_EQ(found.lowest, 0u);
  EXPECT_NEAR(evennessOf({3, 3, 3}).variation.value(), 0, 1e-12);
  EXPECT_FALSE(evennessOf({-3, 1}).variation) << "no share of a mean that is not above zero";
  EXPECT_FALSE(evennessOf({-3, 1}).peakToMean);
}

TEST(JointStress, LevelNeckCarriesMomentOverLever) {
  const range::Scenario level = straight(blockNeck(5), 0);
  const JointStress found = jointStress(level);
  ASSERT_EQ(found.joints.size(), 4u) << "the atlas is weight and no joint";
  EXPECT_EQ(found.joints.front().id, "C5-D1");
  EXPECT_EQ(found.joints.back().id, "C2-C3");
  for (std::size_t i = 0; i < found.joints.size(); ++i) {
    const JointLoad& load = present(found).joints[i];
    const ByHand hand = byHand(level, i);
    EXPECT_NEAR(load.mass, hand.mass, 1e-9);
    EXPECT_NEAR(load.moment, hand.moment, 1e-6);
    EXPECT_NEAR(load.lever, kSpine, 1e-12);
    EXPECT_NEAR(load.cosine, 0, 1e-12);
    EXPECT_NEAR(load.force, hand.moment / kSpine, 1e-6);
    EXPECT_NEAR(load.stress, hand.moment / kSpine / (std::numbers::pi / 4 * kSize * kSize), 1e-3);
    EXPECT_NEAR(load.sideways, 0, 1e-9);
  }
  EXPECT_EQ(found.measured(), 4u);
}

// Links of one size and weight w on a level line, without the head's own part: moments of a beam of pieces grow with
// the square of their number. Differences between neighbours leave the head's moment linear: m(n+1) - 2 m(n) + m(n-1) =
// w L.
TEST(JointStress, MomentsOfEqualSegmentsGrowWithTheSquare) {
  const JointStress found = jointStress(straight(blockNeck(8), 0));
  const auto& loads = present(found).joints;
  for (std::size_t i = 1; i + 1 < loads.size(); ++i) {
    const double second = loads[i - 1].moment - 2 * loads[i].moment + loads[i + 1].moment;
    const double weight = (loads[i].mass - loads[i + 1].mass) * 9.80665;
    EXPECT_GT(weight, 1);
    EXPECT_NEAR(second, weight * kLink, 1e-6 * weight);
  }
  EXPECT_EQ(present(found).evenness.peak, 0u) << "the base carries most";
}

/// Upright, what is left of the moment is the masses' distance from the line of the joints, whatever the length of the
/// neck; with masses on that line F is W.
TEST(JointStress, UprightNeckCarriesItsWeightAlone) {
  anatomy::Specimen specimen = blockNeck(6);
  for (anatomy::Bone& bone : specimen.bones) {
    // As deep under the line of the joints as the spine is high over it, and the head the same all round.
    if (bone.name.kind == anatomy::BoneKind::Cervical) bone.landmarks["under"] = Vector3d(0.5 * kLink, 0, -kSpine);
    if (bone.name.kind != anatomy::BoneKind::Skull) continue;
    bone.measures[anatomy::Measure::Height].value = 0.1;
    bone.landmarks.erase("eye.L");
    bone.landmarks.erase("eye.R");
    bone.landmarks["jawHinge"] = Vector3d(0.2, 0, -0.1);
    bone.landmarks["over"] = Vector3d(0.2, 0, 0.1);
  }
  // The carriage reads the eyes: level with the line, they stay in the mid-plane.
  specimen.bones.back().landmarks["eye.L"] = Vector3d(0.2, 0.05, 0);
  specimen.bones.back().landmarks["eye.R"] = Vector3d(0.2, -0.05, 0);
  const range::Scenario upright = straight(specimen, std::numbers::pi / 2);
  const JointStress found = jointStress(upright);
  for (const JointLoad& load : present(found).joints) {
    EXPECT_NEAR(load.cosine, 1, 1e-12);
    EXPECT_LT(std::abs(load.moment), 0.02 * load.mass * 9.80665) << "2 cm of arm at most, from the skull's outline";
    EXPECT_NEAR(load.force - std::abs(load.moment) / load.lever, load.mass * 9.80665, 1e-6);
  }
  // Hanging straight down, the same weight pulls.
  const JointStress hanging = jointStress(straight(specimen, -std::numbers::pi / 2));
  for (const JointLoad& load : present(hanging).joints) EXPECT_LT(load.force, 0);
  EXPECT_FALSE(present(hanging).evenness.variation);
}

TEST(JointStress, InBetweenItIsMomentTimesCosineAndWeightTimesSine) {
  const anatomy::Specimen specimen = blockNeck(5);
  const double rise = 0.6;
  const JointStress level = jointStress(straight(specimen, 0)), risen = jointStress(straight(specimen, rise)),
                    upright = jointStress(straight(specimen, std::numbers::pi / 2));
  for (std::size_t i = 0; i < level.joints.size(); ++i) {
    const auto &flat = present(level).joints[i], &load = present(risen).joints[i], &up = present(upright).joints[i];
    // The arm of the weight turns with the neck: its part along the axis counts level, its part across upright.
    EXPECT_NEAR(load.moment, flat.moment * std::cos(rise) + up.moment * std::sin(rise), 1e-6);
    EXPECT_NEAR(load.cosine, std::sin(rise), 1e-12);
    EXPECT_NEAR(load.force, std::abs(load.moment) / load.lever + load.mass * 9.80665 * std::sin(rise), 1e-6);
  }
}

// Weight grows with the cube, moment with the fourth power, lever with the first, area with the square: stress with the
// first, and how even it is does not change.
TEST(JointStress, GrowsWithSize) {
  const double k = 2.5;
  const JointStress small = jointStress(straight(blockNeck(6), 0.3)),
                    large = jointStress(straight(blockNeck(6, k), 0.3));
  for (std::size_t i = 0; i < small.joints.size(); ++i) {
    const auto &a = present(small).joints[i], &b = present(large).joints[i];
    EXPECT_NEAR(b.mass / a.mass, k * k * k, 1e-6);
    EXPECT_NEAR(b.moment / a.moment, k * k * k * k, 1e-6);
    EXPECT_NEAR(b.stress / a.stress, k, 1e-6);
  }
  EXPECT_NEAR(present(large).evenness.variation.value(), present(small).evenness.variation.value(), 1e-9);
}

// Christian 2002: the size of the masses does not matter for the pattern, their proportions do.
TEST(JointStress, HeavierAllOverIsAsEven) {
  const range::Scenario level = straight(blockNeck(6), 0.2);
  Densities heavy, heavyHead;
  for (double& density : heavy.byPart) density *= 1.7;
  heavyHead[BodyPart::Head] *= 1.7;
  const JointStress usual = jointStress(level), heavier = jointStress(level, {}, heavy),
                    ahead = jointStress(level, {}, heavyHead);
  for (std::size_t i = 0; i < usual.joints.size(); ++i)
    EXPECT_NEAR(present(heavier).joints[i].stress, 1.7 * present(usual).joints[i].stress, 1e-6);
  EXPECT_NEAR(*present(heavier).evenness.variation, *present(usual).evenness.variation, 1e-9);
  EXPECT_NE(*present(ahead).evenness.variation, *present(usual).evenness.variation);
  EXPECT_LT(*present(usual).variationLow, *present(usual).evenness.variation);
  EXPECT_GT(*present(usual).variationHigh, *present(usual).evenness.variation);
}

TEST(JointStress, LowerTensionPressesHarder) {
  const range::Scenario level = straight(blockNeck(5), 0);
  const JointStress tips = jointStress(level), half = jointStress(level, {0.5});
  for (std::size_t i = 0; i < tips.joints.size(); ++i)
    EXPECT_NEAR(present(half).joints[i].stress, 2 * present(tips).joints[i].stress, 1e-6);
}

// Bent up by b at one joint, spines h high and l/2 before and behind the centre: the centre drops away from the
// straight line between the two tips, which passes it at h cos(b/2) + l/2 sin(b/2).
TEST(JointStress, LeverFollowsTheSpines) {
  const anatomy::Specimen specimen = blockNeck(5);
  kinematics::Pose pose = test::smallPose(specimen, 3);
  const double bend = 0.3;
  const auto joint = jointsOf(specimen, Chain::Neck)[1];
  pose[joint][0] = bend;
  const JointStress found = jointStress(scenarioOf(specimen, pose));
  EXPECT_NEAR(present(found).joints[1].lever, kSpine * std::cos(bend / 2) + 0.5 * kLink * std::sin(bend / 2), 1e-12);
  EXPECT_NEAR(present(found).joints[0].lever, kSpine, 1e-12);
}

/// Past the vertical the weight turns the neck back, and what holds it lies under the centra.
TEST(JointStress, LeaningBackIsHeldFromBelow) {
  const JointStress found = jointStress(straight(blockNeck(5), 0.6 * std::numbers::pi));
  for (const JointLoad& load : present(found).joints) {
    EXPECT_LT(load.moment, 0);
    EXPECT_NEAR(load.lever, kSize / 2, 1e-12);
    EXPECT_GT(load.force, load.mass * 9.80665 * load.cosine);
  }
}

TEST(JointStress, SwungAsideItSaysWhatIsLeftOut) {
  const anatomy::Specimen specimen = blockNeck(5);
  kinematics::Pose pose = test::smallPose(specimen, 3);
  pose[jointsOf(specimen, Chain::Neck)[0]][1] = 0.5;
  const JointStress found = jointStress(scenarioOf(specimen, pose));
  const JointLoad& base = present(found).joints[0];
  EXPECT_NEAR(base.sideways / std::abs(base.moment), std::tan(0.5), 1e-9);
  EXPECT_NEAR(present(found).joints[1].sideways, 0, 1e-3) << "in its own frame the rest is straight";
}

TEST(JointStress, SaysWhichJointLacksItsSize) {
  anatomy::Specimen specimen = blockNeck(4);
  specimen.bones[2].measures[anatomy::Measure::CotyleWidth] = {};
  const StudyOutcome outcome = run(StudyKind::Stress, straight(specimen, 0));
  EXPECT_EQ(outcome.failure, reason::Reason(kNoSpineOrCentrum, {reason::text("C3-C4")}));
  specimen = blockNeck(4);
  specimen.bones[1].landmarks.erase("spineTop");
  EXPECT_EQ(run(StudyKind::Stress, straight(specimen, 0)).failure.id, kNoSpineOrCentrum);
}

TEST(JointStress, RunsAsAStudyWithItsSettings) {
  const range::Scenario level = straight(blockNeck(5), 0);
  StudySettings settings;
  settings.tension.share = 0.5;
  settings.densities[BodyPart::Neck] = 700;
  StudyAnswers answers;
  const auto first = answers.run(StudyKind::Stress, level, settings).result;
  ASSERT_TRUE(first);
  ASSERT_EQ(kindOf(*first), StudyKind::Stress);
  const auto& found = std::get<JointStress>(*first);
  EXPECT_EQ(found.tension.share, 0.5);
  EXPECT_EQ(present(found).joints[0].stress,
            present(jointStress(level, settings.tension, settings.densities)).joints[0].stress);
  EXPECT_EQ(answers.run(StudyKind::Stress, level, settings).result, first);
  settings.densities[BodyPart::Neck] = 600;
  EXPECT_NE(answers.run(StudyKind::Stress, level, settings).result, first) << "densities are part of the question";
}

class SampleStress : public testing::TestWithParam<const char*> {
 protected:
  range::Scenario standing() const {
    const auto specimen = std::make_shared<const anatomy::Specimen>(test::sampleAnimal(GetParam()));
    const range::Scenario seated(specimen, range::grownAnimal(), kinematics::Pose::neutral(*specimen));
    return seated.withPose(kinematics::stand(*specimen, seated.articulation(), seated.pose()));
  }
};

TEST_P(SampleStress, IsOfTheOrderOfLivingTissue) {
  const range::Scenario scenario = standing();
  const JointStress found = jointStress(scenario);
  EXPECT_EQ(found.joints.size(), static_cast<std::size_t>(scenario.specimen().counts.cervical - 1));
  EXPECT_GT(found.mass.mass, 100);
  for (const NeckLoads& posture : found.postures)
    for (std::size_t i = 0; i < posture.joints.size(); ++i) {
      EXPECT_LT(std::abs(posture.joints[i].stress), 20e6) << found.joints[i].id;
      if (i > 0) {
        EXPECT_LT(posture.joints[i].mass, posture.joints[i - 1].mass);
      }
    }
  EXPECT_LT(found[NeckCarriage::Highest].evenness.mean, found[NeckCarriage::Neutral].evenness.mean)
      << "a raised neck presses its joints less";
}

TEST_P(SampleStress, TheEvenestBendIsTheLeastOfAll) {
  const JointStress found = jointStress(standing());
  ASSERT_TRUE(found.evenest);
  for (const EvenBend& bend : found.bends)
    EXPECT_GE(bend.variation.value_or(1e9), *found.bends[*found.evenest].variation);
  ASSERT_TRUE(found.alike);
  EXPECT_LE(found.alike->front(), found.bends[*found.evenest].slope);
  EXPECT_GE(found.alike->back(), found.bends[*found.evenest].slope);
  EXPECT_EQ(found.bends.front().share, -1);
  EXPECT_EQ(found.bends.back().share, 1);
  EXPECT_NEAR(found.bends.front().slope, found[NeckCarriage::Ventral].slope, 1e-12);
  EXPECT_NEAR(found.bends.back().slope, found[NeckCarriage::Dorsal].slope, 1e-12);
  EXPECT_EQ(found.bends.back().variation, found[NeckCarriage::Dorsal].evenness.variation);
}

INSTANTIATE_TEST_SUITE_P(Animals, SampleStress, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::study
