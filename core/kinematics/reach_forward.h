#pragma once

#include "core/kinematics/reach_chain.h"

namespace zyga::kinematics {

/// By how much of its range, in units of its chain, a joint may turn back before it counts: less is not seen.
inline constexpr double kTurnsBack = 0.01;

/// What a target asks of a motion: all joints that turn alike in it, each by the same share of its range, take the
/// point some way. Within 60 degrees of the way to the target that way is asked for, in that sense; within 6 degrees of
/// square to it nothing is to be gained (program default, no source).
enum class Asked { Nothing, Any, Positive, Negative };
using AskedMotions = std::array<Asked, 3>;

/// What the target of a goal asks of a chain. None where it asks for no sense at all; neither where a bearing is kept
/// too, for which joints must turn both ways, where the bend comes from the base, or where ranges do not hold.
std::optional<AskedMotions> askedMotions(const anatomy::Specimen& specimen, const Articulation& articulation,
                                         const ReachChain& chain, const IkGoal& goal);

/// Whether a joint of the chain turns against an asked sense, away from home.
bool turnsBack(const ReachChain& chain, const Pose& pose, const AskedMotions& asked);

/// 1 and -1 for the motions that are asked for in a sense, times `share`.
std::array<double, 3> sharesAhead(const AskedMotions& asked, double share);

/// The goal, with only those motions left that something is asked of.
IkGoal withAskedMotions(IkGoal goal, const AskedMotions& asked);

/// Ranges in which no joint may turn back behind where it stands at home.
class ForwardRanges final : public JointRanges {
 public:
  /// `ranges` must outlive this.
  ForwardRanges(const JointRanges& ranges, Pose home, const AskedMotions& asked)
      : ranges_(ranges), home_(std::move(home)), asked_(asked) {}

  Box box(JointIndex joint) const override;
  Excesses excesses(JointIndex joint, const Eigen::Vector3d& angles) const override {
    return ranges_.excesses(joint, angles);
  }
  std::optional<Eigen::Vector3d> inside(JointIndex joint) const override;
  /// Of the whole range: what a share of it means stays the same.
  Eigen::Vector3d halfWidths(JointIndex joint) const override { return ranges_.halfWidths(joint); }

 private:
  const JointRanges& ranges_;
  Pose home_;
  AskedMotions asked_;
};

}  // namespace zyga::kinematics
