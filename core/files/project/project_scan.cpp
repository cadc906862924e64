#include "core/files/project/project_scan.h"

#include <QtCore/QCryptographicHash>
#include <algorithm>
#include <cstring>

#include "core/anatomy/plan/build_specimen.h"
#include "core/files/project/project.h"
#include "core/files/project/project_faults.h"
#include "core/files/scan/clean_scan.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kFolder = "scans/";
constexpr std::size_t kNamedBy = 12;  ///< digits of the checksum in the file's name
constexpr std::size_t kVertexBytes = 12, kFaceBytes = 13;
constexpr std::size_t kSameBytes = 109;  ///< of a header, up to the counts

std::string headerOf(std::size_t vertices, std::size_t faces) {
  return "ply\nformat binary_little_endian 1.0\ncomment a scanned bone, cleaned; metres, axes of the scan\nelement "
         "vertex " +
         std::to_string(vertices) + "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
         std::to_string(faces) + "\nproperty list uchar int vertex_indices\nend_header\n";
}

std::uint64_t countAfter(std::string_view header, std::string_view words) {
  const auto at = header.find(words);
  if (at == std::string_view::npos) throw FileError(fault::kScanForeign);
  std::uint64_t count = 0;
  for (std::size_t i = at + words.size(); i < header.size() && header[i] >= '0' && header[i] <= '9' && count < 1u << 31;
       ++i)
    count = 10 * count + static_cast<std::uint64_t>(header[i] - '0');
  return count;
}

/// z up is taken as it is; of y up, z is forward and x left, as our own export writes it.
Eigen::Matrix3d turnFor(anatomy::ScanUp up) {
  if (up == anatomy::ScanUp::Z) return Eigen::Matrix3d::Identity();
  Eigen::Matrix3d R_BoneScan;
  R_BoneScan << 0, 0, 1, 1, 0, 0, 0, 1, 0;
  return R_BoneScan;
}

Eigen::Isometry3d guessedPlace(const solid::TriangleMesh& mesh, const anatomy::Bone& sculpted, anatomy::ScanUp up) {
  Eigen::AlignedBox3d scan, bone;
  for (const auto& p : mesh.positions) scan.extend(p.cast<double>());
  for (const auto& [name, p] : sculpted.landmarks) bone.extend(p);
  Eigen::Isometry3d X_BoneScan = Eigen::Isometry3d::Identity();
  X_BoneScan.linear() = turnFor(up);
  const Eigen::Vector3d middle = bone.isEmpty() ? Eigen::Vector3d::Zero() : Eigen::Vector3d(bone.center());
  X_BoneScan.translation() = middle - X_BoneScan.linear() * scan.center();
  return X_BoneScan;
}

}  // namespace

std::string scanChecksum(std::string_view bytes) {
  return QCryptographicHash::hash(QByteArrayView(bytes.data(), static_cast<qsizetype>(bytes.size())),
                                  QCryptographicHash::Sha256)
      .toHex()
      .toStdString();
}

std::uint64_t scanPlySize(const solid::TriangleMesh& mesh) {
  return headerOf(mesh.positions.size(), mesh.triangles.size()).size() + kVertexBytes * mesh.positions.size() +
         kFaceBytes * mesh.triangles.size();
}

bool looksLikeScanPly(std::string_view head) { return head.starts_with(headerOf(0, 0).substr(0, kSameBytes)); }

std::string scanPly(const solid::TriangleMesh& mesh) {
  std::string bytes = headerOf(mesh.positions.size(), mesh.triangles.size());
  const std::size_t start = bytes.size();
  bytes.resize(start + kVertexBytes * mesh.positions.size() + kFaceBytes * mesh.triangles.size());
  char* at = bytes.data() + start;
  if (!mesh.positions.empty()) std::memcpy(at, mesh.positions.data(), kVertexBytes * mesh.positions.size());
  at += kVertexBytes * mesh.positions.size();
  for (const auto& t : mesh.triangles) {
    *at = 3;
    std::memcpy(at + 1, t.data(), kFaceBytes - 1);
    at += kFaceBytes;
  }
  return bytes;
}

