#include "core/solid/levelset/level_set.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>
#include <stdexcept>

#include "core/solid/cache/bone_cache.h"
#include "core/solid/mesh/mirrored_half.h"
#include "core/task/parallel.h"

namespace zyga::solid {

namespace {

bool closed(const TriangleMesh& mesh) {
  const MeshHealth health = examine(mesh);
  return !mesh.empty() && health.closed && health.oriented;
}

const TriangleMesh& checked(const TriangleMesh& mesh) {
  if (closed(mesh)) return mesh;
  throw std::invalid_argument("level set of a mesh that is not closed or not all facing outwards: " +
                              std::to_string(mesh.triangles.size()) + " triangles");
}

float voxelFor(const TriangleMesh& mesh, double wanted) {
  if (wanted > 0) return static_cast<float>(wanted);
  Eigen::AlignedBox3f box;
  for (const Eigen::Vector3f& p : mesh.positions) box.extend(p);
  return std::clamp(box.sizes().maxCoeff() / 64, 0.003F, 0.010F);
}

/// Those with y >= 0 and their mirror images.
std::vector<Eigen::Vector3f> leftAndImage(const std::vector<Eigen::Vector3f>& points) {
  std::vector<Eigen::Vector3f> out;
  for (const Eigen::Vector3f& p : points) {
    if (p.y() >= 0) out.push_back(p);
    if (p.y() > 0) out.emplace_back(p.x(), -p.y(), p.z());
  }
  return out;
}

}  // namespace

LevelSet::LevelSet(const TriangleMesh& mesh, double voxel, bool mirrorsItself)
    : grid_(checked(mesh), voxelFor(mesh, voxel)), points_(samplePoints(mesh, 2 * grid_.voxel())) {
  if (mirrorsItself) points_ = leftAndImage(points_);
}

std::vector<char> LevelSet::written() const {
  ByteWriter out;
  grid_.write(out);
  out.list(points_);
  return out.bytes();
}

std::shared_ptr<const LevelSet> LevelSet::from(std::span<const char> bytes) {
  ByteReader in(bytes);
  auto grid = LevelSetGrid::read(in);
  if (!grid) return nullptr;
  std::shared_ptr<LevelSet> field(new LevelSet);
  field->grid_ = std::move(*grid);
  return in.list(field->points_) && in.done() ? field : nullptr;
}

const TriangleMesh& sampledLevel(const BoneMesh& bone, std::size_t triangles) {
  for (const TriangleMesh& level : bone.levels) {
    if (level.triangles.size() <= triangles) return level;
  }
  return bone.levels.back();
}

namespace {

/// Changes whenever the same mesh would get another level set: raise it with every change to the grid or its points.
constexpr std::uint64_t kLevelSetVersion = 1;

/// Stands for all that a level set is made of.
std::string keyOf(const TriangleMesh& mesh, double voxel, bool mirrorsItself) {
  ContentDigest digest;
  digest.add(kLevelSetVersion);
  digest.add(std::bit_cast<std::uint64_t>(voxel));
  digest.add(static_cast<std::uint64_t>(mirrorsItself));
  digest.addList(mesh.positions);
  digest.addList(mesh.triangles);
  return digest.text();
}

/// None when the mesh is not closed.
std::shared_ptr<const LevelSet> made(const TriangleMesh& mesh, double voxel, bool mirrorsItself) {
  if (!closed(mesh)) return nullptr;
  if (mirrorsItself)
    if (const auto even = mirroredHalf(mesh)) return std::make_shared<LevelSet>(*even, voxel, true);
  return std::make_shared<LevelSet>(mesh, voxel);
}

std::shared_ptr<const LevelSet> keptOrMade(const BoneCache& cache, const TriangleMesh& mesh, double voxel,
                                           bool mirrorsItself) {
  if (!cache.keeps()) return made(mesh, voxel, mirrorsItself);
  const std::string key = keyOf(mesh, voxel, mirrorsItself);
  if (const auto kept = cache.read(BoneCache::Kind::LevelSet, key))
    if (auto field = LevelSet::from(*kept)) return field;
  auto field = made(mesh, voxel, mirrorsItself);
  if (field) cache.write(BoneCache::Kind::LevelSet, key, field->written());
  return field;
}

}  // namespace

SignedDistances levelSets(const std::vector<std::shared_ptr<const BoneMesh>>& meshes, const std::vector<bool>& wanted,
                          const LevelSetOptions& options) {
  assert(wanted.size() == meshes.size());
  assert(options.mirrorsItself.empty() || options.mirrorsItself.size() == meshes.size());
  std::vector<std::size_t> jobs;
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (wanted[i] && meshes[i] && !meshes[i]->levels.empty()) jobs.push_back(i);
  }
  SignedDistances fields(meshes.size());
  const BoneCache cache(options.cacheFolder);
  const auto work = [&](std::size_t i) {
    const std::size_t bone = jobs[i];
    const bool mirrorsItself = !options.mirrorsItself.empty() && options.mirrorsItself[bone];
    fields[bone] = keptOrMade(cache, sampledLevel(*meshes[bone], options.triangles), options.voxel, mirrorsItself);
  };
  if (!task::forEach(jobs.size(), options.task, work)) fields.clear();
  return fields;
}

