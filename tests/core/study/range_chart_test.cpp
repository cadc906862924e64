#include "core/study/reach/range_chart.h"

#include <gtest/gtest.h>

#include <set>

#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "tests/support/sample_animal.h"

namespace zyga::study {
namespace {

class SampleChart : public testing::TestWithParam<const char*> {
 protected:
  const anatomy::Specimen specimen_ = test::sampleAnimal(GetParam());
  const range::Assumptions assumptions_ = range::grownAnimal();
  const kinematics::Articulation articulation_ = range::articulate(specimen_, assumptions_);
  const kinematics::Pose pose_ = kinematics::Pose::neutral(specimen_);
  const RangeChart chart_ =
      rangeChart({std::make_shared<const anatomy::Specimen>(specimen_), assumptions_, articulation_, pose_}).value();
};

TEST_P(SampleChart, RunsFromTheSnoutToTheTailsTip) {
  const auto& c = specimen_.counts;
  ASSERT_EQ(chart_.rows.size(), static_cast<std::size_t>(c.cervical + c.dorsal + 1 + c.caudal));
  EXPECT_EQ(chart_.rows.front().id, "skull-C1");
  EXPECT_EQ(chart_.rows[1].id, "C1-C2");
  EXPECT_EQ(chart_.rows.back().id, "Ca" + std::to_string(c.caudal - 1) + "-Ca" + std::to_string(c.caudal));
  std::set<std::string> ids;
  for (const auto& row : chart_.rows) EXPECT_TRUE(ids.insert(row.id).second) << row.id;
}

TEST_P(SampleChart, RowsAreTheLimitsAndTheirSums) {
  std::array<double, 6> neck{};
  for (const auto& row : chart_.rows) {
    const auto limits = range::limits(specimen_, articulation_, assumptions_, row.joint, Eigen::Vector3d::Zero());
    for (std::size_t k = 0; k < 6; ++k) {
      EXPECT_EQ(row.limits.ends[k].angle, limits.ends[k].angle) << row.id;
      if (row.region == anatomy::Region::Cervical || row.region == anatomy::Region::Skull) {
        neck[k] += limits.ends[k].angle;
      }
    }
    EXPECT_NE(row.level, range::Level::Beyond) << row.id;
    EXPECT_GT(row.rotations.corrected, 0) << row.id;
  }
  for (std::size_t k = 0; k < 6; ++k) EXPECT_NEAR(chart_.neck[k], neck[k], 1e-12);
}

INSTANTIATE_TEST_SUITE_P(Animals, SampleChart, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::study
