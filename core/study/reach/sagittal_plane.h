#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "core/kinematics/placement.h"
#include "core/reason/reason.h"

namespace zyga::study {

/// There is no neck that moves.
inline constexpr reason::Id kNoNeck{"study.no-neck", 0};

/// The plane in which the neck goes up and down, with coordinates (ahead, up), m: ahead counts from the centre of
/// rotation of the neck's base, up from the ground z = 0.
struct SagittalPlane {
  Eigen::Vector3d p_WOrigin = Eigen::Vector3d::Zero();
  Eigen::Vector3d ahead_W = Eigen::Vector3d::UnitX();  ///< unit, level
  Eigen::Vector3d up_W = Eigen::Vector3d::UnitZ();     ///< unit; upright unless the trunk is rolled

  Eigen::Vector2d flat(const Eigen::Vector3d& p_W) const;
  Eigen::Vector3d inWorld(const Eigen::Vector2d& p) const;
};

/// The plane of the vertebra that carries the neck: the first dorsal's own mid-plane. Throws reason::Failure (kNoNeck)
/// for a specimen without a neck.
SagittalPlane neckPlane(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB);

using Line = std::vector<Eigen::Vector2d>;

/// The joints that carry the snout, base of the neck first and the head's among them; without a skull those of the
/// neck.
std::vector<kinematics::JointIndex> neckJoints(const anatomy::Specimen& specimen);

/// From the first dorsal's joint with the neck over the centres of rotation to the snout (or the head's joint).
Line neckLine(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const SagittalPlane& plane);
/// The rest of the animal as a figure of lines: column from the neck's base to the tail's tip, and the legs from
/// there down to their soles.
std::vector<Line> bodyLines(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                            const SagittalPlane& plane);
/// How far ahead of the neck's base the foremost fore foot on the ground has its middle, m; none where no fore foot
/// stands.
std::optional<double> foreFeetAhead(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                                    const SagittalPlane& plane);

}  // namespace zyga::study
