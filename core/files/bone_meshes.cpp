#include "core/files/bone_meshes.h"

#include "core/anatomy/build_specimen.h"
#include "core/solid/display_levels.h"

namespace zyga::files {

solid::TriangleMesh meshInBone(const ProjectScan& scan) {
  const Eigen::Affine3d map = anatomy::boneFromScan(scan.scan);
  solid::TriangleMesh mesh = *scan.mesh;
  for (Eigen::Vector3f& p : mesh.positions) p = (map * p.cast<double>()).cast<float>();
  if (map.linear().determinant() < 0)
    for (auto& t : mesh.triangles) std::swap(t[1], t[2]);
  return mesh;
}

BoneMeshes boneMeshes(const Project& project, const solid::SculptOptions& options) {
  // The neighbours of a scanned bone are sculpted to fit the bone the table gives, whose landmarks are all there.
  BoneMeshes meshes =
      solid::sculptAll(project.scans.empty() ? project.specimen : anatomy::buildSpecimen(project.table), options);
  if (meshes.empty()) return meshes;
  for (const ProjectScan& scan : project.scans) {
    if (options.cancel && options.cancel->load()) return {};
    const auto bone = project.specimen.findBone(toId(scan.scan.bone));
    if (!bone || !scan.mesh) continue;
    meshes[bone->value] = std::make_shared<const solid::BoneMesh>(solid::displayLevels(meshInBone(scan)));
  }
  return meshes;
}

}  // namespace zyga::files
