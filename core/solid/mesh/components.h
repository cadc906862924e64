#pragma once

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// What is left of a closed surface, and what was taken away.
struct Components {
  TriangleMesh mesh;        ///< positions and triangles
  std::size_t count = 0;    ///< connected surfaces left
  std::size_t hollows = 0;  ///< walls of closed hollows dropped: those that face inwards
  std::size_t specks = 0;   ///< pieces dropped for enclosing less than asked
};

/// The pieces of a closed, oriented mesh that face outwards and enclose at least `leastVolume` (m^3).
Components solidComponents(const TriangleMesh& mesh, double leastVolume);

}  // namespace zyga::solid
