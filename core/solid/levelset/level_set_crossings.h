#pragma once

#include <cstdint>
#include <vector>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// A line in the direction of x that runs through a triangle.
struct Crossing {
  std::uint32_t line = 0;
  float x = 0;
  int entering = 1;  ///< 1 into the bone, -1 out of it
};

/// Lines in the direction of x, one by one along y and then z.
struct LineGrid {
  float y = 0, z = 0, spacing = 1;
  int countY = 0, countZ = 0;
};

/// Where the lines run through a closed mesh, by line and then x. The sum of `entering` along a line is 0, and between
/// its ends the winding number: positive inside. Whether a line meets a triangle is decided edge by edge with one
/// result for both triangles of an edge, so that no line slips through between two of them, however thin they are.
std::vector<Crossing> crossings(const TriangleMesh& mesh, const LineGrid& lines);

}  // namespace zyga::solid
