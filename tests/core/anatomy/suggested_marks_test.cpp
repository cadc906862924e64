#include "core/anatomy/marks/suggested_marks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/plan/build_specimen.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

const Specimen& animal() {
  static const Specimen specimen = buildSpecimen(fillBlanks(MeasurementTable{}));
  return specimen;
}
const Bone& boneOf(std::string_view id) { return animal()[*animal().findBone(id)]; }

const BoneName kC5{BoneKind::Cervical, 5};
const Eigen::AlignedBox3d kBox(Vector3d(0, 0, 0), Vector3d(0.4, 0.1, 0.2));

LandmarkTable pointsTimes(double factor) {
  LandmarkTable table;
  table.points[kC5] = {{"caudalRim", factor * Vector3d(0.01, 0.05, 0.05)},
                       {"cranialRim", factor * Vector3d(0.39, 0.05, 0.05)},
                       {"spineTop", factor * Vector3d(0.2, 0.05, 0.19)}};
  return table;
}

TEST(Misfit, TellsTheFactorThatWouldFit) {
  EXPECT_FALSE(misfit(kBox, kC5, pointsTimes(1), {}));
  EXPECT_FALSE(misfit(kBox, kC5, pointsTimes(1.2), {})) << "beside the surface by a little";
  EXPECT_FALSE(misfit(kBox, {BoneKind::Cervical, 6}, pointsTimes(1000), {})) << "of another bone";
  for (const double factor : {1000.0, 100.0, 10.0}) {
    const auto off = misfit(kBox, kC5, pointsTimes(factor), {});
    ASSERT_TRUE(off) << factor;
    EXPECT_DOUBLE_EQ(off->factor, 1 / factor);
    EXPECT_EQ(off->mark, "cranialRim") << "the one that is farthest off";
    EXPECT_GT(off->off, 0.39 * factor - 0.5);
    EXPECT_EQ(reasonOf(kC5, *off).id, marks::kBesideFits);
  }
  // A table in metres whose head says mm: all lie in one spot, which may well be inside the box.
  const auto spot = misfit(kBox, kC5, pointsTimes(0.001), {});
  ASSERT_TRUE(spot);
  EXPECT_DOUBLE_EQ(spot->factor, 1000);
  EXPECT_EQ(reasonOf(kC5, *spot).id, marks::kInOneSpotFits);
  // Nothing fits.
  LandmarkTable wild = pointsTimes(1);
  wild.points[kC5]["canal"] = Vector3d(5, -7, 900);
  const auto lost = misfit(kBox, kC5, wild, {});
  ASSERT_TRUE(lost);
  EXPECT_EQ(lost->factor, 0);
  EXPECT_EQ(reasonOf(kC5, *lost).id, marks::kBeside);
}

TEST(Misfit, HoldsForFacetsAsWell) {
  FacetTable table;
  TabledFacet tabled;
  tabled.facet.centre = Vector3d(39, 5, 10);
  table.facets[kC5][FacetRole::PrezygLeft] = tabled;
  const auto off = misfit(kBox, kC5, {}, table);
  ASSERT_TRUE(off);
  EXPECT_EQ(off->mark, "prezyg.L");
  EXPECT_DOUBLE_EQ(off->factor, 0.01);
}

TEST(JointsAmong, AreThoseWithFacetsBetweenNeighbours) {
  const std::vector<BoneName> bones{*parseBoneId("C3"),  *parseBoneId("C5"), *parseBoneId("C4"),
                                    *parseBoneId("C7"),  *parseBoneId("C1"), *parseBoneId("C2"),
                                    *parseBoneId("C13"), *parseBoneId("D1"), *parseBoneId("femur.L")};
  std::vector<std::string> ids;
  for (const MetAt& met : jointsAmong(animal(), bones)) {
    ids.push_back(animal()[met.joint].id);
    EXPECT_EQ(ids.back(), toId(bones[met.cranial]) + "-" + toId(bones[met.caudal]));
  }
  std::sort(ids.begin(), ids.end());
  EXPECT_EQ(ids, (std::vector<std::string>{"C13-D1", "C2-C3", "C3-C4", "C4-C5"}))
      << "C6 is missing; the atlas has none";
}

