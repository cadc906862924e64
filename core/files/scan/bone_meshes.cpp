#include "core/files/scan/bone_meshes.h"

#include <unistd.h>

#include <QStandardPaths>

#include "core/anatomy/plan/build_specimen.h"
#include "core/solid/levelset/level_set.h"
#include "core/solid/mesh/mirrored_half.h"
#include "core/solid/mesh/simplify.h"

namespace zyga::files {
namespace {

/// A normal goes with the inverse transpose, out of the bone under a reflection too; triangles then turn over.
void moveBy(const Eigen::Affine3d& map, solid::TriangleMesh& mesh) {
  for (Eigen::Vector3f& p : mesh.positions) p = (map * p.cast<double>()).cast<float>();
  const Eigen::Matrix3f normals = map.linear().inverse().transpose().cast<float>();
  for (Eigen::Vector3f& n : mesh.normals) n = (normals * n).normalized();
  if (map.linear().determinant() < 0)
    for (auto& t : mesh.triangles) std::swap(t[1], t[2]);
}

/// The neighbours of a scanned bone are sculpted to fit the bone the table gives, whose landmarks are all there.
anatomy::Specimen specimenToSculpt(const Project& project) {
  return project.scans.empty() ? project.specimen() : anatomy::buildSpecimen(project.table);
}

}  // namespace

solid::TriangleMesh meshInBone(const ProjectScan& scan) {
  solid::TriangleMesh mesh = *scan.mesh;
  moveBy(anatomy::boneFromScan(scan.scan), mesh);
  return mesh;
}

BoneMeshes sculptedMeshes(const Project& project, const solid::SculptOptions& options) {
  return solid::sculptAll(specimenToSculpt(project), options);
}

solid::PreviewMeshes previewMeshes(const Project& project, const solid::SculptOptions& options) {
  return solid::previewAll(specimenToSculpt(project), options);
}

BoneMeshes withScans(BoneMeshes sculpted, const Project& project, ScanLevels& levels, const task::Task& task) {
  ScanLevels used;
  for (const ProjectScan& scan : project.scans) {
    if (task.cancelled()) return {};
    const auto bone = project.specimen().findBone(toId(scan.scan.bone));
    if (!bone || !scan.mesh) continue;
    auto& own = used[scan.mesh];
    if (!own) own = levels[scan.mesh];
    if (!own) own = std::make_shared<const solid::BoneMesh>(solid::displayLevels(*scan.mesh));
    auto placed = std::make_shared<solid::BoneMesh>(*own);
    for (auto& level : placed->levels) moveBy(anatomy::boneFromScan(scan.scan), level);
    sculpted[bone->value] = std::move(placed);
  }
  levels = std::move(used);
  return sculpted;
}

std::shared_ptr<const range::ContactModel> contactModel(const anatomy::Specimen& specimen, const BoneMeshes& meshes,
                                                        const std::filesystem::path& cacheFolder,
                                                        const task::Task& task, FieldsByMesh& known) {
  solid::LevelSetOptions options;
  options.cacheFolder = cacheFolder;
  options.task = task;
  options.mirrorsItself = solid::bonesThatMirrorThemselves(specimen);
  const std::vector<bool> meet = range::bonesInContactPairs(specimen);
  std::vector<bool> wanted = meet;
  for (std::size_t b = 0; b < wanted.size(); ++b) wanted[b] = meet[b] && !known.contains(meshes[b]);
  solid::SignedDistances fields = solid::levelSets(meshes, wanted, options);
  if (fields.empty() && !meshes.empty()) return nullptr;
  FieldsByMesh now;
  for (std::size_t b = 0; b < fields.size(); ++b) {
    if (!fields[b] && meet[b])
      if (const auto found = known.find(meshes[b]); found != known.end()) fields[b] = found->second;
    if (fields[b]) now[meshes[b]] = fields[b];
  }
  known = std::move(now);
  return std::make_shared<const range::ContactModel>(specimen, std::move(fields));
}

std::filesystem::path boneCacheFolder() {
  const QString caches = QStandardPaths::writableLocation(QStandardPaths::GenericCacheLocation);
  if (caches.isEmpty()) return {};
  const std::filesystem::path folder = std::filesystem::path(caches.toStdString()) / "zygapose";
  std::error_code failed;
  std::filesystem::create_directories(folder, failed);
  return !failed && access(folder.c_str(), W_OK) == 0 ? folder : std::filesystem::path();
}

BoneMeshes boneMeshes(const Project& project, const solid::SculptOptions& options) {
  BoneMeshes meshes = sculptedMeshes(project, options);
  if (meshes.empty()) return meshes;
  ScanLevels levels;
  return withScans(std::move(meshes), project, levels, options.task);
}

}  // namespace zyga::files
