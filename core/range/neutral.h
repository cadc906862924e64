#pragma once

#include "core/kinematics/pose.h"
#include "core/range/assumptions.h"

namespace zyga::range {

/// The rest rotation of one joint at the given cartilage (m): the angles at which the postzyg facets are centred on
/// the prezyg facets, both sides, weighted least squares on centres and normals, the centra held at the cartilage's
/// distance. Joints without facets keep their own rest rotation. `cartilage` is the thickness along the arc about the
/// facets, as in the published law (turn = thickness / facet height, Taylor 2014, PeerJ 2:e712); Rest::cartilage is the
/// slightly longer way along the joint's axes that gives it. Not solved where a facet is missing, where facets
/// face the same way or where the search does not settle within a right angle; the rest rotation then stays the joint's
/// own or the last found.
kinematics::Articulation::Rest articulate(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                                          double cartilage);

/// Every joint under these assumptions.
kinematics::Articulation articulate(const anatomy::Specimen& specimen, const Assumptions& assumptions);

}  // namespace zyga::range
