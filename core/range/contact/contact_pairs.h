#pragma once

#include <vector>

#include "core/anatomy/specimen.h"
#include "core/range/contact/contact_search.h"

namespace zyga::range {

/// The shafts of a vertebra's cervical ribs, in its frame, from a little behind their heads: long ones are ossified
/// tendons and bend (Klein, Christian & Sander 2012, Biol. Lett. 8:1032, abstract read), so that a sculpted one that
/// meets another bone is no evidence. Head, tubercle and the spur in front of them stay. None for other bones and for a
/// scan: there the bone itself says where its rib runs. How wide they are: program default, no source.
ContactZones bendingRibs(const anatomy::Bone& bone);

/// Two bones that may meet away from a joint, and what of them is the joint's own affair.
struct ContactPair {
  anatomy::BoneIndex a, b;
  ContactZones zonesA, zonesB;  ///< in either bone's frame; bendingRibs() go beside them
};

/// Neighbours of the column and next neighbours of the neck, whose ribs run under them; ribs with the next rib and the
/// next vertebra; shoulder blade, upper arm and thigh with the ribs of their side that they can come near; chevrons
/// with the next chevron and the next vertebra; skull and jaw with the first two vertebrae, and with what a bent neck
/// can bring them to: blades, arms, forefeet and the foremost ribs; forearms and shanks with those of the other side;
/// metacarpals and metatarsals with those of the other side, and the feet of one side with each other. Neighbours
/// across a joint of a limb are the joint's own affair, whose limits are typed. Bones that never move against each
/// other are left out. Left out of neighbours: what lies within facet outlines widened by two fifths,
/// which is as far as the bone around them is flat, as deep as half a facet's width, and an ellipsoid a fifth larger
/// than the cotyle about the centre of rotation. Program default, no source.
std::vector<ContactPair> contactPairs(const anatomy::Specimen& specimen);

}  // namespace zyga::range
