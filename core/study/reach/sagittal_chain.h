#pragma once

#include <optional>
#include <vector>

#include "core/kinematics/reach.h"
#include "core/range/limits.h"

namespace zyga::study {

/// A straight line between two points that bones carry.
struct CarriedSpan {
  std::optional<kinematics::BoneIndex> from;         ///< none: the origin of the world
  Eigen::Vector3d p_From = Eigen::Vector3d::Zero();  ///< in its bone's frame, m
  kinematics::BoneIndex to;                          ///< beyond `from` in the same chain
  Eigen::Vector3d p_To = Eigen::Vector3d::Zero();    ///< in its bone's frame, m
};

/// A chain that bends up and down only, every joint anywhere in its own range of dorsiflexion with its other angles at
/// zero, and how far that takes a span which its bones carry. Refers to what it was made from.
class SagittalChain {
 public:
  /// A joint and its supported dorsiflexions, rad.
  struct Link {
    kinematics::JointIndex joint;
    double min = 0, max = 0;
    bool carriesBoth = false;            ///< both ends of the span lie beyond it
    std::optional<range::Stop> trouble;  ///< why no angle is supported; none when some are
  };

  /// `joints`: those that bend, root side first, all of them between the root and span.to. Everything else stays as
  /// `present` has it.
  SagittalChain(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                const range::Assumptions& assumptions, const std::vector<kinematics::JointIndex>& joints,
                const CarriedSpan& span, const kinematics::Pose& present);

  const std::vector<Link>& links() const { return links_; }
  /// Every joint has supported angles.
  bool supported() const;
  /// The present pose with the chain in the mid-plane and each joint brought inside its range.
  const kinematics::Pose& home() const { return home_; }

  /// From one end of the span to the other, in the world, m.
  Eigen::Vector3d spanOf(const kinematics::Pose& pose) const;
  /// The pose in which the span goes farthest in the direction d_W. Joint by joint each turn has its best angle in
  /// closed form (the span's end goes round a circle), again and again until nothing is gained; from three starts, as a
  /// neck that can hang as well as stand has more than one place where no single joint helps.
  kinematics::Pose farthest(const Eigen::Vector3d& d_W) const;
  /// The joints at an end of their range that would take the span farther, worst first.
  std::vector<kinematics::StoppingJoint> holding(const kinematics::Pose& pose, const Eigen::Vector3d& d_W) const;

 private:
  /// What one joint's turn does to d_W * span: rise * sin(turn) + level * cos(turn), beside what stays.
  struct Swing {
    double level = 0, rise = 0;
  };
  Swing swing(const Link& link, const kinematics::Pose& pose, const kinematics::Placement& X_WB,
              const Eigen::Vector3d& d_W) const;
  kinematics::Pose ascended(kinematics::Pose pose, const Eigen::Vector3d& d_W) const;
  Eigen::Vector3d spanIn(const kinematics::Placement& X_WB) const;
  void placeFrom(kinematics::JointIndex joint, const kinematics::Pose& pose, kinematics::Placement& X_WB) const;

  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  CarriedSpan span_;
  std::vector<kinematics::JointIndex> path_;  ///< from the root to span.to
  std::vector<Link> links_;
  kinematics::Pose home_;
};

}  // namespace zyga::study
