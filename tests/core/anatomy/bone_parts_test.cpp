#include "core/anatomy/bone_parts.h"

#include <gmock/gmock.h>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/build_specimen.h"

namespace zyga::anatomy {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const Specimen& animal() {
  static const Specimen specimen = buildSpecimen(fillBlanks(MeasurementTable{}));
  return specimen;
}

std::vector<std::string> idsOf(const std::vector<BoneIndex>& bones) {
  std::vector<std::string> ids;
  for (const BoneIndex bone : bones) ids.push_back(animal()[bone].id);
  return ids;
}

TEST(BoneParts, AnIdIsOneBone) { EXPECT_THAT(idsOf(bonesCalled(animal(), "humerus.L")), ElementsAre("humerus.L")); }

TEST(BoneParts, ThePelvisIsItsSixBonesOrThreeOfASide) {
  EXPECT_EQ(bonesCalled(animal(), "pelvis").size(), 6u);
  EXPECT_THAT(idsOf(bonesCalled(animal(), "pelvis.R")), ElementsAre("ilium.R", "pubis.R", "ischium.R"));
}

TEST(BoneParts, EveryBoneBelongsToOnePart) {
  std::vector<int> parts(animal().bones.size(), 0);
  for (const std::string_view name : partNames())
    for (const BoneIndex bone : bonesCalled(animal(), name)) ++parts[bone.value];
  for (std::size_t i = 0; i < parts.size(); ++i) EXPECT_EQ(parts[i], 1) << animal().bones[i].id;
}

TEST(BoneParts, AListTellsWhatItDoesNotKnow) {
  const BoneList list = bonesInList(animal(), "C5, manus.L,C55,wing,");
  EXPECT_THAT(list.unknown, ElementsAre("C55", "wing", ""));
  EXPECT_TRUE(list.listed[animal().findBone("C5")->value]);
  EXPECT_TRUE(list.listed[animal().findBone("metacarpal1.L")->value]);
  EXPECT_FALSE(list.listed[animal().findBone("metacarpal1.R")->value]);
  EXPECT_THAT(bonesInList(animal(), "neck").unknown, IsEmpty());
}

}  // namespace
}  // namespace zyga::anatomy
