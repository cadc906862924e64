#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/solid/sculpt/axial/axial.h"

namespace zyga::solid {

using anatomy::Measure;

namespace {

struct RibForm {
  Point tuberculum, middle, tip;
  double length;
  double wide, thick;  ///< half extents of the shaft
  double plank;        ///< 1 for the broad front ribs, 0 for the slender hind ones
};

RibForm describe(const anatomy::Bone& bone) {
  RibForm f;
  f.tuberculum = bone.landmark("tuberculum");
  f.middle = bone.landmark("middle");
  f.tip = bone.landmark("tip");
  f.length = bone.measures.value(Measure::Length);
  f.plank = std::clamp(1.0 - (bone.name.number - 2) / 5.0, 0.0, 1.0);
  const double width = bone.measures.valueOr(Measure::ShaftWidth, 0.035 * f.length);
  f.wide = 0.55 * width;
  f.thick = f.wide * std::lerp(0.55, 0.40, f.plank);
  return f;
}

/// The bow from the tuberculum to the tip: a quarter of an ellipse out and down, and a part of one in again.
std::vector<Point> bow(const RibForm& f) {
  std::vector<Point> path;
  const auto quarter = [&](double degrees) {
    const double a = degrees * std::numbers::pi / 180;
    const Point d = f.middle - f.tuberculum;
    return Point(f.tuberculum.x() + d.x() * (1 - std::cos(a)), f.tuberculum.y() + d.y() * std::sin(a),
                 f.tuberculum.z() + d.z() * (1 - std::cos(a)));
  };
  for (const double a : {12.0, 32.0, 56.0, 90.0}) path.push_back(quarter(a));
  const Point d = f.tip - f.middle;
  for (const double t : {0.35, 0.7, 1.0}) path.emplace_back(f.middle + Point(d.x() * t, d.y() * t * t, d.z() * t));
  return path;
}

/// Section along the bow: deep at the shoulder, broad in the upper shaft, tapering, and a little spread at the tip.
Section sectionAt(const RibForm& f, std::size_t i) {
  constexpr double kWide[] = {1.25, 1.20, 1.05, 0.95, 0.86, 0.80, 0.82};
  constexpr double kThick[] = {1.60, 1.50, 1.20, 1.05, 0.95, 0.85, 0.62};
  return {f.wide * kWide[i], f.thick * kThick[i]};
}

Shape shaft(const RibForm& f) {
  std::vector<Knot> knots;
  const std::vector<Point> path = bow(f);
  for (std::size_t i = 0; i < path.size(); ++i) {
    // The broad side turns from across the body at the shoulder to along it farther down.
    const double turn = std::min(1.0, 0.35 * static_cast<double>(i) + 0.3);
    knots.push_back({path[i], sectionAt(f, i), Point(turn, 0.0, 0.6 * (1 - turn))});
  }
  return tube(knots, Point::UnitX());
}

/// The neck branches off the shaft a little below the tuberculum and runs in to the capitulum; a sheet of bone fills
/// the angle between the two.
Shape heads(const RibForm& f) {
  const std::vector<Point> path = bow(f);
  const Point branch = 0.35 * path[0] + 0.65 * path[1], belly = 0.55 * branch + Point(0, 0, -0.10 * branch.norm());
  const Shape neck = tube({{Point(0, 0.1 * f.wide, 0), {0.95 * f.wide, 0.9 * f.wide}},
                           {0.22 * branch, {0.72 * f.wide, 0.62 * f.wide}},
                           {belly, {0.95 * f.wide, 0.55 * f.wide}},
                           {branch - Point(0, 0, 0.8 * f.wide), {1.35 * f.wide, 0.75 * f.wide}},
                           {path[2] - Point(0, 0.1 * f.thick, 0), {0.8 * f.wide, 0.7 * f.thick}},
                           {0.4 * path[2] + 0.6 * path[3], {0.45 * f.wide, 0.3 * f.thick}}},
                          Point::UnitZ());
  const Shape knob = tube({{f.tuberculum + Point(0, 0.15 * f.wide, -0.4 * f.wide), {0.95 * f.wide, 0.72 * f.wide}},
                           {path[0] - Point(0, 0, 0.7 * f.wide), {0.95 * f.wide, 0.8 * f.wide}},
                           {path[1] - Point(0, 0, 0.5 * f.wide), {1.0 * f.wide, 0.8 * f.wide}}},
                          Point::UnitX());
  const Point in = 0.5 * belly + Point(0, 0, 0.3 * f.wide);
  const Shape sheet = strut(in, branch, {0.8 * f.wide, 0.28 * f.wide}, {1.6 * f.wide, 0.36 * f.wide}, Point::UnitZ());
  return smoothUnion({neck, knob, sheet}, 1.2 * f.wide);
}

/// Groove down the hind side of the upper shaft.
Shape groove(const RibForm& f) {
  const std::vector<Point> path = bow(f);
  std::vector<Knot> knots;
  for (std::size_t i = 1; i < 4; ++i)
    knots.push_back({path[i] - Point(1.02 * sectionAt(f, i).wide, 0.15 * f.thick, 0), {0.35 * f.wide, 0.28 * f.thick}});
  return tube(knots, Point::UnitX());
}

}  // namespace

Shape dorsalRibShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  const RibForm f = describe(specimen[bone]);
  const Shape rib = smoothUnion(shaft(f), heads(f), 1.3 * f.wide);
  return smoothCut(rib, groove(f), 0.25 * f.wide);
}

