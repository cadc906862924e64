#include "core/solid/appendicular/head_kit.h"
#include "core/solid/appendicular/parts.h"

namespace zyga::solid {

namespace {

using anatomy::Measure;

/// Height of the jaw's upper edge and its depth at places from the hinge to the chin. Both in shares of the jaw's depth
/// at the chin; places in shares of the distance from hinge to chin.
struct JawStep {
  double along, upper, depth, thick;
};

std::vector<JawStep> steps(bool tall) {
  if (tall)
    return {{-0.06, 0.02, 0.34, 0.026}, {0.04, 0.02, 0.46, 0.030}, {0.16, 0.20, 0.72, 0.026}, {0.28, 0.30, 0.86, 0.024}, {0.42, 0.16, 0.78, 0.026},
            {0.58, 0.0, 0.76, 0.030}, {0.74, 0.0, 0.82, 0.032}, {0.88, 0.0, 0.92, 0.036}, {0.97, 0.0, 1.0, 0.040}};
  return {{-0.06, 0.04, 0.40, 0.020}, {0.05, 0.04, 0.52, 0.022}, {0.18, 0.22, 0.74, 0.020}, {0.30, 0.26, 0.80, 0.020}, {0.46, 0.12, 0.66, 0.020},
          {0.62, 0.02, 0.62, 0.022}, {0.78, 0.0, 0.72, 0.024}, {0.90, 0.0, 0.88, 0.026}, {0.98, 0.0, 1.0, 0.028}};
}

}  // namespace

Shape jawShape(const Bone& jaw, const Bone& skull) {
  const HeadRuler h(skull);
  const bool tall = isTall(skull);
  const double l = h.length, deep = jaw.measures.value(Measure::Height);
  const double half = jaw.measures.value(Measure::Width) / 2;
  const ToothArch arch = lowerArch(skull);
  const double row = arch.z * h.height;  // of the lower tooth row in the jaw's frame
  // One branch: a tall thin bar from behind the hinge along the arch to the mid-plane.
  std::vector<Knot> branch;
  for (const JawStep& step : steps(tall)) {
    const double x = step.along * arch.front;
    const double y = step.along < 0.60 ? std::min(0.82 * half, std::max(arch.widthAt(x) * h.halfWidth, 0.80 * half)) : 0;
    double wide = y;
    if (step.along >= 0.55) wide = arch.widthAt(x) * h.halfWidth;
    // The edge falls from the hinge's level to the row's.
    const double blend = std::clamp((step.along - 0.04) / 0.5, 0.0, 1.0);
    const double edge = blend * row + step.upper * deep;
    branch.push_back({Point(x * l, wide, edge - 0.5 * step.depth * deep), {0.5 * step.depth * deep, step.thick * l}, Point::UnitZ()});
  }
  branch.push_back({Point((arch.front + 0.012) * l, 0.0, row - 0.5 * deep), {0.5 * deep, 0.040 * l}, Point::UnitZ()});
  Shape bone = tube(branch, Point::UnitZ());
  const Shape hinge = ellipsoid(Point(0, 0.76 * h.halfWidth, -0.030 * l), Point(0.050, 0.048, 0.030) * l);
  const Shape cup = ellipsoid(Point(0.0, 0.76 * h.halfWidth, 0.030 * l), Point(0.044, 0.10, 0.036) * l);
  const Shape heel = tube({{Point(0, 0.78 * half, -0.05 * l), {0.030 * l, 0.024 * l}, Point::Zero()},
                           {Point(-0.055 * l, 0.78 * half, -0.045 * l), {0.026 * l, 0.020 * l}, Point::Zero()},
                           {Point(-0.085 * l, 0.76 * half, -0.035 * l), {0.014 * l, 0.014 * l}, Point::Zero()}},
                          Point::UnitZ());
  bone = smoothUnion({bone, hinge, heel}, 0.03 * l);
  bone = smoothCut(bone, cup, 0.012 * l);
  const Shape window = ellipsoid(Point(0.30 * arch.front * l, 0.8 * half, 0.30 * row + -0.10 * deep), Point(0.050 * l, 0.3 * half, (tall ? 0.11 : 0.13) * deep));
  bone = smoothCut(bone, window, 0.012 * l);
  return smoothUnion(symmetric(bone, 0.03 * l), symmetric(teeth(h, arch, lowerTeeth(skull))), 0.004 * l);
}

}  // namespace zyga::solid
