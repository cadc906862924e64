#include "core/study/stances/compare_poses.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/kinematics/stand_readings.h"
#include "core/range/presets.h"
#include "tests/support/sample_animal.h"

namespace zyga::study {
namespace {

struct Animal {
  anatomy::Specimen specimen = test::sampleAnimal("high_browser");
  range::Assumptions assumptions = range::grownAnimal();
  kinematics::Pose pose = kinematics::Pose::neutral(specimen);
  range::Scenario scenario() const { return {std::make_shared<const anatomy::Specimen>(specimen), assumptions, pose}; }
};

TEST(ComparePoses, TellsTheJointsThatDifferAndNoOthers) {
  const Animal a;
  Animal b;
  const auto neck = *b.specimen.findJoint("C6-C7"), tail = *b.specimen.findJoint("Ca3-Ca4");
  b.pose[neck] = {0.9, 0, 0};
  b.pose[tail] = {0, -0.02, 0.01};
  const Comparison comparison = study::compare(a.scenario(), b.scenario());
  ASSERT_EQ(comparison.joints.size(), 2U);
  for (const ComparedJoint& joint : comparison.joints) {
    const bool isNeck = joint.joint == neck;
    EXPECT_EQ(joint.second, b.pose[isNeck ? neck : tail]);
    EXPECT_DOUBLE_EQ(joint.difference(), isNeck ? 0.9 : 0.02);
    EXPECT_EQ(joint.secondLevel == range::Level::Beyond, isNeck) << "51 degrees between two vertebrae";
  }
  EXPECT_EQ(comparison.secondLevels[static_cast<std::size_t>(range::Level::Beyond)],
            comparison.firstLevels[static_cast<std::size_t>(range::Level::Beyond)] + 1);
}

TEST(ComparePoses, ReadsTheSameHeightsAsTheStandDoes) {
  const Animal a;
  Animal b;
  b.pose.X_WRoot.translation().z() += 0.25;
  const Comparison comparison = study::compare(a.scenario(), b.scenario());
  EXPECT_TRUE(comparison.joints.empty());
  int lengths = 0;
  for (const ComparedReading& reading : comparison.readings) {
    const bool height = idOf(reading.reading).ends_with("over the ground");
    EXPECT_NEAR(reading.second - reading.first, height ? 0.25 : 0, 1e-12) << idOf(reading.reading);
    lengths += height;
  }
  EXPECT_EQ(lengths, 3);
}

TEST(ComparePoses, OnePoseUnderTwoSetsOfAssumptions) {
  Animal a, b;
  const auto joint = *a.specimen.findJoint("C6-C7");
  // Past the rule of half the facet, within that of none.
  const range::Scenario neutral = a.scenario();
  for (double angle = 0; angle < 1; angle += 0.01) {
    a.pose[joint].x() = angle;
    if (levelAt(a.specimen, neutral.articulation(), a.assumptions, joint, a.pose[joint]) == range::Level::Beyond) break;
  }
  b.pose = a.pose;
  b.assumptions.minOverlap = 0;
  const Comparison comparison = study::compare(a.scenario(), b.scenario());
  bool seen = false;
  for (const ComparedJoint& compared : comparison.joints) {
    EXPECT_EQ(compared.difference(), 0);
    seen = seen || (compared.joint == joint && compared.firstLevel == range::Level::Beyond &&
                    compared.secondLevel != range::Level::Beyond);
  }
  EXPECT_TRUE(seen);
}

TEST(ComparePoses, DifferentAnimalsAreRefusedByName) {
  const Animal a;
  Animal b;
  b.specimen.joints.back().id = "elsewhere";
  const auto refusal = [&]() -> reason::Reason {
    try {
      compare(a.scenario(), b.scenario());
    } catch (const reason::Failure& failure) {
      return failure.reason();
    }
    return {};
  };
  EXPECT_EQ(refusal(),
            reason::Reason(kDifferentJoints, {reason::text(a.specimen.joints.back().id), reason::text("elsewhere")}));
  b.specimen.joints.pop_back();
  b.pose.angles.pop_back();
  EXPECT_EQ(refusal(), reason::Reason(kMoreJoints, {reason::text(a.specimen.joints.back().id)}));
}

}  // namespace
}  // namespace zyga::study
