#pragma once

#include "core/solid/levelset/level_set_grid.h"

namespace zyga::solid {

/// Fills a LevelSetGrid. Distances are exact in a band around the surface; from there the nearest triangle is handed on
/// from sample to sample. The side is told by counting crossings along lines, apart from all distances, because next to
/// thin bone the nearest triangle does not tell it.
class LevelSetBuilder {
 public:
  LevelSetBuilder(LevelSetGrid& grid, const TriangleMesh& mesh) : grid_(grid), mesh_(mesh) {}
  void build();

 private:
  void layOut();
  void measureBand();
  void spreadNearest();
  template <int Way>
  void sweep();
  void improve(LevelSetGrid::Node& node, std::uint32_t candidate, const Eigen::Vector3i& here);
  void turnInside();
  void fillBricks();
  void fillBrick(const Eigen::Vector3i& cell, std::size_t node);
  bool atSurface(const Eigen::Vector3i& cell) const;

  Eigen::Vector3f place(int x, int y, int z, float spacing) const {
    return grid_.lattice_.min() +
           spacing * Eigen::Vector3f(static_cast<float>(x), static_cast<float>(y), static_cast<float>(z));
  }
  std::size_t dense(int x, int y, int z) const {
    return (static_cast<std::size_t>(z) * static_cast<std::size_t>(denseSize_.y()) + static_cast<std::size_t>(y)) *
               static_cast<std::size_t>(denseSize_.x()) +
           static_cast<std::size_t>(x);
  }

  LevelSetGrid& grid_;
  const TriangleMesh& mesh_;
  Eigen::Vector3i denseSize_ = Eigen::Vector3i::Zero();
  std::vector<float> dense_;  ///< by fine sample: squared distance, later signed distance; kFar off the band
};

}  // namespace zyga::solid
