#include "core/anatomy/summary.h"

namespace zyga::anatomy {
namespace {

double lengthOf(const Specimen& specimen, std::string_view id) {
  const auto bone = specimen.findBone(id);
  return bone ? specimen[*bone].measures.valueOr(Measure::Length, 0) : 0;
}

double ratio(double a, double b) { return b > 0 ? a / b : 0; }

bool isFound(const Bone& bone) { return bone.evidence == Evidence::Found || bone.evidence == Evidence::FoundDeformed; }

}  // namespace

Summary summarise(const Specimen& specimen) {
  Summary s;
  for (const Bone& bone : specimen.bones) {
    const double length = bone.measures.valueOr(Measure::Length, 0);
    if (bone.name.kind == BoneKind::Skull) s.skull = length;
    if (bone.name.kind == BoneKind::Cervical) s.neck += length;
    if (isVertebra(bone.name.kind) && regionOf(bone.name) == Region::Dorsal) s.trunk += length;
    if (bone.name.kind == BoneKind::Sacral) s.sacrum += length;
    if (bone.name.kind == BoneKind::Caudal) s.tail += length;
  }
  s.presacral = s.neck + s.trunk;
  s.column = s.presacral + s.sacrum + s.tail;
  s.total = s.skull + s.column;
  s.femur = lengthOf(specimen, "femur.L");
  s.humerus = lengthOf(specimen, "humerus.L");
  s.humerusToFemur = ratio(s.humerus, s.femur);
  s.neckToTrunk = ratio(s.neck, s.trunk);
  return s;
}

double elongation(const Bone& vertebra) {
  const double mean =
      0.5 * (vertebra.measures.value(Measure::CotyleHeight) + vertebra.measures.value(Measure::CotyleWidth));
  return ratio(vertebra.measures.value(Measure::Length), mean);
}

Completeness completeness(const Specimen& specimen) {
  Completeness count;
  count.bones = specimen.bones.size();
  for (const Bone& bone : specimen.bones) {
    const auto other = specimen.findBone(toId(mirrored(bone.name)));
    if (isFound(bone)) ++count.found;
    if (isFound(bone) || (other && isFound(specimen[*other]))) ++count.withMirrored;
  }
  return count;
}

}  // namespace zyga::anatomy
