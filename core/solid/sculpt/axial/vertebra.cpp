#include "core/solid/sculpt/axial/vertebra.h"

#include <algorithm>

namespace zyga::solid {

using anatomy::Bone;
using anatomy::Facet;
using anatomy::FacetRole;
using anatomy::Measure;

namespace {

Point flipped(const Point& p) { return {p.x(), -p.y(), p.z()}; }

std::optional<Point> landmarkIfAny(const Bone& bone, const std::string& name) {
  const auto found = bone.landmarks.find(name);
  if (found == bone.landmarks.end()) return std::nullopt;
  return found->second;
}

VertebraSide describeSide(const Bone& bone, bool left) {
  const std::string suffix = left ? ".L" : ".R";
  const auto place = [&](const Point& p) { return left ? p : flipped(p); };
  VertebraSide side;
  side.diapophysis = place(bone.landmark("diapophysis" + suffix));
  side.parapophysis =
      place(landmarkIfAny(bone, "parapophysis" + suffix).value_or(bone.landmark("diapophysis" + suffix)));
  if (const auto tip = landmarkIfAny(bone, "ribTip" + suffix)) side.ribTip = place(*tip);
  const auto facet = [&](FacetRole role) -> std::optional<Facet> {
    const Facet* found = bone.facet(role);
    if (!found) return std::nullopt;
    return left ? *found : mirrored(*found);
  };
  side.prezyg = facet(left ? FacetRole::PrezygLeft : FacetRole::PrezygRight);
  side.postzyg = facet(left ? FacetRole::PostzygLeft : FacetRole::PostzygRight);
  return side;
}

/// A condyle is a cap over a rim of 0.45 cotyle heights; radius of the ball it is part of.
double condyleRadius(const Bone& bone) {
  const double depth = (bone.landmark("condyleTip") - bone.landmark("cranialRim")).norm();
  if (depth <= 1e-6) return 0;
  const double rim = 0.45 * bone.measures.value(Measure::CotyleHeight);
  return (rim * rim + depth * depth) / (2 * depth);
}

double widening(const Bone& bone) {
  const double height = bone.measures.value(Measure::CotyleHeight);
  return std::clamp(bone.measures.valueOr(Measure::CotyleWidth, height) / height, 0.5, 2.0);
}

/// The vertebra behind this one, if a joint joins them.
const Bone* behind(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  for (std::size_t i = 0; i < specimen.joints.size(); ++i) {
    const anatomy::JointIndex joint{i};
    if (specimen[joint].proximal != bone && specimen[joint].distal != bone) continue;
    const Bone& other = specimen[specimen[joint].proximal == bone ? specimen[joint].distal : specimen[joint].proximal];
    if (!anatomy::isVertebra(other.name.kind)) continue;
    if (specimen.cranialBone(joint) == bone) return &other;
  }
  return nullptr;
}

}  // namespace

Shape BallPart::solid(double by) const {
  return ellipsoid(centre, Point(radius + by, radius * widening + by, radius + by));
}

Vertebra describeVertebra(const anatomy::Specimen& specimen, anatomy::BoneIndex index) {
  const Bone& bone = specimen[index];
  Vertebra v;
  v.number = bone.name.number;
  v.length = bone.measures.value(Measure::Length);
  v.height = bone.measures.value(Measure::CotyleHeight);
  v.width = bone.measures.valueOr(Measure::CotyleWidth, v.height);
  v.wedge = bone.measures.valueOr(Measure::Wedge, 0);
  v.fork = bone.measures.valueOr(Measure::SpineFork, 0);
  v.condyle = {bone.landmark("cranial"), condyleRadius(bone), widening(bone)};
  if (const Bone* next = behind(specimen, index))
    v.cotyle = {bone.landmark("caudal"), condyleRadius(*next), widening(*next)};
  v.cranialRim = bone.landmark("cranialRim");
  v.caudalRim = bone.landmark("caudalRim");
  v.canal = bone.landmark("canal");
  v.spineTop = bone.landmark("spineTop");
  v.left = describeSide(bone, true);
  v.right = describeSide(bone, false);
  return v;
}

}  // namespace zyga::solid
