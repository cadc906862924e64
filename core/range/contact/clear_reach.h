#pragma once

#include "core/range/reach_ranges.h"
#include "core/range/scenario.h"

namespace zyga::range {

/// What a search for a reaching pose has brought, and what stops it.
struct ClearReach {
  kinematics::IkResult reached;
  std::vector<JointStop>
      stops;  ///< of the joints that keep the point from its target; contacts first, then worst first
};

/// kinematics::reach, and then no joint bent so far that its bones enter each other deeper than is tolerated: a joint
/// that would is left at the last place on its way that is free, and the others go on without it, again and again until
/// none does. So are all joints between two bones that several joints move against each other, a head and a rib. The
/// answer is never past a contact, but may fall short of the best pose there is. Joints whose bones enter each other
/// wherever they start from, and all joints with `goal.pastRanges` or without contact in the scenario, are as
/// kinematics::reach leaves them. `ranges` are those of the scenario, contact included.
ClearReach reachClear(const Scenario& scenario, const ReachRanges& ranges, const kinematics::Pose& start,
                      const kinematics::IkGoal& goal, const kinematics::Pose* from = nullptr);

}  // namespace zyga::range
