#include "core/solid/sculpt/appendicular/head_kit.h"

#include <algorithm>
#include <cmath>

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
  return tube({knot(-0.20, -0.02, 0.66, 0.9), knot(0.10, 0.0, 0.68, 1.05), knot(0.42, 0.04, 0.98, 1.0),
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
    crowns.push_back(crown(path[i], outward.dot(Point(0.3, 1, 0)) < 0 ? Point(-outward) : outward, along,
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
  if (isTall(skull)) return {13, 0.06, 1.36, 0.122 * l, 0.070 * l, 0.043 * l, 0.028 * l, 1, -1, 0.16};
  return {9, 0.008, 1.30, 0.072 * l, 0.050 * l, 0.0185 * l, 0.0185 * l, 0.15, -1, 0.35};
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

}  // namespace zyga::solid
