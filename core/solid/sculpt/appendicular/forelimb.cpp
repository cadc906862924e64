#include "core/solid/sculpt/appendicular/appendicular.h"
#include "core/solid/sculpt/appendicular/limb_kit.h"

namespace zyga::solid {

namespace {

/// The crest: a plate along the front outer edge of the upper half that leans inward over the hollow front.
Shape deltopectoralCrest(const LongBone& b) {
  const double p = b.proximal() / 2, s = b.shaft() / 2;
  return b.web({{0.075, 0.010, 0.80 * p},
                {0.13, 0.088, 0.70 * p},
                {0.22, 0.112, 0.60 * p},
                {0.34, 0.112, 0.80 * s},
                {0.42, 0.082, 0.62 * s},
                {0.50, 0.030, 0.50 * s},
                {0.44, 0.000, 0.70 * s},
                {0.26, 0.000, 0.72 * p}},
               0.044);
}

}  // namespace

Shape humerusShape(const Bone& humerus) {
  const LongBone b(humerus);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.020, 0.038, 0.66 * p, 0, 0},
                              {0.05, 0.044, 0.90 * p, 0, 0},
                              {0.11, 0.044, 0.97 * p, 0, 0},
                              {0.20, 0.046, 0.82 * p, 0, 0},
                              {0.33, 0.052, 1.30 * s, 0, 0},
                              {0.48, 0.80 * s, 1.02 * s, 0, 0},
                              {0.60, 0.78 * s, s, 0, 0},
                              {0.74, 0.068, 1.14 * s, 0, 0},
                              {0.87, 0.060, 0.88 * d, 0.002, 0},
                              {0.95, 0.058, 0.97 * d, 0.004, 0},
                              {1.0, 0.050, 0.88 * d, 0.004, 0}},
                             0.028);
  // The head lies over the joint, inward of the shaft's axis.
  const double in = humerus.landmark("top").y() / b.length();
  const Shape head = b.lump({0.058, -0.018, -in}, {0.058, 0.068, 0.40 * p});
  const Shape innerCorner = b.lump({0.095, -0.004, -0.76 * p}, {0.060, 0.046, 0.24 * p});
  Shape bone = smoothUnion({shaft, head, innerCorner}, b.blend(0.05));
  bone = smoothUnion(bone, deltopectoralCrest(b), b.blend(0.03));
  const Shape hollow = b.lump({0.19, 0.104, -0.035}, {0.19, 0.070, 0.58 * p});
  bone = smoothCut(bone, hollow, b.blend(0.03));
  const Shape radial = b.lump({0.945, 0.026, 0.44 * d}, {0.055, 0.046, 0.44 * d});
  const Shape ulnar = b.lump({0.945, 0.024, -0.46 * d}, {0.055, 0.044, 0.46 * d});
  bone = smoothUnion({bone, radial, ulnar}, b.blend(0.045));
  const Shape fossa = b.lump({0.90, -0.100, 0}, {0.11, 0.062, 0.42 * d});
  const Shape groove = b.ridge({{0.88, 0.106, 0}, {0.95, 0.100, 0}, {1.03, 0.07, 0}}, {0.018, 0.030, 0.026});
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
  // Three flat ridges at the upper end: two in front hold the radius between them, the inner one longer, and one
  // behind rises to the elbow's heel.
  const auto arm = [&](double lateral, double cranial) {
    const double side = lateral > 0 ? 1 : -1;
    return b.web({{0.030, -0.050, 0},
                  {0.028, 0.55 * cranial, 0.60 * lateral},
                  {0.034, cranial, lateral},
                  {0.075, 1.02 * cranial, 1.02 * lateral},
                  {0.15, 0.78 * cranial, 0.80 * lateral},
                  {0.30, 0.60 * s, 0.80 * s * side},
                  {0.48, 0.2 * s, 0.35 * s * side},
                  {0.42, -0.02, 0}},
                 0.070);
  };
  const Shape heel = b.lump({0.048, -0.068, 0.012}, {0.048, 0.058, 0.052});
  const Shape hindKeel = b.web({{0.02, -0.050, 0.008},
                                {0.03, -0.112, 0.010},
                                {0.09, -0.120, 0.010},
                                {0.26, -0.082, 0.006},
                                {0.48, -0.9 * s, 0},
                                {0.44, 0, 0}},
                               0.056);
  Shape bone = smoothUnion({shaft, arm(-0.52 * p, 0.34 * p), arm(0.44 * p, 0.22 * p), heel, hindKeel}, b.blend(0.035));
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
  up.translation() = middle;
  // Drawn after the arc of the metacarpals below: round in front, hollow behind.
  const Shape disc = plate(up,
                           scaled({{0.98, 0.10},
                                   {0.80, 0.66},
                                   {0.30, 0.96},
                                   {-0.50, 0.94},
                                   {-0.94, 0.66},
                                   {-0.78, 0.20},
                                   {-0.70, -0.16},
                                   {-0.90, -0.60},
                                   {-0.56, -0.94},
                                   {0.28, -0.98},
                                   {0.82, -0.66}},
                                  l, w),
                           {2.0 * h, 1.35 * h, 0.5 * w, 0, 0});
  const Shape dish = ellipsoid(middle + Point(0, 0, 1.25 * h), {0.62 * l, 0.62 * w, 0.5 * h});
  return weathered(smoothCut(disc, dish, 0.4 * h), 0.015 * h, 2.5 * h);
}

}  // namespace zyga::solid
