#include "core/anatomy/marks/mark_doubts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <iostream>
#include <numbers>
#include <set>

#include "core/anatomy/marks/straighten.h"
#include "core/anatomy/marks/suggested_marks.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/tables/landmark_table.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/project/project.h"
#include "core/files/scan/scan_set.h"
#include "core/solid/facets/mark_fit.h"
#include "core/solid/facets/missing_parts.h"
#include "core/solid/facets/suggest_column.h"
#include "core/solid/facets/upright.h"
#include "core/solid/mesh/fit.h"

/// Good marks raise no doubt, a spoilt one raises it about itself: on the sample scans, whose marks are known, and on
/// suggested marks of living animals from open data.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using anatomy::FacetRole;
using Eigen::Vector3d;
using testing::ElementsAre;
using testing::IsEmpty;

const fs::path kScans = fs::path(ZYGAPOSE_SOURCE_DIR) / "samples" / "scans";

std::set<std::string> namesOf(const std::vector<anatomy::MarkDoubt>& doubts) {
  std::set<std::string> names;
  for (const auto& doubt : doubts) names.insert(doubt.mark);
  return names;
}

std::string told(const std::vector<anatomy::MarkDoubt>& doubts) {
  std::string out;
  for (const auto& doubt : doubts) out += doubt.mark + ": " + debugText(doubt.why) + "\n";
  return out;
}

/// A scan that is marked, and the bone that it takes the place of.
struct MarkedScan {
  anatomy::Bone sculpted;
  ProjectScan scan;
  std::unique_ptr<solid::MarkedSurface> surface;

  std::vector<anatomy::MarkDoubt> doubts(const anatomy::Scan& spoilt) const {
    return markDoubts(spoilt, sculpted, *surface);
  }
  std::vector<anatomy::MarkDoubt> doubts() const { return doubts(scan.scan); }
  double size() const { return surface->size(); }
  /// A direction of the bone in the scan's axes.
  Vector3d way(const Vector3d& inBone) const {
    return (boneFromScan(scan.scan).linear().inverse() * inBone).normalized();
  }
};

ScanReader reader() {
  ScanReader out;
  out.program = ZYGAPOSE_READ_SCAN;
  return out;
}

/// The four bones of the sample with all their marks, as a careful person makes them.
const std::vector<MarkedScan>& sampleScans() {
  static const std::vector<MarkedScan> scans = [] {
    const fs::path file = fs::path(ZYGAPOSE_SOURCE_DIR) / "samples" / "high_browser.csv";
    const auto sculpted =
        anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::readMeasurementTable(readWhole(file), "table").table));
    const auto landmarks = anatomy::readLandmarkTable(readWhole(kScans / "landmarks.csv"), "landmarks.csv");
    std::vector<MarkedScan> out;
    for (const char* id : {"C5", "C6", "C7", "C8"}) {
      MarkedScan marked;
      marked.sculpted = sculpted[*sculpted.findBone(id)];
      const auto clean = readCleanScan(kScans / (std::string(id) + ".ply"), reader(), extentOf(marked.sculpted));
      marked.scan = projectScan(*clean, marked.sculpted, clean->unitGuess.unit, std::string(id) + ".ply");
      for (const auto& [name, p] : landmarks.table.points.at(marked.sculpted.name))
        setLandmark(marked.scan.scan, marked.sculpted, name, p);
      anatomy::Scan straight = marked.scan.scan;
      if (id == std::string("C7"))
        straight = straightened(straight, marked.sculpted, straightening(straight, anatomy::DeformedBy::Shear).map);
      const Eigen::Affine3d X_SB = boneFromScan(straight).inverse();
      for (const anatomy::Facet& facet : marked.sculpted.facets) {
        const auto triangles = solid::brushTriangles(*marked.scan.mesh, X_SB * facet.centre,
                                                     X_SB.linear() * facet.normal, 0.5 * facet.length(), 0.35);
        const auto fit =
            solid::fitFacet(solid::patchOf(*marked.scan.mesh, triangles), facet.role, X_SB.linear() * facet.slide);
        setFacet(marked.scan.scan, marked.sculpted, {fit.facet, fit.quality.rms});
      }
      marked.surface = std::make_unique<solid::MarkedSurface>(*marked.scan.mesh);
      out.push_back(std::move(marked));
    }
    return out;
  }();
  return scans;
}

