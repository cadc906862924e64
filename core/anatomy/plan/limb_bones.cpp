#include <algorithm>
#include <cmath>
#include <optional>

#include "core/anatomy/characters.h"
#include "core/anatomy/plan/limb_rig.h"

// Ratios in this file place bones against each other; they are common practice, no source.
namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

constexpr double kArmOffset = 0.05;       ///< of the upper arm's shaft outward from its head, share of its length
constexpr double kJointGap = 0.012;       ///< between two long bones, share of the lower one's length
constexpr double kFingerSlope = 24;       ///< of the finger stubs from the vertical, degrees
constexpr double kCrescentStep = 45;      ///< between neighbouring metacarpals on their arc, degrees
constexpr double kCrescentRadius = 0.36;  ///< share of the third metacarpal's length
constexpr double kHandPad = 0.04;         ///< sole that is not bone, share of the third metacarpal's length

struct Elbow {
  BoneIndex humerus;
  double condyle;  ///< radius of the humerus' lower joint, m
};

Elbow addUpperArm(LimbRig& rig, BoneIndex scapula) {
  const BoneIndex humerus = rig.add(BoneKind::Humerus);
  const double length = rig.measure(humerus, Measure::Length);
  const double head = 0.055 * length, condyle = 0.055 * length, out = kArmOffset * length;
  rig.mark(humerus, "proximal", Vector3d::Zero());
  rig.mark(humerus, "distal", {0, out, head + condyle - length});
  rig.mark(humerus, "top", {0, out, head});
  rig.mark(humerus, "bottom", {0, out, head - length});
  rig.mark(humerus, "shaftTop", {0, out, -0.25 * length});
  rig.mark(humerus, "shaftBottom", {0, out, -0.75 * length});
  // The blade's tilt is taken back, so that a humerus at zero hangs upright from a level trunk.
  rig.hang("shoulder", scapula, humerus, rig.landmark(scapula, "distal"),
           limitsInDegrees({-65, 40}, {-12, 30}, {-30, 30}), rig.attitude(scapula).transpose());
  return {humerus, condyle};
}

/// Ulna and radius end level at the wrist; what the ulna is longer rises behind the elbow.
BoneIndex addForearm(LimbRig& rig, const Elbow& elbow) {
  const BoneIndex ulna = rig.add(BoneKind::Ulna);
  const BoneIndex radius = rig.add(BoneKind::Radius);
  const double ulnaLength = rig.measure(ulna, Measure::Length), radiusLength = rig.measure(radius, Measure::Length);
  const double headWidth = rig.measure(ulna, Measure::ProximalWidth);
  const double face = -elbow.condyle - kJointGap * radiusLength;
  const double end = face - radiusLength;
  const Vector3d wrist(0, 0, end - 0.5 * kJointGap * radiusLength);
  const Vector3d top(-0.16 * headWidth, 0.08 * headWidth, end + ulnaLength);
  const Vector3d bottom(-0.10 * headWidth, 0.27 * headWidth, end);
  rig.mark(ulna, "proximal", Vector3d::Zero());
  rig.mark(ulna, "distal", wrist);
  rig.mark(ulna, "face", {0, 0, face});
  rig.mark(ulna, "top", top);
  rig.mark(ulna, "bottom", bottom);
  rig.mark(ulna, "shaftTop", top + 0.25 * (bottom - top));
  rig.mark(ulna, "shaftBottom", top + 0.8 * (bottom - top));
  rig.hang("elbow", elbow.humerus, ulna, rig.landmark(elbow.humerus, "distal"),
           limitsInDegrees({-3, 95}, {0, 0}, {0, 0}));

  // In front of the ulna at the elbow, on its inner side at the wrist.
  const Vector3d head(0.27 * headWidth, 0.03 * headWidth, face), foot(0.10 * headWidth, -0.29 * headWidth, end);
  rig.mark(radius, "proximal", Vector3d::Zero());
  rig.mark(radius, "distal", {0, 0, -radiusLength});
  rig.mark(radius, "top", Vector3d::Zero());
  rig.mark(radius, "bottom", {0, 0, -radiusLength});
  rig.mark(radius, "shaftTop", {0, 0, -0.2 * radiusLength});
  rig.mark(radius, "shaftBottom", {0, 0, -0.8 * radiusLength});
  rig.fix(ulna, radius, head, frameAlong(head - foot, Vector3d::UnitX()));
  return ulna;
}

