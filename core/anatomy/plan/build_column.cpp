#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/anatomy/characters.h"
#include "core/anatomy/condyle.h"
#include "core/anatomy/plan/build_specimen.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

constexpr double deg(double degrees) { return degrees * std::numbers::pi / 180; }

/// Turns x towards z: what lies cranial goes up.
Eigen::Matrix3d pitch(double angle) { return Eigen::AngleAxisd(-angle, Vector3d::UnitY()).toRotationMatrix(); }

const Vector3d kRight{1, -1, 1};  // multiplies a left point into its mirror

void setPair(Bone& bone, const std::string& name, const Vector3d& left) {
  bone.landmarks[name + ".L"] = left;
  bone.landmarks[name + ".R"] = left.cwiseProduct(kRight);
}

/// m; a swelling of less than 2 % of the length is a flat face, not a ball.
double ballDepth(const Bone& bone) {
  const double length = bone.measures.value(Measure::Length);
  const double depth = bone.measures.valueOr(Measure::LengthWithCondyle, length) - length;
  return depth < 0.02 * length ? 0 : depth;
}

/// Whether a bone's ball, if it has one, lies behind.
bool hasBallBehind(const Bone& bone, const Specimen& specimen) {
  return bone.name.kind == BoneKind::Caudal && charactersOf(specimen.plan).column.procoelousTail > 0;
}

/// Distance from the base of a condyle to the centre about which it turns, out of the bone positive: the condyle is a
/// cap of this depth over a rim of 0.45 cotyle heights (program default, no source), R = (r^2 + d^2) / 2d.
double ballCentre(const Bone& bone) {
  const double depth = ballDepth(bone);
  if (depth <= 0) return 0;
  const double rim = 0.45 * bone.measures.value(Measure::CotyleHeight);
  return -turningDepth((rim * rim + depth * depth) / (2 * depth) - depth, depth);
}

/// Forward shift of a spine's top against the middle of its centrum, m. The spines of the tail lean back, more from the
/// first to the middle of the tail.
double spineLean(const Bone& bone, const Specimen& specimen) {
  const double length = bone.measures.value(Measure::Length);
  if (bone.name.kind == BoneKind::Cervical) return 0.08 * length;
  if (bone.name.kind != BoneKind::Caudal) return -0.12 * length;
  const Ends lean = charactersOf(specimen.plan).column.caudalLean;
  const double share = std::min(1.0, 2 * (bone.name.number - 1.0) / std::max(1, specimen.counts.caudal));
  const double tall = bone.measures.value(Measure::SpineHeight) - 0.85 * bone.measures.value(Measure::CotyleHeight);
  return -0.10 * length - std::tan(deg(std::lerp(lean.first, lean.last, share))) * std::max(0.0, tall);
}

void setCentrumLandmarks(Bone& bone, double lean, bool ballBehind) {
  const double half = 0.5 * bone.measures.value(Measure::Length);
  const double H = bone.measures.value(Measure::CotyleHeight);
  bone.landmarks["cranialRim"] = Vector3d(half, 0, 0);
  bone.landmarks["caudalRim"] = Vector3d(-half, 0, 0);
  const double depth = ballDepth(bone), centre = ballCentre(bone);
  bone.landmarks["condyleTip"] = Vector3d(ballBehind && depth > 0 ? -half - depth : half + depth, 0, 0);
  // The end that takes a neighbour's condyle is moved when that is known.
  bone.landmarks["cranial"] = Vector3d(ballBehind ? half : half + centre, 0, 0);
  bone.landmarks["caudal"] = Vector3d(ballBehind ? -half - centre : -half, 0, 0);
  bone.landmarks["canal"] = Vector3d(0, 0, 0.62 * H);
  bone.landmarks["spineTop"] = Vector3d(lean, 0, bone.measures.value(Measure::SpineHeight));
}

