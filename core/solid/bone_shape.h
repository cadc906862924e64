#pragma once

#include "core/anatomy/specimen.h"
#include "core/solid/field/shape.h"

namespace zyga::solid {

/// The solid of one bone in its own frame. A right bone is the mirror image of what its own measures and landmarks
/// give on the left. Throws std::out_of_range when a landmark or measure the bone needs is missing.
Shape shapeOf(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);

}  // namespace zyga::solid