/// The middle of the canal follows from its ends and is no mark of its own.
std::size_t marksOn(const anatomy::Scan& scan) {
  return scan.landmarks.size() - scan.landmarks.count("canal") + scan.facets.size();
}

anatomy::ScanFacet& facetIn(anatomy::Scan& scan, FacetRole role) {
  return *std::find_if(scan.facets.begin(), scan.facets.end(), [&](const auto& f) { return f.facet.role == role; });
}

TEST(MarkDoubts, GoodMarksOfTheSampleRaiseNone) {
  std::size_t marks = 0;
  for (const MarkedScan& marked : sampleScans()) {
    marks += marksOn(marked.scan.scan);
    EXPECT_THAT(marked.doubts(), IsEmpty()) << marked.sculpted.id << "\n" << told(marked.doubts());
  }
  std::cout << "no doubt about any of " << marks << " good marks\n";
}

TEST(MarkDoubts, EveryMarkOfTheMiddleThatIsMovedAsideIsDoubtedAlone) {
  std::size_t tried = 0, alone = 0;
  for (const MarkedScan& marked : sampleScans())
    for (const auto& [name, p] : marked.scan.scan.landmarks) {
      if (name.ends_with(".L") || name.ends_with(".R") || name == "canal") continue;
      anatomy::Scan spoilt = marked.scan.scan;
      setLandmark(spoilt, marked.sculpted, name, p + 0.4 * marked.size() * marked.way(Vector3d::UnitY()));
      const auto doubts = marked.doubts(spoilt);
      ++tried;
      alone += namesOf(doubts) == std::set<std::string>{name};
      EXPECT_TRUE(namesOf(doubts).contains(name)) << marked.sculpted.id << " " << name << "\n" << told(doubts);
      EXPECT_EQ(namesOf(doubts).size(), 1u) << marked.sculpted.id << " " << name << "\n" << told(doubts);
    }
  std::cout << "of " << tried << " marks of the middle moved aside " << alone << " were doubted alone\n";
}

TEST(MarkDoubts, AMisplacedCanalIsOffTheMidPlaneAndSaysByHowMuch) {
  const MarkedScan& c6 = sampleScans()[1];
  anatomy::Scan spoilt = c6.scan.scan;
  const double off = 0.6 * c6.size();
  setLandmark(spoilt, c6.sculpted, std::string(anatomy::kCanalCranial),
              spoilt.landmarks.at(std::string(anatomy::kCanalCranial)) + off * c6.way(Vector3d::UnitY()));
  const auto doubts = c6.doubts(spoilt);
  ASSERT_EQ(doubts.size(), 1u) << told(doubts);
  EXPECT_EQ(doubts[0].mark, anatomy::kCanalCranial);
  EXPECT_EQ(doubts[0].why.id, anatomy::doubt::kOffMidPlane);
  EXPECT_NEAR(std::get<reason::Quantity>(doubts[0].why.values[1]).value, off, 0.1 * off);
}

TEST(MarkDoubts, LeftAndRightThatDisagreeAreToldOfTheOneThatIsWrong) {
  for (const MarkedScan& marked : sampleScans()) {
    const std::string id = marked.sculpted.id;
    // A process clicked in another place of the surface: its own tip's neighbour half a bone in front.
    anatomy::Scan spoilt = marked.scan.scan;
    const Vector3d wrong = spoilt.landmarks.at("parapophysis.R");
    setLandmark(spoilt, marked.sculpted, "diapophysis.R", wrong + 1.2 * marked.size() * marked.way(Vector3d::UnitX()));
    EXPECT_EQ(namesOf(marked.doubts(spoilt)), std::set<std::string>{"diapophysis.R"})
        << id << told(marked.doubts(spoilt));

    // A facet brushed far too widely.
    spoilt = marked.scan.scan;
    for (auto& q : facetIn(spoilt, FacetRole::PrezygLeft).facet.outline) q *= 1.6;
    auto doubts = marked.doubts(spoilt);
    EXPECT_EQ(namesOf(doubts), std::set<std::string>{"prezyg.L"}) << id << told(doubts);
    EXPECT_EQ(doubts.at(0).why.id, anatomy::doubt::kAreasDiffer) << id;

    // One that is turned by 50 degrees about its own slide.
    spoilt = marked.scan.scan;
    anatomy::Facet& turned = facetIn(spoilt, FacetRole::PostzygRight).facet;
    turned.normal = Eigen::AngleAxisd(50 * std::numbers::pi / 180, turned.slide) * turned.normal;
    doubts = marked.doubts(spoilt);
    EXPECT_EQ(namesOf(doubts), std::set<std::string>{"postzyg.R"}) << id << told(doubts);
  }
}

