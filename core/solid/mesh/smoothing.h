#pragma once

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// The surface with its ripples evened out and its size kept: vertices move towards the middle of their neighbours and,
/// a little farther, away from it again, so many times (Taubin 1995, SIGGRAPH 95:351; the factors 0.5 and -0.53 are
/// ours within his bounds). Positions and normals; triangles stay.
TriangleMesh smoothed(TriangleMesh mesh, int times);

}  // namespace zyga::solid
