#include "core/kinematics/keep_in_space.h"

#include "core/kinematics/placement.h"

namespace zyga::kinematics {

Pose keepInSpace(const anatomy::Specimen& specimen, const Articulation& oldArticulation,
                 const Articulation& newArticulation, const Pose& pose) {
  Pose kept = pose;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const Eigen::Matrix3d& before = oldArticulation.rests[j].rotation;
    const Eigen::Matrix3d& after = newArticulation.rests[j].rotation;
    if (before == after) continue;
    const anatomy::Joint& joint = specimen.joints[j];
    kept.angles[j] = jointAngles(joint, after.transpose() * before * jointRotation(joint, pose.angles[j]));
  }
  return kept;
}

}  // namespace zyga::kinematics
