#pragma once

#include <functional>

#include "core/kinematics/placement.h"
#include "core/range/assumptions.h"
#include "core/range/contact/neighbour_contact.h"

namespace zyga::study {

/// Volume of a set in the space of a joint's three angles, rad3. Equal steps of the outer angles mean less and less
/// turn as the middle angle leaves zero, so a plain volume overrates far bends; weighted by the cosine of the middle
/// angle it is the true measure of the rotations (Manafzadeh & Gatesy 2020, J. Exp. Biol. 223:jeb227108).
struct RotationVolume {
  double plain = 0;
  double corrected = 0;  ///< the one to compare joints by
};

/// Of a box of angles; the middle one within [-90, 90] degrees. The space of all rotations has 23,328,000 deg3 plain
/// and 14,851,066 corrected.
RotationVolume rotationVolume(const Eigen::Vector3d& least, const Eigen::Vector3d& most);

/// Of the connected part around `seed` of the set where `inside` holds, counted in cells of this size, rad, each asked
/// in its middle; cells do not pass the middle angle's poles.
RotationVolume rotationVolume(const std::function<bool(const Eigen::Vector3d&)>& inside, const Eigen::Vector3d& seed,
                              const Eigen::Vector3d& cell);

/// What the bones of a joint support around neutral, in some twenty cells a motion; within two or three per cent. Zero
/// for a joint that nothing judges, does not move or has no supported angles. `contact`, where given, takes away what
/// is past what is tolerated; it is asked at every fourth cell and taken as linear between.
RotationVolume supportedRotations(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                  const range::Assumptions& assumptions, kinematics::JointIndex joint,
                                  const range::NeighbourContact* contact = nullptr);

}  // namespace zyga::study
