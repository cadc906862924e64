#pragma once

#include <array>
#include <vector>

#include "core/kinematics/placement.h"

namespace zyga::kinematics {

/// One angle of one joint.
struct FreeMotion {
  JointIndex joint;
  int motion = 0;  ///< index into the joint's angles
  bool operator==(const FreeMotion&) const = default;
};

/// The angles of these joints in the chosen motions, joint by joint.
std::vector<FreeMotion> freeMotions(const std::vector<JointIndex>& joints, const std::array<bool, 3>& motions);

/// The axis one angle turns everything beyond the joint about, a point on it, and how the bones settle meanwhile, in
/// the world. Where the axial rotation follows the facets (following.h) it goes along with the other two.
struct TurningAxis {
  Eigen::Vector3d direction_W;                        ///< rad/rad: unit but for the axial rotation that goes along
  Eigen::Vector3d p_WCentre;                          ///< m
  Eigen::Vector3d shift_W = Eigen::Vector3d::Zero();  ///< m/rad, by central differences; zero where nothing settles
};

/// `X_WB`: where the bones are with these angles (rad) at the joint.
std::array<TurningAxis, 3> turningAxes(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                       const Eigen::Vector3d& angles, const Placement& X_WB);

/// The same with the axial rotation staying as it is, the bones unsettled meanwhile: axes of unit length.
std::array<TurningAxis, 3> plainAxes(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                     const Eigen::Vector3d& angles, const Placement& X_WB);

/// Geometric Jacobian of a point fixed to a bone beyond all these joints, and of that bone's attitude: one column an
/// angle.
struct Jacobian {
  Eigen::Matrix3Xd point;  ///< velocity of the point per angle rate, m/rad
  Eigen::Matrix3Xd turn;   ///< angular velocity of the bone per angle rate, in the world, rad/rad
};

/// `X_WB` is where `pose` places the bones; of the joints only those that lie between the root and the bone may be
/// named.
Jacobian jacobian(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                  const Placement& X_WB, const std::vector<FreeMotion>& free, const Eigen::Vector3d& p_WPoint);
/// As jacobian, into `J`, without allocating when it has the right size already.
void jacobianInto(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                  const Placement& X_WB, const std::vector<FreeMotion>& free, const Eigen::Vector3d& p_WPoint,
                  Jacobian& J);

}  // namespace zyga::kinematics
