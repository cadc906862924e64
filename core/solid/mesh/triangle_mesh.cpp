#include "core/solid/mesh/triangle_mesh.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

namespace zyga::solid {

namespace {

std::uint32_t rootOf(std::vector<std::uint32_t>& parent, std::uint32_t i) {
  while (parent[i] != i) i = parent[i] = parent[parent[i]];
  return i;
}

/// Components of the triangles, joined over shared vertices; vertices without triangles do not count.
std::size_t countComponents(const TriangleMesh& mesh) {
  std::vector<std::uint32_t> parent(mesh.positions.size());
  std::iota(parent.begin(), parent.end(), 0u);
  std::vector<bool> used(parent.size(), false);
  for (const auto& t : mesh.triangles) {
    for (const std::uint32_t v : t) used[v] = true;
    for (const std::uint32_t other : {t[1], t[2]}) parent[rootOf(parent, t[0])] = rootOf(parent, other);
  }
  std::size_t count = 0;
  for (std::uint32_t i = 0; i < parent.size(); ++i) count += used[i] && rootOf(parent, i) == i;
  return count;
}

/// Edges of the mesh gathered at their lower vertex: the upper vertex, and whether the edge is run upwards.
struct EdgeUses {
  std::vector<std::size_t> first;
  std::vector<std::pair<std::uint32_t, bool>> upper;

  explicit EdgeUses(const TriangleMesh& mesh) : first(mesh.positions.size() + 2, 0), upper(3 * mesh.triangles.size()) {
    forEachEdge(mesh, [&](std::uint32_t a, std::uint32_t b) { ++first[std::min(a, b) + 2]; });
    for (std::size_t i = 1; i < first.size(); ++i) first[i] += first[i - 1];
    forEachEdge(mesh, [&](std::uint32_t a, std::uint32_t b) {
      upper[first[std::min(a, b) + 1]++] = {std::max(a, b), a < b};
    });
  }

  template <class Visit>
  static void forEachEdge(const TriangleMesh& mesh, Visit visit) {
    for (const auto& t : mesh.triangles)
      for (std::size_t i = 0; i < 3; ++i) visit(t[i], t[(i + 1) % 3]);
  }
};

/// Whether every edge has two triangles, and whether it is run once each way.
std::pair<bool, bool> examineEdges(const TriangleMesh& mesh) {
  EdgeUses uses(mesh);
  bool closed = !mesh.triangles.empty(), oriented = closed;
  for (std::size_t v = 0; v < mesh.positions.size(); ++v) {
    const auto begin = uses.upper.begin() + static_cast<std::ptrdiff_t>(uses.first[v]);
    const auto end = uses.upper.begin() + static_cast<std::ptrdiff_t>(uses.first[v + 1]);
    std::sort(begin, end);
    for (auto run = begin; run != end;) {
      const auto next = std::find_if(run, end, [&](const auto& use) { return use.first != run->first; });
      if (next - run != 2 || run->first == v) closed = false;
      if (next - run != 2 || run->second == (run + 1)->second) oriented = false;
      run = next;
    }
  }
  return {closed, oriented};
}

}  // namespace

MeshHealth examine(const TriangleMesh& mesh) {
  MeshHealth health;
  std::tie(health.closed, health.oriented) = examineEdges(mesh);
  health.components = countComponents(mesh);
  health.volume = volume(mesh);
  return health;
}

double volume(const TriangleMesh& mesh) {
  double six = 0;
  for (const auto& t : mesh.triangles) {
    const Eigen::Vector3d a = mesh.positions[t[0]].cast<double>(), b = mesh.positions[t[1]].cast<double>(),
                          c = mesh.positions[t[2]].cast<double>();
    six += a.dot(b.cross(c));
  }
  return six / 6;
}

void computeNormals(TriangleMesh& mesh) {
  mesh.normals.assign(mesh.positions.size(), Eigen::Vector3f::Zero());
  for (const auto& t : mesh.triangles) {
    const Eigen::Vector3f u = mesh.positions[t[1]] - mesh.positions[t[0]];
    const Eigen::Vector3f v = mesh.positions[t[2]] - mesh.positions[t[0]];
    const Eigen::Vector3f cross = u.cross(v), w = v - u;
    const float twiceArea = cross.norm();  // the same seen from each corner
    if (!(twiceArea > 0)) continue;
    const Eigen::Vector3f face = cross / twiceArea;
    mesh.normals[t[0]] += face * std::atan2(twiceArea, u.dot(v));
    mesh.normals[t[1]] += face * std::atan2(twiceArea, -u.dot(w));
    mesh.normals[t[2]] += face * std::atan2(twiceArea, v.dot(w));
  }
  for (Eigen::Vector3f& n : mesh.normals) n = n.norm() > 0 ? Eigen::Vector3f(n.normalized()) : Eigen::Vector3f::UnitZ();
}

}  // namespace zyga::solid
