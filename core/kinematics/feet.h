#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "core/kinematics/placement.h"

namespace zyga::kinematics {

/// The four feet, in the order in which a walk of lateral sequence sets them down.
enum class Foot { LeftHind, LeftFore, RightHind, RightFore };
inline constexpr std::array<Foot, 4> kFeet{Foot::LeftHind, Foot::LeftFore, Foot::RightHind, Foot::RightFore};

/// "left hind foot"
std::string_view toText(Foot foot);
inline bool isFore(Foot foot) { return foot == Foot::LeftFore || foot == Foot::RightFore; }
inline bool isLeft(Foot foot) { return foot == Foot::LeftHind || foot == Foot::LeftFore; }

/// A foot and the leg that carries it.
struct FootRig {
  Foot foot;
  /// All of the foot but the toes turns with this bone: the first carpal, the third metatarsal.
  BoneIndex bone;
  /// From the shoulder or hip to the wrist or ankle, fixed joints among them, root side first.
  std::vector<JointIndex> joints;
  std::vector<Eigen::Vector3d> p_BSoles;  ///< points of the sole in the bone's frame, m
  Eigen::Vector3d p_BSole;                ///< their middle, level with the lowest of them as the foot stands flat
  Eigen::Vector3d up_B;                   ///< unit; upright in the world when the sole lies flat
};

/// The feet that the specimen has, in the order of kFeet.
std::vector<FootRig> footRigs(const anatomy::Specimen& specimen);
/// Throws std::out_of_range naming the foot where the specimen lacks it.
FootRig footRig(const anatomy::Specimen& specimen, Foot foot);
/// The foot this bone belongs to: hand bones and toes, wrist and ankle.
std::optional<Foot> footOf(const anatomy::Specimen& specimen, BoneIndex bone);

/// Where a foot is.
struct FootPlace {
  Foot foot;
  double height = 0;  ///< of the lowest point of its sole over the ground z = 0, m
  double tilt = 0;    ///< between sole and ground, rad, never negative
};

std::vector<FootPlace> footPlaces(const anatomy::Specimen& specimen, const Placement& X_WB);

/// A foot this near to the ground stands on it, m.
inline constexpr double kOnGround = 0.01;
/// The feet that stand on the ground, flat or not.
std::vector<Foot> plantedFeet(const anatomy::Specimen& specimen, const Placement& X_WB);

/// The frame of the foot set flat on the ground below where it is, its heading kept as far as can be.
Eigen::Isometry3d flatOnGround(const FootRig& rig, const Eigen::Isometry3d& X_WFoot);

}  // namespace zyga::kinematics