BoneIndex addWrist(LimbRig& rig, BoneIndex ulna) {
  const BoneIndex inner = rig.add(BoneKind::Carpal, 1), outer = rig.add(BoneKind::Carpal, 2);
  for (BoneIndex carpal : {inner, outer}) {
    const double height = rig.measure(carpal, Measure::Height);
    rig.mark(carpal, "proximal", Vector3d::Zero());
    rig.mark(carpal, "distal", {0, 0, -height});
  }
  rig.hang("wrist", ulna, inner, rig.landmark(ulna, "distal"), limitsInDegrees({-80, 35}, {-12, 12}, {-15, 15}));
  const double width = rig.measure(inner, Measure::Width) + rig.measure(outer, Measure::Width);
  rig.mark(inner, "middle", {0, -0.22 * width, -rig.measure(inner, Measure::Height) / 2});
  rig.mark(outer, "middle", {0, 0, -rig.measure(outer, Measure::Height) / 2});
  rig.fix(inner, outer, {-0.02 * width, 0.30 * width, 0});
  return inner;
}

void markMetacarpal(LimbRig& rig, BoneIndex bone) {
  const double length = rig.measure(bone, Measure::Length);
  const double condyle = 0.45 * rig.measure(bone, Measure::ShaftWidth);
  rig.mark(bone, "proximal", Vector3d::Zero());
  rig.mark(bone, "distal", {0, 0, condyle - length});
  rig.mark(bone, "top", Vector3d::Zero());
  rig.mark(bone, "bottom", {0, 0, -length});
  rig.mark(bone, "shaftTop", {0, 0, -0.2 * length});
  rig.mark(bone, "shaftBottom", {0, 0, -0.8 * length});
}

/// The five stand side by side on an arc that is open behind, the third in front.
void placeMetacarpal(LimbRig& rig, BoneIndex carpal, BoneIndex bone, int digit, double thirdLength) {
  const double turn = radians(kCrescentStep * (digit - 3));
  const double radius = kCrescentRadius * thirdLength;
  // A shorter bone gives up half of what it lacks above, under the domed wrist, and half below.
  const double drop = std::max(0.0, thirdLength - rig.measure(bone, Measure::Length)) / 2;
  const Vector3d place(radius * (std::cos(turn) - 0.6), radius * std::sin(turn),
                       -rig.measure(carpal, Measure::Height) - 0.012 * thirdLength - drop);
  rig.fix(carpal, bone, place, Eigen::AngleAxisd(turn, Vector3d::UnitZ()).toRotationMatrix());
}

BoneIndex addFingerBase(LimbRig& rig, BoneIndex metacarpal, int digit) {
  const BoneIndex bone = rig.add(BoneKind::ManusPhalanx, digit, 1);
  markPhalanx(rig, bone, rig.landmark(metacarpal, "distal").z() - rig.landmark(metacarpal, "bottom").z());
  const double slope = digit == 1 ? 60 : kFingerSlope;
  rig.hang("manus" + std::to_string(digit) + ".1", metacarpal, bone, rig.landmark(metacarpal, "distal"),
           limitsInDegrees({-25, 25}, {0, 0}, {0, 0}), swungForward(radians(slope)));
  return bone;
}

/// The thumb claw lies along the inner edge of the hand, turned back, clear of the ground.
void addThumbClaw(LimbRig& rig, BoneIndex base) {
  const BoneIndex claw = rig.add(BoneKind::ManusPhalanx, 1, 2);
  markPhalanx(rig, claw, rig.landmark(base, "distal").z() - rig.landmark(base, "bottom").z());
  const Eigen::Matrix3d back = Eigen::AngleAxisd(radians(-62), Vector3d::UnitX()).toRotationMatrix();
  rig.hang("manus1.2", base, claw, rig.landmark(base, "distal"), limitsInDegrees({-40, 20}, {0, 0}, {0, 0}),
           back * swungForward(radians(14)));
}

