#include "core/solid/facets/carried_marks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/linear/linear.h"
#include "core/solid/facets/face_surface.h"
#include "core/solid/facets/outline.h"
#include "core/solid/facets/sureness.h"
#include "core/solid/mesh/fit.h"

namespace zyga::solid {
namespace {

using anatomy::SuggestedMarks;
using Eigen::Matrix3d;
using Eigen::Vector2d;
using Eigen::Vector3d;

// Program defaults, no source.
constexpr std::size_t kFewPoints = 400, kManyPoints = 1500;
constexpr double kCarriedKept = 0.8;      ///< of the pairs, the nearest
constexpr double kLooksAlike = 0.4;       ///< cosine of the normals of a pair
constexpr double kCarriedReach = 0.8;     ///< share of the size
constexpr double kFarthestMisfit = 0.25;  ///< share of the size
constexpr double kMisfitScale = 0.16;     ///< share of the size at which confidence has fallen to 1/e
constexpr double kOtherWay = 1.15;        ///< misfit of another way over that of the best, from which it is as good
constexpr double kAboutAMark = 0.35;      ///< share of the size
constexpr double kCarriedDepth = 0.35;    ///< of the root of a facet's area
constexpr double kCarriedLooks = 0.6;     ///< cosine
constexpr double kFarTurned = 0.6;        ///< rad
constexpr double kFarShifted = 1.0;       ///< of the root of a facet's area
constexpr double kCarriedCovered = 0.5;   ///< share of the outline

/// Points spread evenly over a surface, and what the whole of it is like.
struct Spread {
  std::vector<Vector3d> points, normals;
  Vector3d centre = Vector3d::Zero();
  Matrix3d axes = Matrix3d::Identity();
  double size = 0;
};

Vector3d meshCorner(const TriangleMesh& mesh, std::size_t t, std::size_t k) {
  return mesh.positions[mesh.triangles[t][k]].cast<double>();
}

Spread spreadOver(const TriangleMesh& mesh, std::size_t count) {
  Spread out;
  std::vector<Vector3d> halves(mesh.triangles.size());  // half the area along the normal
  double area = 0;
  Vector3d sum = Vector3d::Zero();
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const Vector3d a = meshCorner(mesh, t, 0), b = meshCorner(mesh, t, 1), c = meshCorner(mesh, t, 2);
    halves[t] = 0.5 * (b - a).cross(c - a);
    area += halves[t].norm();
    sum += halves[t].norm() * (a + b + c) / 3;
  }
  if (!(area > 0)) return out;
  out.centre = sum / area;
  out.size = surfaceSize(mesh);
  Matrix3d spread = Matrix3d::Zero();
  const double step = area / static_cast<double>(count);
  double passed = 0.5 * step;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const double own = halves[t].norm();
    const Vector3d a = meshCorner(mesh, t, 0), b = meshCorner(mesh, t, 1), c = meshCorner(mesh, t, 2);
    const Vector3d off = (a + b + c) / 3 - out.centre;
    spread += own * off * off.transpose();
    // A large triangle gives several points along the way between its corners.
    for (int k = 0; passed < own; passed += step, ++k) {
      const double u = std::fmod(0.5 + 0.618033988749895 * k, 1.0), v = std::fmod(0.25 + 0.754877666 * k, 1.0);
      const double w = std::sqrt(u);
      out.points.push_back((1 - w) * a + w * (1 - v) * b + w * v * c);
      out.normals.push_back(halves[t] / own);
    }
    passed -= own;
  }
  const auto eigen = linear::symmetricEigen(spread);
  out.axes = eigen.vectors;
  if (out.axes.determinant() < 0) out.axes.col(0) *= -1;
  return out;
}

/// p -> scale * R * p + shift
struct Laid {
  double scale = 1;
  Matrix3d R = Matrix3d::Identity();
  Vector3d shift = Vector3d::Zero();
  double misfit = std::numeric_limits<double>::infinity();  ///< share of the size

  Vector3d operator*(const Vector3d& p) const { return scale * (R * p) + shift; }
};