/// Where the ribs (or the transverse processes) end. The lower joint of a dorsal rib climbs from the centrum to the
/// arch over the first four dorsals (common practice, no source).
void setProcessLandmarks(Bone& bone) {
  const double L = bone.measures.value(Measure::Length);
  const double H = bone.measures.value(Measure::CotyleHeight);
  const double W = bone.measures.value(Measure::CotyleWidth);
  const double out = 0.5 * bone.measures.value(Measure::DiapophysisWidth);
  switch (bone.name.kind) {
    case BoneKind::Cervical:
      setPair(bone, "diapophysis", {0.16 * L, out, -0.12 * H});
      setPair(bone, "parapophysis", {0.24 * L, std::min(0.62 * W, 0.8 * out), -0.46 * H});
      break;
    case BoneKind::Dorsal: {
      const double climb = std::clamp((bone.name.number - 1) / 3.0, 0.0, 1.0);
      setPair(bone, "diapophysis", {0.0, out, std::lerp(0.75, 1.15, climb) * H});
      setPair(bone, "parapophysis",
              {std::lerp(0.30, 0.18, climb) * L, std::lerp(0.54, 0.42, climb) * W, std::lerp(-0.15, 0.85, climb) * H});
      break;
    }
    case BoneKind::Lumbar:
      setPair(bone, "diapophysis", {0.2 * L, out, 0.1 * H});
      break;
    case BoneKind::Sacral:
      setPair(bone, "diapophysis", {0, out, 0.15 * H});
      break;
    default:
      setPair(bone, "diapophysis", {-0.05 * L, out, 0.18 * H});
      break;
  }
}

BoneIndex addVertebra(Specimen& specimen, const MeasurementTable& filled, BoneKind kind, int number) {
  const BoneIndex index = addBone(specimen, filled, {kind, number, 0, Side::Midline});
  Bone& bone = specimen.bones[index.value];
  setCentrumLandmarks(bone, spineLean(bone, specimen), hasBallBehind(bone, specimen));
  setProcessLandmarks(bone);
  return index;
}

/// What the two facets of one end of a bone are built from, m and rad.
struct FacetForm {
  double length, width, height, spread, tilt, offset, pitch, radius;
};

/// A facet by its place as seen from the centre of rotation, along its pitch and square to it, and its distance from
/// the mid-plane, tilted up and inward (prezyg) or down and outward (postzyg).
Facet facetFrom(FacetRole role, const Vector3d& centre, const FacetForm& form) {
  const double side = isLeft(role) ? 1 : -1;
  const double facing = isPrezyg(role) ? 1 : -1;
  const Eigen::Matrix3d R_BFace = pitch(form.pitch);
  Facet facet;
  facet.role = role;
  facet.centre = centre + R_BFace * Vector3d(form.offset, side * form.spread, form.height);
  facet.normal = R_BFace * (facing * Vector3d(0, -side * std::sin(form.tilt), std::cos(form.tilt)));
  facet.slide = R_BFace * Vector3d::UnitX();
  facet.outline = ellipseOutline(form.length, form.width);
  facet.radius = form.radius;
  return facet;
}

bool followsMate(const Cell& cell, const Bone& mate) {
  return !cell.known() || (cell.rule.by == FillBy::MatesWith && cell.rule.from == mate.name);
}

/// A measure of a facet. What was filled from the facet that it meets follows that one, whatever becomes of it, and so
/// does what a table of an older file lacks.
double ownOrMates(const Bone& bone, Measure own, const Bone& mate) {
  const Cell& cell = bone.measures[own];
  return followsMate(cell, mate) ? mate.measures.valueOr(*mateOf(own), cell.value) : cell.value;
}

bool facetsMeet(const Bone& cranial, const Bone& caudal) {
  const bool headJoints = caudal.name.kind == BoneKind::Cervical && caudal.name.number <= 2;
  const bool fused = cranial.name.kind == BoneKind::Sacral && caudal.name.kind == BoneKind::Sacral;
  return !headJoints && !fused && ownOrMates(caudal, Measure::FacetLength, cranial) > 0;
}

/// A pitch that the bone itself shows, not one that halves the turn of the joint or follows its mate.
bool hasOwnPitch(const Bone& bone, Measure pitch, const Bone& mate) {
  const Cell& cell = bone.measures[pitch];
  return !followsMate(cell, mate) && cell.rule.by != FillBy::FacetTurn;
}

