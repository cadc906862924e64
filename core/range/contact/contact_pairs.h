#pragma once

#include <vector>

#include "core/anatomy/specimen.h"
#include "core/range/contact/contact_search.h"

namespace zyga::range {

/// Two bones that may meet away from a joint, and what of them is the joint's own affair.
struct ContactPair {
  anatomy::BoneIndex a, b;
  ContactZones zonesA, zonesB;  ///< in either bone's frame
};

/// Neighbours of the column and next neighbours of the neck, whose ribs run under them; ribs with the next rib and the
/// next vertebra; shoulder blade, upper arm and thigh with the ribs of their side that they can come near; chevrons
/// with the next chevron and the next vertebra; skull and jaw with the first two vertebrae. Bones that never move
/// against each other are left out. Left out of neighbours: what lies within facet outlines widened by two fifths,
/// which is as far as the bone around them is flat, as deep as half a facet's width, and an ellipsoid a fifth larger
/// than the cotyle about the centre of rotation. Program default, no source.
std::vector<ContactPair> contactPairs(const anatomy::Specimen& specimen);

}  // namespace zyga::range
