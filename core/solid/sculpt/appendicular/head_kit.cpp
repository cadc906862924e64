#include "core/solid/sculpt/appendicular/head_kit.h"

#include <algorithm>
#include <cmath>

#include "core/solid/sculpt/appendicular/appendicular.h"

namespace zyga::solid {

using anatomy::Measure;

HeadRuler::HeadRuler(const anatomy::Bone& skull)
    : length(skull.measures.value(Measure::Length)),
      halfWidth(skull.measures.value(Measure::Width) / 2),
      height(skull.measures.value(Measure::Height)) {}

Shape bar(const HeadRuler& head, const std::vector<BarKnot>& knots, const Point& wideDirection) {
  std::vector<Knot> path;
  for (const BarKnot& knot : knots)
    path.push_back({head.at(knot.at), {knot.wide * head.length, knot.thick * head.length}, Point::Zero()});
  return tube(path, wideDirection);
}

Point ToothArch::at(double turn) const {
  const double c = std::max(std::cos(turn), 0.0), s = std::max(std::sin(turn), 0.0);
  const double x = back + (front - back) * std::pow(c, round);
  return {x, halfWidth * std::pow(s, round), z + rise * (front - x) / (front - back)};
}

double ToothArch::widthAt(double x) const {
  const double c = std::pow(std::clamp((x - back) / (front - back), 0.0, 1.0), 1 / round);
  return halfWidth * std::pow(std::max(1 - c * c, 0.0), round / 2);
}

namespace {

/// One crown: a neck in the jaw, a spoon or a pencil, a worn tip; hollowed a little on the inner side.
Shape crown(const Point& root, const Point& outward, const Point& along, double length, const ToothRow& row,
            double size) {
  const Point tip = (row.direction * Point::UnitZ() + row.forward * outward).normalized();
  const auto knot = [&](double share, double out, double wide, double thick) {
    const double neck = 1 + (wide - 1) * row.spoon, worn = 1 + (thick - 1) * std::max(row.spoon, 0.5);
    return Knot{root + tip * (share * length) + outward * (out * length),
                {0.5 * size * row.width * neck, 0.5 * size * row.thickness * worn},
                along};
  };
  return tube({knot(-0.34, -0.02, 0.66, 0.9), knot(0.10, 0.0, 0.68, 1.05), knot(0.42, 0.04, 0.98, 1.0),
               knot(0.70, 0.03, 0.98, 0.72), knot(0.90, -0.01, 0.66, 0.5), knot(1.0, -0.04, 0.30, 0.32)},
              along);
}

}  // namespace

Shape teeth(const HeadRuler& head, const ToothArch& arch, const ToothRow& row) {
  std::vector<Shape> crowns;
  // Equal steps along the arch, not along the turn.
  std::vector<Point> path;
  std::vector<double> reached{0};
  constexpr int kSteps = 200;
  for (int i = 0; i <= kSteps; ++i) {
    path.push_back(head.at(arch.at(row.firstTurn + (row.lastTurn - row.firstTurn) * i / kSteps)));
    if (i > 0) reached.push_back(reached.back() + (path[i] - path[i - 1]).norm());
  }
  for (int k = 0; k < row.count; ++k) {
    const double share = row.count > 1 ? static_cast<double>(k) / (row.count - 1) : 0;
    const auto next = std::lower_bound(reached.begin(), reached.end(), share * reached.back());
    const std::size_t i = std::clamp<std::size_t>(static_cast<std::size_t>(next - reached.begin()), 1, kSteps - 1);
    const Point along = (path[i + 1] - path[i - 1]).normalized();
    const Point outward = Point(along.y(), -along.x(), 0).normalized() * (along.x() * path[i].y() > 0 ? -1 : 1);
    const double size = 1 - 0.30 * share;
    const Point root = path[std::min<std::size_t>(static_cast<std::size_t>(next - reached.begin()), kSteps)];
    crowns.push_back(crown(root, outward.dot(Point(0.3, 1, 0)) < 0 ? Point(-outward) : outward, along,
                           std::lerp(row.frontLength, row.backLength, share), row, size));
  }
  return unite(crowns);
}

bool isTall(const anatomy::Bone& skull) {
  return skull.measures.value(Measure::Height) > 0.5 * skull.measures.value(Measure::Length);
}

ToothArch upperArch(const anatomy::Bone& skull) {
  if (isTall(skull)) return {0.945, 0.47, 0.76, 0.76, 0.07, -0.335};
  return {0.950, 0.70, 0.68, 0.45, 0.05, -0.455};
}

ToothArch lowerArch(const anatomy::Bone& skull) {
  const HeadRuler head(skull);
  const Point hinge = skull.landmark("jawHinge");
  ToothArch arch = upperArch(skull);
  const double inside = isTall(skull) ? 0.020 : 0.012;
  arch.front -= hinge.x() / head.length + inside;
  arch.back -= hinge.x() / head.length;
  arch.halfWidth -= isTall(skull) ? 0.10 : 0.06;
  // With the mouth closed the tips of both rows pass each other.
  const double apart = 1.08 * upperTeeth(skull).frontLength;
  arch.z -= (hinge.z() + apart) / head.height;
  arch.rise = isTall(skull) ? 0.05 : 0.02;
  return arch;
}

ToothRow upperTeeth(const anatomy::Bone& skull) {
  const double l = skull.measures.value(Measure::Length);
  if (isTall(skull)) return {13, 0.06, 1.36, 0.122 * l, 0.070 * l, 0.035 * l, 0.026 * l, 1, -1, 0.16};
  return {11, 0.0030, 1.34, 0.074 * l, 0.050 * l, 0.0175 * l, 0.0175 * l, 0.15, -1, 0.48};
}

ToothRow lowerTeeth(const anatomy::Bone& skull) {
  ToothRow row = upperTeeth(skull);
  row.direction = 1;
  row.frontLength *= 0.86;
  row.backLength *= 0.84;
  row.width *= 0.92;
  row.forward *= 0.8;
  return row;
}

namespace {

using anatomy::Measure;

/// A section of the jaw: its place in shares of the distance from hinge to chin, the rise of its upper edge over the
/// line from hinge to tooth row and its depth in shares of the depth at the chin, half its thickness in shares of the
/// skull's length.
struct JawStep {
  double along, upper, depth, thick;
};

const std::vector<JawStep>& steps(bool tall) {
  static const std::vector<JawStep> deep{
      {-0.06, 0.02, 0.34, 0.026}, {0.04, 0.02, 0.46, 0.030}, {0.16, 0.30, 0.84, 0.026},
      {0.28, 0.58, 1.14, 0.024},  {0.40, 0.44, 1.02, 0.026}, {0.58, 0.0, 0.76, 0.030},
      {0.74, 0.0, 0.82, 0.032},   {0.88, 0.0, 0.92, 0.036},  {1.0, 0.0, 1.0, 0.040}};
  static const std::vector<JawStep> slender{
      {-0.06, 0.04, 0.40, 0.020}, {0.05, 0.04, 0.52, 0.022}, {0.18, 0.28, 0.78, 0.020},
      {0.30, 0.42, 0.94, 0.020},  {0.46, 0.46, 0.92, 0.020}, {0.60, 0.36, 0.86, 0.022},
      {0.78, 0.0, 0.66, 0.024},   {0.90, 0.0, 0.84, 0.026},  {1.0, 0.0, 1.0, 0.026}};
  return tall ? deep : slender;
}

/// The section at any place.
JawStep stepAt(const std::vector<JawStep>& all, double along) {
  std::size_t i = 1;
  while (i + 1 < all.size() && all[i].along < along) ++i;
  const JawStep &a = all[i - 1], &b = all[i];
  const double t = std::clamp((along - a.along) / (b.along - a.along), 0.0, 1.0);
  return {along, std::lerp(a.upper, b.upper, t), std::lerp(a.depth, b.depth, t), std::lerp(a.thick, b.thick, t)};
}

/// Where one branch runs, from behind the hinge round to the mid-plane: share of the way to the chin, and y in m.
std::vector<std::pair<double, double>> course(const ToothArch& arch, const HeadRuler& h, double half, bool tall) {
  std::vector<std::pair<double, double>> places;
  for (const double along : {-0.06, 0.04, 0.16, 0.28, 0.42}) places.push_back({along, 0.80 * half});
  const std::vector<double> turns = tall ? std::vector<double>{1.42, 1.22, 1.0, 0.78, 0.56, 0.34, 0.14, 0.0}
                                         : std::vector<double>{1.52, 1.40, 1.15, 0.85, 0.5, 0.2, 0.04, 0.0};
  for (const double turn : turns) {
    const Point p = arch.at(turn);
    const double along = p.x() / arch.front;
    if (along > 0.48) places.push_back({along, p.y() * h.halfWidth});
  }
  return places;
}

}  // namespace

Shape jawShape(const Bone& jaw, const Bone& skull) {
  const HeadRuler h(skull);
  const bool tall = isTall(skull);
  const double l = h.length, deep = jaw.measures.value(Measure::Height);
  const double half = jaw.measures.value(Measure::Width) / 2;
  const ToothArch arch = lowerArch(skull);
  const double row = arch.z * h.height;  // of the lower tooth row in the jaw's frame
  std::vector<Knot> branch;
  for (const auto& [along, y] : course(arch, h, half, tall)) {
    const JawStep step = stepAt(steps(tall), along);
    const double edge = std::clamp((along - 0.04) / 0.5, 0.0, 1.0) * row + step.upper * deep;
    branch.push_back({Point((along * arch.front + 0.010 * along) * l, y, edge - 0.5 * step.depth * deep),
                      {0.5 * step.depth * deep, step.thick * l},
                      Point::UnitZ()});
  }
  Shape bone = tube(branch, Point::UnitZ());
  const Shape hinge = ellipsoid(Point(0, 0.76 * h.halfWidth, -0.030 * l), Point(0.050, 0.048, 0.030) * l);
  const Shape cup = ellipsoid(Point(0.0, 0.76 * h.halfWidth, 0.030 * l), Point(0.044, 0.10, 0.036) * l);
  const Shape heel = tube({{Point(0, 0.78 * half, -0.05 * l), {0.030 * l, 0.024 * l}, Point::Zero()},
                           {Point(-0.055 * l, 0.78 * half, -0.045 * l), {0.026 * l, 0.020 * l}, Point::Zero()},
                           {Point(-0.085 * l, 0.76 * half, -0.035 * l), {0.014 * l, 0.014 * l}, Point::Zero()}},
                          Point::UnitZ());
  bone = smoothUnion({bone, hinge, heel}, 0.03 * l);
  bone = smoothCut(bone, cup, 0.012 * l);
  // A shallow pit on the outside behind the teeth, and a groove along the row of foramina.
  const Shape pit = ellipsoid(Point(0.26 * arch.front * l, 0.80 * half + 0.036 * l, 0.25 * row + 0.02 * deep),
                              Point(0.060 * l, 0.020 * l, 0.14 * deep));
  std::vector<Knot> line;
  for (int i = 0; i <= 8; ++i) {
    const Point p = arch.at(0.1 + 1.25 * i / 8);
    line.push_back({h.at(p.x(), p.y(), p.z()) + Point(0.020 * l + 0.016 * l * std::cos(0.1 + 1.25 * i / 8),
                                                      0.040 * l * std::sin(0.1 + 1.25 * i / 8), -0.18 * deep),
                    {0.009 * l, 0.009 * l},
                    Point::Zero()});
  }
  bone = smoothCut(smoothCut(bone, pit, 0.03 * l), tube(line, Point::UnitZ()), 0.02 * l);
  return smoothUnion(symmetric(bone, 0.03 * l), symmetric(teeth(h, arch, lowerTeeth(skull))), 0.004 * l);
}

}  // namespace zyga::solid
