#include "core/solid/mesh/smoothing.h"

namespace zyga::solid {
namespace {

/// Every vertex moves by this share of the way to the middle of its neighbours; each edge counts once from each of its
/// triangles.
void moveToNeighbours(TriangleMesh& mesh, float share) {
  std::vector<Eigen::Vector3f> sum(mesh.positions.size(), Eigen::Vector3f::Zero());
  std::vector<float> count(mesh.positions.size(), 0);
  for (const auto& t : mesh.triangles)
    for (int i = 0; i < 3; ++i) {
      sum[t[i]] += mesh.positions[t[(i + 1) % 3]] + mesh.positions[t[(i + 2) % 3]];
      count[t[i]] += 2;
    }
  for (std::size_t v = 0; v < mesh.positions.size(); ++v)
    if (count[v] > 0) mesh.positions[v] += share * (sum[v] / count[v] - mesh.positions[v]);
}

}  // namespace

TriangleMesh smoothed(TriangleMesh mesh, int times) {
  for (int i = 0; i < times; ++i) {
    moveToNeighbours(mesh, 0.5f);
    moveToNeighbours(mesh, -0.53f);
  }
  computeNormals(mesh);
  return mesh;
}

}  // namespace zyga::solid
