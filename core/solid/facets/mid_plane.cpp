#include "core/solid/facets/mid_plane.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/linear/linear.h"

namespace zyga::solid {

namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

// Program defaults, no source.
constexpr std::size_t kMirroredPoints = 1500;  ///< that are mirrored
constexpr double kTrusted = 0.8;               ///< share of them that the plane is solvedPlane from
constexpr double kAcross = 0.6;                ///< cosine to the column from which on a plane lies across it
constexpr int kMirrorRounds = 40;

struct MirrorPoints {
  std::vector<Vector3d> all;   ///< middles of triangles
  std::vector<Vector3d> some;  ///< of about as much area each
  Vector3d centre = Vector3d::Zero();
  std::vector<Vector3d> axes;  ///< principal directions, of all surfaces and of each
};

struct MirrorMoments {
  double area = 0;
  Vector3d first = Vector3d::Zero();
  Matrix3d second = Matrix3d::Zero();
  void add(double a, const Vector3d& p) {
    area += a;
    first += a * p;
    second += a * p * p.transpose();
  }
  Matrix3d scatter() const { return second - first * first.transpose() / area; }
};

void addPrincipalAxes(const MirrorMoments& weighted, std::vector<Vector3d>& axes) {
  const Matrix3d vectors = linear::symmetricEigen(weighted.scatter()).vectors;
  for (int k = 0; k < 3; ++k) axes.push_back(vectors.col(k));
}

MirrorPoints mirrorPointsOf(std::span<const FaceSurface* const> surfaces) {
  MirrorPoints spread;
  MirrorMoments whole;
  double total = 0;
  for (const FaceSurface* surface : surfaces)
    for (std::uint32_t t = 0; t < surface->size(); ++t) total += surface->area(t);
  const Vector3d about = surfaces.front()->centroid();
  std::vector<Vector3d> ofEach;
  double passed = 0, next = 0;
  for (const FaceSurface* surface : surfaces) {
    MirrorMoments own;
    for (std::uint32_t t = 0; t < surface->size(); ++t) {
      const Vector3d p = surface->middle(t) - about;
      whole.add(surface->area(t), p);
      own.add(surface->area(t), p);
      spread.all.push_back(surface->middle(t));
      if ((passed += surface->area(t)) < next) continue;
      spread.some.push_back(surface->middle(t));
      next += total / static_cast<double>(kMirroredPoints);
    }
    addPrincipalAxes(own, ofEach);
  }
  addPrincipalAxes(whole, spread.axes);
  spread.axes.insert(spread.axes.end(), ofEach.begin(), ofEach.end());
  spread.centre = about + whole.first / whole.area;
  return spread;
}

/// The plane that brings the points p_i nearest to the points q_i by mirroring. With m the middle of a pair and e its
/// difference |mirrored(p) - q|^2 = |e|^2 - (n.e)^2 + 4 (n.m - d)^2, so that d is the mean of n.m and n the least
/// eigenvector of 4 cov(m) - sum e e'.
MidPlane solvedPlane(const std::vector<std::pair<Vector3d, Vector3d>>& pairs) {
  Vector3d middle = Vector3d::Zero();
  for (const auto& [p, q] : pairs) middle += (p + q) / 2 / static_cast<double>(pairs.size());
  Matrix3d A = Matrix3d::Zero();
  for (const auto& [p, q] : pairs) {
    const Vector3d m = (p + q) / 2 - middle, e = p - q;
    A += 4 * m * m.transpose() - e * e.transpose();
  }
  return {middle, linear::symmetricEigen(A).vectors.col(0), 0};
}

MidPlane settledPlane(MidPlane plane, const MirrorPoints& spread, const PointTree& tree) {
  struct Pair {
    double squared;
    std::pair<Vector3d, Vector3d> points;
  };
  double before = std::numeric_limits<double>::infinity();
  for (int round = 0; round < kMirrorRounds; ++round) {
    std::vector<Pair> pairs;
    for (const Vector3d& p : spread.some) {
      const Vector3d mirrored = plane.mirrored(p);
      const auto q = tree.nearest(mirrored, std::numeric_limits<double>::max(), [](std::uint32_t) { return true; });
      pairs.push_back({(tree[*q] - mirrored).squaredNorm(), {p, tree[*q]}});
    }
    const auto trusted = static_cast<std::ptrdiff_t>(std::ceil(kTrusted * static_cast<double>(pairs.size())));
    std::stable_sort(pairs.begin(), pairs.end(), [](const Pair& a, const Pair& b) { return a.squared < b.squared; });
    double squares = 0;
    std::vector<std::pair<Vector3d, Vector3d>> kept;
    for (auto pair = pairs.begin(); pair != pairs.begin() + trusted; ++pair) {
      squares += pair->squared;
      kept.push_back(pair->points);
    }
    plane.residual = std::sqrt(squares / static_cast<double>(trusted));
    if (!(plane.residual < before * (1 - 1e-4))) break;
    before = plane.residual;
    const double residual = plane.residual;
    plane = solvedPlane(kept);
    plane.residual = residual;
  }
  return plane;
}

}  // namespace

MidPlane findMidPlane(std::span<const FaceSurface* const> surfaces, const Vector3d& along) {
  const MirrorPoints spread = mirrorPointsOf(surfaces);
  const PointTree tree(spread.all);
  MidPlane best;
  best.residual = std::numeric_limits<double>::infinity();
  for (const Vector3d& axis : spread.axes) {
    if (std::abs(axis.dot(along)) > kAcross) continue;
    const MidPlane plane = settledPlane({spread.centre, axis, 0}, spread, tree);
    if (std::abs(plane.normal.dot(along)) <= kAcross && plane.residual < best.residual) best = plane;
  }
  if (std::isfinite(best.residual)) return best;
  // No principal plane runs along the column: the one through it and the longest axis across it.
  const Vector3d across = along.unitOrthogonal();
  return settledPlane({spread.centre, across, 0}, spread, tree);
}

}  // namespace zyga::solid
