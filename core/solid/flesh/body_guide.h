#pragma once

#include "core/solid/flesh/guide_thickness.h"
#include "core/solid/watertight/watertight.h"

namespace zyga::solid {

/// How the mesh is called wherever it is written.
inline constexpr std::string_view kGuideName = "body_guide_not_anatomy";

struct BodyGuideOptions {
  GuideThickness thickness;
  double voxel = 0;           ///< m; 0: one eight-hundredth of the greatest extent
  std::size_t triangles = 0;  ///< about; 0 leaves all
  std::function<void(double share)> progress;
  const std::atomic<bool>* cancel = nullptr;
};

/// A smooth envelope around the posed skeleton to sculpt on, in the world, m; closed and oriented, one piece unless the
/// bones lie far apart. It holds every bone. Along the column it is a tube whose sections enclose the extents of the
/// vertebrae and of what they carry; around limbs, head and feet it is the bones grown by the stated thickness. Nowhere
/// is it less than a voxel off the bone. Empty when cancelled. Throws std::invalid_argument where there are no bones.
TriangleMesh bodyGuide(const PosedSkeleton& skeleton, const BodyGuideOptions& options);

}  // namespace zyga::solid
