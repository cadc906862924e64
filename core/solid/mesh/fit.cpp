#include "core/solid/mesh/fit.h"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <unordered_map>

#include "core/linear/linear.h"
#include "core/solid/mesh/weighted_median.h"

namespace zyga::solid {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr int kTrimRounds = 8;  ///< of trimming
constexpr double kTrim = 3;     ///< robust standard deviations

double areaOf(const Eigen::Matrix3d& t) { return 0.5 * (t.col(1) - t.col(0)).cross(t.col(2) - t.col(0)).norm(); }
Vector3d middleOf(const Eigen::Matrix3d& t) { return t.rowwise().mean(); }

/// What the rounds of a trimmed fit work on: the triangles' middles and areas, and which still count.
struct Sample {
  std::vector<Vector3d> points;
  std::vector<double> weights;
  std::vector<bool> kept;

  explicit Sample(const BrushedPatch& patch) : kept(patch.triangles.size(), true) {
    for (const auto& t : patch.triangles) {
      points.push_back(middleOf(t));
      weights.push_back(areaOf(t));
    }
  }
  double total(bool all) const {
    double sum = 0;
    for (std::size_t i = 0; i < points.size(); ++i)
      if (all || kept[i]) sum += weights[i];
    return sum;
  }
};

/// Keeps what lies within the trim of the spread of all distances; returns whether anything changed.
bool trim(Sample& sample, const std::vector<double>& distances) {
  std::vector<std::pair<double, double>> sizes;
  for (std::size_t i = 0; i < distances.size(); ++i) sizes.emplace_back(std::abs(distances[i]), sample.weights[i]);
  // Rounding in single precision is not worth trimming.
  const double limit = std::max(kTrim * 1.4826 * weightedMedian(sizes), 1e-4 * std::sqrt(sample.total(true)));
  bool changed = false;
  for (std::size_t i = 0; i < distances.size(); ++i) {
    const bool keep = std::abs(distances[i]) <= limit;
    changed = changed || keep != sample.kept[i];
    sample.kept[i] = keep;
  }
  return changed;
}

FitQuality qualityOf(const Sample& sample, const std::vector<double>& distances) {
  FitQuality quality;
  const double kept = sample.total(false);
  double squares = 0;
  for (std::size_t i = 0; i < distances.size(); ++i) {
    if (!sample.kept[i]) continue;
    squares += sample.weights[i] * distances[i] * distances[i];
    quality.max = std::max(quality.max, std::abs(distances[i]));
  }
  quality.rms = std::sqrt(squares / kept);
  quality.kept = kept / sample.total(true);
  return quality;
}

/// Fits, trims and fits again until nothing more is trimmed.
template <class Fit, class Distances>
auto trimmedFit(Sample& sample, Fit fit, Distances distances) {
  auto found = fit(sample);
  for (int round = 0; round < kTrimRounds && trim(sample, distances(found)); ++round) found = fit(sample);
  found.quality = qualityOf(sample, distances(found));
  return found;
}

PlaneFit planeThrough(const Sample& sample) {
  const double total = sample.total(false);
  PlaneFit fit;
  for (std::size_t i = 0; i < sample.points.size(); ++i)
    if (sample.kept[i]) fit.centre += sample.weights[i] / total * sample.points[i];
  Eigen::Matrix3d scatter = Eigen::Matrix3d::Zero();
  for (std::size_t i = 0; i < sample.points.size(); ++i) {
    if (!sample.kept[i]) continue;
    const Vector3d d = sample.points[i] - fit.centre;
    scatter += sample.weights[i] / total * d * d.transpose();
  }
  fit.normal = linear::symmetricEigen(scatter).vectors.col(0);
  return fit;
}

/// |p|^2 = 2 c.p + (r^2 - |c|^2) is linear in c and the last term (Coope 1993, J. Optim. Theory Appl. 76:381).
SphereFit algebraicSphere(const Sample& sample, const Vector3d& about) {
  Eigen::Matrix4d A = Eigen::Matrix4d::Zero();
  Eigen::Vector4d b = Eigen::Vector4d::Zero();
  for (std::size_t i = 0; i < sample.points.size(); ++i) {
    if (!sample.kept[i]) continue;
    const Vector3d p = sample.points[i] - about;
    const Eigen::Vector4d row(2 * p.x(), 2 * p.y(), 2 * p.z(), 1);
    A += sample.weights[i] * row * row.transpose();
    b += sample.weights[i] * p.squaredNorm() * row;
  }
  const auto x = linear::solve(A, b);
  if (!x) throw reason::Failure(fault::kFlatPatch);
  SphereFit fit;
  fit.centre = about + x->head<3>();
  fit.radius = std::sqrt(std::max(0.0, (*x)(3) + x->head<3>().squaredNorm()));
  return fit;
}

/// One Gauss-Newton step on the distances |p - c| - r. Returns how far it went; leaves the normal matrix for the error.
double refine(SphereFit& fit, const Sample& sample, Eigen::Matrix4d& A) {
  A.setZero();
  Eigen::Vector4d b = Eigen::Vector4d::Zero();
  for (std::size_t i = 0; i < sample.points.size(); ++i) {
    if (!sample.kept[i]) continue;
    const Vector3d d = sample.points[i] - fit.centre;
    const double distance = d.norm();
    if (!(distance > 0)) continue;
    Eigen::Vector4d row;
    row << -d / distance, -1;
    A += sample.weights[i] * row * row.transpose();
    b -= sample.weights[i] * (distance - fit.radius) * row;
  }
  const Eigen::Vector4d step = linear::solveSymmetric(A, b);
  if (!step.allFinite()) return 0;
  fit.centre += step.head<3>();
  fit.radius += step(3);
  return step.norm();
}

SphereFit sphereThrough(const Sample& sample) {
  SphereFit fit = algebraicSphere(sample, planeThrough(sample).centre);
  Eigen::Matrix4d A;
  for (int i = 0; i < 30 && refine(fit, sample, A) > 1e-12 * fit.radius; ++i) {
  }
  return fit;
}

std::vector<double> distancesTo(const PlaneFit& plane, const Sample& sample) {
  std::vector<double> out;
  for (const Vector3d& p : sample.points) out.push_back(plane.normal.dot(p - plane.centre));
  return out;
}

std::vector<double> distancesTo(const SphereFit& sphere, const Sample& sample) {
  std::vector<double> out;
  for (const Vector3d& p : sample.points) out.push_back((p - sphere.centre).norm() - sphere.radius);
  return out;
}

/// Standard error of the centre: residual spread over the root of the worst direction's information. Triangles share
/// their corners: of n middles about n/2 points are independent, and a middle scatters less than a corner by the root
/// of three, which makes six times the variance that n free middles would have.
double centreErrorOf(SphereFit fit, const Sample& sample) {
  Eigen::Matrix4d A;
  refine(fit, sample, A);
  const double n = static_cast<double>(std::count(sample.kept.begin(), sample.kept.end(), true));
  const Eigen::Matrix4d information = A / sample.total(false) * n;
  const Eigen::Matrix4d covariance = information.inverse() * 6 * fit.quality.rms * fit.quality.rms;
  const Eigen::Matrix3d ofCentre = covariance.topLeftCorner<3, 3>();
  return std::sqrt(std::max(0.0, linear::symmetricEigen(ofCentre).values(2)));
}

/// The patch seen in its plane.
struct Flat {
  std::vector<std::array<Vector2d, 3>> triangles;
  double area = 0;
  Vector2d centre = Vector2d::Zero();
  Eigen::Matrix2d variance = Eigen::Matrix2d::Zero();
};

/// Area, centre and second moments of the triangles that were kept, exactly: w / 12 (sum v v^T + s s^T) each.
Flat flatten(const BrushedPatch& patch, const std::vector<bool>& kept, const PlaneFit& plane, const Vector3d& u) {
  const Vector3d v = plane.normal.cross(u);
  Flat flat;
  Eigen::Matrix2d second = Eigen::Matrix2d::Zero();
  Vector2d first = Vector2d::Zero();
  for (std::size_t i = 0; i < patch.triangles.size(); ++i) {
    if (!kept[i]) continue;
    std::array<Vector2d, 3> t;
    for (int k = 0; k < 3; ++k) {
      const Vector3d d = patch.triangles[i].col(k) - plane.centre;
      t[static_cast<std::size_t>(k)] = {d.dot(u), d.dot(v)};
    }
    const Vector2d a = t[1] - t[0], b = t[2] - t[0], sum = t[0] + t[1] + t[2];
    const double area = 0.5 * std::abs(a.x() * b.y() - a.y() * b.x());
    flat.area += area;
    first += area / 3 * sum;
    second += area / 12 * (sum * sum.transpose());
    for (const Vector2d& p : t) second += area / 12 * (p * p.transpose());
    flat.triangles.push_back(t);
  }
  flat.centre = first / flat.area;
  flat.variance = second / flat.area - flat.centre * flat.centre.transpose();
  return flat;
}

double cross(const Vector2d& a, const Vector2d& b) { return a.x() * b.y() - a.y() * b.x(); }

/// Convex hull, counter-clockwise (monotone chain: Andrew 1979, Inf. Process. Lett. 9:216).
std::vector<Vector2d> hullOf(const Flat& flat) {
  std::vector<Vector2d> points;
  for (const auto& t : flat.triangles) points.insert(points.end(), t.begin(), t.end());
  std::sort(points.begin(), points.end(),
            [](const auto& a, const auto& b) { return a.x() < b.x() || (a.x() == b.x() && a.y() < b.y()); });
  std::vector<Vector2d> hull;
  const auto half = [&](auto begin, auto end) {
    const std::size_t base = hull.size();
    for (auto p = begin; p != end; ++p) {
      while (hull.size() >= base + 2 && cross(hull.back() - hull[hull.size() - 2], *p - hull.back()) <= 0)
        hull.pop_back();
      hull.push_back(*p);
    }
    hull.pop_back();
  };
  half(points.begin(), points.end());
  half(points.rbegin(), points.rend());
  return hull;
}

/// Unit vector in the plane nearest to `wanted`; zero when there is none.
Vector3d inPlane(const Vector3d& wanted, const Vector3d& normal) {
  const Vector3d flat = wanted - wanted.dot(normal) * normal;
  return flat.norm() > 1e-6 * wanted.norm() && wanted.norm() > 0 ? Vector3d(flat.normalized()) : Vector3d::Zero();
}

Eigen::Matrix3d cornersOf(const TriangleMesh& mesh, std::uint32_t triangle) {
  Eigen::Matrix3d corners;
  for (int i = 0; i < 3; ++i)
    corners.col(i) = mesh.positions.at(mesh.triangles.at(triangle)[static_cast<std::size_t>(i)]).cast<double>();
  return corners;
}

std::vector<std::uint32_t> trianglesNear(const TriangleMesh& mesh, const Vector3d& point, const Vector3d& normal,
                                         double radius, double leastCosine) {
  std::vector<std::uint32_t> near;
  for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t) {
    const Eigen::Matrix3d corners = cornersOf(mesh, t);
    if ((middleOf(corners) - point).squaredNorm() > radius * radius) continue;
    const Vector3d face = (corners.col(1) - corners.col(0)).cross(corners.col(2) - corners.col(0));
    if (face.dot(normal) >= leastCosine * face.norm() * normal.norm()) near.push_back(t);
  }
  return near;
}

