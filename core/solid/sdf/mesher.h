#pragma once

#include "core/solid/mesh/triangle_mesh.h"
#include "core/solid/sculpt/sculpt.h"
#include "core/solid/sdf/shape.h"

namespace zyga::solid {

/// The largest connected surface of the shape, as a closed, consistently oriented 2-manifold whose vertices lie near
/// the surface, to a fraction of a voxel. Thin parts survive down to about one voxel (m). No normals or occlusion yet.
/// From the dual surface of a SparseSdfGrid: vertices take a step of Newton along the gradient, p - f g / |g|^2, are
/// evened out among their neighbours, and take another step; faces are split along the diagonal that folds them less.
/// Empty when the shape has no surface.
TriangleMesh meshSurface(const Shape& shape, double voxel);

/// As meshSurface with every surface of the shape: pieces that do not touch, specks, and the walls of closed hollows,
/// which face inwards.
TriangleMesh meshAllSurfaces(const Shape& shape, double voxel);

/// Voxel, m, at which the shape's surface has about this many triangles.
double voxelFor(const Shape& shape, std::size_t triangles);

}  // namespace zyga::solid
