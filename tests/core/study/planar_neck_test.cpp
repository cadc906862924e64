#include "core/study/reach/planar_neck.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/kinematics/standing.h"
#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/study/reach/elevation.h"
#include "tests/support/random_tree.h"
#include "tests/support/sample_animal.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;

double brutest(const std::vector<PlanarJoint>& chain, const Vector2d& tip, const Vector2d& direction, int steps) {
  double most = -1e9;
  int count = 1;
  for (std::size_t k = 0; k < chain.size(); ++k) count *= steps;
  for (int i = 0; i < count; ++i) {
    std::vector<double> angles;
    int rest = i;
    for (const PlanarJoint& joint : chain) {
      angles.push_back(std::lerp(joint.min, joint.max, static_cast<double>(rest % steps) / (steps - 1)));
      rest /= steps;
    }
    most = std::max(most, tipAt(chain, tip, angles).dot(direction));
  }
  return most;
}

// One link free all the way round points where it is asked to; one that is not stops at its end.
TEST(FarthestAngles, OfOneLink) {
  const std::vector<PlanarJoint> chain{{{1, 1}, -3, 3}};
  EXPECT_NEAR(farthestAngles(chain, {3, 1}, {0, 1})[0], std::numbers::pi / 2, 1e-9);
  const std::vector<PlanarJoint> stiff{{{1, 1}, -0.2, 0.3}};
  EXPECT_NEAR(farthestAngles(stiff, {3, 1}, {0, 1})[0], 0.3, 1e-12);
}

// Random chains in random directions against every combination on a grid of 21 angles a joint.
TEST(FarthestAngles, NoPostureOfAGridGoesFarther) {
  test::Chance chance(11);
  for (int trial = 0; trial < 40; ++trial) {
    std::vector<PlanarJoint> chain;
    Vector2d at(0, 0);
    for (int k = 0; k < 4; ++k) {
      const double wide = trial % 2 == 0 ? 0.5 : 2.5;  // necks, and arms that fold
      chain.push_back({at, chance.in(-wide, 0.1), chance.in(0.1, wide)});
      at += Vector2d(chance.in(0.3, 1), chance.in(-0.3, 0.3));
    }
    const Vector2d direction = Vector2d(chance.in(-1, 1), chance.in(-1, 1)).normalized();
    const auto angles = farthestAngles(chain, at, direction);
    for (std::size_t k = 0; k < chain.size(); ++k) {
      EXPECT_GE(angles[k], chain[k].min);
      EXPECT_LE(angles[k], chain[k].max);
    }
    const double found = tipAt(chain, at, angles).dot(direction);
    EXPECT_GE(found, brutest(chain, at, direction, 21) - 1e-9) << trial;
  }
}

class SampleNeck : public testing::TestWithParam<const char*> {};

/// No neck bent evenly goes higher, and every joint keeps inside its range.
TEST_P(SampleNeck, HighestIsInsideTheRangesAndAboveEveryEvenBend) {
  const auto specimen = test::sampleAnimal(GetParam());
  const range::Assumptions assumptions = range::grownAnimal();
  const auto articulation = range::articulate(specimen, assumptions);
  const auto pose = kinematics::stand(specimen, articulation, kinematics::Pose::neutral(specimen));
  const range::Scenario scenario(std::make_shared<const anatomy::Specimen>(specimen), assumptions, articulation, pose);
  const PlanarNeck neck = planarNeck(scenario);
  const Elevation e = elevation(scenario);
  const double highest = e[NeckCarriage::Highest].carriage.snoutHeight;
  for (const auto joint : neck.joints) {
    EXPECT_NE(range::levelAt(specimen, articulation, assumptions, joint, e[NeckCarriage::Highest].pose[joint]),
              range::Level::Beyond);
  }
  for (double share = 0; share <= 1; share += 0.05) {
    std::vector<double> angles;
    for (const PlanarJoint& joint : neck.chain) angles.push_back(share * joint.max);
    EXPECT_LE(tipAt(neck.chain, neck.tip, angles).y(), highest + 1e-9);
  }
  EXPECT_GE(highest, e[NeckCarriage::Dorsal].carriage.snoutHeight);
  EXPECT_LE(e[NeckCarriage::Lowest].carriage.snoutHeight, e[NeckCarriage::Ventral].carriage.snoutHeight);
}

/// The flat chain says where the bones are.
TEST_P(SampleNeck, FlatChainAgreesWithThePlacedBones) {
  const auto specimen = test::sampleAnimal(GetParam());
  const range::Assumptions assumptions = range::grownAnimal();
  const auto articulation = range::articulate(specimen, assumptions);
  const auto pose = kinematics::stand(specimen, articulation, kinematics::Pose::neutral(specimen));
  const PlanarNeck neck =
      planarNeck({std::make_shared<const anatomy::Specimen>(specimen), assumptions, articulation, pose});
  test::Chance chance(3);
  kinematics::Pose bent = neck.neutral;
  std::vector<double> angles;
  for (std::size_t i = 0; i < neck.joints.size(); ++i) {
    angles.push_back(chance.in(neck.chain[i].min, neck.chain[i].max));
    bent[neck.joints[i]][0] = angles.back();
  }
  const auto X_WB = kinematics::forwardKinematics(specimen, articulation, bent);
  const Vector2d snout = neckLine(specimen, X_WB, neck.plane).back();
  // Cartilage is laid beyond the turn, so that the flat chain is exact without it alone; there is none here.
  EXPECT_NEAR((snout - tipAt(neck.chain, neck.tip, angles)).norm(), 0, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(Animals, SampleNeck, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::study
