#pragma once

#include <optional>

#include "core/range/joint_judge.h"

namespace zyga::range {

/// A value of one motion and what the criteria say there.
struct Tried {
  double value = 0;  ///< rad
  Criteria criteria;
  bool holds = true;  ///< no criterion is beyond

  /// How far the worst criterion is past its limit, as a share of its own scale; negative where the value holds.
  double violation() const;
};

/// One motion of a joint, its other angles as they are: finds ends of the range with few questions, for sentences that
/// are written again at each step of a drag. The bands of the strip are searched with more care (band_search.h).
class RangeEnd {
 public:
  RangeEnd(const JointJudge& judge, const Eigen::Vector3d& angles, int motion)
      : judge_(judge), angles_(angles), motion_(motion) {}

  Tried at(double value) const;
  /// The first end of the support on the way from a value that holds to one that fails, to kBandPrecision; it holds.
  /// Gaps narrower than a degree are not seen.
  double between(const Tried& holds, const Tried& fails) const;
  /// The end of the support going from a supported value by whole degrees in the direction of `sign`, at most to a
  /// right angle from zero.
  double beyond(Tried holds, double sign) const;
  /// A supported value, looked for from zero downhill along the violation; none where that leads to no support.
  std::optional<Tried> supported() const;

 private:
  /// An end of support on the way, the first one only where the support has no gap.
  Tried crossing(Tried holds, Tried fails) const;
  /// The signed distance from zero at which the violation has fallen first, rad; 0 where it rises both ways.
  double wayDown(const Tried& zero) const;

  const JointJudge& judge_;
  Eigen::Vector3d angles_;
  int motion_;
};

}  // namespace zyga::range
