#pragma once

#include "core/solid/mesh/edge_table.h"

namespace zyga::solid {

struct Orientation {
  std::size_t turned = 0;     ///< triangles turned over to agree with the greater part of their surface
  std::size_t insideOut = 0;  ///< surfaces turned over as a whole
  std::size_t twisted = 0;    ///< edges across which neighbours still disagree
  std::size_t surfaces = 0;
  std::size_t cavities = 0;  ///< surfaces inside another that face the other way than it
};

/// Gives the triangles of every surface (connected over edges with exactly two triangles) one sense, then turns
/// surfaces over that enclose a negative volume. A surface inside another keeps its sense against that one: a marrow
/// hollow stays a hollow. `edges` must be the mesh's own; afterwards its edges and how many triangles each has still
/// hold, the numbers of sides do not.
Orientation orientOutwards(TriangleMesh& mesh, const EdgeTable& edges);

}  // namespace zyga::solid