/// Place in `triangles` of the one whose middle lies nearest; 0 when there are none.
std::size_t nearestOf(const TriangleMesh& mesh, const std::vector<std::uint32_t>& triangles, const Vector3d& point) {
  std::size_t best = 0;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < triangles.size(); ++i) {
    const double distance = (middleOf(cornersOf(mesh, triangles[i])) - point).squaredNorm();
    if (distance >= least) continue;
    least = distance;
    best = i;
  }
  return best;
}

}  // namespace

double BrushedPatch::area() const {
  return std::accumulate(triangles.begin(), triangles.end(), 0.0,
                         [](double sum, const Eigen::Matrix3d& t) { return sum + areaOf(t); });
}

BrushedPatch patchOf(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles) {
  BrushedPatch patch;
  for (const std::uint32_t t : triangles) {
    const Eigen::Matrix3d corners = cornersOf(mesh, t);
    patch.normal += 0.5 * (corners.col(1) - corners.col(0)).cross(corners.col(2) - corners.col(0));
    patch.triangles.push_back(corners);
  }
  return patch;
}

std::vector<std::uint32_t> brushTriangles(const TriangleMesh& mesh, const Vector3d& point, const Vector3d& normal,
                                          double radius, double mostTurn) {
  const std::vector<std::uint32_t> near = trianglesNear(mesh, point, normal, radius, std::cos(mostTurn));
  std::unordered_map<std::uint32_t, std::vector<std::size_t>> atVertex;
  for (std::size_t i = 0; i < near.size(); ++i)
    for (const std::uint32_t v : mesh.triangles[near[i]]) atVertex[v].push_back(i);
  std::vector<bool> reached(near.size(), false);
  std::vector<std::size_t> waiting{nearestOf(mesh, near, point)};
  std::vector<std::uint32_t> covered;
  while (!near.empty() && !waiting.empty()) {
    const std::size_t i = waiting.back();
    waiting.pop_back();
    if (reached[i]) continue;
    reached[i] = true;
    covered.push_back(near[i]);
    for (const std::uint32_t v : mesh.triangles[near[i]])
      for (const std::size_t next : atVertex[v])
        if (!reached[next]) waiting.push_back(next);
  }
  std::sort(covered.begin(), covered.end());
  return covered;
}

