#pragma once

#include <optional>
#include <span>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// Points, sorted so that the nearest to a place is found soon (k-d tree: Bentley 1975, Comm. ACM 18:509).
class PointTree {
 public:
  explicit PointTree(std::vector<Eigen::Vector3d> points);

  /// The nearest point within `reach` that `wanted` says yes to, by its place in the list given; none when there is
  /// none.
  template <class Wanted>
  std::optional<std::uint32_t> nearest(const Eigen::Vector3d& from, double reach, const Wanted& wanted) const {
    Best best{reach * reach, std::nullopt};
    search(0, order_.size(), 0, from, wanted, best);
    return best.point;
  }
  /// Calls visit(place in the list) for every point within `reach`.
  template <class Visit>
  void within(const Eigen::Vector3d& from, double reach, const Visit& visit) const {
    Best all{reach * reach, std::nullopt};
    search(
        0, order_.size(), 0, from,
        [&](std::uint32_t i) {
          visit(i);
          return false;
        },
        all);
  }
  const Eigen::Vector3d& operator[](std::uint32_t i) const { return points_[i]; }

 private:
  struct Best {
    double squared;
    std::optional<std::uint32_t> point;
  };

  void sort(std::size_t begin, std::size_t end, int axis);

  template <class Wanted>
  void search(std::size_t begin, std::size_t end, int axis, const Eigen::Vector3d& from, const Wanted& wanted,
              Best& best) const {
    if (begin >= end) return;
    const std::size_t middle = begin + (end - begin) / 2;
    const std::uint32_t i = order_[middle];
    const double squared = (points_[i] - from).squaredNorm();
    if (squared < best.squared && wanted(i)) best = {squared, i};
    const double off = from[axis] - points_[i][axis];
    const int next = (axis + 1) % 3;
    if (off < 0) {
      search(begin, middle, next, from, wanted, best);
      if (off * off < best.squared) search(middle + 1, end, next, from, wanted, best);
    } else {
      search(middle + 1, end, next, from, wanted, best);
      if (off * off < best.squared) search(begin, middle, next, from, wanted, best);
    }
  }

  std::vector<Eigen::Vector3d> points_;
  std::vector<std::uint32_t> order_;
};

/// A mesh as what looks for joints on it sees it: its triangles with middles, areas and normals, which of them meet at
/// an edge without a ridge between them, and points spread evenly over it. Corners at the very same place are one.
class FaceSurface {
 public:
  /// `boneSize` in the mesh's unit: roughness finer than a share of it is smoothed from the normals.
  FaceSurface(const TriangleMesh& mesh, double boneSize);

  std::size_t size() const { return middles_.size(); }
  const Eigen::Vector3d& middle(std::uint32_t t) const { return middles_[t]; }
  const Eigen::Vector3d& normal(std::uint32_t t) const { return normals_[t]; }  ///< unit, smoothed; zero of a sliver
  double area(std::uint32_t t) const { return areas_[t]; }
  double areaOf(std::span<const std::uint32_t> triangles) const;
  Eigen::Vector3d middleOf(std::span<const std::uint32_t> triangles) const;      ///< of the area
  Eigen::Vector3d meanNormalOf(std::span<const std::uint32_t> triangles) const;  ///< shorter than 1 as it is less flat
  const Eigen::Vector3d& centroid() const { return centroid_; }                  ///< of the whole surface

  /// Connected parts of some triangles, over edges that are no ridges.
  std::vector<std::vector<std::uint32_t>> connected(std::span<const std::uint32_t> triangles) const;

  /// Per triangle the distance (negative: inside) to the part of `other` that looks back at it, along its normal;
  /// infinite where there is none from `reach` outside to `depth` inside; and how squarely that looks back, 0 to 1.
  struct Opposed {
    std::vector<double> gap;
    std::vector<double> square;
  };
  Opposed opposedTo(const FaceSurface& other, double reach, double depth) const;
  /// The same from `reach` outside to as deep inside, for far reaches: asks points that are spread more thinly.
  Opposed farOpposedTo(const FaceSurface& other, double reach) const;

 private:
  void measure(const TriangleMesh& mesh);
  void smoothNormals(double radius);
  void findNeighbours(const TriangleMesh& mesh);
  /// Points spread over a surface, and the triangle that each lies on.
  struct Points {
    std::vector<std::uint32_t> triangles;
    PointTree tree;
  };
  Points spread(const TriangleMesh& mesh, double spacing) const;
  Opposed opposedTo(const FaceSurface& other, const Points& points, double reach, double depth) const;

  std::vector<Eigen::Vector3d> middles_, normals_;
  std::vector<double> areas_;
  std::vector<std::vector<std::uint32_t>> neighbours_;
  std::optional<Points> close_, thin_;
  Eigen::Vector3d centroid_ = Eigen::Vector3d::Zero();
  double touching_ = 0;
};

/// How far a bone's surface lies from its middle, root mean square over the area: the size that shares are taken of. It
/// does not hang on holes, on a long thin process, nor on how the bone lies. Zero of a mesh without area.
double surfaceSize(const TriangleMesh& mesh);

}  // namespace zyga::solid