solid::TriangleMesh parseScanPly(std::string_view bytes) {
  const std::string_view head = bytes.substr(0, kScanPlyHead);
  const std::uint64_t vertices = countAfter(head, "element vertex "), faces = countAfter(head, "element face ");
  const std::string expected = headerOf(vertices, faces);
  if (!bytes.starts_with(expected)) throw FileError(fault::kScanForeign);
  bytes.remove_prefix(expected.size());
  if (bytes.size() != kVertexBytes * vertices + kFaceBytes * faces) throw FileError(fault::kScanCutShort);
  solid::TriangleMesh mesh;
  mesh.positions.resize(vertices);
  mesh.triangles.resize(faces);
  if (vertices > 0) std::memcpy(static_cast<void*>(mesh.positions.data()), bytes.data(), kVertexBytes * vertices);
  bytes.remove_prefix(kVertexBytes * vertices);
  for (auto& t : mesh.triangles) {
    std::memcpy(t.data(), bytes.data() + 1, kFaceBytes - 1);
    if (bytes[0] != 3 || t[0] >= vertices || t[1] >= vertices || t[2] >= vertices) throw FileError(fault::kScanDamaged);
    bytes.remove_prefix(kFaceBytes);
  }
  const bool finite = std::all_of(mesh.positions.begin(), mesh.positions.end(), [](auto& p) { return p.allFinite(); });
  if (!finite) throw FileError(fault::kScanDamaged);
  return mesh;
}

ProjectScan projectScan(const CleanScan& clean, const anatomy::Bone& sculpted, anatomy::ScanUnit unit,
                        const fs::path& original) {
  auto mesh = std::make_shared<solid::TriangleMesh>(clean.mesh);
  const double metres = anatomy::metresOf(unit);
  for (Eigen::Vector3f& p : mesh->positions) p = (p.cast<double>() * metres).cast<float>();
  ProjectScan out;
  out.scan.bone = sculpted.name;
  out.scan.unit = unit;
  out.scan.checksum = scanChecksum(scanPly(*mesh));
  out.scan.file = std::string(kFolder) + sculpted.id + "-" + out.scan.checksum.substr(0, kNamedBy) + ".ply";
  out.scan.source = "scan " + original.filename().string();
  out.scan.X_BoneScan = guessedPlace(*mesh, sculpted, clean.up);
  out.borders = solid::openBorders(*mesh);
  out.mesh = std::move(mesh);
  return out;
}

anatomy::Specimen specimenOf(const anatomy::MeasurementTable& table, const std::vector<ProjectScan>& scans) {
  using anatomy::Evidence;
  auto specimen = anatomy::withScans(anatomy::buildSpecimen(table), recordsOf(scans));
  for (const ProjectScan& kept : scans) {
    if (kept.mesh || kept.trouble.empty()) continue;
    const auto index = specimen.findBone(toId(kept.scan.bone));
    if (!index) continue;
    // What stands in for a mesh that cannot be read is sculpted, whatever was found of the bone.
    anatomy::Bone& standIn = specimen.bones[index->value];
    const anatomy::TableRow* row = table.find(kept.scan.bone);
    const bool found = !row || row->evidence == Evidence::Found || row->evidence == Evidence::FoundDeformed;
    standIn.evidence = found ? Evidence::Inferred : row->evidence;
    standIn.source = row ? row->source : std::string();
  }
  return specimen;
}

std::vector<anatomy::Scan> recordsOf(const std::vector<ProjectScan>& scans) {
  std::vector<anatomy::Scan> records;
  for (const ProjectScan& kept : scans) records.push_back(kept.scan);
  return records;
}

}  // namespace zyga::files
