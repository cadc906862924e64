#include "core/study/reach/sagittal_bend.h"

#include <algorithm>
#include <cmath>

namespace zyga::study {

using kinematics::JointIndex;
using kinematics::Pose;

anatomy::AngleLimits SagittalBend::range(JointIndex joint) const {
  auto& known = known_[joint.value];
  if (!known) known = found(joint);
  return *known;
}

anatomy::AngleLimits SagittalBend::found(JointIndex joint) const {
  const range::MotionRange band =
      range::motionRange(specimen_, articulation_, assumptions_, joint, Eigen::Vector3d::Zero(), 0, contact_);
  if (band.empty || !band.judged) return {};
  constexpr double kInside = 0.99;  // of the range: program default, no source
  return {kInside * std::min(band.min, 0.0), kInside * std::max(band.max, 0.0)};
}

double SagittalBend::slopeOf(const kinematics::Placement& X_WB, kinematics::BoneIndex bone) const {
  const anatomy::Region region = anatomy::regionOf(specimen_[bone].name);
  const bool tail = region == anatomy::Region::Caudal;
  const Eigen::Vector3d x_W = X_WB[bone.value].linear().col(0) * (tail ? -1 : 1);
  // Past the vertical the slope goes on: what counts is the angle in the animal's own upright plane.
  Eigen::Vector3d heading_W = X_WB.front().linear().col(0) * (tail ? -1 : 1);
  heading_W.z() = 0;
  return std::atan2(x_W.z(), x_W.dot(heading_W.normalized()));
}

void SagittalBend::followSlopes(Pose& pose, const std::vector<JointIndex>& chain,
                                const std::function<double(double)>& slope, double share) const {
  kinematics::Placement X_WB;
  for (std::size_t i = 0; i < chain.size(); ++i) {
    const double along = chain.size() < 2 ? 1 : static_cast<double>(i) / static_cast<double>(chain.size() - 1);
    const anatomy::AngleLimits limits = range(chain[i]);
    pose[chain[i]] = Eigen::Vector3d::Zero();
    kinematics::placeInto(specimen_, articulation_, pose, X_WB);
    const double missing = slope(along) - slopeOf(X_WB, specimen_[chain[i]].distal);
    pose[chain[i]][0] = std::clamp(missing, share * limits.min, share * limits.max);
  }
}

}  // namespace zyga::study
