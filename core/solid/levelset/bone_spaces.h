#pragma once

#include "core/solid/levelset/level_set.h"
#include "core/solid/watertight/watertight.h"

/// Level sets of a posed skeleton's bones, whatever state their meshes are in.
namespace zyga::solid {

struct BoneSpaces {
  BoneFields fields;  ///< by bone; empty where a bone has no mesh or was left out, all empty when cancelled
  std::size_t holesClosed = 0;
  std::vector<anatomy::BoneIndex> leftOut;
};

/// At most `triangles` triangles a bone are looked at. Holes are closed first; a bone that still encloses nothing is
/// left out.
BoneSpaces boneSpaces(const PosedSkeleton& skeleton, std::size_t triangles, const LevelSetOptions& options);

/// Surface of all bones, m^2, from their finest levels.
double surfaceOf(const PosedSkeleton& skeleton);

}  // namespace zyga::solid
