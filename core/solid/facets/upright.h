#pragma once

#include "core/anatomy/marks/scan.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// What says how a bone is turned upright.
enum class UprightBy {
  Marks,      ///< it lies by its landmarks
  SomeMarks,  ///< fewer that say where cranial, dorsal or left are; the rest is shape
  Shape       ///< none: the longest axis and the plane of symmetry
};

struct Upright {
  Eigen::Matrix3d R_WS = Eigen::Matrix3d::Identity();  ///< from the scan's axes: x cranial, y left, z dorsal
  UprightBy by = UprightBy::Shape;
};

/// How a scan is turned for somebody to look at it: z up, as the bone has it. By its marks as far as they go. By shape
/// alone a bone of the midline stands with the plane in which it is most nearly its own mirror image upright and the
/// longest axis in that level; any other bone with its longest axis upright. Shape alone does not tell up from down nor
/// cranial from caudal, and long processes may pass for the longest axis: somebody has to look. Pass a coarse level of
/// the mesh; ten thousand triangles take half a second.
Upright uprightOf(const anatomy::Scan& scan, const TriangleMesh& mesh);

}  // namespace zyga::solid
