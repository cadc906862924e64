#pragma once

#include <Eigen/Core>
#include <cmath>
#include <vector>

/// Outlines of facets, polygons in their plane.
namespace zyga::solid {

inline double outlineArea(const std::vector<Eigen::Vector2d>& outline) {
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Eigen::Vector2d &a = outline[i], &b = outline[(i + 1) % outline.size()];
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return std::abs(twice) / 2;
}

/// Even-odd rule.
inline bool withinOutline(const std::vector<Eigen::Vector2d>& outline, const Eigen::Vector2d& q) {
  bool inside = false;
  for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
    const Eigen::Vector2d &a = outline[i], &b = outline[j];
    if ((a.y() > q.y()) != (b.y() > q.y()) && q.x() < (b.x() - a.x()) * (q.y() - a.y()) / (b.y() - a.y()) + a.x())
      inside = !inside;
  }
  return inside;
}

}  // namespace zyga::solid
