#include "core/solid/sculpt/appendicular/limb_kit.h"

#include <algorithm>

#include "core/solid/sculpt/appendicular/appendicular.h"

namespace zyga::solid {

LongBone::LongBone(const anatomy::Bone& bone) : bone_(bone) {
  const Point top = bone.landmark("top"), bottom = bone.landmark("bottom");
  length_ = std::max((top - bottom).norm(), 1e-3);
  // x down and y cranial leave z medial on a left bone.
  frame_ = Frame::Identity();
  const Point down = (bottom - top).normalized();
  const Point cranial = (Point::UnitX() - down * down.x()).normalized();
  frame_.linear().col(0) = down;
  frame_.linear().col(1) = cranial;
  frame_.linear().col(2) = down.cross(cranial);
  frame_.translation() = top;
}

double LongBone::share(anatomy::Measure measure) const { return bone_.measures.value(measure) / length_; }

Point LongBone::along(double down, double cranial, double lateral) const {
  return frame_.linear() * (length_ * Point(down, cranial, -lateral));
}

Point LongBone::at(double down, double cranial, double lateral) const {
  return frame_.translation() + along(down, cranial, lateral);
}

Shape LongBone::body(const std::vector<Slice>& slices, double endRound) const {
  std::vector<Station> stations;
  for (const Slice& s : slices)
    stations.push_back(
        {s.down * length_, s.depth * length_, s.width * length_, s.cranial * length_, -s.lateral * length_, s.square});
  return loft(frame_, stations, endRound * length_);
}

Shape LongBone::lump(const Point& downCranialLateral, const Point& halves) const {
  return ellipsoid(at(downCranialLateral.x(), downCranialLateral.y(), downCranialLateral.z()), halves * length_,
                   frame_.linear());
}

Shape LongBone::ridge(const std::vector<Point>& points, const std::vector<double>& halves) const {
  std::vector<Knot> knots;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double half = halves[std::min(i, halves.size() - 1)] * length_;
    knots.push_back({at(points[i].x(), points[i].y(), points[i].z()), {half, half}, Point::Zero()});
  }
  return tube(knots, along(0, 1, 0));
}

Knot LongBone::section(const Point& downCranialLateral, double wide, double thick, const Point& across) const {
  const Point& p = downCranialLateral;
  return {at(p.x(), p.y(), p.z()), {wide * length_, thick * length_}, along(across.x(), across.y(), across.z())};
}

Shape LongBone::web(const std::vector<Point>& corners, double thickness) const {
  std::vector<Point> points;
  for (const Point& p : corners) points.push_back(at(p.x(), p.y(), p.z()));
  return sheet(points, thickness);
}

Shape LongBone::sheet(const std::vector<Point>& points, double thickness) const {
  const Point normal = (points[1] - points[0]).cross(points[2] - points[0]).normalized();
  const Frame frame = frameOn(points[0], normal, points[1] - points[0]);
  std::vector<Eigen::Vector2d> outline;
  for (const Point& p : points) outline.push_back((frame.inverse() * p).head<2>());
  return plate(frame, outline, {thickness * length_, 0.55 * thickness * length_, 0.10 * length_, 0, 0});
}

std::vector<Eigen::Vector2d> scaled(std::vector<Eigen::Vector2d> outline, double byX, double byY) {
  for (Eigen::Vector2d& corner : outline) corner = {corner.x() * byX, corner.y() * byY};
  return outline;
}

Frame sideways(const Point& origin) {
  Frame frame = Frame::Identity();
  frame.linear().col(0) = Point::UnitX();
  frame.linear().col(1) = Point::UnitZ();
  frame.linear().col(2) = -Point::UnitY();
  frame.translation() = origin;
  return frame;
}

namespace {

/// Two low knuckles side by side with a groove between them.
Shape knuckles(const LongBone& b, double down, double width, double depth) {
  return smoothUnion(b.lump({down, 0, -0.46 * width}, {depth, depth, 0.50 * width}),
                     b.lump({down, 0, 0.46 * width}, {depth, depth, 0.50 * width}), b.blend(0.3 * width));
}

}  // namespace

