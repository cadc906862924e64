#include "core/solid/sculpt/appendicular/limb_kit.h"
#include "core/solid/sculpt/appendicular/parts.h"

namespace zyga::solid {

namespace {

/// The crest runs down the front outer edge and bends inward over the hollow front of the upper third.
Shape deltopectoralCrest(const LongBone& b) {
  const double p = b.proximal() / 2, s = b.shaft() / 2;
  const Point out = b.along(0, 1, -0.30);
  return tube({{b.at(0.06, 0.010, 0.82 * p), {b.blend(0.030), b.blend(0.024)}, out},
               {b.at(0.16, 0.030, 0.83 * p), {b.blend(0.052), b.blend(0.024)}, out},
               {b.at(0.27, 0.046, 0.74 * p), {b.blend(0.062), b.blend(0.024)}, out},
               {b.at(0.37, 0.042, 1.20 * s), {b.blend(0.054), b.blend(0.024)}, out},
               {b.at(0.45, 0.028, 0.86 * s), {b.blend(0.034), b.blend(0.022)}, out},
               {b.at(0.54, 0.020, 0.50 * s), {b.blend(0.020), b.blend(0.020)}, out}},
              out);
}

}  // namespace

Shape humerusShape(const Bone& humerus) {
  const LongBone b(humerus);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.012, 0.036, 0.62 * p, 0, -0.010},
                              {0.05, 0.044, 0.90 * p, 0, -0.006},
                              {0.11, 0.044, 0.97 * p, 0, -0.002},
                              {0.20, 0.046, 0.84 * p, 0, 0.004},
                              {0.33, 0.052, 1.34 * s, -0.002, 0.010},
                              {0.48, 0.80 * s, 1.04 * s, 0, 0.006},
                              {0.60, 0.78 * s, s, 0, 0.002},
                              {0.74, 0.068, 1.14 * s, 0.002, 0},
                              {0.87, 0.060, 0.88 * d, 0.004, 0},
                              {0.95, 0.056, 0.97 * d, 0.004, 0},
                              {1.0, 0.048, 0.86 * d, 0.002, 0}},
                             0.028);
  const Shape head = b.lump({0.060, -0.020, -0.02}, {0.060, 0.075, 0.38 * p});
  const Shape innerCorner = b.lump({0.085, -0.004, -0.78 * p}, {0.060, 0.050, 0.24 * p});
  Shape bone = smoothUnion({shaft, head, innerCorner}, b.blend(0.04));
  bone = smoothUnion(bone, deltopectoralCrest(b), b.blend(0.035));
  const Shape hollow = b.lump({0.19, 0.108, -0.035}, {0.19, 0.076, 0.62 * p});
  bone = smoothCut(bone, hollow, b.blend(0.03));
  const Shape radial = b.lump({0.945, 0.034, 0.44 * d}, {0.055, 0.058, 0.40 * d});
  const Shape ulnar = b.lump({0.945, 0.030, -0.46 * d}, {0.055, 0.054, 0.44 * d});
  bone = smoothUnion({bone, radial, ulnar}, b.blend(0.025));
  const Shape fossa = b.lump({0.90, -0.100, 0}, {0.11, 0.062, 0.42 * d});
  const Shape groove = b.ridge({{0.88, 0.112, 0}, {0.95, 0.104, 0}, {1.02, 0.07, 0}}, {0.016, 0.024, 0.022});
  bone = smoothCut(smoothCut(bone, fossa, b.blend(0.025)), groove, b.blend(0.02));
  return weathered(bone, b.blend(0.0007), b.blend(0.17));
}

