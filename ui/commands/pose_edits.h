#pragma once

#include <vector>

#include "core/kinematics/pose.h"

/// Poses made from a pose as a whole: neutral parts and the mirror image. Values in, values out.
namespace zyga::ui {

/// `pose` with these joints at their neutral articulation.
kinematics::Pose atNeutral(const kinematics::Pose& pose, const std::vector<kinematics::JointIndex>& joints);

/// Left and right exchanged: what the left limbs did the right ones do, and what bent left bends right; the root is
/// mirrored in the plane y = 0.
kinematics::Pose mirrored(const anatomy::Specimen& specimen, const kinematics::Pose& pose);

}  // namespace zyga::ui
