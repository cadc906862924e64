#include "core/files/scan/clean_scan.h"

#include <Eigen/Geometry>
#include <map>

#include "core/files/scan/scan_faults.h"
#include "core/solid/mesh/simplify.h"
#include "core/solid/mesh/surface_distance.h"

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
  out.looks = raw.looks;
  return out;
}

/// What the format says of all parts of a file.
struct OfFormat {
  std::optional<double> unit;
  anatomy::ScanUp up;
};

OfFormat formatOf(const RawScan& raw, const std::filesystem::path& path) {
  return {raw.unit, raw.yUp ? anatomy::ScanUp::Y : anatomy::guessUp(path.extension().string())};
}

bool flawedAlike(const solid::Flaws& a, const solid::Flaws& b) {
  return a.holes == b.holes && a.openEdges == b.openEdges && a.nonManifoldEdges == b.nonManifoldEdges &&
         a.twisted == b.twisted && a.surfaces == b.surfaces;
}

/// Mesh and flaws of a scan with fewer triangles. The quick way may have torn a mesh that has borders anyhow: the
/// careful one takes over then.
solid::Repaired withFewer(const CleanScan& scan, std::size_t triangles, const solid::RepairOptions& options) {
  if (scan.flaws.closed() && scan.flaws.twisted == 0)
    return {solid::simplified(scan.mesh, triangles, options.task), {}, scan.flaws};
  auto quick = solid::repair(solid::simplifiedWithBorders(scan.mesh, triangles), options);
  if (options.task.cancelled() || flawedAlike(quick.flaws, scan.flaws)) return quick;
  return solid::repair(solid::carefullySimplifiedWithBorders(scan.mesh, triangles, options.task), options);
}

void thin(CleanScan& scan, std::size_t triangles, const solid::RepairOptions& options) {
  auto fewer = withFewer(scan, triangles, options);
  if (options.task.cancelled() || fewer.mesh.triangles.size() >= scan.mesh.triangles.size()) return;
  scan.thinned = {scan.mesh.triangles.size(), fewer.mesh.triangles.size(),
                  solid::greatestDistance(scan.mesh.positions, fewer.mesh, options.task)};
  scan.mesh = std::move(fewer.mesh);
  scan.flaws = fewer.flaws;
}

/// Empty when cancelled or when nothing usable is left.
std::optional<CleanScan> cleaned(solid::TriangleMesh mesh, const OfFormat& format, const ScanReader& reader,
                                 double expected) {
  const task::Task& task = reader.task;
  solid::RepairOptions options;
  options.task = task.quiet();
  auto repaired = solid::repair(std::move(mesh), options);
  if (task.cancelled() || repaired.mesh.empty()) return std::nullopt;
  CleanScan out;
  out.repairs = repaired.repairs;
  out.mesh = std::move(repaired.mesh);
  out.flaws = repaired.flaws;
  if (out.mesh.triangles.size() > reader.limits.triangles) thin(out, reader.limits.triangles, options);
  if (task.cancelled()) return std::nullopt;
  out.extent = extentOf(out.mesh);
  out.unitGuess = anatomy::guessUnit(out.extent, expected);
  out.unitFixed = format.unit == 1.0;
  if (out.unitFixed) out.unitGuess = {anatomy::ScanUnit::Metre, true};
  out.up = format.up;
  return out;
}

FileError nothingUsable(const std::filesystem::path& path) {
  return FileError({fault::kCannotRead, {pathText(path), reason::inner(fault::kNoUsableTriangle)}});
}

std::optional<CleanScan> cleanedWhole(RawScan raw, const std::filesystem::path& path, const ScanReader& reader,
                                      double expected) {
  const auto left = leftOut(raw);
  auto out = cleaned(std::move(raw.mesh), formatOf(raw, path), reader, expected);
  if (reader.task.cancelled()) return std::nullopt;
  if (!out) throw nothingUsable(path);
  out->leftOut = left;
  return out;
}

/// Parts whose names tell the same bone, in the order of the bones.
struct PartsOfBones {
  std::map<anatomy::BoneName, std::vector<std::size_t>> bones;
  std::vector<std::string> others;
};

PartsOfBones partsOfBones(const std::vector<ScanPart>& parts) {
  constexpr double kBelieved = 0.5;
  PartsOfBones out;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const auto guess = anatomy::guessBone(parts[i].name);
    // A lumbar vertebra is numbered with its set, later; for now its own number tells it from the others.
    const bool lumbar = guess && guess->name.kind == anatomy::BoneKind::Dorsal && guess->name.number > 0;
    if (guess && (guess->confidence >= kBelieved || lumbar))
      out.bones[guess->name].push_back(i);
    else
      out.others.push_back(parts[i].name);
  }
  return out;
}

solid::TriangleMesh meshOf(const RawScan& raw, const std::vector<std::size_t>& parts) {
  std::vector<std::array<std::uint32_t, 3>> triangles;
  std::size_t first = 0, next = 0;
  for (std::size_t i = 0; i < raw.parts.size(); ++i) {
    const std::size_t end = first + raw.parts[i].triangles;
    if (next < parts.size() && parts[next] == i) {
      triangles.insert(triangles.end(), raw.mesh.triangles.begin() + static_cast<std::ptrdiff_t>(first),
                       raw.mesh.triangles.begin() + static_cast<std::ptrdiff_t>(end));
      ++next;
    }
    first = end;
  }
  return withTriangles(raw.mesh, std::move(triangles));
}

}  // namespace

std::optional<CleanScan> readCleanScan(const std::filesystem::path& path, const ScanReader& reader, double expected) {
  auto raw = readScan(path, reader);
  if (!raw) return std::nullopt;
  return cleanedWhole(std::move(*raw), path, reader, expected);
}

std::optional<CleanScans> readCleanScans(const std::filesystem::path& path, const ScanReader& reader, bool asOne,
                                         double expected) {
  auto raw = readScan(path, reader);
  if (!raw) return std::nullopt;
  CleanScans out;
  auto parts = asOne ? PartsOfBones() : partsOfBones(raw->parts);
  if (parts.bones.size() < 2) {
    auto whole = cleanedWhole(std::move(*raw), path, reader, expected);
    if (!whole) return std::nullopt;
    out.bones.push_back(std::move(*whole));
    return out;
  }
  out.partsLeftOut = std::move(parts.others);
  for (const auto& [bone, which] : parts.bones) {
    auto clean = cleaned(meshOf(*raw, which), formatOf(*raw, path), reader, expected);
    if (reader.task.cancelled()) return std::nullopt;
    const std::string& name = raw->parts[which.front()].name;
    if (!clean) {
      out.partsLeftOut.push_back(name);
      continue;
    }
    clean->part = name;
    out.bones.push_back(std::move(*clean));
  }
  if (out.bones.empty()) throw nothingUsable(path);
  out.bones.front().leftOut = leftOut(*raw);
  return out;
}

}  // namespace zyga::files
