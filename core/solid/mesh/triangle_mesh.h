#pragma once

#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <vector>

namespace zyga::solid {

/// A triangle mesh in a bone's frame, m. Triangles are counter-clockwise seen from outside. `normals` and `occlusion`
/// run beside `positions` or are empty; occlusion is 1 in the open and falls towards 0 in hollows.
struct TriangleMesh {
  std::vector<Eigen::Vector3f> positions;
  std::vector<Eigen::Vector3f> normals;
  std::vector<float> occlusion;
  std::vector<std::array<std::uint32_t, 3>> triangles;

  bool empty() const { return triangles.empty(); }
};

struct MeshHealth {
  bool closed = false;    ///< every edge has exactly two triangles
  bool oriented = false;  ///< each edge is run through once each way
  std::size_t components = 0;
  double volume = 0;  ///< m^3, positive when triangles face outwards
};

MeshHealth examine(const TriangleMesh& mesh);
/// Enclosed volume by the divergence theorem, m^3.
double volume(const TriangleMesh& mesh);
/// Angle-weighted vertex normals.
void computeNormals(TriangleMesh& mesh);

}  // namespace zyga::solid