TEST(MarkDoubts, PoorFitsAreDoubtedAgainstTheBonesSize) {
  const MarkedScan& c5 = sampleScans()[0];
  anatomy::Scan spoilt = c5.scan.scan;
  const Vector3d centre = spoilt.landmarks.at("cranial");
  setLandmark(spoilt, c5.sculpted, "cranial", centre, {0.03, 0.0005, 0.001});
  EXPECT_THAT(c5.doubts(spoilt), IsEmpty()) << "a good ball" << told(c5.doubts(spoilt));
  setLandmark(spoilt, c5.sculpted, "cranial", centre, {0.03, 0.0005, 0.5507});
  auto doubts = c5.doubts(spoilt);
  ASSERT_EQ(doubts.size(), 1u) << told(doubts);
  EXPECT_EQ(doubts[0].mark, "cranial");
  EXPECT_EQ(doubts[0].why.id, anatomy::doubt::kCentreUnsure);
  EXPECT_EQ(std::get<reason::Quantity>(doubts[0].why.values[1]), (reason::Quantity{0.5507, reason::Unit::Length}));
  setLandmark(spoilt, c5.sculpted, "cranial", centre, {0.03, 0.3 * c5.size(), 0.001});
  doubts = c5.doubts(spoilt);
  ASSERT_EQ(doubts.size(), 1u) << told(doubts);
  EXPECT_EQ(doubts[0].why.id, anatomy::doubt::kPoorFit);
  spoilt = c5.scan.scan;
  anatomy::ScanFacet& facet = facetIn(spoilt, FacetRole::PostzygLeft);
  facet.residual = 0.4 * facet.facet.length();
  doubts = c5.doubts(spoilt);
  ASSERT_EQ(doubts.size(), 1u) << told(doubts);
  EXPECT_EQ(doubts[0].mark, "postzyg.L");
  EXPECT_EQ(doubts[0].why.id, anatomy::doubt::kPoorFacet);
}

TEST(MarkDoubts, MirroredMarksAreMeasuredOnTheirOwnSideOrDoubted) {
  const MarkedScan& c6 = sampleScans()[1];
  anatomy::Scan scan = c6.scan.scan;
  removeFacet(scan, FacetRole::PostzygRight);
  const double residual = facetOf(scan, FacetRole::PostzygLeft)->residual;
  ASSERT_EQ(mirrorMarks(scan, c6.sculpted), 1);
  const anatomy::ScanFacet& image = facetIn(scan, FacetRole::PostzygRight);
  EXPECT_FALSE(image.measured);
  EXPECT_EQ(image.residual, 0) << "the other side's says nothing here";
  EXPECT_EQ(measureMirrored(scan, *c6.surface), 1);
  EXPECT_TRUE(image.measured);
  EXPECT_GT(image.residual, 0);
  EXPECT_LT(image.residual, 0.2 * image.facet.length());
  EXPECT_NE(image.residual, residual);
  EXPECT_THAT(c6.doubts(scan), IsEmpty()) << told(c6.doubts(scan));

  // Mirrored across a plane that a misplaced mark has tilted.
  scan = c6.scan.scan;
  removeFacet(scan, FacetRole::PostzygRight);
  anatomy::Facet& left = facetIn(scan, FacetRole::PostzygLeft).facet;
  const Vector3d truth = left.centre;
  left.centre += 0.8 * c6.size() * c6.way(Vector3d::UnitZ());
  ASSERT_EQ(mirrorMarks(scan, c6.sculpted), 1);
  facetIn(scan, FacetRole::PostzygLeft).facet.centre = truth;
  EXPECT_EQ(measureMirrored(scan, *c6.surface), 0) << "it hangs in mid-air";
  EXPECT_FALSE(facetOf(scan, FacetRole::PostzygRight)->measured);
  const auto doubts = c6.doubts(scan);
  EXPECT_EQ(namesOf(doubts), std::set<std::string>{"postzyg.R"}) << told(doubts);
  EXPECT_EQ(doubts.at(0).why.id, anatomy::doubt::kOffSurface);
}

