#include "core/range/facet_pair.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/range/column_joint.h"
#include "core/range/convex_clip.h"
#include "core/range/overlap.h"

namespace zyga::range {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// Facets that stand steeper to each other than this cosine (84 degrees) have no sensible gap; it keeps it finite.
constexpr double kLeastGapCosine = 0.1;
/// Shared areas and edges below this share of the facets' size are touches.
constexpr double kTouch = 1e-12;

struct Extent {
  double min = std::numeric_limits<double>::infinity();
  double max = -std::numeric_limits<double>::infinity();
  void add(double value) {
    min = std::min(min, value);
    max = std::max(max, value);
  }
  double extent() const { return max - min; }
};

/// Extent along the slide (0) or across it (1).
double extentOf(const Polygon& polygon, Eigen::Index axis) {
  Extent interval;
  for (const Vector2d& p : polygon) interval.add(p[axis]);
  return interval.extent();
}

/// Memory that is used again by every meeting of a thread.
struct Scratch {
  ConvexClip clip;
  Polygon postzyg;
};

Scratch& scratch() {
  thread_local Scratch memory;
  return memory;
}

/// The postzyg facet as the prezyg facet sees it: coordinates along (slide, across, normal) of the prezyg, from its
/// centre.
struct Opposite {
  Vector3d centre, normal, slide, across;

  Opposite(const anatomy::Facet& prezyg, const anatomy::Facet& postzyg, const Eigen::Isometry3d& X_PrePost) {
    Eigen::Matrix3d R_PlanePre;
    R_PlanePre.row(0) = prezyg.slide;
    R_PlanePre.row(1) = prezyg.across();
    R_PlanePre.row(2) = prezyg.normal;
    const Eigen::Matrix3d R = R_PlanePre * X_PrePost.linear();
    centre = R_PlanePre * (X_PrePost * postzyg.centre - prezyg.centre);
    normal = R * postzyg.normal;
    slide = R * postzyg.slide;
    across = R * postzyg.across();
  }

  /// Mean of the prezyg's normal and the postzyg's reversed one; false when they face the same way or are no numbers.
  bool meanNormal(Vector3d& mean) const {
    mean = Vector3d::UnitZ() - normal;
    const double length = mean.norm();
    if (!(length >= 1e-6)) return false;
    mean /= length;
    return true;
  }

  /// Height of the postzyg plane over a point of the prezyg plane, along the prezyg's normal, m.
  double gapOver(const Vector2d& p) const {
    const double rise = (centre.x() - p.x()) * normal.x() + (centre.y() - p.y()) * normal.y() + centre.z() * normal.z();
    return rise / std::min(normal.z(), -kLeastGapCosine);
  }
};

/// Outline projected along `direction` onto the prezyg's plane. Seen from the prezyg's side a postzyg runs clockwise,
/// so it is read backwards.
void project(const Opposite& post, const Polygon& outline, const Vector3d& direction, Polygon& out) {
  const auto flat = [&](const Vector3d& v) -> Vector2d {
    return v.head<2>() - direction.head<2>() * (v.z() / direction.z());
  };
  const Vector2d origin = flat(post.centre);
  const Vector2d slide = flat(post.slide);
  const Vector2d across = flat(post.across);
  out.resize(outline.size());
  for (std::size_t i = 0, n = outline.size(); i < n; ++i) {
    const Vector2d& p = outline[n - 1 - i];
    out[i] = origin + slide * p.x() + across * p.y();
  }
}

double curvatureOf(const anatomy::Facet& facet) { return facet.radius != 0 ? 1 / facet.radius : 0; }

double share(double part, double whole) { return whole > 0 ? std::clamp(part / whole, 0.0, 1.0) : 0.0; }

}  // namespace

FacetPair::FacetPair(const anatomy::Facet& prezyg, const anatomy::Facet& postzyg)
    : prezyg_(prezyg),
      postzyg_(postzyg),
      shorterLength_(std::min(prezyg.length(), postzyg.length())),
      prezygLength_(prezyg.length()),
      prezygWidth_(prezyg.width()),
      smallerArea_(std::min(std::abs(signedArea(prezyg.outline)), std::abs(signedArea(postzyg.outline)))),
      prezygCurvature_(curvatureOf(prezyg)),
      postzygCurvature_(curvatureOf(postzyg)) {}

double FacetPair::curvedBy(double x, double postzygCentre) const {
  const double off = x - postzygCentre;
  return 0.5 * (prezygCurvature_ * x * x - postzygCurvature_ * off * off);
}

