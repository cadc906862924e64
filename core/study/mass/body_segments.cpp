#include "core/study/mass/body_segments.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <utility>

#include "core/study/mass/convex_hull.h"

namespace zyga::study {
namespace {

using anatomy::Bone;
using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::Measure;
using anatomy::Region;
using anatomy::Side;
using Eigen::Vector3d;

/// Both ends of a cross at `middle`, `across` along one axis and `up` along the other.
void addCross(std::vector<Vector3d>& points, const Vector3d& middle, const Vector3d& across, const Vector3d& up) {
  for (const Vector3d& arm : {across, up}) {
    points.push_back(middle + arm);
    points.push_back(middle - arm);
  }
}

void addCentrum(std::vector<Vector3d>& points, const Bone& bone) {
  const Vector3d across(0, bone.measures.valueOr(Measure::CotyleWidth, 0) / 2, 0);
  const Vector3d up(0, 0, bone.measures.valueOr(Measure::CotyleHeight, 0) / 2);
  addCross(points, bone.landmark("cranialRim"), across, up);
  addCross(points, bone.landmark("caudalRim"), across, up);
}

/// Ends of a long bone, as thick fore and aft as from side to side.
void addEnds(std::vector<Vector3d>& points, const Bone& bone) {
  const double shaft = bone.measures.valueOr(Measure::ShaftWidth, bone.measures.valueOr(Measure::Width, 0));
  for (const auto& [name, measure] :
       {std::pair{"top", Measure::ProximalWidth}, std::pair{"bottom", Measure::DistalWidth}}) {
    const auto end = bone.landmarks.find(name);
    if (end == bone.landmarks.end()) continue;
    const double half = bone.measures.valueOr(measure, shaft) / 2;
    addCross(points, end->second, half * Vector3d::UnitX(), half * Vector3d::UnitY());
  }
}

/// The bow of a rib between its marks: a parabola through neck, middle and tip.
void addBow(std::vector<Vector3d>& points, const Bone& rib) {
  const Vector3d &a = rib.landmark("tuberculum"), &b = rib.landmark("middle"), &c = rib.landmark("tip");
  for (const double t : {0.125, 0.25, 0.375, 0.625, 0.75, 0.875}) {
    points.push_back((1 - t) * (1 - 2 * t) * a + 4 * t * (1 - t) * b + t * (2 * t - 1) * c);
  }
}

void addHead(std::vector<Vector3d>& points, const Bone& bone) {
  const double length = bone.measures.valueOr(Measure::Length, 0);
  const double half = bone.measures.valueOr(Measure::Width, 0) / 2;
  // Widest over the hinge of the jaw, a third of its length from the back.
  for (const double side : {-half, half}) points.emplace_back(0.3 * length, side, 0);
  if (bone.name.kind != BoneKind::Skull) return;
  const double hinge = bone.landmark("jawHinge").z();
  points.emplace_back(0.4 * length, 0, hinge + bone.measures.valueOr(Measure::Height, 0));
}

/// Bones that make up one segment share a key: part, side, and number along the part.
struct SegmentKey {
  BodyPart part;
  Side side;
  int number;
  auto operator<=>(const SegmentKey&) const = default;
};

/// 0 upper, 1 middle, 2 hand or foot.
int pieceOf(BoneKind kind) {
  if (kind == BoneKind::Humerus || kind == BoneKind::Femur) return 0;
  const bool middle = kind == BoneKind::Radius || kind == BoneKind::Ulna || kind == BoneKind::Tibia ||
                      kind == BoneKind::Fibula || kind == BoneKind::Astragalus;
  return middle ? 1 : 2;
}

SegmentKey segmentKeyOf(const Bone& bone) {
  const auto& name = bone.name;
  if (name.kind == BoneKind::CervicalRib) return {BodyPart::Neck, Side::Midline, name.number};
  switch (regionOf(name)) {
    case Region::Skull:
      return {BodyPart::Head, Side::Midline, 0};
    case Region::Cervical:
      return {BodyPart::Neck, Side::Midline, name.number};
    case Region::Caudal:
    case Region::Chevrons:
      return {BodyPart::Tail, Side::Midline, name.number};
    case Region::Forelimb:
    case Region::Manus:
      return {BodyPart::ForeLimbs, name.side, pieceOf(name.kind)};
    case Region::Hindlimb:
    case Region::Pes:
      return {BodyPart::HindLimbs, name.side, pieceOf(name.kind)};
    default:
      return {BodyPart::Trunk, Side::Midline, 0};
  }
}

/// The points of a piece of neck or tail, in the frame of its vertebra, drawn in to the ends of the centrum.
void cutOff(std::vector<Vector3d>& points, const Bone& vertebra) {
  const double front = vertebra.landmark("cranialRim").x(), back = vertebra.landmark("caudalRim").x();
  for (auto& p : points) p.x() = std::clamp(p.x(), std::min(back, front), std::max(back, front));
}

/// The bone of the trunk that is nearest to its middle carries it.
BoneIndex carrierOf(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const Vector3d& p_WMiddle) {
  BoneIndex nearest;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const auto region = regionOf(specimen.bones[i].name);
    const double distance = (X_WB[i].translation() - p_WMiddle).norm();
    if ((region != Region::Dorsal && region != Region::Sacral) || distance >= least) continue;
    least = distance;
    nearest = {i};
  }
  return nearest;
}

BodySegment segmentOf(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, BodyPart part,
                      const std::vector<BoneIndex>& bones) {
  BodySegment segment{.part = part, .bone = bones.front()};
  const Eigen::Isometry3d X_BW = X_WB[segment.bone.value].inverse();
  std::vector<Vector3d> points;
  for (const BoneIndex bone : bones) {
    for (const auto& p : bonePoints(specimen[bone])) points.push_back(X_BW * X_WB[bone.value] * p);
  }
  const bool piece = part == BodyPart::Neck || part == BodyPart::Tail;
  if (piece && anatomy::isVertebra(specimen[segment.bone].name.kind)) cutOff(points, specimen[segment.bone]);
  const auto hull = convexHull(points);
  segment.hullVolume = hull.volume;
  segment.p_BCentre = hull.centroid;
  if (part != BodyPart::Trunk) return segment;
  const Vector3d p_WMiddle = X_WB[segment.bone.value] * hull.centroid;
  segment.bone = carrierOf(specimen, X_WB, p_WMiddle);
  segment.p_BCentre = X_WB[segment.bone.value].inverse() * p_WMiddle;
  return segment;
}

}  // namespace

