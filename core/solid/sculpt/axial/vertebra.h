#pragma once

#include <optional>

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/shape.h"

/// Parts that vertebrae of all regions are made of.
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

/// How far the bone under a facet reaches below its plane, m.
double padDepth(const anatomy::Facet& facet);

/// The tail lifts until half of its facets' length is left: so far they slide on towards the arch before or behind.
inline constexpr double kHalfFacet = 0.5;

/// Gives the bone all its facets: a flat pad a little wider than the outline, free of anything over it, so that the
/// bone's surface is the facet's plane within its outline. The last thing done to a vertebra. `slide`: how far the
/// neighbour's facet finds room on towards this bone's middle, share of the facet's length.
Shape layFacets(const Shape& bone, const Vertebra& v, double slide = 0);

/// Thin sheet of bone through the points of its outline, which need only be roughly coplanar.
Shape web(const std::vector<Point>& outline, double middle, double rim);

/// Bar whose section is a flat ellipse; `wide` and `thick` are half extents.
Shape ridge(const Point& a, const Point& b, double wide, double thick, const Point& wideDirection);

/// Centrum without its processes: waisted spool with condyle and cotyle, faces cut to the wedge. `waist` is the share
/// of the end's extents left in the middle, `keel` how far the under side rises there, share of H; `frontFlare` scales
/// the front end, 0 for what suits the kind of face.
Shape centrum(const Vertebra& v, double waist, double keel, double frontFlare = 0);

/// The cotyle hollowed for the neighbour's condyle, so that its rim stands round it.
Shape hollowCotyle(const Shape& bone, const Vertebra& v);

/// Through hole of the neural canal, flared towards both ends.
Shape canalTool(const Vertebra& v, double radius);

/// A point `depth` (m) below the middle of a facet.
inline Point under(const anatomy::Facet& facet, double depth) { return facet.centre - depth * facet.normal; }

}  // namespace zyga::solid
