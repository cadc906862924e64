#pragma once

#include "core/solid/flesh/guide_thickness.h"
#include "core/solid/sdf/shape.h"
#include "core/solid/watertight/watertight.h"

namespace zyga::solid {

/// The large masses that the bones alone do not give: shoulder and upper arm, forearm, thigh with the muscle that runs
/// from it to the tail, shank with its calf, the columns of the feet, and the closed skin of head and jaw. In the
/// world, m. Their sections are shares of the bones' lengths, program defaults, no source, times `muscle`, under skin
/// of the limbs' thickness. No shape when `muscle` is 0 or no such bones are there.
Shape muscleMasses(const PosedSkeleton& skeleton, const GuideThickness& thickness);

}  // namespace zyga::solid
