#include "core/solid/bone_shape.h"

#include "core/solid/appendicular/appendicular.h"
#include "core/solid/axial/axial.h"

namespace zyga::solid {

using anatomy::BoneKind;

Shape shapeOf(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  return cervicalShape(specimen, bone);
}

}  // namespace zyga::solid
