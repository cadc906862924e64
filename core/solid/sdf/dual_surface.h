#pragma once

#include <cstdint>
#include <vector>

#include "core/solid/sdf/corner_grid.h"

namespace zyga::solid {

/// The surface between inside and outside corners of a grid: one vertex for every sheet of the surface in every cell,
/// one four-sided face for every grid edge that the surface crosses.
struct DualSurface {
  std::vector<Point> vertices;
  std::vector<std::size_t> block;                   ///< of each vertex: its block in the grid; ascending
  std::vector<std::array<std::uint32_t, 4>> faces;  ///< counter-clockwise seen from outside
};

DualSurface dualSurface(CornerGrid& grid);

}  // namespace zyga::solid