FacetMeasures FacetPair::measure(const Eigen::Isometry3d& X_PrePost) const {
  FacetMeasures measures;
  const Opposite post(prezyg_, postzyg_, X_PrePost);
  Vector3d mean;
  if (!post.meanNormal(mean)) return measures;
  Scratch& memory = scratch();
  project(post, postzyg_.outline, mean, memory.postzyg);
  const double postzygLength = extentOf(memory.postzyg, 0);
  const double size = std::max(prezygLength_, postzygLength);
  if (!memory.clip.intersect(memory.postzyg, prezyg_.outline, kTouch * size)) return measures;

  Extent slide, across, gap;
  double doubleArea = 0;
  const Vector2d* previous = nullptr;
  Vector2d first;
  memory.clip.visitCorners([&](const Vector2d& p) {
    slide.add(p.x());
    across.add(p.y());
    gap.add(post.gapOver(p) + curvedBy(p.x(), post.centre.x()));
    if (previous) {
      doubleArea += previous->x() * p.y() - previous->y() * p.x();
    } else {
      first = p;
    }
    previous = &p;
  });
  doubleArea += previous->x() * first.y() - previous->y() * first.x();
  if (!(doubleArea > kTouch * size * size)) return measures;

  measures.overlapLength = share(slide.extent(), std::min(prezygLength_, postzygLength));
  measures.overlapWidth = share(across.extent(), std::min(prezygWidth_, extentOf(memory.postzyg, 1)));
  measures.overlapArea = share(0.5 * doubleArea, smallerArea_);
  measures.minGap = gap.min;
  measures.maxGap = gap.max;
  return measures;
}

FacetMeeting FacetPair::overlap(const Eigen::Isometry3d& X_PrePost) const {
  FacetMeeting meeting;
  static_cast<FacetMeasures&>(meeting) = measure(X_PrePost);
  meeting.prezyg = prezyg_.outline;
  const Opposite post(prezyg_, postzyg_, X_PrePost);
  Vector3d mean;
  if (!post.meanNormal(mean)) return meeting;
  // measure() left the projected outline and the ring of the shared area behind.
  const Scratch& memory = scratch();
  meeting.postzyg = memory.postzyg;
  if (meeting.overlapArea > 0) {
    meeting.shared.reserve(prezyg_.outline.size());
    memory.clip.visitCorners([&](const Vector2d& p) { meeting.shared.push_back(p); });
  }
  return meeting;
}

double signedArea(const Polygon& polygon) {
  double doubled = 0;
  for (std::size_t i = 0, n = polygon.size(); i < n; ++i) {
    const Eigen::Vector2d& p = polygon[i];
    const Eigen::Vector2d& q = polygon[i + 1 == n ? 0 : i + 1];
    doubled += p.x() * q.y() - p.y() * q.x();
  }
  return 0.5 * doubled;
}

Polygon sharedPolygon(const Polygon& a, const Polygon& b) {
  double size = 0;
  for (const Eigen::Vector2d& p : a) size = std::max(size, (p - a.front()).cwiseAbs().maxCoeff());
  for (const Eigen::Vector2d& p : b) size = std::max(size, (p - b.front()).cwiseAbs().maxCoeff());
  const double touch = 1e-12 * size;
  ConvexClip clip;
  Polygon shared;
  if (!clip.intersect(a, b, touch)) return shared;
  clip.visitCorners([&](const Eigen::Vector2d& p) { shared.push_back(p); });
  if (signedArea(shared) <= touch * size) shared.clear();
  return shared;
}

FacetMeeting facetOverlap(const anatomy::Facet& prezyg, const anatomy::Facet& postzyg,
                          const Eigen::Isometry3d& X_PrePost) {
  return FacetPair(prezyg, postzyg).overlap(X_PrePost);
}

using anatomy::FacetRole;

std::array<SideFacets, 2> facetsOf(const anatomy::Specimen& specimen, anatomy::JointIndex joint) {
  if (!specimen[joint].hasFacets()) return {};
  const anatomy::Bone& caudal = specimen[specimen.caudalBone(joint)];
  const anatomy::Bone& cranial = specimen[specimen.cranialBone(joint)];
  const auto pair = [&](FacetRole prezyg, FacetRole postzyg) {
    SideFacets side{caudal.facet(prezyg), cranial.facet(postzyg)};
    const auto usable = [](const anatomy::Facet* facet) { return facet && facet->outline.size() >= 3; };
    return usable(side.prezyg) && usable(side.postzyg) ? side : SideFacets{};
  };
  return {pair(FacetRole::PrezygLeft, FacetRole::PostzygLeft), pair(FacetRole::PrezygRight, FacetRole::PostzygRight)};
}

}  // namespace zyga::range
