#pragma once

#include <cmath>
#include <numbers>

#include "core/anatomy/specimen.h"
#include "core/kinematics/pose.h"

/// A neck of three joints whose geometry a pencil can follow: bones of known lengths end to end in the mid-plane, each
/// joint with typed limits of dorsiflexion.
namespace zyga::test {

struct ThreeJointNeck {
  double baseHeight = 2;                         ///< of the first joint, m
  double baseAhead = 1;                          ///< of the first joint over the root, m
  double baseSlope = 0;                          ///< of the trunk, rad, rising forwards
  std::array<double, 3> lengths{1.0, 0.8, 0.5};  ///< m
  std::array<anatomy::AngleLimits, 3> limits{};  ///< rad

  /// Where the snout is with these dorsiflexions, by hand: x ahead of the root, y up, m.
  Eigen::Vector2d snout(const std::array<double, 3>& angles) const {
    Eigen::Vector2d at(baseAhead, baseHeight);
    double slope = baseSlope;
    for (std::size_t i = 0; i < 3; ++i) {
      slope += angles[i];
      at += lengths[i] * Eigen::Vector2d(std::cos(slope), std::sin(slope));
    }
    return at;
  }
  /// Slope of the line from the first joint to the third by hand, rad.
  double slope(const std::array<double, 3>& angles) const {
    const double first = baseSlope + angles[0], second = first + angles[1];
    return std::atan2(lengths[0] * std::sin(first) + lengths[1] * std::sin(second),
                      lengths[0] * std::cos(first) + lengths[1] * std::cos(second));
  }
};

/// Bones D1 (the root), C2, C1, skull; joints C2-D1, C1-C2, skull-C1.
inline anatomy::Specimen specimenOf(const ThreeJointNeck& neck) {
  using anatomy::BoneKind;
  anatomy::Specimen specimen;
  specimen.name = "three joints";
  specimen.counts.cervical = 2;
  const std::array<std::pair<anatomy::BoneName, const char*>, 4> names{{{{BoneKind::Dorsal, 1}, "D1"},
                                                                        {{BoneKind::Cervical, 2}, "C2"},
                                                                        {{BoneKind::Cervical, 1}, "C1"},
                                                                        {{BoneKind::Skull}, "skull"}}};
  for (const auto& [name, id] : names) {
    anatomy::Bone bone;
    bone.name = name;
    bone.id = id;
    specimen.bones.push_back(bone);
  }
  const std::array<const char*, 3> ids{"C2-D1", "C1-C2", "skull-C1"};
  for (std::size_t i = 0; i < 3; ++i) {
    anatomy::Joint joint;
    joint.id = ids[i];
    joint.kind = anatomy::JointKind::Typed;
    joint.region = i == 2 ? anatomy::Region::Skull : anatomy::Region::Cervical;
    joint.proximal = {i};
    joint.distal = {i + 1};
    // Bones lie with their hind end in their origin.
    if (i > 0) joint.centreProximal = {neck.lengths[i - 1], 0, 0};
    joint.axes = {-Eigen::Vector3d::UnitY(), Eigen::Vector3d::UnitZ(), Eigen::Vector3d::UnitX()};
    joint.longAxisProximal = joint.longAxisDistal = Eigen::Vector3d::UnitX();
    joint.typed = anatomy::TypedLimits{{neck.limits[i], {}, {}}, "by construction"};
    specimen.joints.push_back(joint);
  }
  specimen.bones[1].landmarks["cranial"] = {neck.lengths[0], 0, 0};
  specimen.bones[2].landmarks["cranial"] = {neck.lengths[1], 0, 0};
  specimen.bones[3].landmarks["snout"] = {neck.lengths[2], 0, 0};
  return specimen;
}

/// The root placed so that the first joint is where the neck has it.
inline kinematics::Pose poseOf(const ThreeJointNeck& neck, const anatomy::Specimen& specimen) {
  kinematics::Pose pose = kinematics::Pose::neutral(specimen);
  pose.X_WRoot = Eigen::Translation3d(neck.baseAhead, 0, neck.baseHeight) *
                 Eigen::AngleAxisd(-neck.baseSlope, Eigen::Vector3d::UnitY());
  return pose;
}

}  // namespace zyga::test
