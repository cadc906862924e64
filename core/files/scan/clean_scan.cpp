#include "core/files/scan/clean_scan.h"

#include <Eigen/Geometry>

namespace zyga::files {
namespace {

/// Greatest side of the box around the mesh.
double extentOf(const solid::TriangleMesh& mesh) {
  Eigen::AlignedBox3d box;
  for (const auto& p : mesh.positions) box.extend(p.cast<double>());
  return box.sizes().maxCoeff();
}

std::string counted(std::uint64_t count, const char* things) { return std::to_string(count) + " " + things; }

/// What never came as far as the repair.
std::vector<std::string> leftOut(const RawScan& raw) {
  std::vector<std::string> words;
  if (raw.facesDeclared > raw.facesRead)
    words.push_back("left out " + counted(raw.facesDeclared - raw.facesRead, "of ") +
                    counted(raw.facesDeclared, "declared faces, which could not be used"));
  if (raw.badFaces > 0) words.push_back("dropped " + counted(raw.badFaces, "faces naming vertices that are not there"));
  if (raw.pointsAndLines > 0) words.push_back("left out " + counted(raw.pointsAndLines, "points and lines"));
  return words;
}

}  // namespace

std::optional<CleanScan> readCleanScan(const std::filesystem::path& path, const ScanReader& reader, double expected) {
  auto raw = readScan(path, reader);
  if (!raw) return std::nullopt;
  CleanScan out;
  out.repairs = leftOut(*raw);
  solid::RepairOptions options;
  options.cancel = reader.cancel;
  auto repaired = solid::repair(std::move(raw->mesh), options);
  if (reader.cancel && reader.cancel->load()) return std::nullopt;
  if (repaired.mesh.empty()) throw FileError("cannot read " + path.string() + ": none of its triangles can be used");
  for (auto& sentence : repairsInWords(repaired.repairs)) out.repairs.push_back(std::move(sentence));
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
