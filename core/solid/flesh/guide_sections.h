#pragma once

#include "core/solid/flesh/guide_thickness.h"
#include "core/solid/sdf/shape.h"
#include "core/solid/watertight/watertight.h"

namespace zyga::solid {

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
