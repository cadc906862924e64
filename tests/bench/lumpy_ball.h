#pragma once

#include <cmath>
#include <numbers>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::bench {

/// A ball 0.2 m across of 2 n^2 triangles, lumpy and rough as a scan.
inline solid::TriangleMesh lumpyBall(int n) {
  solid::TriangleMesh mesh;
  for (int i = 0; i <= n; ++i)
    for (int j = 0; j < n; ++j) {
      const double a = std::numbers::pi * i / n, b = 2 * std::numbers::pi * j / n;
      const double r =
          0.1 * (1 + 0.1 * std::sin(7 * a) * std::cos(5 * b) + 0.002 * std::sin(91 * a) * std::sin(77 * b));
      mesh.positions.push_back(
          (r * Eigen::Vector3d(std::sin(a) * std::cos(b), std::sin(a) * std::sin(b), std::cos(a))).cast<float>());
    }
  const auto at = [n](int ring, int k) { return static_cast<std::uint32_t>(ring * n + k % n); };
  for (int i = 0; i < n; ++i)
    for (int j = 0; j < n; ++j) {
      mesh.triangles.push_back({at(i, j), at(i + 1, j), at(i, j + 1)});
      mesh.triangles.push_back({at(i, j + 1), at(i + 1, j), at(i + 1, j + 1)});
    }
  return mesh;
}

}  // namespace zyga::bench
