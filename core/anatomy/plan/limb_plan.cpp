#include <algorithm>
#include <array>
#include <map>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/plan_table.h"

// Every number here is invented: common practice, no source.
namespace zyga::anatomy {

namespace {

using Values = std::vector<std::pair<Measure, double>>;

constexpr double kPi = 3.14159265358979323846;

// The third is the longest of a crescent; the outer ones are shorter.
constexpr std::array<double, 5> kMetacarpalLength{0.91, 0.98, 1.0, 0.96, 0.90};
constexpr std::array<double, 5> kMetacarpalShaft{0.27, 0.24, 0.24, 0.23, 0.25};
// The first is the shortest and the thickest, half as wide again as the third; the outer ones taper.
constexpr std::array<double, 5> kMetatarsalLength{0.78, 0.94, 1.0, 0.95, 0.86};
constexpr std::array<double, 5> kMetatarsalShaft{0.47, 0.37, 0.31, 0.28, 0.27};

// Share of the third metacarpal or metatarsal: length, width at the base, height at the base.
struct Phalanx {
  double length, width, height;
};
constexpr Phalanx kThumb{0.26, 0.29, 0.24};
constexpr Phalanx kThumbClaw{0.56, 0.17, 0.26};
constexpr std::array<Phalanx, 5> kFinger{
    kThumb, {0.22, 0.30, 0.25}, {0.22, 0.30, 0.25}, {0.21, 0.29, 0.24}, {0.20, 0.29, 0.24}};
const std::array<std::vector<Phalanx>, 5> kToes{{
    {{0.40, 0.52, 0.44}, {0.98, 0.30, 0.50}},
    {{0.36, 0.46, 0.38}, {0.22, 0.42, 0.34}, {0.86, 0.26, 0.42}},
    {{0.36, 0.42, 0.34}, {0.22, 0.38, 0.30}, {0.18, 0.35, 0.28}, {0.66, 0.24, 0.34}},
    {{0.32, 0.40, 0.32}, {0.20, 0.34, 0.26}},
    {{0.28, 0.40, 0.32}},
}};

Values longBone(double length, double proximal, double shaft, double distal, double roundness = 0) {
  Values values{{Measure::Length, length},
                {Measure::ProximalWidth, proximal * length},
                {Measure::ShaftWidth, shaft * length},
                {Measure::DistalWidth, distal * length}};
  // Ramanujan's perimeter is within 1 % of pi times the mean diameter for shafts this round.
  if (roundness > 0) values.push_back({Measure::Circumference, kPi * shaft * length * (1 + roundness) / 2});
  return values;
}

Values digitBone(const Phalanx& shape, double unit) {
  return {{Measure::Length, shape.length * unit},
          {Measure::ProximalWidth, shape.width * unit},
          {Measure::Height, shape.height * unit}};
}

Values headValues(const LimbPlan& f, BoneKind kind) {
  if (kind == BoneKind::Skull)
    return {{Measure::Length, f.skull}, {Measure::Height, f.skullHeight}, {Measure::Width, f.skullWidth}};
  return {{Measure::Length, 0.88 * f.skull},
          {Measure::Height, f.jawHeight * f.skull},
          {Measure::Width, 0.94 * f.skullWidth}};
}

Values shoulderValues(const LimbPlan& f, BoneKind kind) {
  if (kind == BoneKind::Scapula) return longBone(f.scapula, f.bladeTop, 0.18, 0.50);
  if (kind == BoneKind::Coracoid) return {{Measure::Length, 0.30 * f.scapula}, {Measure::Height, 0.37 * f.scapula}};
  return {{Measure::Length, 0.42 * f.scapula}, {Measure::Width, 0.27 * f.scapula}};
}

Values armValues(const LimbPlan& f, BoneKind kind) {
  if (kind == BoneKind::Humerus) return longBone(f.humerus, 0.42, 0.18 * f.shaftStrength, 0.30, 0.72);
  if (kind == BoneKind::Radius) return longBone(f.radius, 0.23, 0.125 * f.shaftStrength, 0.23);
  return longBone(f.ulna, 0.35, 0.145 * f.shaftStrength, 0.20);
}

Values carpalValues(const LimbPlan& f, int number) {
  const double share = number == 1 ? 1.0 : 0.72;
  return {{Measure::Length, 0.60 * f.metacarpal * share},
          {Measure::Width, 0.64 * f.metacarpal * share},
          {Measure::Height, 0.19 * f.metacarpal}};
}

Values metacarpalValues(const LimbPlan& f, int digit) {
  const std::size_t i = static_cast<std::size_t>(digit - 1);
  return longBone(kMetacarpalLength[i] * f.metacarpal, 0.35, kMetacarpalShaft[i], 0.33);
}

Values metatarsalValues(const LimbPlan& f, int digit) {
  const std::size_t i = static_cast<std::size_t>(digit - 1);
  const double thick = kMetatarsalShaft[i];
  return longBone(kMetatarsalLength[i] * f.metatarsal, thick + 0.22, thick, thick + (digit > 3 ? 0.07 : 0.14));
}

Values pelvisValues(const LimbPlan& f, BoneKind kind) {
  if (kind == BoneKind::Ilium) return {{Measure::Length, 0.78 * f.femur}, {Measure::Height, 0.42 * f.femur}};
  if (kind == BoneKind::Pubis) return longBone(0.65 * f.femur, 0.40, 0.19, 0.30);
  return longBone(0.60 * f.femur, 0.36, 0.11, 0.17);
}

Values legValues(const LimbPlan& f, BoneKind kind) {
  if (kind == BoneKind::Femur) return longBone(f.femur, 0.30, 0.16 * f.shaftStrength, 0.27, 0.67);
  if (kind == BoneKind::Tibia) return longBone(f.tibia, 0.30, 0.145 * f.shaftStrength, 0.25);
  if (kind == BoneKind::Fibula) return longBone(f.fibula, 0.18, 0.085 * f.shaftStrength, 0.14);
  return {{Measure::Length, 0.10 * f.femur}, {Measure::Width, 0.155 * f.femur}, {Measure::Height, 0.058 * f.femur}};
}

Values footValues(const LimbPlan& f, const BoneName& name) {
  const std::size_t digit = static_cast<std::size_t>(std::clamp(name.number, 1, 5) - 1);
  const std::size_t joint = static_cast<std::size_t>(std::max(name.phalanx, 1) - 1);
  if (name.kind == BoneKind::Metacarpal) return metacarpalValues(f, static_cast<int>(digit) + 1);
  if (name.kind == BoneKind::Metatarsal) return metatarsalValues(f, static_cast<int>(digit) + 1);
  if (name.kind == BoneKind::ManusPhalanx)
    return digitBone(digit == 0 && joint == 1 ? kThumbClaw : kFinger[digit], f.metacarpal);
  return digitBone(kToes[digit][std::min(joint, kToes[digit].size() - 1)], f.metatarsal);
}

Values valuesOf(const LimbPlan& f, const BoneName& name) {
  switch (name.kind) {
    case BoneKind::Skull:
    case BoneKind::Jaw:
      return headValues(f, name.kind);
    case BoneKind::Scapula:
    case BoneKind::Coracoid:
    case BoneKind::SternalPlate:
      return shoulderValues(f, name.kind);
    case BoneKind::Humerus:
    case BoneKind::Radius:
    case BoneKind::Ulna:
      return armValues(f, name.kind);
    case BoneKind::Carpal:
      return carpalValues(f, name.number);
    case BoneKind::Ilium:
    case BoneKind::Pubis:
    case BoneKind::Ischium:
      return pelvisValues(f, name.kind);
    case BoneKind::Femur:
    case BoneKind::Tibia:
    case BoneKind::Fibula:
    case BoneKind::Astragalus:
      return legValues(f, name.kind);
    case BoneKind::Metacarpal:
    case BoneKind::Metatarsal:
    case BoneKind::ManusPhalanx:
    case BoneKind::PesPhalanx:
      return footValues(f, name);
    default:
      return {};
  }
}

void addFoot(std::vector<BoneName>& bones, BoneKind base, BoneKind phalanx, const std::array<int, 5>& joints,
             Side side) {
  for (int digit = 1; digit <= 5; ++digit) bones.push_back({base, digit, 0, side});
  for (int digit = 1; digit <= 5; ++digit)
    for (int joint = 1; joint <= joints[static_cast<std::size_t>(digit - 1)]; ++joint)
      bones.push_back({phalanx, digit, joint, side});
}

void addForeLimb(std::vector<BoneName>& bones, Side side, bool fingerBones) {
  for (BoneKind kind : {BoneKind::Scapula, BoneKind::Coracoid, BoneKind::SternalPlate, BoneKind::Humerus,
                        BoneKind::Ulna, BoneKind::Radius})
    bones.push_back({kind, 0, 0, side});
  for (int number : {1, 2}) bones.push_back({BoneKind::Carpal, number, 0, side});
  addFoot(bones, BoneKind::Metacarpal, BoneKind::ManusPhalanx,
          fingerBones ? std::array{2, 1, 1, 1, 1} : std::array{0, 0, 0, 0, 0}, side);
}

void addHindLimb(std::vector<BoneName>& bones, Side side) {
  for (BoneKind kind : {BoneKind::Ilium, BoneKind::Pubis, BoneKind::Ischium, BoneKind::Femur, BoneKind::Tibia,
                        BoneKind::Fibula, BoneKind::Astragalus})
    bones.push_back({kind, 0, 0, side});
  addFoot(bones, BoneKind::Metatarsal, BoneKind::PesPhalanx, {2, 3, 4, 2, 1}, side);
}

}  // namespace

double limbPlanValue(const LimbPlan& plan, const BoneName& name, Measure measure) {
  for (const auto& [known, value] : valuesOf(plan, name))
    if (known == measure) return value;
  return 0;  // nothing is measured so on this bone
}

const std::vector<Measure>& limbMeasuresOf(BoneKind kind) {
  static const std::map<BoneKind, std::vector<Measure>> measures = [] {
    std::map<BoneKind, std::vector<Measure>> all;
    for (int k = 0; k <= static_cast<int>(BoneKind::PesPhalanx); ++k) {
      const BoneKind each = static_cast<BoneKind>(k);
      for (const auto& [measure, value] : valuesOf(LimbPlan{}, {each, 1, 1, Side::Left})) all[each].push_back(measure);
      std::sort(all[each].begin(), all[each].end());
    }
    return all;
  }();
  return measures.at(kind);
}

std::vector<BoneName> headBones() { return {{BoneKind::Skull}, {BoneKind::Jaw}}; }

std::vector<BoneName> limbBones(bool fingerBones) {
  std::vector<BoneName> bones;
  for (Side side : {Side::Left, Side::Right}) addForeLimb(bones, side, fingerBones);
  for (Side side : {Side::Left, Side::Right}) addHindLimb(bones, side);
  return bones;
}

}  // namespace zyga::anatomy
