#include "core/solid/flesh/muscle_masses.h"

#include <algorithm>
#include <cmath>

namespace zyga::solid {

using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::BoneName;
using anatomy::Side;

namespace {

/// Bones where they lie in the world; what is not there gives no part.
class Limb {
 public:
  Limb(const PosedSkeleton& skeleton, Side side, double muscle, double skin)
      : skeleton_(skeleton), side_(side), muscle_(muscle), skin_(skin) {}

  bool has(BoneKind kind, int number = 0) const { return find(kind, number).has_value(); }
  Point place(BoneKind kind, const char* landmark, int number = 0) const {
    const BoneIndex bone = *find(kind, number);
    return skeleton_.X_WB[bone.value] * skeleton_.specimen[bone].landmark(landmark);
  }
  /// A direction of the bone's frame in the world.
  Point axis(BoneKind kind, int column) const { return skeleton_.X_WB[find(kind, 0)->value].linear().col(column); }
  /// Out of the bone's upper end down its shaft, by a share of its length.
  Point down(BoneKind kind, double share) const {
    return (1 - share) * place(kind, "top") + share * place(kind, "bottom");
  }
  double length(BoneKind kind, int number = 0) const {
    return skeleton_.specimen[*find(kind, number)].measures.value(anatomy::Measure::Length);
  }
  /// A knot whose half extents are shares of a length, along and across `wide`, under the skin's thickness.
  Knot knot(const Point& at, double unit, double along, double across, const Point& wide) const {
    return {at, {muscle_ * along * unit + skin_, muscle_ * across * unit + skin_}, wide};
  }
  /// The box around a part's bones, in the world.
  Box bounds(anatomy::Region region) const {
    Box box;
    for (std::size_t i = 0; i < skeleton_.specimen.bones.size(); ++i) {
      const BoneName& name = skeleton_.specimen.bones[i].name;
      const auto& mesh = skeleton_.meshes[i];
      if (regionOf(name) != region || name.side != side_ || !mesh || mesh->levels.empty()) continue;
      for (const Eigen::Vector3f& p : mesh->levels.back().positions) box.extend(skeleton_.X_WB[i] * p.cast<double>());
    }
    return box;
  }
  std::optional<Point> caudal(int number) const {
    const auto bone = skeleton_.specimen.findBone(anatomy::toId({BoneKind::Caudal, number, 0, Side::Midline}));
    return bone ? std::optional<Point>(skeleton_.X_WB[bone->value].translation()) : std::nullopt;
  }
  int caudals() const { return skeleton_.specimen.counts.caudal; }

 private:
  std::optional<BoneIndex> find(BoneKind kind, int number) const {
    return skeleton_.specimen.findBone(anatomy::toId({kind, number, 0, side_}));
  }