std::vector<Vector3d> bonePoints(const Bone& bone) {
  std::vector<Vector3d> points{Vector3d::Zero()};
  for (const auto& [name, point] : bone.landmarks) points.push_back(point);
  for (const auto& facet : bone.facets) points.push_back(facet.centre);
  switch (bone.name.kind) {
    case BoneKind::Skull:
    case BoneKind::Jaw:
      addHead(points, bone);
      break;
    case BoneKind::DorsalRib:
      addBow(points, bone);
      break;
    case BoneKind::Cervical:
    case BoneKind::Dorsal:
    case BoneKind::Lumbar:
    case BoneKind::Sacral:
    case BoneKind::Caudal:
      addCentrum(points, bone);
      break;
    default:
      addEnds(points, bone);
  }
  return points;
}

std::vector<BodySegment> bodySegments(const range::Scenario& scenario) {
  const anatomy::Specimen& specimen = scenario.specimen();
  const auto X_WB =
      kinematics::forwardKinematics(specimen, scenario.articulation(), kinematics::Pose::neutral(specimen));
  std::map<SegmentKey, std::vector<BoneIndex>> bones;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) bones[segmentKeyOf(specimen.bones[i])].push_back({i});
  std::vector<BodySegment> segments;
  for (const auto& [key, members] : bones) segments.push_back(segmentOf(specimen, X_WB, key.part, members));
  return segments;
}

BodyMass weigh(const std::vector<BodySegment>& segments, const Densities& densities,
               const kinematics::Placement& X_WB) {
  BodyMass body;
  body.densities = densities;
  for (Vector3d& centre : body.p_WPartCentres) centre.setZero();
  for (const auto& segment : segments) {
    const auto part = static_cast<std::size_t>(segment.part);
    const double factor = densities.hullFactors[part];
    const auto mass = massFromHulls(segment.hullVolume, densities[segment.part], factor);
    body.mass.low += mass.low;
    body.mass.mass += mass.mass;
    body.mass.high += mass.high;
    const Vector3d moment = mass.mass * (X_WB[segment.bone.value] * segment.p_BCentre);
    body.byPart[part] += mass.mass;
    body.flesh[part] += mass.mass * (1 - 1 / factor);
    body.p_WCentre += moment;
    body.p_WPartCentres[part] += moment;
  }
  if (body.mass.mass > 0) body.p_WCentre /= body.mass.mass;
  for (std::size_t part = 0; part < kBodyParts; ++part) {
    const double mass = body.byPart[part], error = std::hypot(kDensityErrors[part], kHullFactorErrors[part]);
    body.ranges[part] = {mass * (1 - error), mass, mass * (1 + error)};
    if (mass > 0) body.p_WPartCentres[part] /= mass;
  }
  return body;
}

Vector3d shiftOfCentre(const BodyMass& body, BodyPart part) {
  const auto& range = body.ranges[static_cast<std::size_t>(part)];
  const double more = range.high - range.mass;
  if (!(more > 0)) return Vector3d::Zero();
  return more / (body.mass.mass + more) * (body.p_WPartCentres[static_cast<std::size_t>(part)] - body.p_WCentre);
}

}  // namespace zyga::study