/// Pitch of the prezygs and of the postzygs that meet. Where neither bone shows its own, they are laid half of their
/// turn forward on the caudal and half back on the cranial bone, so that they lie on each other when the cranial bone
/// is turned by the whole; a pitch that one bone shows is the other's but for that turn.
std::pair<double, double> pitchesOf(const Bone& cranial, const Bone& caudal) {
  const double turn = turnOfFacets(cranial.measures, caudal.measures);
  const bool prezyg = hasOwnPitch(caudal, Measure::FacetPitch, cranial);
  const bool postzyg = hasOwnPitch(cranial, Measure::PostzygPitch, caudal);
  if (!prezyg && !postzyg) return {0.5 * turn, -0.5 * turn};
  const double shownByPrezyg = caudal.measures.valueOr(Measure::FacetPitch, 0);
  const double shownByPostzyg = cranial.measures.valueOr(Measure::PostzygPitch, 0);
  return {prezyg ? shownByPrezyg : shownByPostzyg + turn, postzyg ? shownByPostzyg : shownByPrezyg - turn};
}

FacetForm formOf(const Bone& bone, bool prezyg, const Bone& mate, double pitch) {
  const auto of = [&](std::size_t i) {
    return ownOrMates(bone, prezyg ? kFacetMates[i].prezyg : kFacetMates[i].postzyg, mate);
  };
  static_assert(kFacetMates[0].prezyg == Measure::FacetLength && kFacetMates[1].prezyg == Measure::FacetWidth &&
                kFacetMates[2].prezyg == Measure::FacetHeight && kFacetMates[3].prezyg == Measure::FacetSpread &&
                kFacetMates[4].prezyg == Measure::FacetTilt && kFacetMates[5].prezyg == Measure::FacetOffset &&
                kFacetMates[7].prezyg == Measure::FacetRadius);
  return {of(0), of(1), of(2), of(3), of(4), of(5), pitch, of(7)};
}

void addFacets(Bone& cranial, Bone& caudal) {
  const auto [prezygPitch, postzygPitch] = pitchesOf(cranial, caudal);
  const FacetForm prezyg = formOf(caudal, true, cranial, prezygPitch);
  const FacetForm postzyg = formOf(cranial, false, caudal, postzygPitch);
  for (const FacetRole role : {FacetRole::PrezygLeft, FacetRole::PrezygRight}) {
    caudal.facets.push_back(facetFrom(role, caudal.landmark("cranial"), prezyg));
  }
  for (const FacetRole role : {FacetRole::PostzygLeft, FacetRole::PostzygRight}) {
    cranial.facets.push_back(facetFrom(role, cranial.landmark("caudal"), postzyg));
  }
}

/// The one of two neighbours whose ball sits in the other; none where flat faces meet.
const Bone* ballBetween(const Bone& cranial, const Bone& caudal) {
  if (hasCondyleBehind(cranial)) return &cranial;
  if (!hasCondyleBehind(caudal) && ballDepth(caudal) > 0) return &caudal;
  return nullptr;
}

JointKind kindOf(const Bone& cranial, const Bone& caudal, const Bone* ball) {
  if (cranial.name.kind == BoneKind::Sacral && caudal.name.kind == BoneKind::Sacral) return JointKind::Fixed;
  if (!facetsMeet(cranial, caudal)) return JointKind::Typed;
  return ball ? JointKind::BallAndSocket : JointKind::FlatFaces;
}

/// Axes of the column: dorsiflexion, left, and "left side rises" are positive whether the distal bone lies cranially or
/// caudally.
std::array<Vector3d, 3> columnAxes(bool distalIsCranial) {
  const double s = distalIsCranial ? 1 : -1;
  return {Vector3d(0, -s, 0), Vector3d(0, 0, s), Vector3d(1, 0, 0)};
}

TypedLimits columnTypedLimits(const Bone& caudal) {
  if (caudal.name.kind == BoneKind::Cervical) {  // atlas on axis
    return typedLimits({deg(-8), deg(8)}, {deg(-6), deg(6)}, {deg(-15), deg(15)});
  }
  return typedLimits({deg(-10), deg(10)}, {deg(-12), deg(12)}, {deg(-4), deg(4)});  // rods of the hind tail
}

