#pragma once

#include <vector>

#include "core/kinematics/placement.h"

namespace zyga::kinematics {

/// Adds `turn` (rad, order as Joint::axes) to the span of joints, shared by `weights` (which sum to 1); the axial
/// rotation goes along (following.h).
Pose spreadTurn(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                const std::vector<JointIndex>& joints, const std::vector<double>& weights, const Eigen::Vector3d& turn);

/// The joints of the neck from the trunk to the skull, or of the tail from the sacrum to the tip, root side first.
std::vector<JointIndex> neckChain(const anatomy::Specimen& specimen);
std::vector<JointIndex> tailChain(const anatomy::Specimen& specimen);
/// The joints a drag of this bone bends: neck bones and the head from the base of the neck, tail bones from the base of
/// the tail, a limb from its girdle joint, the trunk from the sacrum. Only joints at or beyond `base`, where given.
std::vector<JointIndex> dragChain(const anatomy::Specimen& specimen, BoneIndex bone,
                                  std::optional<JointIndex> base = std::nullopt);

}  // namespace zyga::kinematics
