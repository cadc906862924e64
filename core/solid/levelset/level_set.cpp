#include "core/solid/levelset/level_set.h"

#include <stdexcept>

#include "core/crew/crew.h"
#include "core/solid/mesh/mirrored_half.h"
#include "core/solid/mesh/surface_points.h"

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
    : grid_(checked(mesh), voxelFor(mesh, voxel)), points_(pointsOver(mesh, 2 * grid_.voxel())) {
  if (mirrorsItself) points_ = leftAndImage(points_);
}

const TriangleMesh& sampledLevel(const BoneMesh& bone, std::size_t triangles) {
  for (const TriangleMesh& level : bone.levels) {
    if (level.triangles.size() <= triangles) return level;
  }
  return bone.levels.back();
}

namespace {

/// None when the bone is not closed.
std::shared_ptr<const LevelSet> levelSetOf(const BoneMesh& bone, std::size_t index, const LevelSetOptions& options) {
  const TriangleMesh& mesh = sampledLevel(bone, options.triangles);
  if (!closed(mesh)) return nullptr;
  if (!options.mirrorsItself.empty() && options.mirrorsItself[index]) {
    if (const auto even = mirroredHalf(mesh)) return std::make_shared<LevelSet>(*even, options.voxel, true);
  }
  return std::make_shared<LevelSet>(mesh, options.voxel);
}

}  // namespace

BoneFields levelSets(const std::vector<std::shared_ptr<const BoneMesh>>& meshes, const std::vector<bool>& wanted,
                     const LevelSetOptions& options) {
  std::vector<std::size_t> jobs;
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (wanted[i] && meshes[i] && !meshes[i]->levels.empty()) jobs.push_back(i);
  }
  BoneFields fields(meshes.size());
  const auto work = [&](std::size_t i) { fields[jobs[i]] = levelSetOf(*meshes[jobs[i]], jobs[i], options); };
  if (!crew::forEach(jobs.size(), {options.threads, options.cancel, options.progress}, work)) fields.clear();
  return fields;
}

}  // namespace zyga::solid