TEST(MarkDoubts, AMarkFarFromTheSurfaceIsDoubted) {
  for (const MarkedScan& marked : sampleScans())
    for (const char* name : {"spineTop", "cranial", "caudalRim"}) {
      anatomy::Scan spoilt = marked.scan.scan;
      const Vector3d away = name == std::string("spineTop")  ? Vector3d::UnitZ()
                            : name == std::string("cranial") ? Vector3d::UnitX()
                                                             : Vector3d(-Vector3d::UnitX());
      setLandmark(spoilt, marked.sculpted, name, spoilt.landmarks.at(name) + 2.5 * marked.size() * marked.way(away));
      const auto doubts = marked.doubts(spoilt);
      EXPECT_EQ(namesOf(doubts), std::set<std::string>{name}) << marked.sculpted.id << told(doubts);
    }
}

TEST(MarkDoubts, FacetsThatFaceTheWrongWayOrLieOnTheOtherSideAreDoubted) {
  for (const MarkedScan& marked : sampleScans()) {
    const std::string id = marked.sculpted.id;
    anatomy::Scan spoilt = marked.scan.scan;
    anatomy::Facet& inwards = facetIn(spoilt, FacetRole::PrezygRight).facet;
    inwards.normal = -inwards.normal;
    auto doubts = marked.doubts(spoilt);
    EXPECT_EQ(namesOf(doubts), std::set<std::string>{"prezyg.R"}) << id << told(doubts);

    // Before and behind mistaken for each other, on the left alone: both are wrong.
    std::vector<anatomy::ScanFacet> swapped;
    for (const auto& facet : marked.scan.scan.facets) {
      anatomy::ScanFacet kept = facet;
      if (kept.facet.role == FacetRole::PrezygLeft)
        kept.facet.role = FacetRole::PostzygLeft;
      else if (kept.facet.role == FacetRole::PostzygLeft)
        kept.facet.role = FacetRole::PrezygLeft;
      swapped.push_back(kept);
    }
    spoilt = marked.scan.scan;
    spoilt.facets = swapped;
    doubts = marked.doubts(spoilt);
    EXPECT_THAT(namesOf(doubts), ElementsAre("postzyg.L", "prezyg.L")) << id << told(doubts);

    // The left process marked as the right one, and the other way round.
    spoilt = marked.scan.scan;
    std::swap(spoilt.landmarks.at("diapophysis.L"), spoilt.landmarks.at("diapophysis.R"));
    doubts = marked.doubts(spoilt);
    EXPECT_THAT(namesOf(doubts), ElementsAre("diapophysis.L", "diapophysis.R")) << id << told(doubts);
    EXPECT_EQ(doubts.at(0).why.id, anatomy::doubt::kOtherSide);
  }
}

TEST(MarkDoubts, JointsNameTheSuspectsOfTheirEnd) {
  const std::vector<anatomy::MarkDoubt> doubts{
      {"prezyg.L", {anatomy::doubt::kWrongWay, {termOf(FacetRole::PrezygLeft)}}, {}},
      {"prezyg.L", {anatomy::doubt::kIntoBone, {termOf(FacetRole::PrezygLeft)}}, {}}};
  EXPECT_EQ(suspectsAtEnd(doubts, true), std::vector<reason::Value>{termOf(FacetRole::PrezygLeft)});
  EXPECT_THAT(suspectsAtEnd(doubts, false), IsEmpty());
}