/// Joins two neighbours of the column; `distalIsCranial` in neck and trunk.
void addColumnJoint(Specimen& specimen, BoneIndex cranialIndex, BoneIndex caudalIndex, Region region,
                    bool distalIsCranial) {
  Bone& cranial = specimen.bones[cranialIndex.value];
  Bone& caudal = specimen.bones[caudalIndex.value];
  // A seated condyle is centred as far from the cotyle's rim as from its own base.
  const Bone* ball = ballBetween(cranial, caudal);
  if (ball == &cranial)
    caudal.landmarks["cranial"] = caudal.landmark("cranialRim") - Vector3d(ballCentre(cranial), 0, 0);
  else if (ball)
    cranial.landmarks["caudal"] = cranial.landmark("caudalRim") + Vector3d(ballCentre(caudal), 0, 0);
  Joint joint;
  joint.id = cranial.id + "-" + caudal.id;
  joint.kind = kindOf(cranial, caudal, ball);
  joint.region = region;
  joint.proximal = distalIsCranial ? caudalIndex : cranialIndex;
  joint.distal = distalIsCranial ? cranialIndex : caudalIndex;
  joint.axes = columnAxes(distalIsCranial);
  const double wedgeCranial = cranial.measures.value(Measure::Wedge);
  const double wedgeCaudal = caudal.measures.value(Measure::Wedge);
  const Vector3d caudalFace = pitch(0.5 * wedgeCaudal) * Vector3d::UnitX();
  const Vector3d cranialFace = pitch(-0.5 * wedgeCranial) * Vector3d::UnitX();
  const double turn = 0.5 * (wedgeCranial + wedgeCaudal);
  joint.restRotation = pitch(distalIsCranial ? turn : -turn);
  joint.centreProximal = distalIsCranial ? caudal.landmark("cranial") : cranial.landmark("caudal");
  joint.centreDistal = distalIsCranial ? cranial.landmark("caudal") : caudal.landmark("cranial");
  joint.longAxisProximal = distalIsCranial ? caudalFace : Vector3d(-cranialFace);
  joint.longAxisDistal = distalIsCranial ? cranialFace : Vector3d(-caudalFace);
  joint.cartilageShareProximal = joint.kind == JointKind::FlatFaces ? 0.5 : 0;
  joint.centrumLength = caudal.measures.value(Measure::Length);
  if (joint.hasFacets()) addFacets(cranial, caudal);
  if (joint.kind == JointKind::Typed) {
    joint.typed = columnTypedLimits(caudal);
    // Without facets the typed turn is the only word on the neutral posture.
    joint.restRotation =
        joint.restRotation * pitch((distalIsCranial ? 1 : -1) * caudal.measures.value(Measure::FacetTurn));
  }
  specimen.joints.push_back(std::move(joint));
}

/// A bone that hangs unmoving on another, its frame parallel to it, its origin at `at`.
void addFixedJoint(Specimen& specimen, BoneIndex carrier, BoneIndex bone, Region region, const Vector3d& at) {
  Joint joint;
  joint.id = specimen[carrier].id + "-" + specimen[bone].id;
  joint.kind = JointKind::Fixed;
  joint.region = region;
  joint.proximal = carrier;
  joint.distal = bone;
  joint.centreProximal = at;
  specimen.joints.push_back(std::move(joint));
}

void addSacrumAndTail(Specimen& specimen, const MeasurementTable& filled) {
  BoneIndex last = addVertebra(specimen, filled, BoneKind::Sacral, 1);
  const auto append = [&](BoneKind kind, int number, Region region) {
    const BoneIndex next = addVertebra(specimen, filled, kind, number);
    addColumnJoint(specimen, last, next, region, false);
    last = next;
  };
  for (int k = 2; k <= filled.counts.sacral; ++k) append(BoneKind::Sacral, k, Region::Sacral);
  for (int k = 1; k <= filled.counts.caudal; ++k) append(BoneKind::Caudal, k, Region::Caudal);
}

