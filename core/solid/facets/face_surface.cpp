#include "core/solid/facets/face_surface.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

namespace zyga::solid {

namespace {

using Eigen::Vector3d;

// Program defaults, no source. Shares of the bone's size.
constexpr double kRoughness = 0.04;      ///< radius over which normals are smoothed
constexpr double kTouching = 0.01;       ///< so near, what is met may lie to the side
constexpr double kPointSpacing = 0.015;  ///< of the points spread over a surface
constexpr double kThinSpacing = 0.05;    ///< of those that far reaches ask
constexpr double kLongSide = 0.5;        ///< of a triangle's longest side: counts as much as the root of its area
constexpr double kMostParts = 64;        ///< along a triangle's side
constexpr double kRidge = 0.6427876;     ///< cosine of 50 degrees between two triangles' normals
constexpr double kLooksBack = -0.5;      ///< normals more than 120 degrees apart
constexpr double kAlong = 0.6;           ///< cosine to the normal within which what is met counts as over against

struct FaceCorners {
  Vector3d a, b, c;
};

FaceCorners faceCornersAt(const TriangleMesh& mesh, std::size_t t) {
  const auto& triangle = mesh.triangles[t];
  return {mesh.positions[triangle[0]].cast<double>(), mesh.positions[triangle[1]].cast<double>(),
          mesh.positions[triangle[2]].cast<double>()};
}

Vector3d doubledAreaOf(const FaceCorners& t) { return (t.b - t.a).cross(t.c - t.a); }

/// One number for all corners at the very same place: those of an STL are repeated by every triangle.
std::vector<std::uint32_t> weldedCorners(const TriangleMesh& mesh) {
  const auto less = [&](std::uint32_t i, std::uint32_t j) {
    const auto &p = mesh.positions[i], &q = mesh.positions[j];
    return std::lexicographical_compare(p.data(), p.data() + 3, q.data(), q.data() + 3);
  };
  std::vector<std::uint32_t> order(mesh.positions.size()), out(order.size());
  std::iota(order.begin(), order.end(), 0u);
  std::stable_sort(order.begin(), order.end(), less);
  for (std::size_t i = 0; i < order.size(); ++i) {
    const bool same = i > 0 && mesh.positions[order[i]] == mesh.positions[order[i - 1]];
    out[order[i]] = same ? out[order[i - 1]] : order[i];
  }
  return out;
}

}  // namespace

PointTree::PointTree(std::vector<Vector3d> points) : points_(std::move(points)), order_(points_.size()) {
  std::iota(order_.begin(), order_.end(), 0u);
  sort(0, order_.size(), 0);
}

void PointTree::sort(std::size_t begin, std::size_t end, int axis) {
  if (end - begin < 2) return;
  const auto at = [&](std::size_t i) { return order_.begin() + static_cast<std::ptrdiff_t>(i); };
  const std::size_t middle = begin + (end - begin) / 2;
  std::nth_element(at(begin), at(middle), at(end), [&](std::uint32_t i, std::uint32_t j) {
    return points_[i][axis] != points_[j][axis] ? points_[i][axis] < points_[j][axis] : i < j;
  });
  sort(begin, middle, (axis + 1) % 3);
  sort(middle + 1, end, (axis + 1) % 3);
}

FaceSurface::FaceSurface(const TriangleMesh& mesh, double boneSize) {
  measure(mesh);
  smoothNormals(kRoughness * boneSize);
  findNeighbours(mesh);
  close_ = spread(mesh, kPointSpacing * boneSize);
  thin_ = spread(mesh, kThinSpacing * boneSize);
  touching_ = kTouching * boneSize;
}

void FaceSurface::measure(const TriangleMesh& mesh) {
  double total = 0;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const FaceCorners corners = faceCornersAt(mesh, t);
    const Vector3d n = doubledAreaOf(corners);
    const double twice = n.norm();
    middles_.push_back((corners.a + corners.b + corners.c) / 3);
    normals_.push_back(twice > 0 ? Vector3d(n / twice) : Vector3d::Zero());
    areas_.push_back(twice / 2);
    centroid_ += areas_.back() * middles_.back();
    total += areas_.back();
  }
  if (total > 0) centroid_ /= total;
}

/// Area-weighted mean of what lies near and faces the same side, so that the two sides of thin bone stay apart.
void FaceSurface::smoothNormals(double radius) {
  const PointTree tree(middles_);
  std::vector<Vector3d> smooth(normals_.size());
  for (std::size_t t = 0; t < normals_.size(); ++t) {
    Vector3d sum = areas_[t] * normals_[t];
    tree.within(middles_[t], radius, [&](std::uint32_t other) {
      if (other != t && normals_[other].dot(normals_[t]) > 0) sum += areas_[other] * normals_[other];
    });
    const double length = sum.norm();
    smooth[t] = length > 0 ? Vector3d(sum / length) : normals_[t];
  }
  normals_ = std::move(smooth);
}

void FaceSurface::findNeighbours(const TriangleMesh& mesh) {
  struct Side {
    std::uint32_t a, b, triangle;
  };
  const auto ids = weldedCorners(mesh);
  std::vector<Side> sides;
  for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t)
    for (std::size_t k = 0; k < 3; ++k) {
      const std::uint32_t a = ids[mesh.triangles[t][k]], b = ids[mesh.triangles[t][(k + 1) % 3]];
      if (a != b) sides.push_back({std::min(a, b), std::max(a, b), t});
    }
  std::sort(sides.begin(), sides.end(), [](const Side& s, const Side& t) {
    return std::tie(s.a, s.b, s.triangle) < std::tie(t.a, t.b, t.triangle);
  });
  neighbours_.resize(mesh.triangles.size());
  for (std::size_t i = 1; i < sides.size(); ++i) {
    const Side &s = sides[i - 1], &t = sides[i];
    if (s.a != t.a || s.b != t.b || normals_[s.triangle].dot(normals_[t.triangle]) < kRidge) continue;
    neighbours_[s.triangle].push_back(t.triangle);
    neighbours_[t.triangle].push_back(s.triangle);
  }
}

