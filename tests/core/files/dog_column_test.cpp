#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <numbers>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/marks/scan_guess.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/files/project/project.h"
#include "core/files/scan/clean_scan.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/solid/mesh/fit.h"
#include "tests/core/files/facing_surfaces.h"

/// A whole mammal's column from open data (dm_control's dog, Google DeepMind, Apache-2.0): one STL a bone, all in one
/// rest pose, metres, x forward, z up, symmetric. Brought in and named.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;

fs::path folder() {
  const char* given = std::getenv("ZYGAPOSE_DATA");
  return (given ? fs::path(given) : fs::path(ZYGAPOSE_SHARED_DATA)) / "dog";
}

ScanReader reader() {
  ScanReader reader;
  reader.program = ZYGAPOSE_READ_SCAN;
  return reader;
}

/// The vertebrae by bone, in the common axes.
struct Column {
  std::map<anatomy::BoneName, CleanScan> bones;

  Column() {
    std::vector<std::string> files;
    for (const auto& entry : fs::directory_iterator(folder()))
      if (entry.path().extension() == ".stl") files.push_back(entry.path().string());
    std::sort(files.begin(), files.end());
    anatomy::RegionCounts counts;
    counts.dorsal = kDorsals;
    const auto guesses = anatomy::guessBones(files, counts);
    for (std::size_t i = 0; i < files.size(); ++i)
      if (guesses[i] && anatomy::isVertebra(guesses[i]->name.kind))
        bones.emplace(guesses[i]->name, *readCleanScan(files[i], reader()));
  }

  static constexpr int kDorsals = 14;  ///< of which the seven lumbars are the last
};

class DogColumnTest : public testing::Test {
 protected:
  void SetUp() override {
    if (!fs::exists(folder())) GTEST_SKIP() << "the open bone data are not at " << folder();
  }
  static const Column& column() {
    static const Column column;
    return column;
  }
};

TEST_F(DogColumnTest, EveryVertebraIsNamedReadAndClosed) {
  EXPECT_EQ(column().bones.size(), 7u + 7 + 1 + 21);
  for (const auto& [name, scan] : column().bones) {
    EXPECT_TRUE(scan.flaws.closed()) << toId(name);
    EXPECT_EQ(scan.unitGuess.unit, anatomy::ScanUnit::Metre) << toId(name);
    EXPECT_GT(solid::volume(scan.mesh), 0) << toId(name);
  }
  EXPECT_TRUE(column().bones.contains(*anatomy::parseBoneId("D14")));
  EXPECT_TRUE(column().bones.contains(*anatomy::parseBoneId("Ca21")));
}

/// The necks' bones C3 to C6 marked by what faces each other in the pose they were modelled in, as a person brushes
/// them.
struct MarkedNeck {
  anatomy::MeasurementTable table;
  std::vector<ProjectScan> scans;

  explicit MarkedNeck(const Column& column) {
    anatomy::MeasurementTable blank;
    blank.counts.cervical = 7;
    blank.counts.dorsal = Column::kDorsals;
    blank.counts.sacral = 4;
    blank.counts.caudal = 21;
    table = anatomy::fillBlanks(blank);
    const anatomy::Specimen sculpted = anatomy::buildSpecimen(table);
    const auto mesh = [&](int number) -> const solid::TriangleMesh& {
      return column.bones.at({anatomy::BoneKind::Cervical, number}).mesh;
    };
    for (int number = 3; number <= 6; ++number) {
      const anatomy::Bone& bone = sculpted[*sculpted.findBone("C" + std::to_string(number))];
      const CleanScan& clean = column.bones.at(bone.name);
      ProjectScan scan = projectScan(clean, bone, anatomy::ScanUnit::Metre, "BONEC.stl");
      const auto front = test::facingSurfaces(mesh(number), mesh(number - 1));
      const auto behind = test::facingSurfaces(mesh(number), mesh(number + 1));
      for (const auto& [rim, centre, face] :
           {std::tuple("cranialRim", "cranial", &front.middle), std::tuple("caudalRim", "caudal", &behind.middle)}) {
        const auto plane = solid::fitPlane(solid::patchOf(*scan.mesh, *face));
        setLandmark(scan.scan, bone, rim, plane.centre);
        setLandmark(scan.scan, bone, centre, plane.centre);
      }
      const auto brush = [&](const std::vector<std::uint32_t>& patch, anatomy::FacetRole role) {
        const auto fit = solid::fitFacet(solid::patchOf(*scan.mesh, patch), role, Eigen::Vector3d::UnitX());
        setFacet(scan.scan, bone, {fit.facet, fit.quality.rms});
      };
      brush(front.left, anatomy::FacetRole::PrezygLeft);
      brush(front.right, anatomy::FacetRole::PrezygRight);
      brush(behind.left, anatomy::FacetRole::PostzygLeft);
      brush(behind.right, anatomy::FacetRole::PostzygRight);
      scans.push_back(std::move(scan));
    }
  }
};

