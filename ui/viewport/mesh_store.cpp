#include "ui/viewport/mesh_store.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace zyga::ui {
namespace {

// Of equal equilateral triangles with the mesh's area; a sample of the triangles is enough to choose a level by.
double meanEdge(const solid::TriangleMesh& mesh) {
  const std::size_t step = std::max<std::size_t>(1, mesh.triangles.size() / 500);
  double area = 0;
  std::size_t count = 0;
  for (std::size_t i = 0; i < mesh.triangles.size(); i += step, ++count) {
    const auto& t = mesh.triangles[i];
    const Eigen::Vector3f& a = mesh.positions[t[0]];
    area += 0.5 * (mesh.positions[t[1]] - a).cross(mesh.positions[t[2]] - a).norm();
  }
  return std::sqrt(4 / std::sqrt(3.0) * area / std::max<std::size_t>(1, count));
}

MeshStore::Sphere sphereAround(const solid::TriangleMesh& mesh) {
  Eigen::AlignedBox3f box;
  for (const auto& p : mesh.positions) box.extend(p);
  float radius = 0;
  for (const auto& p : mesh.positions) radius = std::max(radius, (p - box.center()).norm());
  return {box.center(), radius, box};
}

}  // namespace

void MeshStore::setMeshes(const files::BoneMeshes& meshes) {
  ++revision_;
  if (meshes.empty() || bones_.empty()) ++arrivals_;
  waiting_.clear();
  auto before = std::exchange(bones_, std::vector<BoneLevels>(meshes.size()));
  for (std::size_t b = 0; b < meshes.size(); ++b) {
    if (!meshes[b] || meshes[b]->levels.empty() || meshes[b]->levels.back().empty()) continue;
    BoneLevels& bone = bones_[b];
    if (b < before.size() && before[b].source == meshes[b] && before[b].levels.back().mesh) {
      bone = std::move(before[b]);
      for (auto& level : bone.levels) level.queued = level.mesh != nullptr;
      continue;
    }
    bone.source = meshes[b];
    if (b < before.size()) bone.predecessor = takeAnyLevel(before[b]);
    for (const auto& mesh : meshes[b]->levels) {
      bone.levels.emplace_back();
      bone.levels.back().edge = meanEdge(mesh);
    }
    bone.sphere = sphereAround(meshes[b]->levels.back());
    want(b, bone.levels.size() - 1);
  }
}

void MeshStore::want(std::size_t bone, std::size_t level) {
  Level& l = bones_[bone].levels[level];
  if (l.queued) return;
  l.queued = true;
  waiting_.emplace_back(bone, level);
}

void MeshStore::upload(std::chrono::milliseconds budget) {
  const auto end = std::chrono::steady_clock::now() + budget;
  while (!waiting_.empty() && std::chrono::steady_clock::now() < end) {
    const auto [bone, level] = waiting_.front();
    waiting_.pop_front();
    bones_[bone].levels[level].mesh = std::make_unique<GlMesh>(gl_, bones_[bone].source->levels[level]);
    bones_[bone].predecessor.reset();
    ++revision_;
  }
}

std::unique_ptr<GlMesh> MeshStore::takeAnyLevel(BoneLevels& bone) {
  for (auto& level : bone.levels)
    if (level.mesh) return std::move(level.mesh);
  return std::move(bone.predecessor);
}

bool MeshStore::complete() const {
  return std::all_of(bones_.begin(), bones_.end(), [](const BoneLevels& bone) {
    return bone.levels.empty() || bone.predecessor ||
           std::any_of(bone.levels.begin(), bone.levels.end(),
                       [](const Level& level) { return level.mesh != nullptr; });
  });
}

bool MeshStore::has(anatomy::BoneIndex bone) const {
  return bone.value < bones_.size() && !bones_[bone.value].levels.empty();
}

GlMesh* MeshStore::level(anatomy::BoneIndex bone, double edge) {
  if (!has(bone)) return nullptr;
  auto& levels = bones_[bone.value].levels;
  std::size_t wanted = levels.size() - 1;
  while (wanted > 0 && levels[wanted].edge > edge) --wanted;
  want(bone.value, wanted);
  for (std::size_t i = wanted; i < levels.size(); ++i)
    if (levels[i].mesh) return levels[i].mesh.get();
  for (std::size_t i = wanted; i-- > 0;)
    if (levels[i].mesh) return levels[i].mesh.get();
  return bones_[bone.value].predecessor.get();
}

GlMesh* MeshStore::coarsest(anatomy::BoneIndex bone) { return level(bone, 1e9); }

}  // namespace zyga::ui
