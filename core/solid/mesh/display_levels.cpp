#include "core/solid/mesh/display_levels.h"

#include <meshoptimizer.h>

#include <future>

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
  // The finest level has most of the normals. They are found while the coarser ones are made, which need its places
  // and triangles only.
  auto normals = std::async(std::launch::async, [&mesh] { computeNormals(mesh); });
  std::vector<TriangleMesh> coarser;
  const auto last = [&]() -> const TriangleMesh& { return coarser.empty() ? mesh : coarser.back(); };
  while (last().triangles.size() / 4 >= coarsest) {
    TriangleMesh next = fewer(last(), last().triangles.size() / 4);
    // Scraps that cannot be simplified further would make levels of the same size for ever.
    if (next.empty() || next.triangles.size() > last().triangles.size() / 2) break;
    coarser.push_back(std::move(next));
  }
  for (TriangleMesh& level : coarser) computeNormals(level);
  normals.get();
  BoneMesh bone;
  bone.levels.push_back(std::move(mesh));
  for (TriangleMesh& level : coarser) bone.levels.push_back(std::move(level));
  return bone;
}

}  // namespace zyga::solid
