#include "core/solid/sculpt/appendicular/head_kit.h"

namespace zyga::solid {

namespace {

/// The box around the brain, closed, with the condyle behind and the wings that reach out to the cheeks.
Shape tallBraincase(const HeadRuler& h) {
  const double l = h.length;
  Frame along = Frame::Identity();
  const auto station = [&](double x, double y, double low, double high, double square) {
    return Station{x * l, y * h.halfWidth, (high - low) / 2 * h.height, 0, (high + low) / 2 * h.height, square};
  };
  const Shape box = loft(along,
                         {station(0.014, 0.36, -0.04, 0.40, 0.3), station(0.10, 0.46, -0.15, 0.48, 0.3),
                          station(0.22, 0.44, -0.18, 0.50, 0.2), station(0.34, 0.34, -0.08, 0.50, 0.2)},
                         0.03 * l);
  const Shape condyle = ellipsoid(Point(0.004 * l, 0, 0), Point(0.042, 0.046, 0.043) * l);
  const Shape neck =
      strut(Point(0.0, 0, 0), Point(0.09 * l, 0, 0.02 * h.height), {0.034 * l, 0.034 * l}, {0.05 * l, 0.05 * l}, kSide);
  const Shape wing = bar(
      h,
      {{{0.045, 0.20, 0.20}, 0.055, 0.022}, {{0.030, 0.52, 0.16}, 0.048, 0.018}, {{0.022, 0.80, 0.05}, 0.040, 0.016}},
      kUp);
  const Shape tuber = bar(h, {{{0.07, 0.14, -0.02}, 0.034, 0.030}, {{0.085, 0.20, -0.17}, 0.030, 0.024}}, kSide);
  const Shape process = bar(
      h,
      {{{0.13, 0.14, -0.04}, 0.030, 0.026}, {{0.17, 0.26, -0.22}, 0.022, 0.020}, {{0.19, 0.32, -0.30}, 0.020, 0.018}},
      kSide);
  Shape brain = smoothUnion({box, condyle, neck, symmetric(unite({wing, tuber, process}))}, 0.028 * l);
  const Point magnum = h.at(-0.01, 0, 0.145);
  return smoothCut(brain,
                   roundCone(magnum - Point(0.06 * l, 0, 0), magnum + Point(0.10 * l, 0, 0), 0.030 * l, 0.026 * l),
                   0.012 * l);
}

/// Roof of the hind skull, with the brow that overhangs the eye.
Shape tallRoof(const HeadRuler& h) {
  const double l = h.length, w = h.halfWidth;
  Frame frame = Frame::Identity();
  frame.translation() = h.at(0.28, 0, 0.475);
  const std::vector<Eigen::Vector2d> half{{0.21 * l, 0.30 * w},  {0.17 * l, 0.50 * w},  {0.08 * l, 0.66 * w},
                                          {0.0, 0.74 * w},       {-0.06 * l, 0.72 * w}, {-0.10 * l, 0.52 * w},
                                          {-0.15 * l, 0.44 * w}, {-0.20 * l, 0.50 * w}};
  std::vector<Eigen::Vector2d> outline = half;
  for (auto p = half.rbegin(); p != half.rend(); ++p) outline.push_back({p->x(), -p->y()});
  return plate(frame, outline, {0.052 * l, 0.034 * l, 0.05 * l, -0.9 / l, -0.5 / w});
}

/// The struts of one tallCheek; what lies between them is open: eye, nostril, and the openings before and behind the
/// eye.
Shape tallCheek(const HeadRuler& h) {
  std::vector<Shape> struts;
  const auto add = [&](const std::vector<BarKnot>& knots, const Point& wide) { struts.push_back(bar(h, knots, wide)); };
  // Behind the eye, down to the tallCheek.
  add({{{0.215, 0.64, 0.44}, 0.040, 0.022},
       {{0.228, 0.78, 0.31}, 0.036, 0.018},
       {{0.247, 0.87, 0.12}, 0.024, 0.015},
       {{0.280, 0.91, -0.08}, 0.030, 0.014},
       {{0.325, 0.90, -0.22}, 0.056, 0.015}},
      kAhead);
  // From there back to the corner over the jaw's hinge.
  add({{{0.232, 0.80, 0.33}, 0.032, 0.018},
       {{0.160, 0.83, 0.30}, 0.028, 0.018},
       {{0.090, 0.80, 0.23}, 0.046, 0.022},
       {{0.050, 0.75, 0.10}, 0.036, 0.020}},
      kUp);
  // The pillar that bears the hinge.
  add({{{0.088, 0.76, 0.22}, 0.044, 0.022},
       {{0.090, 0.76, 0.02}, 0.038, 0.020},
       {{0.108, 0.78, -0.20}, 0.040, 0.020},
       {{0.148, 0.78, -0.385}, 0.036, 0.034}},
      kAhead);
  add({{{0.140, 0.70, -0.40}, 0.030, 0.022}, {{0.158, 0.86, -0.405}, 0.030, 0.022}}, kAhead);
  // Along the lower edge forward to the tooth row.
  add({{{0.130, 0.84, -0.31}, 0.044, 0.016},
       {{0.210, 0.92, -0.315}, 0.032, 0.015},
       {{0.300, 0.93, -0.275}, 0.042, 0.015},
       {{0.395, 0.89, -0.235}, 0.046, 0.016},
       {{0.48, 0.84, -0.215}, 0.056, 0.018},
       {{0.58, 0.73, -0.215}, 0.060, 0.018}},
      kUp);
  // In front of the eye.
  add({{{0.432, 0.44, 0.46}, 0.056, 0.026},
       {{0.448, 0.58, 0.35}, 0.044, 0.021},
       {{0.452, 0.71, 0.15}, 0.026, 0.018},
       {{0.436, 0.82, -0.04}, 0.028, 0.016},
       {{0.410, 0.88, -0.20}, 0.054, 0.017}},
      kAhead);
  // Slim bar between nostril and the small opening before the eye.
  add({{{0.462, 0.50, 0.38}, 0.034, 0.018},
       {{0.500, 0.60, 0.22}, 0.023, 0.015},
       {{0.540, 0.70, 0.05}, 0.026, 0.015},
       {{0.580, 0.77, -0.09}, 0.050, 0.017},
       {{0.63, 0.71, -0.17}, 0.070, 0.016}},
      kAhead);
  return smoothUnion(struts, 0.040 * h.length);
}

/// Ridge of brow over the eye, with a rough edge.
Shape brow(const HeadRuler& h) {
  return bar(h,
             {{{0.205, 0.62, 0.435}, 0.034, 0.022},
              {{0.27, 0.64, 0.450}, 0.040, 0.020},
              {{0.34, 0.60, 0.460}, 0.040, 0.020},
              {{0.43, 0.46, 0.460}, 0.036, 0.022}},
             kSide);
}

/// Where the floor of the nostril lies over the tallMuzzle, share of the height.
std::vector<Station> muzzleStations(const HeadRuler& h, const ToothArch& arch) {
  const std::vector<std::pair<double, double>> top{{0.53, -0.13},   {0.60, -0.085}, {0.66, -0.05},
                                                   {0.74, -0.025},  {0.81, -0.01},  {0.87, -0.03},
                                                   {0.915, -0.075}, {0.948, -0.13}, {0.968, -0.19}};
  std::vector<Station> stations;
  for (const auto& [x, high] : top) {
    const double low = arch.z + arch.rise * (arch.front - x) / (arch.front - arch.back);
    const double wide = arch.widthAt(std::min(x - 0.028, arch.front - 0.004)) + 0.035;
    stations.push_back(
        {x * h.length, wide * h.halfWidth, (high - low) / 2 * h.height, 0, (high + low) / 2 * h.height, 0.35});
  }
  return stations;
}

/// Upper jaw: a tall, blunt spade around the tooth row, open above into the nostrils and vaulted below.
Shape tallMuzzle(const HeadRuler& h, const ToothArch& arch) {
  const double l = h.length;
  const Shape whole = loft(Frame::Identity(), muzzleStations(h, arch), 0.030 * l);
  const Shape pit = ellipsoid(h.at(0.655, 0, 0.03), Point(0.150 * l, 0.56 * h.halfWidth, 0.145 * h.height));
  const Shape vault = ellipsoid(h.at(0.60, 0, -0.375), Point(0.29 * l, 0.52 * h.halfWidth, 0.12 * h.height));
  const Shape back = ellipsoid(h.at(0.46, 0, -0.17), Point(0.10 * l, 0.52 * h.halfWidth, 0.15 * h.height));
  Shape bone = smoothCut(smoothCut(whole, pit, 0.03 * l), vault, 0.02 * l);
  bone = smoothCut(bone, back, 0.02 * l);
  // Rim of the tooth row, and the step in front of the nostrils.
  std::vector<Knot> rim;
  for (int i = 0; i <= 12; ++i) {
    const Point p = arch.at(0.02 + i * 1.50 / 12);
    rim.push_back({h.at(p.x() + 0.004, p.y() * 1.02, p.z() + 0.030), {0.022 * l, 0.011 * l}, kUp});
  }
  return smoothUnion(bone, symmetric(tube(rim, kUp)), 0.02 * l);
}

/// Slim bar that arches between the two nostrils from the brow to the tip of the tallMuzzle.
Shape nasalBar(const HeadRuler& h) {
  const Shape middle = bar(h,
                           {{{0.40, 0, 0.475}, 0.050, 0.022},
                            {{0.48, 0, 0.510}, 0.036, 0.020},
                            {{0.56, 0, 0.515}, 0.026, 0.018},
                            {{0.640, 0, 0.455}, 0.021, 0.018},
                            {{0.705, 0, 0.33}, 0.018, 0.018},
                            {{0.750, 0, 0.16}, 0.018, 0.019},
                            {{0.800, 0, 0.03}, 0.022, 0.022},
                            {{0.860, 0, -0.06}, 0.036, 0.028}},
                           kSide);
  // The nasal bones widen behind into the brow.
  Frame frame = frameOn(h.at(0.47, 0, 0.482), Point(0.06, 0, 1), kAhead);
  const double w = h.halfWidth, l = h.length;
  const std::vector<Eigen::Vector2d> outline{{0.10 * l, 0.0},        {0.05 * l, 0.17 * w},  {0.0, 0.46 * w},
                                             {-0.06 * l, 0.58 * w},  {-0.12 * l, 0.50 * w}, {-0.12 * l, -0.50 * w},
                                             {-0.06 * l, -0.58 * w}, {0.0, -0.46 * w},      {0.05 * l, -0.17 * w}};
  const Shape nasals = plate(frame, outline, {0.042 * l, 0.030 * l, 0.04 * l, -0.6 / l, -0.8 / w});
  return smoothUnion(middle, nasals, 0.035 * l);
}

/// Palate and tallCheek braces, seen through the openings.
Shape tallPalate(const HeadRuler& h) {
  const Shape wing = bar(h,
                         {{{0.15, 0.66, -0.20}, 0.055, 0.016},
                          {{0.24, 0.46, -0.18}, 0.050, 0.016},
                          {{0.36, 0.28, -0.16}, 0.036, 0.016},
                          {{0.56, 0.14, -0.16}, 0.028, 0.018},
                          {{0.72, 0.08, -0.19}, 0.024, 0.020}},
                         kUp);
  const Shape hook = bar(
      h,
      {{{0.33, 0.34, -0.17}, 0.022, 0.016}, {{0.40, 0.60, -0.22}, 0.022, 0.015}, {{0.47, 0.74, -0.25}, 0.026, 0.018}},
      kAhead);
  const Shape foot = bar(h, {{{0.19, 0.32, -0.28}, 0.026, 0.018}, {{0.21, 0.44, -0.20}, 0.026, 0.018}}, kUp);
  const Shape sill = bar(
      h,
      {{{0.22, 0.30, 0.10}, 0.050, 0.014}, {{0.23, 0.38, -0.06}, 0.030, 0.012}, {{0.235, 0.44, -0.16}, 0.024, 0.012}},
      kAhead);
  return symmetric(smoothUnion({wing, hook, foot, sill}, 0.02 * h.length));
}

}  // namespace

Shape tallSkull(const anatomy::Bone& skull) {
  const HeadRuler h(skull);
  const double l = h.length;
  const ToothArch arch = upperArch(skull);
  Shape bone = smoothUnion({tallBraincase(h), tallRoof(h), symmetric(unite({tallCheek(h), brow(h)})),
                            tallMuzzle(h, arch), nasalBar(h), tallPalate(h)},
                           0.034 * l);
  // Openings on top behind the brow.
  const Shape temple =
      symmetric(ellipsoid(h.at(0.165, 0.60, 0.47), Point(0.042 * l, 0.16 * h.halfWidth, 0.13 * h.height)));
  bone = smoothCut(bone, temple, 0.012 * l);
  return smoothUnion(bone, symmetric(teeth(h, arch, upperTeeth(skull))), 0.004 * l);
}

}  // namespace zyga::solid
