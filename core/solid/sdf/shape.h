#pragma once

#include <Eigen/Geometry>
#include <memory>
#include <vector>

/// Solids as signed-distance fields: negative inside, metres, slope about 1. Compose simple solids with the functions
/// below; they are values, cheap to copy. Lengths that must be positive are raised to 0.1 mm, so no input makes a
/// field that fails; a solid without extent simply adds nothing that can be seen.
namespace zyga::solid {

using Point = Eigen::Vector3d;
using Frame = Eigen::Isometry3d;
using Box = Eigen::AlignedBox3d;

class FieldNode;

class Shape {
 public:
  Shape() = default;  ///< no solid at all: the neutral element of a union
  explicit Shape(std::shared_ptr<const FieldNode> node) : node_(std::move(node)) {}
  bool empty() const { return !node_; }
  /// Encloses the solid (not tightly). Empty for no solid.
  Box bounds() const;
  /// Signed distance, m; +infinity for no solid.
  double at(const Point& p) const;
  /// A leaner shape with the same field within `radius` of `centre`, wherever the field is within `band` of zero; where
  /// it is farther from zero only its sign is kept.
  Shape near(const Point& centre, double radius, double band) const;
  const std::shared_ptr<const FieldNode>& node() const { return node_; }

 private:
  std::shared_ptr<const FieldNode> node_;
};

/// Half extents of an elliptical section: `wide` along the stated direction, `thick` across it.
struct Section {
  double wide = 0.01;
  double thick = 0.01;
};
/// A point of a tube's path. `wideDirection` zero: the one of the knot before.
struct Knot {
  Point at = Point::Zero();
  Section section;
  Point wideDirection = Point::Zero();
};
/// A section of a loft, `at` along the frame's x axis: half extents along y and z, centre off the axis, and squareness
/// from 0 (ellipse) to 1 (nearly a rectangle).
struct Station {
  double at = 0;
  double halfY = 0.01;
  double halfZ = 0.01;
  double y = 0;
  double z = 0;
  double square = 0;
};
/// Thickness of a plate: full thickness in the middle and at the rim, how far inside the rim the middle thickness is
/// reached, and the curvatures (1/m) of its mid-surface along the frame's x and y (+ bends towards +z).
struct PlateForm {
  double middle = 0.02;
  double rim = 0.01;
  double taper = 0.05;
  double curveX = 0;
  double curveY = 0;
};

/// x runs from `from` to `to`, z is as near to `up` as can be; origin at `from`.
Frame frameAlong(const Point& from, const Point& to, const Point& up);
/// z along `normal`, x as near to `xHint` as can be.
Frame frameOn(const Point& origin, const Point& normal, const Point& xHint);

// Simple solids.
Shape ball(const Point& centre, double radius);
Shape ellipsoid(const Point& centre, const Point& radii, const Eigen::Matrix3d& axes = Eigen::Matrix3d::Identity());
/// Round cone: the hull of two balls.
Shape roundCone(const Point& a, const Point& b, double radiusA, double radiusB);
/// Tapered bar of elliptical section with rounded ends.
Shape strut(const Point& a, const Point& b, const Section& atA, const Section& atB, const Point& wideDirection);
/// Tapered bar along a smooth curve through the knots (Catmull-Rom), or a polyline when `smooth` is false.
Shape tube(const std::vector<Knot>& knots, const Point& wideDirection, bool smooth = true);
/// Straight-axis loft through the stations, flat ends with the edge rounded by `rimRound`: centra, shafts, spools.
Shape loft(const Frame& frame, const std::vector<Station>& stations, double rimRound);
/// Box with rounded edges; `half` includes the rounding.
Shape block(const Frame& frame, const Point& half, double round);
/// Plate in the frame's xy plane. The closed outline (either sense) is rounded through its corners (Catmull-Rom) when
/// `smooth`.
Shape plate(const Frame& frame, const std::vector<Eigen::Vector2d>& outline, const PlateForm& form, bool smooth = true);
/// Ring around the frame's z axis: half axes of the centre line along x and y; the section is `wide` in the ring's
/// plane and `thick` along z.
Shape ring(const Frame& frame, double alongX, double alongY, const Section& section);
/// Everything behind the plane; `normal` points out of the solid. Use it to cut or intersect.
Shape halfSpace(const Point& onPlane, const Point& normal);

// Composition. `blend` is the width over which two surfaces flow together, m; 0 leaves a crease.
Shape unite(const std::vector<Shape>& shapes);
Shape smoothUnion(const std::vector<Shape>& shapes, double blend);
Shape smoothUnion(const Shape& a, const Shape& b, double blend);
Shape intersect(const Shape& a, const Shape& b, double blend = 0);
Shape cut(const Shape& a, const Shape& tool);
Shape smoothCut(const Shape& a, const Shape& tool, double blend);

// Change of place and size.
Shape placed(const Shape& shape, const Frame& frame);
Shape mirrored(const Shape& shape);  ///< across y = 0
/// The shape and its mirror image across y = 0.
Shape symmetric(const Shape& shape, double blend = 0);
Shape inflated(const Shape& shape, double by);
/// Uneven surface: waves of about the given depth and length, even in y so that mirror images stay mirror images.
Shape weathered(const Shape& shape, double depth, double wavelength);

}  // namespace zyga::solid
