#include "core/solid/mesh/components.h"

#include <Eigen/Geometry>
#include <map>

namespace zyga::solid {

namespace {

/// For each vertex one vertex that stands for its whole piece.
std::vector<std::uint32_t> pieceOfVertices(const TriangleMesh& mesh) {
  DisjointSets sets(mesh.positions.size());
  sets.joinCorners(mesh.triangles);
  std::vector<std::uint32_t> piece(mesh.positions.size());
  for (std::uint32_t i = 0; i < piece.size(); ++i) piece[i] = sets.root(i);
  return piece;
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

Components solidComponents(const TriangleMesh& mesh, double leastVolume) {
  const std::vector<std::uint32_t> piece = pieceOfVertices(mesh);
  const std::map<std::uint32_t, double> volume = volumes(mesh, piece);
  Components out;
  for (const auto& [root, enclosed] : volume) {
    if (enclosed < 0)
      ++out.hollows;
    else if (enclosed < leastVolume)
      ++out.specks;
    else
      ++out.count;
  }
  std::vector<std::array<std::uint32_t, 3>> kept;
  for (const auto& t : mesh.triangles)
    if (const double enclosed = volume.at(piece[t[0]]); enclosed >= 0 && enclosed >= leastVolume) kept.push_back(t);
  out.mesh = withTriangles({mesh.positions, {}, {}, {}}, std::move(kept));
  return out;
}

}  // namespace zyga::solid
