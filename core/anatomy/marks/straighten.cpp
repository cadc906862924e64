#include "core/anatomy/marks/straighten.h"

#include <Eigen/LU>
#include <cmath>
#include <numbers>

#include "core/anatomy/specimen_reasons.h"
#include "core/linear/linear.h"

namespace zyga::anatomy {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;
using Pairs = std::span<const std::pair<Vector3d, Vector3d>>;

// Program defaults, no source.
constexpr double kUnbent = 0.02;       ///< of the distance of pairs, by which they may be off without being bent
constexpr double kClearlyLess = 0.95;  ///< of what a shear leaves, for a compression to be advised instead
constexpr double kPlaneFreedoms = 3, kMapFreedoms = 2;

struct MidPlane {
  Vector3d point = Vector3d::Zero();
  Vector3d normal = Vector3d::UnitY();
};

MidPlane midPlane(Pairs pairs, std::span<const Vector3d> midline) {
  std::vector<Vector3d> middles(midline.begin(), midline.end());
  for (const auto& [left, right] : pairs) middles.push_back((left + right) / 2);
  MidPlane plane;
  for (const Vector3d& m : middles) plane.point += m / static_cast<double>(middles.size());
  Matrix3d scatter = Matrix3d::Zero();
  for (const Vector3d& m : middles) scatter += (m - plane.point) * (m - plane.point).transpose();
  const auto principal = linear::symmetricEigen(scatter);
  if (!(principal.values(1) > 1e-6 * principal.values(2))) throw reason::Failure(scan::kMiddlesInLine);
  plane.normal = principal.vectors.col(0);
  return plane;
}

/// The direction most parallel to all steps from right to left, long ones counting more.
Vector3d steps(Pairs pairs) {
  Matrix3d scatter = Matrix3d::Zero();
  Vector3d sum = Vector3d::Zero();
  for (const auto& [left, right] : pairs) {
    scatter += (left - right) * (left - right).transpose();
    sum += left - right;
  }
  const Vector3d u = linear::symmetricEigen(scatter).vectors.col(2);
  return u.dot(sum) < 0 ? Vector3d(-u) : u;
}

/// The plane stays, the step becomes its own part along the normal.
Matrix3d shearBack(const Vector3d& step, const Vector3d& normal) {
  const double along = step.dot(normal);
  return Matrix3d::Identity() + (along * normal - step) * normal.transpose() / along;
}

/// A pure strain A in the plane of step u and normal w with A^2 u parallel to w, so that A u is square to the mapped
/// plane, whose normal is A^-1 w. With u and w at angle phi and axes 45 degrees to either side of their bisector,
/// A^2 = diag(k, 1/k) turns u onto w when k = tan(45 degrees + phi/2).
Matrix3d squashBack(const Vector3d& u, const Vector3d& w) {
  const double phi = std::acos(std::min(1.0, u.dot(w)));
  const Vector3d bisector = (u + w).normalized();
  const Vector3d aside = (w - w.dot(bisector) * bisector).normalized();  // towards w
  const double stretch = std::sqrt(std::tan(std::numbers::pi / 4 + phi / 2));
  const Vector3d longer = (bisector + aside).normalized(), shorter = (bisector - aside).normalized();
  return Matrix3d::Identity() + (stretch - 1) * longer * longer.transpose() +
         (1 / stretch - 1) * shorter * shorter.transpose();
}

double asymmetryOf(Pairs pairs, const Matrix3d& map, const MidPlane& plane) {
  const Vector3d normal = (map.inverse().transpose() * plane.normal).normalized();
  const Vector3d point = map * plane.point;
  double squares = 0;
  for (const auto& [left, right] : pairs) {
    const Vector3d l = map * left, r = map * right;
    const Vector3d image = r - 2 * (r - point).dot(normal) * normal;
    squares += (l - image).squaredNorm();
  }
  return std::sqrt(squares / static_cast<double>(pairs.size()));
}

struct SymmetryMarks {
  std::vector<std::pair<Vector3d, Vector3d>> pairs;
  std::vector<Vector3d> midline;
};

SymmetryMarks symmetryMarks(const Scan& scan) {
  if (scan.bone.side != Side::Midline) throw reason::Failure({scan::kNoSymmetry, {reason::text(toId(scan.bone))}});
  SymmetryMarks out;
  for (const auto& [name, p] : scan.landmarks) {
    if (name.ends_with(".R")) continue;
    if (!name.ends_with(".L")) {
      out.midline.push_back(p);
    } else if (const auto right = scan.landmarks.find(name.substr(0, name.size() - 2) + ".R");
               right != scan.landmarks.end()) {
      out.pairs.emplace_back(p, right->second);
    }
  }
  for (const ScanFacet& left : scan.facets)
    for (const ScanFacet& right : scan.facets)
      if (isLeft(left.facet.role) && right.facet.role == mirrored(left.facet.role))
        out.pairs.emplace_back(left.facet.centre, right.facet.centre);
  return out;
}

}  // namespace

