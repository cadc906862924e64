#pragma once

#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// The parts of a skeleton that have a name of their own: "head", "neck", "trunk", "sacrum", "tail", "ribs",
/// "chevrons", "shoulder", "forelimb", "manus", "pelvis", "hindlimb", "pes".
std::vector<std::string_view> partNames();

/// The bones that a name stands for: an id ("C7", "humerus.L"), or a part, which ".L" or ".R" at its end narrows to one
/// side ("manus.L"). In the specimen's order; none when it has no such bones or the name is not known.
std::vector<BoneIndex> bonesCalled(const Specimen& specimen, std::string_view name);

/// What a list of such names with commas between them stands for ("C5,C6,manus.L"), by bone; and the names in it that
/// stand for nothing.
struct BoneList {
  std::vector<bool> listed;
  std::vector<std::string> unknown;
};
BoneList bonesInList(const Specimen& specimen, std::string_view list);

}  // namespace zyga::anatomy