/// Where the rib of each sacral vertebra meets the inner face of the ilium, which hangs on the middle one (addPelvis).
void setYokes(Specimen& specimen, const MeasurementTable& filled) {
  const auto ilium = std::find_if(filled.rows.begin(), filled.rows.end(),
                                  [](const TableRow& row) { return row.name.kind == BoneKind::Ilium; });
  if (ilium == filled.rows.end() || filled.counts.sacral < 1) return;
  const SacrumMiddle middle = sacrumMiddle(specimen);
  const double length = ilium->measures.valueOr(Measure::Length, 0);
  // A little into it, so that no gap is left.
  const double y = specimen[middle.bone].landmark("diapophysis.L").y() + (0.055 + 0.002) * length;
  const auto bone = [&](int k) -> Bone& {
    return specimen.bones[specimen.findBone(toId({BoneKind::Sacral, k, 0, Side::Midline}))->value];
  };
  std::vector<double> behind{0};  // of the middle of each bone, behind that of the first
  for (int k = 2; k <= filled.counts.sacral; ++k)
    behind.push_back(behind.back() +
                     (bone(k - 1).measures.value(Measure::Length) + bone(k).measures.value(Measure::Length)) / 2);
  const double hips = behind[static_cast<std::size_t>(specimen[middle.bone].name.number - 1)] - middle.forward;
  for (int k = 1; k <= filled.counts.sacral; ++k) {
    // The ribs of the first and the last ones sweep towards the ends of the ilium; a front lobe that flares is out of
    // their reach.
    const double reach = std::lerp(0.42, 0.32, charactersOf(specimen.plan).limbs.iliacFlare / 50) * length;
    const double at = behind[static_cast<std::size_t>(k - 1)] - hips;
    const double sweep = at - std::clamp(at, -reach, 0.36 * length);
    setPair(bone(k), "yoke", {sweep, y, 0.02 * bone(k).measures.value(Measure::CotyleHeight)});
  }
}

void addTrunkAndNeck(Specimen& specimen, const MeasurementTable& filled) {
  BoneIndex last{0};
  const auto append = [&](BoneKind kind, int number, Region region) {
    const BoneIndex next = addVertebra(specimen, filled, kind, number);
    addColumnJoint(specimen, next, last, region, true);
    last = next;
  };
  for (int k = filled.counts.lumbar; k >= 1; --k) append(BoneKind::Lumbar, k, Region::Dorsal);
  for (int k = filled.counts.dorsal; k >= 1; --k) append(BoneKind::Dorsal, k, Region::Dorsal);
  for (int k = filled.counts.cervical; k >= 1; --k) append(BoneKind::Cervical, k, Region::Cervical);
}

void addCervicalRib(Specimen& specimen, const MeasurementTable& filled, int number, Side side) {
  const BoneIndex carrier = *specimen.findBone(toId({BoneKind::Cervical, number, 0, Side::Midline}));
  const BoneIndex index = addBone(specimen, filled, {BoneKind::CervicalRib, number, 0, side});
  const std::string suffix = side == Side::Left ? ".L" : ".R";
  Bone& vertebra = specimen.bones[carrier.value];
  Bone& rib = specimen.bones[index.value];
  const Vector3d head = vertebra.landmark("parapophysis" + suffix);
  const Vector3d outer = vertebra.landmark("diapophysis" + suffix);
  const double length = rib.measures.value(Measure::Length);
  const double H = vertebra.measures.value(Measure::CotyleHeight);
  // The shaft runs back below and beside the centra, a little downwards.
  const Vector3d root(head.x(), 0.5 * (head.y() + outer.y()), head.z() - 0.08 * H);
  const Vector3d tip = root + Vector3d(-length, 0.04 * length * (side == Side::Left ? 1 : -1), -0.05 * length);
  vertebra.landmarks["ribTip" + suffix] = tip;
  rib.landmarks["tip"] = tip - head;
  rib.fusedInto = carrier;
  addFixedJoint(specimen, carrier, index, Region::Cervical, head);
}

/// The rib's course in its vertebra's frame: out from the tuberculum to the widest place, then down, leaning back.
struct RibCourse {
  Vector3d tuberculum, middle, tip;
};

