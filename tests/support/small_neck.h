#pragma once

#include <string>

#include "core/kinematics/placement.h"

namespace zyga::test {

/// A neck that trigonometry can follow: straight links on a first dorsal, every joint with typed limits, a head whose
/// joint is as the others. Bone 0 is the dorsal; its joint with the neck is 1 m ahead of its origin.
struct SmallNeck {
  int cervicals = 3;
  double link = 1;                               ///< m, from centre of rotation to centre of rotation
  double head = 0.5;                             ///< m, from the head's joint to the snout
  anatomy::AngleLimits dorsiflexion{-0.3, 0.4};  ///< rad, of every joint
  anatomy::AngleLimits lateral{0, 0};
  anatomy::AngleLimits torsion{0, 0};
  anatomy::AngleLimits atHead{0, 0};  ///< dorsiflexion of the head's joint
};

inline anatomy::Joint smallJoint(const std::string& id, std::size_t distal, double ahead,
                                 const anatomy::AngleLimits& up, const SmallNeck& neck) {
  anatomy::Joint joint;
  joint.id = id;
  joint.kind = anatomy::JointKind::Typed;
  joint.region = anatomy::Region::Cervical;
  joint.proximal = {distal - 1};
  joint.distal = {distal};
  joint.centreProximal = Eigen::Vector3d(ahead, 0, 0);
  joint.axes = {-Eigen::Vector3d::UnitY(), Eigen::Vector3d::UnitZ(), Eigen::Vector3d::UnitX()};
  joint.longAxisProximal = joint.longAxisDistal = Eigen::Vector3d::UnitX();
  joint.centrumLength = neck.link;
  joint.typed = anatomy::TypedLimits{{up, neck.lateral, neck.torsion}, anatomy::kProgramDefault};
  return joint;
}

/// Origin of each bone: its proximal joint.
inline anatomy::Specimen smallNeck(const SmallNeck& neck = {}) {
  using anatomy::BoneKind;
  anatomy::Specimen specimen;
  specimen.name = "small neck";
  specimen.counts = {neck.cervicals, 1, 0, 0};
  const auto add = [&](const anatomy::BoneName& name) -> anatomy::Bone& {
    anatomy::Bone bone;
    bone.name = name;
    bone.id = anatomy::toId(name);
    specimen.bones.push_back(bone);
    return specimen.bones.back();
  };
  add({BoneKind::Dorsal, 1}).landmarks["cranial"] = Eigen::Vector3d(1, 0, 0);
  std::string before = "D1";
  for (int number = neck.cervicals; number >= 1; --number) {
    anatomy::Bone& bone = add({BoneKind::Cervical, number});
    bone.landmarks["cranial"] = Eigen::Vector3d(neck.link, 0, 0);
    const bool first = specimen.bones.size() == 2;
    specimen.joints.push_back(
        smallJoint(bone.id + "-" + before, specimen.bones.size() - 1, first ? 1 : neck.link, neck.dorsiflexion, neck));
    before = bone.id;
  }
  anatomy::Bone& skull = add({BoneKind::Skull});
  skull.landmarks = {{"snout", {neck.head, 0, 0}},
                     {"foramenMagnum", {0, 0, 0}},
                     {"eye.L", {0.5 * neck.head, 0.1, 0}},
                     {"eye.R", {0.5 * neck.head, -0.1, 0}}};
  SmallNeck still = neck;
  still.lateral = still.torsion = {0, 0};
  specimen.joints.push_back(smallJoint("skull-C1", specimen.bones.size() - 1, neck.link, neck.atHead, still));
  return specimen;
}

/// All angles zero, the dorsal level with its origin this high over the ground, m.
inline kinematics::Pose smallPose(const anatomy::Specimen& specimen, double height) {
  kinematics::Pose pose = kinematics::Pose::neutral(specimen);
  pose.X_WRoot.translation().z() = height;
  return pose;
}

}  // namespace zyga::test
