#include "core/solid/sdf/shape.h"

#include <algorithm>
#include <limits>

#include "core/solid/sdf/node.h"

namespace zyga::solid {

Box Shape::bounds() const { return node_ ? node_->bounds() : Box(); }

double Shape::at(const Point& p) const {
  return node_ ? static_cast<double>(node_->at(p.cast<float>())) : std::numeric_limits<double>::infinity();
}

Shape Shape::near(const Point& centre, double radius, double band) const {
  return node_ ? Shape(node_->near(node_, {centre.cast<float>(), static_cast<float>(radius), static_cast<float>(band)})
                           .node)
               : Shape();
}

namespace {

/// Any unit vector across `axis`, as near to `hint` as can be.
Point across(const Point& axis, const Point& hint) {
  Point v = hint - axis * axis.dot(hint);
  if (v.norm() < 1e-9) v = axis.unitOrthogonal();
  return v.normalized();
}

Frame fromAxes(const Point& origin, const Point& x, const Point& y, const Point& z) {
  Frame frame = Frame::Identity();
  frame.linear() << x, y, z;
  frame.translation() = origin;
  return frame;
}

}  // namespace

Frame frameAlong(const Point& from, const Point& to, const Point& up) {
  const Point along = to - from;
  const Point x = along.norm() > 1e-9 ? Point(along.normalized()) : Point::UnitX();
  const Point z = across(x, up);
  return fromAxes(from, x, z.cross(x), z);
}

Frame frameOn(const Point& origin, const Point& normal, const Point& xHint) {
  const Point z = normal.norm() > 1e-9 ? Point(normal.normalized()) : Point::UnitZ();
  const Point x = across(z, xHint);
  return fromAxes(origin, x, z.cross(x), z);
}

FieldNode::Local FieldNode::near(const NodePtr& self, const Place& place) const { return {self, at(place.centre)}; }

float FieldNode::at(const Eigen::Vector3f& p) const {
  float out = 0;
  evaluate({&p.x(), &p.y(), &p.z(), 1}, &out);
  return out;
}

ToLocal::ToLocal(const Frame& frame) {
  const Eigen::Matrix<double, 3, 4> inverse = frame.inverse(Eigen::Isometry).matrix().topRows<3>();
  for (int r = 0; r < 3; ++r)
    for (int c = 0; c < 4; ++c) m[static_cast<std::size_t>(4 * r + c)] = static_cast<float>(inverse(r, c));
}

Box placedBox(const Frame& frame, const Box& local) {
  Box box;
  if (local.isEmpty()) return box;
  for (int i = 0; i < 8; ++i) box.extend(frame * local.corner(static_cast<Box::CornerType>(i)));
  return box;
}

namespace {

constexpr int kCorner[4][3] = {{1, -1, -1}, {-1, -1, 1}, {-1, 1, -1}, {1, 1, 1}};

struct Buffer {
  float x[kBatch], y[kBatch], z[kBatch];
  PointBatch batch(int count) const { return {x, y, z, count}; }
  void set(int i, const Point& p) {
    x[i] = static_cast<float>(p.x()), y[i] = static_cast<float>(p.y()), z[i] = static_cast<float>(p.z());
  }
};

}  // namespace

std::vector<float> sampleValues(const FieldNode& node, const std::vector<Point>& points) {
  std::vector<float> out(points.size());
  Buffer buffer;
  for (std::size_t from = 0; from < points.size(); from += kBatch) {
    const int count = static_cast<int>(std::min<std::size_t>(kBatch, points.size() - from));
    for (int i = 0; i < count; ++i) buffer.set(i, points[from + static_cast<std::size_t>(i)]);
    node.evaluate(buffer.batch(count), &out[from]);
  }
  return out;
}

FieldSamples sampleField(const FieldNode& node, const std::vector<Point>& points, double step) {
  FieldSamples samples{sampleValues(node, points), {points.size(), Eigen::Vector3f::Zero()}};
  std::vector<Point> moved(points.size());
  for (const auto& corner : kCorner) {
    const Eigen::Vector3d offset(corner[0], corner[1], corner[2]);
    for (std::size_t i = 0; i < points.size(); ++i) moved[i] = points[i] + step * offset;
    const std::vector<float> values = sampleValues(node, moved);
    for (std::size_t i = 0; i < points.size(); ++i)
      samples.gradient[i] += offset.cast<float>() * (values[i] / static_cast<float>(4 * step));
  }
  return samples;
}

void projectOnSurface(const FieldNode& node, std::vector<Point>& points, double step, double reach) {
  const FieldSamples samples = sampleField(node, points, step);
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Eigen::Vector3d g = samples.gradient[i].cast<double>();
    // Near creases the averaged gradient is short; a full Newton step would overshoot.
    const double slope2 = std::max(g.squaredNorm(), 0.25);
    Eigen::Vector3d move = -samples.value[i] / slope2 * g;
    if (move.norm() > reach) move *= reach / move.norm();
    points[i] += move;
  }
}

}  // namespace zyga::solid
