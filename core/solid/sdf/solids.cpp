#include <cmath>

#include "core/solid/sdf/node.h"
#include "core/solid/sdf/section_distance.h"

namespace zyga::solid {

namespace {

float f(double value) { return static_cast<float>(value); }

Box around(const Point& centre, double radius) {
  const Point r = Point::Constant(radius);
  return Box(centre - r, centre + r);
}

Box localBox(double x, double y, double z) { return Box(Point(-x, -y, -z), Point(x, y, z)); }

}  // namespace

Shape ball(const Point& centre, double radius) {
  const double r = positive(radius);
  return leaf(around(centre, r),
              [cx = f(centre.x()), cy = f(centre.y()), cz = f(centre.z()), r = f(r)](float x, float y, float z) {
                const float a = x - cx, b = y - cy, c = z - cz;
                return std::sqrt(a * a + b * b + c * c) - r;
              });
}

Shape ellipsoid(const Point& centre, const Point& radii, const Eigen::Matrix3d& axes) {
  Frame frame = Frame::Identity();
  frame.linear() = axes;
  frame.translation() = centre;
  const float rx = f(positive(radii.x())), ry = f(positive(radii.y())), rz = f(positive(radii.z()));
  return leaf(placedBox(frame, localBox(rx, ry, rz)), [local = ToLocal(frame), rx, ry, rz](float x, float y, float z) {
    const auto [u, v, w] = local(x, y, z);
    return ellipsoidDistance(u, v, w, rx, ry, rz);
  });
}

Shape roundCone(const Point& a, const Point& b, double radiusA, double radiusB) {
  const double ra = positive(radiusA), rb = positive(radiusB), length = (b - a).norm();
  if (length <= std::abs(ra - rb) + kLeastExtent) return ra > rb ? ball(a, ra) : ball(b, rb);
  Box box = around(a, ra);
  box.extend(around(b, rb));
  // In the half plane (along, away) the side is a line whose normal is (slope, lift).
  const float slope = f((ra - rb) / length), lift = std::sqrt(1 - slope * slope);
  return leaf(box, [local = ToLocal(frameAlong(a, b, Point::UnitZ())), length = f(length), ra = f(ra), rb = f(rb),
                    slope, lift](float x, float y, float z) {
    const auto [along, v, w] = local(x, y, z);
    const float away = std::sqrt(v * v + w * w);
    const float k = along * lift - away * slope;
    if (k < 0) return std::sqrt(along * along + away * away) - ra;
    if (k > length * lift) return std::sqrt((along - length) * (along - length) + away * away) - rb;
    return along * slope + away * lift - ra;
  });
}

Shape strut(const Point& a, const Point& b, const Section& atA, const Section& atB, const Point& wideDirection) {
  const Frame frame = frameAlong(a, b, wideDirection);
  const double length = positive((b - a).norm());
  const float wa = f(positive(atA.wide)), ta = f(positive(atA.thick));
  const float wb = f(positive(atB.wide)), tb = f(positive(atB.thick));
  const double widest = std::max(wa, wb), thickest = std::max(ta, tb),
               cap = std::max(std::min(wa, ta), std::min(wb, tb));
  const float slope = std::max(std::abs(wa - wb), std::abs(ta - tb)) / f(length);
  const float steep = 1 / std::sqrt(1 + slope * slope);
  const Box local(Point(-cap, -thickest, -widest), Point(length + cap, thickest, widest));
  return leaf(placedBox(frame, local),
              [local = ToLocal(frame), length = f(length), wa, ta, wb, tb, steep](float x, float y, float z) {
                const auto [u, v, w] = local(x, y, z);
                const float t = std::clamp(u / length, 0.0f, 1.0f);
                const float wide = wa + (wb - wa) * t, thick = ta + (tb - ta) * t;
                return steep * ellipsoidDistance(u - t * length, v, w, std::min(wide, thick), thick, wide);
              });
}

Shape block(const Frame& frame, const Point& half, double round) {
  const float hx = f(positive(half.x())), hy = f(positive(half.y())), hz = f(positive(half.z()));
  const float r = std::clamp(f(round), 0.0f, std::min(hx, std::min(hy, hz)));
  return leaf(placedBox(frame, localBox(hx, hy, hz)),
              [local = ToLocal(frame), hx, hy, hz, r](float x, float y, float z) {
                const auto [u, v, w] = local(x, y, z);
                const float a = std::fabs(u) - hx + r, b = std::fabs(v) - hy + r, c = std::fabs(w) - hz + r;
                const float p = std::max(a, 0.0f), q = std::max(b, 0.0f), s = std::max(c, 0.0f);
                return std::sqrt(p * p + q * q + s * s) + std::min(std::max(a, std::max(b, c)), 0.0f) - r;
              });
}

Shape ring(const Frame& frame, double alongX, double alongY, const Section& section) {
  const float rx = f(positive(alongX)), ry = f(positive(alongY));
  const float wide = f(positive(section.wide)), thick = f(positive(section.thick));
  return leaf(placedBox(frame, localBox(rx + wide, ry + wide, thick)),
              [local = ToLocal(frame), rx, ry, wide, thick](float x, float y, float z) {
                const auto [u, v, w] = local(x, y, z);
                return ellipseDistance(ellipseDistance(u, v, rx, ry), w, wide, thick);
              });
}

Shape halfSpace(const Point& onPlane, const Point& normal) {
  const Point n = normal.norm() > 1e-9 ? Point(normal.normalized()) : Point::UnitZ();
  const double everywhere = 1e6;
  return leaf(around(Point::Zero(), everywhere), [nx = f(n.x()), ny = f(n.y()), nz = f(n.z()), px = f(onPlane.x()),
                                                  py = f(onPlane.y()), pz = f(onPlane.z())](float x, float y, float z) {
    // Differences first: the plane's points keep full precision far from the origin.
    return nx * (x - px) + ny * (y - py) + nz * (z - pz);
  });
}

}  // namespace zyga::solid
