#pragma once

#include <vector>

#include "core/kinematics/pose.h"

namespace zyga::kinematics {

/// Rot(axes[0], a0) * Rot(axes[1], a1) * Rot(axes[2], a2); angles in rad.
Eigen::Matrix3d jointRotation(const anatomy::Joint& joint, const Eigen::Vector3d& angles);

/// The angles that give this rotation; the middle one within [-90, 90] degrees. Inverse of jointRotation away from the
/// middle angle's poles.
Eigen::Vector3d jointAngles(const anatomy::Joint& joint, const Eigen::Matrix3d& rotation);

/// As jointTransform, the bones not settled.
Eigen::Isometry3d unsettledTransform(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                     const Eigen::Vector3d& angles);

/// Distal frame in the proximal frame:
///   Trans(centre on proximal) Trans(share of cartilage) R_rest R(angles) Trans(rest of cartilage) Trans(-centre on
///   distal)
/// and then the small translation by which the bones settle inside the cartilage (Settling), none at zero angles.
Eigen::Isometry3d jointTransform(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                 const Eigen::Vector3d& angles);

/// Bone frames in the world, by bone, m.
using Placement = std::vector<Eigen::Isometry3d>;

Placement forwardKinematics(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose);
/// As place, into `X_WB`, without allocating when it has the right size already.
void placeInto(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose, Placement& X_WB);

}  // namespace zyga::kinematics
