#pragma once

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

}  // namespace zyga::anatomy
