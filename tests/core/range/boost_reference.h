#pragma once

#include "core/range/overlap.h"

/// Boost.Geometry as an independent reference, in a file of its own because it is slow to compile.
namespace zyga::test {

struct SharedByBoost {
  double area = 0;     ///< m^2
  double extentX = 0;  ///< m
};

/// What two simple counter-clockwise polygons share, from Boost.Geometry's overlay of general polygons.
SharedByBoost sharedByBoost(const range::Polygon& a, const range::Polygon& b);

}  // namespace zyga::test
