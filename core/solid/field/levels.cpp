#include <meshoptimizer.h>

#include <algorithm>

#include "core/solid/field/collapse.h"
#include "core/solid/field/mesher.h"

namespace zyga::solid {

namespace {

/// The mesh's vertices that the given triangles use, with all they carry.
TriangleMesh withTriangles(const TriangleMesh& mesh, const std::vector<std::array<std::uint32_t, 3>>& triangles) {
  constexpr std::uint32_t kUnused = ~0u;
  std::vector<std::uint32_t> renumbered(mesh.positions.size(), kUnused);
  TriangleMesh out;
  out.triangles = triangles;
  for (auto& t : out.triangles)
    for (std::uint32_t& v : t) {
      const std::uint32_t old = v;
      if (renumbered[old] == kUnused) {
        renumbered[old] = static_cast<std::uint32_t>(out.positions.size());
        out.positions.push_back(mesh.positions[old]);
        if (!mesh.normals.empty()) out.normals.push_back(mesh.normals[old]);
        if (!mesh.occlusion.empty()) out.occlusion.push_back(mesh.occlusion[old]);
      }
      v = renumbered[old];
    }
  return out;
}

bool sound(const TriangleMesh& mesh) {
  const MeshHealth health = examine(mesh);
  return health.closed && health.oriented && health.components == 1 && health.volume > 0;
}

std::vector<std::array<std::uint32_t, 3>> fewerTriangles(const TriangleMesh& mesh, std::size_t triangles) {
  std::vector<std::array<std::uint32_t, 3>> kept(mesh.triangles.size());
  const std::size_t count = meshopt_simplify(kept.data()->data(), mesh.triangles.data()->data(), 3 * kept.size(),
                                             mesh.positions.data()->data(), mesh.positions.size(),
                                             sizeof(Eigen::Vector3f), 3 * triangles, 1.0f, 0, nullptr);
  kept.resize(count / 3);
  return kept;
}

}  // namespace

/// The quick simplifier does not promise a manifold; where its result is not one, the careful one takes over.
TriangleMesh simplified(const TriangleMesh& mesh, std::size_t triangles) {
  if (mesh.triangles.size() <= triangles) return mesh;
  TriangleMesh quick = withTriangles(mesh, fewerTriangles(mesh, triangles));
  if (sound(quick)) return quick;
  return withTriangles(mesh, collapseEdges(mesh, triangles).triangles);
}

BoneMesh meshLevels(const Shape& shape, std::size_t triangleBudget) {
  BoneMesh bone;
  const TriangleMesh fine = meshSurface(shape, voxelFor(shape, 6 * triangleBudget));
  if (fine.empty()) return bone;
  const Eigen::Vector3d size = shape.bounds().diagonal();
  std::array<double, 3> extents{size.x(), size.y(), size.z()};
  std::sort(extents.begin(), extents.end());
  bone.levels.push_back(simplified(fine, triangleBudget));
  shade(shape, bone.levels[0], 0.25 * extents[1]);
  for (const std::size_t share : {4, 16}) bone.levels.push_back(simplified(bone.levels.back(), triangleBudget / share));
  return bone;
}

}  // namespace zyga::solid
