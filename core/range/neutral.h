#pragma once

#include "core/kinematics/pose.h"
#include "core/range/assumptions.h"

namespace zyga::range {

/// The rest rotation of one joint at the given cartilage (m): the angles at which the postzyg facets are centred on
/// the prezyg facets, both sides, weighted least squares on centres and normals, the centra held at the cartilage's
/// distance. Joints without facets keep their own rest rotation.
kinematics::Articulation::Rest articulate(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                                          double cartilage);

/// Every joint under these assumptions.
kinematics::Articulation articulate(const anatomy::Specimen& specimen, const Assumptions& assumptions);

}  // namespace zyga::range
