#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/anatomy/bone_name.h"
#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// What a file is taken for, from its name alone. Always shown and open to change.
struct BoneGuess {
  BoneName name;
  double confidence = 0;  ///< 0 to 1; under 0.5 better asked than believed
  std::string doubt;      ///< what is not certain, for people; empty when nothing
};

/// "C5.stl", "left_femur", "L_humerus", "cervical_07", "BONE_T3", "metacarpal III right". Empty when no word of it
/// names a bone. A missing number is 0, a missing side Left, both with their doubt. A lumbar vertebra is a dorsal one
/// whose number only the whole set can tell.
std::optional<BoneGuess> guessBone(std::string_view fileName);

/// The same for files that belong together: lumbar vertebrae are counted on behind the thoracic ones of the set, or,
/// when the set has none, so that the last is the last dorsal of `counts`.
std::vector<std::optional<BoneGuess>> guessBones(const std::vector<std::string>& fileNames, const RegionCounts& counts);

}  // namespace zyga::anatomy
