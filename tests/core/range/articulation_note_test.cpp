#include <gtest/gtest.h>

#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using anatomy::FacetRole;
using test::kOnlyJoint;

std::string noteOf(const anatomy::Specimen& specimen) {
  return articulationNote(specimen, kOnlyJoint, articulate(specimen, kOnlyJoint, 0));
}

TEST(ArticulationNote, isEmptyForBonesThatFit) { EXPECT_EQ(noteOf(test::twoVertebrae({.tilt = 0.6})), ""); }

TEST(ArticulationNote, namesEachFacetThatIsMissing) {
  anatomy::Specimen specimen = test::twoVertebrae();
  specimen.bones[1].facets.erase(specimen.bones[1].facets.begin());
  EXPECT_EQ(noteOf(specimen), "C6-C7 can't be articulated: the left postzygapophysis of C6 has no facet");
  specimen.bones[0].facets.pop_back();
  EXPECT_EQ(noteOf(specimen),
            "C6-C7 can't be articulated: the right prezygapophysis of C7 and the left postzygapophysis of C6 have no "
            "facets");
}

TEST(ArticulationNote, namesTheBonesOfTheTailTheRightWayRound) {
  anatomy::Specimen specimen = test::twoVertebrae({.tail = true});
  specimen.bones[0].facets.pop_back();  // the cranial bone is the proximal one here
  EXPECT_EQ(noteOf(specimen), "Ca1-Ca2 can't be articulated: the right postzygapophysis of Ca1 has no facet");
}

TEST(ArticulationNote, saysWhenFacetsFaceTheSameWay) {
  anatomy::Specimen specimen = test::twoVertebrae();
  for (anatomy::Facet& facet : specimen.bones[1].facets) facet.normal = -facet.normal;
  EXPECT_EQ(noteOf(specimen), "C6-C7 can't be articulated: the facets of C6 and C7 face the same way");
}

TEST(ArticulationNote, saysWhenNoPositionBringsTheFacetsTogether) {
  anatomy::Specimen specimen = test::twoVertebrae();
  test::askForRotation(specimen, Eigen::AngleAxisd(1.7, Eigen::Vector3d::UnitZ()).toRotationMatrix());
  EXPECT_EQ(noteOf(specimen),
            "C6-C7 can't be articulated: no position within a right angle brings the facets of C6 and C7 together");
}

TEST(ArticulationNote, saysHowFarCrushedFacetsStayOffCentre) {
  anatomy::Specimen specimen = test::twoVertebrae();
  for (anatomy::Facet& facet : specimen.bones[1].facets) facet.centre.y() *= 1.5;  // 25 mm farther out on either side
  EXPECT_EQ(noteOf(specimen), "C6-C7 articulates roughly: its facets stay 25 mm off centre");
}

TEST(ArticulationNote, isPartOfTheVerdict) {
  anatomy::Specimen specimen = test::twoVertebrae();
  const Assumptions assumptions;
  const auto verdict = [&] {
    return assessJoint(specimen, articulate(specimen, assumptions), assumptions, kOnlyJoint, {0.02, 0, 0});
  };
  EXPECT_EQ(verdict().articulation, "");
  specimen.bones[1].facets.pop_back();
  EXPECT_EQ(verdict().articulation, "C6-C7 can't be articulated: the right postzygapophysis of C6 has no facet");
}

}  // namespace
}  // namespace zyga::range
