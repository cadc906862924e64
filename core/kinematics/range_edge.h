#pragma once

#include <vector>

#include "core/kinematics/quadratic_program.h"
#include "core/kinematics/reach.h"

namespace zyga::kinematics {

/// The range of one joint as a search walks about in it: brings back what a step took past the edge, and tells where
/// the edge lies from here. Its angles are a joint's own (toOwn), whose third counts from where the facets ask it to
/// be: bending then walks along the range, not across it. Asking the range is what a search spends its time on, so
/// answers are kept. A helper of reach.
class RangeEdge {
 public:
  /// `motions` are the angles that may turn, `units` (rad) what counts as a step of one in each; `anchor`: supported
  /// angles to fall back towards, which differ from where the joint may be in those motions alone.
  RangeEdge(const JointRanges& ranges, const anatomy::Specimen& specimen, const Articulation& articulation,
            JointIndex joint, std::vector<int> motions, const Eigen::Vector3d& units, const Eigen::Vector3d& anchor);

  /// These angles if they are supported, otherwise supported ones on the way to the anchor, close to the edge.
  Eigen::Vector3d broughtIn(Eigen::Vector3d angles);

  /// Adds what the criteria allow a step from these angles, taken as linear; the step's entries for this joint begin at
  /// `first`.
  void addHalfSpaces(const Eigen::Vector3d& angles, int first, std::vector<HalfSpace>& halfSpaces);

 private:
  const JointRanges::Excesses& excesses(const Eigen::Vector3d& angles);
  void linearise(const Eigen::Vector3d& angles, const JointRanges::Excesses& here);

  JointRanges::Excesses asked(const Eigen::Vector3d& own) const;

  const JointRanges& ranges_;
  const anatomy::Joint& bones_;
  const Articulation::Rest& rest_;
  JointIndex joint_;
  std::vector<int> motions_;
  Eigen::Vector3d units_, anchor_;
  JointRanges::Box box_;
  double worstAtAnchor_;
  /// The last answer.
  Eigen::Vector3d asked_;
  JointRanges::Excesses answer_;
  /// Slopes of the criteria a unit, by motion, and where they were taken.
  Eigen::Vector3d slopesAt_;
  std::array<Eigen::Vector3d, JointRanges::kMostCriteria> slopes_;
};

}  // namespace zyga::kinematics
