#include <gtest/gtest.h>

#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using anatomy::FacetRole;
using test::kOnlyJoint;
using Outcome = ArticulationNote::Outcome;
using Missing = std::vector<ArticulationNote::MissingFacet>;

ArticulationNote noteOf(const anatomy::Specimen& specimen) {
  return articulationNote(specimen, kOnlyJoint, articulate(specimen, kOnlyJoint, 0));
}

TEST(ArticulationNote, isGoodForBonesThatFit) { EXPECT_TRUE(noteOf(test::twoVertebrae({.tilt = 0.6})).good()); }

TEST(ArticulationNote, namesEachFacetThatIsMissing) {
  anatomy::Specimen specimen = test::twoVertebrae();
  specimen.bones[1].facets.erase(specimen.bones[1].facets.begin());
  EXPECT_EQ(noteOf(specimen).outcome, Outcome::NoFacets);
  EXPECT_EQ(noteOf(specimen).missing, (Missing{{{1}, FacetRole::PostzygLeft}}));
  specimen.bones[0].facets.pop_back();
  EXPECT_EQ(noteOf(specimen).missing, (Missing{{{0}, FacetRole::PrezygRight}, {{1}, FacetRole::PostzygLeft}}));
}

TEST(ArticulationNote, namesTheBonesOfTheTailTheRightWayRound) {
  anatomy::Specimen specimen = test::twoVertebrae({.tail = true});
  specimen.bones[0].facets.pop_back();  // the cranial bone is the proximal one here
  EXPECT_EQ(noteOf(specimen).missing, (Missing{{{0}, FacetRole::PostzygRight}}));
}

TEST(ArticulationNote, saysWhenFacetsFaceTheSameWay) {
  anatomy::Specimen specimen = test::twoVertebrae();
  for (anatomy::Facet& facet : specimen.bones[1].facets) facet.normal = -facet.normal;
  EXPECT_EQ(noteOf(specimen).outcome, Outcome::SameWay);
}

TEST(ArticulationNote, saysWhenNoPositionBringsTheFacetsTogether) {
  anatomy::Specimen specimen = test::twoVertebrae();
  test::askForRotation(specimen, Eigen::AngleAxisd(1.7, Eigen::Vector3d::UnitZ()).toRotationMatrix());
  EXPECT_EQ(noteOf(specimen).outcome, Outcome::NoPosition);
}

TEST(ArticulationNote, saysHowFarCrushedFacetsStayOffCentre) {
  anatomy::Specimen specimen = test::twoVertebrae();
  for (anatomy::Facet& facet : specimen.bones[1].facets) facet.centre.y() *= 1.5;  // 25 mm farther out on either side
  EXPECT_EQ(noteOf(specimen).outcome, Outcome::Poor);
  EXPECT_NEAR(noteOf(specimen).residual, 0.025, 5e-5);
}

TEST(ArticulationNote, isPartOfTheVerdict) {
  anatomy::Specimen specimen = test::twoVertebrae();
  const Assumptions assumptions;
  const auto verdict = [&] {
    return assessJoint(specimen, articulate(specimen, assumptions), assumptions, kOnlyJoint, {0.02, 0, 0});
  };
  EXPECT_TRUE(verdict().articulation.good());
  specimen.bones[1].facets.pop_back();
  EXPECT_EQ(verdict().articulation.missing, (Missing{{{1}, FacetRole::PostzygRight}}));
}

}  // namespace
}  // namespace zyga::range
