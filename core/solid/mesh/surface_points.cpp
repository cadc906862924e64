#include "core/solid/mesh/surface_points.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

namespace zyga::solid {
namespace {

using Eigen::Vector3f;

/// Points on the edge, its ends left out.
void addEdge(const Vector3f& a, const Vector3f& b, float spacing, std::vector<Vector3f>& points) {
  const int parts = static_cast<int>(std::ceil((b - a).norm() / spacing));
  for (int i = 1; i < parts; ++i) points.push_back(a + (b - a) * (static_cast<float>(i) / static_cast<float>(parts)));
}

void addFace(const std::array<Vector3f, 3>& t, float spacing, std::vector<Vector3f>& points) {
  const float longest = std::max({(t[1] - t[0]).norm(), (t[2] - t[1]).norm(), (t[0] - t[2]).norm()});
  const int parts = static_cast<int>(std::ceil(longest / spacing));
  for (int i = 1; i < parts; ++i) {
    for (int j = 1; i + j < parts; ++j) {
      points.push_back(t[0] + ((t[1] - t[0]) * static_cast<float>(i) + (t[2] - t[0]) * static_cast<float>(j)) /
                                  static_cast<float>(parts));
    }
  }
}

std::vector<Vector3f> spread(const TriangleMesh& mesh, float spacing) {
  std::vector<Vector3f> points = mesh.positions;
  for (const auto& t : mesh.triangles) {
    const std::array<Vector3f, 3> corners{mesh.positions[t[0]], mesh.positions[t[1]], mesh.positions[t[2]]};
    for (std::size_t k = 0; k < 3; ++k) {
      // The other triangle of the edge runs through it the other way.
      if (t[k] < t[(k + 1) % 3]) addEdge(corners[k], corners[(k + 1) % 3], spacing, points);
    }
    addFace(corners, spacing, points);
  }
  return points;
}

/// The first point of each cell of a lattice.
std::vector<Vector3f> thinned(const std::vector<Vector3f>& points, float cell) {
  Vector3f origin = points.front();
  for (const Vector3f& p : points) origin = origin.cwiseMin(p);
  std::vector<std::pair<std::uint64_t, std::uint32_t>> keys;
  keys.reserve(points.size());
  for (std::uint32_t i = 0; i < points.size(); ++i) {
    const auto at = ((points[i] - origin) / cell).cast<std::uint64_t>().eval();
    keys.emplace_back(at.x() | at.y() << 21U | at.z() << 42U, i);
  }
  std::sort(keys.begin(), keys.end());
  const auto same = [](const auto& a, const auto& b) { return a.first == b.first; };
  keys.erase(std::unique(keys.begin(), keys.end(), same), keys.end());
  std::vector<Vector3f> out;
  out.reserve(keys.size());
  for (const auto& [key, i] : keys) out.push_back(points[i]);
  return out;
}

}  // namespace

std::vector<Vector3f> pointsOver(const TriangleMesh& mesh, float spacing) {
  return mesh.empty() ? std::vector<Vector3f>{} : thinned(spread(mesh, spacing), 0.5F * spacing);
}

}  // namespace zyga::solid
