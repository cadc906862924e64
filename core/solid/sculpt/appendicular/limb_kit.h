#pragma once

#include <vector>

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/shape.h"

// Shapes of the appendicular bones are drawn in shares of the bone's length and follow its measured widths. Their forms
// are common practice, no source.
namespace zyga::solid {

/// A section of a long bone, in shares of its length: how far down from the upper end, half extents front to back and
/// side to side, and the middle's place off the axis.
struct Slice {
  double down = 0;
  double depth = 0.05;
  double width = 0.05;
  double cranial = 0;
  double lateral = 0;
  double square = 0;
};

/// A long bone of the left side, with a ruler along its axis from `top` to `bottom`.
class LongBone {
 public:
  explicit LongBone(const anatomy::Bone& bone);

  double length() const { return length_; }
  /// Widths as shares of the length.
  double proximal() const { return share(anatomy::Measure::ProximalWidth); }
  double shaft() const { return share(anatomy::Measure::ShaftWidth); }
  double distal() const { return share(anatomy::Measure::DistalWidth); }
  double share(anatomy::Measure measure) const;

  /// Shares of the length to a point in the bone's frame.
  Point at(double down, double cranial, double lateral) const;
  Point along(double down, double cranial, double lateral) const;  ///< a direction, not normalised
  Shape body(const std::vector<Slice>& slices, double endRound) const;
  /// Ellipsoid whose half extents run down, cranial and lateral.
  Shape lump(const Point& downCranialLateral, const Point& halves) const;
  /// Smooth ridge through points (down, cranial, lateral) whose half thickness is given at each.
  Shape ridge(const std::vector<Point>& points, const std::vector<double>& halves) const;
  /// Knot of a tube: place (down, cranial, lateral), half extents, and the direction of the wide one in the same axes.
  Knot section(const Point& downCranialLateral, double wide, double thick, const Point& across) const;
  /// Thin plate through corners (down, cranial, lateral) that lie nearly in one plane.
  Shape web(const std::vector<Point>& corners, double thickness) const;
  /// The same through points of the bone's frame.
  Shape sheet(const std::vector<Point>& corners, double thickness) const;
  double blend(double share) const { return share * length_; }

 private:
  const anatomy::Bone& bone_;
  double length_ = 1;
  Frame frame_;  ///< origin at the upper end; x down the axis, y cranial, z medial
};

/// Corners in shares of a size.
std::vector<Eigen::Vector2d> scaled(std::vector<Eigen::Vector2d> outline, double byX, double byY);

/// Frame of a plate that lies in the bone's xz plane: the plate's x is cranial, its y up, its z medial, so that a
/// negative curvature bends its ends outward and a positive one inward.
Frame sideways(const Point& origin = Point::Zero());

}  // namespace zyga::solid
