#include "core/solid/sculpt/bone_shape.h"

#include "core/solid/sculpt/appendicular/appendicular.h"
#include "core/solid/sculpt/axial/axial.h"

namespace zyga::solid {

using anatomy::BoneKind;

namespace {

Shape leftOrMidline(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  switch (specimen[bone].name.kind) {
    case BoneKind::Cervical:
      if (specimen[bone].name.number == 1) return atlasShape(specimen, bone);
      if (specimen[bone].name.number == 2) return axisShape(specimen, bone);
      return cervicalShape(specimen, bone);
    case BoneKind::Dorsal:
      return dorsalShape(specimen, bone);
    case BoneKind::Sacral:
      return sacralShape(specimen, bone);
    case BoneKind::Caudal:
      return caudalShape(specimen, bone);
    case BoneKind::CervicalRib:
      return {};  // grown into its vertebra
    case BoneKind::DorsalRib:
      return dorsalRibShape(specimen, bone);
    case BoneKind::Chevron:
      return chevronShape(specimen, bone);
    default:
      return appendicularShape(specimen, bone);
  }
}

}  // namespace

Shape shapeOf(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  if (specimen[bone].fusedInto) return {};
  if (specimen[bone].name.side != anatomy::Side::Right) return leftOrMidline(specimen, bone);
  return mirrored(leftOrMidline(mirroredSpecimen(specimen), bone));
}

std::vector<FlatPart> flatPartsOf(const anatomy::Bone& bone) {
  std::vector<FlatPart> parts;
  for (const anatomy::Facet& facet : bone.facets)
    parts.push_back({facet.centre, facet.normal, facet.slide, facet.length() / 2, facet.width() / 2});
  return parts;
}

BoneMesh meshBone(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, std::size_t triangleBudget) {
  return meshLevels(shapeOf(specimen, bone), triangleBudget, flatPartsOf(specimen[bone]));
}

BoneMesh likenessOf(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  return meshLikeness(shapeOf(specimen, bone));
}

}  // namespace zyga::solid
