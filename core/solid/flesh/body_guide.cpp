#include "core/solid/flesh/body_guide.h"

#include <algorithm>
#include <stdexcept>

#include "core/solid/flesh/guide_sections.h"
#include "core/solid/levelset/bone_spaces.h"
#include "core/solid/mesh/pieces.h"
#include "core/solid/sdf/mesher.h"
#include "core/solid/watertight/posed_field.h"

namespace zyga::solid {
namespace {

using anatomy::BoneKind;
using anatomy::Region;

/// Bones of the column and what it carries are inside the tube; grown by this share of the thickness there they make
/// sure of it.
constexpr double kSkin = 0.4;

double limbThickness(const anatomy::BoneName& name, const GuideThickness& t) {
  switch (name.kind) {
    case BoneKind::Skull:
    case BoneKind::Jaw:
      return t.headAndFeet;
    case BoneKind::Humerus:
    case BoneKind::Femur:
      return t.upperLimbs;
    default:
      break;
  }
  const Region region = regionOf(name);
  if (region == Region::Manus || region == Region::Pes) return t.headAndFeet;
  return region == Region::Forelimb || region == Region::Hindlimb ? t.lowerLimbs : -1;
}

/// The vertebra a rib or chevron hangs on; the name itself for any other bone.
anatomy::BoneName vertebraOf(anatomy::BoneName name) {
  if (name.kind == BoneKind::DorsalRib) name = {BoneKind::Dorsal, name.number, 0, anatomy::Side::Midline};
  if (name.kind == BoneKind::Chevron) name = {BoneKind::Caudal, name.number, 0, anatomy::Side::Midline};
  return name;
}

double skinOf(const anatomy::Specimen& specimen, const anatomy::BoneName& name, const GuideThickness& t) {
  const anatomy::BoneName vertebra = vertebraOf(name);
  return kSkin * (anatomy::isVertebra(vertebra.kind) ? columnThickness(specimen, vertebra, t) : t.trunk);
}

struct Grown {
  std::vector<PosedBone> limbs, column;
};

Grown grownBones(const PosedSkeleton& skeleton, const BoneFields& fields, const GuideThickness& t, double voxel) {
  Grown grown;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (!fields[i]) continue;
    const anatomy::BoneName& name = skeleton.specimen.bones[i].name;
    const double limb = limbThickness(name, t);
    (limb >= 0 ? grown.limbs : grown.column)
        .push_back(
            {fields[i], skeleton.X_WB[i], std::max(limb >= 0 ? limb : skinOf(skeleton.specimen, name, t), voxel)});
  }
  return grown;
}

double thickest(const GuideThickness& t) {
  return std::max({t.headAndFeet, t.neck, t.neckBase, t.trunk, t.tailBase, t.upperLimbs, t.lowerLimbs, 0.02});
}

}  // namespace

TriangleMesh bodyGuide(const PosedSkeleton& skeleton, const BodyGuideOptions& options) {
  const auto tell = [&](double share) {
    if (options.progress) options.progress(share);
  };
  const double longest = boundsOf(skeleton).sizes().maxCoeff();
  const double voxel = options.voxel > 0 ? options.voxel : longest / 800;
  LevelSetOptions levels;
  // A level set reaches eight of its voxels beyond the bone.
  levels.voxel = std::max(thickest(options.thickness) / 7, voxel / 2);
  levels.cancel = options.cancel;
  levels.progress = [&](std::size_t done, std::size_t total) {
    tell(0.3 * static_cast<double>(done) / static_cast<double>(total));
  };
  const BoneSpaces spaces = boneSpaces(skeleton, 4000, levels);
  if (options.cancel && *options.cancel) return {};
  const Watch watch{options.cancel, {}};
  const Grown grown = grownBones(skeleton, spaces.fields, options.thickness, voxel);
  const double blend = 1.5 * std::max(options.thickness.lowerLimbs, 0.02);
  const Shape soft =
      smoothUnion({guideTube(skeleton, options.thickness), posedShape(grown.limbs, {}, blend, &watch)}, 2 * blend);
  const Shape shape = smoothUnion({soft, posedShape(grown.column, {}, 0, &watch)}, voxel);
  if (shape.empty()) throw std::invalid_argument("there are no bones to put a body guide around");
  try {
    const Pieces pieces = solidPieces(meshAllSurfaces(shape, voxel), 64 * voxel * voxel * voxel);
    tell(0.8);
    TriangleMesh mesh =
        options.triangles > 0 ? simplified(pieces.mesh, options.triangles, options.cancel) : pieces.mesh;
    if (options.cancel && *options.cancel) return {};
    tell(1);
    return mesh;
  } catch (const Stopped&) {
    return {};
  }
}

}  // namespace zyga::solid
