#include "core/files/scan/clean_scan.h"

#include <Eigen/Geometry>

#include "core/files/scan/scan_faults.h"

namespace zyga::files {
namespace {

/// Greatest side of the box around the mesh.
double extentOf(const solid::TriangleMesh& mesh) {
  Eigen::AlignedBox3d box;
  for (const auto& p : mesh.positions) box.extend(p.cast<double>());
  return box.sizes().maxCoeff();
}

CleanScan::LeftOut leftOut(const RawScan& raw) {
  CleanScan::LeftOut out;
  out.facesDeclared = raw.facesDeclared;
  if (raw.facesDeclared > raw.facesRead) out.facesLost = raw.facesDeclared - raw.facesRead;
  out.badFaces = raw.badFaces;
  out.pointsAndLines = raw.pointsAndLines;
  return out;
}

}  // namespace

std::optional<CleanScan> readCleanScan(const std::filesystem::path& path, const ScanReader& reader, double expected) {
  auto raw = readScan(path, reader);
  if (!raw) return std::nullopt;
  CleanScan out;
  out.leftOut = leftOut(*raw);
  solid::RepairOptions options;
  options.task = reader.task.quiet();
  auto repaired = solid::repair(std::move(raw->mesh), options);
  if (reader.task.cancelled()) return std::nullopt;
  if (repaired.mesh.empty())
    throw FileError({fault::kCannotRead, {pathText(path), reason::inner(fault::kNoUsableTriangle)}});
  out.repairs = repaired.repairs;
  out.mesh = std::move(repaired.mesh);
  out.flaws = repaired.flaws;
  out.extent = extentOf(out.mesh);
  out.unitGuess = anatomy::guessUnit(out.extent, expected);
  out.unitFixed = raw->unit == 1.0;
  if (out.unitFixed) out.unitGuess = {anatomy::ScanUnit::Metre, true};
  out.up = raw->yUp ? anatomy::ScanUp::Y : anatomy::guessUp(path.extension().string());
  return out;
}

}  // namespace zyga::files
