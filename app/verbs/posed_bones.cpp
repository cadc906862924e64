#include "app/verbs/posed_bones.h"

#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "core/files/bone_tone.h"

namespace zyga::app {

PosedBones posedBones(const files::Project& project, const kinematics::Pose& pose) {
  const auto X_WB = kinematics::place(project.specimen, articulationOf(project), pose);
  const auto meshes = sculpt(project);
  PosedBones posed;
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (!meshes[i] || meshes[i]->levels.empty()) continue;
    // The finest level lives as long as the bone that owns it.
    const std::shared_ptr<const solid::TriangleMesh> finest(meshes[i], &meshes[i]->levels.front());
    posed.instances.push_back({finest, X_WB[i], files::boneTone(project.specimen.bones[i].evidence)});
    posed.bones.push_back({i});
  }
  return posed;
}

std::vector<Eigen::Vector3d> cornersOf(const std::vector<picture::Instance>& instances) {
  std::vector<Eigen::Vector3d> corners;
  for (const auto& instance : instances) {
    Eigen::AlignedBox3d box;
    for (const auto& p : instance.mesh->positions) box.extend(p.cast<double>());
    for (int i = 0; i < 8; ++i)
      corners.push_back(instance.X_WB * box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i)));
  }
  return corners;
}

Eigen::AlignedBox3d boundsOf(const std::vector<picture::Instance>& instances) {
  Eigen::AlignedBox3d box;
  for (const auto& instance : instances) {
    for (const auto& p : instance.mesh->positions) box.extend(instance.X_WB * p.cast<double>());
  }
  return box;
}

}  // namespace zyga::app
