#pragma once

#include <Eigen/Geometry>
#include <limits>
#include <map>
#include <vector>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::test {

/// Triangles of one bone that face another bone close by, in connected patches: the end of the centrum in the middle,
/// and the largest patch on either side. Axes: y left.
struct FacingSurfaces {
  std::vector<std::uint32_t> middle, left, right;
};

namespace facing {

/// Distance along the ray to the triangle; infinite when it is missed (Moeller & Trumbore 1997, J. Graph. Tools 2:21).
inline double distanceAlong(const Eigen::Vector3d& from, const Eigen::Vector3d& way, const Eigen::Vector3d& a,
                            const Eigen::Vector3d& b, const Eigen::Vector3d& c) {
  constexpr double kMissed = std::numeric_limits<double>::infinity();
  const Eigen::Vector3d ab = b - a, ac = c - a, p = way.cross(ac);
  const double det = ab.dot(p);
  if (std::abs(det) < 1e-18) return kMissed;
  const Eigen::Vector3d t = from - a;
  const double u = t.dot(p) / det;
  const Eigen::Vector3d q = t.cross(ab);
  const double v = way.dot(q) / det;
  return u < 0 || v < 0 || u + v > 1 ? kMissed : ac.dot(q) / det;
}

inline Eigen::Vector3d corner(const solid::TriangleMesh& mesh, std::size_t t, int i) {
  return mesh.positions[mesh.triangles[t][static_cast<std::size_t>(i)]].cast<double>();
}

inline bool faces(const solid::TriangleMesh& mesh, std::size_t t, const solid::TriangleMesh& other, double gap) {
  const Eigen::Vector3d a = corner(mesh, t, 0), b = corner(mesh, t, 1), c = corner(mesh, t, 2);
  const Eigen::Vector3d normal = (b - a).cross(c - a).normalized(), from = (a + b + c) / 3 - gap * normal;
  for (std::size_t o = 0; o < other.triangles.size(); ++o) {
    const Eigen::Vector3d d = corner(other, o, 0), e = corner(other, o, 1), f = corner(other, o, 2);
    if ((d - from).norm() > 10 * gap) continue;
    const double away = distanceAlong(from, normal, d, e, f);
    if (away < 0 || away > 2 * gap) continue;
    if ((e - d).cross(f - d).normalized().dot(normal) < -0.6) return true;
  }
  return false;
}

}  // namespace facing

namespace facing {

inline FacingSurfaces within(const solid::TriangleMesh& mesh, const solid::TriangleMesh& other, double gap) {
  std::vector<std::uint32_t> all;
  for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t)
    if (faces(mesh, t, other, gap)) all.push_back(t);
  // Connected over shared vertices.
  std::map<std::uint32_t, std::uint32_t> root;
  const auto find = [&root](std::uint32_t v) {
    while (root.contains(v) && root[v] != v) v = root[v];
    return v;
  };
  for (const std::uint32_t t : all)
    for (const std::uint32_t v : mesh.triangles[t]) {
      root.try_emplace(v, v);
      root[find(v)] = find(mesh.triangles[t][0]);
    }
  std::map<std::uint32_t, std::vector<std::uint32_t>> patches;
  for (const std::uint32_t t : all) patches[find(mesh.triangles[t][0])].push_back(t);
  FacingSurfaces out;
  for (auto& [vertex, patch] : patches) {
    double y = 0;
    for (const std::uint32_t t : patch) y += corner(mesh, t, 0).y() / static_cast<double>(patch.size());
    auto& place = std::abs(y) < 0.0015 ? out.middle : y > 0 ? out.left : out.right;
    if (patch.size() > place.size()) place = std::move(patch);
  }
  return out;
}

}  // namespace facing

/// Facets lie closer to each other than the ends of the centra, which a disc kept apart.
inline FacingSurfaces facingSurfaces(const solid::TriangleMesh& mesh, const solid::TriangleMesh& other) {
  FacingSurfaces out = facing::within(mesh, other, 0.002);
  for (double gap = 0.003; out.middle.empty() && gap < 0.007; gap += 0.001)
    out.middle = facing::within(mesh, other, gap).middle;
  return out;
}

}  // namespace zyga::test