Shape metacarpalShape(const Bone& metacarpal, bool fingers) {
  const LongBone b(metacarpal);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.0, 0.96 * p, 0.80 * p, -0.04, 0, 0.25},
                              {0.05, 1.14 * p, 0.94 * p, -0.05, 0, 0.25},
                              {0.17, 0.96 * p, 0.86 * p, -0.035, 0, 0.1},
                              {0.38, 0.88 * s, 1.02 * s, -0.004, 0},
                              {0.58, 0.80 * s, s, 0, 0},
                              {0.78, 0.86 * s, 1.06 * s, 0, 0},
                              {0.91, 0.84 * d, 0.96 * d, 0, 0, 0.15},
                              {0.965, 0.86 * d, d, 0, 0, 0.15},
                              {1.0, 0.70 * d, 0.88 * d, 0, 0, 0.1}},
                             0.05);
  const Shape keel = b.ridge({{0.08, -1.16 * p, 0}, {0.30, -1.05 * s, 0}, {0.62, -0.68 * s, 0}}, {0.046, 0.036, 0.020});
  const Shape groove = b.ridge({{0.90, -1.05 * d, 0}, {1.02, -0.62 * d, 0}, {1.05, 0.2 * d, 0}}, {0.03, 0.045, 0.03});
  // Without fingers the end is a plain rounded pillar.
  const Shape pillar = b.lump({0.93, 0, 0}, {0.075, 0.90 * d, 0.98 * d});
  const Shape bone = fingers ? smoothCut(smoothUnion(shaft, keel, b.blend(0.06)), groove, b.blend(0.03))
                             : smoothUnion({shaft, keel, pillar}, b.blend(0.06));
  return weathered(bone, b.blend(0.0007), b.blend(0.17));
}

Shape metatarsalShape(const Bone& metatarsal) {
  const LongBone b(metatarsal);
  const double p = b.proximal() / 2, s = b.shaft() / 2, d = b.distal() / 2;
  const Shape shaft = b.body({{0.0, 0.96 * p, 0.74 * p, 0, 0, 0.3},
                              {0.06, 1.08 * p, 0.86 * p, 0, 0, 0.3},
                              {0.20, 0.92 * p, 0.80 * p, 0, 0, 0.15},
                              {0.45, 0.82 * s, 1.04 * s, 0, 0},
                              {0.62, 0.78 * s, s, 0, 0},
                              {0.80, 0.84 * s, 1.05 * s, 0, 0},
                              {0.93, 0.74 * d, 0.96 * d, -0.01, 0, 0.1},
                              {0.98, 0.66 * d, 0.92 * d, -0.02, 0, 0.1}},
                             0.06);
  const Shape ends = knuckles(b, 1 - 0.76 * d, 0.92 * d, 0.76 * d);
  const Shape corner = b.ridge({{0.78, -0.1 * d, 0.80 * d}, {0.92, -0.45 * d, 0.92 * d}}, {0.05, 0.075});
  return weathered(smoothUnion({shaft, ends, corner}, b.blend(0.10)), b.blend(0.0007), b.blend(0.17));
}