/// The surface that others are laid on.
class Bed {
 public:
  Bed(const TriangleMesh& mesh, std::size_t count) : spread_(spreadOver(mesh, count)), tree_(spread_.points) {}
  const Spread& spread() const { return spread_; }

  struct Pair {
    std::size_t from;
    std::uint32_t to;
    double distance;
  };
  /// Of each point the nearest of the bed that looks its way; the nearer ones only, nearest first.
  std::vector<Pair> pairs(const Spread& of, const Laid& laid) const {
    std::vector<Pair> found;
    for (std::size_t i = 0; i < of.points.size(); ++i) {
      const Vector3d p = laid * of.points[i], n = laid.R * of.normals[i];
      const auto to = tree_.nearest(p, kCarriedReach * spread_.size,
                                    [&](std::uint32_t j) { return spread_.normals[j].dot(n) > kLooksAlike; });
      if (to) found.push_back({i, *to, (spread_.points[*to] - p).norm()});
    }
    std::sort(found.begin(), found.end(), [](const Pair& a, const Pair& b) { return a.distance < b.distance; });
    found.resize(
        std::min(found.size(), static_cast<std::size_t>(kCarriedKept * static_cast<double>(of.points.size()))));
    return found;
  }
  /// Root mean square over the nearer four fifths, points without a pair as far as pairs are looked for.
  double misfit(const Spread& of, const Laid& laid) const {
    const auto found = pairs(of, laid);
    const double wanted = kCarriedKept * static_cast<double>(of.points.size());
    double squares = 0;
    for (const Pair& pair : found) squares += pair.distance * pair.distance;
    squares += std::max(0.0, wanted - static_cast<double>(found.size())) * std::pow(kCarriedReach * spread_.size, 2);
    return wanted > 0 ? std::sqrt(squares / wanted) / spread_.size : std::numeric_limits<double>::infinity();
  }

 private:
  Spread spread_;
  PointTree tree_;
};

Laid inverseOf(const Laid& laid) {
  return {1 / laid.scale, laid.R.transpose(), -(laid.R.transpose() * laid.shift) / laid.scale, laid.misfit};
}

/// Lays the points on the bed, closest points iterated.
Laid settled(const Spread& of, const Bed& bed, Laid laid, int steps) {
  const double usual = bed.spread().size / of.size;
  for (int step = 0; step < steps; ++step) {
    const auto pairs = bed.pairs(of, laid);
    if (pairs.size() < 20) break;
    Eigen::Matrix3Xd from(3, pairs.size()), to(3, pairs.size());
    for (std::size_t k = 0; k < pairs.size(); ++k) {
      from.col(static_cast<Eigen::Index>(k)) = of.points[pairs[k].from];
      to.col(static_cast<Eigen::Index>(k)) = bed.spread().points[pairs[k].to];
    }
    const Eigen::Matrix4d T = linear::similarity(from, to);
    const double scale = std::cbrt(T.topLeftCorner<3, 3>().determinant());
    if (!(scale > 0.5 * usual && scale < 2 * usual)) break;
    laid.scale = scale;
    laid.R = T.topLeftCorner<3, 3>() / scale;
    laid.shift = T.topRightCorner<3, 1>();
  }
  laid.misfit = bed.misfit(of, laid);
  return laid;
}

/// All ways in which two sets of principal axes fall together.
std::vector<Matrix3d> waysOf(const Matrix3d& from, const Matrix3d& to) {
  std::vector<Matrix3d> ways;
  std::array<int, 3> order{0, 1, 2};
  do {
    for (int signs = 0; signs < 8; ++signs) {
      Matrix3d P = Matrix3d::Zero();
      for (int k = 0; k < 3; ++k) P(order[static_cast<std::size_t>(k)], k) = (signs >> k) & 1 ? -1 : 1;
      if (P.determinant() > 0) ways.push_back(to * P * from.transpose());
    }
  } while (std::next_permutation(order.begin(), order.end()));
  return ways;
}

struct BestLaid {
  Laid best;
  bool ambiguous = false;
};

