#pragma once

#include <cstdint>
#include <vector>

#include "core/solid/sdf/sparse_sdf_grid.h"

namespace zyga::solid {

/// The surface between inside and outside corners of a grid, dual to the grid: one vertex for every sheet of the
/// surface in every cell, one four-sided face for every grid edge that the surface crosses, joining the vertices of the
/// four cells around the edge (nets of surface vertices: Gibson 1998, MICCAI 98, LNCS 1496:888; a vertex a sheet:
/// Nielson 2004, IEEE Visualization 2004:489).
///
/// Why it is closed and a 2-manifold: an edge of the dual surface crosses one face of a cell. The signs at the four
/// corners of that face change an even number of times around it, so 0, 2 or 4 of its edges are crossed; the grid has
/// mended the faces with 4 (SparseSdfGrid), so a face that is crossed has exactly 2 crossed edges, each of which gives
/// one four-sided face: every edge of the surface has two faces. Within a cell the crossed edges fall into closed
/// rings, each edge joined to the two beside it over the two cell faces it lies in; a ring is a sheet and gets a vertex
/// of its own, so that the faces around a vertex form one ring as well.
struct DualSurface {
  std::vector<Point> vertices;
  std::vector<std::size_t> block;                   ///< of each vertex: its block in the grid; ascending
  std::vector<std::array<std::uint32_t, 4>> faces;  ///< counter-clockwise seen from outside
};

/// Vertices start at the mean of the places where the sheet crosses the cell's edges, by linear interpolation. Throws
/// std::logic_error when the shape reaches beyond its own bounds.
DualSurface dualSurface(SparseSdfGrid& grid);

}  // namespace zyga::solid
