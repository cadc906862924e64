#pragma once

#include <cstddef>

#include "core/solid/mesh/triangle_mesh.h"
#include "core/task/task.h"

namespace zyga::solid {

/// What was put right, counted.
struct Repairs {
  std::size_t badIndices = 0;      ///< triangles dropped that name vertices which are not there
  std::size_t notFinite = 0;       ///< triangles dropped for a corner that is no finite point
  std::size_t welded = 0;          ///< vertices that were the same point as another
  std::size_t seamsClosed = 0;     ///< vertices of open borders joined to a border within the weld distance
  std::size_t degenerate = 0;      ///< triangles dropped that have no area
  std::size_t duplicates = 0;      ///< triangles dropped whose three corners another one has
  std::size_t turned = 0;          ///< triangles turned over to agree with their neighbours
  std::size_t insideOut = 0;       ///< whole surfaces turned over to enclose a positive volume
  std::size_t unusedVertices = 0;  ///< vertices dropped that no triangle uses

  bool operator==(const Repairs&) const = default;
};

/// What is left as it was found.
struct Flaws {
  std::size_t holes = 0;             ///< connected open borders
  double longestHole = 0;            ///< length of the longest border, in the mesh's unit
  std::size_t openEdges = 0;         ///< edges with one triangle
  std::size_t nonManifoldEdges = 0;  ///< edges with more than two triangles
  std::size_t twisted = 0;           ///< edges across which neighbours cannot agree (a one-sided surface)
  std::size_t surfaces = 0;          ///< connected surfaces
  std::size_t cavities = 0;          ///< surfaces inside another that face inwards: hollows, counted off the volume

  bool closed() const { return surfaces > 0 && openEdges == 0 && nonManifoldEdges == 0; }
  bool operator==(const Flaws&) const = default;
};

struct Repaired {
  TriangleMesh mesh;  ///< positions and triangles; normals and occlusion empty
  Repairs repairs;
  Flaws flaws;
};

struct RepairOptions {
  /// Border vertices nearer than this share of the mesh's diagonal are joined; vertices at the very same place always.
  double weldShare = 1e-6;
  task::Task task;  ///< when cancelled, the work ends soon with an empty mesh; nothing is told
};

/// A surface as a scanner or an exporter left it, made fit for use: welded, without degenerate and double triangles,
/// consistently oriented and facing outwards. Holes stay open and are reported. Takes time in proportion to the
/// triangles, but for a sort of each vertex's few edges.
Repaired repair(TriangleMesh mesh, const RepairOptions& options = {});

}  // namespace zyga::solid
