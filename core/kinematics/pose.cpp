#include "core/kinematics/pose.h"

namespace zyga::kinematics {

Pose Pose::neutral(const anatomy::Specimen& specimen) {
  Pose pose;
  pose.angles.assign(specimen.joints.size(), Eigen::Vector3d::Zero());
  return pose;
}

Articulation restArticulation(const anatomy::Specimen& specimen) {
  Articulation articulation;
  articulation.rests.reserve(specimen.joints.size());
  for (const anatomy::Joint& joint : specimen.joints) {
    articulation.rests.push_back({.rotation = joint.restRotation});
  }
  return articulation;
}

}  // namespace zyga::kinematics