/// Under the hand as it stands: below the finger stub, or the metacarpal where there is none, with a sole that is not
/// bone.
void markHandSole(LimbRig& rig, BoneIndex metacarpal, std::optional<BoneIndex> finger) {
  const double slope = radians(kFingerSlope);
  const double drop = finger ? -rig.landmark(*finger, "bottom").z() * std::cos(slope) +
                                   rig.measure(*finger, Measure::Height) * std::sin(slope) / 2
                             : rig.landmark(metacarpal, "distal").z() - rig.landmark(metacarpal, "bottom").z();
  rig.mark(
      metacarpal, "sole",
      rig.landmark(metacarpal, "distal") - Vector3d(0, 0, drop + kHandPad * rig.measure(metacarpal, Measure::Length)));
}

void addHand(LimbRig& rig, BoneIndex carpal) {
  std::array<BoneIndex, 5> palm;
  for (int digit = 1; digit <= 5; ++digit) palm[digit - 1] = rig.add(BoneKind::Metacarpal, digit);
  const double third = rig.measure(palm[2], Measure::Length);
  for (int digit = 1; digit <= 5; ++digit) {
    markMetacarpal(rig, palm[digit - 1]);
    placeMetacarpal(rig, carpal, palm[digit - 1], digit, third);
  }
  for (int digit = 1; digit <= 5; ++digit) {
    if (charactersOf(rig.specimen().plan).limbs.fingerBones == 0) {
      markHandSole(rig, palm[digit - 1], std::nullopt);
      continue;
    }
    const BoneIndex finger = addFingerBase(rig, palm[digit - 1], digit);
    markHandSole(rig, palm[digit - 1], finger);
    if (digit == 1) addThumbClaw(rig, finger);
  }
}

constexpr double kHeadOffset = 0.105;  ///< of the thigh's shaft outward from its head, share of its length
constexpr double kFirstToe = 22;       ///< of a toe's first bone against its metatarsal, degrees
constexpr double kNextToe = 4;         ///< of each further bone against the one before, degrees
constexpr double kToeSpread = 7;       ///< between neighbouring metatarsals, degrees
constexpr double kFootPad = 0.05;      ///< sole that is not bone, share of the third metatarsal's length
constexpr std::array<int, 5> kToeBones{2, 3, 4, 2, 1};

constexpr double kBentShare = 0.33;  ///< of the thigh bone that may be bent inward at its upper end

/// Turn that swings what hangs along -z outward by so many degrees.
Eigen::Matrix3d swungOutward(double degrees) {
  return Eigen::AngleAxisd(radians(degrees), Vector3d::UnitX()).toRotationMatrix();
}

struct Knee {
  BoneIndex femur;
  double condyle;  ///< radius of the femur's lower joint, m
};

Knee addThigh(LimbRig& rig, BoneIndex ilium) {
  const BoneIndex femur = rig.add(BoneKind::Femur);
  const double length = rig.measure(femur, Measure::Length);
  const LimbCharacters& limbs = charactersOf(rig.specimen().plan).limbs;
  const double head = 0.075 * length, condyle = 0.075 * length;
  const double out = (kHeadOffset + kBentShare * std::tan(radians(limbs.thighBend))) * length;
  rig.mark(femur, "proximal", Vector3d::Zero());
  rig.mark(femur, "distal", {0, out, head + condyle - length});
  rig.mark(femur, "top", {0, out, head});
  rig.mark(femur, "bottom", {0, out, head - length});
  rig.mark(femur, "shaftTop", {0, out, -0.2 * length});
  rig.mark(femur, "shaftBottom", {0, out, -0.75 * length});
  // The wedge of the sacrum is taken back: a thigh at zero hangs upright from a level first sacral, but for the knee's
  // bevel.
  rig.hang("hip", ilium, femur, Vector3d::Zero(), limitsInDegrees({-45, 50}, {-12, 25}, {-20, 20}),
           rig.attitude(ilium).transpose() * swungOutward(limbs.kneeBevel));
  return {femur, condyle};
}