BestLaid bestLaid(const TriangleMesh& fromMesh, const TriangleMesh& toMesh) {
  const Spread few = spreadOver(fromMesh, kFewPoints), many = spreadOver(fromMesh, kManyPoints);
  const Bed coarse(toMesh, kFewPoints), fine(toMesh, kManyPoints);
  BestLaid out;
  if (!(few.size > 0) || !(coarse.spread().size > 0)) return out;
  std::vector<Laid> all;
  auto ways = waysOf(few.axes, coarse.spread().axes);
  ways.push_back(Matrix3d::Identity());  // neighbours in one frame
  for (const Matrix3d& R : ways) {
    const double scale = coarse.spread().size / few.size;
    all.push_back(settled(few, coarse, {scale, R, coarse.spread().centre - scale * (R * few.centre)}, 10));
  }
  std::sort(all.begin(), all.end(), [](const Laid& a, const Laid& b) { return a.misfit < b.misfit; });
  const Bed back(fromMesh, kManyPoints);
  const auto bothWays = [&](Laid laid) {
    laid.misfit = 0.5 * (laid.misfit + back.misfit(fine.spread(), inverseOf(laid)));
    return laid;
  };
  const auto turned = [](const Laid& a, const Laid& b) {
    return Eigen::AngleAxisd(a.R.transpose() * b.R).angle() > 0.5;  // rad
  };
  std::vector<Laid> kept;
  for (const Laid& laid : all) {
    if (kept.size() == 3) break;
    if (std::all_of(kept.begin(), kept.end(), [&](const Laid& other) { return turned(laid, other); }))
      kept.push_back(laid);
  }
  for (Laid& laid : kept) laid = bothWays(settled(many, fine, laid, 15));
  std::sort(kept.begin(), kept.end(), [](const Laid& a, const Laid& b) { return a.misfit < b.misfit; });
  out.best = kept.front();
  out.ambiguous = std::any_of(kept.begin() + 1, kept.end(), [&](const Laid& other) {
    return other.misfit < kOtherWay * out.best.misfit && turned(other, out.best);
  });
  return out;
}

/// Shifts marks as the surface about them asks.
class Nudge {
 public:
  Nudge(const TriangleMesh& from, const TriangleMesh& to, const Laid& laid)
      : from_(spreadOver(from, 2 * kManyPoints)), bed_(to, 2 * kManyPoints), laid_(laid) {}

  Vector3d at(const Vector3d& p, double radius) const {
    Spread about;
    for (std::size_t i = 0; i < from_.points.size(); ++i) {
      if ((from_.points[i] - p).norm() > radius) continue;
      about.points.push_back(from_.points[i]);
      about.normals.push_back(from_.normals[i]);
    }
    Laid laid = laid_;
    for (int step = 0; step < 8 && about.points.size() > 10; ++step) {
      Matrix3d A = 1e-3 * static_cast<double>(about.points.size()) * Matrix3d::Identity();
      Vector3d b = Vector3d::Zero();
      for (const Bed::Pair& pair : bed_.pairs(about, laid)) {
        const Vector3d& n = bed_.spread().normals[pair.to];
        A += n * n.transpose();
        b += n * n.dot(bed_.spread().points[pair.to] - laid * about.points[pair.from]);
      }
      laid.shift += linear::solveSymmetric(A, b);
    }
    const Vector3d by = laid.shift - laid_.shift;
    // The surface about a mark tells little where it is smooth: a shift as large as that is no refinement.
    return by.norm() < 0.5 * radius * laid_.scale ? by : Vector3d(Vector3d::Zero());
  }
  double size() const { return from_.size; }

 private:
  Spread from_;
  Bed bed_;
  Laid laid_;
};

/// Surface under the outline that looks the facet's way.
std::vector<std::uint32_t> under(const TriangleMesh& mesh, const anatomy::Facet& facet, double area) {
  std::vector<std::uint32_t> found;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const Vector3d a = meshCorner(mesh, t, 0), b = meshCorner(mesh, t, 1), c = meshCorner(mesh, t, 2);
    const Vector3d off = (a + b + c) / 3 - facet.centre, n = (b - a).cross(c - a);
    if (std::abs(off.dot(facet.normal)) > kCarriedDepth * std::sqrt(area)) continue;
    if (n.dot(facet.normal) < kCarriedLooks * n.norm()) continue;
    if (withinOutline(facet.outline, {off.dot(facet.slide), off.dot(facet.across())}))
      found.push_back(static_cast<std::uint32_t>(t));
  }
  return found;
}

}  // namespace

