#include "app/verbs/posed_bones.h"

#include <QCoreApplication>

#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "core/files/export/bone_tone.h"
#include "core/solid/flesh/body_guide.h"

namespace zyga::app {

namespace {

picture::Instance guideAround(const files::Project& project, const files::BoneMeshes& meshes,
                              const kinematics::Placement& X_WB) {
  solid::BodyGuideOptions options;
  options.thickness = project.guide;
  options.task = taskAtTerminal(QT_TRANSLATE_NOOP("words", "making the body guide"));
  const auto mesh =
      std::make_shared<const solid::TriangleMesh>(solid::bodyGuide({project.specimen(), meshes, X_WB}, options));
  constexpr std::array kClay{0.72f, 0.66f, 0.60f};
  return {mesh, Eigen::Isometry3d::Identity(), kClay};
}

}  // namespace

PosedBones posedBones(const files::Project& project, const kinematics::Pose& pose, const std::vector<bool>& only,
                      bool withGuide) {
  const auto X_WB = kinematics::forwardKinematics(project.specimen(), articulationOf(project), pose);
  const auto meshes = sculpt(project, withGuide ? std::vector<bool>() : only);
  PosedBones posed;
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (!meshes[i] || meshes[i]->levels.empty() || (!only.empty() && !only[i])) continue;
    // The finest level lives as long as the bone that owns it.
    const std::shared_ptr<const solid::TriangleMesh> finest(meshes[i], &meshes[i]->levels.front());
    posed.instances.push_back({finest, X_WB[i], files::boneTone(project.specimen().bones[i].evidence)});
    posed.bones.push_back({i});
  }
  if (withGuide) posed.guide = guideAround(project, meshes, X_WB);
  return posed;
}

}  // namespace zyga::app
