#include "core/solid/mesh/smoothing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace zyga::solid {
namespace {

/// A closed tube around x with ripples along it: rings of points, capped by a point at each end.
TriangleMesh rippledTube(double ripple) {
  constexpr int kRings = 120, kPoints = 40;
  TriangleMesh mesh;
  for (int i = 0; i < kRings; ++i)
    for (int k = 0; k < kPoints; ++k) {
      const double r = 1 + ripple * (i % 2 ? 1 : -1), a = 2 * std::numbers::pi * k / kPoints;
      mesh.positions.emplace_back(static_cast<float>(0.1 * i), static_cast<float>(r * std::cos(a)),
                                  static_cast<float>(r * std::sin(a)));
    }
  const auto id = [](int i, int k) { return static_cast<std::uint32_t>(i * kPoints + k % kPoints); };
  for (int i = 0; i + 1 < kRings; ++i)
    for (int k = 0; k < kPoints; ++k) {
      mesh.triangles.push_back({id(i, k), id(i + 1, k + 1), id(i + 1, k)});
      mesh.triangles.push_back({id(i, k), id(i, k + 1), id(i + 1, k + 1)});
    }
  const auto front = static_cast<std::uint32_t>(mesh.positions.size()), back = front + 1;
  mesh.positions.emplace_back(0.0f, 0.0f, 0.0f);
  mesh.positions.emplace_back(0.1f * (kRings - 1), 0.0f, 0.0f);
  for (int k = 0; k < kPoints; ++k) {
    mesh.triangles.push_back({front, id(0, k + 1), id(0, k)});
    mesh.triangles.push_back({back, id(kRings - 1, k), id(kRings - 1, k + 1)});
  }
  return mesh;
}

/// Greatest and least distance from the axis over the middle of the tube.
std::pair<double, double> radii(const TriangleMesh& mesh) {
  double least = 1e9, most = 0;
  for (const auto& p : mesh.positions)
    if (p.x() > 4 && p.x() < 8) {
      least = std::min<double>(least, std::hypot(p.y(), p.z()));
      most = std::max<double>(most, std::hypot(p.y(), p.z()));
    }
  return {least, most};
}

TEST(Smoothing, TakesRipplesAndKeepsTheSize) {
  const TriangleMesh rough = rippledTube(0.05), even = smoothed(rough, 40);
  const auto [least, most] = radii(even);
  EXPECT_LT(most - least, 0.01) << "0.1 before";
  EXPECT_NEAR((most + least) / 2, 1, 0.02);
  EXPECT_NEAR(volume(even) / volume(rippledTube(0)), 1, 0.03);
  EXPECT_TRUE(examine(even).closed && examine(even).oriented);
  EXPECT_EQ(even.normals.size(), even.positions.size());
}

TEST(Smoothing, NoTimesChangesNoPlace) {
  EXPECT_EQ(smoothed(rippledTube(0.05), 0).positions, rippledTube(0.05).positions);
}

}  // namespace
}  // namespace zyga::solid
