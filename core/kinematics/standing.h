#pragma once

#include "core/kinematics/feet.h"

namespace zyga::kinematics {

/// The lowest points of the four feet, by bone.
struct SolePoint {
  BoneIndex bone;
  Eigen::Vector3d p_BSole;  ///< m, in the bone's frame
};

std::vector<SolePoint> solePoints(const anatomy::Specimen& specimen);

/// The same place and heading with the root's axis of length level and no roll, z = 0.
Eigen::Isometry3d levelled(const Eigen::Isometry3d& X_WRoot);

/// The feet that carry a pose: all but those held up, which are those more than 150 mm higher over the root's present
/// level than their fellow on the other side.
std::vector<Foot> carryingFeet(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose);

/// Places the root so that the carrying feet meet the ground z = 0 with the limbs as they are: height, slope and roll
/// of the trunk follow. Limbs are taken to hang from the trunk: hip and shoulder turn against it so that each limb
/// keeps its present attitude to the ground. Three feet settle the plane they stand on; of four that do not lie in one
/// plane the three that have the middle of the trunk over them carry, and the fourth stays above the ground; with one
/// fore and one hind foot the roll stays as it is. Where no fore or no hind foot carries, only the height changes. The
/// root keeps its place in x and y and its heading.
Pose stand(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
           const std::vector<Foot>& carrying);
/// The same on carryingFeet(pose).
Pose stand(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose);

}  // namespace zyga::kinematics
