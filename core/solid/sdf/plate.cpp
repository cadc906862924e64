#include <algorithm>
#include <cmath>

#include "core/solid/sdf/node.h"
#include "core/solid/sdf/section_distance.h"

namespace zyga::solid {

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
