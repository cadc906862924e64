#pragma once

#include <Eigen/Geometry>
#include <vector>

#include "core/anatomy/facet.h"

namespace zyga::range {

using Polygon = std::vector<Eigen::Vector2d>;

/// Area of a simple polygon, m^2, positive when counter-clockwise.
double signedArea(const Polygon& polygon);

/// The part two convex counter-clockwise polygons share (Sutherland & Hodgman 1974, Comm. ACM 17:32); empty when
/// they only touch.
Polygon sharedPolygon(const Polygon& a, const Polygon& b);

/// How one pair of zygapophyseal facets meets, in numbers.
struct FacetMeasures {
  double overlapLength = 0;  ///< share [0, 1] of the shorter facet's length, along the prezyg's direction of sliding
  double overlapWidth = 0;   ///< share [0, 1] of the narrower facet's width, across that direction
  double overlapArea = 0;    ///< share [0, 1] of the smaller facet's area
  double minGap = 0;         ///< m, over the shared area; negative where the facets enter each other
  double maxGap = 0;         ///< m; both gaps are 0 where nothing is shared
};

/// The same with the outlines, to be drawn.
struct FacetMeeting : FacetMeasures {
  Polygon prezyg, postzyg, shared;  ///< outlines in the prezyg's plane (along slide, across), m
};

/// Both outlines projected along their mean normal onto the prezyg's plane. `X_PrePost` is the postzyg bone's frame in
/// the prezyg bone's frame. Facets turned away from each other (mean normal undefined) do not overlap.
FacetMeeting facetOverlap(const anatomy::Facet& prezyg, const anatomy::Facet& postzyg,
                          const Eigen::Isometry3d& X_PrePost);

}  // namespace zyga::range