TEST(PutMarks, OfATableSlideAsTheTableSaysOrAsTheSculptedBone) {
  const Bone& bone = boneOf("C5");
  FacetTable facets;
  LandmarkTable points;
  for (const auto& [name, p] : bone.landmarks) points.points[bone.name][name] = p;
  for (const Facet& facet : bone.facets) {
    TabledFacet tabled{facet, true, 0.0002, {}};
    tabled.facet.slide = facet.across();  // as nobody would guess
    tabled.slideGiven = isPrezyg(facet.role);
    facets.facets[bone.name][facet.role] = tabled;
  }
  Scan scan;
  scan.bone = bone.name;
  putMarks(scan, bone, points, facets);
  EXPECT_TRUE(scan.placed);
  ASSERT_EQ(scan.facets.size(), bone.facets.size());
  for (const ScanFacet& marked : scan.facets) {
    const Facet& truth = *bone.facet(marked.facet.role);
    const Vector3d expected = isPrezyg(truth.role) ? truth.across() : truth.slide;
    EXPECT_GT(marked.facet.slide.dot(expected), 0.99) << toText(truth.role);
  }
  // And back into tables.
  const auto again = facetTableOf(std::array{scan});
  EXPECT_EQ(again.facets.at(bone.name).size(), bone.facets.size());
  EXPECT_EQ(landmarkTableOf(std::array{scan}).points.at(bone.name).size(), bone.landmarks.size());
}

TEST(TakeOver, NotesWhatIsOnlySuggestedUntilItIsMadeAnewOrTakenAway) {
  const Bone& c5 = boneOf("C5");
  SuggestedMarks suggested;
  suggested.landmarks = {{"spineTop", Vector3d(0.2, 0, 0.19), 0.8}, {"cranialRim", Vector3d(0.39, 0, 0), 0.3}};
  ScanFacet facet{c5.facets.front(), 1e-4};
  facet.facet.role = FacetRole::PrezygLeft;
  suggested.facets = {{facet, 1e-3, 0.9}};
  Scan scan;
  scan.bone = c5.name;
  takeOver(scan, c5, suggested);
  const std::map<std::string, double, std::less<>> noted{{"spineTop", 0.8}, {"prezyg.L", 0.9}};
  EXPECT_EQ(scan.suggested, noted);
  EXPECT_FALSE(scan.landmarks.contains("cranialRim")) << "not sure enough";
  takeOver(scan, c5, suggested);
  EXPECT_EQ(scan.suggested, noted) << "what is marked is left as it is";
  setLandmark(scan, c5, "spineTop", Vector3d(0.21, 0, 0.19));
  EXPECT_FALSE(scan.suggested.contains("spineTop"));
  takeOver(scan, c5, suggested);
  EXPECT_FALSE(scan.suggested.contains("spineTop")) << "made by hand";
  removeFacet(scan, FacetRole::PrezygLeft);
  EXPECT_TRUE(scan.suggested.empty());
}

TEST(UnitOfSet, IsThatOfTheMiddleOne) {
  // Metres, beside an animal twelve times as large; one bone is an outlier.
  std::vector<ScanExtents> set{{0.04, 0.5}, {0.05, 0.6}, {0.9, 0.1}, {0.045, 0.5}, {0.04, 0.45}};
  const auto guess = guessUnitOfSet(set);
  EXPECT_EQ(guess.unit, ScanUnit::Metre);
  EXPECT_TRUE(guess.sure);
  EXPECT_NEAR(guess.factor, 1 / 11.25, 0.01);
  EXPECT_TRUE(isTenfold(guess.factor));
  EXPECT_FALSE(isTenfold(0.4));
  EXPECT_FALSE(isTenfold(2.9));
  EXPECT_FALSE(isTenfold(0)) << "nothing known";
  for (auto& each : set) each.scan *= 4000;
  EXPECT_EQ(guessUnitOfSet(set).unit, ScanUnit::Millimetre);
  EXPECT_EQ(guessUnitOfSet({}).bones, 0u);
  // Half-way between two units nothing is sure.
  EXPECT_FALSE(guessUnitOfSet({{1.0, 0.1}}).sure);
}

TEST(UnitOfSet, TellsWhichBoneIsNotOfTheOthersSize) {
  // The animal's bones are ten times as large as all; the third is beside that twelve times too small.
  const std::vector<double> sizes = sizesAmong({{0.05, 0.5}, {0.055, 0.5}, {0.004, 0.48}, {0.06, 0.5}});
  ASSERT_EQ(sizes.size(), 4u);
  for (const std::size_t own : {0u, 1u, 3u}) EXPECT_FALSE(isTenfold(sizes[own])) << own;
  EXPECT_NEAR(sizes[2], 1.0 / 13.2, 1e-6);
  EXPECT_TRUE(isTenfold(sizes[2]));
  // Of two nobody can say which is wrong: both are off.
  const std::vector<double> two = sizesAmong({{0.5, 0.5}, {5, 0.5}});
  EXPECT_NEAR(two[0], 0.1, 1e-12);
  EXPECT_NEAR(two[1], 10, 1e-12);
  EXPECT_THAT(sizesAmong({{0.5, 0.5}}), testing::ElementsAre(0)) << "nothing to be held against";
  EXPECT_EQ(sizesAmong({{0.5, 0.5}, {0, 0.5}, {0.6, 0.5}})[1], 0) << "nothing known of it";
}

}  // namespace
}  // namespace zyga::anatomy
