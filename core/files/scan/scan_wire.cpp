#include "core/files/scan/scan_wire.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <fstream>

#include "core/files/scan/scan_faults.h"

namespace zyga::files {
namespace {

constexpr std::array<char, 8> kMagic{'z', 'y', 's', 'c', 'a', 'n', '0', '3'};

struct WireHead {
  std::array<char, 8> magic = kMagic;
  std::uint64_t vertices = 0, triangles = 0;
  std::uint64_t facesDeclared = 0, facesRead = 0, badFaces = 0, pointsAndLines = 0;
  double unit = 0;  ///< 0 when not fixed
  std::uint64_t yUp = 0;
  std::uint64_t parts = 0, partBytes = 0;
  std::uint64_t vertexColours = 0, faceColours = 0, textures = 0;
};
static_assert(sizeof(WireHead) == 112);

/// Before each part's name.
struct WirePart {
  std::uint64_t triangles = 0, nameBytes = 0;
};

constexpr std::uint64_t kVertexBytes = sizeof(Eigen::Vector3f);
constexpr std::uint64_t kTriangleBytes = sizeof(std::array<std::uint32_t, 3>);
static_assert(kVertexBytes == 12 && kTriangleBytes == 12);

bool fits(const WireHead& head, std::uint64_t fileSize) {
  const std::uint64_t body = fileSize - sizeof(head);
  return head.vertices <= body / kVertexBytes && head.triangles <= body / kTriangleBytes && head.partBytes <= body &&
         head.parts <= body / sizeof(WirePart) &&
         head.vertices * kVertexBytes + head.triangles * kTriangleBytes + head.partBytes == body;
}

bool indicesGood(const solid::TriangleMesh& mesh) {
  const auto n = mesh.positions.size();
  return std::all_of(mesh.triangles.begin(), mesh.triangles.end(),
                     [n](const auto& t) { return t[0] < n && t[1] < n && t[2] < n; });
}

std::string partsOnWire(const std::vector<ScanPart>& parts) {
  std::string bytes;
  for (const ScanPart& part : parts) {
    const WirePart head{part.triangles, part.name.size()};
    bytes.append(reinterpret_cast<const char*>(&head), sizeof(head));
    bytes += part.name;
  }
  return bytes;
}

/// Whatever the file has named its parts, a name is one line of a message. False when the bytes are not the parts.
bool partsFrom(std::string_view bytes, const WireHead& head, std::vector<ScanPart>& out) {
  std::uint64_t triangles = 0;
  for (std::uint64_t i = 0; i < head.parts; ++i) {
    WirePart part;
    if (bytes.size() < sizeof(part)) return false;
    std::memcpy(&part, bytes.data(), sizeof(part));
    bytes.remove_prefix(sizeof(part));
    if (part.nameBytes > bytes.size() || part.nameBytes > kLongestPartName) return false;
    if (part.triangles > head.triangles - triangles) return false;
    triangles += part.triangles;
    std::string name(bytes.substr(0, part.nameBytes));
    for (char& c : name)
      if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) c = ' ';
    bytes.remove_prefix(part.nameBytes);
    out.push_back({std::move(name), part.triangles});
  }
  return bytes.empty() && (out.empty() || triangles == head.triangles);
}

}  // namespace

void writeWire(const RawScan& scan, const std::filesystem::path& path) {
  WireHead head;
  head.vertices = scan.mesh.positions.size();
  head.triangles = scan.mesh.triangles.size();
  head.facesDeclared = scan.facesDeclared;
  head.facesRead = scan.facesRead;
  head.badFaces = scan.badFaces;
  head.pointsAndLines = scan.pointsAndLines;
  head.unit = scan.unit.value_or(0);
  head.yUp = scan.yUp;
  head.vertexColours = scan.looks.vertexColours;
  head.faceColours = scan.looks.faceColours;
  head.textures = scan.looks.textures;
  const std::string parts = partsOnWire(scan.parts);
  head.parts = scan.parts.size();
  head.partBytes = parts.size();
  std::ofstream file(path, std::ios::binary | std::ios::trunc);
  file.write(reinterpret_cast<const char*>(&head), sizeof(head));
  file.write(reinterpret_cast<const char*>(scan.mesh.positions.data()),
             static_cast<std::streamsize>(head.vertices * kVertexBytes));
  file.write(reinterpret_cast<const char*>(scan.mesh.triangles.data()),
             static_cast<std::streamsize>(head.triangles * kTriangleBytes));
  file.write(parts.data(), static_cast<std::streamsize>(parts.size()));
  file.close();
  if (!file) throw FileError({fault::kNoRoom, {pathText(path.parent_path())}});
}

RawScan readWire(const std::filesystem::path& path) {
  const FileError damaged(fault::kDamagedAnswer);
  std::error_code failed;
  const std::uint64_t size = std::filesystem::file_size(path, failed);
  std::ifstream file(path, std::ios::binary);
  WireHead head;
  if (failed || size < sizeof(head) || !file.read(reinterpret_cast<char*>(&head), sizeof(head))) throw damaged;
  if (head.magic != kMagic || !fits(head, size) || !std::isfinite(head.unit) || head.unit < 0) throw damaged;
  RawScan scan;
  scan.mesh.positions.resize(head.vertices);
  scan.mesh.triangles.resize(head.triangles);
  file.read(reinterpret_cast<char*>(scan.mesh.positions.data()),
            static_cast<std::streamsize>(head.vertices * kVertexBytes));
  file.read(reinterpret_cast<char*>(scan.mesh.triangles.data()),
            static_cast<std::streamsize>(head.triangles * kTriangleBytes));
  std::string parts(head.partBytes, '\0');
  file.read(parts.data(), static_cast<std::streamsize>(parts.size()));
  if (!file || !indicesGood(scan.mesh) || !partsFrom(parts, head, scan.parts)) throw damaged;
  scan.facesDeclared = head.facesDeclared;
  scan.facesRead = head.facesRead;
  scan.badFaces = head.badFaces;
  scan.pointsAndLines = head.pointsAndLines;
  if (head.unit > 0) scan.unit = head.unit;
  scan.yUp = head.yUp != 0;
  scan.looks = {head.vertexColours != 0, head.faceColours != 0, head.textures != 0};
  return scan;
}

}  // namespace zyga::files
