#include "core/anatomy/bone_name.h"

#include <gtest/gtest.h>

#include <set>

#include "core/anatomy/plan/body_plan.h"

namespace zyga::anatomy {
namespace {

TEST(BoneName, EveryBoneOfAnAnimalHasItsOwnIdThatReadsBack) {
  std::set<std::string> ids;
  for (const BodyPlan plan : {BodyPlan::HighBrowser, BodyPlan::LowBrowser}) {
    ids.clear();
    for (const BoneName& name : allBones(plan, {19, 14, 6, 90})) {
      const std::string id = toId(name);
      EXPECT_TRUE(ids.insert(id).second) << id << " stands for two bones";
      ASSERT_TRUE(parseBoneId(id).has_value()) << id;
      EXPECT_EQ(*parseBoneId(id), name) << id;
    }
  }
}

TEST(BoneName, TheIdsOfTheTrade) {
  EXPECT_EQ(toId({BoneKind::Cervical, 7, 0, Side::Midline}), "C7");
  EXPECT_EQ(toId({BoneKind::Caudal, 12, 0, Side::Midline}), "Ca12");
  EXPECT_EQ(toId({BoneKind::DorsalRib, 3, 0, Side::Left}), "rib.D3.L");
  EXPECT_EQ(toId({BoneKind::ManusPhalanx, 1, 2, Side::Right}), "manus1.2.R");
}

TEST(BoneName, RefusesWhatIsNoBone) {
  for (const char* id : {"", "C", "C0", "C07", "c7", "C7x", "C-1", "femur", "femur.X", "skull.L", "manus1.L", "Ca",
                         "rib.3.L", "C99999999999999999999"}) {
    EXPECT_FALSE(parseBoneId(id).has_value()) << id;
  }
}

TEST(BoneName, MirrorTurnsSidesOnly) {
  const BoneName left = *parseBoneId("humerus.L");
  EXPECT_EQ(toId(mirrored(left)), "humerus.R");
  EXPECT_EQ(mirrored(mirrored(left)), left);
  EXPECT_EQ(toId(mirrored(*parseBoneId("D4"))), "D4");
}

}  // namespace
}  // namespace zyga::anatomy
