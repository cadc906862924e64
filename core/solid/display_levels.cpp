#include "core/solid/display_levels.h"

#include <meshoptimizer.h>

namespace zyga::solid {

namespace {

constexpr std::uint32_t kUnused = ~0u;

/// The mesh with these triangles and only the vertices they use.
TriangleMesh withTriangles(const TriangleMesh& mesh, std::vector<std::array<std::uint32_t, 3>> triangles) {
  std::vector<std::uint32_t> renumbered(mesh.positions.size(), kUnused);
  TriangleMesh out;
  out.triangles = std::move(triangles);
  for (auto& t : out.triangles)
    for (std::uint32_t& v : t) {
      std::uint32_t& now = renumbered[v];
      if (now == kUnused) {
        now = static_cast<std::uint32_t>(out.positions.size());
        out.positions.push_back(mesh.positions[v]);
      }
      v = now;
    }
  return out;
}

TriangleMesh fewer(const TriangleMesh& mesh, std::size_t triangles) {
  std::vector<std::array<std::uint32_t, 3>> kept(mesh.triangles.size());
  const std::size_t count = meshopt_simplify(kept.data()->data(), mesh.triangles.data()->data(), 3 * kept.size(),
                                             mesh.positions.data()->data(), mesh.positions.size(),
                                             sizeof(Eigen::Vector3f), 3 * triangles, 1.0f, 0, nullptr);
  kept.resize(count / 3);
  return withTriangles(mesh, std::move(kept));
}

}  // namespace

BoneMesh displayLevels(TriangleMesh mesh, std::size_t coarsest) {
  BoneMesh bone;
  bone.levels.push_back(std::move(mesh));
  while (bone.levels.back().triangles.size() / 4 >= coarsest) {
    const TriangleMesh& finer = bone.levels.back();
    TriangleMesh next = fewer(finer, finer.triangles.size() / 4);
    // Scraps that cannot be simplified further would make levels of the same size for ever.
    if (next.empty() || next.triangles.size() > finer.triangles.size() / 2) break;
    bone.levels.push_back(std::move(next));
  }
  for (TriangleMesh& level : bone.levels) computeNormals(level);
  return bone;
}

}  // namespace zyga::solid
