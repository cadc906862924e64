#include <gtest/gtest.h>

#include "core/kinematics/placement.h"
#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

/// The neutral articulation of the sample animals, whole columns at once.
namespace zyga::range {
namespace {

using anatomy::JointIndex;
using test::kDegree;

Assumptions withCartilage(double percent, NeutralBy by = NeutralBy::Facets) {
  Assumptions assumptions;
  assumptions.neutralBy = by;
  assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = percent;
  return assumptions;
}

class SampleNeutral : public testing::TestWithParam<const char*> {
 protected:
  const anatomy::Specimen specimen = test::sampleAnimal(GetParam());

  std::vector<JointIndex> facetJoints() const {
    std::vector<JointIndex> joints;
    for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
      if (specimen.joints[j].hasFacets()) joints.push_back({j});
    }
    return joints;
  }
};

// Thicknesses from none to a juvenile giraffe's (Taylor & Wedel 2013, PLoS ONE 8(10):e78214).
TEST_P(SampleNeutral, isNeverBeyondWhateverTheCartilage) {
  for (const double percent : {0.0, 5.0, 10.0, 15.0, 24.0}) {
    const Assumptions assumptions = withCartilage(percent);
    const Assessment assessment =
        assess(specimen, articulate(specimen, assumptions), assumptions, kinematics::Pose::neutral(specimen));
    for (const JointVerdict& verdict : assessment.joints)
      EXPECT_LT(verdict.level, Level::Beyond) << specimen[verdict.joint].id;
  }
}

TEST_P(SampleNeutral, isSolvedWithoutAWord) {
  for (const NeutralBy by : {NeutralBy::Facets, NeutralBy::FacetsAndCentra}) {
    const auto articulation = articulate(specimen, withCartilage(4.5, by));
    for (const JointIndex joint : facetJoints()) {
      EXPECT_TRUE(articulation[joint].solved) << specimen[joint].id;
      if (by == NeutralBy::FacetsAndCentra) continue;  // there wedges may well pull facets off centre
      EXPECT_TRUE(articulationNote(specimen, joint, articulation[joint]).good());
    }
  }
}

// The published law holds on whole animals, tilted facets and all (Taylor 2014, PeerJ 2:e712) to within
// (t/h)^3 / 12, by which 2 atan(t/2h) stays short of t/h, and 0.2 degree for facets that are tilted.
TEST_P(SampleNeutral, cartilageTurnsEveryJointByThicknessOverHeight) {
  const auto bare = articulate(specimen, withCartilage(0));
  for (const double percent : {4.5, 10.0, 15.0}) {
    const Assumptions assumptions = withCartilage(percent);
    const auto padded = articulate(specimen, assumptions);
    for (const JointIndex j : facetJoints()) {
      const anatomy::Joint& joint = specimen[j];
      const double ratio = assumptions.cartilageOf(joint.region).thickness(joint) / facetHeight(specimen, j);
      if (ratio > 0.58) continue;
      const auto turn = kinematics::jointAngles(joint, bare[j].rotation.transpose() * padded[j].rotation);
      const double bound = ratio * ratio * ratio / 12 + 0.2 * kDegree;
      EXPECT_NEAR(turn[0] / kDegree, ratio / kDegree, bound / kDegree) << joint.id << " at " << percent << " %";
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Animals, SampleNeutral, testing::Values("high_browser", "low_browser"),
                         [](const auto& info) { return std::string(info.param); });

}  // namespace
}  // namespace zyga::range
