#pragma once

#include <memory>

#include "core/kinematics/reach.h"
#include "core/range/limits.h"

namespace zyga::range {

/// The ranges that the bones give, for kinematics::reach. Refers to everything it was made from. What it has looked up
/// about a joint it keeps, so one object should serve a whole drag; use it from one thread at a time.
class ReachRanges final : public kinematics::JointRanges {
 public:
  ReachRanges(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
              const Assumptions& assumptions);
  ~ReachRanges() override;

  Box box(kinematics::JointIndex joint) const override;
  Excesses excesses(kinematics::JointIndex joint, const Eigen::Vector3d& angles) const override;
  std::optional<Eigen::Vector3d> inside(kinematics::JointIndex joint) const override;
  Eigen::Vector3d halfWidths(kinematics::JointIndex joint) const override;

  /// What stops a joint of a pose.
  JointStop stopOf(const kinematics::Pose& pose, const kinematics::StoppingJoint& stop) const;
  /// The last supported angles of a joint on the straight way from supported ones to others.
  Eigen::Vector3d lastSupported(kinematics::JointIndex joint, const Eigen::Vector3d& from,
                                const Eigen::Vector3d& to) const;

 private:
  struct Known;
  Known& known(kinematics::JointIndex joint) const;

  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  const Assumptions& assumptions_;
  mutable std::vector<std::unique_ptr<Known>> known_;  ///< by joint
};

}  // namespace zyga::range