// The sample's scans lie anyhow. By shape alone the axes are found, either way.
TEST(Upright, ByMarksByFewerMarksAndByShape) {
  for (const MarkedScan& marked : sampleScans()) {
    const std::string id = marked.sculpted.id;
    const Eigen::Matrix3d truth = marked.scan.scan.X_BoneScan.linear();
    const auto all = solid::uprightOf(marked.scan.scan, *marked.scan.mesh);
    EXPECT_EQ(all.by, solid::UprightBy::Marks);
    EXPECT_LT((all.R_WS - truth).norm(), 1e-12);
    anatomy::Scan some;
    some.bone = marked.scan.scan.bone;
    for (const char* name : {"cranialRim", "caudalRim"}) some.landmarks[name] = marked.scan.scan.landmarks.at(name);
    const auto byRims = solid::uprightOf(some, *marked.scan.mesh);
    EXPECT_EQ(byRims.by, solid::UprightBy::SomeMarks);
    EXPECT_GT(byRims.R_WS.row(0).dot(truth.row(0)), 0.9) << id;
    EXPECT_GT(std::abs(byRims.R_WS.row(2).dot(truth.row(2))), 0.95) << id << ": rims do not tell up from down";
    some.landmarks["spineTop"] = marked.scan.scan.landmarks.at("spineTop");
    EXPECT_GT(solid::uprightOf(some, *marked.scan.mesh).R_WS.row(2).dot(truth.row(2)), 0.95) << id;
    some.landmarks.clear();
    const auto byShape = solid::uprightOf(some, *marked.scan.mesh);
    EXPECT_EQ(byShape.by, solid::UprightBy::Shape);
    for (int k = 0; k < 3; ++k) EXPECT_GT(std::abs(byShape.R_WS.row(k).dot(truth.row(k))), 0.9) << id << " " << k;
    EXPECT_NEAR(byShape.R_WS.determinant(), 1, 1e-9);
  }
}

// The third bone of the sample was sheared by 7 degrees, the others were not.
TEST(AdvisedStraightening, AShearIsAdvisedWhereThereIsOne) {
  for (const MarkedScan& marked : sampleScans()) {
    const auto advised = advisedStraightening(marked.scan.scan);
    EXPECT_EQ(advised.by.has_value(), marked.sculpted.id == "C7") << marked.sculpted.id << debugText(advised.why);
    if (!advised.by) continue;
    EXPECT_EQ(*advised.by, anatomy::DeformedBy::Shear);
    EXPECT_EQ(advised.why.id, anatomy::straightening_advice::kShear);
    EXPECT_NEAR(std::get<reason::Quantity>(advised.why.values[0]).value * 180 / std::numbers::pi, 7, 0.7);
  }
  anatomy::Scan thigh;
  thigh.bone = *anatomy::parseBoneId("femur.L");
  EXPECT_THROW(anatomy::advisedStraightening(thigh), reason::Failure);
}

// Open data.

fs::path openBones(const char* folder) {
  const char* given = std::getenv("ZYGAPOSE_DATA");
  return (given ? fs::path(given) : fs::path(ZYGAPOSE_SHARED_DATA)) / folder;
}

/// The suggested marks of a column, taken over: nobody has spoilt them, so that doubts are false alarms, or tell where
/// a suggestion is bad. At most one mark in twenty.
void expectFewDoubts(const char* folder, const anatomy::RegionCounts& counts) {
  if (!fs::exists(openBones(folder))) GTEST_SKIP() << "the open bone data are not at " << openBones(folder);
  anatomy::MeasurementTable blank;
  blank.counts = counts;
  const anatomy::Specimen animal = anatomy::buildSpecimen(anatomy::fillBlanks(blank));
  const auto set = readScanSet({{openBones(folder)}, {}, {}}, animal, reader());
  std::vector<ProjectScan> scans;
  std::vector<solid::ColumnBone> column;
  for (const ScanOfSet& of : set->bones) {
    if (!anatomy::isVertebra(of.bone.name.kind)) continue;
    scans.push_back(projectScan(of.clean, animal[*animal.findBone(toId(of.bone.name))], of.unit, of.file));
    column.push_back({of.bone.name, scans.back().mesh.get()});
  }
  const auto found = solid::suggestColumn(column, animal);
  std::size_t marks = 0, doubted = 0, bones = 0, turned = 0, upright = 0;
  for (std::size_t i = 0; i < scans.size(); ++i) {
    const anatomy::Bone& sculpted = animal[*animal.findBone(toId(column[i].name))];
    takeOver(scans[i].scan, sculpted, found.marks[i]);
    if (scans[i].scan.suggested.empty()) continue;
    ++bones;
    if (scans[i].scan.placed) {
      anatomy::Scan bare;
      bare.bone = scans[i].scan.bone;
      ++turned;
      const Eigen::Matrix3d R_WS = solid::uprightOf(bare, *scans[i].mesh).R_WS;
      upright += std::abs(R_WS.row(1).dot(scans[i].scan.X_BoneScan.linear().row(1))) > 0.97;
    }
    marks += scans[i].scan.suggested.size();
    const auto doubts = markDoubts(scans[i].scan, sculpted, solid::MarkedSurface(*scans[i].mesh));
    doubted += namesOf(doubts).size();
    for (const auto& doubt : doubts) std::cout << sculpted.id << " " << told({doubt});
  }
  std::cout << folder << ": " << doubted << " of " << marks << " suggested marks of " << bones
            << " vertebrae are doubted; by shape alone the mid-plane of " << upright << " of " << turned
            << " stands upright\n";
  EXPECT_GT(marks, 30u);
  EXPECT_LE(20 * doubted, marks);
  EXPECT_GE(10 * upright, 8 * turned) << "by shape";
}

