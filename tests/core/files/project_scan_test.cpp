#include "core/files/project/project_scan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <fstream>

#include "core/files/project/project.h"
#include "core/files/scan/bone_meshes.h"
#include "core/files/scan/clean_scan.h"
#include "tests/core/files/example_skeleton.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class ProjectScanTest : public testing::Test {
 protected:
  ProjectScanTest() {
    anatomy::MeasurementTable table;
    table.name = "Invented beast";
    table.counts = {4, 9, 4, 10};
    project_ = projectFromTable(table);
    CleanScan clean;
    clean.mesh = example::boxMesh({200, 100, 150}, 4);
    project_.scans.push_back(projectScan(clean, bone("C3"), anatomy::ScanUnit::Millimetre, "/somewhere/C3.stl"));
  }

  const anatomy::Bone& bone(const std::string& id) const {
    return project_.specimen()[*project_.specimen().findBone(id)];
  }
  anatomy::Scan& scan() { return project_.scans[0].scan; }
  fs::path path(const std::string& name) const { return fs::path(folder_.path().toStdString()) / name; }

  /// Everything a record can hold, with numbers that decimal fractions do not hit.
  void fillRecord() {
    scan().X_BoneScan.linear() = Eigen::AngleAxisd(0.7, Eigen::Vector3d(1, 2, 3).normalized()).toRotationMatrix();
    scan().X_BoneScan.translation() = Eigen::Vector3d(0.1, 1.0 / 3, -2.0 / 7);
    scan().placed = true;
    scan().scale = 1.0 / 0.9;
    scan().mirror = true;
    scan().straighten(0, 1) = 0.1234567890123;
    scan().evidence = anatomy::Evidence::Mirrored;
    scan().landmarks["cranialRim"] = Eigen::Vector3d(1.0 / 3, 0, 0.1);
    scan().landmarks["a \"quoted\" one"] = Eigen::Vector3d(0, 1, 2);
    anatomy::Facet facet;
    facet.role = anatomy::FacetRole::PostzygRight;
    facet.centre = Eigen::Vector3d(0.01, 0.02, 1.0 / 3);
    facet.normal = Eigen::Vector3d(1, 1, 0).normalized();
    facet.slide = Eigen::Vector3d(1, -1, 0).normalized();
    facet.outline = anatomy::ellipseOutline(0.03, 0.02, 8);
    scan().facets.push_back({facet, 0.00012345});
    facet.role = anatomy::FacetRole::PostzygLeft;
    scan().facets.push_back({facet, 0, false});
    scan().suggested = {{"cranialRim", 1.0 / 3}, {"postzyg.R", 0.92}};
    scan().fits = {{"cranialRim", {1.0 / 3, 0.0001, 0}}, {"cranial", {0.03, 0.00012345, 0.5507}}};
  }

  Project project_;

 private:
  QTemporaryDir folder_;
};

void expectSame(const anatomy::Scan& a, const anatomy::Scan& b) {
  EXPECT_EQ(a.bone, b.bone);
  EXPECT_EQ(a.file, b.file);
  EXPECT_EQ(a.checksum, b.checksum);
  EXPECT_EQ(a.unit, b.unit);
  EXPECT_EQ(a.evidence, b.evidence);
  EXPECT_EQ(a.source, b.source);
  EXPECT_EQ(a.placed, b.placed);
  EXPECT_EQ(a.scale, b.scale);
  EXPECT_EQ(a.mirror, b.mirror);
  EXPECT_EQ(a.straighten, b.straighten);
  EXPECT_EQ(a.X_BoneScan.matrix(), b.X_BoneScan.matrix());
  EXPECT_EQ(a.landmarks, b.landmarks);
  EXPECT_EQ(a.suggested, b.suggested);
  EXPECT_EQ(a.fits, b.fits);
  ASSERT_EQ(a.facets.size(), b.facets.size());
  for (std::size_t i = 0; i < a.facets.size(); ++i) {
    EXPECT_EQ(a.facets[i].residual, b.facets[i].residual);
    EXPECT_EQ(a.facets[i].measured, b.facets[i].measured);
    EXPECT_EQ(a.facets[i].facet.centre, b.facets[i].facet.centre);
    EXPECT_EQ(a.facets[i].facet.normal, b.facets[i].facet.normal);
    EXPECT_EQ(a.facets[i].facet.slide, b.facets[i].facet.slide);
    EXPECT_EQ(a.facets[i].facet.outline, b.facets[i].facet.outline);
  }
}

TEST_F(ProjectScanTest, ComesBackToTheBitWithItsMesh) {
  fillRecord();
  project_.setSpecimen(specimenOf(project_.table, project_.scans));
  saveProject(project_, path("beast.zyga"));
  EXPECT_TRUE(fs::exists(path(scan().file)));
  const Project again = readProject(path("beast.zyga"));
  ASSERT_EQ(again.scans.size(), 1u);
  expectSame(scan(), again.scans[0].scan);
  ASSERT_TRUE(again.scans[0].mesh) << debugText(again.scans[0].trouble);
  EXPECT_EQ(again.scans[0].mesh->positions, project_.scans[0].mesh->positions);
  EXPECT_EQ(again.scans[0].mesh->triangles, project_.scans[0].mesh->triangles);
  EXPECT_EQ(writeProjectText(again), writeProjectText(project_));
  EXPECT_EQ(again.specimen()[*again.specimen().findBone("C3")].evidence, anatomy::Evidence::Mirrored);
}

