#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/solid/sculpt/appendicular/appendicular.h"
#include "core/solid/sculpt/appendicular/limb_kit.h"

namespace zyga::solid {

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
Shape iliacBlade(double l, double h, double flareAngle) {
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
  const Shape hind = plate(sideways(), outline, {0.034 * l, 0.020 * l, 0.12 * l, -0.10 / l, 0.30 / l});
  Frame flare = sideways(Point(0.16 * l, 0.004 * l, 0.44 * h));
  flare.linear() = Eigen::AngleAxisd(flareAngle, Point::UnitZ()).toRotationMatrix() * flare.linear();
  const std::vector<Eigen::Vector2d> lobe = scaled({{-0.12, -0.26},
                                                    {0.04, -0.24},
                                                    {0.18, -0.27},
                                                    {0.31, -0.25},
                                                    {0.41, -0.14},
                                                    {0.44, 0.02},
                                                    {0.40, 0.18},
                                                    {0.28, 0.30},
                                                    {0.12, 0.36},
                                                    {-0.10, 0.36}},
                                                   l, h);
  const Shape front = plate(flare, lobe, {0.034 * l, 0.020 * l, 0.12 * l, -0.7 / l, 0.4 / l});
  return smoothUnion({hind, front, iliacYoke(l, h)}, 0.05 * l);
}

/// The stout stalk down to the pubis, cut off flat where that begins, and the low lip over the ischium.
Shape iliacStalks(double l, double h) {
  const Shape pubic = tube({{Point(0.105 * l, 0.002 * l, 0.16 * h), {0.070 * l, 0.050 * l}, Point::Zero()},
                            {Point(0.150 * l, -0.003 * l, 0.01 * h), {0.064 * l, 0.050 * l}, Point::Zero()},
                            {Point(0.190 * l, -0.010 * l, -0.12 * h), {0.068 * l, 0.060 * l}, Point::Zero()},
                            {Point(0.206 * l, -0.012 * l, -0.18 * h), {0.068 * l, 0.060 * l}, Point::Zero()}},
                           Point::UnitY());
  const Shape lip = tube({{Point(-0.10 * l, 0, 0.16 * h), {0.056 * l, 0.036 * l}, Point::Zero()},
                          {Point(-0.145 * l, -0.004 * l, 0.07 * h), {0.052 * l, 0.036 * l}, Point::Zero()},
                          {Point(-0.172 * l, -0.006 * l, 0.005 * h), {0.050 * l, 0.036 * l}, Point::Zero()}},
                         Point::UnitY());
  const Shape pubicEnd = intersect(pubic, halfSpace({0.184 * l, 0, -0.104 * h}, Point(0.61, 0, -0.79)), 0.010 * l);
  const Shape ischiadicEnd = intersect(lip, halfSpace({-0.158 * l, 0, 0.030 * h}, Point(-0.60, 0, -0.80)), 0.010 * l);
  return unite({pubicEnd, ischiadicEnd});
}

/// The open socket, cut through from side to side with straight walls, so that its rim is a flat band.
Shape socketHole(double radius, double depth) {
  Frame across = Frame::Identity();
  across.linear().col(0) = Point::UnitY();
  across.linear().col(1) = -Point::UnitX();
  return loft(across, {{-depth, radius, radius}, {0, radius, radius}, {depth, radius, radius}}, 0.1 * radius);
}

}  // namespace

Shape iliumShape(const Bone& ilium, const Bone& femur, double flareInDegrees) {
  const double l = ilium.measures.value(Measure::Length), h = ilium.measures.value(Measure::Height);
  const double socket = socketRadius(femur);
  const Shape roof = rimArc(socket + 0.014 * l, 0.10, 2.80, 0.060 * l, 0.030 * l);
  const Shape blade = iliacBlade(l, h, flareInDegrees * std::numbers::pi / 180);
  const Shape bone = smoothUnion({blade, roof, iliacStalks(l, h)}, 0.055 * l);
  return weathered(smoothCut(bone, socketHole(socket, 0.3 * l), 0.005 * l), 0.0006 * l, 0.12 * l);
}

