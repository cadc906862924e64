#include "core/solid/sculpt/appendicular/head_kit.h"

namespace zyga::solid {

namespace {

Shape longBraincase(const HeadRuler& h) {
  const double l = h.length;
  const auto station = [&](double x, double y, double low, double high, double square) {
    return Station{x * l, y * h.halfWidth, (high - low) / 2 * h.height, 0, (high + low) / 2 * h.height, square};
  };
  const Shape box = loft(Frame::Identity(),
                         {station(0.012, 0.36, -0.06, 0.42, 0.3), station(0.09, 0.44, -0.18, 0.50, 0.3),
                          station(0.19, 0.42, -0.20, 0.50, 0.2), station(0.29, 0.32, -0.08, 0.50, 0.2)},
                         0.025 * l);
  const Shape condyle = ellipsoid(Point(0.004 * l, 0, 0), Point(0.034, 0.037, 0.034) * l);
  const Shape neck = strut(Point(0.0, 0, 0), Point(0.08 * l, 0, 0.03 * h.height), {0.028 * l, 0.028 * l},
                           {0.045 * l, 0.045 * l}, kSide);
  const Shape wing = bar(
      h,
      {{{0.040, 0.20, 0.24}, 0.042, 0.018}, {{0.026, 0.52, 0.18}, 0.036, 0.015}, {{0.018, 0.80, 0.04}, 0.030, 0.013}},
      kUp);
  const Shape process = bar(
      h,
      {{{0.12, 0.14, -0.06}, 0.022, 0.020}, {{0.20, 0.24, -0.24}, 0.016, 0.015}, {{0.27, 0.30, -0.36}, 0.015, 0.014}},
      kSide);
  Shape brain = smoothUnion({box, condyle, neck, symmetric(unite({wing, process}))}, 0.022 * l);
  const Point magnum = h.at(-0.01, 0, 0.175);
  return smoothCut(brain,
                   roundCone(magnum - Point(0.06 * l, 0, 0), magnum + Point(0.10 * l, 0, 0), 0.025 * l, 0.022 * l),
                   0.010 * l);
}

Shape longRoof(const HeadRuler& h) {
  const double l = h.length, w = h.halfWidth;
  Frame frame = Frame::Identity();
  frame.translation() = h.at(0.20, 0, 0.48);
  const std::vector<Eigen::Vector2d> half{{0.19 * l, 0.18 * w},  {0.15 * l, 0.40 * w},  {0.08 * l, 0.62 * w},
                                          {0.01 * l, 0.72 * w},  {-0.05 * l, 0.70 * w}, {-0.08 * l, 0.50 * w},
                                          {-0.11 * l, 0.42 * w}, {-0.155 * l, 0.46 * w}};
  std::vector<Eigen::Vector2d> outline = half;
  for (auto p = half.rbegin(); p != half.rend(); ++p) outline.push_back({p->x(), -p->y()});
  return plate(frame, outline, {0.042 * l, 0.028 * l, 0.05 * l, -0.5 / l, -0.4 / w});
}

Shape longCheek(const HeadRuler& h) {
  std::vector<Shape> struts;
  const auto add = [&](const std::vector<BarKnot>& knots, const Point& wide) { struts.push_back(bar(h, knots, wide)); };
  add({{{0.145, 0.64, 0.44}, 0.030, 0.017},
       {{0.150, 0.80, 0.28}, 0.026, 0.014},
       {{0.172, 0.90, 0.04}, 0.018, 0.012},
       {{0.215, 0.93, -0.18}, 0.022, 0.012},
       {{0.270, 0.91, -0.32}, 0.036, 0.013}},
      kAhead);
  add({{{0.150, 0.80, 0.30}, 0.022, 0.014},
       {{0.100, 0.82, 0.26}, 0.020, 0.014},
       {{0.055, 0.78, 0.18}, 0.030, 0.016},
       {{0.030, 0.74, 0.06}, 0.026, 0.015}},
      kUp);
  // The pillar slants far forward to the hinge.
  add({{{0.060, 0.76, 0.20}, 0.030, 0.017},
       {{0.110, 0.77, -0.04}, 0.026, 0.015},
       {{0.190, 0.78, -0.28}, 0.026, 0.015},
       {{0.262, 0.78, -0.45}, 0.026, 0.022}},
      kAhead);
  add({{{0.256, 0.70, -0.47}, 0.022, 0.017}, {{0.278, 0.85, -0.47}, 0.022, 0.017}}, kAhead);
  add({{{0.235, 0.84, -0.40}, 0.022, 0.012},
       {{0.320, 0.91, -0.385}, 0.022, 0.012},
       {{0.420, 0.89, -0.37}, 0.026, 0.013},
       {{0.53, 0.76, -0.34}, 0.036, 0.014},
       {{0.64, 0.62, -0.33}, 0.040, 0.012}},
      kUp);
  add({{{0.325, 0.42, 0.46}, 0.036, 0.018},
       {{0.335, 0.60, 0.28}, 0.026, 0.015},
       {{0.338, 0.76, 0.04}, 0.020, 0.013},
       {{0.332, 0.86, -0.16}, 0.024, 0.013},
       {{0.318, 0.91, -0.32}, 0.036, 0.013}},
      kAhead);
  add({{{0.345, 0.40, 0.44}, 0.030, 0.016},
       {{0.410, 0.46, 0.30}, 0.024, 0.014},
       {{0.480, 0.58, 0.10}, 0.030, 0.014},
       {{0.540, 0.70, -0.08}, 0.042, 0.016},
       {{0.60, 0.72, -0.20}, 0.05, 0.018}},
      kAhead);
  const Shape brow = bar(h,
                         {{{0.140, 0.62, 0.43}, 0.022, 0.015},
                          {{0.20, 0.70, 0.44}, 0.022, 0.013},
                          {{0.27, 0.60, 0.45}, 0.024, 0.015},
                          {{0.33, 0.42, 0.45}, 0.026, 0.016}},
                         kSide);
  struts.push_back(brow);
  return smoothUnion(struts, 0.044 * h.length);
}

/// A long flat-sided trough that broadens to a square front.
Shape longMuzzle(const HeadRuler& h, const ToothArch& arch) {
  const double l = h.length;
  struct Step {
    double x, top, wide;
  };
  std::vector<Station> stations;
  for (const Step& s : {Step{0.37, 0.49, 0.40}, Step{0.43, 0.40, 0.46}, Step{0.50, 0.27, 0.56}, Step{0.58, 0.15, 0.66},
                        Step{0.67, 0.03, 0.70}, Step{0.76, -0.075, 0.69}, Step{0.84, -0.155, 0.70},
                        Step{0.905, -0.225, 0.73}, Step{0.945, -0.285, 0.72}, Step{0.972, -0.345, 0.62}}) {
    const double low = arch.z + (s.x < 0.60 ? (0.60 - s.x) * 0.9 : 0);
    stations.push_back({s.x * l, s.wide * h.halfWidth, (s.top - low) / 2 * h.height, 0, (s.top + low) / 2 * h.height,
                        s.x < 0.7 ? 0.1 : 0.38});
  }
  const Shape whole = loft(Frame::Identity(), stations, 0.030 * l);
  const Shape inside = ellipsoid(h.at(0.43, 0, -0.06), Point(0.150 * l, 0.46 * h.halfWidth, 0.32 * h.height));
  const Shape window = ellipsoid(h.at(0.42, 0.62, 0.02), Point(0.075 * l, 0.55 * h.halfWidth, 0.20 * h.height),
                                 Eigen::AngleAxisd(0.35, Point::UnitY()).toRotationMatrix());
  const Shape vault = ellipsoid(h.at(0.70, 0, -0.48), Point(0.22 * l, 0.54 * h.halfWidth, 0.11 * h.height));
  const Shape nostril = ellipsoid(h.at(0.400, 0, 0.44), Point(0.080 * l, 0.28 * h.halfWidth, 0.26 * h.height),
                                  Eigen::AngleAxisd(0.5, Point::UnitY()).toRotationMatrix());
  Shape bone = whole;
  for (const Shape& hollow : {inside, vault, nostril, symmetric(window)}) bone = smoothCut(bone, hollow, 0.016 * l);
  // Paired ridges that rise from the tip to the nostril, and the swollen rim over the teeth.
  const Shape ridges = symmetric(bar(h,
                                     {{{0.93, 0.12, -0.285}, 0.016, 0.010},
                                      {{0.80, 0.14, -0.125}, 0.018, 0.012},
                                      {{0.64, 0.15, 0.055}, 0.018, 0.012},
                                      {{0.54, 0.17, 0.19}, 0.008, 0.004}},
                                     kSide));
  std::vector<Knot> rim;
  for (int i = 0; i <= 10; ++i) {
    const Point p = arch.at(0.002 + i * 1.05 / 10);
    rim.push_back({h.at(p.x(), p.y(), p.z() + 0.05), {(0.018 - 0.0012 * i) * l, (0.014 - 0.0012 * i) * l}, kUp});
  }
  bone = smoothUnion({bone, ridges, symmetric(tube(rim, kUp))}, 0.020 * l);
  // Slit in front of the opening before the eye, and the long facial groove.
  const auto slit = [&](double side) {
    return bar(h,
               {{{0.575, 0.78 * side, -0.12}, 0.020, 0.014},
                {{0.63, 0.80 * side, -0.17}, 0.022, 0.016},
                {{0.68, 0.82 * side, -0.21}, 0.012, 0.012}},
               kUp);
  };
  return smoothCut(bone, unite({slit(1), slit(-1)}), 0.014 * l);
}

Shape longPalate(const HeadRuler& h) {
  const Shape wing = bar(h,
                         {{{0.20, 0.66, -0.30}, 0.036, 0.012},
                          {{0.30, 0.42, -0.30}, 0.034, 0.012},
                          {{0.42, 0.24, -0.28}, 0.026, 0.013},
                          {{0.60, 0.12, -0.30}, 0.022, 0.016}},
                         kUp);
  const Shape hook = bar(
      h,
      {{{0.40, 0.30, -0.29}, 0.016, 0.012}, {{0.46, 0.56, -0.33}, 0.016, 0.012}, {{0.52, 0.76, -0.36}, 0.020, 0.014}},
      kAhead);
  const Shape foot = bar(h, {{{0.27, 0.30, -0.35}, 0.018, 0.014}, {{0.28, 0.42, -0.30}, 0.018, 0.014}}, kUp);
  const Shape sill = bar(
      h, {{{0.18, 0.30, 0.08}, 0.036, 0.012}, {{0.21, 0.38, -0.12}, 0.024, 0.010}, {{0.24, 0.46, -0.28}, 0.018, 0.010}},
      kAhead);
  return symmetric(smoothUnion({wing, hook, foot, sill}, 0.016 * h.length));
}

}  // namespace

Shape longSkull(const anatomy::Bone& skull) {
  const HeadRuler h(skull);
  const double l = h.length;
  const ToothArch arch = upperArch(skull);
  Shape bone = smoothUnion({longBraincase(h), longRoof(h), symmetric(longCheek(h)), longMuzzle(h, arch), longPalate(h)},
                           0.026 * l);
  const Shape temple =
      symmetric(ellipsoid(h.at(0.115, 0.60, 0.47), Point(0.030 * l, 0.14 * h.halfWidth, 0.14 * h.height)));
  bone = smoothCut(bone, temple, 0.010 * l);
  return smoothUnion(bone, symmetric(teeth(h, arch, upperTeeth(skull))), 0.003 * l);
}

}  // namespace zyga::solid
