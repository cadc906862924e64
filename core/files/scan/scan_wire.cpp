#include "core/files/scan/scan_wire.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <fstream>

#include "core/files/scan/scan_faults.h"

namespace zyga::files {
namespace {

constexpr std::array<char, 8> kMagic{'z', 'y', 's', 'c', 'a', 'n', '0', '1'};

struct WireHead {
  std::array<char, 8> magic = kMagic;
  std::uint64_t vertices = 0, triangles = 0;
  std::uint64_t facesDeclared = 0, facesRead = 0, badFaces = 0, pointsAndLines = 0;
  double unit = 0;  ///< 0 when not fixed
  std::uint64_t yUp = 0;
};
static_assert(sizeof(WireHead) == 72);

constexpr std::uint64_t kVertexBytes = sizeof(Eigen::Vector3f);
constexpr std::uint64_t kTriangleBytes = sizeof(std::array<std::uint32_t, 3>);
static_assert(kVertexBytes == 12 && kTriangleBytes == 12);

bool fits(const WireHead& head, std::uint64_t fileSize) {
  const std::uint64_t body = fileSize - sizeof(head);
  return head.vertices <= body / kVertexBytes && head.triangles <= body / kTriangleBytes &&
         head.vertices * kVertexBytes + head.triangles * kTriangleBytes == body;
}

bool indicesGood(const solid::TriangleMesh& mesh) {
  const auto n = mesh.positions.size();
  return std::all_of(mesh.triangles.begin(), mesh.triangles.end(),
                     [n](const auto& t) { return t[0] < n && t[1] < n && t[2] < n; });
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
  std::ofstream file(path, std::ios::binary | std::ios::trunc);
  file.write(reinterpret_cast<const char*>(&head), sizeof(head));
  file.write(reinterpret_cast<const char*>(scan.mesh.positions.data()),
             static_cast<std::streamsize>(head.vertices * kVertexBytes));
  file.write(reinterpret_cast<const char*>(scan.mesh.triangles.data()),
             static_cast<std::streamsize>(head.triangles * kTriangleBytes));
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
  if (!file || !indicesGood(scan.mesh)) throw damaged;
  scan.facesDeclared = head.facesDeclared;
  scan.facesRead = head.facesRead;
  scan.badFaces = head.badFaces;
  scan.pointsAndLines = head.pointsAndLines;
  if (head.unit > 0) scan.unit = head.unit;
  scan.yUp = head.yUp != 0;
  return scan;
}

}  // namespace zyga::files
