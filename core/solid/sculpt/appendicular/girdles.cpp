#include <cmath>

#include "core/solid/sculpt/appendicular/appendicular.h"
#include "core/solid/sculpt/appendicular/limb_kit.h"

namespace zyga::solid {

namespace {

using anatomy::Measure;

/// The blade hugs the ribs: its ends bend inward.
constexpr double kBladeBend = 0.22;

struct Blade {
  double length, top, waist, plate;  ///< m
  double head, foot;                 ///< heights of the ends in the bone's frame, m
  explicit Blade(const Bone& scapula)
      : length(scapula.measures.value(Measure::Length)),
        top(scapula.measures.value(Measure::ProximalWidth)),
        waist(scapula.measures.value(Measure::ShaftWidth)),
        plate(scapula.measures.value(Measure::DistalWidth)),
        head(scapula.landmark("top").z()),
        foot(scapula.landmark("bottom").z()) {}
  double at(double up) const { return foot + up * (head - foot); }
  /// Where the bent middle surface lies at a height, m.
  double bend(double z) const { return -0.5 * kBladeBend / length * z * z; }
};

Shape bladePlate(const Blade& b) {
  const double w = b.waist / 2, t = b.top, d = b.plate;
  const std::vector<Eigen::Vector2d> outline{
      {-0.26 * d, b.at(-0.015)}, {-0.20 * d, b.at(0.09)}, {-1.02 * w, b.at(0.21)}, {-0.98 * w, b.at(0.36)},
      {-1.10 * w, b.at(0.56)},   {-0.39 * t, b.at(0.76)}, {-0.52 * t, b.at(0.92)}, {-0.46 * t, b.at(0.985)},
      {-0.16 * t, b.at(1.0)},    {0.20 * t, b.at(0.985)}, {0.44 * t, b.at(0.93)},  {0.48 * t, b.at(0.86)},
      {0.36 * t, b.at(0.70)},    {1.14 * w, b.at(0.52)},  {0.98 * w, b.at(0.38)},  {1.12 * w, b.at(0.29)},
      {0.40 * d, b.at(0.230)},   {0.64 * d, b.at(0.205)}, {0.735 * d, b.at(0.15)}, {0.76 * d, b.at(0.06)},
      {0.72 * d, b.at(-0.02)},   {0.20 * d, b.at(-0.04)}};
  return plate(sideways(), outline,
               {0.038 * b.length, 0.012 * b.length, 0.07 * b.length, 0.12 / b.length, kBladeBend / b.length});
}

/// The ridge that runs from the acromion's upper edge to the blade, and the stout body above the socket.
Shape bladeRelief(const Blade& b) {
  const double l = b.length, d = b.plate, w = b.waist / 2;
  const auto on = [&](double x, double up, double out) { return Point(x, b.bend(b.at(up)) + out * l, b.at(up)); };
  const Shape ridge = tube({{on(0.58 * d, 0.17, 0.004), {0.018 * l, 0.018 * l}, Point::Zero()},
                            {on(0.30 * d, 0.195, 0.012), {0.026 * l, 0.022 * l}, Point::Zero()},
                            {on(0.02 * d, 0.28, 0.014), {0.030 * l, 0.024 * l}, Point::Zero()},
                            {on(-0.15 * w, 0.42, 0.010), {0.032 * l, 0.022 * l}, Point::Zero()},
                            {on(-0.20 * w, 0.62, 0.002), {0.026 * l, 0.018 * l}, Point::Zero()}},
                           Point::UnitX());
  const Shape body = tube({{on(-0.12 * d, -0.02, -0.008), {0.074 * l, 0.056 * l}, Point::Zero()},
                           {on(-0.10 * d, 0.08, -0.002), {0.058 * l, 0.040 * l}, Point::Zero()},
                           {on(-0.04 * d, 0.22, 0.002), {0.050 * l, 0.028 * l}, Point::Zero()}},
                          Point::UnitX());
  return smoothUnion(ridge, body, 0.03 * l);
}

/// A rounded plate below the seam, thick behind where it shares the socket, bent inward under the chest.
Shape coracoidPlate(const Blade& b, const Bone& coracoid) {
  const double size = coracoid.measures.value(Measure::Length), tall = coracoid.measures.value(Measure::Height);
  const double z = b.foot;
  Frame frame = sideways(Point(0.18 * b.plate, b.bend(z) + 0.004 * b.length, z));
  frame.linear() = Eigen::AngleAxisd(-0.16, Point::UnitX()).toRotationMatrix() * frame.linear();
  const std::vector<Eigen::Vector2d> outline = scaled({{-0.46, 0.08},
                                                       {-0.40, -0.12},
                                                       {-0.44, -0.34},
                                                       {-0.34, -0.52},
                                                       {-0.22, -0.68},
                                                       {-0.02, -0.86},
                                                       {0.22, -0.96},
                                                       {0.46, -0.92},
                                                       {0.64, -0.72},
                                                       {0.74, -0.42},
                                                       {0.76, -0.12},
                                                       {0.70, 0.08},
                                                       {0.10, 0.16}},
                                                      tall, size);
  const Shape body =
      plate(frame, outline, {0.046 * b.length, 0.018 * b.length, 0.08 * b.length, 0.3 / b.length, 0.5 / b.length});
  const Shape lip =
      ellipsoid(frame * Point(-0.22 * tall, -0.30 * size, 0.0), {0.085 * b.length, 0.054 * b.length, 0.095 * b.length});
  const Shape bar = smoothUnion(body, lip, 0.05 * b.length);
  const Shape foramen =
      roundCone(frame * Point(0.02 * tall, -0.10 * size, -0.2 * size),
                frame * Point(0.06 * tall, -0.06 * size, 0.2 * size), 0.016 * b.length, 0.016 * b.length);
  return smoothCut(bar, foramen, 0.012 * b.length);
}

}  // namespace

Shape scapulaShape(const Bone& scapula, const Bone& coracoid) {
  const Blade b(scapula);
  const double l = b.length;
  Shape bone = smoothUnion({bladePlate(b), bladeRelief(b)}, 0.05 * l);
  bone = smoothUnion(bone, coracoidPlate(b, coracoid), 0.03 * l);
  // The seam between the two stays visible as a shallow line.
  const Shape seam =
      tube({{Point(0.02 * b.plate, b.bend(b.foot) + 0.045 * l, b.at(-0.03)), {0.006 * l, 0.006 * l}, Point::Zero()},
            {Point(0.30 * b.plate, b.bend(b.foot) + 0.032 * l, b.at(-0.035)), {0.006 * l, 0.006 * l}, Point::Zero()},
            {Point(0.62 * b.plate, b.bend(b.foot) + 0.020 * l, b.at(0.01)), {0.006 * l, 0.006 * l}, Point::Zero()}},
           Point::UnitX());
  bone = smoothCut(bone, seam, 0.010 * l);
  // The socket is a saddle: rounder than the head that turns in it.
  const Shape socket = ellipsoid(scapula.landmark("distal"), {0.062 * l, 0.12 * l, 0.066 * l});
  bone = smoothCut(bone, socket, 0.018 * l);
  return weathered(bone, 0.0006 * l, 0.12 * l);
}

Shape sternalShape(const Bone& sternal) {
  const double l = sternal.measures.value(Measure::Length) / 2, w = sternal.measures.value(Measure::Width) / 2;
  const std::vector<Eigen::Vector2d> outline = scaled({{1.0, -0.30},
                                                       {0.96, 0.20},
                                                       {0.66, 0.72},
                                                       {0.18, 0.88},
                                                       {-0.30, 0.80},
                                                       {-0.74, 0.98},
                                                       {-0.98, 0.62},
                                                       {-1.0, 0.02},
                                                       {-0.82, -0.58},
                                                       {-0.30, -0.96},
                                                       {0.30, -0.98},
                                                       {0.78, -0.76}},
                                                      l, w);
  const Shape body = plate(Frame::Identity(), outline, {0.11 * w * 2, 0.05 * w * 2, 0.5 * w, 0.18 / l, 0.25 / l});
  const Shape boss = ellipsoid({0.72 * l, -0.10 * w, -0.02 * w}, {0.26 * l, 0.42 * w, 0.13 * w});
  return weathered(smoothUnion(body, boss, 0.2 * w), 0.004 * w, 0.9 * w);
}

namespace {

using anatomy::Measure;

/// The open socket is an eighth wider than the femur's head, m.
double socketRadius(const Bone& femur) { return 1.13 * 0.075 * femur.measures.value(Measure::Length); }

/// Arc around the socket in the sagittal plane; angles in rad from cranial over dorsal.
Shape rimArc(double radius, double from, double to, double wide, double thick) {
  std::vector<Knot> knots;
  for (int i = 0; i <= 6; ++i) {
    const double a = from + (to - from) * i / 6;
    knots.push_back({Point(radius * std::cos(a), 0, radius * std::sin(a)), {wide, thick}, Point::UnitY()});
  }
  return tube(knots, Point::UnitY());
}

/// The part on this side of the mid-plane, a hair short of it.
Shape toMiddle(const Shape& shape, const Bone& bone) {
  const Point middle = bone.landmark("middle"), inward = (middle - bone.landmark("bottom")).normalized();
  const double length = bone.measures.value(Measure::Length);
  return intersect(shape, halfSpace(middle - 0.004 * length * inward, inward), 0.012 * length);
}

/// Where the sacral ribs' yoke meets the blade inside.
Shape iliacYoke(double l, double h) {
  return tube({{Point(0.22 * l, -0.012 * l, 0.36 * h), {0.030 * l, 0.022 * l}, Point::Zero()},
               {Point(0.0, -0.022 * l, 0.33 * h), {0.036 * l, 0.026 * l}, Point::Zero()},
               {Point(-0.24 * l, -0.012 * l, 0.26 * h), {0.028 * l, 0.020 * l}, Point::Zero()}},
              Point::UnitZ());
}

/// Hind part and roof of the blade, and its front lobe, which flares outward.
Shape iliacBlade(double l, double h) {
  const std::vector<Eigen::Vector2d> outline = scaled({{0.16, 0.25},
                                                       {0.30, 0.34},
                                                       {0.34, 0.60},
                                                       {0.28, 0.76},
                                                       {0.12, 0.82},
                                                       {-0.06, 0.78},
                                                       {-0.22, 0.66},
                                                       {-0.36, 0.48},
                                                       {-0.435, 0.32},
                                                       {-0.43, 0.22},
                                                       {-0.34, 0.17},
                                                       {-0.22, 0.13},
                                                       {-0.13, 0.08},
                                                       {-0.02, 0.20},
                                                       {0.08, 0.20}},
                                                      l, h);
  const Shape hind = plate(sideways(), outline, {0.042 * l, 0.020 * l, 0.10 * l, -0.10 / l, 0.30 / l});
  Frame flare = sideways(Point(0.16 * l, 0.004 * l, 0.44 * h));
  flare.linear() = Eigen::AngleAxisd(0.42, Point::UnitZ()).toRotationMatrix() * flare.linear();
  const std::vector<Eigen::Vector2d> lobe = scaled({{-0.10, -0.22},
                                                    {0.06, -0.20},
                                                    {0.22, -0.24},
                                                    {0.36, -0.18},
                                                    {0.43, -0.02},
                                                    {0.40, 0.16},
                                                    {0.28, 0.28},
                                                    {0.12, 0.35},
                                                    {-0.08, 0.36}},
                                                   l, h);
  const Shape front = plate(flare, lobe, {0.040 * l, 0.018 * l, 0.10 * l, -0.5 / l, 0.5 / l});
  return smoothUnion({hind, front, iliacYoke(l, h)}, 0.05 * l);
}

/// The stout stalk down to the pubis and the short one to the ischium.
Shape iliacStalks(double l, double h) {
  const Shape pubic = tube({{Point(0.105 * l, 0.002 * l, 0.12 * h), {0.060 * l, 0.056 * l}, Point::Zero()},
                            {Point(0.142 * l, -0.003 * l, 0.03 * h), {0.058 * l, 0.048 * l}, Point::Zero()},
                            {Point(0.162 * l, -0.008 * l, -0.05 * h), {0.060 * l, 0.052 * l}, Point::Zero()}},
                           Point::UnitY());
  const Shape ischiadic = tube({{Point(-0.11 * l, 0, 0.12 * h), {0.050 * l, 0.040 * l}, Point::Zero()},
                                {Point(-0.148 * l, -0.005 * l, 0.055 * h), {0.046 * l, 0.034 * l}, Point::Zero()}},
                               Point::UnitY());
  return unite({pubic, ischiadic});
}

/// The open socket, cut through from side to side.
Shape socketHole(double radius, double depth) {
  return roundCone(Point(0, -depth, 0), Point(0, depth, 0), radius, radius);
}

}  // namespace

Shape iliumShape(const Bone& ilium, const Bone& femur) {
  const double l = ilium.measures.value(Measure::Length), h = ilium.measures.value(Measure::Height);
  const double socket = socketRadius(femur);
  const Shape roof = rimArc(socket + 0.030 * l, 0.15, 2.85, 0.062 * l, 0.034 * l);
  const Shape bone = smoothUnion({iliacBlade(l, h), roof, iliacStalks(l, h)}, 0.035 * l);
  return weathered(smoothCut(bone, socketHole(socket, 0.3 * l), 0.012 * l), 0.0006 * l, 0.12 * l);
}

Shape pubisShape(const Bone& pubis, const Bone& femur) {
  const LongBone b(pubis);
  const double p = b.proximal(), s = b.shaft() / 2, d = b.distal() / 2;
  const Point flat(0, 1, 0.1), turned(0, 0.9, -0.45), foot(0, 1, -0.3), across(0, 0, 1);
  const Shape shaft =
      tube({b.section({0.27, 0.075, 0}, 0.26 * p, 0.076, flat), b.section({0.37, 0.055, 0}, 0.25 * p, 0.064, flat),
            b.section({0.52, 0.03, 0}, 1.02 * s, 0.056, turned), b.section({0.72, 0.005, 0}, s, 0.052, turned),
            b.section({0.88, 0, 0}, 0.90 * d, 0.058, foot), b.section({0.965, 0, 0}, 0.98 * d, 0.060, foot)},
           b.along(0, 1, 0));
  const Shape iliac =
      tube({b.section({0.265, 0.115, 0}, 0.080, 0.070, across), b.section({0.32, 0.09, 0}, 0.074, 0.080, across)},
           b.along(0, 0, 1));
  // The plate towards the ischium, with its hole, and the apron that meets its fellow in the mid-plane.
  const Shape web = b.web({{0.17, -0.02, 0},
                           {0.30, 0.10, 0},
                           {0.62, 0.06, -0.05},
                           {0.56, -0.12, -0.06},
                           {0.40, -0.20, -0.05},
                           {0.22, -0.19, -0.015}},
                          0.055);
  const Shape apron =
      b.web({{0.48, 0.02, 0}, {0.92, 0.02, 0}, {0.95, -0.03, -0.05}, {0.80, -0.10, -0.14}, {0.60, -0.12, -0.12}}, 0.05);
  const Shape foramen = roundCone(b.at(0.34, -0.075, 0.3), b.at(0.34, -0.075, -0.3), b.blend(0.036), b.blend(0.036));
  Shape bone = smoothCut(smoothUnion({shaft, iliac, web, apron}, b.blend(0.06)), foramen, b.blend(0.02));
  bone = smoothCut(bone, socketHole(socketRadius(femur), 0.5 * b.length()), b.blend(0.015));
  return weathered(toMiddle(bone, pubis), b.blend(0.0007), b.blend(0.17));
}

Shape ischiumShape(const Bone& ischium, const Bone& femur) {
  const LongBone b(ischium);
  const double p = b.proximal(), s = b.shaft() / 2, d = b.distal() / 2;
  const Point flat(0, 1, 0), turned(0, 0.8, -0.6), across(0, 0, 1);
  const Shape shaft =
      tube({b.section({0.23, -0.05, 0}, 0.24 * p, 0.052, flat), b.section({0.32, -0.03, 0}, 0.22 * p, 0.050, flat),
            b.section({0.50, 0, 0}, 1.08 * s, 0.042, turned), b.section({0.74, 0.005, 0}, s, 0.036, turned),
            b.section({0.90, 0, 0}, 0.92 * d, 0.040, turned), b.section({0.965, 0, 0}, d, 0.042, turned)},
           b.along(0, 1, 0));
  const Shape iliac =
      tube({b.section({0.215, -0.125, 0}, 0.060, 0.052, across), b.section({0.27, -0.09, 0}, 0.056, 0.056, across)},
           b.along(0, 0, 1));
  const Shape web = b.web({{0.16, 0.02, 0},
                           {0.30, -0.06, 0},
                           {0.56, -0.02, -0.03},
                           {0.46, 0.09, -0.05},
                           {0.36, 0.20, -0.05},
                           {0.20, 0.22, -0.02}},
                          0.05);
  Shape bone = smoothUnion({shaft, iliac, web}, b.blend(0.06));
  bone = smoothCut(bone, socketHole(socketRadius(femur), 0.5 * b.length()), b.blend(0.015));
  return weathered(toMiddle(bone, ischium), b.blend(0.0007), b.blend(0.17));
}

}  // namespace zyga::solid
