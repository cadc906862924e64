#pragma once

#include "core/range/joint_evaluator.h"
#include "core/range/limits.h"
#include "core/range/scenario.h"

namespace zyga::study {

/// The range of dorsiflexion of one joint of a sample, near to what range::motionRange finds and in a fraction of its
/// time: by wide steps from neutral, the first one past the end that the animal as it is has, and false position
/// (Illinois) on how far the worst criterion is past its limit, to 1e-4 rad where that is smooth. Gaps in the support
/// narrower than a step are not seen; a joint whose neutral is not supported is searched in full.
class SampleRange {
 public:
  /// `asIs`: the range of the same joint of the animal as it is. Refers to both.
  SampleRange(const range::Scenario& sample, kinematics::JointIndex joint, const range::MotionRange& asIs);

  range::MotionRange find() const;

 private:
  /// Past the limit by so much, as a share of the criterion's own scale; below zero inside.
  double violation(double angle) const;
  double end(double sign, double asIs) const;

  const range::Scenario& sample_;
  kinematics::JointIndex joint_;
  const range::MotionRange& asIs_;
  range::JointEvaluator judge_;
  bool leans_;
};

}  // namespace zyga::study
