#pragma once

#include "core/solid/mesh/triangle_mesh.h"
#include "core/solid/sculpt/sculpt.h"
#include "core/solid/sdf/shape.h"

namespace zyga::solid {

/// The largest connected surface of the shape, as a closed, consistently oriented 2-manifold whose vertices lie near
/// the surface, to a fraction of a voxel. Thin parts survive down to about one voxel (m). No normals or occlusion yet.
/// Empty when the shape has no surface.
TriangleMesh meshSurface(const Shape& shape, double voxel);

/// As meshSurface with every surface of the shape: pieces that do not touch, specks, and the walls of closed hollows,
/// which face inwards.
TriangleMesh meshAllSurfaces(const Shape& shape, double voxel);

/// Voxel, m, at which the shape's surface has about this many triangles.
double voxelFor(const Shape& shape, std::size_t triangles);

/// Settles the vertices on the surface to within a few micrometres, then: normals from the field's gradient and
/// occlusion from the field along the normal, up to `reach` (m) away.
void shade(const Shape& shape, TriangleMesh& mesh, double reach);

/// About `triangles` triangles, closed and oriented like the input and in as many pieces; vertices, normals and
/// occlusion are a subset of the input's. Stops early, with more triangles, when cancelled.
TriangleMesh simplified(const TriangleMesh& mesh, std::size_t triangles, const std::atomic<bool>* cancel = nullptr);

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

/// A likeness in a fraction of the time, in one level: what is thinner than a fortieth of the whole may be missing.
BoneMesh meshLikeness(const Shape& shape);

}  // namespace zyga::solid
