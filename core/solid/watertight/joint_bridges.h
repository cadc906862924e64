#pragma once

#include "core/solid/levelset/level_set.h"
#include "core/solid/watertight/posed_field.h"
#include "core/solid/watertight/watertight.h"

namespace zyga::solid {

struct JointBridges {
  std::vector<Bridge> bridges;
  std::vector<anatomy::JointIndex> unfilled;  ///< the gap is wider than `widest`
};

/// Fillings of the joints between bones that have fields. Each is a little wider than the joint's narrowest gap:
/// `overlap` (m) is what the surface's grid needs to see it.
JointBridges jointBridges(const PosedSkeleton& skeleton, const BoneFields& fields, double overlap, double widest);

}  // namespace zyga::solid
