#include "core/solid/facets/patch_shape.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/linear/linear.h"
#include "core/solid/mesh/weighted_median.h"

namespace zyga::solid {

namespace {

using Eigen::Matrix3d;
using Eigen::Vector2d;
using Eigen::Vector3d;

/// Share of the bone's size below which distances are taken to differ by roughness alone. Program default, no source.
constexpr double kLeastSpread = 0.01;
constexpr double kPatchTrim = 3;  ///< robust standard deviations
constexpr int kPatchTrimRounds = 8;
constexpr int kOutlineCorners = 48;
/// A bend whose arrow over the patch is below this share of its half length is none. Program default, no source.
constexpr double kFlatBend = 1e-3;

/// The direction in which a facet slides when its joint turns in the mid-plane, cranially; in its plane.
Vector3d slideOf(const Vector3d& normal, const Vector3d& arm, const ColumnAxes& axes) {
  for (const Vector3d& wanted : {Vector3d(axes.left.cross(arm)), axes.cranial, axes.dorsal()}) {
    const Vector3d flat = wanted - wanted.dot(normal) * normal;
    // Nearly across the plane the direction would be chance.
    if (flat.norm() < 0.2 * wanted.norm() || !(wanted.norm() > 0)) continue;
    const double sense = flat.dot(axes.cranial);
    return (sense < 0 ? -flat : flat).normalized();
  }
  return normal.unitOrthogonal();
}

/// h = a + b s + c s^2 by weighted least squares; c and the residual.
struct Parabola {
  double bend = 0, residual = 0;
};

Parabola parabolaThrough(const std::vector<Vector3d>& shw) {
  Matrix3d A = Matrix3d::Zero();
  Vector3d b = Vector3d::Zero();
  double total = 0, scale = 0;
  for (const Vector3d& p : shw) scale = std::max(scale, std::abs(p.x()));
  if (!(scale > 0)) return {};
  for (const Vector3d& p : shw) {
    const double s = p.x() / scale;
    const Vector3d row(1, s, s * s);
    A += p.z() * row * row.transpose();
    b += p.z() * p.y() * row;
    total += p.z();
  }
  const Vector3d x = linear::solveSymmetric(A, b);
  if (!x.allFinite() || !(total > 0)) return {};
  double squares = 0;
  for (const Vector3d& p : shw) {
    const double s = p.x() / scale, off = p.y() - (x[0] + x[1] * s + x[2] * s * s);
    squares += p.z() * off * off;
  }
  const bool flat = std::abs(x[2]) < kFlatBend * scale;
  return {flat ? 0 : x[2] / (scale * scale), std::sqrt(squares / total)};
}

}  // namespace

PatchFitter::PatchFitter(const TriangleMesh& mesh, const FaceSurface& surface, const std::vector<double>& gaps,
                         double boneSize)
    : mesh_(mesh), surface_(surface), gaps_(gaps), boneSize_(boneSize) {}

double PatchFitter::medianGap(std::span<const std::uint32_t> patch) const {
  std::vector<std::pair<double, double>> gaps;
  for (const std::uint32_t t : patch) gaps.emplace_back(gaps_[t], surface_.area(t));
  return weightedMedian(std::move(gaps));
}

double PatchFitter::spreadOf(std::span<const std::uint32_t> patch, const std::vector<double>& sizes) const {
  std::vector<std::pair<double, double>> weighted;
  for (std::size_t i = 0; i < patch.size(); ++i) weighted.emplace_back(sizes[i], surface_.area(patch[i]));
  return std::max(1.4826 * weightedMedian(std::move(weighted)), kLeastSpread * boneSize_);
}

/// A triangle whose distance is far from the usual one lies at the rim or beside the joint.
std::vector<double> PatchFitter::weightsOf(std::span<const std::uint32_t> patch) const {
  const double median = medianGap(patch);
  std::vector<double> off;
  for (const std::uint32_t t : patch) off.push_back(std::abs(gaps_[t] - median));
  const double spread = spreadOf(patch, off);
  std::vector<double> weights;
  for (std::size_t i = 0; i < patch.size(); ++i)
    weights.push_back(surface_.area(patch[i]) * std::exp(-0.5 * std::pow(off[i] / spread, 2)));
  return weights;
}

PatchFitter::Plane PatchFitter::planeOf(std::span<const std::uint32_t> patch,
                                        const std::vector<double>& weights) const {
  Plane plane{Vector3d::Zero(), Vector3d::UnitZ()};
  double total = 0;
  for (std::size_t i = 0; i < patch.size(); ++i) {
    plane.point += weights[i] * surface_.middle(patch[i]);
    total += weights[i];
  }
  plane.point /= total;
  Matrix3d scatter = Matrix3d::Zero();
  for (std::size_t i = 0; i < patch.size(); ++i) {
    const Vector3d d = surface_.middle(patch[i]) - plane.point;
    scatter += weights[i] / total * d * d.transpose();
  }
  plane.normal = linear::symmetricEigen(scatter).vectors.col(0);
  if (plane.normal.dot(surface_.meanNormalOf(patch)) < 0) plane.normal = -plane.normal;
  return plane;
}

std::vector<std::uint32_t> PatchFitter::trimmed(std::span<const std::uint32_t> patch) const {
  std::vector<std::uint32_t> kept(patch.begin(), patch.end());
  for (int round = 0; round < kPatchTrimRounds; ++round) {
    const Plane plane = planeOf(kept, weightsOf(kept));
    const double median = medianGap(kept);
    std::vector<double> high, off;
    for (const std::uint32_t t : kept) {
      high.push_back(std::abs(plane.normal.dot(surface_.middle(t) - plane.point)));
      off.push_back(std::abs(gaps_[t] - median));
    }
    const double highest = kPatchTrim * spreadOf(kept, high), farthest = kPatchTrim * spreadOf(kept, off);
    std::vector<std::uint32_t> next;
    for (std::size_t i = 0; i < kept.size(); ++i)
      if (high[i] <= highest && off[i] <= farthest) next.push_back(kept[i]);
    std::vector<std::uint32_t> whole;
    for (auto& part : surface_.connected(next))
      if (surface_.areaOf(part) > surface_.areaOf(whole)) whole = std::move(part);
    if (whole.empty() || whole == kept) break;
    kept = std::move(whole);
  }
  return kept;
}

/// The ellipse with the patch's own area and second moments in the plane (half axes twice the spread), about the
/// facet's centre.
std::vector<Vector2d> PatchFitter::outlineOf(std::span<const std::uint32_t> patch, const anatomy::Facet& facet) const {
  Eigen::Matrix2d second = Eigen::Matrix2d::Zero();
  Vector2d first = Vector2d::Zero();
  double total = 0;
  const Vector3d across = facet.across();
  for (const std::uint32_t t : patch) {
    std::array<Vector2d, 3> corners;
    for (std::size_t k = 0; k < 3; ++k) {
      const Vector3d d = mesh_.positions[mesh_.triangles[t][k]].cast<double>() - facet.centre;
      corners[k] = {d.dot(facet.slide), d.dot(across)};
    }
    const Vector2d a = corners[1] - corners[0], b = corners[2] - corners[0], sum = corners[0] + corners[1] + corners[2];
    const double area = 0.5 * std::abs(a.x() * b.y() - a.y() * b.x());
    total += area;
    first += area / 3 * sum;
    second += area / 12 * (sum * sum.transpose());
    for (const Vector2d& p : corners) second += area / 12 * (p * p.transpose());
  }
  const Vector2d centre = first / total;
  const auto eigen = linear::symmetricEigen(Eigen::Matrix2d(second / total - centre * centre.transpose()));
  // By about a thousandth larger, so that the polygon's area is the ellipse's.
  const double grown =
      std::sqrt(2 * std::numbers::pi / kOutlineCorners / std::sin(2 * std::numbers::pi / kOutlineCorners));
  std::vector<Vector2d> outline;
  for (int i = 0; i < kOutlineCorners; ++i) {
    const double a = 2 * std::numbers::pi * i / kOutlineCorners;
    const Vector2d u = eigen.vectors.col(1), v(-u.y(), u.x());
    const double halfLong = 2 * std::sqrt(std::max(0.0, eigen.values[1])) * grown,
                 halfShort = 2 * std::sqrt(std::max(0.0, eigen.values[0])) * grown;
    outline.push_back(halfLong * std::cos(a) * u + halfShort * std::sin(a) * v);
  }
  return outline;
}

SuggestedFacet PatchFitter::fit(std::span<const std::uint32_t> patch, anatomy::FacetRole role, const ColumnAxes& axes,
                                const Vector3d& pivot) const {
  const std::vector<double> weights = weightsOf(patch);
  double total = 0;
  SuggestedFacet found;
  anatomy::Facet& facet = found.facet;
  facet.role = role;
  for (const double weight : weights) total += weight;
  const Plane plane = planeOf(patch, weights);
  facet.normal = plane.normal;
  // The centre is that of the area, the plane that of the weights.
  facet.centre = surface_.middleOf(patch);
  facet.centre -= facet.normal.dot(facet.centre - plane.point) * facet.normal;
  facet.slide = slideOf(facet.normal, facet.centre - pivot, axes);
  facet.outline = outlineOf(patch, facet);

  std::vector<Vector3d> profile;
  double squares = 0;
  for (std::size_t i = 0; i < patch.size(); ++i) {
    const Vector3d d = surface_.middle(patch[i]) - facet.centre;
    profile.emplace_back(d.dot(facet.slide), d.dot(facet.normal), weights[i]);
    squares += weights[i] * d.dot(facet.normal) * d.dot(facet.normal);
  }
  const Parabola parabola = parabolaThrough(profile);
  found.shape.area = surface_.areaOf(patch);
  found.shape.planeResidual = std::sqrt(squares / total);
  found.shape.radius = parabola.bend == 0 ? std::numeric_limits<double>::infinity() : 1 / (2 * parabola.bend);
  found.shape.cylinderResidual = parabola.residual;
  found.triangles.assign(patch.begin(), patch.end());
  return found;
}

}  // namespace zyga::solid