TEST_F(ProjectScanTest, IsTakenToMetresAndLaidOnTheSculptedBone) {
  EXPECT_THAT(scan().file, testing::StartsWith("scans/C3-"));
  EXPECT_EQ(scan().source, "scan C3.stl");
  const auto mesh = meshInBone(project_.scans[0]);
  Eigen::AlignedBox3d box, marks;
  for (const auto& p : mesh.positions) box.extend(p.cast<double>());
  for (const auto& [name, p] : bone("C3").landmarks) marks.extend(p);
  EXPECT_TRUE(box.sizes().isApprox(Eigen::Vector3d(0.4, 0.2, 0.3), 1e-6));
  EXPECT_TRUE(box.center().isApprox(marks.center(), 1e-6));
}

TEST_F(ProjectScanTest, StandsInThePlaceOfTheSculptedMesh) {
  solid::SculptOptions options;
  options.triangleBudget = 300;
  const auto meshes = boneMeshes(project_, options);
  const auto& c3 = *meshes[project_.specimen().findBone("C3")->value];
  EXPECT_EQ(c3.levels.front().triangles.size(), project_.scans[0].mesh->triangles.size());
  EXPECT_NEAR(solid::volume(c3.levels.front()), 0.4 * 0.2 * 0.3, 1e-6);
  fillRecord();  // a mirrored scan must still face outwards
  EXPECT_GT(solid::volume(meshInBone(project_.scans[0])), 0);
}

TEST_F(ProjectScanTest, AMeshThatIsMissingOrChangedLeavesTheBoneSculpted) {
  saveProject(project_, path("beast.zyga"));
  std::ofstream(path(scan().file), std::ios::app) << "x";
  EXPECT_THAT(ui::say(readProject(path("beast.zyga")).scans[0].trouble).toStdString(), HasSubstr("changed since"));
  fs::remove(path(scan().file));
  const Project missing = readProject(path("beast.zyga"));
  EXPECT_FALSE(missing.scans[0].mesh);
  EXPECT_THAT(ui::say(missing.scans[0].trouble).toStdString(), testing::AllOf(HasSubstr("C3"), HasSubstr("scans/C3-")));
}

TEST_F(ProjectScanTest, ARecordCannotReachOutOfItsFolder) {
  for (const char* file : {"../secret.ply", "/etc/passwd", "scans/../../secret.ply", "scans/", "elsewhere/C3.ply"}) {
    scan().file = file;
    auto scans = project_.scans;
    scans[0].mesh = nullptr;
    loadScanMeshes(scans, path("beast.zyga"));
    EXPECT_FALSE(scans[0].mesh);
    EXPECT_THAT(ui::say(scans[0].trouble).toStdString(), HasSubstr("folder of the scans")) << file;
  }
}

TEST_F(ProjectScanTest, WrongRecordsAreToldWithTheirPlace) {
  fillRecord();
  const std::string good = writeProjectText(project_);
  const auto message = [&](const std::string& what, const std::string& by) {
    std::string text = good;
    const auto at = text.find(what);
    EXPECT_NE(at, std::string::npos) << what;
    try {
      parseProject(text.replace(at, what.size(), by), "beast.zyga");
    } catch (const FileError& error) {
      return ui::sayFailure(error).toStdString();
    }
    return std::string("no error");
  };
  EXPECT_THAT(message("\"bone\": \"C3\", \"file\"", "\"bone\": \"C77\", \"file\""), HasSubstr("C77"));
  EXPECT_THAT(message("\"unit\": \"mm\"", "\"unit\": \"furlong\""), HasSubstr("scans[0].unit"));
  EXPECT_THAT(message("\"mirror\": true", "\"mirror\": 1"), HasSubstr("scans[0].mirror"));
  EXPECT_THAT(message("\"scale\": ", "\"scale\": -"), HasSubstr("scans[0].scale"));
  EXPECT_THAT(message("\"role\": \"postzyg right\"", "\"role\": \"knee\""), HasSubstr("facets[0].role"));
  EXPECT_THAT(message("\"rotation\": [[", "\"rotation\": [[9"), HasSubstr("scans[0].rotation"));
}

TEST_F(ProjectScanTest, OnlyItsOwnPlyIsReadInThisProcess) {
  const std::string good = scanPly(*project_.scans[0].mesh);
  EXPECT_EQ(parseScanPly(good).triangles, project_.scans[0].mesh->triangles);
  for (std::size_t size = 0; size < good.size(); size += 61)
    EXPECT_THROW(parseScanPly(good.substr(0, size)), FileError);
  EXPECT_THROW(parseScanPly(good + "x"), FileError);
  std::string index = good;
  index.replace(index.size() - 4, 4, "\xff\xff\xff\x7f", 4);
  EXPECT_THROW(parseScanPly(index), FileError);
  std::string many = good;
  many.replace(many.find("element face ") + 13, 1, "99999999999999999999999");
  EXPECT_THROW(parseScanPly(many), FileError);
}

TEST_F(ProjectScanTest, AProjectWithoutScansIsWrittenAsBefore) {
  project_.scans.clear();
  EXPECT_EQ(writeProjectText(project_).find("\"scans\""), std::string::npos);
}

}  // namespace
}  // namespace zyga::files
