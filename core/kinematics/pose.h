#pragma once

#include <Eigen/Geometry>
#include <array>
#include <string>
#include <vector>

#include "core/anatomy/specimen.h"
#include "core/kinematics/settling.h"

namespace zyga::kinematics {

using anatomy::BoneIndex;
using anatomy::JointIndex;

/// Where the root bone stands in the world and how far each joint is turned from its rest.
struct Pose {
  Eigen::Isometry3d X_WRoot = Eigen::Isometry3d::Identity();
  std::vector<Eigen::Vector3d> angles;  ///< by joint, rad; order as in Joint::axes
  /// Joints whose axial rotation was typed and stays when they are bent; that of all others follows their facets
  /// (following.h). In joint order.
  std::vector<JointIndex> axialTyped;

  static Pose neutral(const anatomy::Specimen& specimen);
  bool isAxialTyped(JointIndex j) const;
  void setAxialTyped(JointIndex j, bool typed);
  Eigen::Vector3d& operator[](JointIndex j) { return angles[j.value]; }
  const Eigen::Vector3d& operator[](JointIndex j) const { return angles[j.value]; }
  bool operator==(const Pose& other) const {
    return X_WRoot.matrix() == other.X_WRoot.matrix() && angles == other.angles && axialTyped == other.axialTyped;
  }
};

/// How the bones rest against each other with all angles zero, under one set of assumptions.
struct Articulation {
  struct Rest {
    Eigen::Matrix3d rotation = Eigen::Matrix3d::Identity();  ///< distal in proximal frame at zero angles
    double cartilage = 0;                                    ///< m, along the joint's long axis
    double residual = 0;                                     ///< m, of either facet from centred, root mean square
    bool solved = true;
    /// m, left and right: how deep the facets enter each other here, and how far they stand apart, for reasons that are
    /// no fault of a pose. Cartilage turns a joint and so wedges its facets open; and the marks of two scans never fit
    /// each other quite (range::articulate).
    std::array<double, 2> pressGranted{}, gapeGranted{};
    double misfitGranted = 0;  ///< m, what of it the marks of scans need, the most of both sides
    Settling settling{};       ///< how the bones give way to a turn inside the cartilage; nothing without facets
    /// The axial rotation stays when the joint is bent: of the pose in question (Pose::axialTyped).
    bool axialTyped = false;
    bool operator==(const Rest&) const = default;
  };
  std::vector<Rest> rests;  ///< by joint
  const Rest& operator[](JointIndex j) const { return rests[j.value]; }
  bool operator==(const Articulation&) const = default;
};

/// Faces of centra parallel, no cartilage: the joints' own rest rotations.
Articulation restArticulation(const anatomy::Specimen& specimen);

}  // namespace zyga::kinematics
