#pragma once

#include <string>

#include "core/anatomy/specimen.h"

namespace zyga::range {

/// A place on a bone's surface, in the bone's frame, m.
struct PlaceOnBone {
  const anatomy::Bone& bone;
  Eigen::Vector3d p_B;
};

/// What of a vertebra a place belongs to: "spine", "zygapophysis", "transverse process", "rib", "arch", "centrum".
/// Empty for other bones.
std::string_view partAt(const PlaceOnBone& place);

/// "spines of C6 and C7", "rib of C5 and centrum of C6", "rib.D4.L and scapula.L".
std::string bothParts(const PlaceOnBone& one, const PlaceOnBone& other);

/// "spines of D3 and D4 enter each other by 12 mm (tolerated 5 mm)", "rib.D4.L enters scapula.L by 12 mm (tolerated
/// 5 mm)"; lengths in m.
std::string contactSentence(const PlaceOnBone& entering, const PlaceOnBone& entered, double depth, double tolerated);

}  // namespace zyga::range
