#pragma once

#include <functional>
#include <limits>
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

/// The dorsiflexions that a joint supports with its other angles at zero.
using RangeOfJoint = std::function<range::MotionRange(kinematics::JointIndex)>;

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
    range::Stop minStop = {}, maxStop = {};
    bool leans = false;  ///< its facets differ from side to side: it is turned about its long axis as they ask
  };

  /// `joints`: those that bend, root side first, all of them between the root and span.to. Everything else stays as
  /// `present` has it. `contact`, where given, ends ranges as well.
  SagittalChain(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                const range::Assumptions& assumptions, const std::vector<kinematics::JointIndex>& joints,
                const CarriedSpan& span, const kinematics::Pose& present,
                const range::NeighbourContact* contact = nullptr);
  /// The same with ranges that are found by others.
  SagittalChain(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                const std::vector<kinematics::JointIndex>& joints, const CarriedSpan& span,
                const kinematics::Pose& present, const RangeOfJoint& ranges);

  const std::vector<Link>& links() const { return links_; }
  /// Every joint has supported angles.
  bool supported() const;
  /// The present pose with the chain in the mid-plane and each joint brought inside its range.
  const kinematics::Pose& home() const { return home_; }
  /// home() with every joint at the upper, or lower, end of its range.
  kinematics::Pose allAt(bool upper) const;
  /// Puts a joint of a pose to a dorsiflexion (rad) of its own in the chain.
  void bend(const Link& link, double angle, kinematics::Pose& pose) const;

  /// From one end of the span to the other, in the world, m.
  Eigen::Vector3d spanOf(const kinematics::Pose& pose) const;
  /// The pose in which the span goes farthest in the direction d_W. Joint by joint each turn has its best angle in
  /// closed form (the span's end goes round a circle), again and again until nothing is gained; from three starts, as a
  /// neck that can hang as well as stand has more than one place where no single joint helps.
  kinematics::Pose farthest(const Eigen::Vector3d& d_W) const;
  /// Whether the span goes so far (m) in the direction d_W in some pose of the chain: the answer of farthest(), sooner
  /// where the ends of the ranges, or a bound from each bone's own best slope, tell it.
  bool reaches(const Eigen::Vector3d& d_W, double enough) const;
  /// The joints at an end of their range that would take the span farther, worst first.
  std::vector<kinematics::StoppingJoint> holding(const kinematics::Pose& pose, const Eigen::Vector3d& d_W) const;

 private:
  static constexpr double kSettled = 1e-11;  ///< m a round
  /// What one joint's turn does to d_W * span: rise * sin(turn) + level * cos(turn), beside what stays.
  struct Swing {
    double level = 0, rise = 0;
  };
  Swing swing(const Link& link, const kinematics::Pose& pose, const kinematics::Placement& X_WB,
              const Eigen::Vector3d& d_W) const;
  /// Ends early where the span goes as far as `enough`.
  kinematics::Pose ascended(kinematics::Pose pose, const Eigen::Vector3d& d_W,
                            double enough = std::numeric_limits<double>::infinity(), double settled = kSettled) const;
  double bound(const Eigen::Vector3d& d_W) const;
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