namespace {

using Eigen::Vector3f;

/// Points on the edge, its ends left out.
void addEdge(const Vector3f& a, const Vector3f& b, float spacing, std::vector<Vector3f>& points) {
  const int parts = static_cast<int>(std::ceil((b - a).norm() / spacing));
  for (int i = 1; i < parts; ++i) points.push_back(a + (b - a) * (static_cast<float>(i) / static_cast<float>(parts)));
}

void addFace(const std::array<Vector3f, 3>& t, float spacing, std::vector<Vector3f>& points) {
  const float longest = std::max({(t[1] - t[0]).norm(), (t[2] - t[1]).norm(), (t[0] - t[2]).norm()});
  const int parts = static_cast<int>(std::ceil(longest / spacing));
  for (int i = 1; i < parts; ++i) {
    for (int j = 1; i + j < parts; ++j) {
      points.push_back(t[0] + ((t[1] - t[0]) * static_cast<float>(i) + (t[2] - t[0]) * static_cast<float>(j)) /
                                  static_cast<float>(parts));
    }
  }
}

std::vector<Vector3f> spread(const TriangleMesh& mesh, float spacing) {
  std::vector<Vector3f> points = mesh.positions;
  for (const auto& t : mesh.triangles) {
    const std::array<Vector3f, 3> corners{mesh.positions[t[0]], mesh.positions[t[1]], mesh.positions[t[2]]};
    for (std::size_t k = 0; k < 3; ++k) {
      // The other triangle of the edge runs through it the other way.
      if (t[k] < t[(k + 1) % 3]) addEdge(corners[k], corners[(k + 1) % 3], spacing, points);
    }
    addFace(corners, spacing, points);
  }
  return points;
}

/// The first point of each cell of a lattice.
std::vector<Vector3f> thinned(const std::vector<Vector3f>& points, float cell) {
  Vector3f origin = points.front();
  for (const Vector3f& p : points) origin = origin.cwiseMin(p);
  std::vector<std::pair<std::uint64_t, std::uint32_t>> keys;
  keys.reserve(points.size());
  for (std::uint32_t i = 0; i < points.size(); ++i) {
    const auto at = ((points[i] - origin) / cell).cast<std::uint64_t>().eval();
    keys.emplace_back(at.x() | at.y() << 21U | at.z() << 42U, i);
  }
  std::sort(keys.begin(), keys.end());
  const auto same = [](const auto& a, const auto& b) { return a.first == b.first; };
  keys.erase(std::unique(keys.begin(), keys.end(), same), keys.end());
  std::vector<Vector3f> out;
  out.reserve(keys.size());
  for (const auto& [key, i] : keys) out.push_back(points[i]);
  return out;
}

}  // namespace

std::vector<Vector3f> samplePoints(const TriangleMesh& mesh, float spacing) {
  return mesh.empty() ? std::vector<Vector3f>{} : thinned(spread(mesh, spacing), 0.5F * spacing);
}

}  // namespace zyga::solid
