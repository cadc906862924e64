#pragma once

#include <Eigen/Geometry>
#include <cmath>
#include <map>
#include <numbers>

#include "core/solid/mesh/triangle_mesh.h"

/// Meshes whose answers are known.
namespace zyga::solid {

/// A sphere of `rings` rings from pole to pole and twice as many around, vertices shared.
inline TriangleMesh sphereMesh(double radius, int rings) {
  TriangleMesh mesh;
  const int around = 2 * rings;
  mesh.positions.push_back(Eigen::Vector3f(0, 0, static_cast<float>(radius)));
  for (int i = 1; i < rings; ++i)
    for (int j = 0; j < around; ++j) {
      const double a = std::numbers::pi * i / rings, b = 2 * std::numbers::pi * j / around;
      mesh.positions.push_back(
          (radius * Eigen::Vector3d(std::sin(a) * std::cos(b), std::sin(a) * std::sin(b), std::cos(a))).cast<float>());
    }
  mesh.positions.push_back(Eigen::Vector3f(0, 0, static_cast<float>(-radius)));
  const auto at = [&](int ring, int j) {
    if (ring == 0) return 0u;
    if (ring == rings) return static_cast<std::uint32_t>(mesh.positions.size() - 1);
    return static_cast<std::uint32_t>(1 + (ring - 1) * around + j % around);
  };
  for (int i = 0; i < rings; ++i)
    for (int j = 0; j < around; ++j) {
      const auto a = at(i, j), b = at(i, j + 1), c = at(i + 1, j), d = at(i + 1, j + 1);
      if (i > 0) mesh.triangles.push_back({a, c, b});
      if (i + 1 < rings) mesh.triangles.push_back({b, c, d});
    }
  return mesh;
}

/// Every triangle with corners of its own, as STL holds them.
inline TriangleMesh soupOf(const TriangleMesh& mesh) {
  TriangleMesh soup;
  for (const auto& t : mesh.triangles) {
    const auto first = static_cast<std::uint32_t>(soup.positions.size());
    for (const auto v : t) soup.positions.push_back(mesh.positions[v]);
    soup.triangles.push_back({first, first + 1, first + 2});
  }
  return soup;
}

inline TriangleMesh insideOut(TriangleMesh mesh) {
  for (auto& t : mesh.triangles) std::swap(t[1], t[2]);
  return mesh;
}

inline TriangleMesh joinedMesh(TriangleMesh a, const TriangleMesh& b) {
  const auto first = static_cast<std::uint32_t>(a.positions.size());
  a.positions.insert(a.positions.end(), b.positions.begin(), b.positions.end());
  for (const auto& t : b.triangles) a.triangles.push_back({t[0] + first, t[1] + first, t[2] + first});
  return a;
}

/// The mesh under an affine map.
inline TriangleMesh mapped(TriangleMesh mesh, const Eigen::Affine3d& map) {
  for (auto& p : mesh.positions) p = (map * p.cast<double>()).cast<float>();
  return mesh;
}

}  // namespace zyga::solid
