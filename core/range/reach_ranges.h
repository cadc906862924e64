#pragma once

#include <memory>

#include "core/kinematics/reach.h"
#include "core/range/limits.h"

namespace zyga::range {

/// The ranges that the bones give, for kinematics::reach. Refers to everything it was made from. What it has looked up
/// about a joint it keeps, so one object should serve a whole drag; use it from one thread at a time.
class ReachRanges final : public kinematics::JointRanges {
 public:
  /// `contact`, where given, is asked by lastSupported alone: a search asks its criteria far too often.
  ReachRanges(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
              const Assumptions& assumptions, const NeighbourContact* contact = nullptr);
  ~ReachRanges() override;

  Box box(kinematics::JointIndex joint) const override;
  Excesses excesses(kinematics::JointIndex joint, const Eigen::Vector3d& angles) const override;
  std::optional<Eigen::Vector3d> inside(kinematics::JointIndex joint) const override;
  Eigen::Vector3d halfWidths(kinematics::JointIndex joint) const override;

  /// What stops a joint of a pose.
  JointStop stopOf(const kinematics::Pose& pose, const kinematics::StoppingJoint& stop) const;
  /// The last angles of a joint on the straight way from supported ones to others at which neither its criteria nor,
  /// where there is somebody to ask, contact of its bones stops it.
  Eigen::Vector3d lastSupported(kinematics::JointIndex joint, const Eigen::Vector3d& from,
                                const Eigen::Vector3d& to) const;

 private:
  struct Known;
  Known& known(kinematics::JointIndex joint) const;

  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  const Assumptions& assumptions_;
  const NeighbourContact* contact_;
  mutable std::vector<std::unique_ptr<Known>> known_;  ///< by joint
};

}  // namespace zyga::range