using anatomy::Measure;

namespace {

/// Half the distance between the two heads: they sit under the rim of the vertebra that carries the chevron.
double halfSpread(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, double length) {
  const auto joint = specimen.jointAbove(bone);
  if (!joint) return 0.18 * length;
  const anatomy::Bone& carrier = specimen[specimen[*joint].proximal];
  return 0.21 * carrier.measures.valueOr(Measure::CotyleWidth, 0.8 * length);
}

}  // namespace

/// Y from in front: two arms that meet under the canal, then a blade flattened from side to side, sloping back.
Shape chevronShape(const anatomy::Specimen& specimen, anatomy::BoneIndex index) {
  const anatomy::Bone& bone = specimen[index];
  const Point tip = bone.landmark("tip");
  const double length = tip.norm(), apart = halfSpread(specimen, index, length);
  const double thick = std::max(0.045 * length, 0.16 * apart);
  const Point fork = 0.40 * tip + Point(0.02 * length, 0, 0);
  const Shape arm = tube({{Point(0.01 * length, apart, -0.2 * thick), {1.75 * thick, 1.05 * thick}},
                          {Point(0, 0.93 * apart, 0) + 0.10 * tip, {1.45 * thick, 0.9 * thick}},
                          {Point(0, 0.50 * apart, 0) + 0.28 * tip, {1.3 * thick, 0.8 * thick}},
                          {Point(0, 0.05 * thick, 0) + fork, {1.5 * thick, 0.75 * thick}}},
                         Point::UnitX());
  const Shape bridge = tube({{Point(0.01 * length, apart, -0.4 * thick), {1.1 * thick, 0.55 * thick}},
                             {Point(0.01 * length, 0, -0.9 * thick), {0.9 * thick, 0.5 * thick}}},
                            Point::UnitX());
  const Shape blade = tube({{fork, {1.5 * thick, 0.85 * thick}},
                            {0.68 * tip + Point(0.01 * length, 0, 0), {1.75 * thick, 0.62 * thick}},
                            {0.92 * tip, {1.9 * thick, 0.6 * thick}},
                            {tip - 0.02 * length * tip.normalized(), {1.3 * thick, 0.5 * thick}}},
                           Point::UnitX());
  const Shape whole = smoothUnion({symmetric(smoothUnion(arm, bridge, 1.2 * thick), 0.8 * thick), blade}, 1.0 * thick);
  // The heads end flat against the vertebrae: one face forward and up, one back and up.
  const Point up = Point(0.35, 0, 1).normalized(), back = Point(-0.55, 0, 1).normalized();
  const Shape faces = intersect(halfSpace(0.45 * thick * up, up), halfSpace(0.45 * thick * back, back), 0.3 * thick);
  return intersect(whole, faces, 0.4 * thick);
}

}  // namespace zyga::solid
