#include "core/solid/sdf/mesher.h"

#include <algorithm>
#include <cmath>

#include "core/solid/sdf/dual_surface.h"
#include "core/solid/sdf/node.h"

namespace zyga::solid {

namespace {

/// Calls `work(node, first, last)` for each run of vertices that lie in the same block.
template <class Work>
void forEachBlock(const SparseSdfGrid& grid, const DualSurface& surface, Work work) {
  for (std::size_t first = 0; first < surface.vertices.size();) {
    std::size_t last = first;
    while (last < surface.vertices.size() && surface.block[last] == surface.block[first]) ++last;
    work(*grid.blocks()[surface.block[first]]->local, first, last);
    first = last;
  }
}

void project(const SparseSdfGrid& grid, DualSurface& surface) {
  forEachBlock(grid, surface, [&](const FieldNode& node, std::size_t first, std::size_t last) {
    const auto begin = surface.vertices.begin();
    std::vector<Point> points(begin + static_cast<std::ptrdiff_t>(first), begin + static_cast<std::ptrdiff_t>(last));
    projectOnSurface(node, points, 0.1 * grid.voxel(), 0.4 * grid.voxel());
    std::copy(points.begin(), points.end(), begin + static_cast<std::ptrdiff_t>(first));
  });
}

/// Evens out the spacing of the vertices: each moves half-way to the mean of its neighbours.
void relax(DualSurface& surface) {
  std::vector<Point> sum(surface.vertices.size(), Point::Zero());
  std::vector<int> count(surface.vertices.size(), 0);
  for (const auto& face : surface.faces)
    for (std::size_t i = 0; i < 4; ++i)
      for (const std::size_t j : {(i + 1) % 4, (i + 3) % 4})
        sum[face[i]] += surface.vertices[face[j]], ++count[face[i]];
  for (std::size_t i = 0; i < sum.size(); ++i)
    if (count[i] > 0) surface.vertices[i] = 0.5 * (surface.vertices[i] + sum[i] / count[i]);
}

double cosineAcross(const Point& a, const Point& b, const Point& c, const Point& d) {
  const Point n = (b - a).cross(c - a), m = (c - a).cross(d - a);
  return n.dot(m) / std::max(n.norm() * m.norm(), 1e-30);
}

/// Each face is split along the diagonal that folds it less.
std::vector<std::array<std::uint32_t, 3>> split(const DualSurface& surface) {
  std::vector<std::array<std::uint32_t, 3>> triangles;
  for (const auto& f : surface.faces) {
    const Point &a = surface.vertices[f[0]], &b = surface.vertices[f[1]], &c = surface.vertices[f[2]],
                &d = surface.vertices[f[3]];
    const double first = cosineAcross(a, b, c, d), second = cosineAcross(b, c, d, a);
    const bool alike = std::abs(first - second) < 1e-3;
    if (alike ? (a - c).squaredNorm() <= (b - d).squaredNorm() : first > second) {
      triangles.push_back({f[0], f[1], f[2]});
      triangles.push_back({f[0], f[2], f[3]});
    } else {
      triangles.push_back({f[1], f[2], f[3]});
      triangles.push_back({f[1], f[3], f[0]});
    }
  }
  return triangles;
}

/// Keeps the connected surface with the most triangles: specks and closed hollows go.
void keepLargest(std::vector<std::array<std::uint32_t, 3>>& triangles, std::size_t vertices) {
  DisjointSets surfaces(vertices);
  surfaces.joinCorners(triangles);
  std::vector<std::size_t> size(vertices, 0);
  for (const auto& t : triangles) ++size[surfaces.root(t[0])];
  if (size.empty()) return;
  const auto largest = static_cast<std::uint32_t>(std::max_element(size.begin(), size.end()) - size.begin());
  std::erase_if(triangles, [&](const auto& t) { return surfaces.root(t[0]) != largest; });
}

TriangleMesh compacted(const std::vector<Point>& vertices, std::vector<std::array<std::uint32_t, 3>> triangles) {
  TriangleMesh all;
  all.positions.reserve(vertices.size());
  for (const Point& vertex : vertices) all.positions.push_back(vertex.cast<float>());
  return withTriangles(all, std::move(triangles));
}

DualSurface settledSurface(const Shape& shape, double voxel) {
  if (shape.empty() || shape.bounds().isEmpty()) return {};
  SparseSdfGrid grid(shape, voxel);
  DualSurface surface = dualSurface(grid);
  project(grid, surface);
  relax(surface);
  project(grid, surface);
  return surface;
}

}  // namespace

TriangleMesh meshSurface(const Shape& shape, double voxel) {
  const DualSurface surface = settledSurface(shape, voxel);
  std::vector<std::array<std::uint32_t, 3>> triangles = split(surface);
  keepLargest(triangles, surface.vertices.size());
  return compacted(surface.vertices, std::move(triangles));
}

TriangleMesh meshAllSurfaces(const Shape& shape, double voxel) {
  const DualSurface surface = settledSurface(shape, voxel);
  return compacted(surface.vertices, split(surface));
}

double voxelFor(const Shape& shape, std::size_t triangles) {
  const Box box = shape.bounds();
  if (box.isEmpty()) return 1e-3;
  // The number of faces grows with the inverse square of the voxel; a coarse count gives the constant.
  const double coarse = std::max(box.diagonal().norm() / 90, 1e-4);
  SparseSdfGrid grid(shape, coarse);
  const double found = 2.0 * static_cast<double>(std::max<std::size_t>(dualSurface(grid).faces.size(), 8));
  return std::max(coarse * std::sqrt(found / static_cast<double>(std::max<std::size_t>(triangles, 8))), 1e-4);
}

}  // namespace zyga::solid
