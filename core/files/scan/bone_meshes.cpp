#include "core/files/scan/bone_meshes.h"

#include "core/anatomy/plan/build_specimen.h"
#include "core/solid/mesh/display_levels.h"

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
  return project.scans.empty() ? project.specimen : anatomy::buildSpecimen(project.table);
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

solid::Sketch sketchedMeshes(const Project& project, const solid::SculptOptions& options) {
  return solid::sketchAll(specimenToSculpt(project), options);
}

BoneMeshes withScans(BoneMeshes sculpted, const Project& project, ScanLevels& levels, const std::atomic<bool>* cancel) {
  ScanLevels used;
  for (const ProjectScan& scan : project.scans) {
    if (cancel && cancel->load()) return {};
    const auto bone = project.specimen.findBone(toId(scan.scan.bone));
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

BoneMeshes boneMeshes(const Project& project, const solid::SculptOptions& options) {
  BoneMeshes meshes = sculptedMeshes(project, options);
  if (meshes.empty()) return meshes;
  ScanLevels levels;
  return withScans(std::move(meshes), project, levels, options.cancel);
}

}  // namespace zyga::files
