#include "core/solid/sculpt/appendicular/appendicular.h"
#include "core/solid/sculpt/appendicular/limb_kit.h"

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

namespace {

/// Head turned inward on a short neck, the outer corner a little lower.
Shape thighHead(const LongBone& b) {
  const double w = b.proximal() / 2;
  const Shape head = b.lump({0.075, 0.004, -0.105}, {0.075, 0.072, 0.078});
  const Shape neck = b.ridge({{0.085, 0.0, -0.07}, {0.11, -0.002, 0.02}}, {0.062, 0.056});
  const Shape corner = b.lump({0.095, -0.012, 0.52 * w}, {0.075, 0.047, 0.055});
  return smoothUnion({head, neck, corner}, b.blend(0.05));
}

/// Two condyles that bulge backwards, the inner one larger, with a groove between them behind and a shallow one in
/// front.
Shape thighEnd(const LongBone& b) {
  const double w = b.distal() / 2;
  const Shape inner = b.lump({0.925, -0.030, -0.52 * w}, {0.075, 0.098, 0.52 * w});
  const Shape outer = b.lump({0.922, -0.034, 0.52 * w}, {0.072, 0.088, 0.47 * w});
  const Shape rib = b.ridge({{0.91, -0.070, 0.72 * w}, {0.78, -0.030, 0.52 * w}}, {0.026, 0.010});
  return smoothUnion({inner, outer, rib}, b.blend(0.03));
}

}  // namespace

Shape femurShape(const Bone& femur) {
  const LongBone b(femur);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.05, 0.035, 0.62 * p, 0, 0.01},
                              {0.12, 0.046, 0.72 * p, 0, 0.006},
                              {0.22, 0.050, std::max(1.25 * s, 0.56 * p), 0, 0.010},
                              {0.36, 0.051, 1.06 * s, 0.002, 0.004},
                              {0.55, 0.66 * s, s, 0.004, 0},
                              {0.70, 0.68 * s, 1.06 * s, 0.003, 0},
                              {0.84, 0.062, 0.86 * d, -0.004, 0},
                              {0.95, 0.065, 0.90 * d, -0.010, 0}},
                             0.03);
  const Shape trochanter =
      b.ridge({{0.41, -0.44 * s, -0.50 * s}, {0.48, -0.60 * s, -0.66 * s}, {0.55, -0.46 * s, -0.56 * s}},
              {0.012, 0.021, 0.012});
  const Shape bulge =
      b.ridge({{0.14, -0.005, 0.68 * p}, {0.26, 0.0, 1.14 * s}, {0.40, 0.0, 0.80 * s}}, {0.026, 0.026, 0.010});
  Shape bone = smoothUnion({shaft, thighHead(b), thighEnd(b), bulge}, b.blend(0.045));
  bone = smoothUnion(bone, trochanter, b.blend(0.022));
  const Shape behind = b.ridge({{0.80, -0.105, 0}, {0.90, -0.125, 0.0}, {1.01, -0.120, 0.0}}, {0.016, 0.040, 0.046});
  const Shape front = b.ridge({{0.83, 0.105, 0}, {0.93, 0.092, 0.0}, {1.02, 0.060, 0.0}}, {0.030, 0.032, 0.030});
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
  // The crest stands out from the front outer corner of the head and dies away down the shaft.
  const Shape crest = tube({{b.at(0.035, 0.105, 0.035), {b.blend(0.055), b.blend(0.030)}, b.along(0, 1, 0.45)},
                            {b.at(0.11, 0.118, 0.052), {b.blend(0.060), b.blend(0.024)}, b.along(0, 1, 0.45)},
                            {b.at(0.20, 0.094, 0.046), {b.blend(0.046), b.blend(0.020)}, b.along(0, 1, 0.45)},
                            {b.at(0.34, 0.050, 0.020), {b.blend(0.022), b.blend(0.016)}, b.along(0, 1, 0.45)}},
                           b.along(0, 1, 0.45));
  const Shape bed = b.ridge({{-0.02, 0.035, 0.172}, {0.12, 0.03, 0.150}, {0.30, 0.02, 0.135}}, {0.052, 0.050, 0.04});
  const Shape ankle = b.lump({0.965, -0.045, -0.35 * d}, {0.055, 0.050, 0.50 * d});
  Shape bone = smoothUnion({shaft, crest, ankle}, b.blend(0.045));
  bone = smoothCut(bone, bed, b.blend(0.03));
  // Step for the astragalus' rising wedge.
  bone = smoothCut(bone, b.lump({1.03, 0.03, 0.55 * d}, {0.055, 0.075, 0.42 * d}), b.blend(0.02));
  return weathered(bone, b.blend(0.0007), b.blend(0.17));
}

Shape fibulaShape(const Bone& fibula) {
  const LongBone b(fibula);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.0, 0.80 * p, 0.030, -0.004, 0.000},
                              {0.035, p, 0.040, 0, 0.002},
                              {0.12, 0.80 * p, 0.036, 0.004, 0.004},
                              {0.26, 1.12 * s, 0.030, 0.006, 0.006},
                              {0.42, 1.10 * s, 0.034, 0.003, 0.008},
                              {0.60, s, 0.031, -0.002, 0.003},
                              {0.80, 1.05 * s, 0.030, -0.002, -0.002},
                              {0.93, 0.96 * d, 0.046, 0, -0.004},
                              {1.0, 0.86 * d, 0.044, 0, -0.006}},
                             0.03);
  const Shape scar = b.ridge({{0.36, 0.01, 0.030}, {0.44, 0.004, 0.038}, {0.53, -0.004, 0.028}}, {0.014, 0.021, 0.012});
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
  const Shape wedge = ellipsoid({-0.15 * l, 0.50 * w, 0.80 * h}, {0.62 * l, 0.36 * w, 0.95 * h});
  return weathered(smoothUnion(flat, wedge, 0.5 * h), 0.03 * h, 1.2 * h);
}

}  // namespace zyga::solid
