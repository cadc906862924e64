#include "core/kinematics/reach.h"

#include <algorithm>

#include "core/kinematics/bend.h"

namespace zyga::kinematics {

double JointRanges::Excesses::worst() const {
  return count == 0 ? 0 : *std::max_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(count));
}

bool JointRanges::supports(JointIndex joint, const Eigen::Vector3d& angles) const {
  const Box bounds = box(joint);
  const bool within = (angles.array() >= bounds.least.array()).all() && (angles.array() <= bounds.most.array()).all();
  return within && excesses(joint, angles).worst() <= 0;
}

Reached reach(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
              const Pose& start, const Reach& wish, const Pose*) {
  const Pull pull{wish.joints, wish.motions, wish.bone, wish.p_BPoint};
  Reached result;
  result.pose = pullTowards(specimen, articulation, start, pull, wish.p_WTarget);
  result.p_WPoint = place(specimen, articulation, result.pose)[wish.bone.value] * wish.p_BPoint;
  result.distance = (result.p_WPoint - wish.p_WTarget).norm();
  result.reached = result.distance <= kReachedWithin;
  for (const JointIndex j : wish.joints) {
    if (!ranges.supports(j, result.pose[j])) result.broken.push_back(j);
  }
  return result;
}

}  // namespace zyga::kinematics
