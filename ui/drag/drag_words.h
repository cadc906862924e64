#pragma once

#include <QString>
#include <vector>

#include "ui/document/document.h"

namespace zyga::ui {

/// The part of the animal that a chain moves, as people call it: "neck", "tail", "left forelimb", "jaw".
QString partName(const anatomy::Specimen& specimen, const std::vector<JointIndex>& chain);

/// "C7 · seventh neck vertebra": id and title of a bone.
QString boneLabel(const anatomy::Bone& bone);

}  // namespace zyga::ui
