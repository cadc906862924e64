#include "core/solid/mesh/facing.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <map>
#include <unordered_map>

namespace zyga::solid {

namespace {

using Eigen::Vector3d;

struct Face {
  Vector3d middle, normal;
  double area = 0;
};

Face faceOf(const TriangleMesh& mesh, std::uint32_t t) {
  const auto& triangle = mesh.triangles[t];
  const Vector3d a = mesh.positions[triangle[0]].cast<double>(), b = mesh.positions[triangle[1]].cast<double>(),
                 c = mesh.positions[triangle[2]].cast<double>();
  const Vector3d n = (b - a).cross(c - a);
  const double twice = n.norm();
  return {(a + b + c) / 3, twice > 0 ? Vector3d(n / twice) : Vector3d::Zero(), twice / 2};
}

/// Faces by cells of the reach, so that what is near lies in a cell or its neighbours.
class FaceCells {
 public:
  FaceCells(const TriangleMesh& mesh, double reach) : reach_(reach) {
    for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t) {
      const Face face = faceOf(mesh, t);
      cells_[cellOf(face.middle)].push_back(face);
    }
  }

  /// Whether the nearest face within reach looks back at this one.
  bool looksBack(const Face& face) const {
    constexpr double kTurned = -0.5;
    const Cell home = cellOf(face.middle);
    double least = reach_ * reach_;
    bool back = false;
    for (int k = 0; k < 27; ++k) {
      const auto found = cells_.find({home[0] + k % 3 - 1, home[1] + k / 3 % 3 - 1, home[2] + k / 9 - 1});
      if (found == cells_.end()) continue;
      for (const Face& other : found->second) {
        const double distance = (other.middle - face.middle).squaredNorm();
        if (distance >= least) continue;
        least = distance;
        back = other.normal.dot(face.normal) < kTurned;
      }
    }
    return back;
  }

 private:
  using Cell = std::array<long, 3>;

  Cell cellOf(const Vector3d& p) const {
    return {std::lround(std::floor(p.x() / reach_)), std::lround(std::floor(p.y() / reach_)),
            std::lround(std::floor(p.z() / reach_))};
  }

  double reach_;
  std::map<Cell, std::vector<Face>> cells_;
};

std::vector<FacingPatch> connected(const TriangleMesh& mesh, const std::vector<std::uint32_t>& triangles) {
  std::unordered_map<std::uint32_t, std::vector<std::size_t>> atVertex;
  for (std::size_t i = 0; i < triangles.size(); ++i)
    for (const std::uint32_t v : mesh.triangles[triangles[i]]) atVertex[v].push_back(i);
  std::vector<bool> seen(triangles.size(), false);
  std::vector<FacingPatch> patches;
  for (std::size_t start = 0; start < triangles.size(); ++start) {
    if (seen[start]) continue;
    FacingPatch patch;
    std::vector<std::size_t> waiting{start};
    seen[start] = true;
    while (!waiting.empty()) {
      const std::uint32_t t = triangles[waiting.back()];
      waiting.pop_back();
      patch.triangles.push_back(t);
      for (const std::uint32_t v : mesh.triangles[t])
        for (const std::size_t next : atVertex[v]) {
          if (seen[next]) continue;
          seen[next] = true;
          waiting.push_back(next);
        }
    }
    patches.push_back(std::move(patch));
  }
  return patches;
}

void measure(const TriangleMesh& mesh, FacingPatch& patch) {
  std::sort(patch.triangles.begin(), patch.triangles.end());
  for (const std::uint32_t t : patch.triangles) {
    const Face face = faceOf(mesh, t);
    patch.area += face.area;
    patch.middle += face.area * face.middle;
  }
  if (patch.area > 0) patch.middle /= patch.area;
}

}  // namespace

std::vector<FacingPatch> facingPatches(const TriangleMesh& mesh, const TriangleMesh& other, double reach) {
  const FaceCells cells(other, reach);
  std::vector<std::uint32_t> facing;
  for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t)
    if (cells.looksBack(faceOf(mesh, t))) facing.push_back(t);
  auto patches = connected(mesh, facing);
  for (FacingPatch& patch : patches) measure(mesh, patch);
  std::sort(patches.begin(), patches.end(), [](const auto& a, const auto& b) { return a.area > b.area; });
  return patches;
}

}  // namespace zyga::solid
