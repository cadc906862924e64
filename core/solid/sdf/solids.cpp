#include <algorithm>
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
  const double widest = std::max(wa, wb), greatestThickness = std::max(ta, tb),
               cap = std::max(std::min(wa, ta), std::min(wb, tb));
  const float slope = std::max(std::abs(wa - wb), std::abs(ta - tb)) / f(length);
  const float steep = 1 / std::sqrt(1 + slope * slope);
  const Box local(Point(-cap, -greatestThickness, -widest), Point(length + cap, greatestThickness, widest));
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

namespace {

using Point2 = Eigen::Vector2d;

std::vector<Point2> roundedOutline(const std::vector<Point2>& corners) {
  constexpr int kPerSpan = 6;
  const std::size_t n = corners.size();
  std::vector<Point2> out;
  for (std::size_t i = 0; i < n; ++i) {
    const Point2 &a = corners[(i + n - 1) % n], &b = corners[i], &c = corners[(i + 1) % n], &d = corners[(i + 2) % n];
    for (int j = 0; j < kPerSpan; ++j) {
      const double t = static_cast<double>(j) / kPerSpan, t2 = t * t, t3 = t2 * t;
      out.push_back(0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t2 + (3 * b - a - 3 * c + d) * t3));
    }
  }
  return out;
}

double signedDistance(const std::vector<Point2>& polygon, const Point2& p) {
  double best = (p - polygon[0]).squaredNorm(), sign = 1;
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    const Point2 e = polygon[j] - polygon[i], w = p - polygon[i];
    const double t = std::clamp(w.dot(e) / std::max(e.squaredNorm(), 1e-18), 0.0, 1.0);
    best = std::min(best, (w - e * t).squaredNorm());
    const bool above = p.y() >= polygon[i].y(), below = p.y()<polygon[j].y(), left = e.x() * w.y()> e.y() * w.x();
    if ((above && below && left) || (!above && !below && !left)) sign = -sign;
  }
  return sign * std::sqrt(best);
}

/// Signed distance to the outline, tabulated once: looking it up costs the same for any number of corners.
class OutlineTable {
 public:
  explicit OutlineTable(const std::vector<Point2>& polygon) {
    Eigen::AlignedBox2d box;
    for (const Point2& p : polygon) box.extend(p);
    const Point2 margin = Point2::Constant(0.04 * box.diagonal().norm() + kLeastExtent);
    from_ = (box.min() - margin).cast<float>();
    step_ = ((box.diagonal() + 2 * margin) / (kSide - 1)).cast<float>();
    for (int j = 0; j < kSide; ++j)
      for (int i = 0; i < kSide; ++i)
        values_.push_back(static_cast<float>(signedDistance(
            polygon, {from_.x() + step_.x() * static_cast<float>(i), from_.y() + step_.y() * static_cast<float>(j)})));
  }

  float at(float x, float y) const {
    const float u = (x - from_.x()) / step_.x(), v = (y - from_.y()) / step_.y();
    const float cu = std::clamp(u, 0.0f, static_cast<float>(kSide - 1)), cv = std::clamp(v, 0.0f, kSide - 1.0f);
    const int i = std::min(static_cast<int>(cu), kSide - 2), j = std::min(static_cast<int>(cv), kSide - 2);
    const float s = cu - static_cast<float>(i), t = cv - static_cast<float>(j);
    const float* row = &values_[static_cast<std::size_t>(j * kSide + i)];
    const float low = row[0] + (row[1] - row[0]) * s, high = row[kSide] + (row[kSide + 1] - row[kSide]) * s;
    const float outX = (u - cu) * step_.x(), outY = (v - cv) * step_.y();
    return low + (high - low) * t + std::sqrt(outX * outX + outY * outY);
  }

 private:
  static constexpr int kSide = 72;
  Eigen::Vector2f from_, step_;
  std::vector<float> values_;
};

struct PlateField {
  ToLocal local;
  std::shared_ptr<const OutlineTable> outline;
  float middle, rim, taper, curveX, curveY, steep;

  float operator()(float px, float py, float pz) const {
    const auto [x, y, z] = local(px, py, pz);
    const float inside = outline->at(x, y);
    const float s = std::clamp(-inside / taper, 0.0f, 1.0f);
    const float half = rim + (middle - rim) * s * (2 - s);
    const float bend = 0.5f * (curveX * x * x + curveY * y * y);
    const float slope2 = curveX * x * curveX * x + curveY * y * curveY * y;
    const float away = (std::fabs(z - bend) - half) / std::sqrt(1 + slope2);
    return steep * roundedMax(inside, away, rim);
  }
};

Box plateBox(const Frame& frame, const std::vector<Point2>& polygon, const PlateForm& form) {
  Box box;
  const double half = std::max(form.middle, form.rim) / 2;
  for (const Point2& p : polygon) {
    const double bend = (form.curveX * p.x() * p.x() + form.curveY * p.y() * p.y()) / 2;
    box.extend(Point(p.x(), p.y(), std::min(bend, 0.0) - half));
    box.extend(Point(p.x(), p.y(), std::max(bend, 0.0) + half));
  }
  return placedBox(frame, box);
}

}  // namespace

Shape plate(const Frame& frame, const std::vector<Eigen::Vector2d>& outline, const PlateForm& form, bool smooth) {
  if (outline.size() < 3) return {};
  const std::vector<Point2> polygon = smooth ? roundedOutline(outline) : outline;
  const double taper = positive(form.taper), middle = positive(form.middle) / 2, rim = positive(form.rim) / 2;
  const double slope = 2 * std::abs(middle - rim) / taper;
  return leaf(plateBox(frame, polygon, form),
              PlateField{ToLocal(frame), std::make_shared<OutlineTable>(polygon), static_cast<float>(middle),
                         static_cast<float>(rim), static_cast<float>(taper), static_cast<float>(form.curveX),
                         static_cast<float>(form.curveY), static_cast<float>(1 / std::sqrt(1 + slope * slope))});
}

}  // namespace zyga::solid
