#pragma once

#include <span>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// Which triangles share which edges. Side `3 * t + i` runs from corner i of triangle t to its next corner.
class EdgeTable {
 public:
  /// One side's use of an edge whose lower vertex is known from where it stands.
  struct Use {
    std::uint32_t upper = 0;  ///< the edge's other vertex
    std::uint32_t side = 0;
  };

  explicit EdgeTable(const TriangleMesh& mesh);

  /// Calls visit(lower, uses) for every edge, lower vertex by lower vertex.
  template <class Visit>
  void forEachEdge(Visit visit) const {
    for (std::uint32_t v = 0; v + 1 < first_.size(); ++v) {
      for (std::size_t i = first_[v]; i < first_[v + 1];) {
        std::size_t end = i + 1;
        while (end < first_[v + 1] && uses_[end].upper == uses_[i].upper) ++end;
        visit(v, std::span<const Use>(&uses_[i], end - i));
        i = end;
      }
    }
  }

  /// Whether any triangle has an edge between these two vertices.
  bool hasEdge(std::uint32_t a, std::uint32_t b) const;

 private:
  std::vector<std::size_t> first_;
  std::vector<Use> uses_;
};

inline std::uint32_t startOf(const TriangleMesh& mesh, std::uint32_t side) {
  return mesh.triangles[side / 3][side % 3];
}
inline std::uint32_t endOf(const TriangleMesh& mesh, std::uint32_t side) {
  return mesh.triangles[side / 3][(side % 3 + 1) % 3];
}
inline std::uint32_t oppositeOf(const TriangleMesh& mesh, std::uint32_t side) {
  return mesh.triangles[side / 3][(side % 3 + 2) % 3];
}

}  // namespace zyga::solid
