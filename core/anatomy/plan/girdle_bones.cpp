#include <algorithm>
#include <cmath>

#include "core/anatomy/characters.h"
#include "core/anatomy/plan/limb_rig.h"
#include "core/anatomy/specimen_reasons.h"

// Ratios in this file place bones against each other; they are common practice, no source, unless they say otherwise.
namespace zyga::anatomy {

namespace {

using Eigen::Isometry3d;
using Eigen::Vector3d;

/// The front of the trunk stands raised by about this much, so that the blade is laid steeper against its vertebra.
constexpr double kTrunkRise = 11;
/// The blade's origin, about which it slides on the ribs, below its upper end, share of its length.
constexpr double kBladePivot = 0.35;
/// Radius of the ribs' bow under the blade, share of the blade's distance from the mid-plane.
constexpr double kBarrel = 0.9;
constexpr double kSocketDepth = 0.90;  ///< of the shoulder socket below the blade's upper end, share of its length
constexpr double kBladeHug = 0.080;  ///< how far the bent blade's lower end lies inside its middle, share of its length
constexpr double kBladeLean = 0.13;  ///< how far its lower end may lie inside its upper one, share of its length
constexpr double kBladeTurn =
    0.11;  ///< how far its front edge may turn inward over a quarter of its length, share of it

/// Half the width of the ribcage around one place, from the marked points of the ribs at rest.
class Cage {
 public:
  Cage(const Specimen& specimen, BoneIndex carrier) {
    const std::vector<Isometry3d> X_RB = restFrames(specimen);
    const Isometry3d X_CR = X_RB[carrier.value].inverse();
    for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
      const Bone& bone = specimen.bones[i];
      if (bone.name.kind != BoneKind::DorsalRib || bone.name.side != Side::Left || bone.name.number > 6) continue;
      const Isometry3d X_CB = X_CR * X_RB[i];
      ribs_.push_back(
          {X_CB * bone.landmark("tuberculum"), X_CB * bone.landmark("middle"), X_CB * bone.landmark("tip")});
    }
  }

  bool empty() const { return ribs_.empty(); }

  /// Half width in m at (x, z) of the carrying vertebra's frame, between the two ribs next to x.
  double halfWidth(double x, double z) const {
    const Rib* before = nullptr;  // the nearest rib in front of x, and behind it
    const Rib* after = nullptr;
    for (const Rib& rib : ribs_) {
      if (rib.xAt(z) >= x && (!before || rib.xAt(z) < before->xAt(z))) before = &rib;
      if (rib.xAt(z) < x && (!after || rib.xAt(z) > after->xAt(z))) after = &rib;
    }
    if (!before || !after) return (before ? before : after)->yAt(z);
    const double t = (before->xAt(z) - x) / (before->xAt(z) - after->xAt(z));
    return std::lerp(before->yAt(z), after->yAt(z), t);
  }

  /// Height of the ribs' lower ends nearest to x, m.
  double floor(double x) const {
    const auto nearest = std::min_element(ribs_.begin(), ribs_.end(), [x](const Rib& a, const Rib& b) {
      return std::abs(a.tip.x() - x) < std::abs(b.tip.x() - x);
    });
    return nearest->tip.z();
  }

 private:
  struct Rib {
    Vector3d head, middle, tip;

