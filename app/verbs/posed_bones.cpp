#include "app/verbs/posed_bones.h"

#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "core/files/export/bone_tone.h"

namespace zyga::app {

PosedBones posedBones(const files::Project& project, const kinematics::Pose& pose) {
  const auto X_WB = kinematics::forwardKinematics(project.specimen(), articulationOf(project), pose);
  const auto meshes = sculpt(project);
  PosedBones posed;
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (!meshes[i] || meshes[i]->levels.empty()) continue;
    // The finest level lives as long as the bone that owns it.
    const std::shared_ptr<const solid::TriangleMesh> finest(meshes[i], &meshes[i]->levels.front());
    posed.instances.push_back({finest, X_WB[i], files::boneTone(project.specimen().bones[i].evidence)});
    posed.bones.push_back({i});
  }
  return posed;
}

}  // namespace zyga::app
