#include "core/solid/facets/upright.h"

#include <Eigen/Geometry>
#include <array>
#include <limits>
#include <optional>
#include <utility>

#include "core/solid/facets/mid_plane.h"

namespace zyga::solid {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

std::optional<Vector3d> markAt(const anatomy::Scan& scan, std::string_view name) {
  const auto found = scan.landmarks.find(name);
  return found == scan.landmarks.end() ? std::nullopt : std::optional(found->second);
}

/// From the second of a pair of marks to the first; zero where one is lacking.
Vector3d stepOf(const anatomy::Scan& scan, std::string_view from, std::string_view to) {
  const auto a = markAt(scan, from), b = markAt(scan, to);
  return a && b ? Vector3d(*b - *a) : Vector3d(Vector3d::Zero());
}

struct KnownWays {
  Vector3d cranial = Vector3d::Zero(), dorsal = Vector3d::Zero(), left = Vector3d::Zero();
  bool any() const { return !cranial.isZero() || !dorsal.isZero() || !left.isZero(); }
};

KnownWays waysMarked(const anatomy::Scan& scan, const Vector3d& middle) {
  KnownWays ways;
  using Pair = std::pair<std::string_view, std::string_view>;
  if (anatomy::isVertebra(scan.bone.kind)) {
    for (const auto& [back, front] : {Pair{anatomy::kCanalCaudal, anatomy::kCanalCranial},
                                      Pair{"caudalRim", "cranialRim"}, Pair{"caudal", "cranial"}})
      if (ways.cranial.isZero()) ways.cranial = stepOf(scan, back, front);
    const auto front = markAt(scan, "cranialRim"), back = markAt(scan, "caudalRim");
    const Vector3d below = front && back ? Vector3d((*front + *back) / 2) : front ? *front : back ? *back : middle;
    for (const std::string_view name : {std::string_view("spineTop"), anatomy::kCanalCranial, anatomy::kCanalCaudal})
      if (const auto p = markAt(scan, name); p && ways.dorsal.isZero()) ways.dorsal = *p - below;
  } else {
    for (const auto& [low, high] : {Pair{"distal", "proximal"}, Pair{"bottom", "top"}, Pair{"shaftBottom", "shaftTop"}})
      if (ways.dorsal.isZero()) ways.dorsal = stepOf(scan, low, high);
  }
  for (const auto& [name, p] : scan.landmarks)
    if (name.ends_with(".L"))
      if (const auto right = markAt(scan, name.substr(0, name.size() - 1) + "R")) ways.left += p - *right;
  return ways;
}

/// What is nearest to `wanted` at right angles to `to`; any such where there is none.
Vector3d squareTo(const Vector3d& wanted, const Vector3d& to) {
  const Vector3d off = wanted - wanted.dot(to) * to;
  return off.norm() > 1e-6 * wanted.norm() && wanted.norm() > 0 ? Vector3d(off.normalized()) : to.unitOrthogonal();
}

Matrix3d turnOf(const Vector3d& cranial, const Vector3d& dorsal) {
  Matrix3d R_WS;
  R_WS << cranial.transpose(), dorsal.cross(cranial).transpose(), dorsal.transpose();
  return R_WS;
}

/// Normal of the plane of symmetry that fits best, wherever the column runs; of planes along `cranial` where that is
/// known.
Vector3d planeOfSymmetry(const FaceSurface& surface, const Matrix3d& axes, const Vector3d& cranial) {
  const std::array<const FaceSurface*, 1> surfaces{&surface};
  if (!cranial.isZero()) return findMidPlane(surfaces, cranial.normalized()).normal;
  MidPlane best;
  best.residual = std::numeric_limits<double>::infinity();
  for (int k = 0; k < 3; ++k)
    if (const MidPlane plane = findMidPlane(surfaces, axes.col(k)); plane.residual < best.residual) best = plane;
  return best.normal;
}

}  // namespace

Upright uprightOf(const anatomy::Scan& scan, const TriangleMesh& mesh) {
  if (scan.placed) return {scan.X_BoneScan.linear(), UprightBy::Marks};
  if (mesh.empty()) return {};
  const MassProperties mass = massProperties(mesh);
  const FaceSurface surface(mesh, surfaceSize(mesh));
  const Vector3d longest = mass.axes.col(0).x() < 0 ? Vector3d(-mass.axes.col(0)) : Vector3d(mass.axes.col(0));
  const KnownWays known = waysMarked(scan, surface.centroid());
  const UprightBy by = known.any() ? UprightBy::SomeMarks : UprightBy::Shape;
  if (scan.bone.side != anatomy::Side::Midline) {
    const Vector3d z = known.dorsal.isZero() ? longest : known.dorsal.normalized();
    return {turnOf(squareTo(mass.axes.col(2), z), z), by};
  }
  Vector3d left = known.left;
  if (left.isZero() && !known.dorsal.isZero() && !known.cranial.isZero()) left = known.dorsal.cross(known.cranial);
  if (left.isZero()) left = planeOfSymmetry(surface, mass.axes, known.cranial);
  left.normalize();
  if (!known.cranial.isZero()) {
    const Vector3d x = known.cranial.normalized();
    Vector3d z = x.cross(squareTo(left, x));
    if (known.dorsal.dot(z) < 0) z = -z;
    return {turnOf(x, z), by};
  }
  Vector3d z = known.dorsal.isZero() ? left.cross(squareTo(longest, left)) : squareTo(known.dorsal, left);
  const Vector3d x = squareTo(longest, left);
  if (!known.dorsal.isZero()) return {turnOf(squareTo(x, z), z), by};
  return {turnOf(x, z.normalized()), by};
}

}  // namespace zyga::solid
