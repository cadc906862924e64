#pragma once

#include <Eigen/Geometry>
#include <cstdint>
#include <vector>

#include "core/anatomy/bone_field.h"
#include "core/solid/level_set_triangle.h"
#include "core/solid/triangle_mesh.h"

namespace zyga::solid {

/// Signed distances from a closed mesh (m): a coarse lattice over its box and some way around it, whose samples know
/// their nearest triangle; cells at the surface are refined by bricks of kRefined^3 cells.
class LevelSetGrid {
 public:
  static constexpr int kRefined = 4;

  /// `voxel` is the spacing in the bricks, m. The mesh must be closed and consistently oriented.
  LevelSetGrid(const TriangleMesh& mesh, float voxel);

  /// Trilinear; off the lattice from the box of the mesh alone.
  anatomy::BoneField::Estimate estimate(const Eigen::Vector3f& p) const;
  /// Trilinear near the surface; elsewhere the distance to the triangles nearest to the samples around.
  float distance(const Eigen::Vector3f& p) const;

  float voxel() const { return voxel_; }
  float reach() const { return kMargin * kRefined * voxel_; }
  const Eigen::AlignedBox3f& box() const { return box_; }  ///< of the mesh
  std::size_t bytes() const;

 private:
  friend class LevelSetBuilder;
  static constexpr int kNodes = kRefined + 1;
  static constexpr int kBrick = kNodes * kNodes * kNodes;
  static constexpr float kMargin = 2;   ///< cells of the lattice beyond the mesh's box
  static constexpr float kBand = 1.5F;  ///< in voxels: samples of bricks this near the surface are exact

  struct Cell {
    std::size_t node = 0;  ///< its first
    Eigen::Vector3f f;     ///< place in it, 0 to 1
  };
  bool onLattice(const Eigen::Vector3f& p) const;
  /// The cell that holds a point of the lattice.
  Cell cellAt(const Eigen::Vector3f& p) const;
  float coarse(const Cell& cell) const;
  float fine(const Cell& cell) const;
  /// The nearest point of the triangles that the cell's corners know.
  Eigen::Vector3f nearest(std::size_t node, const Eigen::Vector3f& p) const;
  std::size_t node(int x, int y, int z) const {
    return (static_cast<std::size_t>(z) * static_cast<std::size_t>(size_.y()) + static_cast<std::size_t>(y)) *
               static_cast<std::size_t>(size_.x()) +
           static_cast<std::size_t>(x);
  }

  float voxel_ = 0;
  Eigen::AlignedBox3f box_;
  Eigen::AlignedBox3f lattice_;
  Eigen::Vector3i size_ = Eigen::Vector3i::Zero();  ///< coarse nodes along each axis
  std::vector<DistanceTriangle> triangles_;
  std::vector<float> nodes_;
  std::vector<std::uint32_t> nearest_;  ///< triangle, by node
  std::vector<std::int32_t> bricks_;    ///< by the cell's first node: brick, or -1
  std::vector<std::int16_t> fine_;      ///< kBrick samples a brick, in kStep voxels
  static constexpr float kStep = 1.0F / 2048;
};

}  // namespace zyga::solid
