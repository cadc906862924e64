#include "core/solid/sculpt/appendicular/appendicular.h"

#include <stdexcept>

#include "core/anatomy/characters.h"
#include "core/solid/sculpt/appendicular/head_kit.h"

namespace zyga::solid {

namespace {

using anatomy::BoneKind;

/// A bone of the same animal and side that this one has to fit.
const Bone& neighbour(const Specimen& specimen, const Bone& bone, BoneKind kind) {
  const std::string id = anatomy::toId({kind, 0, 0, kind == BoneKind::Skull ? anatomy::Side::Midline : bone.name.side});
  const auto index = specimen.findBone(id);
  if (!index) throw std::out_of_range(bone.id + " cannot be shaped without " + id);
  return specimen[*index];
}

/// Claws: the thumb's second bone and the last bones of the first three toes.
bool isClaw(const anatomy::BoneName& name) {
  if (name.kind == BoneKind::ManusPhalanx) return name.number == 1 && name.phalanx == 2;
  return name.number <= 3 && name.phalanx == name.number + 1;
}

bool hasNext(const Specimen& specimen, anatomy::BoneName phalanx) {
  ++phalanx.phalanx;
  return specimen.findBone(toId(phalanx)).has_value();
}

}  // namespace

Shape appendicularShape(const Specimen& specimen, anatomy::BoneIndex index) {
  const Bone& bone = specimen[index];
  const anatomy::LimbCharacters& limbs = anatomy::charactersOf(specimen.plan).limbs;
  switch (bone.name.kind) {
    case BoneKind::Skull:
      return skullShape(bone);
    case BoneKind::Jaw:
      return jawShape(bone, neighbour(specimen, bone, BoneKind::Skull));
    case BoneKind::Scapula:
      return scapulaShape(bone, neighbour(specimen, bone, BoneKind::Coracoid));
    case BoneKind::SternalPlate:
      return sternalShape(bone);
    case BoneKind::Humerus:
      return humerusShape(bone);
    case BoneKind::Ulna:
      return ulnaShape(bone);
    case BoneKind::Radius:
      return radiusShape(bone);
    case BoneKind::Carpal:
      return carpalShape(bone);
    case BoneKind::Ilium:
      return iliumShape(bone, neighbour(specimen, bone, BoneKind::Femur), limbs.iliacFlare);
    case BoneKind::Pubis:
      return pubisShape(bone, neighbour(specimen, bone, BoneKind::Femur));
    case BoneKind::Ischium:
      return ischiumShape(bone, neighbour(specimen, bone, BoneKind::Femur));
    case BoneKind::Femur:
      return femurShape(bone, limbs.kneeBevel);
    case BoneKind::Tibia:
      return tibiaShape(bone);
    case BoneKind::Fibula:
      return fibulaShape(bone);
    case BoneKind::Astragalus:
      return astragalusShape(bone);
    case BoneKind::Metacarpal:
      return metacarpalShape(bone, limbs.fingerBones > 0);
    case BoneKind::Metatarsal:
      return metatarsalShape(bone);
    case BoneKind::ManusPhalanx:
    case BoneKind::PesPhalanx:
      return isClaw(bone.name) ? clawShape(bone) : phalanxShape(bone, !hasNext(specimen, bone.name));
    default:
      return {};
  }
}

Shape skullShape(const Bone& skull) { return isTall(skull) ? tallSkull(skull) : longSkull(skull); }

}  // namespace zyga::solid
