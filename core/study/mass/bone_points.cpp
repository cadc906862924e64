#include "core/study/mass/bone_points.h"

#include <array>

namespace zyga::study {
namespace {

using anatomy::Bone;
using anatomy::BoneKind;
using anatomy::Measure;
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
    case BoneKind::Sacral:
    case BoneKind::Caudal:
      addCentrum(points, bone);
      break;
    default:
      addEnds(points, bone);
  }
  return points;
}

}  // namespace zyga::study
