#pragma once

#include <string>

#include "core/kinematics/pose.h"
#include "core/range/assumptions.h"

namespace zyga::range {

/// The rest rotation of one joint at the given cartilage (m): the angles at which the postzyg facets are centred on
/// the prezyg facets, both sides, weighted least squares on centres and normals, the centra held at the cartilage's
/// distance. With NeutralBy::FacetsAndCentra the faces of the centra are also to be parallel, and where the two demands
/// disagree the answer lies half-way between them; as parallel faces ask for a disc of even thickness, cartilage then
/// turns the joint half as much. Joints without facets keep their own rest rotation. `cartilage` is the thickness along
/// the arc about the facets, as in the published law (turn = thickness / facet height, Taylor 2014, PeerJ 2:e712);
/// Rest::cartilage is the slightly longer way along the joint's axes that gives it. Not solved where a facet is
/// missing, where facets face the same way or where the search does not settle within a right angle; the rest rotation
/// then stays the joint's own or the last found.
kinematics::Articulation::Rest articulate(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                                          double cartilage, NeutralBy by = NeutralBy::Facets);

/// Every joint under these assumptions.
kinematics::Articulation articulate(const anatomy::Specimen& specimen, const Assumptions& assumptions);

/// What a person has to know about how a joint came to its articulation; empty where there is nothing to tell.
/// "C6-C7 can't be articulated: the left postzygapophysis of C6 has no facet", "C6-C7 articulates roughly: its facets
/// stay 9 mm off centre". Roughly is a residual (Rest::residual) above a tenth of the facets' length, author's choice.
std::string articulationNote(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                             const kinematics::Articulation::Rest& rest);

/// Height of the facets' centres over the joint's centre of rotation, mean of all that are there, m; the lever of the
/// published law. Zero for joints without facets.
double facetHeight(const anatomy::Specimen& specimen, kinematics::JointIndex joint);

}  // namespace zyga::range
