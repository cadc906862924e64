#include "ui/commands/pose_edits.h"

namespace zyga::ui {
namespace {

using kinematics::Pose;

/// The joint that carries the mirror image of the joint's distal bone; the joint itself on the midline.
kinematics::JointIndex partner(const anatomy::Specimen& specimen, kinematics::JointIndex joint) {
  const auto& distal = specimen[specimen[joint].distal];
  if (distal.name.side == anatomy::Side::Midline) return joint;
  const auto bone = specimen.findBone(toId(anatomy::mirrored(distal.name)));
  const auto other = bone ? specimen.jointAbove(*bone) : std::nullopt;
  return other.value_or(joint);
}

}  // namespace

Pose atNeutral(const Pose& pose, const std::vector<kinematics::JointIndex>& joints) {
  Pose neutral = pose;
  for (const auto joint : joints) neutral[joint].setZero();
  return neutral;
}

Pose mirrored(const anatomy::Specimen& specimen, const Pose& pose) {
  Pose image = pose;
  for (std::size_t j = 0; j < pose.angles.size(); ++j) {
    const auto other = partner(specimen, {j});
    image.angles[j] = pose[other];
    // Abduction and rotation of limbs are counted from the mid-plane, so sides are merely exchanged; on the midline
    // lateral flexion and torsion change their sign.
    if (other.value == j) image.angles[j].tail<2>() *= -1;
  }
  const Eigen::Vector3d flip(1, -1, 1);
  image.X_WRoot.linear() = flip.asDiagonal() * pose.X_WRoot.linear() * flip.asDiagonal();
  image.X_WRoot.translation() = flip.cwiseProduct(pose.X_WRoot.translation());
  return image;
}

}  // namespace zyga::ui