BoneIndex addShank(LimbRig& rig, const Knee& knee) {
  const BoneIndex tibia = rig.add(BoneKind::Tibia);
  const double length = rig.measure(tibia, Measure::Length), width = rig.measure(tibia, Measure::ProximalWidth);
  const double face = -knee.condyle - 0.4 * kJointGap * length, inward = -0.06 * width;
  rig.mark(tibia, "proximal", Vector3d::Zero());
  rig.mark(tibia, "top", {0, inward, face});
  rig.mark(tibia, "bottom", {0, inward, face - length});
  rig.mark(tibia, "shaftTop", {0, inward, face - 0.25 * length});
  rig.mark(tibia, "shaftBottom", {0, inward, face - 0.75 * length});
  const double bevel = charactersOf(rig.specimen().plan).limbs.kneeBevel;
  rig.hang("knee", knee.femur, tibia, rig.landmark(knee.femur, "distal"), limitsInDegrees({-90, 3}, {0, 0}, {0, 0}),
           swungOutward(-bevel));

  const BoneIndex fibula = rig.add(BoneKind::Fibula);
  const double splint = rig.measure(fibula, Measure::Length);
  // Its head level with the tibia's, under the femur's outer condyle, and its foot beside the astragalus.
  const Vector3d head(-0.08 * width, inward + 0.50 * width, face);
  const Vector3d foot(-0.04 * width, inward + 0.545 * width, face - splint);
  rig.mark(fibula, "proximal", Vector3d::Zero());
  rig.mark(fibula, "distal", {0, 0, -splint});
  rig.mark(fibula, "top", Vector3d::Zero());
  rig.mark(fibula, "bottom", {0, 0, -splint});
  rig.fix(tibia, fibula, head, frameAlong(head - foot, Vector3d::UnitX()));
  return tibia;
}

/// The ankle turns about the middle of the astragalus, which caps the tibia.
BoneIndex addAnkle(LimbRig& rig, BoneIndex tibia) {
  const BoneIndex astragalus = rig.add(BoneKind::Astragalus);
  const double height = rig.measure(astragalus, Measure::Height);
  const double gap = 0.004 * rig.measure(tibia, Measure::Length);
  const Vector3d middle = rig.landmark(tibia, "bottom") - Vector3d(0, 0, gap + height / 2);
  rig.mark(tibia, "distal", middle);
  rig.mark(astragalus, "proximal", Vector3d::Zero());
  rig.mark(astragalus, "distal", Vector3d::Zero());
  rig.fix(tibia, astragalus, middle);
  return astragalus;
}

void markMetatarsal(LimbRig& rig, BoneIndex bone, double top) {
  const double length = rig.measure(bone, Measure::Length);
  const double condyle = 0.45 * rig.measure(bone, Measure::ShaftWidth);
  rig.mark(bone, "proximal", Vector3d::Zero());
  rig.mark(bone, "distal", {0, 0, top + condyle - length});
  rig.mark(bone, "top", {0, 0, top});
  rig.mark(bone, "bottom", {0, 0, top - length});
  rig.mark(bone, "shaftTop", {0, 0, top - 0.25 * length});
  rig.mark(bone, "shaftBottom", {0, 0, top - 0.75 * length});
}

/// The third carries its neighbours, which spread from it like a fan and stand on an arch.
void placeMetatarsals(LimbRig& rig, BoneIndex astragalus, const std::array<BoneIndex, 5>& foot) {
  const double height = rig.measure(astragalus, Measure::Height);
  const double top = -0.55 * height - 0.03 * rig.measure(foot[2], Measure::Length);
  markMetatarsal(rig, foot[2], top);
  // Zero is the natural slope of the standing foot.
  const StandingLimbs stance = standingLimbs();
  const double slope = standingMetatarsalSlope() - stance.hip - stance.knee;
  rig.hang("ankle", astragalus, foot[2], Vector3d::Zero(), limitsInDegrees({-40, 45}, {-12, 12}, {-10, 10}),
           swungForward(slope));
  for (int digit : {1, 2, 4, 5}) {
    const BoneIndex bone = foot[digit - 1];
    markMetatarsal(rig, bone, 0);
    const double step = digit - 3, inner = digit < 3 ? -1 : 1;
    double y = 0;
    for (int d = digit; d != 3; d -= static_cast<int>(inner))
      y += inner * 0.34 *
           (rig.measure(foot[d - 1], Measure::ProximalWidth) +
            rig.measure(foot[d - 1 - static_cast<int>(inner)], Measure::ProximalWidth));
    const Eigen::Matrix3d spread = Eigen::AngleAxisd(radians(kToeSpread * step), Vector3d::UnitX()).toRotationMatrix() *
                                   Eigen::AngleAxisd(radians(8 * step), Vector3d::UnitZ()).toRotationMatrix();
    rig.fix(foot[2], bone, {-0.02 * height * step * step, y, top}, spread);
  }
}