namespace {

/// The plate in which pubis and ischium meet below the socket: its far edge runs from the socket half-way between the
/// two bones, `side` is the direction of the other one.
Shape puboischiadicPlate(const LongBone& b, double side, double reach) {
  const double in = 0.095, gap = 0.006;
  return b.web({{in, side * (1.07 * in - gap), 0},
                {in + reach, side * (1.07 * (in + reach) - gap), 0},
                {in + 1.22 * reach, side * 0.95 * (in + reach), 0},
                {in + 1.55 * reach, side * 0.42 * (in + reach), 0},
                {in + 1.95 * reach, side * 0.03, 0},
                {in + 1.20 * reach, -side * 0.03, 0},
                {in + 0.20 * reach, -side * 0.02, 0}},
               0.042);
}

/// The sheet of bone between the lower shafts, straight inward to the mid-plane.
Shape symphysis(const LongBone& b, const Bone& bone, double from) {
  const Point middle = bone.landmark("middle"), inward = (middle - bone.landmark("bottom")).normalized();
  // A share of the way from a place on the shaft to the mid-plane, or a little over it.
  const auto to = [&](double down, double share) {
    const Point place = b.at(down, 0, 0);
    return Point(place + share * inward.dot(middle - place) * inward);
  };
  return b.sheet({to(from - 0.08, 0), to(0.97, 0), to(0.98, 1.3), to(from, 1.2), to(from - 0.04, 0.6)}, 0.048);
}

}  // namespace

Shape pubisShape(const Bone& pubis, const Bone& femur) {
  const LongBone b(pubis);
  const double p = b.proximal(), s = b.shaft() / 2, d = b.distal() / 2;
  const Point flat(0, 1, 0.1), turned(0, 0.9, -0.45), foot(0, 1, -0.3), along(0, 1, 0);
  const Shape shaft =
      tube({b.section({0.28, 0.070, 0}, 0.24 * p, 0.070, flat), b.section({0.38, 0.050, 0}, 0.24 * p, 0.060, flat),
            b.section({0.52, 0.03, 0}, 1.02 * s, 0.052, turned), b.section({0.72, 0.005, 0}, s, 0.046, turned),
            b.section({0.88, 0, 0}, 0.92 * d, 0.052, foot), b.section({0.955, 0, 0}, 1.0 * d, 0.056, foot)},
           b.along(0, 1, 0));
  const Shape peduncle =
      tube({b.section({0.19, 0.115, 0.01}, 0.080, 0.072, along), b.section({0.26, 0.105, 0.005}, 0.080, 0.070, along),
            b.section({0.34, 0.08, 0}, 0.076, 0.064, along)},
           b.along(0, 1, 0));
  const Shape iliac =
      intersect(peduncle, halfSpace(b.at(0.208, 0.115, 0), b.along(-1, 0.078, 0).normalized()), b.blend(0.012));
  const Shape foramen = roundCone(b.at(0.30, -0.13, 0.3), b.at(0.30, -0.13, -0.3), b.blend(0.030), b.blend(0.030));
  Shape bone = smoothUnion({shaft, iliac, puboischiadicPlate(b, -1, 0.29), symphysis(b, pubis, 0.60)}, b.blend(0.05));
  bone = smoothCut(bone, foramen, b.blend(0.015));
  bone = smoothCut(bone, socketHole(socketRadius(femur), 0.5 * b.length()), b.blend(0.008));
  return weathered(toMiddle(bone, pubis), b.blend(0.0007), b.blend(0.17));
}

Shape ischiumShape(const Bone& ischium, const Bone& femur) {
  const LongBone b(ischium);
  const double p = b.proximal(), s = b.shaft() / 2, d = b.distal() / 2;
  const Point flat(0, 1, 0), turned(0, 0.8, -0.6), along(0, 1, 0);
  const Shape shaft =
      tube({b.section({0.23, -0.06, 0}, 0.22 * p, 0.050, flat), b.section({0.34, -0.03, 0}, 0.21 * p, 0.046, flat),
            b.section({0.50, 0, 0}, 1.08 * s, 0.042, turned), b.section({0.74, 0.005, 0}, s, 0.034, turned),
            b.section({0.90, 0, 0}, 0.92 * d, 0.038, turned), b.section({0.965, 0, 0}, d, 0.040, turned)},
           b.along(0, 1, 0));
  const Shape peduncle =
      tube({b.section({0.155, -0.13, 0.005}, 0.060, 0.056, along), b.section({0.23, -0.10, 0}, 0.060, 0.054, along),
            b.section({0.30, -0.06, 0}, 0.056, 0.050, along)},
           b.along(0, 1, 0));
  const Shape iliac =
      intersect(peduncle, halfSpace(b.at(0.168, -0.13, 0), b.along(-0.965, -0.26, 0).normalized()), b.blend(0.012));
  Shape bone = smoothUnion({shaft, iliac, puboischiadicPlate(b, 1, 0.27), symphysis(b, ischium, 0.70)}, b.blend(0.05));
  bone = smoothCut(bone, socketHole(socketRadius(femur), 0.5 * b.length()), b.blend(0.008));
  return weathered(toMiddle(bone, ischium), b.blend(0.0007), b.blend(0.17));
}

}  // namespace zyga::solid
