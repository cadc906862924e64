#pragma once

#include "core/files/project/project.h"
#include "core/picture/picture.h"

namespace zyga::app {

/// A project's bones where a pose puts them, toned by their evidence.
struct PosedBones {
  std::vector<picture::Instance> instances;
  std::vector<anatomy::BoneIndex> bones;  ///< by instance
};
PosedBones posedBones(const files::Project& project, const kinematics::Pose& pose);

}  // namespace zyga::app