Shape ulnaShape(const Bone& ulna) {
  const LongBone b(ulna);
  const double p = b.proximal(), s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.035, 0.070, 0.075, -0.01, 0},
                              {0.12, 0.075, 0.076, -0.008, 0},
                              {0.28, 1.0 * s, 1.05 * s, -0.002, 0},
                              {0.50, 0.92 * s, s, 0, 0},
                              {0.74, 0.86 * s, 0.94 * s, 0, 0},
                              {0.90, 0.84 * d, 0.90 * d, 0.002, 0},
                              {0.97, 0.96 * d, d, 0.004, 0},
                              {1.0, 0.84 * d, 0.88 * d, 0.004, 0}},
                             0.025);
  // Two arms in front hold the radius between them, the inner one longer; a knob stands up behind.
  const auto arm = [&](double lateral, double cranial, double reach) {
    return b.ridge({{0.075, -0.01, 0.25 * lateral}, {0.060, 0.6 * cranial, 0.7 * lateral}, {0.070, cranial, lateral}},
                   {0.056, 0.046, reach});
  };
  // Thin walls run down from the arms to the shaft.
  const auto wall = [&](double lateral, double cranial) {
    const double side = lateral > 0 ? 1 : -1;
    return b.web({{0.050, -0.035, 0},
                  {0.060, 0.92 * cranial, 0.92 * lateral},
                  {0.14, 0.74 * cranial, 0.76 * lateral},
                  {0.30, 0.55 * s, 0.75 * s * side},
                  {0.46, 0.2 * s, 0.35 * s * side},
                  {0.40, -0.02, 0}},
                 0.060);
  };
  const Shape knob = b.lump({0.052, -0.070, 0.02}, {0.052, 0.062, 0.060});
  const Shape hindKeel =
      b.ridge({{0.07, -0.10, 0.02}, {0.22, -0.070, 0.012}, {0.42, -0.7 * s, 0}}, {0.032, 0.026, 0.018});
  Shape bone = smoothUnion({shaft, arm(-0.50 * p, 0.34 * p, 0.036), arm(0.42 * p, 0.22 * p, 0.036),
                            wall(-0.50 * p, 0.34 * p), wall(0.42 * p, 0.22 * p), knob, hindKeel},
                           b.blend(0.035));
  // The elbow's bearing surface, hollowed by the condyles above.
  const double reach = -ulna.landmark("face").z();
  const Shape bearing = ellipsoid(Point(0.02 * b.length(), 0, 0), Point(1.25 * reach, 0.30 * b.length(), reach));
  bone = smoothCut(bone, bearing, b.blend(0.02));
  return weathered(bone, b.blend(0.0007), b.blend(0.17));
}

Shape radiusShape(const Bone& radius) {
  const LongBone b(radius);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.0, 0.72 * p, 0.86 * p, 0, 0},
                              {0.03, 0.80 * p, 0.98 * p, 0, 0},
                              {0.09, 0.70 * p, 0.82 * p, 0, 0},
                              {0.22, 0.84 * s, 1.06 * s, 0.004, 0},
                              {0.48, 0.78 * s, s, 0.010, 0.002},
                              {0.72, 0.84 * s, 1.08 * s, 0.006, 0},
                              {0.90, 0.72 * d, 0.88 * d, 0, 0, 0.15},
                              {0.965, 0.80 * d, d, 0, 0, 0.2},
                              {1.0, 0.70 * d, 0.90 * d, 0, 0, 0.2}},
                             0.025);
  const Shape line = b.ridge({{0.30, -0.55 * s, 0.75 * s}, {0.60, -0.6 * s, 0.8 * s}, {0.88, -0.5 * d, 0.55 * d}},
                             {0.012, 0.013, 0.016});
  return weathered(smoothUnion(shaft, line, b.blend(0.025)), b.blend(0.0007), b.blend(0.17));
}

Shape carpalShape(const Bone& carpal) {
  const double l = carpal.measures.value(anatomy::Measure::Length) / 2;
  const double w = carpal.measures.value(anatomy::Measure::Width) / 2;
  const double h = carpal.measures.value(anatomy::Measure::Height) / 2;
  const Point middle = carpal.landmark("middle");
  Frame up = Frame::Identity();
  up.linear() << 0, 1, 0, 0, 0, 1, 1, 0, 0;  // x up, y cranial, z left
  up.translation() = middle;
  const Shape disc = loft(up,
                          {{-0.94 * h, 0.90 * l, 0.90 * w, 0, 0, 0.35},
                           {-0.2 * h, l, w, 0, 0, 0.3},
                           {0.5 * h, 0.96 * l, 0.95 * w, 0, 0, 0.25},
                           {h, 0.72 * l, 0.74 * w, 0, 0, 0.2}},
                          0.55 * h);
  const Shape dish = ellipsoid(middle + Point(0, 0, 1.25 * h), {0.62 * l, 0.62 * w, 0.5 * h});
  return weathered(smoothCut(disc, dish, 0.4 * h), 0.015 * h, 2.5 * h);
}

}  // namespace zyga::solid
