#pragma once

#include <optional>

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/shape.h"

namespace zyga::solid {

/// One side of a vertebra, mirrored to the left where it is the right one: every part is sculpted on the left.
struct VertebraSide {
  Point diapophysis = Point::Zero();
  Point parapophysis = Point::Zero();
  std::optional<Point> ribTip;
  std::optional<anatomy::Facet> prezyg;
  std::optional<anatomy::Facet> postzyg;
};

/// Part of a ball: the condyle, or the hollow of the cotyle for the neighbour's condyle. Wider than high as the
/// centrum is.
struct BallPart {
  Point centre = Point::Zero();
  double radius = 0;  ///< 0 for a flat face
  double widening = 1;

  bool flat() const { return radius <= 0; }
  Shape solid(double by = 0) const;
};

/// What the sculpting of a vertebra needs, out of its bone: m, bone's frame.
struct Vertebra {
  int number = 0;
  double length = 0, height = 0, width = 0;  ///< L, H, W of the anatomy
  double wedge = 0;                          ///< rad
  double fork = 0;                           ///< depth of the notch of a split spine
  BallPart condyle, cotyle;
  Point cranialRim, caudalRim, canal, spineTop;
  VertebraSide left, right;

  /// A point by shares of L, W, H.
  Point at(double x, double y, double z) const { return {x * length, y * width, z * height}; }
};

/// Throws std::out_of_range naming bone and landmark or measure when one is missing.
Vertebra describeVertebra(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);

/// Both sides of a part that is sculpted on the left.
template <class Sculpt>
Shape bothSides(const Vertebra& v, Sculpt sculpt, double blend) {
  return smoothUnion(sculpt(v.left), mirrored(sculpt(v.right)), blend);
}

}  // namespace zyga::solid
