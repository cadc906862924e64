#include "core/files/project/fit_to_scans.h"

#include <algorithm>
#include <cmath>

#include "core/anatomy/marks/scan_measures.h"
#include "core/anatomy/plan/build_specimen.h"

namespace zyga::files {
namespace {

using anatomy::MarkedMeasure;
using anatomy::MeasurementTable;
using anatomy::ScanExtents;
using anatomy::TableRow;

double middleSize(const std::vector<ScanExtents>& sizes) { return sizeFactor(sizes, anatomy::ScanUnit::Metre); }

/// Nothing measured in it that a scan measures too.
MeasurementTable aroundScans(MeasurementTable table, const std::vector<ProjectScan>& scans) {
  for (const ProjectScan& kept : scans)
    if (TableRow* row = table.find(kept.scan.bone))
      for (const MarkedMeasure& marked : measuresOf(kept.scan)) row->measures[marked.measure] = {};
  return fillAnew(std::move(table));
}

/// Greatest side of its box in the bone's axes, m; 0 without a mesh.
double greatestSide(const ProjectScan& kept) {
  Eigen::AlignedBox3d box;
  const Eigen::Affine3d map = boneFromScan(kept.scan);
  if (kept.mesh)
    for (const auto& p : kept.mesh->positions) box.extend(map * p.cast<double>());
  return box.isEmpty() ? 0 : box.sizes().maxCoeff();
}

/// 0 where nothing can be compared.
double sizeOf(const ProjectScan& kept, const anatomy::Bone& sculpted) {
  std::vector<ScanExtents> lengths;
  for (const auto& [measure, value] : measuresOf(kept.scan))
    if (!isSigned(measure)) lengths.push_back({value, sculpted.measures.valueOr(measure, 0)});
  const double marked = middleSize(lengths);
  return marked > 0 ? marked : middleSize({{greatestSide(kept), extentOf(sculpted)}});
}

Eigen::Vector3d centreOf(const anatomy::Bone& bone) {
  Eigen::AlignedBox3d box;
  for (const auto& [name, p] : bone.landmarks) box.extend(p);
  return box.isEmpty() ? Eigen::Vector3d::Zero() : Eigen::Vector3d(box.center());
}

/// A scan that lay on `before` lies on `after` as well.
void layAnew(anatomy::Scan& scan, const anatomy::Bone& before, const anatomy::Bone& after) {
  if (scan.placed) {
    placeByLandmarks(scan, after);
    return;
  }
  Eigen::Vector3d moved = centreOf(after) - centreOf(before);
  if (scan.mirror) moved.y() = -moved.y();  // X_BoneScan comes before the mirroring
  scan.X_BoneScan.translation() += moved;
}

/// The scan's measures, and where nothing else of the bone is measured, the evidence it had: nothing of it was scaled.
MeasurementTable withScan(MeasurementTable table, const anatomy::Scan& scan, const TableRow& before) {
  const std::vector<MarkedMeasure> measures = measuresOf(scan);
  const auto byScan = [&](anatomy::Measure m) {
    return std::any_of(measures.begin(), measures.end(), [m](const MarkedMeasure& each) { return each.measure == m; });
  };
  bool scaled = false;
  for (int m = 0; m < anatomy::kMeasureCount; ++m) {
    const auto measure = static_cast<anatomy::Measure>(m);
    scaled |= before.measures[measure].measured() && !isAngle(measure) && !byScan(measure);
  }
  table = withMeasures(std::move(table), scan, measures);
  if (scaled || !before.measures.anyMeasured()) return table;
  TableRow& row = *table.find(scan.bone);
  row.evidence = before.evidence;
  row.source = before.source;
  return table;
}

/// What the scans measure is what the table says already.
bool haveEntered(const MeasurementTable& table, const std::vector<ProjectScan>& scans) {
  for (const ProjectScan& kept : scans) {
    const TableRow* row = table.find(kept.scan.bone);
    if (!row) continue;
    for (const auto& [measure, value] : measuresOf(kept.scan)) {
      const anatomy::Cell& cell = row->measures[measure];
      const double slight = kSameSize * (isAngle(measure) ? 1 : std::abs(value));
      if (!cell.measured() || std::abs(cell.value - value) > slight) return false;
    }
  }
  return true;
}

}  // namespace

double sizeOfScans(const MeasurementTable& table, const std::vector<ProjectScan>& scans) {
  const anatomy::Specimen around = anatomy::buildSpecimen(aroundScans(table, scans));
  std::vector<ScanExtents> sizes;
  for (const ProjectScan& kept : scans)
    if (const auto bone = around.findBone(toId(kept.scan.bone))) sizes.push_back({sizeOf(kept, around[*bone]), 1});
  return middleSize(sizes);
}

FittedAnimal fittedToScans(const MeasurementTable& table, std::vector<ProjectScan> scans, double factor) {
  const bool same = std::abs(factor - 1) < kSameSize;
  if (same && haveEntered(table, scans)) return {table, std::move(scans)};
  FittedAnimal out{same ? table : scaledTable(table, factor), std::move(scans)};
  for (const ProjectScan& kept : out.scans)
    if (const TableRow* before = table.find(kept.scan.bone))
      out.table = withScan(std::move(out.table), kept.scan, *before);
  out.table = filledAnew(std::move(out.table));
  const anatomy::Specimen old = anatomy::buildSpecimen(table), fitted = anatomy::buildSpecimen(out.table);
  for (ProjectScan& kept : out.scans) {
    const auto before = old.findBone(toId(kept.scan.bone)), after = fitted.findBone(toId(kept.scan.bone));
    if (before && after) layAnew(kept.scan, old[*before], fitted[*after]);
  }
  return out;
}

}  // namespace zyga::files
