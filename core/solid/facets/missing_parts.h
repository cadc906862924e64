#pragma once

#include <optional>

#include "core/anatomy/marks/scan.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// How far a bone of the midline lacks the mirror image of what it shows.
struct OneSidedness {
  double share = 0;  ///< of the whole surface, whose image in the mid-plane meets no surface
  /// Of each quarter the share that is not there, by what its opposite shows.
  double leftCranial = 0, leftCaudal = 0, rightCranial = 0, rightCaudal = 0;

  /// Share of the whole bone that is missing, were it the image of what has none.
  double missing() const { return share / (1 + share); }
};

/// From which share on a quarter is told to be missing, and a bone to be one-sided. Program defaults, no source.
inline constexpr double kQuarterMissing = 0.4, kOneSided = 0.08;

/// Points spread evenly over the surface are mirrored; those farther from it than 0.2 of the bone's size (surfaceSize;
/// program default, no source: as far as bones sheared by ten degrees are off) meet nothing. Halves part at the middle
/// between the ends of the centrum. None unless the scan lies by its landmarks and is of a bone of the midline: no
/// other plane is sure enough when half of a bone is gone. Takes a second for a million triangles.
std::optional<OneSidedness> oneSidedness(const anatomy::Scan& scan, const TriangleMesh& mesh);

}  // namespace zyga::solid