Shape phalanxShape(const Bone& phalanx, bool last) {
  const double l = phalanx.measures.value(anatomy::Measure::Length);
  const double w = phalanx.measures.value(anatomy::Measure::ProximalWidth) / 2;
  const double h = phalanx.measures.value(anatomy::Measure::Height) / 2;
  const double top = phalanx.landmark("top").z();
  Frame down = Frame::Identity();
  down.linear().col(0) = -Point::UnitZ();
  down.linear().col(1) = Point::UnitX();
  down.linear().col(2) = -Point::UnitY();
  down.translation().z() = top;
  const Shape body = loft(down,
                          {{0.0, 0.92 * h, 0.90 * w, 0, 0, 0.3},
                           {0.10 * l, h, w, 0, 0, 0.3},
                           {0.48 * l, 0.78 * h, 0.84 * w, 0, 0, 0.1},
                           {0.80 * l, 0.74 * h, 0.88 * w, -0.06 * h, 0, 0.1},
                           {0.97 * l, 0.60 * h, 0.82 * w, -0.10 * h, 0, 0.1}},
                          std::min(0.25 * l, 0.45 * h));
  // The base is dished for the knuckle before it.
  const double knuckle = -top;
  const Shape dish = ellipsoid(Point::Zero(), {1.1 * knuckle, 1.6 * w, 1.1 * knuckle});
  if (last) {
    const Shape nub = ellipsoid({-0.05 * h, 0, top - 0.80 * l}, {0.66 * h, 0.80 * w, 0.20 * l});
    return weathered(smoothCut(smoothUnion(body, nub, 0.35 * h), dish, 0.15 * h), 0.015 * h, 1.5 * h);
  }
  const double r = std::min(0.66 * h, 0.5 * l), knuckleAt = top - l + 0.9 * r;
  const Shape roller = smoothUnion(ellipsoid({-0.06 * h, 0.38 * w, knuckleAt}, {r, 0.46 * w, 0.9 * r}),
                                   ellipsoid({-0.06 * h, -0.38 * w, knuckleAt}, {r, 0.46 * w, 0.9 * r}), 0.45 * w);
  return weathered(smoothCut(smoothUnion(body, roller, 0.40 * h), dish, 0.15 * h), 0.015 * h, 1.5 * h);
}

/// Deep, flat-sided and curved down; a knob below its base for the tendon, a groove along each side.
Shape clawShape(const Bone& claw) {
  const double l = claw.measures.value(anatomy::Measure::Length);
  const double w = claw.measures.value(anatomy::Measure::ProximalWidth) / 2;
  const double h = claw.measures.value(anatomy::Measure::Height) / 2;
  const double top = claw.landmark("top").z();
  const auto knot = [&](double along, double dorsal, double deep, double wide) {
    return Knot{Point(dorsal * h, 0, top - along * l), {deep * h, wide * w}, Point::Zero()};
  };
  const Shape blade = tube({knot(0.12, 0.02, 0.92, 0.92), knot(0.30, 0.12, 0.86, 0.90), knot(0.52, 0.08, 0.68, 0.74),
                            knot(0.74, -0.20, 0.46, 0.52), knot(0.90, -0.60, 0.27, 0.32), knot(1.0, -0.98, 0.11, 0.13)},
                           Point::UnitX());
  const Shape base = ellipsoid({0, 0, top - 0.10 * l}, {h, w, 0.10 * l + 0.05 * h});
  const Shape knob = ellipsoid({-0.78 * h, 0, top - 0.16 * l}, {0.34 * h, 0.60 * w, 0.10 * l});
  const Shape socket = ellipsoid(Point::Zero(), {-1.1 * top, 1.6 * w, -1.1 * top});
  Shape bone = smoothUnion({blade, base, knob}, 0.22 * h);
  const auto groove = [&](double side) {
    return tube({{Point(0.05 * h, side * 1.08 * w, top - 0.30 * l), {0.10 * h, 0.16 * w}, Point::Zero()},
                 {Point(0.0, side * 0.96 * w, top - 0.52 * l), {0.10 * h, 0.18 * w}, Point::Zero()},
                 {Point(-0.26 * h, side * 0.68 * w, top - 0.74 * l), {0.07 * h, 0.14 * w}, Point::Zero()},
                 {Point(-0.66 * h, side * 0.40 * w, top - 0.91 * l), {0.04 * h, 0.08 * w}, Point::Zero()}},
                Point::UnitX());
  };
  bone = smoothCut(bone, unite({groove(1), groove(-1)}), 0.06 * h);
  return smoothCut(bone, socket, 0.08 * h);
}

}  // namespace zyga::solid