void addToe(LimbRig& rig, BoneIndex metatarsal, int digit) {
  BoneIndex last = metatarsal;
  double knuckle = rig.landmark(metatarsal, "distal").z() - rig.landmark(metatarsal, "bottom").z();
  for (int joint = 1; joint <= kToeBones[digit - 1]; ++joint) {
    const BoneIndex bone = rig.add(BoneKind::PesPhalanx, digit, joint);
    // The claws of the inner toes are turned outward.
    const bool first = joint == 1;
    const double outward = first ? 6 : digit <= 3 && joint == kToeBones[digit - 1] ? 24 : 3;
    const Eigen::Matrix3d turn = Eigen::AngleAxisd(radians(outward), Vector3d::UnitX()).toRotationMatrix();
    rig.hang("pes" + std::to_string(digit) + "." + std::to_string(joint), last, bone, rig.landmark(last, "distal"),
             limitsInDegrees({-30, 25}, {0, 0}, {0, 0}), turn * swungForward(radians(first ? kFirstToe : kNextToe)));
    knuckle = markPhalanx(rig, bone, knuckle);
    last = bone;
  }
}

/// Under the foot as it stands, below the heel, level with the undersides of the third toe and a pad that is not bone.
void markFootSole(LimbRig& rig, BoneIndex metatarsal) {
  const double length = rig.measure(metatarsal, Measure::Length), slope = standingMetatarsalSlope();
  double toe = 0, lowest = 0, angle = slope + radians(kFirstToe);
  for (int joint = 1; joint <= kToeBones[2]; ++joint) {
    const BoneIndex bone = *rig.specimen().findBone(rig.sidedId("pes3." + std::to_string(joint)));
    const double half = rig.measure(bone, Measure::Height) * std::sin(angle) / 2;
    lowest = std::max({lowest, toe + half, toe - rig.landmark(bone, "bottom").z() * std::cos(angle)});
    toe -= rig.landmark(bone, "distal").z() * std::cos(angle);
    angle += radians(kNextToe);
  }
  const Vector3d p_BDistal = rig.landmark(metatarsal, "distal");
  const double ground = p_BDistal.z() * std::cos(slope) - lowest - kFootPad * length;
  const Vector3d p_heel(-0.5 * p_BDistal.z() * std::sin(slope), 0, ground);  // from the ankle, upright axes
  rig.mark(metatarsal, "sole", swungForward(slope).transpose() * p_heel);
}

void addFoot(LimbRig& rig, BoneIndex astragalus) {
  std::array<BoneIndex, 5> foot;
  for (int digit = 1; digit <= 5; ++digit) foot[digit - 1] = rig.add(BoneKind::Metatarsal, digit);
  placeMetatarsals(rig, astragalus, foot);
  for (int digit = 1; digit <= 5; ++digit) addToe(rig, foot[digit - 1], digit);
  markFootSole(rig, foot[2]);
}

}  // namespace

void addForeLimb(LimbRig& rig, BoneIndex scapula) {
  addHand(rig, addWrist(rig, addForearm(rig, addUpperArm(rig, scapula))));
}

void addHindLimb(LimbRig& rig, BoneIndex ilium) { addFoot(rig, addAnkle(rig, addShank(rig, addThigh(rig, ilium)))); }

}  // namespace zyga::anatomy
