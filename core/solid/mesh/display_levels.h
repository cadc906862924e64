#pragma once

#include "core/solid/sculpt/sculpt.h"

namespace zyga::solid {

/// Levels of detail of a repaired mesh for display, finest first: the mesh itself, then a quarter each time, down to
/// about `coarsest` triangles; each with normals, without occlusion. The quick simplifier (meshoptimizer) serves here,
/// which may open or close thin parts of the coarser levels: never measure on them.
BoneMesh displayLevels(TriangleMesh mesh, std::size_t coarsest = 1500);

}  // namespace zyga::solid
