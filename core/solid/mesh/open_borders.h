#pragma once

#include <cstddef>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// How much of a closed surface is not there, as its open borders tell it. Lengths and areas in the mesh's unit.
struct OpenBorders {
  std::size_t borders = 0;  ///< closed runs; holes that touch in one vertex are two
  double length = 0;        ///< of all together
  double area = 0;          ///< of the surface that is there
  double holes = 0;         ///< area of the borders closed flat

  /// Of the surface closed flat, what is missing, 0 to 1. A lower bound: what was there bulged. Half a sphere misses a
  /// half and tells a third.
  double missing() const { return area + holes > 0 ? holes / (area + holes) : 0; }
  bool operator==(const OpenBorders&) const = default;
};

/// From which share on missing surface is told as such. Program default, no source.
inline constexpr double kMuchMissing = 0.05;

/// Each border is closed by the flat piece that has its vector area (half the sum of p x q over its edges), which does
/// not hang on how it is cut into triangles. Vertices at one place must be one (solid::repair).
OpenBorders openBorders(const TriangleMesh& mesh);

}  // namespace zyga::solid
