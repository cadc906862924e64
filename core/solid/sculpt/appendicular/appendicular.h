#pragma once

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/shape.h"

namespace zyga::solid {

/// Skull, jaw, girdles, limbs and feet, in the bone's frame. Right bones are asked for as their left mirror image by
/// the caller, so this sees left and midline bones only.
Shape appendicularShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);

}  // namespace zyga::solid
