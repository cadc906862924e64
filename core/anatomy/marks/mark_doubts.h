#pragma once

#include "core/anatomy/marks/mark_plan.h"

namespace zyga::anatomy {

/// A mark that can hardly be right, and why: one of the reasons below. A mark may be doubted for several.
struct MarkDoubt {
  std::string mark;  ///< as WantedMark::name
  reason::Reason why;
  std::string partner;  ///< the other of a pair that it disagrees with; empty where the doubt is of this mark alone

  bool operator==(const MarkDoubt&) const = default;
};

/// Why a mark is doubted. The mark comes first, a second one after it; then what was measured and from where on that is
/// doubted. Lengths are of the bone as it stands in the animal, m.
namespace doubt {

using reason::Id;

inline constexpr Id kOffMidPlane{"doubt.off-mid-plane", 3};   ///< mark, how far off, from where on
inline constexpr Id kUneven{"doubt.uneven", 4};               ///< mark, its partner, how far off, from where on
inline constexpr Id kAreasDiffer{"doubt.areas-differ", 4};    ///< mark, its partner, how many times, from where on
inline constexpr Id kTurned{"doubt.turned", 4};               ///< facet, its partner, angle, from where on
inline constexpr Id kOtherSide{"doubt.other-side", 1};        ///< mark
inline constexpr Id kPoorFacet{"doubt.poor-facet", 3};        ///< facet, residual, from where on
inline constexpr Id kPoorFit{"doubt.poor-fit", 3};            ///< mark, residual, from where on
inline constexpr Id kCentreUnsure{"doubt.centre-unsure", 3};  ///< mark, error of the centre, from where on
inline constexpr Id kOffSurface{"doubt.off-surface", 3};      ///< mark, distance, from where on
inline constexpr Id kNoSurface{"doubt.no-surface", 2};        ///< facet, share of its outline over which there is some
inline constexpr Id kFarFromBone{"doubt.far-from-bone", 3};   ///< mark, distance, from where on
inline constexpr Id kWrongWay{"doubt.wrong-way", 1};          ///< facet
inline constexpr Id kIntoBone{"doubt.into-bone", 1};          ///< facet

/// "left %1", "right %1" of a term.
inline constexpr Id kLeft{"doubt.left", 1}, kRight{"doubt.right", 1};

}  // namespace doubt

/// From where on marks are doubted. Lengths are shares of the bone's size (solid::surfaceSize: how far its surface lies
/// from its middle, root mean square, about a third of a bone's length). Program defaults, no source; chosen so that
/// the suggested and measured marks of a dog's and a human's vertebrae and of the sample scans pass (mark_doubts_test).
namespace doubtful {

inline constexpr double kOffMidPlane = 0.12;  ///< for a mark among the others; more for one that lies far from them
inline constexpr double kUneven = 0.3;        ///< between a mark and its partner's mirror image
inline constexpr double kAreas = 2;           ///< times
inline constexpr double kTurned = 0.6;        ///< rad, between a facet's normal and its partner's mirror image
inline constexpr double kOtherSide = 0.05;
inline constexpr double kFacetResidual = 0.2;  ///< of the root of the facet's area
inline constexpr double kFitResidual = 0.1;
inline constexpr double kCentreError = 0.15;
inline constexpr double kOffSurface = 0.1;    ///< of what is marked on the surface itself
inline constexpr double kFarFromBone = 0.8;   ///< of centres that may lie beside it
inline constexpr double kLeastSurface = 0.3;  ///< share of a facet's outline

}  // namespace doubtful

/// The mark as reasons tell it.
reason::Value markValue(const WantedMark& mark);
/// Where it lies in the scan's axes, m; of a facet its centre. None where it has not been made.
std::optional<Eigen::Vector3d> placeOf(const Scan& scan, const WantedMark& mark);

/// The plane that marks of the middle and middles of pairs lie in, whichever of them is wrong.
struct MarkedMidPlane {
  Eigen::Vector3d point = Eigen::Vector3d::Zero();
  Eigen::Vector3d left = Eigen::Vector3d::UnitY();  ///< unit normal; without pairs either way
  double side(const Eigen::Vector3d& p) const { return left.dot(p - point); }
};
/// In the scan's axes, straightened, m; `size` in m of the scan. Of all planes through three of the points the one that
/// most lie near (robust: Geman & McClure 1987, Bull. Int. Stat. Inst. 52(4):5), then by least squares through those.
/// None for a paired bone and where fewer than three points lie apart from a line.
std::optional<MarkedMidPlane> markedMidPlane(const Scan& scan, const Bone& sculpted, double size);

/// What the marks of a scan say about each other, without its surface: marks off the mid-plane, left and right that
/// disagree (told of the one that lies less like the sculpted bone's; of both where nothing tells which), poor fits,
/// facets that face the wrong way for their role. `size`: of the bone as it was scanned, m. In the order of marksFor.
std::vector<MarkDoubt> doubtsAmongMarks(const Scan& scan, const Bone& sculpted, double size);

/// The marks that a joint at this end of a vertebra rests on.
std::vector<std::string> marksOfEnd(bool cranialEnd);
/// Names of those that are doubted, each once, as reasons tell them, in order.
std::vector<reason::Value> suspectsAtEnd(const std::vector<MarkDoubt>& doubts, bool cranialEnd);

}  // namespace zyga::anatomy
