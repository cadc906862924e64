#pragma once

#include <array>
#include <optional>

#include "core/anatomy/facet.h"
#include "core/reason/reason.h"
#include "core/solid/facets/mid_plane.h"

/// Where two neighbouring vertebrae meet, found on their surfaces alone. Both meshes lie in articulation in one frame
/// and unit, whichever those are; nothing is taken for granted about axes. What comes out is a suggestion, for somebody
/// to look at: it says how sure it is.
namespace zyga::solid {

/// Why nothing can be suggested.
namespace fault {

inline constexpr reason::Id kNoSurface{"suggest.no-surface", 1};  ///< term of which bone
inline constexpr reason::Id kNotFinite{"suggest.not-finite", 1};  ///< term of which bone
inline constexpr reason::Id kInsideOut{"suggest.inside-out", 1};  ///< term of which bone
inline constexpr reason::Id kFarApart{"suggest.far-apart", 1};    ///< share of the bone's size that was looked over
inline constexpr reason::Id kNoCentra{"suggest.no-centra"};       ///< no faces of centra that look at each other
inline constexpr reason::Id kNoFacets{"suggest.no-facets"};  ///< nothing beside the mid-plane that could be a facet

}  // namespace fault

/// Which of the two bones a reason is about.
inline constexpr reason::Term kCranialBone{"bone-of-pair.cranial"}, kCaudalBone{"bone-of-pair.caudal"};

/// Directions of a column where it was looked at, unit, at right angles.
struct ColumnAxes {
  Eigen::Vector3d cranial = Eigen::Vector3d::UnitX();
  Eigen::Vector3d left = Eigen::Vector3d::UnitY();
  Eigen::Vector3d dorsal() const { return cranial.cross(left); }
};

/// How flat a patch is, and how it bends along the direction of sliding.
struct PatchShape {
  double area = 0;           ///< of its triangles, square unit
  double planeResidual = 0;  ///< weighted root mean square distance from the plane
  /// Of the cylinder across the slide that fits best, to second order: positive where the facet is hollow, negative
  /// where it bulges; infinite for a flat one.
  double radius = 0;
  double cylinderResidual = 0;  ///< weighted root mean square distance from that cylinder
};

struct SuggestedFacet {
  anatomy::Facet facet;  ///< in the meshes' frame and unit; slides cranially along the arc about the centre of rotation
  std::vector<std::uint32_t> triangles;  ///< of its bone's mesh, ascending
  PatchShape shape;
  double confidence = 0;  ///< 0 to 1, see Confidence
};

/// What a suggestion's confidence is made of, each 0 to 1. Told is the geometric mean of all but the area, times the
/// area: a small patch that is as flat and as symmetric as any facet is what bones show elsewhere. Program default, no
/// source. Met: true facets of the 23 joints of a dog and of human lumbars 0.85 to 1, of invented necks 0.95 and more,
/// sheared by 10 degrees 0.7, with the other side broken off 0.6; patches that were found where the facets had been cut
/// off 0.2 to 0.45. So less than a half is as good as none (anatomy::kSureEnough).
struct Confidence {
  double area = 0;      ///< a facet of 0.08 of the squared bone size or more counts fully
  double flatness = 0;  ///< residual of the cylinder against the root of the area
  double sides = 0;     ///< how well left and right are mirror images
  double facing = 0;    ///< how well prezyg and postzyg agree in place and direction
  double steady = 0;    ///< how little the patch hangs on the distance within which surfaces count as facing
  double whole() const;
};

/// The end of a centrum.
struct SuggestedFace {
  std::vector<std::uint32_t> triangles;
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();   ///< of its area
  Eigen::Vector3d normal = Eigen::Vector3d::UnitX();  ///< mean, unit, out of the bone
  double area = 0;
};

struct SuggestOptions {
  /// Where it is known; found otherwise.
  std::optional<MidPlane> midPlane;
};

struct NeighbourSuggestion {
  double boneSize = 0;  ///< the smaller bone's surfaceSize, of which thresholds are shares
  MidPlane midPlane;    ///< its normal is axes.left
  ColumnAxes axes;
  SuggestedFace caudalFace;                          ///< of the cranial bone's centrum
  SuggestedFace cranialFace;                         ///< of the caudal bone's centrum
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();  ///< of rotation of flat faces: half-way between the two faces
  double disc = 0;                                   ///< distance of the faces' centres along the column
  /// Found from the data: the distance up to which surfaces count as facing at the facets.
  double reach = 0;
  double jointSpace = 0;  ///< median distance of the surfaces there; negative where the meshes enter each other
  /// Left and right. None where only the other side was found.
  std::array<std::optional<SuggestedFacet>, 2> postzygs;  ///< on the cranial bone
  std::array<std::optional<SuggestedFacet>, 2> prezygs;   ///< on the caudal bone
  std::array<Confidence, 2> confidence;                   ///< of the sides

  bool complete() const { return postzygs[0] && postzygs[1] && prezygs[0] && prezygs[1]; }
};

/// Facets and faces of a joint. Patches are regions of the two surfaces that look at each other (normals more than 120
/// degrees apart), no triangle turned more than 60 degrees from its patch, connected without ridges, dorsal to the
/// centra, one on either side of the mid-plane; the sides of a hyposphene are passed over for the zygapophyses above
/// it. The distance within which surfaces face each other is not set but found: of a ladder of shares of the bone's
/// size, from a fiftieth to a quarter, that at which the patches are large, alike on both sides and change least with
/// it. Planes weigh each triangle by its area and by how near its distance is to the patch's median. All shares:
/// program default, no source; the same for every bone. Deterministic.
///
/// Meshes may be open and rough. Best welded and facing outwards (solid::repair); work grows with their triangles,
/// about a second for two of ten thousand. Throws reason::Failure (fault) for meshes that cannot be neighbours in
/// articulation.
NeighbourSuggestion suggestNeighbours(const TriangleMesh& cranial, const TriangleMesh& caudal,
                                      const SuggestOptions& options = {});

}  // namespace zyga::solid
