#pragma once

#include "core/kinematics/placement.h"

namespace zyga::kinematics {

/// The lowest points of the four feet, by bone.
struct SolePoint {
  BoneIndex bone;
  Eigen::Vector3d p_BSole;  ///< m, in the bone's frame
};

std::vector<SolePoint> solePoints(const anatomy::Specimen& specimen);

/// Places the root so that fore and hind feet meet the ground z = 0 with the limb angles as they are, the trunk level
/// from side to side and the root at x = y = 0. Limbs are taken to hang from the trunk: their first joints (hip and
/// shoulder) are turned against the trunk's slope so that the limbs keep their attitude to the ground.
Pose stand(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose);

}  // namespace zyga::kinematics
