#include <cmath>
#include <numbers>

#include "core/solid/sculpt/appendicular/appendicular.h"
#include "core/solid/sculpt/appendicular/limb_kit.h"

namespace zyga::solid {

namespace {

/// The head, and the upper end that falls from it in one slope to the greater trochanter, without a saddle between.
Shape thighHead(const LongBone& b, double out) {
  const double w = b.proximal() - out - 0.073;  // of the outer corner from the axis
  const Point down(1, 0, 0);
  const Shape head = b.lump({0.075, 0.002, -out}, {0.075, 0.072, 0.075});
  const Shape end = tube(
      {b.section({0.077, 0.002, -out}, 0.073, 0.068, down), b.section({0.096, 0.0, -0.55 * out}, 0.078, 0.058, down),
       b.section({0.122, -0.004, 0.25 * w}, 0.086, 0.050, down),
       b.section({0.150, -0.008, 0.74 * w}, 0.082, 0.042, down)},
      b.along(1, 0, 0));
  return smoothUnion(head, end, b.blend(0.02));
}

/// Two condyles that bulge backwards, the inner one larger, with a groove between them behind and a shallow one in
/// front; where the thigh stands outward the inner one ends higher.
Shape thighEnd(const LongBone& b, double bevelInDegrees) {
  const double w = b.distal() / 2, rise = 0.52 * w * std::tan(bevelInDegrees * std::numbers::pi / 180);
  const Shape inner = b.lump({0.925 - rise, -0.030, -0.52 * w}, {0.075, 0.096, 0.52 * w});
  const Shape outer = b.lump({0.925, -0.034, 0.52 * w}, {0.075, 0.088, 0.47 * w});
  const Shape rib = b.ridge({{0.91, -0.070, 0.72 * w}, {0.78, -0.030, 0.52 * w}}, {0.026, 0.010});
  return smoothUnion({inner, outer, rib}, b.blend(0.03));
}

}  // namespace

Shape femurShape(const Bone& femur, double bevelInDegrees) {
  const LongBone b(femur);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const double out = femur.landmark("top").y() / b.length(), bent = out - 0.105;  // the head inward of the shaft
  const Shape shaft = b.body({{0.13, 0.044, 0.66 * p, 0, -0.25 * bent},
                              {0.22, 0.050, std::max(1.22 * s, 0.54 * p), 0, 0.002 - 0.05 * bent},
                              {0.34, 0.70 * s, 1.06 * s, 0, 0.15 * bent},
                              {0.50, 0.66 * s, s, 0, 0},
                              {0.66, 0.66 * s, 1.02 * s, 0, 0},
                              {0.82, 0.062, 0.84 * d, -0.004, 0},
                              {0.94, 0.065, 0.90 * d, -0.010, 0}},
                             0.03);
  const Shape trochanter =
      b.ridge({{0.41, -0.44 * s, -0.50 * s}, {0.48, -0.58 * s, -0.68 * s}, {0.55, -0.46 * s, -0.56 * s}},
              {0.012, 0.021, 0.012});
  const Shape bulge =
      b.ridge({{0.17, -0.004, 0.60 * p + 0.1 * bent}, {0.28, 0.0, 0.86 * s + 0.6 * bent}, {0.42, 0.0, 0.62 * s}},
              {0.032, 0.030, 0.012});
  Shape bone = smoothUnion({shaft, thighHead(b, out), thighEnd(b, bevelInDegrees), bulge}, b.blend(0.045));
  bone = smoothUnion(bone, trochanter, b.blend(0.022));
  const Shape behind = b.ridge({{0.80, -0.105, 0}, {0.90, -0.125, 0.0}, {1.01, -0.120, 0.0}}, {0.016, 0.040, 0.046});
  const Shape front = b.ridge({{0.83, 0.105, 0}, {0.93, 0.092, 0.0}, {1.02, 0.068, 0.0}}, {0.028, 0.028, 0.022});
  bone = smoothCut(bone, behind, b.blend(0.025));
  bone = smoothCut(bone, front, b.blend(0.03));
  return weathered(bone, b.blend(0.0007), b.blend(0.17));
}

Shape tibiaShape(const Bone& tibia) {
  const LongBone b(tibia);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.0, 0.100, 0.80 * p, -0.015, 0},
                              {0.04, 0.118, 0.86 * p, -0.012, 0},
                              {0.12, 0.098, 0.72 * p, -0.006, 0},
                              {0.26, 0.070, 0.98 * s, 0, 0},
                              {0.48, 0.82 * s, s, 0, 0},
                              {0.66, 0.80 * s, 1.02 * s, 0, 0},
                              {0.82, 0.066, 0.74 * d, 0, 0, 0.1},
                              {0.94, 0.078, 0.98 * d, 0, 0, 0.15},
                              {1.0, 0.070, 0.92 * d, 0, 0, 0.15}},
                             0.025);
  // The crest stands out from the front outer corner of the head and dies away down the shaft; the fibula lies in the
  // bed behind it.
  const Point out = b.along(0, 1, 0.6);
  const Shape crest = tube({{b.at(0.045, 0.098, 0.045), {b.blend(0.058), b.blend(0.028)}, out},
                            {b.at(0.12, 0.112, 0.064), {b.blend(0.064), b.blend(0.022)}, out},
                            {b.at(0.21, 0.090, 0.054), {b.blend(0.048), b.blend(0.018)}, out},
                            {b.at(0.36, 0.048, 0.022), {b.blend(0.022), b.blend(0.014)}, out}},
                           out);
  const Point fore(0, 1, 0);
  const Shape bed =
      tube({b.section({-0.05, -0.024, 0.150}, 0.102, 0.044, fore), b.section({0.06, -0.022, 0.150}, 0.098, 0.044, fore),
            b.section({0.18, -0.020, 0.148}, 0.074, 0.040, fore), b.section({0.34, -0.018, 0.144}, 0.056, 0.036, fore),
            b.section({0.70, -0.014, 0.152}, 0.050, 0.034, fore), b.section({0.92, -0.012, 0.152}, 0.070, 0.052, fore),
            b.section({1.06, -0.012, 0.152}, 0.074, 0.054, fore)},
           b.along(0, 1, 0));
  const Shape ankle = b.lump({0.965, -0.045, -0.35 * d}, {0.055, 0.050, 0.50 * d});
  Shape bone = smoothUnion({shaft, crest, ankle}, b.blend(0.045));
  bone = smoothCut(bone, bed, b.blend(0.012));
  // Step for the astragalus' rising wedge.
  bone = smoothCut(bone, b.lump({1.04, 0.0, 0.46 * d}, {0.088, 0.095, 0.48 * d}), b.blend(0.02));
  return weathered(bone, b.blend(0.0007), b.blend(0.17));
}