PlaneFit fitPlane(const BrushedPatch& patch) {
  if (!(patch.area() > 0)) throw reason::Failure(fault::kNothingBrushed);
  Sample sample(patch);
  PlaneFit plane = trimmedFit(sample, planeThrough, [&](const PlaneFit& f) { return distancesTo(f, sample); });
  if (plane.normal.dot(patch.normal) < 0) plane.normal = -plane.normal;
  return plane;
}

SphereFit fitSphere(const BrushedPatch& patch) {
  if (patch.triangles.size() < 4) throw reason::Failure(fault::kTooFewForSphere);
  Sample sample(patch);
  SphereFit sphere = trimmedFit(sample, sphereThrough, [&](const SphereFit& f) { return distancesTo(f, sample); });
  sphere.hollow = patch.normal.dot(planeThrough(sample).centre - sphere.centre) < 0;
  sphere.centreError = centreErrorOf(sphere, sample);
  return sphere;
}

FacetFit fitFacet(const BrushedPatch& patch, anatomy::FacetRole role, const Vector3d& slide, OutlineBy by) {
  PlaneFit plane = fitPlane(patch);
  Sample sample(patch);
  trim(sample, distancesTo(plane, sample));
  const Vector3d u = plane.normal.unitOrthogonal(), v = plane.normal.cross(u);
  const Flat flat = flatten(patch, sample.kept, plane, u);
  const auto principal = linear::symmetricEigen(flat.variance);
  const Vector2d longest = principal.vectors.col(1);
  FacetFit fit;
  fit.quality = plane.quality;
  fit.longAxis = longest.x() * u + longest.y() * v;
  fit.length = 4 * std::sqrt(std::max(0.0, principal.values(1)));
  fit.width = 4 * std::sqrt(std::max(0.0, principal.values(0)));
  anatomy::Facet& facet = fit.facet;
  facet.role = role;
  facet.normal = plane.normal;
  facet.centre = plane.centre + flat.centre.x() * u + flat.centre.y() * v;
  facet.slide = inPlane(slide, plane.normal);
  if (facet.slide.isZero()) facet.slide = fit.longAxis;
  const Vector3d across = facet.across();
  const auto place = [&](const Vector3d& p) { return Vector2d(p.dot(facet.slide), p.dot(across)); };
  if (by == OutlineBy::Ellipse) {
    const Vector3d axis = fit.longAxis, other = plane.normal.cross(axis);
    for (const Vector2d& p : anatomy::ellipseOutline(fit.length, fit.width))
      facet.outline.push_back(place(p.x() * axis + p.y() * other));
  } else {
    for (const Vector2d& p : hullOf(flat))
      facet.outline.push_back(place((p.x() - flat.centre.x()) * u + (p.y() - flat.centre.y()) * v));
  }
  return fit;
}