    /// Quarter of an ellipse above and below the widest point, which is where the bow of a rib lies.
    double yAt(double z) const {
      const Vector3d& end = z > middle.z() ? head : tip;
      const double u = std::clamp((z - middle.z()) / (end.z() - middle.z()), 0.0, 1.0);
      return end.y() + (middle.y() - end.y()) * std::sqrt(1 - u * u);
    }
    /// A rib bows back between its ends.
    double xAt(double z) const {
      const Vector3d& end = z > middle.z() ? head : tip;
      const double u = std::clamp((z - middle.z()) / (end.z() - middle.z()), 0.0, 1.0);
      return middle.x() + u * u * (end.x() - middle.x());
    }
  };
  std::vector<Rib> ribs_;
};

BoneIndex carrierOf(const Specimen& specimen) {
  for (const char* id : {"D3", "D2", "D1"}) {
    if (const auto bone = specimen.findBone(id)) return *bone;
  }
  throw reason::Failure(specimen::kNoShoulder);
}

double outside(const Cage& cage, const Vector3d& place, double bladeLength) {
  const double clearance = 0.058 * bladeLength;  // half the blade, half a rib, and room
  if (cage.empty()) return 0.30 * bladeLength + clearance;
  return cage.halfWidth(place.x(), place.z()) + clearance;
}

/// Unit normal of the cage beside a place, in the plane across the trunk.
Vector3d outward(const Cage& cage, const Vector3d& place, double bladeLength) {
  if (cage.empty()) return Vector3d::UnitY();
  const double step = 0.08 * bladeLength;
  const double widening = cage.halfWidth(place.x(), place.z() + step) - cage.halfWidth(place.x(), place.z() - step);
  return Vector3d(0, 2 * step, -widening).normalized();
}

/// The blade on the outside of the ribs, in the frame of the vertebra that carries it: origin and turn.
Isometry3d bladeOnCage(const Cage& cage, double length, double slopeInDegrees) {
  const double slope = radians(slopeInDegrees + kTrunkRise);
  const Vector3d down(std::cos(slope), 0, -std::sin(slope));
  Vector3d upper = -kBladePivot * length * down + Vector3d(0.06 * length, 0, -0.07 * length);
  Vector3d lower = upper + kSocketDepth * length * down;
  upper.y() = outside(cage, upper, length);
  lower.y() = outside(cage, lower, length);
  // Between its ends the blade must clear the bow of the ribs: each place that does not pushes both ends out by its
  // share of the way between them.
  const Vector3d hindEdge = 0.09 * length * Vector3d(-std::sin(slope), 0, -std::cos(slope));
  for (int round = 0; round < 4; ++round) {
    for (const double share : {0.2, 0.35, 0.5, 0.65, 0.8}) {
      const Vector3d place = upper + share * (lower - upper);
      const double needed = std::max(outside(cage, place, length), outside(cage, place + hindEdge, length));
      const double lift = std::max(needed - place.y(), 0.0);
      const double norm = share * share + (1 - share) * (1 - share);
      upper.y() += lift * (1 - share) / norm;
      lower.y() += lift * share / norm;
    }
  }
  lower.y() = std::max(lower.y(), upper.y() - kBladeLean * length);
  const Vector3d up = (upper - lower).normalized();
  // Across the blade the cage narrows forward; the plate turns with it.
  const Vector3d front = lower + Vector3d(0.25 * length, 0, 0);
  const double narrowing = std::clamp(lower.y() - outside(cage, front, length), 0.0, kBladeTurn * length);
  Isometry3d X_CB = Isometry3d::Identity();
  X_CB.linear() = frameAlong(up, Vector3d(0.25 * length, -narrowing, 0));
  X_CB.translation() = upper - kBladePivot * length * up;
  return X_CB;
}

void addCoracoid(LimbRig& rig, BoneIndex scapula) {
  const BoneIndex coracoid = rig.add(BoneKind::Coracoid);
  const double size = rig.measure(coracoid, Measure::Length);
  rig.mark(coracoid, "proximal", Vector3d::Zero());
  rig.mark(coracoid, "distal", {0, 0, -size});
  const double width = rig.measure(scapula, Measure::DistalWidth);
  const Vector3d seam = rig.landmark(scapula, "bottom") + Vector3d(0.1 * width, 0, 0);
  rig.fix(scapula, coracoid, seam, swungForward(radians(10)));
  rig.grow(coracoid, scapula);
}

void addSternalPlate(LimbRig& rig, BoneIndex carrier, const Cage& cage, const Isometry3d& X_CScapula,
                     const Vector3d& p_SSocket) {
  const BoneIndex plate = rig.add(BoneKind::SternalPlate);
  const double length = rig.measure(plate, Measure::Length), width = rig.measure(plate, Measure::Width);
  rig.mark(plate, "proximal", {0.5 * length, 0, 0});
  rig.mark(plate, "distal", {-0.5 * length, 0, 0});
  const Vector3d socket = X_CScapula * p_SSocket;
  // Close behind and between the coracoids, inside the lower end of the second rib, high enough that the arms pass
  // beside it.
  const double x = socket.x() - 0.05 * length;
  double z = socket.z() + 0.10 * length;
  if (!cage.empty()) z = std::clamp(cage.floor(x) + 0.30 * length, z - 0.15 * length, z + 0.10 * length);
  // The chest is a shallow keel: each plate falls towards the mid-plane and rises towards the front.
  const Eigen::Matrix3d tilt = Eigen::AngleAxisd(radians(-16), Vector3d::UnitY()).toRotationMatrix() *
                               Eigen::AngleAxisd(radians(14), Vector3d::UnitX()).toRotationMatrix();
  rig.fix(carrier, plate, {x, 0.54 * width, z}, tilt);
}

/// Pubis and ischium share the socket with the ilium and meet their fellows in the mid-plane at their lower ends.
void addLowerPelvis(LimbRig& rig, BoneIndex ilium, BoneKind kind, double forward, double halfWidth) {
  const BoneIndex bone = rig.add(kind);
  const double length = rig.measure(bone, Measure::Length);
  const double angle = radians(forward);
  const double inward = std::min(halfWidth - 0.035 * length, 0.8 * length);
  const double along = std::sqrt(length * length - inward * inward);
  const Vector3d end(along * std::sin(angle), -inward, -along * std::cos(angle));
  rig.mark(bone, "proximal", Vector3d::Zero());
  rig.mark(bone, "distal", {0, 0, -length});
  rig.mark(bone, "top", Vector3d::Zero());
  rig.mark(bone, "bottom", {0, 0, -length});
  const Eigen::Matrix3d R_IB = frameAlong(-end, Vector3d::UnitX());
  const Vector3d p_IMiddle(end.x(), -halfWidth, end.z());
  rig.mark(bone, "middle", R_IB.transpose() * p_IMiddle);
  rig.fix(ilium, bone, Vector3d::Zero(), R_IB);
}

}  // namespace

