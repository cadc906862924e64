#include "core/solid/sculpt/appendicular/head_kit.h"
#include "core/solid/sculpt/appendicular/parts.h"

namespace zyga::solid {

Shape skullShape(const Bone& skull) { return isTall(skull) ? tallSkull(skull) : longSkull(skull); }

}  // namespace zyga::solid
