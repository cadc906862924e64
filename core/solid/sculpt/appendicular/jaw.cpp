#include <algorithm>
#include <cmath>

#include "core/solid/sculpt/appendicular/head_kit.h"
#include "core/solid/sculpt/appendicular/parts.h"

namespace zyga::solid {

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
      {-0.06, 0.02, 0.34, 0.026}, {0.04, 0.02, 0.46, 0.030}, {0.16, 0.20, 0.74, 0.026},
      {0.28, 0.30, 0.90, 0.024},  {0.42, 0.16, 0.80, 0.026}, {0.58, 0.0, 0.76, 0.030},
      {0.74, 0.0, 0.82, 0.032},   {0.88, 0.0, 0.92, 0.036},  {1.0, 0.0, 1.0, 0.040}};
  static const std::vector<JawStep> slender{
      {-0.06, 0.04, 0.40, 0.020}, {0.05, 0.04, 0.52, 0.022}, {0.18, 0.22, 0.74, 0.020},
      {0.30, 0.26, 0.80, 0.020},  {0.46, 0.12, 0.66, 0.020}, {0.62, 0.02, 0.60, 0.022},
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