/// The course of a rib of this length. `back`: how far the middle bows back out of the straight line, m; `lean`:
/// tangent of the slope of that line.
RibCourse courseWithDrop(const Vector3d& tuberculum, double reach, double drop, double straightness, double back,
                         double lean) {
  const double side = tuberculum.y() < 0 ? -1 : 1;
  const double out = reach;
  RibCourse course;
  course.tuberculum = tuberculum;
  course.middle = {tuberculum.x() - lean * 0.42 * drop - back, side * out, tuberculum.z() - 0.42 * drop};
  course.tip = {tuberculum.x() - lean * drop, side * std::lerp(0.62, 0.92, straightness) * out, tuberculum.z() - drop};
  return course;
}

double lengthOf(const RibCourse& course, const Vector3d& capitulum) {
  // A smooth bow through three points is about 4 % longer than its chords.
  return (course.tuberculum - capitulum).norm() +
         1.04 * ((course.middle - course.tuberculum).norm() + (course.tip - course.middle).norm());
}

void addDorsalRib(Specimen& specimen, const MeasurementTable& filled, int number, Side side) {
  const BoneIndex carrier = *specimen.findBone(toId({BoneKind::Dorsal, number, 0, Side::Midline}));
  const BoneIndex index = addBone(specimen, filled, {BoneKind::DorsalRib, number, 0, side});
  const std::string suffix = side == Side::Left ? ".L" : ".R";
  const Bone& vertebra = specimen[carrier];
  Bone& rib = specimen.bones[index.value];
  const Vector3d head = vertebra.landmark("parapophysis" + suffix);
  const Vector3d outer = vertebra.landmark("diapophysis" + suffix);
  const double length = rib.measures.value(Measure::Length);
  const double reach = std::max(rib.measures.value(Measure::Width), std::abs(outer.y()) + 0.025 * length);
  const double straightness = number <= 2 ? 0.5 : 0.0;
  // Seen from the side ribs bow back by about a tenth of their length, the first ones less (common practice, no
  // source). The last two hang straighter: behind them stand the ribs of the sacrum and the ilium.
  const double free = std::clamp((specimen.counts.dorsal - number) / 2.0, 0.0, 1.0);
  const double back = free * std::clamp(0.04 + 0.02 * number, 0.0, 0.095) * length;
  const double lean = std::lerp(0.02, 0.23, free);  // the tangent of about 13 degrees
  double low = 0, high = 1.2 * length;
  for (int i = 0; i < 60; ++i) {  // the course grows monotonically with its drop
    const double drop = 0.5 * (low + high);
    (lengthOf(courseWithDrop(outer, reach, drop, straightness, back, lean), head) < length ? low : high) = drop;
  }
  const RibCourse course = courseWithDrop(outer, reach, low, straightness, back, lean);
  rib.landmarks["tuberculum"] = course.tuberculum - head;
  rib.landmarks["middle"] = course.middle - head;
  rib.landmarks["tip"] = course.tip - head;
  addFixedJoint(specimen, carrier, index, Region::Ribs, head);
}

void addChevron(Specimen& specimen, const MeasurementTable& filled, int number) {
  const auto carrier = specimen.findBone(toId({BoneKind::Caudal, number, 0, Side::Midline}));
  const BoneIndex index = addBone(specimen, filled, {BoneKind::Chevron, number, 0, Side::Midline});
  const Bone& vertebra = specimen[*carrier];
  Bone& chevron = specimen.bones[index.value];
  const double length = chevron.measures.value(Measure::Length);
  chevron.landmarks["tip"] = Vector3d(-0.42 * length, 0, -0.91 * length);
  const double H = vertebra.measures.value(Measure::CotyleHeight);
  addFixedJoint(specimen, *carrier, index, Region::Chevrons,
                vertebra.landmark("caudalRim") + Vector3d(0, 0, -0.52 * H));
}

}  // namespace

void addColumn(Specimen& specimen, const MeasurementTable& filled) {
  addSacrumAndTail(specimen, filled);
  addTrunkAndNeck(specimen, filled);
  setYokes(specimen, filled);
  for (const TableRow& row : filled.rows) {
    if (row.name.kind == BoneKind::CervicalRib) addCervicalRib(specimen, filled, row.name.number, row.name.side);
    if (row.name.kind == BoneKind::DorsalRib) addDorsalRib(specimen, filled, row.name.number, row.name.side);
    if (row.name.kind == BoneKind::Chevron) addChevron(specimen, filled, row.name.number);
  }
}

}  // namespace zyga::anatomy
