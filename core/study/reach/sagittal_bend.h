#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/kinematics/placement.h"
#include "core/range/limits.h"

namespace zyga::study {

/// Bends chains of the column up and down, every joint inside its range. A joint's range is found when it is first
/// asked for, with its other angles at zero, and kept. Refers to what it was made from; not for several threads at
/// once.
class SagittalBend {
 public:
  /// `contact`, where given, ends ranges as well.
  SagittalBend(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
               const range::Assumptions& assumptions, const range::NeighbourContact* contact = nullptr)
      : specimen_(specimen),
        articulation_(articulation),
        assumptions_(assumptions),
        contact_(contact),
        known_(specimen.joints.size()) {}

  /// The supported dorsiflexions of a joint, rad, 1 % inside the ends; both 0 where none is.
  anatomy::AngleLimits range(kinematics::JointIndex joint) const;

  /// Joint by joint from the base: the distal bone's long axis is brought to the slope wanted for it, as far as `share`
  /// of the joint's range allows. `slope` gets the joint's place in the chain from 0 (base) to 1, and gives rad above
  /// the horizontal as one looks along the chain away from the trunk.
  void followSlopes(kinematics::Pose& pose, const std::vector<kinematics::JointIndex>& chain,
                    const std::function<double(double)>& slope, double share) const;

  /// Slope of a bone as one looks away from the trunk, rad.
  double slopeOf(const kinematics::Placement& X_WB, kinematics::BoneIndex bone) const;

 private:
  anatomy::AngleLimits found(kinematics::JointIndex joint) const;

  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  const range::Assumptions& assumptions_;
  const range::NeighbourContact* contact_;
  mutable std::vector<std::optional<anatomy::AngleLimits>> known_;  ///< by joint
};

}  // namespace zyga::study
