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

/// One bone at several levels of detail, finest first; sculpted ones are closed and consistently
/// oriented.
struct BoneMesh {
  std::vector<TriangleMesh> levels;
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
/// Angle-weighted vertex normals (Thurmer & Wuthrich 1998, J. Graph. Tools 3:43).
std::vector<Eigen::Vector3f> normalsOf(const TriangleMesh& mesh);
void computeNormals(TriangleMesh& mesh);

/// The mesh with these triangles in place of its own and only the vertices that they use, in the order in which they
/// are used, with all that they carry.
TriangleMesh withTriangles(const TriangleMesh& mesh, std::vector<std::array<std::uint32_t, 3>> triangles);

/// Which of so many things hang together (union-find with halved paths: Tarjan & van Leeuwen 1984, J. ACM 31:245).
class DisjointSets {
 public:
  explicit DisjointSets(std::size_t count);
  /// The one that stands for all that hang together with `i`.
  std::uint32_t root(std::uint32_t i);
  void join(std::uint32_t a, std::uint32_t b) { parent_[root(a)] = root(b); }
  /// The corners of each triangle hang together.
  void joinCorners(const std::vector<std::array<std::uint32_t, 3>>& triangles);

 private:
  std::vector<std::uint32_t> parent_;
};

/// Of the volume a mesh encloses, filled with uniform stuff of density 1, in powers of the mesh's unit. A mesh with
/// holes is closed by the cone over each hole from the middle of its box: an estimate.
struct MassProperties {
  double area = 0;
  double volume = 0;  ///< positive when triangles face outwards
  Eigen::Vector3d centroid = Eigen::Vector3d::Zero();
  /// Second moments about the principal axes through the centroid, integral of the squared distance from the plane
  /// across each axis divided by the volume, largest first: the bone is longest along axis 0.
  Eigen::Vector3d variances = Eigen::Vector3d::Zero();
  Eigen::Matrix3d axes = Eigen::Matrix3d::Identity();  ///< columns, unit, right-handed
};

/// Exact integrals over tetrahedra between a reference point and each triangle. Where the volume is (nearly) zero, as
/// of an open sheet, centroid and axes are those of the surface instead.
MassProperties massProperties(const TriangleMesh& mesh);

}  // namespace zyga::solid
