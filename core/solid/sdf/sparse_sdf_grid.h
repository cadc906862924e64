#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <vector>

#include "core/solid/sdf/node.h"

namespace zyga::solid {

using Cell = std::array<int, 3>;

/// Field values on the corners of a regular grid, kept only in blocks near the surface; elsewhere only the sign is
/// known. Every corner is evaluated once, so that the cells around it agree on its sign.
///
/// Blocks are found by halving a cube around the shape: a cube whose middle is farther from the surface than s r, with
/// r the radius of the ball around it and s the steepest slope that a field may have, holds no surface and is filled
/// with one sign; the rest is halved down to single blocks. On the way the field is pruned to what has a say in the
/// cube (FieldNode::near), so that a block evaluates a few solids and not the whole tree.
class SparseSdfGrid {
 public:
  static constexpr int kSide = 4;  ///< cells along the side of a block
  static constexpr int kCells = kSide * kSide * kSide;

  struct Block {
    Cell first{};            ///< first cell, counted over the whole grid
    std::size_t number = 0;  ///< position in blocks()
    NodePtr local;
    std::array<float, kCells> corner{};
    std::array<std::int32_t, kCells> vertex{};  ///< for the mesher: first vertex of each cell, -1 for none
  };

  SparseSdfGrid(const Shape& shape, double voxel);

  double voxel() const { return voxel_; }
  Point position(const Cell& corner) const;
  std::vector<std::unique_ptr<Block>>& blocks() { return blocks_; }
  const std::vector<std::unique_ptr<Block>>& blocks() const { return blocks_; }
  /// Null away from the surface and outside the grid.
  Block* blockOf(const Cell& cell) const;
  static std::size_t offsetIn(const Block& block, const Cell& cell);
  /// Field at a corner; +-1 km away from the surface.
  float value(const Cell& corner) const;
  /// Values on all corners of a block's cells, x fastest, kSide + 1 along each axis.
  using Corners = std::array<float, (kSide + 1) * (kSide + 1) * (kSide + 1)>;
  /// False when all have the same sign.
  bool gather(const Block& block, Corners& out) const;

 private:
  void visit(const NodePtr& node, const Cell& firstBlock, int size);
  void fill(const Cell& firstBlock, int size, bool inside);
  void addBlock(const NodePtr& local, const Cell& block, bool evaluate);
  void addNeighbours();
  void mendSigns();
  bool mendBlock(const Block& block);
  bool mendFace(const Block& block, const Corners& values, int corner, int stepU, int stepV);
  std::size_t slot(const Cell& block) const;
  bool holds(const Cell& block) const;
  FieldNode::Place placeOf(const Cell& firstBlock, int size) const;

  NodePtr root_;
  double voxel_;
  Cell origin_{};  ///< grid corner (0, 0, 0) lies at origin * voxel, so that y = 0 is a plane of corners
  Cell count_{};   ///< blocks along each axis
  std::vector<std::int32_t> index_;  ///< position in blocks_, or -1 outside, -2 inside
  std::vector<std::unique_ptr<Block>> blocks_;
};

}  // namespace zyga::solid
