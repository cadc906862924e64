#pragma once

#include "core/kinematics/pose.h"

namespace zyga::kinematics {

// Axial rotation that follows the facets. Bending a joint sideways (or bending it obliquely) over facets that stand
// in front of its centre, or that differ from side to side, makes the facets ask for a turn about the long axis: living
// necks bend so (Kambic et al. 2017, Front. Zool. 14:37; Hofstetter et al. 2009, Vet. Surg. 38:49, abstracts read). A
// joint's third angle is its own coordinate in a Pose all the same; what is shared here is the way along which the
// other two are changed.

/// The axial rotation (rad) at which the facets of both sides stand least far from how they rest, in the sense of least
/// squares, with the joint's first two angles (rad) as given; the third is not read. 0 where facets are lacking on a
/// side, and for joints whose limits are typed.
double followingAxial(const anatomy::Joint& joint, const Articulation::Rest& rest, const Eigen::Vector3d& angles);

/// How the axial rotation that the facets ask for changes with the first two angles: rad/rad and rad/rad². Zero where
/// it does not follow.
struct AxialSlopes {
  Eigen::Vector2d first = Eigen::Vector2d::Zero();
  Eigen::Matrix2d second = Eigen::Matrix2d::Zero();
};
AxialSlopes axialSlopes(const anatomy::Joint& joint, const Articulation::Rest& rest, const Eigen::Vector3d& angles);
/// The first of them alone, in less than half the time.
Eigen::Vector2d axialSlope(const anatomy::Joint& joint, const Articulation::Rest& rest, const Eigen::Vector3d& angles);

/// Whether the axial rotation goes along when the joint is bent: not where it was typed, nor where nothing asks for it.
bool axialFollows(const anatomy::Joint& joint, const Articulation::Rest& rest);

/// The third angle counted from where the facets ask it to be, rad, and back again; the same angles where it does not
/// follow. A joint that is bent keeps the third of these "own" angles.
Eigen::Vector3d toOwn(const anatomy::Joint& joint, const Articulation::Rest& rest, Eigen::Vector3d angles);
Eigen::Vector3d fromOwn(const anatomy::Joint& joint, const Articulation::Rest& rest, Eigen::Vector3d own);

/// `angles` with one of them (index `motion`) at `value`, rad; the axial rotation goes along.
Eigen::Vector3d withMotion(const anatomy::Joint& joint, const Articulation::Rest& rest, const Eigen::Vector3d& angles,
                           int motion, double value);

/// One motion of a joint of a pose back at neutral: its axial rotation follows the facets again.
void turnToNeutral(const anatomy::Specimen& specimen, const Articulation& articulation, JointIndex joint, int motion,
                   Pose& pose);

/// `articulation` with each joint's axial rotation free or typed as the pose has it.
Articulation withAxialOf(Articulation articulation, const Pose& pose);
/// Whether it is so already.
bool hasAxialOf(const Articulation& articulation, const Pose& pose);

}  // namespace zyga::kinematics
