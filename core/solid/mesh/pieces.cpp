#include "core/solid/mesh/pieces.h"

#include <Eigen/Geometry>
#include <map>
#include <numeric>

namespace zyga::solid {
namespace {

std::uint32_t rootOf(std::vector<std::uint32_t>& parent, std::uint32_t i) {
  while (parent[i] != i) i = parent[i] = parent[parent[i]];
  return i;
}

/// For each vertex one vertex that stands for its whole piece.
std::vector<std::uint32_t> pieceOfVertices(const TriangleMesh& mesh) {
  std::vector<std::uint32_t> parent(mesh.positions.size());
  std::iota(parent.begin(), parent.end(), 0U);
  for (const auto& t : mesh.triangles)
    for (const std::uint32_t other : {t[1], t[2]}) parent[rootOf(parent, t[0])] = rootOf(parent, other);
  for (std::uint32_t i = 0; i < parent.size(); ++i) parent[i] = rootOf(parent, i);
  return parent;
}

/// Volume by piece. Each is measured from a vertex of its own: far from the origin little pieces would drown.
std::map<std::uint32_t, double> volumes(const TriangleMesh& mesh, const std::vector<std::uint32_t>& piece) {
  std::map<std::uint32_t, double> volume;
  for (const auto& t : mesh.triangles) {
    const std::uint32_t root = piece[t[0]];
    const Eigen::Vector3d origin = mesh.positions[root].cast<double>();
    const Eigen::Vector3d a = mesh.positions[t[0]].cast<double>() - origin,
                          b = mesh.positions[t[1]].cast<double>() - origin,
                          c = mesh.positions[t[2]].cast<double>() - origin;
    volume[root] += a.dot(b.cross(c)) / 6;
  }
  return volume;
}

}  // namespace

Pieces solidPieces(const TriangleMesh& mesh, double leastVolume) {
  const std::vector<std::uint32_t> piece = pieceOfVertices(mesh);
  const std::map<std::uint32_t, double> volume = volumes(mesh, piece);
  Pieces out;
  for (const auto& [root, enclosed] : volume) {
    if (enclosed < 0)
      ++out.hollows;
    else if (enclosed < leastVolume)
      ++out.specks;
    else
      ++out.count;
  }
  constexpr std::uint32_t kUnused = ~0U;
  std::vector<std::uint32_t> renumbered(mesh.positions.size(), kUnused);
  for (auto t : mesh.triangles) {
    if (const double enclosed = volume.at(piece[t[0]]); enclosed < 0 || enclosed < leastVolume) continue;
    for (std::uint32_t& v : t) {
      if (renumbered[v] == kUnused) {
        renumbered[v] = static_cast<std::uint32_t>(out.mesh.positions.size());
        out.mesh.positions.push_back(mesh.positions[v]);
      }
      v = renumbered[v];
    }
    out.mesh.triangles.push_back(t);
  }
  return out;
}

}  // namespace zyga::solid
