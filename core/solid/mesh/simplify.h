#pragma once

#include "core/solid/mesh/triangle_mesh.h"
#include "core/task/task.h"

namespace zyga::solid {

/// Takes away triangles of a closed manifold by collapsing edges onto one of their ends. What a collapse onto v costs
/// is the quadric error (Garland & Heckbert 1997, SIGGRAPH 97:209): the sum over the planes n.x + d = 0 of all
/// triangles that the two ends stand for of area (n.v + d)^2 = v^T A v + 2 b.v + c, with A = sum of area n n^T, b = sum
/// of area d n and c = sum of area d^2; the sums of two vertices add up. Collapses go by rounds, cheapest first, no two
/// of a round beside each other. Only collapses that keep the surface a manifold of the same kind are made (link
/// condition: Dey et al. 1999, Publ. Inst. Math. 66:23), so the result is always closed and oriented; it stops early
/// when none is left. Vertices marked in `keep` (one mark a vertex, or none at all) stay. Positions only, in the
/// input's order; unused vertices stay in `positions`. Stops after the present round when cancelled.
TriangleMesh collapseEdges(const TriangleMesh& mesh, std::size_t triangles, const std::vector<bool>& keep = {},
                           const task::Task& task = {});

/// About `triangles` triangles, closed and oriented like the input and in as many pieces; vertices, normals and
/// occlusion are a subset of the input's. Stops early, with more triangles, when cancelled.
TriangleMesh simplified(const TriangleMesh& mesh, std::size_t triangles, const task::Task& task = {});

/// About `triangles` triangles of a mesh with open borders or other flaws, which stay as they are: no vertex of an edge
/// that has not exactly two triangles moves. Quick, but may leave flaws of its own, which `repair` finds.
TriangleMesh simplifiedWithBorders(const TriangleMesh& mesh, std::size_t triangles);
/// The same by collapseEdges, which leaves none. Vertices that are no longer used stay in `positions`.
TriangleMesh carefullySimplifiedWithBorders(const TriangleMesh& mesh, std::size_t triangles,
                                            const task::Task& task = {});

/// Levels of detail of a repaired mesh for display, finest first: the mesh itself, then a quarter each time, down to
/// about `coarsest` triangles; each with normals, without occlusion. The quick simplifier (meshoptimizer) serves here,
/// which may open or close thin parts of the coarser levels: never measure on them.
BoneMesh displayLevels(TriangleMesh mesh, std::size_t coarsest = 1500);

}  // namespace zyga::solid
