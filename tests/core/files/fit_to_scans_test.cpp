#include "core/files/project/fit_to_scans.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/anatomy/marks/scan_measures.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/reason/reason.h"
#include "core/solid/sculpt/sculpt.h"
#include "tests/support/sample_animal.h"

/// Real bones of another size than the animal's: the animal is fitted to them.
namespace zyga::files {
namespace {

using anatomy::Cell;
using anatomy::Evidence;
using anatomy::Measure;
using anatomy::MeasurementTable;
using Eigen::Vector3d;

class FitToScans : public testing::Test {
 protected:
  static constexpr double kTenth = 0.1;

  static const MeasurementTable& table() {
    static const MeasurementTable filled = filledAnew(anatomy::fillBlanks(test::sampleTable("high_browser")));
    return filled;
  }
  static const anatomy::Bone& boneOf(const anatomy::Specimen& specimen, const std::string& id) {
    return specimen[*specimen.findBone(id)];
  }
  static const anatomy::Specimen& sculpted() {
    static const anatomy::Specimen specimen = anatomy::buildSpecimen(table());
    return specimen;
  }
  static Cell cellOf(const MeasurementTable& of, const char* id, Measure measure) {
    return of.find(*anatomy::parseBoneId(id))->measures[measure];
  }

  /// The sculpted bone `size` times as large as a scan, unmarked, its middle on the sculpted one's.
  static ProjectScan scanOf(const char* id, double size) {
    const anatomy::Bone& bone = boneOf(sculpted(), id);
    auto mesh = std::make_shared<solid::TriangleMesh>(
        solid::sculptBone(sculpted(), *sculpted().findBone(id), 2000).levels.front());
    Eigen::AlignedBox3d scan, whole;
    for (Eigen::Vector3f& p : mesh->positions) scan.extend((p *= static_cast<float>(size)).cast<double>());
    for (const auto& [name, p] : bone.landmarks) whole.extend(p);
    ProjectScan out;
    out.scan.bone = bone.name;
    out.scan.source = "an invented collection";
    out.scan.X_BoneScan.translation() = whole.center() - scan.center();
    out.mesh = std::move(mesh);
    return out;
  }
  /// With all its landmarks, so that it lies by them and measures.
  static ProjectScan markedScan(const char* id, double size) {
    ProjectScan out = scanOf(id, size);
    for (const auto& [name, p] : boneOf(sculpted(), id).landmarks) out.scan.landmarks[name] = size * p;
    placeByLandmarks(out.scan, boneOf(sculpted(), id));
    return out;
  }
};

TEST_F(FitToScans, TheSizeOfUnmarkedScansIsThatOfTheMiddleOne) {
  EXPECT_EQ(sizeOfScans(table(), {}), 0);
  const double own = sizeOfScans(table(), {scanOf("C5", 1), scanOf("C6", 1), scanOf("C7", 1)});
  // Surfaces and landmarks do not reach equally far; the tips of cervical ribs are landmarks of their vertebra.
  EXPECT_GT(own, 0.4);
  EXPECT_LT(own, 1.7);
  const double tenth = sizeOfScans(table(), {scanOf("C5", kTenth), scanOf("C6", kTenth), scanOf("C7", 3)});
  EXPECT_NEAR(tenth, kTenth * own, 0.1 * kTenth * own) << "one bone of another size changes little";
}

// The sculpted bones are built from the table, so marks on a scan of one measure exactly the table's value times the
// scan's size.
TEST_F(FitToScans, TheSizeOfMarkedScansIsWhatTheirMarksMeasure) {
  for (const double size : {0.1, 0.8, 12.0})
    EXPECT_NEAR(sizeOfScans(table(), {markedScan("femur.L", size), markedScan("tibia.L", size)}), size, 0.02 * size);
}

TEST_F(FitToScans, CellsThatTheScansMeasuredAreNotTheAnimals) {
  std::vector<ProjectScan> scans{markedScan("femur.L", kTenth)};
  MeasurementTable entered = table();
  for (const ProjectScan& kept : scans)
    entered = filledAnew(withMeasures(std::move(entered), kept.scan, measuresOf(kept.scan)));
  ASSERT_NEAR(cellOf(entered, "femur.L", Measure::Length).value,
              kTenth * cellOf(table(), "femur.L", Measure::Length).value, 1e-4);
  // Its row holds the scan's own length now; the limb around it still says how much larger the animal is.
  EXPECT_NEAR(sizeOfScans(entered, scans), kTenth, 0.25 * kTenth);
}

TEST_F(FitToScans, MeasuresOfTheScansStayAndEveryOtherLengthFollows) {
  const std::vector<ProjectScan> scans{markedScan("femur.L", 0.11), scanOf("C6", kTenth)};
  const FittedAnimal fitted = fittedToScans(table(), scans, kTenth);
  double length = 0;
  for (const auto& [measure, value] : measuresOf(scans[0].scan)) {
    if (measure == Measure::Length) length = value;
    const Cell now = cellOf(fitted.table, "femur.L", measure);
    EXPECT_TRUE(now.measured()) << toText(measure);
    EXPECT_DOUBLE_EQ(now.value, value) << toText(measure);
  }
  EXPECT_NEAR(length, 0.11 * cellOf(table(), "femur.L", Measure::Length).value, 1e-4);
  int scaled = 0, angles = 0;
  for (const anatomy::TableRow& row : table().rows) {
    if (toId(row.name) == "femur.L") continue;
    const anatomy::TableRow& now = *fitted.table.find(row.name);
    for (int m = 0; m < anatomy::kMeasureCount; ++m) {
      const auto measure = static_cast<Measure>(m);
      const Cell &was = row.measures[measure], &is = now.measures[measure];
      if (!was.measured()) continue;
      EXPECT_TRUE(is.measured());
      EXPECT_NEAR(is.value, (isAngle(measure) ? 1 : kTenth) * was.value, 1e-12) << toId(row.name) << toText(measure);
      (isAngle(measure) ? angles : scaled) += 1;
    }
    const bool found = row.evidence == Evidence::Found || row.evidence == Evidence::FoundDeformed;
    EXPECT_EQ(now.evidence, found ? Evidence::Scaled : row.evidence) << toId(row.name);
  }
  EXPECT_GT(scaled, 50);
  for (const auto& [region, total] : table().regionTotals)
    EXPECT_NEAR(fitted.table.regionTotals.at(region), kTenth * total, 1e-12);
  // The neck, which no scan measures, is a tenth altogether; what was not measured has followed.
  const anatomy::Specimen specimen = specimenOf(fitted.table, fitted.scans);
  EXPECT_NEAR(boneOf(specimen, "C9").measures.value(Measure::Length),
              kTenth * boneOf(sculpted(), "C9").measures.value(Measure::Length), 1e-5);
}

TEST_F(FitToScans, ScansKeepTheirSizeAndLieOnTheBonesOfTheNewSize) {
  ProjectScan mirrored = scanOf("humerus.L", kTenth);
  mirrored.scan = anatomy::mirroredScan(mirrored.scan);
  const FittedAnimal fitted =
      fittedToScans(table(), {scanOf("C6", kTenth), markedScan("femur.L", kTenth), mirrored}, kTenth);
  const anatomy::Specimen specimen = anatomy::buildSpecimen(fitted.table);
  for (const ProjectScan& kept : fitted.scans) {
    EXPECT_EQ(kept.scan.scale, 1);
    const anatomy::Bone& bone = boneOf(specimen, toId(kept.scan.bone));
    Eigen::AlignedBox3d scan, whole;
    const Eigen::Affine3d map = boneFromScan(kept.scan);
    for (const auto& p : kept.mesh->positions) scan.extend(map * p.cast<double>());
    for (const auto& [name, p] : bone.landmarks) whole.extend(p);
    EXPECT_LT((scan.center() - whole.center()).norm(), 0.15 * whole.sizes().maxCoeff()) << bone.id;
  }
}

TEST_F(FitToScans, OfTheSameSizeNothingIsScaledAndASecondTimeNothingChanges) {
  const std::vector<ProjectScan> scans{markedScan("femur.L", kTenth), markedScan("tibia.L", kTenth)};
  const FittedAnimal once = fittedToScans(table(), scans, sizeOfScans(table(), scans));
  const anatomy::TableRow& femur = *once.table.find(*anatomy::parseBoneId("femur.L"));
  EXPECT_EQ(femur.evidence, Evidence::Found) << "nothing of it was measured before: it is the scan's";
  EXPECT_EQ(femur.source, "an invented collection");
  const double again = sizeOfScans(once.table, once.scans);
  EXPECT_NEAR(again, 1, kSameSize);
  EXPECT_EQ(fittedToScans(once.table, once.scans, again).table, once.table);
}

TEST_F(FitToScans, ASizeOfNothingIsRefused) {
  EXPECT_THROW(fittedToScans(table(), {scanOf("C6", 1)}, 0), reason::Failure);
}

}  // namespace
}  // namespace zyga::files
