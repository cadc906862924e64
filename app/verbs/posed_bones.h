#pragma once

#include <optional>

#include "core/files/project/project.h"
#include "core/picture/picture.h"

namespace zyga::app {

/// A project's bones where a pose puts them, toned by their evidence.
struct PosedBones {
  std::vector<picture::Instance> instances;
  std::vector<anatomy::BoneIndex> bones;  ///< by instance
  /// The body guide around all bones, drawn or not, where it was wanted.
  std::optional<picture::Instance> guide;
};
/// `only`: by bone, the ones that are drawn; empty for all of them. Throws reason::Failure as solid::bodyGuide does.
PosedBones posedBones(const files::Project& project, const kinematics::Pose& pose, const std::vector<bool>& only = {},
                      bool withGuide = false);

}  // namespace zyga::app
