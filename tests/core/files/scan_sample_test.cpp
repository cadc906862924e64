#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/marks/scan_guess.h"
#include "core/anatomy/marks/straighten.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/tables/landmark_table.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/project/project.h"
#include "core/files/scan/clean_scan.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/solid/mesh/fit.h"

/// The scan sample as the walk-through of the README uses it. What its bones were before noise, holes and shear is
/// known from the table they were sculpted by.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using anatomy::FacetRole;
using testing::Contains;
using testing::HasSubstr;

const fs::path kFolder = fs::path(ZYGAPOSE_SOURCE_DIR) / "samples" / "scans";

class ScanSampleTest : public testing::Test {
 protected:
  void SetUp() override {
    const fs::path file = fs::path(ZYGAPOSE_SOURCE_DIR) / "samples" / "high_browser.csv";
    table_ = anatomy::fillBlanks(anatomy::readMeasurementTable(readWhole(file), "table").table);
    sculpted_ = anatomy::buildSpecimen(table_);
    landmarks_ = anatomy::readLandmarkTable(readWhole(kFolder / "landmarks.csv"), "landmarks.csv");
  }
  const anatomy::Bone& bone(const char* id) const { return sculpted_[*sculpted_.findBone(id)]; }
  CleanScan read(const char* id) const {
    ScanReader reader;
    reader.program = ZYGAPOSE_READ_SCAN;
    return *readCleanScan(kFolder / (std::string(id) + ".ply"), reader, anatomy::extentOf(bone(id)));
  }
  ProjectScan marked(const char* id) const {
    const CleanScan clean = read(id);
    ProjectScan scan = projectScan(clean, bone(id), clean.unitGuess.unit, std::string(id) + ".ply");
    for (const auto& [name, p] : landmarks_.table.points.at(bone(id).name)) setLandmark(scan.scan, bone(id), name, p);
    return scan;
  }
  /// One dab of the brush on each facet, of the size the person would choose.
  void brushFacets(ProjectScan& scan) const {
    const Eigen::Affine3d X_SB = boneFromScan(scan.scan).inverse();
    const anatomy::Bone& known = sculpted_[*sculpted_.findBone(toId(scan.scan.bone))];
    for (const anatomy::Facet& facet : known.facets) {
      const auto triangles = solid::brushTriangles(*scan.mesh, X_SB * facet.centre, X_SB.linear() * facet.normal,
                                                   0.5 * facet.length(), 0.35);
      ASSERT_GT(triangles.size(), 4u);
      const auto fit = solid::fitFacet(solid::patchOf(*scan.mesh, triangles), facet.role, X_SB.linear() * facet.slide);
      setFacet(scan.scan, known, {fit.facet, fit.quality.rms});
    }
  }

  anatomy::MeasurementTable table_;
  anatomy::Specimen sculpted_;
  anatomy::LandmarkReading landmarks_;
};

TEST_F(ScanSampleTest, IsSmallNamedInMillimetresRoughAndBroken) {
  ASSERT_TRUE(landmarks_.usable());
  std::uintmax_t size = 0;
  for (const char* id : {"C5", "C6", "C7", "C8"}) {
    size += fs::file_size(kFolder / (std::string(id) + ".ply"));
    EXPECT_EQ(toId(anatomy::guessBone(std::string(id) + ".ply")->name), id);
    const CleanScan scan = read(id);
    EXPECT_EQ(scan.unitGuess.unit, anatomy::ScanUnit::Millimetre) << id;
    EXPECT_TRUE(scan.unitGuess.sure) << id;
    EXPECT_FALSE(scan.flaws.closed()) << id;
    EXPECT_GE(scan.flaws.holes, 1u) << id;
  }
  EXPECT_LT(size, 2u << 20);
}

TEST_F(ScanSampleTest, TheShearOfTheThirdBoneIsFoundAndUndone) {
  EXPECT_LT(anatomy::straightening(marked("C6").scan, anatomy::DeformedBy::Shear).amount, 1e-3);
  const ProjectScan scan = marked("C7");
  const auto found = anatomy::straightening(scan.scan, anatomy::DeformedBy::Shear);
  EXPECT_NEAR(found.amount * 180 / std::numbers::pi, 7, 0.1);
  const auto straight = anatomy::straightened(scan.scan, bone("C7"), found.map);
  for (const char* name : {"diapophysis.L", "diapophysis.R", "cranial", "caudal", "spineTop"})
    EXPECT_LT((landmarksInBone(straight).at(name) - bone("C7").landmark(name)).norm(), 1e-3) << name;
}

TEST_F(ScanSampleTest, MarkedItsJointsMoveAsThoseOfTheBonesItWasMadeFrom) {
  std::vector<ProjectScan> scans;
  for (const char* id : {"C5", "C6", "C7", "C8"}) {
    scans.push_back(marked(id));
    ASSERT_TRUE(scans.back().scan.placed) << id;
    if (std::string_view(id) == "C7")
      scans.back().scan = anatomy::straightened(
          scans.back().scan, bone(id), anatomy::straightening(scans.back().scan, anatomy::DeformedBy::Shear).map);
    brushFacets(scans.back());
  }
  const anatomy::Specimen mixed = specimenOf(table_, scans);
  const range::Assumptions assumptions = range::grownAnimal();
  const auto before = range::articulate(sculpted_, assumptions), after = range::articulate(mixed, assumptions);
  for (const char* id : {"C5-C6", "C6-C7", "C7-C8"}) {
    const auto joint = *mixed.findJoint(id);
    EXPECT_TRUE(anatomy::missingInputs(mixed, joint, recordsOf(scans)).empty()) << id;
    const auto a = range::limits(sculpted_, before, assumptions, joint, Eigen::Vector3d::Zero());
    const auto b = range::limits(mixed, after, assumptions, joint, Eigen::Vector3d::Zero());
    for (const auto direction : range::kDirections)
      // Lateral ranges of 23 degrees hang most on the facets' pitch; of C6-C7 they are off by 3.6 with this noise.
      EXPECT_NEAR(a[direction].angle, b[direction].angle, 4 * std::numbers::pi / 180)
          << id << " " << toText(direction) << ": facets brushed through noise";
  }
}

}  // namespace
}  // namespace zyga::files
