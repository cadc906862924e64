#pragma once

#include <Eigen/Core>
#include <array>
#include <vector>

namespace zyga::study {

/// The least convex solid around a cloud of points, in the points' unit.
struct ConvexHull {
  std::vector<std::array<std::size_t, 3>> faces;  ///< into the points, counter-clockwise from outside
  double volume = 0;
  Eigen::Vector3d centroid = Eigen::Vector3d::Zero();  ///< of the solid; of the points when they lie in one plane
};

/// Points within a billionth of the cloud's size of a face count as lying on it. No faces and no volume for fewer than
/// four points or points in one plane.
ConvexHull convexHull(const std::vector<Eigen::Vector3d>& points);

/// Corners of the least convex polygon around points of a plane, counter-clockwise, none of them on the line between
/// its neighbours. Two points for a line, one for a point.
std::vector<Eigen::Vector2d> convexPolygon(std::vector<Eigen::Vector2d> points);

/// Centroid of the area of a convex polygon; of its corners when it has none. Zero for no corner.
Eigen::Vector2d middleOf(const std::vector<Eigen::Vector2d>& corners);

}  // namespace zyga::study
