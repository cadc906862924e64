#pragma once

#include "core/solid/sculpt/axial/vertebra.h"

/// Parts that vertebrae of all regions are made of.
namespace zyga::solid {

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

}  // namespace zyga::solid
