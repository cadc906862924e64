#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/kinematics/placement.h"

namespace zyga::kinematics {

/// What reach asks about the ranges of the joints. A range is a box (typed limits) and, within it, whatever the
/// criteria allow, which couples the motions: overlap spent on dorsiflexion is gone for lateral bending. core/range
/// answers from the bones (reach_ranges.h), tests from plain boxes.
class JointRanges {
 public:
  static constexpr std::size_t kMostCriteria = 16;
  /// How far each criterion is past its limit, in the criterion's own unit: at most 0 inside, and continuous near its
  /// limit. Which value stands where does not depend on the angles.
  struct Excesses {
    std::array<double, kMostCriteria> values{};
    std::size_t count = 0;
    double worst() const;  ///< 0 without criteria
  };
  struct Box {
    Eigen::Vector3d min, max;  ///< rad
  };

  virtual ~JointRanges() = default;
  /// Angles outside are beyond, whatever the criteria say, rad.
  virtual Box box(JointIndex joint) const = 0;
  virtual Excesses excesses(JointIndex joint, const Eigen::Vector3d& angles) const = 0;
  /// Angles well inside; none when the joint has no supported angles at all, which then stays as it is.
  virtual std::optional<Eigen::Vector3d> inside(JointIndex joint) const = 0;
  /// Half of what the joint can turn in each motion, rad; a motion without range has 0.
  virtual Eigen::Vector3d halfWidths(JointIndex joint) const = 0;

  /// Neither outside its box nor past a criterion.
  bool supports(JointIndex joint, const Eigen::Vector3d& angles) const;
};

/// How the bend is shared.
enum class BendStyle {
  /// The least sum of squared shares of the joints' ranges; no joint turns back, against the way that takes the point
  /// to
  /// the target, unless the target is not to be had, nor as nearly, without.
  Even,
  /// The base bends most, and where the chain ends in the head the head's joints; what lies between keeps its shape: so
  /// raise living tetrapods their necks (Taylor, Wedel & Naish 2009, Acta Palaeontol. Pol. 54:213; Vidal, Graf &
  /// Berthoz 1986, Exp. Brain Res. 61:549).
  FromTheBase
};

/// A direction fixed to the bone, and where it shall point: the gaze of a head, the upright of a foot. Two of them hold
/// the whole attitude.
struct DirectionConstraint {
  Eigen::Vector3d d_B = Eigen::Vector3d::UnitX();  ///< unit, in the bone's frame
  Eigen::Vector3d d_W = Eigen::Vector3d::UnitX();  ///< unit, in the world
};

/// Bring a point of a bone to a target.
struct IkGoal {
  std::vector<JointIndex> joints;                      ///< those that may turn (dragChain), root side first
  std::array<bool, 3> motions{true, true, true};       ///< dorsiflexion, lateral flexion, torsion
  BoneIndex bone;                                      ///< what is brought there
  Eigen::Vector3d p_BPoint = Eigen::Vector3d::Zero();  ///< its point, in its frame, m
  Eigen::Vector3d p_WTarget = Eigen::Vector3d::Zero();
  /// Where this is a unit vector any point of the line through the target in its direction will do, as it does for
  /// somebody who looks along it; distances are from that line then.
  Eigen::Vector3d alongLine_W = Eigen::Vector3d::Zero();
  std::vector<DirectionConstraint>
      directions;  ///< kept as far as the target and the ranges allow: the target comes first
  BendStyle style = BendStyle::Even;
  bool pastRanges = false;  ///< ranges share the effort but do not hold; `broken` tells what breaks
};

/// A joint whose range keeps the point from its target.
struct StoppingJoint {
  JointIndex joint;
  Eigen::Vector3d push = Eigen::Vector3d::Zero();  ///< the way it would go on, unit, in its three own angles (toOwn)
  double share = 0;                                ///< its part in holding the point back; all of them add up to 1
};

struct IkResult {
  Pose pose;
  bool reached = false;                                ///< the point is within kReachedWithin of its target
  double distance = 0;                                 ///< from the point to its target, m
  Eigen::Vector3d p_WPoint = Eigen::Vector3d::Zero();  ///< where the point is, m
  double directionError = 0;                           ///< the worst bearing's angle to where it shall point, rad
  std::vector<StoppingJoint> stopping;                 ///< worst first; empty when the target is reached
  std::vector<JointIndex> broken;  ///< past their range: with pastRanges, or without supported angles
  int iterations = 0;
};

inline constexpr double kReachedWithin = 1e-3;  // m

/// The pose that brings the point to its target with the least effort: of all ways there the one with the least sum of
/// squared turns away from `start`, each as a share of its joint's range, and of those the ones in which no joint turns
/// back come first (BendStyle::Even). Inside the ranges unless pastRanges is set; a
/// joint that starts outside is brought in first. Where the target can't be had, the nearest supported pose. `from`,
/// where given, is a pose to search from, such as the last one of a drag: the answer belongs to `start` and the target
/// all the same. The root stays. Joints and bone must belong to the specimen; a target that is no number leaves the
/// start as it is.
IkResult reach(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
               const Pose& start, const IkGoal& goal, const Pose* from = nullptr);

}  // namespace zyga::kinematics
