#pragma once

#include <vector>

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/shape.h"

// Forms of head bones are common practice, no source.
namespace zyga::solid {

// Directions of a head: the left side, the snout, up.
inline const Point kSide = Point::UnitY(), kAhead = Point::UnitX(), kUp = Point::UnitZ();

/// Ruler of a head: shares of the skull's length (towards the snout), half width (left) and height (up), from the
/// bone's origin.
struct HeadRuler {
  double length, halfWidth, height;  ///< m

  explicit HeadRuler(const anatomy::Bone& skull);
  Point at(double x, double y, double z) const { return {x * length, y * halfWidth, z * height}; }
  Point at(const Point& p) const { return at(p.x(), p.y(), p.z()); }
};

/// A place on a bar of bone: shares as HeadRuler, half extents in shares of the skull's length.
struct BarKnot {
  Point at;
  double wide = 0.02;
  double thick = 0.015;
};
Shape bar(const HeadRuler& head, const std::vector<BarKnot>& knots, const Point& wideDirection);

/// The curve along which teeth stand, seen from above: from the tip of the snout round to the hind end of the row. The
/// smaller `round`, the squarer the muzzle.
struct ToothArch {
  double front, back;  ///< shares of the skull's length
  double halfWidth;    ///< share of the half width, at the hind end
  double round;        ///< 1: half an ellipse
  double rise = 0;     ///< of the row's hind end over its front, share of the height
  double z = 0;        ///< height of the row at its front, share of the height

  /// `turn` in rad from 0 in front to pi/2 at the hind end.
  Point at(double turn) const;
  /// Share of the half width at a place along the length.
  double widthAt(double x) const;
};

/// Crowns along an arch of one side. Lengths in m.
struct ToothRow {
  int count = 13;
  double firstTurn = 0.1, lastTurn = 1.4;  ///< rad along the arch
  double frontLength = 0.065, backLength = 0.040;
  double width = 0.022, thickness = 0.012;  ///< of the front crowns
  double spoon = 1;                         ///< 1: crown broader than its neck, 0: pencil
  double direction = -1;                    ///< -1 down, +1 up
  double forward = 0.25;                    ///< lean of the crowns out of the arch
};
Shape teeth(const HeadRuler& head, const ToothArch& arch, const ToothRow& row);

/// The two kinds of head. A skull more than half as high as long is a tall one.
bool isTall(const anatomy::Bone& skull);
ToothArch upperArch(const anatomy::Bone& skull);
/// In the jaw's frame, measured with the skull's ruler.
ToothArch lowerArch(const anatomy::Bone& skull);
ToothRow upperTeeth(const anatomy::Bone& skull);
ToothRow lowerTeeth(const anatomy::Bone& skull);

Shape tallSkull(const anatomy::Bone& skull);
Shape longSkull(const anatomy::Bone& skull);

}  // namespace zyga::solid
