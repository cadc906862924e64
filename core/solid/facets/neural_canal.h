#pragma once

#include <optional>

#include "core/solid/facets/suggest.h"

namespace zyga::solid {

/// The ends of the neural canal's axis, where the arch closes round it.
struct NeuralCanal {
  Eigen::Vector3d cranial = Eigen::Vector3d::Zero(), caudal = Eigen::Vector3d::Zero();
  double radius = 0;      ///< median of the empty discs, in the mesh's unit
  double confidence = 0;  ///< 0 to 1
};

/// Where it is looked for.
struct CanalPlace {
  ColumnAxes axes;
  MidPlane midPlane;
  Eigen::Vector3d cranialFace = Eigen::Vector3d::Zero(), caudalFace = Eigen::Vector3d::Zero();  ///< centres
  double centrumRadius = 0;  ///< of a disc of the faces' mean area
};

/// The neural canal of one vertebra, from its mesh alone. The bone is cut across the column into slices from face to
/// face of the centrum. In each, discs are tried in the mid-plane dorsal to the centrum: from the middle of one, rays
/// are sent out in the slice and meet the surface from outside, in the slice itself or, since arches stand aslant, in
/// one of those beside it. A disc counts as enclosed when seven eighths of the rays meet bone; of these the largest of
/// a slice is taken, moved to where it is largest, also sideways, and those of neighbouring slices that follow each
/// other make the canal. A line through the middles of its narrow part, least squares, is its axis. Confidence:
/// geometric mean of how much is enclosed, how long the run is, how straight, how near the mid-plane and how nearly
/// along the column.
///
/// Limits: an arch that is broken through, or missing on one side, is no ring and gives none; a canal filled with
/// matrix has no surface and gives none; where a hollow of the arch, open to the mid-plane and larger than the canal,
/// follows the column, that is taken. None is returned where no run of a tenth of the centrum's length was found.
/// Shares: program default, no source.
std::optional<NeuralCanal> findNeuralCanal(const TriangleMesh& mesh, const CanalPlace& place);

}  // namespace zyga::solid
