#include <algorithm>
#include <cmath>

#include "core/solid/sculpt/appendicular/appendicular.h"
#include "core/solid/sculpt/appendicular/limb_kit.h"

namespace zyga::solid {

namespace {

using anatomy::Measure;

/// The plate in front of the socket curves inward around the chest, 1 over the blade's length.
constexpr double kAcromionBend = 1.7;

struct Blade {
  double length, top, waist, plate;  ///< m
  double head, foot;                 ///< heights of the ends in the bone's frame, m
  double curve;                      ///< the blade hugs the ribs: its ends bend inward, 1/m
  explicit Blade(const Bone& scapula)
      : length(scapula.measures.value(Measure::Length)),
        top(scapula.measures.value(Measure::ProximalWidth)),
        waist(scapula.measures.value(Measure::ShaftWidth)),
        plate(scapula.measures.value(Measure::DistalWidth)),
        head(scapula.landmark("top").z()),
        foot(scapula.landmark("bottom").z()),
        curve(-2 * scapula.landmark("distal").y() / (foot * foot)) {}
  double at(double up) const { return foot + up * (head - foot); }
  /// Where the bent middle surface lies at a height, m.
  double bend(double z) const { return -0.5 * curve * z * z; }
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
               {0.036 * b.length, 0.017 * b.length, 0.07 * b.length, kAcromionBend / b.length, b.curve});
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

/// Turn about the seam that brings the coracoid's inner corner to its distance from the mid-plane.
Eigen::Matrix3d coracoidTurn(const Point& seam, const Point& corner, const Point& breast, double gap, double most) {
  const Point reach = corner - seam;
  const Point inward = (breast - corner).normalized();
  const double want = ((breast - seam).dot(inward) - gap) / reach.norm();
  const double turn =
      std::acos(std::clamp(reach.normalized().dot(inward), -1.0, 1.0)) - std::acos(std::clamp(want, -1.0, 1.0));
  return Eigen::AngleAxisd(std::clamp(turn, 0.0, most), reach.cross(inward).normalized()).toRotationMatrix();
}

/// A rounded plate below the seam, thick behind where it shares the socket, bent inward in front of the chest until it
/// nearly meets its fellow.
Shape coracoidPlate(const Blade& b, const Bone& coracoid, const Point& breast) {
  const double size = coracoid.measures.value(Measure::Length), tall = coracoid.measures.value(Measure::Height);
  const double z = b.foot;
  Frame frame = sideways(Point(0.18 * b.plate, b.bend(z) + 0.004 * b.length, z));
  const Point seam = frame.translation();
  const double sag = 0.060 * b.length;  // of the bent plate at its corner
  const Eigen::Matrix3d turn =
      coracoidTurn(seam, frame * Point(0.50 * tall, -0.80 * size, 0), breast, 0.046 * b.length + sag, 1.25);
  frame.linear() = turn * frame.linear();
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
      plate(frame, outline, {0.046 * b.length, 0.018 * b.length, 0.08 * b.length, 1.4 / b.length, 1.4 / b.length});
  const Shape lip =
      ellipsoid(frame * Point(-0.22 * tall, -0.30 * size, 0.0), {0.085 * b.length, 0.054 * b.length, 0.095 * b.length});
  // The two plates have grown together along the seam: what is open between their edges is bone.
  const auto bridge = [&](double share) {
    const double x = share * b.plate;
    const Point above(x, b.bend(z) - 0.5 * kAcromionBend / b.length * x * x, z + 0.05 * b.length);
    const Point flat((x - seam.x()), -0.05 * size, 0);
    const Point below = frame * Point(flat.x(), flat.y(), 0.5 * 1.4 / b.length * flat.squaredNorm());
    return Knot{
        0.5 * (above + below), {0.5 * (above - below).norm() + 0.012 * b.length, 0.020 * b.length}, above - below};
  };
  const Shape grown = tube({bridge(0.10), bridge(0.34), bridge(0.54), bridge(0.68)}, Point::UnitZ());
  const Shape bar = smoothUnion({body, lip, grown}, 0.05 * b.length);
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
  bone = smoothUnion(bone, coracoidPlate(b, coracoid, scapula.landmark("breast")), 0.05 * l);
  // The seam between the two stays visible as a shallow line.
  const Shape seam =
      tube({{Point(0.02 * b.plate, b.bend(b.foot) + 0.045 * l, b.at(-0.03)), {0.006 * l, 0.006 * l}, Point::Zero()},
            {Point(0.30 * b.plate, b.bend(b.foot) + 0.032 * l, b.at(-0.035)), {0.006 * l, 0.006 * l}, Point::Zero()},
            {Point(0.62 * b.plate, b.bend(b.foot) + 0.020 * l, b.at(0.01)), {0.006 * l, 0.006 * l}, Point::Zero()}},
           Point::UnitX());
  bone = smoothCut(bone, seam, 0.010 * l);
  // The socket is a saddle: rounder than the head that turns in it.
  const Shape socket = ellipsoid(scapula.landmark("distal"), {0.080 * l, 0.13 * l, 0.082 * l});
  bone = smoothCut(bone, socket, 0.018 * l);
  return weathered(bone, 0.0006 * l, 0.12 * l);
}

Shape sternalShape(const Bone& sternal) {
  const double l = sternal.measures.value(Measure::Length) / 2, w = sternal.measures.value(Measure::Width) / 2;
  const std::vector<Eigen::Vector2d> outline = scaled({{1.0, -0.62},
                                                       {0.94, -0.24},
                                                       {0.64, 0.02},
                                                       {0.22, 0.16},
                                                       {-0.20, 0.46},
                                                       {-0.56, 0.94},
                                                       {-0.82, 0.96},
                                                       {-0.98, 0.56},
                                                       {-1.0, 0.0},
                                                       {-0.84, -0.56},
                                                       {-0.36, -0.92},
                                                       {0.30, -0.98},
                                                       {0.84, -0.90}},
                                                      l, w);
  const Shape body = plate(Frame::Identity(), outline, {0.11 * w * 2, 0.05 * w * 2, 0.5 * w, 0.18 / l, 0.25 / l});
  const Shape boss = ellipsoid({0.74 * l, -0.54 * w, -0.02 * w}, {0.24 * l, 0.32 * w, 0.13 * w});
  return weathered(smoothUnion(body, boss, 0.2 * w), 0.004 * w, 0.9 * w);
}

}  // namespace zyga::solid
