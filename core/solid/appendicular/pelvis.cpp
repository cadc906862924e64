#include "core/solid/appendicular/limb_kit.h"
#include "core/solid/appendicular/parts.h"

namespace zyga::solid {

namespace {

using anatomy::Measure;

/// Radius of the head of the femur and of the open socket around it, m.
double headRadius(const Bone& femur) { return 0.075 * femur.measures.value(Measure::Length); }

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

}  // namespace

Shape iliumShape(const Bone& ilium, const Bone& femur) {
  const double l = ilium.measures.value(Measure::Length), h = ilium.measures.value(Measure::Height);
  const double r = headRadius(femur), socket = 1.13 * r;
  // Hind part and roof, then the front lobe, which flares outward.
  const std::vector<Eigen::Vector2d> outline{{0.16 * l, 0.25 * h},  {0.30 * l, 0.34 * h},  {0.34 * l, 0.60 * h},
                                             {0.28 * l, 0.76 * h},  {0.12 * l, 0.82 * h},  {-0.06 * l, 0.78 * h},
                                             {-0.22 * l, 0.66 * h}, {-0.36 * l, 0.48 * h}, {-0.435 * l, 0.32 * h},
                                             {-0.43 * l, 0.22 * h}, {-0.34 * l, 0.17 * h}, {-0.22 * l, 0.13 * h},
                                             {-0.13 * l, 0.08 * h}, {-0.02 * l, 0.20 * h}, {0.08 * l, 0.20 * h}};
  const PlateForm form{0.042 * l, 0.020 * l, 0.10 * l, -0.10 / l, 0.30 / l};
  const Shape hind = plate(sideways(), outline, form);
  Frame flare = sideways(Point(0.16 * l, 0.004 * l, 0.44 * h));
  flare.linear() = Eigen::AngleAxisd(0.42, Point::UnitZ()).toRotationMatrix() * flare.linear();
  const std::vector<Eigen::Vector2d> lobe{{-0.10 * l, -0.22 * h}, {0.06 * l, -0.20 * h}, {0.22 * l, -0.24 * h},
                                          {0.36 * l, -0.18 * h},  {0.43 * l, -0.02 * h}, {0.40 * l, 0.16 * h},
                                          {0.28 * l, 0.28 * h},   {0.12 * l, 0.35 * h},  {-0.08 * l, 0.36 * h}};
  const Shape front = plate(flare, lobe, {0.040 * l, 0.018 * l, 0.10 * l, -0.5 / l, 0.5 / l});

  const Shape roof = rimArc(socket + 0.030 * l, 0.15, 2.85, 0.062 * l, 0.034 * l);
  const Shape pubic = tube({{Point(0.105 * l, 0.002 * l, 0.12 * h), {0.060 * l, 0.056 * l}, Point::Zero()},
                            {Point(0.142 * l, -0.003 * l, 0.03 * h), {0.058 * l, 0.048 * l}, Point::Zero()},
                            {Point(0.162 * l, -0.008 * l, -0.05 * h), {0.060 * l, 0.052 * l}, Point::Zero()}},
                           Point::UnitY());
  const Shape ischiadic = tube({{Point(-0.11 * l, 0, 0.12 * h), {0.050 * l, 0.040 * l}, Point::Zero()},
                                {Point(-0.148 * l, -0.005 * l, 0.055 * h), {0.046 * l, 0.034 * l}, Point::Zero()}},
                               Point::UnitY());
  // Where the sacral ribs' yoke meets it inside.
  const Shape yoke = tube({{Point(0.22 * l, -0.012 * l, 0.36 * h), {0.030 * l, 0.022 * l}, Point::Zero()},
                           {Point(0.0, -0.022 * l, 0.33 * h), {0.036 * l, 0.026 * l}, Point::Zero()},
                           {Point(-0.24 * l, -0.012 * l, 0.26 * h), {0.028 * l, 0.020 * l}, Point::Zero()}},
                          Point::UnitZ());
  Shape bone = smoothUnion({hind, front, yoke}, 0.05 * l);
  bone = smoothUnion({bone, roof, pubic, ischiadic}, 0.035 * l);
  const Shape hole = roundCone(Point(0, -0.3 * l, 0), Point(0, 0.3 * l, 0), socket, socket);
  return weathered(smoothCut(bone, hole, 0.012 * l), 0.0006 * l, 0.12 * l);
}

Shape pubisShape(const Bone& pubis, const Bone& femur) {
  const LongBone b(pubis);
  const double p = b.proximal(), s = b.shaft() / 2, d = b.distal() / 2, socket = 1.13 * headRadius(femur) / b.length();
  const auto section = [&](double down, double cranial, double lateral, double wide, double thick,
                           const Point& across) {
    return Knot{b.at(down, cranial, lateral),
                {wide * b.length(), thick * b.length()},
                b.along(across.x(), across.y(), across.z())};
  };
  const Point flat(0, 1, 0.1), turned(0, 0.9, -0.45), foot(0, 1, -0.3);
  const Shape shaft =
      tube({section(0.27, 0.075, 0.0, 0.26 * p, 0.076, flat), section(0.37, 0.055, 0.0, 0.25 * p, 0.064, flat),
            section(0.52, 0.03, 0.0, 1.02 * s, 0.056, turned), section(0.72, 0.005, 0.0, s, 0.052, turned),
            section(0.88, 0.0, 0.0, 0.90 * d, 0.058, foot), section(0.965, 0.0, 0.0, 0.98 * d, 0.060, foot)},
           b.along(0, 1, 0));
  const Shape iliac =
      tube({section(0.265, 0.115, 0.0, 0.080, 0.070, {0, 0, 1}), section(0.32, 0.09, 0.0, 0.074, 0.080, {0, 0, 1})},
           b.along(0, 0, 1));
  // The plate towards the ischium, with its hole, and the apron that meets its fellow in the mid-plane.
  const auto leafAt = [&](std::vector<Point> corners, double middle) {
    const Point origin = corners.front();
    const Point normal = (corners[1] - corners[0]).cross(corners[2] - corners[0]).normalized();
    const Frame frame = frameOn(origin, normal, corners[1] - corners[0]);
    std::vector<Eigen::Vector2d> outline;
    for (const Point& corner : corners) outline.push_back((frame.inverse() * corner).head<2>());
    return plate(frame, outline, {middle * b.length(), 0.55 * middle * b.length(), 0.10 * b.length(), 0, 0});
  };
  const Shape web = leafAt({b.at(0.17, -0.02, 0), b.at(0.30, 0.10, 0), b.at(0.62, 0.06, -0.05),
                            b.at(0.56, -0.12, -0.06), b.at(0.40, -0.20, -0.05), b.at(0.22, -0.19, -0.015)},
                           0.055);
  const Shape apron = leafAt({b.at(0.48, 0.02, 0.0), b.at(0.92, 0.02, 0.0), b.at(0.95, -0.03, -0.05),
                              b.at(0.80, -0.10, -0.14), b.at(0.60, -0.12, -0.12)},
                             0.05);
  Shape bone = smoothUnion({shaft, iliac, web, apron}, b.blend(0.06));
  const Shape foramen = roundCone(b.at(0.34, -0.075, 0.3), b.at(0.34, -0.075, -0.3), b.blend(0.036), b.blend(0.036));
  bone = smoothCut(bone, foramen, b.blend(0.02));
  const Shape hole = roundCone(b.at(0, 0, -0.5), b.at(0, 0, 0.5), socket * b.length(), socket * b.length());
  bone = smoothCut(bone, hole, b.blend(0.015));
  return weathered(toMiddle(bone, pubis), b.blend(0.0007), b.blend(0.17));
}

Shape ischiumShape(const Bone& ischium, const Bone& femur) {
  const LongBone b(ischium);
  const double p = b.proximal(), s = b.shaft() / 2, d = b.distal() / 2, socket = 1.13 * headRadius(femur) / b.length();
  const auto section = [&](double down, double cranial, double lateral, double wide, double thick,
                           const Point& across) {
    return Knot{b.at(down, cranial, lateral),
                {wide * b.length(), thick * b.length()},
                b.along(across.x(), across.y(), across.z())};
  };
  const Point flat(0, 1, 0.0), turned(0, 0.8, -0.6);
  const Shape shaft =
      tube({section(0.23, -0.05, 0.0, 0.24 * p, 0.052, flat), section(0.32, -0.03, 0.0, 0.22 * p, 0.050, flat),
            section(0.50, 0.0, 0.0, 1.08 * s, 0.042, turned), section(0.74, 0.005, 0.0, s, 0.036, turned),
            section(0.90, 0.0, 0.0, 0.92 * d, 0.040, turned), section(0.965, 0.0, 0.0, d, 0.042, turned)},
           b.along(0, 1, 0));
  const Shape iliac =
      tube({section(0.215, -0.125, 0.0, 0.060, 0.052, {0, 0, 1}), section(0.27, -0.09, 0.0, 0.056, 0.056, {0, 0, 1})},
           b.along(0, 0, 1));
  const std::vector<Point> corners{b.at(0.16, 0.02, 0),     b.at(0.30, -0.06, 0),    b.at(0.56, -0.02, -0.03),
                                   b.at(0.46, 0.09, -0.05), b.at(0.36, 0.20, -0.05), b.at(0.20, 0.22, -0.02)};
  const Point normal = (corners[1] - corners[0]).cross(corners[2] - corners[0]).normalized();
  const Frame frame = frameOn(corners[0], normal, corners[1] - corners[0]);
  std::vector<Eigen::Vector2d> outline;
  for (const Point& corner : corners) outline.push_back((frame.inverse() * corner).head<2>());
  const Shape web = plate(frame, outline, {0.05 * b.length(), 0.026 * b.length(), 0.10 * b.length(), 0, 0});
  Shape bone = smoothUnion({shaft, iliac, web}, b.blend(0.06));
  const Shape hole = roundCone(b.at(0, 0, -0.5), b.at(0, 0, 0.5), socket * b.length(), socket * b.length());
  bone = smoothCut(bone, hole, b.blend(0.015));
  return weathered(toMiddle(bone, ischium), b.blend(0.0007), b.blend(0.17));
}

}  // namespace zyga::solid
