#include "core/files/project/carried_scans.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <iostream>
#include <numbers>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/plan/plan_table.h"
#include "core/files/scan/clean_scan.h"
#include "core/solid/facets/suggest_column.h"

/// Marks of one bone on its neighbour, on open bone data: the dog's C3 to C6 and L1 to L4 (dm_control's dog, Google
/// DeepMind, Apache-2.0) and human lumbars, against what is found where the bones lie in articulation.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using anatomy::BoneKind;
using anatomy::BoneName;

fs::path dataFolder(const std::string& name) {
  const char* given = std::getenv("ZYGAPOSE_DATA");
  return (given ? fs::path(given) : fs::path(ZYGAPOSE_SHARED_DATA)) / name;
}

const anatomy::Specimen& mammal() {
  static const anatomy::Specimen animal = [] {
    anatomy::MeasurementTable table;
    table.plan = anatomy::BodyPlan::Mammal;
    table.counts = anatomy::planTable(table.plan).counts;
    return buildSpecimen(fillBlanks(table));
  }();
  return animal;
}

const anatomy::Bone& sculpted(const BoneName& name) { return mammal()[*mammal().findBone(toId(name))]; }

/// Some neighbours with the marks that were found on them.
struct MarkedColumn {
  std::vector<ProjectScan> scans;

  MarkedColumn(const std::vector<std::pair<BoneName, fs::path>>& files) {
    ScanReader reader;
    reader.program = ZYGAPOSE_READ_SCAN;
    std::vector<solid::ColumnBone> column;
    for (const auto& [name, file] : files) {
      scans.push_back(projectScan(*readCleanScan(file, reader), sculpted(name), anatomy::ScanUnit::Metre, file));
      column.push_back({name, scans.back().mesh.get()});
    }
    const auto found = solid::suggestColumn(column, mammal());
    for (std::size_t i = 0; i < scans.size(); ++i)
      takeOver(scans[i].scan, sculpted(scans[i].scan.bone), found.marks[i]);
  }
};

std::vector<std::pair<BoneName, fs::path>> dog(BoneKind kind, const std::string& stem, int first, int last) {
  std::vector<std::pair<BoneName, fs::path>> files;
  for (int k = first; k <= last; ++k)
    files.emplace_back(BoneName{kind, k}, dataFolder("dog") / (stem + std::to_string(k) + ".stl"));
  return files;
}

anatomy::Scan unmarked(const anatomy::Scan& scan) {
  anatomy::Scan bare = scan;
  bare.landmarks.clear();
  bare.facets.clear();
  bare.suggested.clear();
  bare.placed = false;
  return bare;
}

struct Tally {
  int facets = 0, near = 0, taken = 0, takenNear = 0;
};

/// Every bone in turn forgets its marks and gets them from the nearest of the others, turned as it may lie.
void carryOneByOne(const MarkedColumn& column, Tally& tally) {
  for (std::size_t i = 0; i < column.scans.size(); ++i) {
    std::vector<ProjectScan> scans{column.scans[i], column.scans[i > 0 ? i - 1 : 1]};
    scans[0].scan = unmarked(scans[0].scan);
    const auto carried = carryMissing(scans, mammal());
    const auto to = std::find_if(carried.begin(), carried.end(),
                                 [&](const CarriedTo& each) { return each.to == column.scans[i].scan.bone; });
    ASSERT_NE(to, carried.end());
    for (const anatomy::ScanFacet& known : column.scans[i].scan.facets) {
      ++tally.facets;
      const anatomy::ScanFacet* got = facetOf(scans[0].scan, known.facet.role);
      if (!got) continue;
      ++tally.taken;
      const double size = std::sqrt(known.facet.length() * known.facet.width());
      const double off = (got->facet.centre - known.facet.centre).norm() / size;
      const double turned = std::acos(std::clamp(got->facet.normal.dot(known.facet.normal), -1.0, 1.0));
      const bool near = off < 0.35 && turned < 20 * std::numbers::pi / 180;
      tally.takenNear += near;
      if (!near)
        std::cout << toId(to->to) << " from " << toId(to->from) << ", " << toText(known.facet.role) << ": " << off
                  << " of the facet's size off, turned by " << turned * 180 / std::numbers::pi << " degrees, "
                  << scans[0].scan.suggested.at(std::string(toText(known.facet.role))) << " sure\n";
    }
  }
}

