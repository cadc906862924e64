#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/anatomy/characters.h"
#include "core/solid/sculpt/axial/axial.h"

namespace zyga::solid {

using anatomy::Measure;

namespace {

struct RibForm {
  Point tuberculum, middle, tip;
  double length;
  double wide, thick;  ///< half extents of the shaft where it is broadest
  double stout;        ///< half thickness of the heads
  double plank;        ///< 1 for the broad front ribs, 0 for the slender hind ones
};

RibForm describe(const anatomy::Bone& bone) {
  RibForm f;
  f.tuberculum = bone.landmark("tuberculum");
  f.middle = bone.landmark("middle");
  f.tip = bone.landmark("tip");
  f.length = bone.measures.value(Measure::Length);
  // D2 to D4 are broad planks, those behind them grow slender.
  f.plank = std::clamp(1.0 - (bone.name.number - 4) / 3.0, 0.0, 1.0);
  f.wide = 0.5 * bone.measures.valueOr(Measure::ShaftWidth, 0.05 * f.length);
  // Neither thin as a sheet where broad, nor round where slender.
  f.thick = f.wide * std::lerp(0.62, 0.40, f.plank);
  f.stout = std::min(f.wide, 0.026 * f.length);
  return f;
}

/// The bow from the tuberculum to the tip: out and down in a quarter of an ellipse, then in again a little; seen from
/// the side one curve through the middle, so that it bows back without a kink.
std::vector<Point> bow(const RibForm& f) {
  const Point d = f.middle - f.tuberculum, e = f.tip - f.middle;
  const double drop = f.tip.z() - f.tuberculum.z(), half = d.z() / drop;
  const auto sideways = [&](double z) {  // the parabola through the three, by its height
    const double t = (z - f.tuberculum.z()) / drop, all = f.tip.x() - f.tuberculum.x();
    const double bend = (d.x() - all * half) / (half * (1 - half));
    return f.tuberculum.x() + all * t + bend * t * (1 - t);
  };
  std::vector<Point> path;
  for (const double degrees : {10.0, 32.0, 58.0, 90.0}) {
    const double a = degrees * std::numbers::pi / 180, z = f.tuberculum.z() + d.z() * (1 - std::cos(a));
    path.emplace_back(sideways(z), f.tuberculum.y() + d.y() * std::sin(a), z);
  }
  for (const double t : {0.34, 0.66, 0.88, 1.0}) {
    const double z = f.middle.z() + e.z() * t;
    path.emplace_back(sideways(z), f.middle.y() + e.y() * t * t, z);
  }
  return path;
}

/// Section along the bow: deep at the shoulder, then flattened; planks keep their breadth far down, the others taper
/// all the way; the tip is rounded off.
Section sectionAt(const RibForm& f, std::size_t i) {
  constexpr double kPlank[] = {0.62, 0.72, 0.90, 1.00, 0.99, 0.90, 0.66, 0.30};
  constexpr double kSlender[] = {0.95, 1.00, 0.96, 0.86, 0.76, 0.66, 0.50, 0.25};
  constexpr double kThick[] = {1.55, 1.40, 1.12, 1.00, 0.90, 0.76, 0.58, 0.34};
  return {f.wide * std::lerp(kSlender[i], kPlank[i], f.plank), std::min(f.thick, 1.2 * f.stout) * kThick[i]};
}

Shape shaft(const RibForm& f) {
  std::vector<Knot> knots;
  const std::vector<Point> path = bow(f);
  for (std::size_t i = 0; i < path.size(); ++i) {
    // The broad side turns from across the body at the shoulder to along it farther down.
    const double turn = std::min(1.0, 0.30 * static_cast<double>(i) + 0.3);
    knots.push_back({path[i], sectionAt(f, i), Point(turn, 0.0, 0.6 * (1 - turn))});
  }
  return tube(knots, Point::UnitX());
}

/// The two heads. Each ends flat against its facet; the neck runs in to the capitulum, a sheet of bone fills the angle
/// between the two.
Shape heads(const RibForm& f) {
  const std::vector<Point> path = bow(f);
  const double r = f.stout;
  const Point branch = 0.45 * path[0] + 0.55 * path[1] - Point(0, 0, 0.9 * r);
  const Point in = 0.45 * branch - Point(0, 0, 0.06 * branch.norm());
  const Point facing = Point(0, 0.97, -0.25 * (branch.z() < 0 ? 1 : 0)).normalized();
  const Shape capitulum =
      loft(frameAlong(Point(0, 0.02 * r, 0), facing, Point::UnitZ()),
           {{0, 0.95 * r, 1.05 * r}, {1.0 * r, 0.80 * r, 0.85 * r}, {1.8 * r, 0.55 * r, 0.6 * r}}, 0.15 * r);
  const Shape neck = tube({{1.0 * r * facing, {0.78 * r, 0.66 * r}},
                           {in, {0.92 * r, 0.52 * r}},
                           {branch, {1.25 * r, 0.70 * r}},
                           {path[2] - Point(0, 0.3 * f.thick, 0), {0.55 * r, 0.5 * f.thick}}},
                          Point::UnitZ());
  const Point out = path[0] - f.tuberculum + Point(0, 0.35, -0.75).normalized() * r;
  const Shape tuberculum =
      loft(frameAlong(f.tuberculum, f.tuberculum + Point(0, 0.87, -0.5), Point::UnitX()),
           {{0.01 * r, 0.85 * r, 1.0 * r}, {0.6 * r, 0.85 * r, 0.95 * r}, {1.5 * r, 0.6 * r, 0.7 * r}}, 0.15 * r);
  const Shape shoulder = tube(
      {{f.tuberculum + 0.9 * r * out.normalized(), {0.85 * r, 0.75 * r}}, {path[1], {sectionAt(f, 1).wide, 0.8 * r}}},
      Point::UnitX());
  const Shape sheet = strut(0.5 * in, branch, {0.6 * r, 0.26 * r}, {1.5 * r, 0.34 * r}, Point(0, -0.2, 1).normalized());
  return smoothUnion({capitulum, neck, tuberculum, shoulder, sheet}, 0.7 * r);
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
  const Shape rib = smoothUnion(shaft(f), heads(f), 0.9 * f.stout);
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

/// The end of a chevron that is a skid: a bar along the body, drawn out forward and back.
Shape skid(const Point& at, double length, double thick, double share) {
  const double reach = share * 0.48 * length;
  return tube({{at + Point(0.75 * reach, 0, -0.04 * length), {0.5 * thick, 0.4 * thick}},
               {at + Point(0.2 * reach, 0, 0.01 * length), {1.1 * thick, 0.6 * thick}},
               {at - Point(0.4 * reach, 0, 0.0), {1.0 * thick, 0.6 * thick}},
               {at - Point(reach, 0, 0.06 * length), {0.5 * thick, 0.4 * thick}}},
              Point::UnitZ());
}

/// 0 to 1: how far a chevron is a skid.
double skidShare(const anatomy::Specimen& specimen, int number) {
  const anatomy::Ends skids = anatomy::charactersOf(specimen.plan).column.chevronSkids;
  if (skids.last <= skids.first) return 0;
  const double share = static_cast<double>(number) / std::max(1, specimen.counts.caudal);
  return std::clamp((share - 0.6 * skids.first) / (0.5 * skids.first), 0.0, 1.0) *
         std::clamp((1.3 * skids.last - share) / (0.3 * skids.last), 0.0, 1.0);
}

}  // namespace

/// Y from in front: two arms that meet under the canal, then a blade flattened from side to side, that bends back in
/// one curve; or a skid along the body.
Shape chevronShape(const anatomy::Specimen& specimen, anatomy::BoneIndex index) {
  const anatomy::Bone& bone = specimen[index];
  const Point tip = bone.landmark("tip");
  const double length = tip.norm(), apart = halfSpread(specimen, index, length);
  const double thick = std::max(0.045 * length, 0.16 * apart), skids = skidShare(specimen, bone.name.number);
  // First down, then back: a parabola whose chord is the straight line to the tip.
  const auto on = [&](double t) { return Point(t * tip + Point(0.30 * length * t * (1 - t), 0, 0)); };
  const Shape arm = tube({{Point(0.01 * length, apart, -0.2 * thick), {1.9 * thick, 1.05 * thick}},
                          {Point(0, 0.95 * apart, 0) + on(0.10), {1.5 * thick, 0.85 * thick}},
                          {Point(0, 0.62 * apart, 0) + on(0.24), {1.4 * thick, 0.75 * thick}},
                          {Point(0, 0.10 * thick, 0) + on(0.42), {1.7 * thick, 0.7 * thick}}},
                         Point::UnitX());
  const Shape bridge = tube({{Point(0.01 * length, apart, -0.5 * thick), {1.2 * thick, 0.6 * thick}},
                             {Point(0.01 * length, 0, -1.1 * thick), {1.0 * thick, 0.55 * thick}}},
                            Point::UnitX());
  const double broad = std::lerp(2.3, 1.3, skids);
  const Shape blade = tube({{on(0.40), {1.7 * thick, 0.8 * thick}},
                            {on(0.60), {0.5 * (1.7 + broad) * thick, 0.60 * thick}},
                            {on(0.82), {broad * thick, 0.52 * thick}},
                            {on(0.95), {0.75 * broad * thick, 0.45 * thick}}},
                           Point::UnitX());
  const double carried = anatomy::charactersOf(specimen.plan).column.chevronsBridged * specimen.counts.caudal;
  const Shape side = bone.name.number <= carried ? smoothUnion(arm, bridge, 1.2 * thick) : arm;
  std::vector<Shape> parts{symmetric(side, 0.8 * thick), blade};
  if (skids > 0.05) parts.push_back(skid(on(0.90), length, thick, skids));
  const Shape whole = smoothUnion(parts, 1.0 * thick);
  // The heads end flat against the vertebrae: one face forward and up, one back and up.
  const Point up = Point(0.35, 0, 1).normalized(), back = Point(-0.55, 0, 1).normalized();
  const Shape faces = intersect(halfSpace(0.45 * thick * up, up), halfSpace(0.45 * thick * back, back), 0.3 * thick);
  return intersect(whole, faces, 0.4 * thick);
}

}  // namespace zyga::solid
