#include "core/study/mass/convex_hull.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <set>
#include <utility>

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// Grows the hull by one point after the other: the faces that see the new point give way to a fan from their rim.
class Growing {
 public:
  explicit Growing(const std::vector<Vector3d>& points) : points_(points) {
    Vector3d least = points.front(), most = least;
    for (const auto& p : points) {
      least = least.cwiseMin(p);
      most = most.cwiseMax(p);
    }
    tolerance_ = 1e-9 * (most - least).norm();
  }

  std::vector<std::array<std::size_t, 3>> faces() {
    if (!start()) return {};
    for (std::size_t i = 0; i < points_.size(); ++i) add(i);
    std::vector<std::array<std::size_t, 3>> out;
    for (const auto& face : faces_) out.push_back(face.corners);
    return out;
  }

 private:
  struct Face {
    std::array<std::size_t, 3> corners;
    Vector3d normal;  // unit, outward
  };

  Face face(std::size_t a, std::size_t b, std::size_t c) const {
    return {{a, b, c}, (points_[b] - points_[a]).cross(points_[c] - points_[a]).normalized()};
  }
  double over(const Face& face, std::size_t i) const { return face.normal.dot(points_[i] - points_[face.corners[0]]); }

  template <class Distance>
  std::size_t farthest(Distance distance) const {
    std::size_t best = 0;
    for (std::size_t i = 1; i < points_.size(); ++i) {
      if (distance(points_[i]) > distance(points_[best])) best = i;
    }
    return best;
  }

  /// A tetrahedron of points far from each other; false when all points lie in one plane.
  bool start() {
    const Vector3d& a = points_.front();
    const std::size_t b = farthest([&](const Vector3d& p) { return (p - a).norm(); });
    if ((points_[b] - a).norm() <= tolerance_) return false;
    const Vector3d along = (points_[b] - a).normalized();
    const std::size_t c = farthest([&](const Vector3d& p) { return (p - a).cross(along).norm(); });
    if ((points_[c] - a).cross(along).norm() <= tolerance_) return false;
    Face base = face(0, b, c);
    const std::size_t d = farthest([&](const Vector3d& p) { return std::abs(base.normal.dot(p - a)); });
    if (std::abs(over(base, d)) <= tolerance_) return false;
    if (over(base, d) > 0) base = face(0, c, b);
    const auto& corners = base.corners;
    faces_ = {base};
    for (std::size_t i = 0; i < 3; ++i) faces_.push_back(face(corners[(i + 1) % 3], corners[i], d));
    return true;
  }

  void add(std::size_t i) {
    std::set<std::pair<std::size_t, std::size_t>> edges;  // of the faces that see it
    const auto kept =
        std::partition(faces_.begin(), faces_.end(), [&](const Face& f) { return over(f, i) <= tolerance_; });
    for (auto face = kept; face != faces_.end(); ++face) {
      for (std::size_t k = 0; k < 3; ++k) edges.emplace(face->corners[k], face->corners[(k + 1) % 3]);
    }
    faces_.erase(kept, faces_.end());
    for (const auto& [from, to] : edges) {
      if (!edges.contains({to, from})) faces_.push_back(face(from, to, i));
    }
  }

  const std::vector<Vector3d>& points_;
  double tolerance_ = 0;
  std::vector<Face> faces_;
};

double turn(const Vector2d& a, const Vector2d& b, const Vector2d& c) {
  return (b - a).x() * (c - a).y() - (b - a).y() * (c - a).x();
}

}  // namespace

ConvexHull convexHull(const std::vector<Vector3d>& points) {
  ConvexHull hull;
  if (points.empty()) return hull;
  Vector3d mean = Vector3d::Zero();
  for (const auto& p : points) mean += p / static_cast<double>(points.size());
  hull.centroid = mean;
  hull.faces = Growing(points).faces();
  Vector3d moment = Vector3d::Zero();
  for (const auto& [a, b, c] : hull.faces) {
    const Vector3d p = points[a] - mean, q = points[b] - mean, r = points[c] - mean;
    const double volume = p.cross(q).dot(r) / 6;
    hull.volume += volume;
    moment += volume * (p + q + r) / 4;
  }
  if (hull.volume > 0) hull.centroid += moment / hull.volume;
  return hull;
}

std::vector<Vector2d> convexPolygon(std::vector<Vector2d> points) {
  // Lower and upper chain in the order of x (Andrew 1979, Inf. Process. Lett. 9:216).
  std::sort(points.begin(), points.end(),
            [](const Vector2d& a, const Vector2d& b) { return std::pair(a.x(), a.y()) < std::pair(b.x(), b.y()); });
  points.erase(std::unique(points.begin(), points.end()), points.end());
  if (points.size() < 3) return points;
  std::vector<Vector2d> hull;
  for (int side = 0; side < 2; ++side) {
    const std::size_t first = hull.size();
    for (const auto& p : points) {
      while (hull.size() >= first + 2 && turn(hull[hull.size() - 2], hull.back(), p) <= 0) hull.pop_back();
      hull.push_back(p);
    }
    hull.pop_back();
    std::reverse(points.begin(), points.end());
  }
  return hull;
}

Vector2d middleOf(const std::vector<Vector2d>& corners) {
  if (corners.empty()) return Vector2d::Zero();
  Vector2d mean = Vector2d::Zero(), moment = Vector2d::Zero();
  for (const auto& p : corners) mean += p / static_cast<double>(corners.size());
  double area = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Vector2d &a = corners[i], &b = corners[(i + 1) % corners.size()];
    const double part = turn(mean, a, b);
    area += part;
    moment += part * (a + b - 2 * mean) / 3;
  }
  return area > 0 ? Vector2d(mean + moment / area) : mean;
}

}  // namespace zyga::study