using Eigen::Vector3d;

CircleFit fitCircle(std::span<const Vector3d> points) {
  if (points.size() < 3) throw reason::Failure(fault::kTooFewForRing);
  const double n = static_cast<double>(points.size());
  Vector3d middle = Vector3d::Zero();
  for (const Vector3d& p : points) middle += p / n;
  Eigen::Matrix3d scatter = Eigen::Matrix3d::Zero();
  for (const Vector3d& p : points) scatter += (p - middle) * (p - middle).transpose() / n;
  const auto solver = linear::symmetricEigen(scatter);
  if (!(solver.values(1) > 1e-6 * solver.values(2))) throw reason::Failure(fault::kRingOnLine);
  CircleFit fit;
  fit.normal = solver.vectors.col(0);
  const Vector3d u = solver.vectors.col(2), v = fit.normal.cross(u);
  // |q|^2 = 2 c.q + (r^2 - |c|^2), linear in c and the last term.
  Eigen::Matrix3d A = Eigen::Matrix3d::Zero();
  Vector3d b = Vector3d::Zero();
  for (const Vector3d& p : points) {
    const Eigen::Vector2d q((p - middle).dot(u), (p - middle).dot(v));
    const Vector3d row(2 * q.x(), 2 * q.y(), 1);
    A += row * row.transpose();
    b += q.squaredNorm() * row;
  }
  const Vector3d x = linear::solveSymmetric(A, b);
  fit.centre = middle + x.x() * u + x.y() * v;
  fit.radius = std::sqrt(std::max(0.0, x.z() + x.head<2>().squaredNorm()));
  for (const Vector3d& p : points) {
    const Vector3d d = p - fit.centre;
    const double along = d.dot(fit.normal), out = (d - along * fit.normal).norm() - fit.radius;
    fit.rms += (along * along + out * out) / n;
  }
  fit.rms = std::sqrt(fit.rms);
  return fit;
}

}  // namespace zyga::solid
