#pragma once

#include <optional>
#include <vector>

#include "core/kinematics/pose.h"
#include "core/range/assumptions.h"

namespace zyga::range {

/// The rest rotation of one joint at the given cartilage (m): the angles at which the postzyg facets are centred on
/// the prezyg facets, both sides, weighted least squares on centres and normals, the centra held at the cartilage's
/// distance. With NeutralBy::FacetsAndCentra the faces of the centra are also to be parallel, and where the two demands
/// disagree the answer lies half-way between them; as parallel faces ask for a disc of even thickness, cartilage then
/// turns the joint half as much. Joints without facets keep their own rest rotation. `cartilage` is the distance of the
/// centra along the joint's long axes. Facets over the middle of the joint then turn by 2 atan(thickness / 2 facet
/// height), which is the published law (turn = thickness / facet height, Taylor 2014, PeerJ 2:e712) to within
/// (thickness / height)^3 / 12; nothing is scaled to meet it. Not solved where a facet is
/// missing, where facets face the same way or where the search does not settle within a right angle; the rest rotation
/// then stays the joint's own or the last found.
///
/// What cartilage does to the facets is granted on top of what is tolerated, and where both bones are scans, how their
/// facets fit without it, up to a quarter of the shorter facet's length (program default, no source).
kinematics::Articulation::Rest articulate(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                                          double cartilage, NeutralBy by = NeutralBy::Facets);

/// How the bones of a joint settle about this rest inside `share` of its cartilage. Nothing where a facet is missing.
kinematics::Settling settlingOf(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                                const kinematics::Articulation::Rest& rest, double share);

/// One joint under these assumptions, and how its bones settle; every joint.
kinematics::Articulation::Rest articulate(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                                          const Assumptions& assumptions);
kinematics::Articulation articulate(const anatomy::Specimen& specimen, const Assumptions& assumptions);

/// How a joint came to its articulation.
struct ArticulationNote {
  enum class Outcome {
    Good,        ///< or a joint without facets: nothing to tell
    Poor,        ///< the facets' centres stay apart by more than a tenth of the facets' length (program default)
    NoFacets,    ///< not articulated: `missing` facets
    SameWay,     ///< not articulated: the facets face the same way
    NoPosition,  ///< not articulated: no position within a right angle brings the facets together
  };
  struct MissingFacet {
    anatomy::BoneIndex bone;
    anatomy::FacetRole role;
    bool operator==(const MissingFacet&) const = default;
  };
  Outcome outcome = Outcome::Good;
  double residual = 0;                ///< m, as Rest::residual
  std::vector<MissingFacet> missing;  ///< every facet that the joint would need, the caudal bone's first
  /// The bone whose facets are inferred beside a marked scan's.
  std::optional<anatomy::BoneIndex> inferredNeighbour;
  /// m, Rest::misfitGranted where it is more than a tenth of the facets' length.
  double misfitGranted = 0;

  /// There is nothing to tell.
  bool good() const { return outcome == Outcome::Good && !inferredNeighbour && misfitGranted == 0; }
  bool operator==(const ArticulationNote&) const = default;
};
ArticulationNote articulationNote(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                                  const kinematics::Articulation::Rest& rest);

/// Height of the facets' centres over the joint's centre of rotation, mean of all that are there, m; the lever of the
/// published law. Zero for joints without facets.
double facetHeight(const anatomy::Specimen& specimen, kinematics::JointIndex joint);

}  // namespace zyga::range