CarriedMarks carryMarks(const MarkedMesh& from, const anatomy::BoneName& bone, const TriangleMesh& to) {
  CarriedMarks out;
  out.marks.bone = bone;
  const BestLaid found = bestLaid(*from.mesh, to);
  const Laid& laid = found.best;
  out.misfit = laid.misfit;
  if (!(laid.misfit < kFarthestMisfit)) {
    out.marks.leftOut.push_back({fault::kOtherShape, {reason::text(toId(from.marks.bone)), reason::text(toId(bone))}});
    return out;
  }
  const double sure = fallOff(laid.misfit, kMisfitScale) * (found.ambiguous ? 0.5 : 1);
  const auto sureAs = [&](double mark) { return std::min(anatomy::kMostSure, sure * mark); };
  const Nudge nudge(*from.mesh, to, laid);
  for (const SuggestedMarks::Landmark& mark : from.marks.landmarks) {
    const Vector3d p = laid * mark.place + nudge.at(mark.place, kAboutAMark * nudge.size());
    out.marks.landmarks.push_back({mark.name, p, sureAs(mark.confidence)});
  }
  for (const SuggestedMarks::MarkedFacet& mark : from.marks.facets) {
    const anatomy::Facet& facet = mark.marked.facet;
    anatomy::Facet there = facet;
    there.centre = laid * facet.centre + nudge.at(facet.centre, facet.length());
    there.normal = laid.R * facet.normal;
    there.slide = laid.R * facet.slide;
    for (Vector2d& corner : there.outline) corner *= laid.scale;
    const double area = outlineArea(there.outline);
    const BrushedPatch patch = patchOf(to, under(to, there, area));
    const double covered = patch.area() / area;
    if (covered < kCarriedCovered) {
      out.marks.leftOut.push_back({fault::kNoSurfaceUnder, {termOf(facet.role)}});
      continue;
    }
    const FacetFit fit = fitFacet(patch, facet.role, there.slide);
    SuggestedMarks::MarkedFacet carried;
    carried.marked.facet = fit.facet;
    carried.marked.facet.radius = laid.scale * facet.radius;
    carried.marked.residual = fit.quality.rms;
    carried.area = patch.area();
    // What had to be turned or shifted far is less likely to be the same part.
    const double turned = std::acos(std::clamp(fit.facet.normal.dot(laid.R * facet.normal), -1.0, 1.0));
    const double shifted = (fit.facet.centre - laid * facet.centre).norm() / std::sqrt(area);
    carried.confidence =
        sureAs(mark.confidence * std::min(1.0, covered) * fallOff(fit.quality.rms / std::sqrt(area), 0.3) *
               fallOff(turned, kFarTurned) * fallOff(shifted, kFarShifted));
    out.marks.facets.push_back(std::move(carried));
  }
  return out;
}

std::optional<std::size_t> nearestMarked(const anatomy::BoneName& bone, std::span<const MarkedMesh> marked) {
  std::optional<std::size_t> best;
  const auto distance = [&](const anatomy::BoneName& name) {
    const auto place = [](anatomy::BoneKind kind) {
      return std::find(anatomy::kColumnKinds.begin(), anatomy::kColumnKinds.end(), kind) -
             anatomy::kColumnKinds.begin();
    };
    return 1000 * std::abs(place(name.kind) - place(bone.kind)) + std::abs(name.number - bone.number);
  };
  for (std::size_t i = 0; i < marked.size(); ++i) {
    const anatomy::BoneName& name = marked[i].marks.bone;
    if (!anatomy::isVertebra(name.kind) || name == bone) continue;
    if (!best || distance(name) < distance(marked[*best].marks.bone)) best = i;
  }
  return best;
}

}  // namespace zyga::solid
