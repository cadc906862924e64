#pragma once

#include <string>

#include "core/anatomy/specimen.h"

namespace zyga::solid {

/// Changes whenever the same bone would come out with another mesh: raise it with every change to kernel or bones.
inline constexpr int kSculptVersion = 8;

/// 32 hexadecimal digits that stand for everything a left or midline bone's meshes depend on: its own measures,
/// landmarks and facets, those of the bones it has to fit, the triangle budget and the version above.
std::string shapeKey(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, std::size_t triangleBudget);

}  // namespace zyga::solid
