#pragma once

#include "core/solid/axial/vertebra.h"

/// Parts that vertebrae of all regions are made of.
namespace zyga::solid {

/// Flat pad that carries a facet, wider than its outline, its top a little over the facet's plane: clearFacet levels
/// it. `depth` is its thickness below the plane, m.
Shape facetPad(const anatomy::Facet& facet, double depth);

/// Takes away all that lies over a facet, so that the bone's surface is the facet's plane within its outline.
Shape clearFacet(const Shape& bone, const anatomy::Facet& facet);
Shape clearFacets(const Shape& bone, const Vertebra& v);

/// Thin sheet of bone through the points of its outline, which need only be roughly coplanar.
Shape web(const std::vector<Point>& outline, double middle, double rim);

/// Bar whose section is a flat ellipse; `wide` and `thick` are half extents.
Shape ridge(const Point& a, const Point& b, double wide, double thick, const Point& wideDirection);

/// Centrum without its processes: waisted spool with condyle and cotyle, faces cut to the wedge. `waist` is the share
/// of the end's extents left in the middle, `keel` how far the under side rises there, share of H.
Shape centrum(const Vertebra& v, double waist, double keel);

/// Rim of the cotyle hollowed for the neighbour's condyle; the last thing done to a centrum.
Shape hollowCotyle(const Shape& bone, const Vertebra& v);

/// Through hole of the neural canal, flared towards both ends.
Shape canalTool(const Vertebra& v, double radius);

}  // namespace zyga::solid
