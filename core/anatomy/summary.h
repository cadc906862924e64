#pragma once

#include <cstddef>

#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// Sizes of the animal, m. Lengths along the column are sums of functional lengths (without condyles).
struct Summary {
  double skull = 0, neck = 0, trunk = 0, sacrum = 0, tail = 0;
  double presacral = 0;  ///< neck + trunk
  double column = 0;     ///< neck + trunk + sacrum + tail
  double total = 0;      ///< skull + column: snout to tail tip along the column
  double femur = 0, humerus = 0;
  double humerusToFemur = 0;
  double neckToTrunk = 0;
};

Summary summarise(const Specimen& specimen);

/// Centrum length over the mean of cotyle height and width.
double elongation(const Bone& vertebra);

/// How much of a skeleton is known from bones that were found.
struct Completeness {
  std::size_t bones = 0;         ///< in the whole skeleton
  std::size_t found = 0;         ///< found, deformed ones included
  std::size_t withMirrored = 0;  ///< found, or the bone of the other side is: a left bone counts for its right

  double share() const { return bones > 0 ? static_cast<double>(found) / static_cast<double>(bones) : 0; }
  double shareWithMirrored() const {
    return bones > 0 ? static_cast<double>(withMirrored) / static_cast<double>(bones) : 0;
  }
};

/// Counted as published skeletons are: bones present of all bones, plain and with mirror images (Lacovara et al. 2014,
/// Sci. Rep. 4:6196).
Completeness completeness(const Specimen& specimen);

}  // namespace zyga::anatomy