/// The middles of the n^2 small triangles that each triangle falls into: as many as its area asks for, and more where
/// it is long and thin, so that no gaps are left along it.
FaceSurface::Points FaceSurface::spread(const TriangleMesh& mesh, double spacing) const {
  std::vector<Vector3d> points;
  std::vector<std::uint32_t> triangles;
  for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t) {
    if (!(areas_[t] > 0)) continue;
    const FaceCorners corners = faceCornersAt(mesh, t);
    const double longest =
        std::max({(corners.b - corners.a).norm(), (corners.c - corners.b).norm(), (corners.a - corners.c).norm()});
    const double n =
        std::clamp(std::ceil(std::max(std::sqrt(areas_[t]), kLongSide * longest) / spacing), 1.0, kMostParts);
    const Vector3d u = (corners.b - corners.a) / n, v = (corners.c - corners.a) / n;
    for (double i = 0; i < n; ++i)
      for (double j = 0; i + j < n; ++j) {
        points.push_back(corners.a + (i + 1.0 / 3) * u + (j + 1.0 / 3) * v);
        if (i + j + 1 < n) points.push_back(corners.a + (i + 2.0 / 3) * u + (j + 2.0 / 3) * v);
        triangles.resize(points.size(), t);
      }
  }
  return {std::move(triangles), PointTree(std::move(points))};
}

double FaceSurface::areaOf(std::span<const std::uint32_t> triangles) const {
  double sum = 0;
  for (const std::uint32_t t : triangles) sum += areas_[t];
  return sum;
}

Vector3d FaceSurface::middleOf(std::span<const std::uint32_t> triangles) const {
  Vector3d sum = Vector3d::Zero();
  for (const std::uint32_t t : triangles) sum += areas_[t] * middles_[t];
  const double area = areaOf(triangles);
  return area > 0 ? Vector3d(sum / area) : sum;
}

Vector3d FaceSurface::meanNormalOf(std::span<const std::uint32_t> triangles) const {
  Vector3d sum = Vector3d::Zero();
  for (const std::uint32_t t : triangles) sum += areas_[t] * normals_[t];
  const double area = areaOf(triangles);
  return area > 0 ? Vector3d(sum / area) : sum;
}

std::vector<std::vector<std::uint32_t>> FaceSurface::connected(std::span<const std::uint32_t> triangles) const {
  enum State : char { Elsewhere, Waiting, Taken };
  std::vector<char> state(size(), Elsewhere);
  for (const std::uint32_t t : triangles) state[t] = Waiting;
  std::vector<std::vector<std::uint32_t>> parts;
  for (const std::uint32_t start : triangles) {
    if (state[start] != Waiting) continue;
    std::vector<std::uint32_t> part{start};
    state[start] = Taken;
    for (std::size_t i = 0; i < part.size(); ++i)
      for (const std::uint32_t next : neighbours_[part[i]]) {
        if (state[next] != Waiting) continue;
        state[next] = Taken;
        part.push_back(next);
      }
    std::sort(part.begin(), part.end());
    parts.push_back(std::move(part));
  }
  return parts;
}

FaceSurface::Opposed FaceSurface::opposedTo(const FaceSurface& other, double reach, double depth) const {
  return opposedTo(other, *other.close_, reach, depth);
}

FaceSurface::Opposed FaceSurface::farOpposedTo(const FaceSurface& other, double reach) const {
  return opposedTo(other, *other.thin_, reach, reach);
}

FaceSurface::Opposed FaceSurface::opposedTo(const FaceSurface& other, const Points& points, double reach,
                                            double depth) const {
  Opposed out{std::vector<double>(size(), std::numeric_limits<double>::infinity()), std::vector<double>(size(), 0.0)};
  for (std::uint32_t t = 0; t < size(); ++t) {
    const Vector3d &from = middles_[t], &n = normals_[t];
    if (!(areas_[t] > 0)) continue;
    const auto lies = [&](std::uint32_t i) {
      if (other.normals_[points.triangles[i]].dot(n) > kLooksBack) return false;
      const Vector3d way = points.tree[i] - from;
      const double along = way.dot(n), length = way.norm();
      return along >= -depth && (std::abs(along) >= kAlong * length || length <= touching_);
    };
    if (const auto met = points.tree.nearest(from, std::max(reach, depth), lies)) {
      out.gap[t] = (points.tree[*met] - from).dot(n);
      out.square[t] = -other.normals_[points.triangles[*met]].dot(n);
    }
  }
  return out;
}

double surfaceSize(const TriangleMesh& mesh) {
  if (mesh.empty()) return 0;
  const Vector3d about = faceCornersAt(mesh, 0).a;  // far from the origin squares would cancel
  double total = 0, squares = 0;
  Vector3d first = Vector3d::Zero();
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const FaceCorners corners = faceCornersAt(mesh, t);
    const double area = doubledAreaOf(corners).norm() / 2;
    const Vector3d middle = (corners.a + corners.b + corners.c) / 3 - about;
    total += area;
    first += area * middle;
    squares += area * middle.squaredNorm();
  }
  if (!(total > 0)) return 0;
  return std::sqrt(std::max(0.0, squares / total - (first / total).squaredNorm()));
}

}  // namespace zyga::solid