Shape fibulaShape(const Bone& fibula) {
  const LongBone b(fibula);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.0, 0.80 * p, 0.030, -0.004, 0.000},
                              {0.035, p, 0.040, 0, 0.002},
                              {0.12, 0.80 * p, 0.036, 0.004, 0.004},
                              {0.24, 1.12 * s, 0.030, 0.004, -0.008},
                              {0.40, 1.10 * s, 0.034, 0.002, -0.014},
                              {0.60, s, 0.034, -0.002, -0.014},
                              {0.80, 1.05 * s, 0.030, -0.002, -0.006},
                              {0.93, 0.96 * d, 0.046, 0, -0.004},
                              {1.0, 0.86 * d, 0.044, 0, -0.006}},
                             0.03);
  const Shape scar = b.ridge({{0.34, 0.01, 0.006}, {0.44, 0.004, 0.012}, {0.55, -0.004, 0.006}}, {0.014, 0.025, 0.012});
  const Shape crest =
      b.ridge({{0.03, 0.80 * p, -0.006}, {0.10, 0.62 * p, -0.004}, {0.20, 0.9 * s, 0}}, {0.022, 0.020, 0.014});
  return weathered(smoothUnion({shaft, scar, crest}, b.blend(0.025)), b.blend(0.0007), b.blend(0.17));
}

Shape astragalusShape(const Bone& astragalus) {
  const double l = astragalus.measures.value(anatomy::Measure::Length) / 2;
  const double w = astragalus.measures.value(anatomy::Measure::Width) / 2;
  const double h = astragalus.measures.value(anatomy::Measure::Height) / 2;
  // A roller from side to side, thick outside and tapering inward, flat above.
  Frame across = Frame::Identity();
  across.linear().col(0) = Point::UnitY();
  across.linear().col(1) = -Point::UnitX();
  const Shape roller = loft(across,
                            {{-w, 0.52 * l, 0.62 * h, 0, 0.25 * h, 0.2},
                             {-0.55 * w, 0.84 * l, 0.92 * h, 0, 0.05 * h, 0.1},
                             {0.2 * w, l, 1.12 * h, 0, -0.10 * h, 0},
                             {0.75 * w, 0.98 * l, 1.12 * h, 0, -0.10 * h, 0.1},
                             {w, 0.80 * l, 0.88 * h, 0, 0, 0.2}},
                            0.5 * h);
  const Shape flat = intersect(roller, halfSpace({0, 0, 0.92 * h}, Point(0.05, -0.06, 1).normalized()), 0.25 * h);
  // The process that rises behind into the step of the tibia, and the flat face for the fibula outside.
  const Shape ascending = ellipsoid({-0.10 * l, 0.46 * w, 0.90 * h}, {0.66 * l, 0.38 * w, 1.25 * h});
  const Shape bone = smoothUnion(flat, ascending, 0.5 * h);
  const Shape fibular = halfSpace({0, 0.93 * w, 0}, Point(0, 1, 0.12).normalized());
  return weathered(intersect(bone, fibular, 0.12 * h), 0.03 * h, 1.2 * h);
}

}  // namespace zyga::solid
