#include "core/solid/cache/bone_bytes.h"

#include "core/solid/cache/bytes.h"

namespace zyga::solid {

namespace {

constexpr std::size_t kMostLevels = 16;

bool readMesh(ByteReader& reader, TriangleMesh& mesh) {
  if (!reader.list(mesh.positions) || !reader.list(mesh.normals) || !reader.list(mesh.occlusion) ||
      !reader.list(mesh.triangles))
    return false;
  const std::size_t n = mesh.positions.size();
  const auto beside = [n](std::size_t size) { return size == 0 || size == n; };
  if (!beside(mesh.normals.size()) || !beside(mesh.occlusion.size())) return false;
  for (const auto& t : mesh.triangles)
    for (const std::uint32_t v : t)
      if (v >= n) return false;
  return true;
}

}  // namespace

std::vector<char> bytesOf(const BoneMesh& bone) {
  ByteWriter writer;
  writer.value(static_cast<std::uint64_t>(bone.levels.size()));
  for (const TriangleMesh& level : bone.levels) {
    writer.list(level.positions);
    writer.list(level.normals);
    writer.list(level.occlusion);
    writer.list(level.triangles);
  }
  return writer.bytes();
}

std::optional<BoneMesh> boneMeshFrom(std::span<const char> bytes) {
  ByteReader reader(bytes);
  std::uint64_t levels = 0;
  if (!reader.value(levels) || levels == 0 || levels > kMostLevels) return std::nullopt;
  BoneMesh bone;
  bone.levels.resize(levels);
  for (TriangleMesh& level : bone.levels)
    if (!readMesh(reader, level)) return std::nullopt;
  return reader.done() ? std::optional(std::move(bone)) : std::nullopt;
}

}  // namespace zyga::solid
