#pragma once

#include <atomic>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// Takes away triangles of a closed manifold by collapsing edges onto one of their ends (quadric error: Garland &
/// Heckbert 1997, SIGGRAPH 97:209). Only collapses that keep the surface a manifold of the same kind are made (link
/// condition: Dey et al. 1999, Publ. Inst. Math. 66:23), so the result is always closed and oriented; it stops early
/// when none is left. Vertices marked in `keep` (one mark a vertex, or none at all) stay. Positions only, in the
/// input's order; unused vertices stay in `positions`. Stops after the present round when cancelled.
TriangleMesh collapseEdges(const TriangleMesh& mesh, std::size_t triangles, const std::vector<bool>& keep = {},
                           const std::atomic<bool>* cancel = nullptr);

}  // namespace zyga::solid
