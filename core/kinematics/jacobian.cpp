#include "core/kinematics/jacobian.h"

namespace zyga::kinematics {

using Eigen::Vector3d;

std::vector<FreeMotion> freeMotions(const std::vector<JointIndex>& joints, const std::array<bool, 3>& motions) {
  std::vector<FreeMotion> free;
  for (const JointIndex joint : joints) {
    for (int motion = 0; motion < 3; ++motion) {
      if (motions[static_cast<std::size_t>(motion)]) free.push_back({joint, motion});
    }
  }
  return free;
}

std::array<TurningAxis, 3> turningAxes(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                       const Vector3d& angles, const Placement& X_WB) {
  const Eigen::Isometry3d& X_WP = X_WB[joint.proximal.value];
  const Eigen::Matrix3d R_WRest = X_WP.linear() * rest.rotation;
  const double before = rest.cartilage * joint.cartilageShareProximal;
  const Vector3d p_WCentre = X_WP * (joint.centreProximal + before * joint.longAxisProximal);
  // The first axis rests in the proximal bone, the last one in the distal bone; the middle one floats, turned by the
  // first angle alone (Grood & Suntay 1983).
  const Eigen::AngleAxisd first(angles[0], joint.axes[0]);
  return {TurningAxis{R_WRest * joint.axes[0], p_WCentre}, TurningAxis{R_WRest * (first * joint.axes[1]), p_WCentre},
          TurningAxis{X_WB[joint.distal.value].linear() * joint.axes[2], p_WCentre}};
}

void jacobianInto(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                  const Placement& X_WB, const std::vector<FreeMotion>& free, const Vector3d& p_WPoint, Jacobian& J) {
  const auto columns = static_cast<Eigen::Index>(free.size());
  J.point.resize(3, columns);
  J.turn.resize(3, columns);
  std::array<TurningAxis, 3> axes;
  for (Eigen::Index c = 0; c < columns; ++c) {
    const FreeMotion& motion = free[static_cast<std::size_t>(c)];
    const bool sameJoint = c > 0 && free[static_cast<std::size_t>(c - 1)].joint == motion.joint;
    if (!sameJoint) axes = turningAxes(specimen[motion.joint], articulation[motion.joint], pose[motion.joint], X_WB);
    const TurningAxis& axis = axes[static_cast<std::size_t>(motion.motion)];
    J.point.col(c) = axis.direction_W.cross(p_WPoint - axis.p_WCentre);
    J.turn.col(c) = axis.direction_W;
  }
}

Jacobian jacobian(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                  const Placement& X_WB, const std::vector<FreeMotion>& free, const Vector3d& p_WPoint) {
  Jacobian J;
  jacobianInto(specimen, articulation, pose, X_WB, free, p_WPoint, J);
  return J;
}

}  // namespace zyga::kinematics
