#include "core/study/stress/pressure.h"

#include <gtest/gtest.h>

#include "core/kinematics/standing.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "tests/support/sample_animal.h"

namespace zyga::study {
namespace {

class SamplePressure : public testing::TestWithParam<const char*> {
 protected:
  Pressure with(const HeartPlace& heart) const {
    return pressure({std::make_shared<const anatomy::Specimen>(specimen_), assumptions_, articulation_, pose_}, heart);
  }

  anatomy::Specimen specimen_ = test::sampleAnimal(GetParam());
  range::Assumptions assumptions_ = range::grownAnimal();
  kinematics::Articulation articulation_ = range::articulate(specimen_, assumptions_);
  kinematics::Pose pose_ = kinematics::stand(specimen_, articulation_, kinematics::Pose::neutral(specimen_));
};

TEST_P(SamplePressure, HeartLiesInTheChest) {
  const auto X_WB = kinematics::forwardKinematics(specimen_, articulation_, pose_);
  const auto column = *specimen_.findBone("D4");
  const auto rib = *specimen_.findBone("rib.D4.L");
  const double top = X_WB[column.value].translation().z();
  const double bottom = (X_WB[rib.value] * specimen_[rib].landmark("tip")).z();
  EXPECT_NEAR(heartAt(specimen_, X_WB, {0}).z(), bottom, 1e-9);
  EXPECT_NEAR(heartAt(specimen_, X_WB, {1}).z(), top, 1e-9);
  EXPECT_NEAR(heartAt(specimen_, X_WB, {0.5}).z(), 0.5 * (top + bottom), 1e-9);
}

TEST_P(SamplePressure, RowsAreHeightTimesDensity) {
  const Pressure p = with({});
  for (const auto& row : p.rows) {
    const auto& pose = p.elevation[row.which].pose;
    const auto X_WB = kinematics::forwardKinematics(specimen_, articulation_, pose);
    const auto skull = *specimen_.findBone("skull");
    const double head = (X_WB[skull.value] * specimen_[skull].landmark("foramenMagnum")).z();
    EXPECT_NEAR(row.pressure, (head - p.heartHeight) * 1055 / 13.6, 1e-9);
    EXPECT_LE(row.low, row.pressure);
    EXPECT_GE(row.high, row.pressure);
    EXPECT_NEAR(row.atHeart, std::max(0.0, row.pressure) + 100, 1e-9);
  }
  EXPECT_GT(p.rows[1].pressure, p.rows[0].pressure) << "the raised head asks for more";
}

TEST_P(SamplePressure, AHigherHeartHasLessToLift) {
  EXPECT_LT(with({0.8}).rows[1].pressure, with({0.2}).rows[1].pressure);
}

INSTANTIATE_TEST_SUITE_P(Animals, SamplePressure, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::study
