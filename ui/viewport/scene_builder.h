#pragma once

#include "ui/document/document.h"
#include "ui/theme/theme.h"
#include "ui/viewport/scene.h"

namespace zyga::ui {

/// The bones' extents in their own frames, from their meshes or, before those have come, from their landmarks.
std::vector<Eigen::AlignedBox3d> boneBoxes(const anatomy::Specimen& specimen, const files::BoneMeshes& meshes);

/// What there is to see of the document now: tones by evidence, verdicts on the bones of each joint, the compared pose.
/// `boxes` as boneBoxes gives them.
Scene buildScene(const Document& document, const std::vector<Eigen::AlignedBox3d>& boxes, const Theme& theme);

/// World box of one bone, m.
Eigen::AlignedBox3d worldBox(const Eigen::AlignedBox3d& box, const Eigen::Isometry3d& X_WB);

}  // namespace zyga::ui
