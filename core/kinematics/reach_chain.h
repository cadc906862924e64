#pragma once

#include "core/kinematics/jacobian.h"
#include "core/kinematics/range_edge.h"

namespace zyga::kinematics {

/// The angles that a reach may change, each counted in half widths of its range, so that a step of one means the same
/// everywhere; and where they take the point. The axial rotation goes along with the other two, and counts from there.
/// A helper of reach.
class ReachChain {
 public:
  ReachChain(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
             const Pose& start, const IkGoal& goal);

  /// One joint with something to turn; its angles are free()[first] and the `count - 1` after it.
  struct Turning {
    JointIndex joint;
    int first = 0;
    int count = 0;
  };
  const std::vector<Turning>& turning() const { return turning_; }
  const std::vector<FreeMotion>& free() const { return free_; }
  Eigen::Index size() const { return static_cast<Eigen::Index>(free_.size()); }
  const Eigen::VectorXd& units() const { return units_; }      ///< rad a half width
  const Eigen::VectorXd& weights() const { return weights_; }  ///< of each angle, 1 or more: the style
  /// The start, with every joint brought inside its range where ranges hold.
  const Pose& home() const { return home_; }
  /// Home with the chain's angles taken from another pose, brought inside their ranges.
  Pose startFrom(const Pose& other);

  /// Bones from the chain on, for a pose that differs from the start in the chain's angles alone.
  void placeInto(const Pose& pose, Placement& X_WB) const;
  Eigen::Vector3d pointOf(const Placement& X_WB) const { return X_WB[goal_.bone.value] * goal_.p_BPoint; }

  /// A pose's angles away from home, in units.
  Eigen::VectorXd deviation(const Pose& pose) const;
  /// Home with every angle turned by the share of half its range that is given for its motion.
  Pose bent(const std::array<double, 3>& shares);
  /// Adds a step (units) and brings what left its range back in, along the way to the joint's anchor.
  Pose stepped(const Pose& pose, const Eigen::VectorXd& step);
  /// The joints that would bring the point nearer by `miss` (m, world) if these ranges let them, by how far.
  std::vector<StoppingJoint> stopping(const JointRanges& ranges, const Pose& pose, const Placement& X_WB,
                                      const Eigen::Vector3d& miss) const;
  /// What the ranges allow a step (units) from here, no angle by more than `longest` units.
  std::vector<HalfSpace> allowed(const Pose& pose, double longest);

 private:
  void addTurning(JointIndex joint, const Pose& start);
  int motionOf(int column) const { return free_[static_cast<std::size_t>(column)].motion; }
  /// A joint's own angles (toOwn): what the chain counts in.
  Eigen::Vector3d ownOf(const Pose& pose, JointIndex joint) const;
  void setOwn(Pose& pose, JointIndex joint, const Eigen::Vector3d& own) const;
  void addBounds(const Turning& turning, const Pose& pose, double longest, std::vector<HalfSpace>& halfSpaces) const;

  const anatomy::Specimen& specimen_;
  const Articulation& articulation_;
  const JointRanges& ranges_;
  const IkGoal& goal_;
  std::vector<Turning> turning_;
  std::vector<RangeEdge> edges_;  ///< by turning joint; none where ranges do not hold
  std::vector<FreeMotion> free_;
  std::vector<JointIndex> path_;  ///< from the first turning joint to the bone
  Eigen::VectorXd units_, weights_;
  Pose home_;

  /// A joint's own angles as they were last worked out: a step asks for those of home, of its pose and of where it
  /// tries to go, again and again.
  struct OwnAngles {
    std::array<Eigen::Vector3d, 3> angles, own;
    std::size_t known = 0, oldest = 0;
  };
  mutable std::vector<OwnAngles> own_;  ///< by joint of the specimen
};

}  // namespace zyga::kinematics
