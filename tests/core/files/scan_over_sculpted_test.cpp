#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <cstring>
#include <fstream>
#include <numbers>

#include "core/anatomy/plan/build_specimen.h"
#include "core/files/project/project.h"
#include "core/files/scan/clean_scan.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/solid/mesh/fit.h"
#include "core/solid/sculpt/sculpt.h"

/// A bone of ours written as a scanner would leave it (STL, millimetres, lying anyhow), brought back in, marked by fits
/// to its surface alone, and put in its own place: nothing about its joints may change but by the fits' errors.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using anatomy::FacetRole;
using Eigen::Vector3d;

const anatomy::MeasurementTable& table() {
  static const auto filled = anatomy::fillBlanks(anatomy::MeasurementTable{});
  return filled;
}

Eigen::Isometry3d anyhow() {
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  X.linear() = Eigen::AngleAxisd(1.9, Vector3d(0.3, -0.5, 0.8).normalized()).toRotationMatrix();
  X.translation() = Vector3d(1.2, 0.3, -0.7);
  return X;
}

void writeStl(const solid::TriangleMesh& mesh, const Eigen::Isometry3d& X, const fs::path& path) {
  const auto count = static_cast<std::uint32_t>(mesh.triangles.size());
  std::string bytes(84 + 50 * mesh.triangles.size(), '\0');
  std::memcpy(bytes.data() + 80, &count, sizeof(count));
  char* at = bytes.data() + 84;
  for (const auto& t : mesh.triangles) {
    for (std::size_t i = 0; i < 3; ++i) {
      const Eigen::Vector3f p = (1000 * (X * mesh.positions[t[i]].cast<double>())).cast<float>();
      std::memcpy(at + 12 * (i + 1), p.data(), 12);
    }
    at += 50;
  }
  std::ofstream(path, std::ios::binary) << bytes;
}

/// Marks what a person marks in the landmark editor: two brushed ends of the centrum, four facets, canal and rims by
/// clicks.
void mark(ProjectScan& kept, const anatomy::Bone& bone) {
  const Eigen::Isometry3d X_SB = anyhow();
  const auto& mesh = *kept.mesh;
  const auto brush = [&](const Vector3d& p_B, const Vector3d& n_B, double radius, double turn) {
    return solid::patchOf(mesh, solid::brushTriangles(mesh, X_SB * p_B, X_SB.linear() * n_B, radius, turn));
  };
  auto& marks = kept.scan.landmarks;
  for (const char* clicked : {"cranialRim", "caudalRim", "canal"}) marks[clicked] = X_SB * bone.landmark(clicked);
  marks[std::string(anatomy::kCanalCranial)] = X_SB * (bone.landmark("canal") + Vector3d(0.1, 0, 0));
  marks[std::string(anatomy::kCanalCaudal)] = X_SB * (bone.landmark("canal") - Vector3d(0.1, 0, 0));
  const double reach = 0.3 * bone.measures.value(anatomy::Measure::CotyleHeight);
  const auto condyle = solid::fitSphere(brush(bone.landmark("condyleTip"), Vector3d::UnitX(), reach, 0.9));
  EXPECT_FALSE(condyle.hollow);
  marks["cranial"] = condyle.centre;
  marks["caudal"] = X_SB * bone.landmark("caudal");
  for (const anatomy::Facet& facet : bone.facets) {
    const auto patch = brush(facet.centre, facet.normal, 0.55 * facet.length(), 0.15);
    auto fit = solid::fitFacet(patch, facet.role, X_SB.linear() * facet.slide);
    EXPECT_LT(fit.quality.rms, 2e-4) << bone.id;
    EXPECT_GT(fit.facet.normal.dot(X_SB.linear() * facet.normal), std::cos(0.01));
    // A brush knows no rim: what was brushed is wider than the facet, whose outline is drawn by hand.
    fit.facet.outline = facet.outline;
    fit.facet.centre =
        X_SB * facet.centre - (X_SB * facet.centre - fit.facet.centre).dot(fit.facet.normal) * fit.facet.normal;
    kept.scan.facets.push_back({fit.facet, fit.quality.rms});
  }
}

TEST(ScanOverSculpted, GivesTheSameLimits) {
  const anatomy::Specimen sculpted = anatomy::buildSpecimen(table());
  const auto index = *sculpted.findBone("C7");
  const anatomy::Bone& bone = sculpted[index];
  QTemporaryDir folder;
  const fs::path file = fs::path(folder.path().toStdString()) / "C7.stl";
  writeStl(solid::sculptBone(sculpted, index, 12000).levels.front(), anyhow(), file);

  ScanReader reader;
  reader.program = ZYGAPOSE_READ_SCAN;
  const auto clean = readCleanScan(file, reader, bone.measures.value(anatomy::Measure::Length));
  ASSERT_TRUE(clean);
  EXPECT_EQ(clean->unitGuess.unit, anatomy::ScanUnit::Millimetre);
  EXPECT_TRUE(clean->flaws.closed());
  std::vector<ProjectScan> scans{projectScan(*clean, bone, clean->unitGuess.unit, file)};
  mark(scans[0], bone);
  ASSERT_TRUE(anatomy::placeByLandmarks(scans[0].scan, bone));
  const anatomy::Specimen mixed = specimenOf(table(), scans);
  // The sculpted condyle is a ball only in its middle; its fit is 3.8 mm off along the bone, which is 460 mm long.
  EXPECT_LT((mixed[index].landmark("cranial") - bone.landmark("cranial")).norm(), 4.5e-3);

  const range::Assumptions assumptions = range::grownAnimal();
  const auto before = range::articulate(sculpted, assumptions), after = range::articulate(mixed, assumptions);
  for (const char* id : {"C6-C7", "C7-C8"}) {
    const auto joint = *sculpted.findJoint(id);
    EXPECT_TRUE(anatomy::missingInputs(mixed, joint, recordsOf(scans)).empty());
    const auto a = range::limits(sculpted, before, assumptions, joint, Vector3d::Zero());
    const auto b = range::limits(mixed, after, assumptions, joint, Vector3d::Zero());
    for (const auto direction : range::kDirections)
      EXPECT_NEAR(a[direction].angle, b[direction].angle, 1.0 * std::numbers::pi / 180)
          << id << " " << toText(direction);
  }
}

}  // namespace
}  // namespace zyga::files
