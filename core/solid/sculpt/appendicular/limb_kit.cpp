#include "core/solid/sculpt/appendicular/limb_kit.h"

#include <algorithm>

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

}  // namespace zyga::solid
