#pragma once

#include <cstdint>
#include <vector>

#include "core/solid/levelset/level_set_grid.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// Fills a LevelSetGrid.
///
/// 1. In a band around the surface distances are exact: each triangle measures the samples in its own box widened by
/// the
///    band, and every sample keeps the least.
/// 2. Beyond, on the coarse lattice, each sample asks its neighbours for the triangle nearest to them and measures
/// that:
///    one sweep over the lattice in the order of memory from the 13 neighbours before, one against it from the 13 after
///    (as raster scans hand on the nearest pixel: Danielsson 1980, Comput. Graph. Image Process. 14:227). A triangle
///    that has been handed on need not be the very nearest, but its distance is that of a true point of the surface:
///    the distance kept is never too small.
/// 3. The side is the winding number: along lines in the direction of x, +1 at each triangle that the line enters the
///    bone through and -1 where it leaves; inside where the sum is positive. That is apart from all distances, because
///    next to thin bone the nearest triangle does not tell the side.
/// 4. Cells with a sample in the band get a brick of fine samples; those of its samples that are off the band are
///    measured from the triangles that the cell's corners know.
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
  std::vector<float> dense_;  ///< by fine sample: squared distance, later signed distance; kUnmeasured off the band
};

/// A line in the direction of x that runs through a triangle.
struct Crossing {
  std::uint32_t line = 0;
  float x = 0;
  int entering = 1;  ///< 1 into the bone, -1 out of it
};

/// Lines in the direction of x, one by one along y and then z.
struct LineGrid {
  float y = 0, z = 0, spacing = 1;
  int countY = 0, countZ = 0;
};

/// Where the lines run through a closed mesh, by line and then x. The sum of `entering` along a line is 0, and between
/// its ends the winding number: positive inside. Whether a line meets a triangle is decided edge by edge with one
/// result for both triangles of an edge, so that no line slips through between two of them, however thin they are.
std::vector<Crossing> crossings(const TriangleMesh& mesh, const LineGrid& lines);

}  // namespace zyga::solid
