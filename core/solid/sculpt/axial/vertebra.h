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

/// A wedge of bone under the hind facets of a dorsal (hyposphene), which the slot between the front facets of the next
/// bone (hypantrum) takes. Both bones know it by the same numbers, each in its own frame.
struct WedgeJoint {
  Point middle = Point::Zero();  ///< in the mid-plane at the height of the facets
  Point slide = Point::UnitX();  ///< along the facets, forwards
  double half = 0;               ///< half its width at half its depth
  double deep = 0;               ///< below the facets
  double fore = 0, back = 0;     ///< reach along the slide
  double play = 0;               ///< of the slot on every side
};

/// What the sculpting of a vertebra needs, out of its bone: m, bone's frame.
struct Vertebra {
  int number = 0;
  double length = 0, height = 0, width = 0;  ///< L, H, W of the anatomy
  double wedge = 0;                          ///< rad
  double fork = 0;                           ///< depth of the notch of a split spine
  BallPart condyle, cotyle;
  /// The ball lies behind and the socket in front, as in procoelous tails.
  bool ballBehind = false;
  Point cranialRim, caudalRim, canal, spineTop;
  VertebraSide left, right;
  std::optional<WedgeJoint> wedgeBehind, wedgeBefore;  ///< its own wedge, and the one it takes

  /// Whether its spine is two; a shallower fork is a notch in one.
  bool split() const { return fork >= 0.35 * height; }
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

/// What is taken from the summit of a spine that is only notched: a trough along the mid-plane, `deep` below the top.
Shape bluntNotch(const Point& top, double deep, double length, double height);

/// Bar whose section is a flat ellipse; `wide` and `thick` are half extents.
Shape ridge(const Point& a, const Point& b, double wide, double thick, const Point& wideDirection);

/// Centrum without its processes: waisted spool with condyle and cotyle, faces cut to the wedge. `waist` is the share
/// of the end's extents left in the middle, `keel` how far the under side rises there, share of H; `frontFlare` scales
/// the end without the cotyle, 0 for what suits the kind of face.
Shape centrum(const Vertebra& v, double waist, double keel, double frontFlare = 0);

/// The cotyle hollowed for the neighbour's condyle, so that its rim stands round it; a flat face is dished.
Shape hollowCotyle(const Shape& bone, const Vertebra& v);

/// A hollow in the side of the centrum must keep out of this: the hollow of the cotyle and a wall about it.
Shape cotyleWall(const Vertebra& v);
/// From where to where along x a hollow in the side of the centrum can lie, m.
struct Span {
  double hind = 0, front = 0;
  double middle() const { return 0.5 * (hind + front); }
  double half() const { return 0.5 * (front - hind); }
};
/// The span of this length about `middle`, or what of it the cotyle and the condyle leave.
Span hollowSpan(const Vertebra& v, double middle, double length);

/// The joint of wedge and slot between two neighbours, in the frame of the caudal or of the cranial one; none where the
/// animal has none or the facets leave no room for it.
std::optional<WedgeJoint> wedgeBetween(const anatomy::Bone& cranial, const anatomy::Bone& caudal, bool inCaudal);
/// The wedge with a stem from the foot of the spine; nothing for a bone without one.
Shape hyposphene(const Vertebra& v, const Point& spineFoot);
/// Frees the sides of the wedge of what has flowed into the corners.
Shape freeHyposphene(const Shape& bone, const Vertebra& v);
/// Walls under the front facets on both sides of the slot, and the slot cut between them.
Shape hypantrumWalls(const Vertebra& v);
Shape cutHypantrum(const Shape& bone, const Vertebra& v);

/// Through hole of the neural canal, flared towards both ends.
Shape canalTool(const Vertebra& v, double radius);

/// A point `depth` (m) below the middle of a facet.
inline Point under(const anatomy::Facet& facet, double depth) { return facet.centre - depth * facet.normal; }

}  // namespace zyga::solid
