#include "ui/strip/strip_columns.h"

#include <gtest/gtest.h>

#include "tests/ui/document_sample.h"

namespace zyga::ui {
namespace {

using anatomy::Region;

class StripColumnsTest : public testing::Test {
 protected:
  const files::Project project_ = sampleProject();
  const anatomy::Specimen& specimen_ = project_.specimen();
  const StripColumns strip_ = stripColumns(specimen_);
};

TEST_F(StripColumnsTest, RunsFromSnoutToTailTipWithOneColumnAJoint) {
  // 13 cervicals, 11 dorsals, 5 fused sacrals, 52 caudals: the skull's joint, 12 within the neck, one to the trunk, 10
  // within it, one to the sacrum, one to the tail, 51 within it.
  ASSERT_EQ(strip_.columns.size(), 1u + 12 + 1 + 10 + 1 + 1 + 51);
  EXPECT_EQ(specimen_[strip_.columns.front().joint].id, "skull-C1");
  EXPECT_EQ(specimen_[strip_.columns[13].joint].id, "C13-D1");
  EXPECT_EQ(specimen_[strip_.columns[24].joint].id, "D11-S1");
  EXPECT_EQ(specimen_[strip_.columns[25].joint].id, "S5-Ca1");
  EXPECT_EQ(specimen_[strip_.columns.back().joint].id, "Ca51-Ca52");
}

TEST_F(StripColumnsTest, PlacesGrowAndStayWithinTheLength) {
  for (std::size_t i = 1; i < strip_.columns.size(); ++i)
    EXPECT_GT(strip_.columns[i].place, strip_.columns[i - 1].place);
  EXPECT_GT(strip_.columns.front().place, 0);
  EXPECT_LT(strip_.columns.back().place, strip_.length);
}

TEST_F(StripColumnsTest, SacrumIsOneBlockWithoutColumns) {
  ASSERT_EQ(strip_.regions.size(), 4u);
  EXPECT_EQ(strip_.regions[0].region, Region::Cervical);
  EXPECT_EQ(strip_.regions[0].columns, 14u);
  EXPECT_EQ(strip_.regions[1].region, Region::Dorsal);
  EXPECT_EQ(strip_.regions[1].columns, 11u);
  EXPECT_EQ(strip_.regions[2].region, Region::Sacral);
  EXPECT_EQ(strip_.regions[2].columns, 0u);
  EXPECT_EQ(strip_.regions[3].region, Region::Caudal);
  EXPECT_EQ(strip_.regions[3].columns, 52u);
  for (const StripStation& station : strip_.stations)
    EXPECT_EQ(station.bones.size(), regionOf(specimen_[station.bones.front()].name) == Region::Sacral ? 5u : 1u);
}

TEST_F(StripColumnsTest, FindsTheColumnOfAJoint) {
  const auto joint = specimen_.findJoint("C6-C7");
  ASSERT_TRUE(joint);
  EXPECT_EQ(strip_.columnOf(*joint), 6u);
  EXPECT_EQ(strip_.columnOf(*specimen_.findJoint("knee.L")), std::nullopt);
}

TEST(StripColumns, FollowOtherCounts) {
  anatomy::MeasurementTable table;
  table.counts = {4, 9, 4, 10};
  const files::Project project = files::projectFromTable(table);
  EXPECT_EQ(stripColumns(project.specimen()).columns.size(), 1u + 3 + 1 + 8 + 1 + 1 + 9);
}

TEST(StripColumns, OfNothingAreEmpty) {
  const StripColumns strip = stripColumns({});
  EXPECT_TRUE(strip.columns.empty());
  EXPECT_TRUE(strip.regions.empty());
}

}  // namespace
}  // namespace zyga::ui
