#include "core/solid/sculpt/sculpt.h"

#include <cassert>
#include <map>

#include "core/solid/cache/bone_bytes.h"
#include "core/solid/cache/bone_cache.h"
#include "core/solid/sculpt/bone_shape.h"
#include "core/task/parallel.h"

namespace zyga::solid {

using anatomy::BoneIndex;
using anatomy::Side;
using anatomy::Specimen;

namespace {

/// Reflects across y = 0; triangles change their sense, or they would face inwards.
TriangleMesh mirroredMesh(TriangleMesh mesh) {
  for (Eigen::Vector3f& p : mesh.positions) p.y() = 0.0f - p.y();
  for (Eigen::Vector3f& n : mesh.normals) n.y() = 0.0f - n.y();
  for (auto& t : mesh.triangles) std::swap(t[1], t[2]);
  return mesh;
}

BoneMesh mirroredMesh(const BoneMesh& bone) {
  BoneMesh out;
  for (const TriangleMesh& level : bone.levels) out.levels.push_back(mirroredMesh(level));
  return out;
}

/// One solid to sculpt, and the bones that get it: as it is, or as its mirror image.
struct Job {
  BoneIndex bone;
  bool inMirror = false;  ///< the bone is taken from the mirrored specimen
  std::string key;
  std::vector<std::size_t> plain, flipped;
};

std::vector<Job> listJobs(const Specimen& specimen, const Specimen& mirror, const SculptOptions& options) {
  std::map<std::string, std::size_t> known;
  std::vector<Job> jobs;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const anatomy::Bone& bone = specimen.bones[i];
    if (bone.fusedInto || (!options.wanted.empty() && !options.wanted[i])) continue;
    const bool right = bone.name.side == Side::Right;
    const std::string key = shapeKey(right ? mirror : specimen, {i}, options.triangleBudget);
    const auto [entry, isNew] = known.try_emplace(key, jobs.size());
    if (isNew) jobs.push_back({{i}, right, key, {}, {}});
    Job& job = jobs[entry->second];
    (right ? job.flipped : job.plain).push_back(i);
  }
  return jobs;
}

class SculptBatch {
 public:
  enum class IfMissing { Sculpt, Preview };  ///< what becomes of bones that the cache lacks

  SculptBatch(const Specimen& specimen, const SculptOptions& options, IfMissing ifMissing)
      : specimen_(specimen),
        mirror_(mirroredSpecimen(specimen)),
        options_(options),
        ifMissing_(ifMissing),
        cache_(options.cacheFolder),
        jobs_(listJobs(specimen_, mirror_, options)),
        meshes_(specimen.bones.size()) {}

  std::vector<std::shared_ptr<const BoneMesh>> run() {
    assert(options_.triangleBudget > 0);
    const bool all = task::forEach(jobs_.size(), options_.task, [this](std::size_t i) { finish(jobs_[i]); });
    if (!all) return {};
    return std::move(meshes_);
  }

  bool rough() const { return rough_; }

 private:
  /// Each job writes only its own bones' places.
  void finish(const Job& job) {
    std::optional<BoneMesh> found;
    if (const auto kept = cache_.read(BoneCache::Kind::Mesh, job.key)) found = boneMeshFrom(*kept);
    if (!found) {
      const Specimen& specimen = job.inMirror ? mirror_ : specimen_;
      if (ifMissing_ == IfMissing::Preview) {
        found = previewBone(specimen, job.bone);
        rough_ = true;
      } else {
        found = meshBone(specimen, job.bone, options_.triangleBudget);
        cache_.write(BoneCache::Kind::Mesh, job.key, bytesOf(*found));
      }
    }
    if (!job.flipped.empty()) {
      const auto mesh = std::make_shared<const BoneMesh>(mirroredMesh(*found));
      for (const std::size_t i : job.flipped) meshes_[i] = mesh;
    }
    if (!job.plain.empty()) {
      const auto mesh = std::make_shared<const BoneMesh>(std::move(*found));
      for (const std::size_t i : job.plain) meshes_[i] = mesh;
    }
  }

  const Specimen& specimen_;
  const Specimen mirror_;
  const SculptOptions& options_;
  const IfMissing ifMissing_;
  const BoneCache cache_;
  const std::vector<Job> jobs_;
  std::vector<std::shared_ptr<const BoneMesh>> meshes_;
  std::atomic<bool> rough_{false};
};

}  // namespace

std::vector<std::shared_ptr<const BoneMesh>> sculptAll(const Specimen& specimen, const SculptOptions& options) {
  return SculptBatch(specimen, options, SculptBatch::IfMissing::Sculpt).run();
}

PreviewMeshes previewAll(const Specimen& specimen, const SculptOptions& options) {
  SculptBatch batch(specimen, options, SculptBatch::IfMissing::Preview);
  PreviewMeshes preview{batch.run(), false};
  preview.rough = batch.rough();
  return preview;
}

BoneMesh sculptBone(const Specimen& specimen, BoneIndex bone, std::size_t triangleBudget) {
  if (specimen[bone].fusedInto) return {};
  if (specimen[bone].name.side != Side::Right) return meshBone(specimen, bone, triangleBudget);
  return mirroredMesh(meshBone(mirroredSpecimen(specimen), bone, triangleBudget));
}

}  // namespace zyga::solid
