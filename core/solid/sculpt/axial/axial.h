#pragma once

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/shape.h"

namespace zyga::solid {

// One function a kind of bone of the axial skeleton; solids in the bone's frame.
Shape atlasShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);
Shape axisShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);
Shape cervicalShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);
Shape dorsalShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);
Shape sacralShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);
Shape caudalShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);
/// Left ribs only.
Shape dorsalRibShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);
Shape chevronShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);

}  // namespace zyga::solid
