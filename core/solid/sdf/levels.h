#pragma once

#include "core/solid/mesh/triangle_mesh.h"
#include "core/solid/sdf/shape.h"

namespace zyga::solid {

/// Settles the vertices on the surface to within a few micrometres, then: normals from the field's gradient and
/// occlusion from the field along the normal, up to `reach` (m) away.
void shade(const Shape& shape, TriangleMesh& mesh, double reach);

/// A part of the surface that the shape keeps flat: an ellipse with these half extents (m) along `along` and across it.
struct FlatPart {
  Point centre = Point::Zero();
  Point normal = Point::UnitZ();
  Point along = Point::UnitX();
  double halfAlong = 0, halfAcross = 0;
};

/// Levels of detail of the shape, finest first: at most about `triangleBudget` triangles, then a quarter, then a
/// sixteenth. In the finest, the flat parts are exactly flat.
BoneMesh meshLevels(const Shape& shape, std::size_t triangleBudget, const std::vector<FlatPart>& flat = {});

/// A preview in a fraction of the time, in one level: what is thinner than a fortieth of the whole may be missing.
BoneMesh previewMesh(const Shape& shape);

}  // namespace zyga::solid
