#include <gtest/gtest.h>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/plan/plan_table.h"
#include "core/anatomy/summary.h"

/// Every body plan is a table: what holds for all of them, and what sets columns of mammals and birds apart.
namespace zyga::anatomy {
namespace {

MeasurementTable blank(BodyPlan plan) {
  MeasurementTable table;
  table.plan = plan;
  table.counts = planTable(plan).counts;
  return table;
}

class EveryPlan : public testing::TestWithParam<BodyPlan> {};
INSTANTIATE_TEST_SUITE_P(Plans, EveryPlan, testing::ValuesIn(kBodyPlans), [](const auto& of) {
  std::string name(toText(of.param));
  std::replace(name.begin(), name.end(), ' ', '_');
  return name;
});

TEST_P(EveryPlan, HasTheNameThatTablesCallIt) { EXPECT_EQ(bodyPlanFromText(toText(GetParam())), GetParam()); }

TEST_P(EveryPlan, BuildsAWholeColumnFromABlankTable) {
  const MeasurementTable table = blank(GetParam());
  const Specimen animal = buildSpecimen(fillBlanks(table));
  std::optional<BoneName> name = BoneName{BoneKind::Caudal, table.counts.caudal};
  int vertebrae = 0;
  for (; name; name = vertebraBefore(table.counts, *name)) {
    ++vertebrae;
    const auto bone = animal.findBone(toId(*name));
    ASSERT_TRUE(bone) << toId(*name);
    EXPECT_GT(animal[*bone].measures.value(Measure::Length), 0) << toId(*name);
    EXPECT_GT(animal[*bone].measures.value(Measure::CotyleHeight), 0) << toId(*name);
    const auto before = vertebraBefore(table.counts, *name);
    EXPECT_TRUE(!before || animal.findJoint(toId(*before) + "-" + toId(*name))) << toId(*name);
  }
  int counted = 0;
  for (const BoneKind kind : kColumnKinds) counted += countOf(table.counts, kind);
  EXPECT_EQ(vertebrae, counted);
}

TEST_P(EveryPlan, ComesBackFromItsTable) {
  MeasurementTable table = blank(GetParam());
  table.name = "an animal";
  table.rows = {{{BoneKind::Cervical, 4}, {}, Evidence::Found, "invented"}};
  table.rows[0].measures[Measure::Length] = {0.05, CellOrigin::Measured};
  const TableReading reading = readMeasurementTable(writeMeasurementTable(table), "t.csv");
  ASSERT_TRUE(reading.usable()) << debugText(reading.messages.front());
  EXPECT_EQ(reading.table, table);
}

TEST_P(EveryPlan, RefusesACountThatItCannotHave) {
  const CountBounds cervicals = planTable(GetParam()).cervicals;
  const auto read = [&](int count) {
    return readMeasurementTable("# cervicals: " + std::to_string(count) +
                                    "\n# plan: " + std::string(toText(GetParam())) + "\nbone,length (mm)\nC3,50\n",
                                "t.csv");
  };
  EXPECT_TRUE(read(cervicals.most).usable());
  EXPECT_FALSE(read(cervicals.most + 1).usable());
}

// Common practice, no source: seven cervicals, thoracics with and lumbars without ribs; in birds no lumbars.
TEST(MammalAndBird, HaveTheRegionsOfTheirClass) {
  EXPECT_EQ(planTable(BodyPlan::Mammal).counts.cervical, 7);
  EXPECT_EQ(lastOfTrunk(planTable(BodyPlan::Mammal).counts), (BoneName{BoneKind::Lumbar, 7}));
  EXPECT_EQ(lastOfTrunk(planTable(BodyPlan::Bird).counts).kind, BoneKind::Dorsal);
  for (const BodyPlan plan : {BodyPlan::Mammal, BodyPlan::Bird})
    for (const BoneName& name : allBones(plan, planTable(plan).counts))
      EXPECT_TRUE(isVertebra(name.kind)) << toId(name);
}

TEST(MammalAndBird, CountWhatTheNamesOfBonesSay) {
  using enum BoneKind;
  const auto counts = [](std::vector<BoneName> known) { return countsFrom(BodyPlan::Mammal, known); };
  EXPECT_EQ(counts({}), planTable(BodyPlan::Mammal).counts);
  EXPECT_EQ(counts({{Lumbar, 4}, {Lumbar, 5}, {Sacral, 1}}).lumbar, 5) << "the sacrum follows";
  EXPECT_EQ(counts({{Lumbar, 4}, {Lumbar, 5}}).lumbar, 7) << "more may follow";
  EXPECT_EQ(counts({{Dorsal, 12}, {Lumbar, 1}}).dorsal, 12);
  EXPECT_EQ(counts({{Caudal, 23}}).caudal, 23);
  EXPECT_EQ(counts({{Cervical, 30}}).cervical, 7) << "no mammal";
  EXPECT_EQ(countsFrom(BodyPlan::HighBrowser, std::vector<BoneName>{{Cervical, 15}, {Dorsal, 1}}).cervical, 15);
}

TEST(MammalAndBird, TakeTheTotalOfTheTrunkForThoracicsAndLumbars) {
  MeasurementTable table = blank(BodyPlan::Mammal);
  table.regionTotals["trunk"] = 1.0;
  EXPECT_NEAR(summarise(buildSpecimen(fillBlanks(table))).trunk, 1.0, 1e-9);
}

TEST(Vertebrae, AreCountedFromTheHead) {
  const RegionCounts counts{7, 13, 3, 20, 7};
  EXPECT_EQ(vertebraBefore(counts, {BoneKind::Sacral, 1}), (BoneName{BoneKind::Lumbar, 7}));
  EXPECT_EQ(vertebraBefore(counts, {BoneKind::Lumbar, 1}), (BoneName{BoneKind::Dorsal, 13}));
  EXPECT_EQ(vertebraBefore({13, 11, 5, 52}, {BoneKind::Sacral, 1}), (BoneName{BoneKind::Dorsal, 11}));
  EXPECT_FALSE(vertebraBefore(counts, {BoneKind::Cervical, 1}));
  EXPECT_FALSE(vertebraBefore(counts, {BoneKind::Femur}));
}

}  // namespace
}  // namespace zyga::anatomy