SacrumMiddle sacrumMiddle(const Specimen& specimen) {
  const int middle = (specimen.counts.sacral + 1) / 2;
  const auto bone = specimen.findBone("S" + std::to_string(middle));
  if (!bone) throw reason::Failure({specimen::kNoSacral, {reason::text("S" + std::to_string(middle))}});
  const bool between = specimen.counts.sacral % 2 == 0;
  return {*bone, between ? -specimen[*bone].measures.value(Measure::Length) / 2 : 0};
}

BoneIndex addShoulderGirdle(LimbRig& rig) {
  const BoneIndex carrier = carrierOf(rig.specimen());
  const Cage cage(rig.specimen(), carrier);
  const BoneIndex scapula = rig.add(BoneKind::Scapula);
  const double length = rig.measure(scapula, Measure::Length);
  const double socketWidth = 0.30 * rig.measure(scapula, Measure::DistalWidth);
  const double bottom = -(1 - kBladePivot) * length;
  rig.mark(scapula, "proximal", Vector3d::Zero());
  rig.mark(scapula, "top", {0, 0, kBladePivot * length});
  rig.mark(scapula, "bottom", {0, 0, bottom});
  // On the hind edge of the seam with the coracoid, where it opens down and back.
  rig.mark(scapula, "distal", {-0.55 * socketWidth, -kBladeHug * length, bottom - 0.055 * length});
  const Isometry3d X_CScapula = bladeOnCage(cage, length, charactersOf(rig.specimen().plan).limbs.bladeSlope);
  // The mid-plane of the chest, towards which the coracoid is bent.
  const double width = rig.measure(scapula, Measure::DistalWidth);
  Vector3d breast = X_CScapula * Vector3d(0.55 * width, 0, bottom - 0.24 * length);
  breast.y() = 0;
  rig.mark(scapula, "breast", X_CScapula.inverse() * breast);
  // The blade glides over the barrel of the ribs: its joint turns about a point inside the barrel, under the blade's
  // origin. The first angle tilts the blade, the second slides it along the ribs, the third around the chest.
  const Vector3d p_COrigin = X_CScapula.translation();
  const Vector3d p_CBarrel = p_COrigin - kBarrel * p_COrigin.y() * outward(cage, p_COrigin, length);
  rig.glide("scapula", carrier, scapula, p_COrigin, p_CBarrel, limitsInDegrees({-20, 20}, {-10, 10}, {-4, 4}),
            X_CScapula.linear());
  addCoracoid(rig, scapula);
  addSternalPlate(rig, carrier, cage, X_CScapula, rig.landmark(scapula, "distal"));
  return scapula;
}

BoneIndex addPelvis(LimbRig& rig) {
  const auto [sacral, forward] = sacrumMiddle(rig.specimen());
  const BoneIndex ilium = rig.add(BoneKind::Ilium);
  const double length = rig.measure(ilium, Measure::Length), height = rig.measure(ilium, Measure::Height);
  const auto& landmarks = rig.specimen()[sacral].landmarks;
  const auto process = landmarks.find("diapophysis.L");
  const double halfWidth = process == landmarks.end() ? 0.28 * length : process->second.y() + 0.055 * length;
  rig.mark(ilium, "proximal", Vector3d::Zero());
  rig.mark(ilium, "distal", Vector3d::Zero());
  rig.mark(ilium, "front", {0.56 * length, 0.10 * length, 0.40 * height});
  rig.mark(ilium, "back", {-0.44 * length, 0, 0.32 * height});
  rig.mark(ilium, "crest", {0.10 * length, 0.02 * length, 0.80 * height});
  rig.fix(sacral, ilium, {forward, halfWidth, -0.33 * height});
  addLowerPelvis(rig, ilium, BoneKind::Pubis, 42, halfWidth);
  addLowerPelvis(rig, ilium, BoneKind::Ischium, -52, halfWidth);
  return ilium;
}

}  // namespace zyga::anatomy