TEST(MarkDoubts, FewOfTheSuggestedMarksOfADogAreDoubted) { expectFewDoubts("dog", {7, 20, 3, 21}); }
TEST(MarkDoubts, FewOfTheSuggestedMarksOfHumanLumbarsAreDoubted) { expectFewDoubts("lumbar", {7, 17, 5, 4}); }

// Missing parts, on a bone whose whole is known.

TEST(MissingParts, AHalfThatIsCutOffIsNamed) {
  const MarkedScan& c6 = sampleScans()[1];
  const auto whole = solid::oneSidedness(c6.scan.scan, *c6.scan.mesh);
  ASSERT_TRUE(whole);
  EXPECT_LT(whole->share, solid::kOneSided);
  for (const double quarter : {whole->leftCranial, whole->leftCaudal, whole->rightCranial, whole->rightCaudal})
    EXPECT_LT(quarter, solid::kQuarterMissing);
  const Eigen::Affine3d X_BS = boneFromScan(c6.scan.scan);
  std::vector<std::array<std::uint32_t, 3>> kept;
  double area = 0, cut = 0;
  for (const auto& t : c6.scan.mesh->triangles) {
    Vector3d middle = Vector3d::Zero();
    std::array<Vector3d, 3> p;
    for (std::size_t i = 0; i < 3; ++i) middle += (p[i] = X_BS * c6.scan.mesh->positions[t[i]].cast<double>()) / 3;
    const double size = (p[1] - p[0]).cross(p[2] - p[0]).norm() / 2;
    area += size;
    if (middle.x() < 0 && middle.y() > 0)
      cut += size;
    else
      kept.push_back(t);
  }
  const solid::TriangleMesh rest = withTriangles(*c6.scan.mesh, kept);
  const auto found = solid::oneSidedness(c6.scan.scan, rest);
  ASSERT_TRUE(found);
  EXPECT_GT(found->leftCaudal, 0.6) << "within a fifth of the bone's size of the cut the rest still meets something";
  EXPECT_LT(found->leftCranial, solid::kQuarterMissing);
  EXPECT_LT(found->rightCaudal, 0.1);
  EXPECT_LT(found->rightCranial, 0.1);
  EXPECT_GT(found->share, solid::kOneSided);
  EXPECT_LT(found->share, cut / (area - cut)) << "no more than the opposite quarter";
  // Were the image of what stands alone there, the bone would be whole: no more than is gone, and six tenths of it at
  // least, for the same reason.
  EXPECT_LT(found->missing(), cut / area + 0.02);
  EXPECT_GT(found->missing(), 0.6 * cut / area);
  // Closed flat the cut is small: a vertebra is all processes. It is a lower bound, and told all the same.
  const auto borders = solid::openBorders(rest);
  EXPECT_LT(borders.missing(), cut / area + 0.02);
  EXPECT_GT(borders.missing(), solid::kMuchMissing);
  EXPECT_GE(borders.borders, 1u);
  EXPECT_LT(c6.scan.borders.missing(), solid::kMuchMissing) << "the sample's own holes are small";
  anatomy::Scan unplaced = c6.scan.scan;
  unplaced.placed = false;
  EXPECT_FALSE(solid::oneSidedness(unplaced, rest)) << "nothing tells the mid-plane";
}

}  // namespace
}  // namespace zyga::files