TEST_F(DogColumnTest, FittedFacetsAreNearlyFlatAndSymmetric) {
  const MarkedNeck neck(column());
  for (const ProjectScan& scan : neck.scans) {
    EXPECT_TRUE(scan.scan.placed);
    // The bones were modelled with y left; by its marks each lies so again.
    EXPECT_GT(scan.scan.X_BoneScan.linear()(1, 1), 0.999) << toId(scan.scan.bone);
    const auto facets = facetsInBone(scan.scan);
    ASSERT_EQ(facets.size(), 4u);
    for (std::size_t i = 0; i < facets.size(); ++i) {
      EXPECT_LT(scan.scan.facets[i].residual, 0.1 * facets[i].length()) << toId(scan.scan.bone);
      for (const auto& other : facets) {
        if (other.role != anatomy::mirrored(facets[i].role)) continue;
        EXPECT_LT((anatomy::mirrored(other).centre - facets[i].centre).norm(), 1e-3) << toId(scan.scan.bone);
        EXPECT_GT(anatomy::mirrored(other).normal.dot(facets[i].normal), std::cos(0.1)) << toId(scan.scan.bone);
      }
    }
  }
}

TEST_F(DogColumnTest, ArticulatedByItsFacetsItComesNearThePoseItWasModelledIn) {
  const MarkedNeck neck(column());
  const anatomy::Specimen mixed = specimenOf(neck.table, neck.scans);
  const range::Assumptions assumptions;
  const auto articulation = range::articulate(mixed, assumptions);
  constexpr double kDegree = std::numbers::pi / 180;
  for (std::size_t i = 0; i + 1 < neck.scans.size(); ++i) {
    const auto& cranial = neck.scans[i].scan;
    const auto& caudal = neck.scans[i + 1].scan;
    const auto joint = mixed.findJoint(toId(cranial.bone) + "-" + toId(caudal.bone)).value();
    EXPECT_TRUE(anatomy::missingInputs(mixed, joint, recordsOf(neck.scans)).empty());
    EXPECT_TRUE(articulation[joint].solved) << mixed[joint].id;
    // Proximal is the caudal one, nearer to the sacrum.
    const Eigen::Matrix3d modelled = caudal.X_BoneScan.linear() * cranial.X_BoneScan.linear().transpose();
    const Eigen::AngleAxisd off(modelled.transpose() * articulation[joint].rotation);
    EXPECT_LT(off.angle(), 12 * kDegree) << mixed[joint].id;
    const auto limits = range::limits(mixed, articulation, assumptions, joint, Eigen::Vector3d::Zero());
    const double left = std::abs(limits[range::Direction::Left].angle);
    const double right = std::abs(limits[range::Direction::Right].angle);
    EXPECT_NEAR(left, right, 2 * kDegree) << mixed[joint].id << ": the bones are mirror-symmetric";
    EXPECT_GT(left + right, 2 * kDegree) << mixed[joint].id;
  }
}

}  // namespace
}  // namespace zyga::files
