#include <gtest/gtest.h>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/plan_table.h"

namespace zyga::anatomy {
namespace {

constexpr BodyPlan kPlans[] = {BodyPlan::HighBrowser, BodyPlan::LowBrowser};

int countOf(const std::vector<BoneName>& bones, BoneKind kind, Side side, int digit = 0) {
  int count = 0;
  for (const BoneName& bone : bones)
    count += bone.kind == kind && bone.side == side && (digit == 0 || bone.number == digit);
  return count;
}

double lengthOf(BodyPlan plan, BoneKind kind, int number = 0) {
  return limbPlanValue(*planTable(plan).limbs, {kind, number, 0, Side::Left}, Measure::Length);
}

TEST(LimbPlan, EveryMeasureOfEveryBoneIsPositive) {
  for (BodyPlan plan : kPlans) {
    std::vector<BoneName> bones = limbBones();
    for (const BoneName& bone : headBones()) bones.push_back(bone);
    for (const BoneName& bone : bones) {
      ASSERT_FALSE(limbMeasuresOf(bone.kind).empty()) << toId(bone);
      for (Measure measure : limbMeasuresOf(bone.kind))
        EXPECT_GT(limbPlanValue(*planTable(plan).limbs, bone, measure), 0) << toId(bone) << ", " << toText(measure);
      EXPECT_EQ(limbPlanValue(*planTable(plan).limbs, bone, Measure::CotyleHeight), 0) << toId(bone);
    }
  }
}

TEST(LimbPlan, LeftAndRightAreAlike) {
  for (BodyPlan plan : kPlans)
    for (const BoneName& bone : limbBones())
      for (Measure measure : limbMeasuresOf(bone.kind))
        EXPECT_EQ(limbPlanValue(*planTable(plan).limbs, bone, measure),
                  limbPlanValue(*planTable(plan).limbs, mirrored(bone), measure))
            << toId(bone);
}

// Humerus to femur from 0.57 to 1.09, tibia to femur from 0.52 to 0.97: data set of Paramo 2025, read.
TEST(LimbPlan, LimbsLieInsideThePublishedRanges) {
  for (BodyPlan plan : kPlans) {
    const double femur = lengthOf(plan, BoneKind::Femur);
    const double humerus = lengthOf(plan, BoneKind::Humerus) / femur, tibia = lengthOf(plan, BoneKind::Tibia) / femur;
    EXPECT_TRUE(humerus > 0.57 && humerus < 1.09) << humerus;
    EXPECT_TRUE(tibia > 0.52 && tibia < 0.97) << tibia;
  }
}

// Five metacarpals and one thumb claw in front; five toes of 2, 3, 4, 2, 1 bones behind, claws on the first three:
// common practice, no source.
TEST(LimbPlan, HandsAndFeetHaveTheirDigits) {
  const std::vector<BoneName> bones = limbBones();
  for (Side side : {Side::Left, Side::Right}) {
    EXPECT_EQ(countOf(bones, BoneKind::Metacarpal, side), 5);
    EXPECT_EQ(countOf(bones, BoneKind::Metatarsal, side), 5);
    const int fingers[] = {2, 1, 1, 1, 1}, toes[] = {2, 3, 4, 2, 1};
    for (int digit = 1; digit <= 5; ++digit) {
      EXPECT_EQ(countOf(bones, BoneKind::ManusPhalanx, side, digit), fingers[digit - 1]);
      EXPECT_EQ(countOf(bones, BoneKind::PesPhalanx, side, digit), toes[digit - 1]);
    }
  }
}

// The third metacarpal is the longest of its crescent, the first metatarsal the shortest and thickest of its foot, the
// claws shrink from the first toe to the third: common practice, no source.
TEST(LimbPlan, HandAndFootHaveTheRightRhythm) {
  for (BodyPlan plan : kPlans) {
    for (int digit : {1, 2, 4, 5}) {
      EXPECT_LT(lengthOf(plan, BoneKind::Metacarpal, digit), lengthOf(plan, BoneKind::Metacarpal, 3));
      EXPECT_LT(lengthOf(plan, BoneKind::Metatarsal, digit), lengthOf(plan, BoneKind::Metatarsal, 3));
    }
    for (int digit = 2; digit <= 5; ++digit) {
      EXPECT_LT(lengthOf(plan, BoneKind::Metatarsal, 1), lengthOf(plan, BoneKind::Metatarsal, digit));
      EXPECT_GT(
          limbPlanValue(*planTable(plan).limbs, {BoneKind::Metatarsal, 1, 0, Side::Left}, Measure::ShaftWidth),
          limbPlanValue(*planTable(plan).limbs, {BoneKind::Metatarsal, digit, 0, Side::Left}, Measure::ShaftWidth));
    }
    const auto claw = [&](int digit, int joint) {
      return limbPlanValue(*planTable(plan).limbs, {BoneKind::PesPhalanx, digit, joint, Side::Left}, Measure::Length);
    };
    EXPECT_GT(claw(1, 2), claw(2, 3));
    EXPECT_GT(claw(2, 3), claw(3, 4));
  }
}

// The invented high browser's own lengths, mm (demo animal).
TEST(LimbPlan, HighBrowserHasItsLengths) {
  const BodyPlan plan = BodyPlan::HighBrowser;
  EXPECT_DOUBLE_EQ(limbPlanValue(*planTable(plan).limbs, {BoneKind::Skull}, Measure::Length), 0.520);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Scapula), 1.270);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Humerus), 1.180);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Radius), 0.830);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Ulna), 0.865);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Metacarpal, 3), 0.350);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Femur), 1.500);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Tibia), 0.960);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Fibula), 0.990);
  EXPECT_DOUBLE_EQ(lengthOf(plan, BoneKind::Metatarsal, 3), 0.215);
}

}  // namespace
}  // namespace zyga::anatomy
