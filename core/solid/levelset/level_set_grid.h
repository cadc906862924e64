#pragma once

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/anatomy/signed_distance.h"
#include "core/solid/cache/bytes.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// A triangle made ready for being asked how far points are from it.
struct DistanceTriangle {
  explicit DistanceTriangle(const std::array<Eigen::Vector3f, 3>& corners);

  /// Squared distance. The nearest point lies on an edge, or on the face where p projects into it; slivers too thin for
  /// a normal are their edges.
  float squaredDistance(float x, float y, float z) const {
    float least = 1e30F;
    bool within = area > 0;
    for (std::size_t k = 0; k < 3; ++k) {
      const float px = x - corner[k].x(), py = y - corner[k].y(), pz = z - corner[k].z();
      const float along = px * edge[k].x() + py * edge[k].y() + pz * edge[k].z();
      const float t = std::min(std::max(along * edgeScale[k], 0.0F), 1.0F);
      const float dx = px - t * edge[k].x(), dy = py - t * edge[k].y(), dz = pz - t * edge[k].z();
      least = std::min(least, dx * dx + dy * dy + dz * dz);
      within = within & (px * inward[k].x() + py * inward[k].y() + pz * inward[k].z() >= 0);
    }
    const float height =
        (x - corner[0].x()) * normal.x() + (y - corner[0].y()) * normal.y() + (z - corner[0].z()) * normal.z();
    return within ? height * height : least;
  }
  float squaredDistance(const Eigen::Vector3f& p) const { return squaredDistance(p.x(), p.y(), p.z()); }
  Eigen::AlignedBox3f box() const;

  std::array<Eigen::Vector3f, 3> corner, edge, inward;  ///< edge k runs from corner k to the next
  std::array<float, 3> edgeScale{};                     ///< 1 / squared length, 0 for no length
  Eigen::Vector3f normal = Eigen::Vector3f::Zero();     ///< unit
  float area = 0;                                       ///< twice the area, 0 for a sliver
};

/// Signed distances from a closed mesh (m): a coarse lattice over its box and some way around it, whose samples know
/// their nearest triangle; cells at the surface are refined by bricks of kRefined^3 cells.
class LevelSetGrid {
 public:
  static constexpr int kRefined = 4;

  /// `voxel` is the spacing in the bricks, m. The mesh must be closed and consistently oriented.
  LevelSetGrid(const TriangleMesh& mesh, float voxel);

  /// Trilinear; off the lattice from the box of the mesh alone.
  anatomy::SignedDistance::Estimate estimate(const Eigen::Vector3f& p) const;
  /// Trilinear in the bricks; elsewhere the distance to the triangles nearest to the samples around.
  float distance(const Eigen::Vector3f& p) const;

  void write(ByteWriter& out) const;
  /// None when the bytes are no grid.
  static std::optional<LevelSetGrid> read(ByteReader& in);

  float voxel() const { return voxel_; }
  float reach() const { return kMargin * kRefined * voxel_; }
  const Eigen::AlignedBox3f& box() const { return box_; }  ///< of the mesh
  std::size_t bytes() const;

 private:
  friend class LevelSet;
  friend class LevelSetBuilder;
  LevelSetGrid() = default;
  bool sound() const;
  static constexpr int kNodes = kRefined + 1;
  static constexpr int kBrick = kNodes * kNodes * kNodes;
  static constexpr float kMargin = 2;   ///< cells of the lattice beyond the mesh's box
  static constexpr float kBand = 1.5F;  ///< in voxels: samples of bricks this near the surface are exact

  struct Node {
    float distance = 0;
    std::int32_t brick = -1;    ///< of the cell that starts here; -1: none
    std::uint32_t nearest = 0;  ///< triangle
  };
  /// The sample before a place, and how far on the place lies.
  struct Place {
    std::size_t node = 0;    ///< first of its cell
    int offset = 0;          ///< of the sample before it, in a brick
    Eigen::Vector3f rest;    ///< fine voxels on from that sample, 0 to 1
    Eigen::Vector3f inCell;  ///< cells on from the node, 0 to 1
  };
  /// False off the lattice.
  bool locate(const Eigen::Vector3f& p, Place& place) const;
  float coarse(const Place& place) const;
  float fine(const Place& place) const;
  struct Known {
    std::array<std::uint32_t, 8> triangles{};
    std::size_t count = 0;
  };
  /// The triangles that the corners of a cell know, each once.
  Known knownAt(std::size_t node) const;
  /// Distance from the nearest of them, m, without sign.
  float distanceFrom(const Known& known, const Eigen::Vector3f& p) const;
  std::size_t node(int x, int y, int z) const {
    return (static_cast<std::size_t>(z) * static_cast<std::size_t>(size_.y()) + static_cast<std::size_t>(y)) *
               static_cast<std::size_t>(size_.x()) +
           static_cast<std::size_t>(x);
  }

  float voxel_ = 0;
  float perVoxel_ = 0;  ///< 1 / voxel_
  Eigen::AlignedBox3f box_;
  Eigen::AlignedBox3f lattice_;
  Eigen::Vector3i size_ = Eigen::Vector3i::Zero();  ///< coarse nodes along each axis
  Eigen::Vector3i last_ = Eigen::Vector3i::Zero();  ///< the last fine voxel along each axis
  std::vector<DistanceTriangle> triangles_;
  std::vector<Node> nodes_;
  std::vector<std::int16_t> fine_;  ///< kBrick samples a brick, in kStep voxels
  static constexpr float kStep = 1.0F / 2048;
};

}  // namespace zyga::solid