  const PosedSkeleton& skeleton_;
  Side side_;
  double muscle_, skin_;
};

/// From the whole length of the ilium, narrowing to the knee.
Shape thigh(const Limb& l) {
  if (!l.has(BoneKind::Ilium) || !l.has(BoneKind::Femur)) return {};
  const double F = l.length(BoneKind::Femur);
  const Point front = l.place(BoneKind::Ilium, "front"), back = l.place(BoneKind::Ilium, "back");
  const Point along = (front - back).normalized(), ahead = l.axis(BoneKind::Femur, 0);
  const double half = 0.5 * (front - back).norm() / F;
  const Point blade = 0.5 * (front + back);
  return tube({l.knot(blade, F, half, 0.05, along),
               l.knot(0.45 * blade + 0.55 * l.down(BoneKind::Femur, 0.12), F, 0.8 * half, 0.10, along),
               l.knot(l.down(BoneKind::Femur, 0.30), F, 0.19, 0.125, ahead),
               l.knot(l.down(BoneKind::Femur, 0.60), F, 0.115, 0.085, ahead),
               l.knot(l.down(BoneKind::Femur, 0.85), F, 0.055, 0.05, ahead),
               l.knot(l.down(BoneKind::Femur, 0.98), F, 0.04, 0.045, ahead)},
              along);
}

/// From the middle of the femur's hind side into the side of the tail, where it fades over the first third.
Shape tailMuscle(const Limb& l) {
  if (!l.has(BoneKind::Femur)) return {};
  const int last = std::max(4, l.caudals() / 4);
  const auto root = l.caudal(2), middle = l.caudal((2 + last) / 2), end = l.caudal(last);
  if (!root || !middle || !end) return {};
  const double F = l.length(BoneKind::Femur);
  const Point up = Point::UnitZ(), femur = l.down(BoneKind::Femur, 0.38);
  const Point out = Point(0, femur.y() < root->y() ? -1 : 1, 0);
  return tube({l.knot(femur, F, 0.09, 0.06, up), l.knot(*root + 0.11 * F * out - 0.06 * F * up, F, 0.11, 0.07, up),
               l.knot(*middle + 0.05 * F * out - 0.03 * F * up, F, 0.11, 0.07, up), l.knot(*end, F, 0.02, 0.01, up)},
              up);
}

/// The calf is highest at a quarter of the shank and stands out behind.
Shape shank(const Limb& l) {
  if (!l.has(BoneKind::Tibia)) return {};
  const double T = l.length(BoneKind::Tibia);
  const Point ahead = l.axis(BoneKind::Tibia, 0);
  const auto at = [&](double share, double back) -> Point { return l.down(BoneKind::Tibia, share) - back * T * ahead; };
  return tube({l.knot(at(0, 0), T, 0.11, 0.12, ahead), l.knot(at(0.25, 0.05), T, 0.155, 0.125, ahead),
               l.knot(at(0.60, 0.02), T, 0.09, 0.085, ahead), l.knot(at(0.98, 0), T, 0.07, 0.08, ahead)},
              ahead);
}

/// From the blade over the shoulder to the elbow.
Shape upperArm(const Limb& l) {
  if (!l.has(BoneKind::Scapula) || !l.has(BoneKind::Humerus)) return {};
  const double S = l.length(BoneKind::Scapula), H = l.length(BoneKind::Humerus);
  const Point across = l.axis(BoneKind::Scapula, 0), ahead = l.axis(BoneKind::Humerus, 0);
  return tube({l.knot(l.down(BoneKind::Scapula, 0.30), S, 0.12, 0.03, across),
               l.knot(l.down(BoneKind::Scapula, 0.70), S, 0.17, 0.05, across),
               l.knot(l.place(BoneKind::Scapula, "distal"), S, 0.20, 0.13, across),
               l.knot(l.down(BoneKind::Humerus, 0.15), H, 0.17, 0.15, ahead),
               l.knot(l.down(BoneKind::Humerus, 0.40), H, 0.125, 0.10, ahead),
               l.knot(l.down(BoneKind::Humerus, 0.75), H, 0.06, 0.06, ahead),
               l.knot(l.down(BoneKind::Humerus, 1.0), H, 0.05, 0.055, ahead)},
              across);
}

Shape forearm(const Limb& l) {
  if (!l.has(BoneKind::Ulna)) return {};
  const double U = l.length(BoneKind::Ulna);
  const Point ahead = l.axis(BoneKind::Ulna, 0);
  const auto at = [&](double share) -> Point { return l.down(BoneKind::Ulna, share) + 0.05 * U * ahead; };
  return tube({l.knot(at(0.04), U, 0.13, 0.125, ahead), l.knot(at(0.28), U, 0.14, 0.115, ahead),
               l.knot(at(0.65), U, 0.085, 0.08, ahead), l.knot(at(1.0), U, 0.08, 0.085, ahead)},
              ahead);
}

/// A foot is a column from its joint above to the ground, as wide as its bones are spread, with the pad that carries
/// it.
Shape foot(const Limb& l, anatomy::Region region, BoneKind palm, const Point& joint) {
  if (!l.has(palm, 3)) return {};
  const Box box = l.bounds(region);
  if (box.isEmpty()) return {};
  const Point sole = l.place(palm, "sole", 3), half = 0.5 * box.sizes();
  const double wide = std::max(half.y(), 0.4 * half.x());
  const Point ground(0.5 * (joint.x() + box.center().x()), box.center().y(), sole.z());
  // Upright: x of the loft's frame points up, y to the right, z ahead.
  const Point up = Point::UnitZ(), away = joint - ground;
  const double tall = std::max(away.z(), 0.1 * wide);
  const auto station = [&](double share, double half) {
    return Station{share * tall, half * wide, half * wide, -share * away.y(), share * away.x()};
  };
  return loft(frameAlong(ground, ground + up, Point::UnitX()), {station(0, 0.95), station(0.5, 0.82), station(1, 0.75)},
              0.25 * wide);
}

/// Skin over the openings of a bone of the head: a tube whose sections hold the bone's own.
Shape closedOver(const PosedSkeleton& skeleton, BoneKind kind) {
  const auto bone = skeleton.specimen.findBone(anatomy::toId({kind, 0, 0, Side::Midline}));
  if (!bone || !skeleton.meshes[bone->value] || skeleton.meshes[bone->value]->levels.empty()) return {};
  const auto& points = skeleton.meshes[bone->value]->levels.back().positions;
  const Eigen::Isometry3d& X_WB = skeleton.X_WB[bone->value];
  Eigen::AlignedBox3f box;
  for (const auto& p : points) box.extend(p);
  constexpr int kSections = 7;
  const double step = box.sizes().x() / kSections;
  std::vector<Knot> knots;
  for (int i = 0; i < kSections; ++i) {
    const double x = box.min().x() + (i + 0.5) * step;
    Eigen::AlignedBox2d section;
    for (const auto& p : points)
      if (std::abs(p.x() - x) < 0.6 * step) section.extend(Eigen::Vector2d(p.y(), p.z()));
    if (section.isEmpty()) continue;
    const Eigen::Vector2d middle = section.center(), half = 0.5 * section.sizes();
    knots.push_back({X_WB * Point(x, middle.x(), middle.y()), {half.x(), half.y()}, X_WB.linear().col(1)});
  }
  return knots.size() < 2 ? Shape() : tube(knots, Point::UnitY());
}

}  // namespace

Shape muscleMasses(const PosedSkeleton& skeleton, const GuideThickness& t) {
  if (t.muscle <= 0) return {};
  std::vector<Shape> parts{closedOver(skeleton, BoneKind::Skull), closedOver(skeleton, BoneKind::Jaw)};
  double blend = 0.02;
  for (const Side side : {Side::Left, Side::Right}) {
    const Limb upper(skeleton, side, t.muscle, t.upperLimbs), l(skeleton, side, t.muscle, t.lowerLimbs);
    if (l.has(BoneKind::Femur)) blend = std::max(blend, 0.05 * l.length(BoneKind::Femur));
    for (const Shape& part : {thigh(upper), tailMuscle(upper), shank(l), upperArm(upper), forearm(l)})
      parts.push_back(part);
    if (l.has(BoneKind::Tibia))
      parts.push_back(foot(l, anatomy::Region::Pes, BoneKind::Metatarsal, l.place(BoneKind::Tibia, "distal")));
    if (l.has(BoneKind::Ulna))
      parts.push_back(foot(l, anatomy::Region::Manus, BoneKind::Metacarpal, l.place(BoneKind::Ulna, "distal")));
  }
  std::erase_if(parts, [](const Shape& part) { return part.empty(); });
  return smoothUnion(parts, blend);
}

}  // namespace zyga::solid
