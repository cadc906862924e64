#pragma once

#include "core/anatomy/marks/suggested_marks.h"
#include "core/solid/mesh/triangle_mesh.h"
#include "core/task/task.h"

namespace zyga::solid {

/// Why marks are not carried over.
namespace fault {

inline constexpr reason::Id kOtherShape{"carry.other-shape", 2};  ///< whose marks, and the bone that should get them
inline constexpr reason::Id kNoSurfaceUnder{"carry.no-surface-under", 1};  ///< term of the facet

}  // namespace fault

/// A bone whose marks may be carried over.
struct MarkedMesh {
  const TriangleMesh* mesh = nullptr;  ///< in the scan's axes, m
  anatomy::SuggestedMarks marks;       ///< of a person's own marks with confidence 1
};

struct CarriedMarks {
  anatomy::SuggestedMarks marks;  ///< in the axes of the bone that gets them
  /// How far the two surfaces lie apart once they are laid on each other, root mean square of the nearer four fifths,
  /// both ways, share of the bone's size (surfaceSize).
  double misfit = 0;
};

/// Marks of one bone on another of about the same shape, such as its neighbour, which may lie any way and be of another
/// size. Points spread over the first surface are laid on the second by a turn, a shift and a scale (closest points,
/// iterated: Besl & McKay 1992, IEEE Trans. Pattern Anal. Mach. Intell. 14:239; the farthest fifth left out:
/// Chetverikov et al. 2005, Image Vis. Comput. 23:299), begun from every way in which their principal axes fall
/// together; then each mark is shifted as the surface about it asks. Facets are fitted anew to the surface under their
/// outline; one with less than half of it is left out. Confidence falls with the misfit, where another way lies nearly
/// as well (a bone that is nearly its own image upside down), and with that of the mark carried over. Bones farther
/// apart than a quarter of their size carry nothing. Program defaults, no source. About half a second a pair.
CarriedMarks carryMarks(const MarkedMesh& from, const anatomy::BoneName& bone, const TriangleMesh& to);

/// The place in `marked` of the bone of the column nearest to this one, with the same kind first; none when nobody is
/// of the column. Between equals the one nearer to the head.
std::optional<std::size_t> nearestMarked(const anatomy::BoneName& bone, std::span<const MarkedMesh> marked);

}  // namespace zyga::solid
