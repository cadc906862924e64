#include "core/solid/appendicular/head_kit.h"

namespace zyga::solid {

Shape longSkull(const anatomy::Bone& skull) { return tallSkull(skull); }

}  // namespace zyga::solid
