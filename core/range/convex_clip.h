#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <vector>

namespace zyga::range {

/// Cuts a convex counter-clockwise polygon by half-planes, one edge of another one after the other (Sutherland &
/// Hodgman 1974, Comm. ACM 17:32). The polygon is a ring, so that a cut touches only the corners it removes, and the
/// corner to look at first moves round with the edges: the whole work grows with the sum of the corners, not with
/// their product. Keeps its memory between uses.
class ConvexClip {
 public:
  using Point = Eigen::Vector2d;

  /// Intersects `subject` with `window`, both convex and counter-clockwise. Lengths below `tolerance` count as zero.
  /// False when nothing with an inside is left.
  bool intersect(const std::vector<Point>& subject, const std::vector<Point>& window, double tolerance);

  /// Calls visit(point) for every corner of the intersection, counter-clockwise. Only after intersect() was true.
  template <class Visit>
  void visitCorners(Visit&& visit) const {
    std::uint32_t i = current_;
    do {
      visit(nodes_[i].point);
      i = nodes_[i].next;
    } while (i != current_);
  }

 private:
  struct Node {
    Point point;
    std::uint32_t next, previous;
  };
  /// The half-plane left of an edge.
  struct HalfPlane {
    Point start, direction;
    double depth(const Point& p) const {
      return direction.x() * (p.y() - start.y()) - direction.y() * (p.x() - start.x());
    }
  };

  void load(const std::vector<Point>& subject);
  void goToOutermost(const HalfPlane& plane);
  bool cut(const HalfPlane& plane, double tolerance);
  std::uint32_t crossing(const HalfPlane& plane, std::uint32_t outside, std::uint32_t inside, double tolerance);
  double depthAt(const HalfPlane& plane, std::uint32_t i) const { return plane.depth(nodes_[i].point); }

  std::vector<Node> nodes_;
  std::uint32_t current_ = 0;
};

}  // namespace zyga::range
