#include "core/kinematics/placement.h"

#include <cmath>

#include "core/kinematics/following.h"
#include "core/kinematics/jacobian.h"

namespace zyga::kinematics {
namespace {

/// Rotates the columns of `R` in place: R <- R * Rot(axis, angle). All our axes are coordinate axes up to sign, which
/// makes this two columns of multiply-adds; any other axis goes the general way.
void turn(Eigen::Matrix3d& R, const Eigen::Vector3d& axis, double angle) {
  if (angle == 0) return;
  for (int k = 0; k < 3; ++k) {
    if (std::abs(axis[k]) != 1) continue;
    const int i = (k + 1) % 3;
    const int j = (k + 2) % 3;
    const double c = std::cos(angle);
    const double s = axis[k] * std::sin(angle);
    const Eigen::Vector3d column = R.col(i);
    R.col(i) = c * column + s * R.col(j);
    R.col(j) = c * R.col(j) - s * column;
    return;
  }
  R = R * Eigen::AngleAxisd(angle, axis).toRotationMatrix();
}

/// By what the distal bone is shifted as the bones settle, proximal frame, m. `X_PD`: where it is unsettled.
Eigen::Vector3d shiftOf(const Articulation::Rest& rest, const Eigen::Isometry3d& X_PD) {
  if (!(rest.settling.bound > 0)) return Eigen::Vector3d::Zero();
  if (rest.settling.distalHasPostzygs) return settled(rest.settling, X_PD);
  return -(X_PD.linear() * settled(rest.settling, X_PD.inverse()));
}

}  // namespace

Eigen::Matrix3d jointRotation(const anatomy::Joint& joint, const Eigen::Vector3d& angles) {
  Eigen::Matrix3d R = Eigen::Matrix3d::Identity();
  for (int k = 0; k < 3; ++k) turn(R, joint.axes[static_cast<std::size_t>(k)], angles[k]);
  return R;
}

Eigen::Vector3d jointAngles(const anatomy::Joint& joint, const Eigen::Matrix3d& rotation) {
  // In the frame E = [e1 e2 e3] of the three axes the product becomes Rx(h a) Ry(h b) Rz(h c), where h = det E is +1
  // for a right-handed triad and -1 for a left-handed one (which turns every angle round).
  Eigen::Matrix3d E;
  E << joint.axes[0], joint.axes[1], joint.axes[2];
  const double h = E.determinant() > 0 ? 1 : -1;
  const Eigen::Matrix3d M = E.transpose() * rotation * E;
  const double b = std::asin(std::clamp(M(0, 2), -1.0, 1.0));
  const double a = std::atan2(-M(1, 2), M(2, 2));
  const double c = std::atan2(-M(0, 1), M(0, 0));
  return h * Eigen::Vector3d(a, b, c);
}

Eigen::Isometry3d unsettledTransform(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                     const Eigen::Vector3d& angles) {
  Eigen::Matrix3d R = rest.rotation;
  for (int k = 0; k < 3; ++k) turn(R, joint.axes[static_cast<std::size_t>(k)], angles[k]);
  const double before = rest.cartilage * joint.cartilageShareProximal;
  const double after = rest.cartilage - before;
  Eigen::Isometry3d X_PD;
  X_PD.linear() = R;
  X_PD.translation() =
      joint.centreProximal + before * joint.longAxisProximal + R * (after * joint.longAxisDistal - joint.centreDistal);
  X_PD.makeAffine();
  return X_PD;
}

Eigen::Isometry3d jointTransform(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                 const Eigen::Vector3d& angles) {
  Eigen::Isometry3d X_PD = unsettledTransform(joint, rest, angles);
  X_PD.translation() += shiftOf(rest, X_PD);
  return X_PD;
}

void placeInto(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose, Placement& X_WB) {
  X_WB.resize(specimen.bones.size());
  if (X_WB.empty()) return;
  X_WB[0] = pose.X_WRoot;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    X_WB[joint.distal.value] =
        X_WB[joint.proximal.value] * jointTransform(joint, articulation.rests[j], pose.angles[j]);
  }
}

Placement forwardKinematics(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose) {
  Placement X_WB;
  placeInto(specimen, articulation, pose, X_WB);
  return X_WB;
}

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

std::array<TurningAxis, 3> plainAxes(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                     const Vector3d& angles, const Placement& X_WB) {
  const Eigen::Isometry3d& X_WP = X_WB[joint.proximal.value];
  const Eigen::Matrix3d R_WRest = X_WP.linear() * rest.rotation;
  const double before = rest.cartilage * joint.cartilageShareProximal;
  const bool settles = rest.settling.bound > 0;
  const Vector3d shift = settles ? shiftOf(rest, unsettledTransform(joint, rest, angles)) : Vector3d(Vector3d::Zero());
  const Vector3d p_WCentre = X_WP * (joint.centreProximal + before * joint.longAxisProximal + shift);
  // The first axis rests in the proximal bone, the last one in the distal bone; the middle one floats, turned by the
  // first angle alone (Grood & Suntay 1983).
  const Eigen::AngleAxisd first(angles[0], joint.axes[0]);
  return {TurningAxis{R_WRest * joint.axes[0], p_WCentre}, TurningAxis{R_WRest * (first * joint.axes[1]), p_WCentre},
          TurningAxis{X_WB[joint.distal.value].linear() * joint.axes[2], p_WCentre}};
}

std::array<TurningAxis, 3> turningAxes(const anatomy::Joint& joint, const Articulation::Rest& rest,
                                       const Vector3d& angles, const Placement& X_WB) {
  std::array<TurningAxis, 3> axes = plainAxes(joint, rest, angles, X_WB);
  const Eigen::Vector2d along = axialSlope(joint, rest, angles);
  for (std::size_t k = 0; k < 2; ++k) axes[k].direction_W += along[static_cast<Eigen::Index>(k)] * axes[2].direction_W;
  if (!(rest.settling.bound > 0)) return axes;
  const auto shiftAt = [&](const Vector3d& at) { return shiftOf(rest, unsettledTransform(joint, rest, at)); };
  constexpr double h = 1e-5;  // rad
  for (int k = 0; k < 3; ++k) {
    const Vector3d nudge = h * Vector3d(k == 0, k == 1, k == 2 ? 1 : along[k]);
    axes[static_cast<std::size_t>(k)].shift_W =
        X_WB[joint.proximal.value].linear() * (shiftAt(angles + nudge) - shiftAt(angles - nudge)) / (2 * h);
  }
  return axes;
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
    J.point.col(c) = axis.direction_W.cross(p_WPoint - axis.p_WCentre) + axis.shift_W;
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