TEST(CarriedMarks, OfTheDogLieWhereTheFacetsAre) {
  if (!fs::exists(dataFolder("dog"))) GTEST_SKIP() << "the open bone data are absent";
  Tally tally;
  carryOneByOne(MarkedColumn(dog(BoneKind::Cervical, "BONEC_", 3, 6)), tally);
  carryOneByOne(MarkedColumn(dog(BoneKind::Lumbar, "BONEL_", 1, 4)), tally);
  std::cout << tally.taken << " of " << tally.facets << " facets carried over and taken, " << tally.takenNear
            << " of them where they are found\n";
  EXPECT_GE(tally.taken, tally.facets * 6 / 10);
  EXPECT_GE(tally.takenNear, tally.taken * 85 / 100);
}

TEST(CarriedMarks, OfHumanLumbarsLieWhereTheFacetsAre) {
  if (!fs::exists(dataFolder("lumbar"))) GTEST_SKIP() << "the open bone data are absent";
  std::vector<std::pair<BoneName, fs::path>> files;
  for (int k = 1; k <= 5; ++k)
    files.emplace_back(BoneName{BoneKind::Lumbar, k}, dataFolder("lumbar") / ("L" + std::to_string(k) + ".obj"));
  Tally tally;
  carryOneByOne(MarkedColumn(files), tally);
  std::cout << tally.taken << " of " << tally.facets << " facets carried over and taken, " << tally.takenNear
            << " of them where they are found\n";
  EXPECT_GE(tally.taken, tally.facets * 6 / 10);
  EXPECT_GE(tally.takenNear, tally.taken * 85 / 100);
}

// A bone that lies any way and is half as large again gets its marks all the same.
TEST(CarriedMarks, ReachABoneThatLiesAnyWay) {
  if (!fs::exists(dataFolder("dog"))) GTEST_SKIP() << "the open bone data are absent";
  const MarkedColumn column(dog(BoneKind::Cervical, "BONEC_", 4, 5));
  std::vector<ProjectScan> scans = column.scans;
  const anatomy::Scan known = scans[1].scan;
  scans[1].scan = unmarked(known);
  const Eigen::Matrix3d R = Eigen::AngleAxisd(2.4, Eigen::Vector3d(1, -2, 0.5).normalized()).toRotationMatrix();
  solid::TriangleMesh turned = *scans[1].mesh;
  for (auto& p : turned.positions) p = (1.5 * (R * p.cast<double>())).cast<float>() + Eigen::Vector3f(0.3F, 0, -1);
  turned.normals.clear();
  scans[1].mesh = std::make_shared<const solid::TriangleMesh>(turned);
  const auto carried = carryMissing(scans, mammal());
  ASSERT_EQ(carried.size(), 1u);
  EXPECT_GT(carried[0].marks, 4u);
  for (const anatomy::ScanFacet& facet : known.facets) {
    const anatomy::ScanFacet* got = facetOf(scans[1].scan, facet.facet.role);
    if (!got) continue;
    const Eigen::Vector3d centre = 1.5 * (R * facet.facet.centre) + Eigen::Vector3d(0.3, 0, -1);
    EXPECT_LT((got->facet.centre - centre).norm(), 0.4 * 1.5 * facet.facet.length()) << toText(facet.facet.role);
  }
}

TEST(CarriedMarks, AreNoneOfAnotherShape) {
  if (!fs::exists(dataFolder("dog"))) GTEST_SKIP() << "the open bone data are absent";
  MarkedColumn column(dog(BoneKind::Cervical, "BONEC_", 4, 5));
  ScanReader reader;
  reader.program = ZYGAPOSE_READ_SCAN;
  const BoneName tail{BoneKind::Caudal, 12};
  const fs::path file = dataFolder("dog") / "BONECa_12.stl";
  column.scans.push_back(projectScan(*readCleanScan(file, reader), sculpted(tail), anatomy::ScanUnit::Metre, file));
  const auto carried = carryMissing(column.scans, mammal());
  const auto to = std::find_if(carried.begin(), carried.end(), [&](const CarriedTo& each) { return each.to == tail; });
  ASSERT_NE(to, carried.end());
  EXPECT_EQ(to->marks, 0u) << "misfit " << to->misfit;
  EXPECT_TRUE(column.scans.back().scan.facets.empty());
}

}  // namespace
}  // namespace zyga::files
