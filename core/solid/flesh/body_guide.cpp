#include "core/solid/flesh/body_guide.h"

#include <algorithm>
#include <cmath>

#include "core/solid/flesh/muscle_masses.h"
#include "core/solid/mesh/components.h"
#include "core/solid/mesh/simplify.h"
#include "core/solid/mesh/smoothing.h"
#include "core/solid/sdf/catmull_rom.h"
#include "core/solid/sdf/mesher.h"
#include "core/solid/watertight/posed_field.h"

namespace zyga::solid {

namespace {

using anatomy::BoneKind;
using anatomy::Region;

/// Bones of the column and what it carries are inside the tube; grown by this share of the thickness there they make
/// sure of it.
constexpr double kSkin = 0.4;
/// Where the limbs' masses hold the bones, these need only a share of the thickness over them.
constexpr double kUnderMuscle = 0.6;
/// Over how much bones that reach the skin of the trunk flow into it, share of its thickness.
constexpr double kUnderSkin = 0.75;
/// Least thickness over claws and snouts, voxels: evening out takes a little off thin tips.
constexpr double kLeastSkin = 1.5;
/// How often the surface is evened out: the ripples of the tube's pieces go, the shape stays.
constexpr int kEvenings = 40;
/// Over how much the masses flow together, share of the animal's greatest extent.
constexpr double kFlow = 0.02;

bool ofHeadOrFoot(const anatomy::BoneName& name) {
  const Region region = regionOf(name);
  return region == Region::Skull || region == Region::Manus || region == Region::Pes;
}

double limbThickness(const anatomy::BoneName& name, const GuideThickness& t) {
  if (ofHeadOrFoot(name)) return t.headAndFeet;
  if (name.kind == BoneKind::Humerus || name.kind == BoneKind::Femur) return t.upperLimbs;
  const Region region = regionOf(name);
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

Grown grownBones(const PosedSkeleton& skeleton, const SignedDistances& fields, const GuideThickness& t, double voxel) {
  Grown grown;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (!fields[i]) continue;
    const anatomy::BoneName& name = skeleton.specimen.bones[i].name;
    const bool tip = ofHeadOrFoot(name);
    const double limb = limbThickness(name, t) * (t.muscle > 0 && !tip ? kUnderMuscle : 1);
    (limb >= 0 ? grown.limbs : grown.column)
        .push_back({fields[i], skeleton.X_WB[i],
                    std::max(limb >= 0 ? limb : skinOf(skeleton.specimen, name, t), (tip ? kLeastSkin : 1) * voxel)});
  }
  return grown;
}

double greatestThickness(const GuideThickness& t) {
  return std::max({t.headAndFeet, t.neck, t.neckBase, t.trunk, t.tailBase, t.upperLimbs, t.lowerLimbs, 0.02});
}

}  // namespace

TriangleMesh bodyGuide(const PosedSkeleton& skeleton, const BodyGuideOptions& options) {
  const double longest = boundsOf(skeleton).sizes().maxCoeff();
  const double voxel = options.voxel > 0 ? options.voxel : longest / 800;
  LevelSetOptions levels;
  // A level set reaches eight of its voxels beyond the bone.
  const double blend = std::max(options.thickness.lowerLimbs, 0.02);
  levels.voxel = std::max((greatestThickness(options.thickness) + blend) / 7, voxel / 2);
  levels.task = options.task.part(0, 0.3);
  const BoneDistanceFields spaces = boneDistanceFields(skeleton, 4000, levels);
  if (options.task.cancelled()) return {};
  const Grown grown = grownBones(skeleton, spaces.fields, options.thickness, voxel);
  const Shape masses =
      smoothUnion({guideTube(skeleton, options.thickness), muscleMasses(skeleton, options.thickness)}, kFlow * longest);
  const Shape soft = smoothUnion({masses, posedShape(grown.limbs, {}, blend, {options.task})}, blend);
  const Shape shape = smoothUnion({soft, posedShape(grown.column, {}, 0, {options.task})},
                                  std::max(voxel, kUnderSkin * options.thickness.trunk));
  if (shape.empty()) throw reason::Failure(fault::kNoBonesForGuide);
  try {
    const Components pieces = solidComponents(meshAllSurfaces(shape, voxel), 64 * voxel * voxel * voxel);
    options.task.tell(0.8);
    const TriangleMesh even = smoothed(pieces.mesh, kEvenings);
    TriangleMesh mesh = options.triangles > 0 ? simplified(even, options.triangles, options.task.quiet()) : even;
    if (options.task.cancelled()) return {};
    options.task.tell(1);
    return mesh;
  } catch (const Stopped&) {
    return {};
  }
}

namespace {

using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::BoneName;

/// Cervicals first, then down to the tip of the tail.
std::vector<BoneIndex> column(const PosedSkeleton& skeleton) {
  std::vector<BoneIndex> bones;
  for (const BoneKind kind : anatomy::kColumnKinds)
    for (int number = 1;; ++number) {
      const auto bone = skeleton.specimen.findBone(toId(BoneName{kind, number, 0, anatomy::Side::Midline}));
      if (!bone) break;
      bones.push_back(*bone);
    }
  return bones;
}

/// Bones that lie along several vertebrae and give the trunk its outline.
bool spansTrunk(BoneKind kind) {
  switch (kind) {
    case BoneKind::DorsalRib:
    case BoneKind::SternalPlate:
    case BoneKind::Scapula:
    case BoneKind::Coracoid:
    case BoneKind::Ilium:
    case BoneKind::Pubis:
    case BoneKind::Ischium:
      return true;
    default:
      return false;
  }
}

using Cloud = std::vector<Eigen::Vector3d>;

void addVertices(const PosedSkeleton& skeleton, BoneIndex bone, Cloud& out) {
  const auto& mesh = skeleton.meshes[bone.value];
  if (!mesh || mesh->levels.empty()) return;
  for (const Eigen::Vector3f& p : mesh->levels.back().positions)
    out.push_back(skeleton.X_WB[bone.value] * p.cast<double>());
}

/// Vertices of what spans the trunk; of one vertebra and its own chevron.
Cloud trunkCloud(const PosedSkeleton& skeleton) {
  Cloud cloud;
  for (std::size_t i = 0; i < skeleton.specimen.bones.size(); ++i)
    if (spansTrunk(skeleton.specimen.bones[i].name.kind)) addVertices(skeleton, {i}, cloud);
  return cloud;
}

Cloud ownCloud(const PosedSkeleton& skeleton, BoneIndex vertebra) {
  Cloud cloud;
  addVertices(skeleton, vertebra, cloud);
  const BoneName& name = skeleton.specimen[vertebra].name;
  if (name.kind != BoneKind::Caudal) return cloud;
  const auto chevron =
      skeleton.specimen.findBone(toId(BoneName{BoneKind::Chevron, name.number, 0, anatomy::Side::Midline}));
  if (chevron) addVertices(skeleton, *chevron, cloud);
  return cloud;
}

/// What leans over from the neighbours counts where it lies: chevrons and spines slope back past the next vertebra.
Cloud nearCloud(const std::vector<Cloud>& own, std::size_t i) {
  Cloud cloud;
  for (std::size_t k = i > 1 ? i - 2 : 0; k < std::min(i + 3, own.size()); ++k)
    cloud.insert(cloud.end(), own[k].begin(), own[k].end());
  return cloud;
}

/// Half the way to the neighbours, m.
double halfSlab(const PosedSkeleton& skeleton, const std::vector<BoneIndex>& bones, std::size_t i) {
  const auto at = [&](std::size_t k) { return skeleton.X_WB[bones[k].value].translation(); };
  const std::size_t before = i > 0 ? i - 1 : i, after = std::min(i + 1, bones.size() - 1);
  return after > before ? 0.6 * (at(after) - at(before)).norm() / static_cast<double>(after - before) : 0.1;
}

/// What of a cloud lies within `half` of the vertebra's own transverse plane, in that plane.
void addSlice(const Cloud& cloud, const Eigen::Isometry3d& X_BW, double half, std::vector<Eigen::Vector2d>& slice) {
  for (const Eigen::Vector3d& p_W : cloud) {
    const Eigen::Vector3d p = X_BW * p_W;
    if (std::abs(p.x()) <= half) slice.emplace_back(p.tail<2>());
  }
}

/// The ellipse of the box around the points, grown towards holding those in its corners.
GuideSection around(const std::vector<Eigen::Vector2d>& slice, BoneIndex vertebra) {
  constexpr double kMostGrown = 1.15;
  Eigen::AlignedBox2d box;
  for (const Eigen::Vector2d& p : slice) box.extend(p);
  const Eigen::Vector2d middle = box.center(), half = box.sizes() / 2;
  double farthest = 1;
  for (const Eigen::Vector2d& p : slice) farthest = std::max(farthest, (p - middle).cwiseQuotient(half).norm());
  const double grown = std::min(farthest, kMostGrown);
  return {vertebra, middle.x(), middle.y(), grown * half.x(), grown * half.y()};
}

bool ofTrunk(const BoneName& name) {
  return regionOf(name) == anatomy::Region::Dorsal || regionOf(name) == anatomy::Region::Sacral;
}
bool besideTrunk(const BoneName& name) { return ofTrunk(name) || (name.kind == BoneKind::Caudal && name.number <= 8); }

/// Skin spans from rib to rib: a section of the trunk holds those before and behind it.
void spanRibs(const PosedSkeleton& skeleton, std::vector<GuideSection>& sections) {
  const std::vector<GuideSection> old = sections;
  const auto inTrunk = [&](std::size_t i) { return ofTrunk(skeleton.specimen[old[i].vertebra].name); };
  for (std::size_t i = 1; i + 1 < old.size(); ++i) {
    if (!inTrunk(i)) continue;
    Eigen::AlignedBox2d box;
    for (const std::size_t k : {i - 1, i, i + 1}) {
      if (!inTrunk(k)) continue;
      const Eigen::Vector2d middle(old[k].y, old[k].z), half(old[k].halfWidth, old[k].halfHeight);
      box.extend(middle - half);
      box.extend(middle + half);
    }
    sections[i] = {old[i].vertebra, box.center().x(), box.center().y(), box.sizes().x() / 2, box.sizes().y() / 2};
  }
}

/// Each number moves towards the mean of its neighbours.
void evenOut(std::vector<GuideSection>& sections, double GuideSection::*field) {
  std::vector<double> old;
  for (const GuideSection& s : sections) old.push_back(s.*field);
  for (std::size_t i = 1; i + 1 < sections.size(); ++i)
    sections[i].*field = 0.5 * old[i] + 0.25 * (old[i - 1] + old[i + 1]);
}

/// 0 up to `from`, 1 from `to` on, straight between.
double ramp(double x, double from, double to) { return std::clamp((x - from) / std::max(to - from, 1e-9), 0.0, 1.0); }

double mix(double a, double b, double share) { return a + (b - a) * share; }

}  // namespace

std::vector<GuideSection> guideSections(const PosedSkeleton& skeleton) {
  const std::vector<BoneIndex> bones = column(skeleton);
  const Cloud trunk = trunkCloud(skeleton);
  std::vector<Cloud> own;
  for (const BoneIndex bone : bones) own.push_back(ownCloud(skeleton, bone));
  std::vector<GuideSection> sections;
  for (std::size_t i = 0; i < bones.size(); ++i) {
    const Eigen::Isometry3d X_BW = skeleton.X_WB[bones[i].value].inverse();
    const double half = halfSlab(skeleton, bones, i);
    std::vector<Eigen::Vector2d> slice;
    addSlice(nearCloud(own, i), X_BW, half, slice);
    if (besideTrunk(skeleton.specimen[bones[i]].name)) addSlice(trunk, X_BW, half, slice);
    if (!slice.empty()) sections.push_back(around(slice, bones[i]));
  }
  spanRibs(skeleton, sections);
  for (int pass = 0; pass < 3; ++pass)
    for (const auto field : {&GuideSection::y, &GuideSection::z, &GuideSection::halfWidth, &GuideSection::halfHeight})
      evenOut(sections, field);
  return sections;
}

double columnThickness(const anatomy::Specimen& specimen, const BoneName& vertebra, const GuideThickness& t) {
  const anatomy::RegionCounts& counts = specimen.counts;
  const double n = vertebra.number;
  switch (vertebra.kind) {
    case BoneKind::Cervical:
      return mix(t.neck, t.neckBase, ramp(n, 0.6 * counts.cervical, counts.cervical));
    case BoneKind::Dorsal:
      return mix(t.neckBase, t.trunk, ramp(n, 1, 4));
    case BoneKind::Lumbar:
      return t.trunk;
    case BoneKind::Sacral:
      return mix(t.trunk, t.tailBase, ramp(n, 1, counts.sacral));
    case BoneKind::Caudal:
      return t.tailBase * (1 - ramp(n, 1, counts.caudal / 3.0));
    default:
      return 0;
  }
}

Section grownSection(const PosedSkeleton& skeleton, const std::vector<GuideSection>& sections, std::size_t i,
                     const GuideThickness& thickness) {
  const GuideSection& section = sections[i];
  const BoneName& name = skeleton.specimen[section.vertebra].name;
  const double added = columnThickness(skeleton.specimen, name, thickness);
  // The multiples set in over the first caudals, where the thickness still adds.
  const double tail = name.kind == BoneKind::Caudal ? ramp(name.number, 0, 4) : 0;
  return {section.halfWidth * mix(1, thickness.tailWidth, tail) + added,
          section.halfHeight * mix(1, thickness.tailHeight, tail) + added};
}

namespace {

/// A tube's section changes in a straight line from knot to knot, which shows as rings: more knots, on curves.
std::vector<Knot> refined(const std::vector<Knot>& knots) {
  constexpr int kSteps = 6;
  std::vector<Knot> fine;
  for (std::size_t i = 0; i + 1 < knots.size(); ++i) {
    const Knot &a = knots[i > 0 ? i - 1 : 0], &b = knots[i], &c = knots[i + 1],
               &d = knots[std::min(i + 2, knots.size() - 1)];
    for (int k = 0; k < kSteps; ++k) {
      const double t = static_cast<double>(k) / kSteps;
      const auto size = [&](double Section::*half) {
        return catmullRom(a.section.*half, b.section.*half, c.section.*half, d.section.*half, t);
      };
      fine.push_back({catmullRom<Point>(a.at, b.at, c.at, d.at, t),
                      {size(&Section::wide), size(&Section::thick)},
                      ((1 - t) * b.wideDirection + t * c.wideDirection).normalized()});
    }
  }
  if (!knots.empty()) fine.push_back(knots.back());
  return fine;
}

}  // namespace

Shape guideTube(const PosedSkeleton& skeleton, const GuideThickness& thickness) {
  const std::vector<GuideSection> sections = guideSections(skeleton);
  std::vector<Knot> knots;
  for (std::size_t i = 0; i < sections.size(); ++i) {
    const Eigen::Isometry3d& X_WB = skeleton.X_WB[sections[i].vertebra.value];
    knots.push_back({X_WB * Point(0, sections[i].y, sections[i].z), grownSection(skeleton, sections, i, thickness),
                     X_WB.linear().col(1)});
  }
  return tube(refined(knots), Point::UnitY());
}

}  // namespace zyga::solid
