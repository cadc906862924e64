#pragma once

#include "core/files/project/project.h"
#include "core/picture/picture.h"

namespace zyga::app {

/// A project's bones where a pose puts them, toned by their evidence.
struct PosedBones {
  std::vector<picture::Instance> instances;
  std::vector<anatomy::BoneIndex> bones;  ///< by instance
};
/// `only`: by bone, the ones that are wanted; empty for all of them.
PosedBones posedBones(const files::Project& project, const kinematics::Pose& pose, const std::vector<bool>& only = {});

/// The body guide around the posed bones, as one instance. Throws reason::Failure as solid::bodyGuide does.
picture::Instance posedGuide(const files::Project& project, const kinematics::Pose& pose);

}  // namespace zyga::app