Straightening straighten(Pairs pairs, std::span<const Vector3d> midline, DeformedBy by) {
  if (pairs.size() < 2) throw reason::Failure(scan::kTooFewPairs);
  MidPlane plane = midPlane(pairs, midline);
  const Vector3d step = steps(pairs);
  if (step.dot(plane.normal) < 0) plane.normal = -plane.normal;
  Straightening out;
  out.before = asymmetryOf(pairs, Matrix3d::Identity(), plane);
  const double phi = std::acos(std::min(1.0, step.dot(plane.normal)));
  if (phi > 1e-9) {
    out.map = by == DeformedBy::Shear ? shearBack(step, plane.normal) : squashBack(step, plane.normal);
    out.amount = by == DeformedBy::Shear ? phi : 1 - 1 / std::sqrt(std::tan(std::numbers::pi / 4 + phi / 2));
  }
  out.asymmetry = asymmetryOf(pairs, out.map, plane);
  return out;
}

Straightening straightening(const Scan& scan, DeformedBy by) {
  const SymmetryMarks marks = symmetryMarks(scan);
  return straighten(marks.pairs, marks.midline, by);
}

AdvisedStraightening advisedStraightening(const Scan& scan) {
  const SymmetryMarks marks = symmetryMarks(scan);
  const Straightening shear = straighten(marks.pairs, marks.midline, DeformedBy::Shear),
                      squash = straighten(marks.pairs, marks.midline, DeformedBy::Squash);
  const double pairs = static_cast<double>(marks.pairs.size());
  double wide = 0;
  for (const auto& [left, right] : marks.pairs) wide += (left - right).norm() / pairs;
  const auto perFreedom = [&](double asymmetry, double freedoms) {
    return asymmetry * std::sqrt(pairs / std::max(1.0, 3 * pairs - kPlaneFreedoms - freedoms));
  };
  const bool squashIsBetter = squash.asymmetry < kClearlyLess * shear.asymmetry;
  const Straightening& better = squashIsBetter ? squash : shear;
  const auto told = [&scan](double length) { return reason::Quantity{scan.scale * length, reason::Unit::Length}; };
  if (better.before < kUnbent * wide)
    return {{}, better, {straightening_advice::kAsFound, {told(better.before), told(kUnbent * wide)}}};
  if (perFreedom(better.asymmetry, kMapFreedoms) >= perFreedom(better.before, 0))
    return {{}, better, {straightening_advice::kNoGain, {told(better.before), told(better.asymmetry)}}};
  const reason::Quantity amount{better.amount, squashIsBetter ? reason::Unit::Share : reason::Unit::Angle};
  return {squashIsBetter ? DeformedBy::Squash : DeformedBy::Shear,
          better,
          {squashIsBetter ? straightening_advice::kSquash : straightening_advice::kShear,
           {amount, told(better.before), told(better.asymmetry)}}};
}

Scan straightened(Scan scan, const Bone& sculpted, const Eigen::Matrix3d& map) {
  scan.straighten = map;
  const bool asFound = map.isIdentity(1e-12);
  if (scan.evidence == Evidence::Found && !asFound) scan.evidence = Evidence::FoundDeformed;
  if (scan.evidence == Evidence::FoundDeformed && asFound) scan.evidence = Evidence::Found;
  scan.placed = placeByLandmarks(scan, sculpted);
  return scan;
}

}  // namespace zyga::anatomy
