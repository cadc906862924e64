#pragma once

#include <array>
#include <vector>

#include "core/kinematics/placement.h"

namespace zyga::kinematics {

/// A chain grabbed at a point of one bone and pulled: which joints answer, and in which motions.
struct Pull {
  std::vector<JointIndex> joints;                      ///< the chain, root side first
  std::array<bool, 3> motions{true, true, false};      ///< dorsiflexion, lateral flexion, torsion
  BoneIndex bone;                                      ///< the grabbed bone
  Eigen::Vector3d p_BPoint = Eigen::Vector3d::Zero();  ///< the grabbed point in that bone's frame, m
};

/// The pose that brings the grabbed point as close as the chain can to `p_WTarget` (m), starting from `pose` and
/// sharing the bend evenly: of all ways there the one with the least sum of squared turns. Ranges are not looked at;
/// the findings tell what breaks.
Pose pullTowards(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                 const Pull& pull, const Eigen::Vector3d& p_WTarget);

/// Adds `turn` (rad, order as Joint::axes) to the span of joints, shared by `weights` (which sum to 1).
Pose spreadTurn(const Pose& pose, const std::vector<JointIndex>& joints, const std::vector<double>& weights,
                const Eigen::Vector3d& turn);

/// The joints of the neck from the trunk to the skull, or of the tail from the sacrum to the tip, root side first.
std::vector<JointIndex> neckChain(const anatomy::Specimen& specimen);
std::vector<JointIndex> tailChain(const anatomy::Specimen& specimen);
/// The joints a drag of this bone bends: neck bones and the head from the base of the neck, tail bones from the base of
/// the tail, a limb from its girdle joint, the trunk from the sacrum. Only joints at or beyond `base`, where given.
std::vector<JointIndex> dragChain(const anatomy::Specimen& specimen, BoneIndex bone,
                                  std::optional<JointIndex> base = std::nullopt);

}  // namespace zyga::kinematics
