#pragma once

#include "core/solid/flesh/guide_thickness.h"
#include "core/solid/sdf/shape.h"
#include "core/solid/watertight/watertight.h"

namespace zyga::solid {

/// How the mesh is called wherever it is written.
inline constexpr std::string_view kGuideName = "body_guide_not_anatomy";

struct BodyGuideOptions {
  GuideThickness thickness;
  double voxel = 0;           ///< m; 0: one eight-hundredth of the greatest extent
  std::size_t triangles = 0;  ///< about; 0 leaves all
  task::Task task;
};

/// A smooth envelope around the posed skeleton to sculpt on, in the world, m; closed and oriented, one piece unless the
/// bones lie far apart. It holds every bone. Along the column it is a tube whose sections enclose the extents of the
/// vertebrae and of what they carry; around limbs, head and feet it is the bones grown by the stated thickness. Nowhere
/// is it less than a voxel off the bone. Empty when cancelled. Throws reason::Failure where there are no bones.
TriangleMesh bodyGuide(const PosedSkeleton& skeleton, const BodyGuideOptions& options);

/// A cross-section of the body guide at a vertebra: an ellipse in the vertebra's own transverse plane.
struct GuideSection {
  anatomy::BoneIndex vertebra;
  double y = 0, z = 0;                   ///< middle of the bones' extents in the vertebra's frame, m
  double halfWidth = 0, halfHeight = 0;  ///< of the bones alone, m
};

/// From the snout's end of the column to the tip of the tail: extents of each vertebra and of the ribs, chevrons and
/// girdle bones beside it, evened out from neighbour to neighbour. No limb bones.
std::vector<GuideSection> guideSections(const PosedSkeleton& skeleton);

/// Half width and half height of the guide at section `i`: the bones' and what the thickness adds there.
Section grownSection(const PosedSkeleton& skeleton, const std::vector<GuideSection>& sections, std::size_t i,
                     const GuideThickness& thickness);

/// What the thickness adds (m) around the bones of the column at a vertebra, the tail's multiples left out.
double columnThickness(const anatomy::Specimen& specimen, const anatomy::BoneName& vertebra,
                       const GuideThickness& thickness);

/// The tube through the grown sections.
Shape guideTube(const PosedSkeleton& skeleton, const GuideThickness& thickness);

}  // namespace zyga::solid
