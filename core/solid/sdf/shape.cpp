#include "core/solid/sdf/shape.h"

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

}  // namespace zyga::solid
