#include "core/kinematics/shoulder_blade.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace zyga::kinematics {
namespace {

using anatomy::AngleLimits;
using anatomy::Side;
using anatomy::Specimen;
using Eigen::Vector3d;

constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

std::optional<JointIndex> bladeJoint(const Specimen& specimen, Side side) {
  return specimen.findJoint(side == Side::Right ? "scapula.R" : "scapula.L");
}

/// Of the ribs' bow: the blade's origin goes round the joint's centre.
double radius(const anatomy::Joint& joint) { return joint.centreDistal.norm(); }

AngleLimits limitsOf(const anatomy::Joint& joint, std::size_t motion) {
  return joint.typed ? joint.typed->angles[motion] : AngleLimits{};
}

/// Slope of one blade as a function of the joint's angles, the trunk standing.
class Slope {
 public:
  Slope(const Specimen& specimen, const Articulation& articulation, const Pose& pose, JointIndex joint)
      : joint_(specimen[joint]), rest_(articulation[joint]), R_WRoot_(pose.X_WRoot.linear()) {
    R_WCarrier_ = place(specimen, articulation, pose)[joint_.proximal.value].linear();
  }
  double operator()(const Vector3d& angles) const {
    return bladeSlope(R_WCarrier_ * placeDistal(joint_, rest_, angles).linear(), R_WRoot_);
  }

 private:
  const anatomy::Joint& joint_;
  const Articulation::Rest& rest_;
  Eigen::Matrix3d R_WRoot_, R_WCarrier_;
};

}  // namespace

double bladeSlope(const Eigen::Matrix3d& R_WBlade, const Eigen::Matrix3d& R_WRoot) {
  Vector3d heading_W = R_WRoot.col(0);
  heading_W.z() = 0;
  const Vector3d up_W = R_WBlade.col(2);
  return std::atan2(up_W.z(), -up_W.dot(heading_W.normalized()));
}

BladePlace bladePlace(const Specimen& specimen, const Pose& pose, const Placement& X_WB, Side side) {
  const auto joint = bladeJoint(specimen, side);
  if (!joint) return {kUnknown, kUnknown};
  return {bladeSlope(X_WB[specimen[*joint].distal.value].linear(), pose.X_WRoot.linear()),
          pose[*joint][1] * radius(specimen[*joint])};
}

Pose placeBlade(const Specimen& specimen, const Articulation& articulation, const Pose& pose, Side side,
                const BladePlace& wanted) {
  const auto index = bladeJoint(specimen, side);
  if (!index) return pose;
  const anatomy::Joint& joint = specimen[*index];
  const AngleLimits tilts = limitsOf(joint, 0), slides = limitsOf(joint, 1);
  const Slope slope(specimen, articulation, pose, *index);
  Pose placed = pose;
  Vector3d& angles = placed[*index];
  if (radius(joint) > 0) angles[1] = std::clamp(wanted.slide / radius(joint), slides.least, slides.most);
  // The slope falls as the lower end swings forward, nearly one for one: a few steps settle it.
  for (int step = 0; step < 20; ++step) {
    const double off = slope(angles) - wanted.slope;
    if (std::abs(off) < 1e-12) break;
    angles[0] = std::clamp(angles[0] + off, tilts.least, tilts.most);
  }
  return placed;
}

BladeRange bladeRange(const Specimen& specimen, const Articulation& articulation, const Pose& pose, Side side) {
  const auto index = bladeJoint(specimen, side);
  if (!index) return {{kUnknown, kUnknown}, {kUnknown, kUnknown}};
  const anatomy::Joint& joint = specimen[*index];
  const AngleLimits tilts = limitsOf(joint, 0), slides = limitsOf(joint, 1);
  const Slope slope(specimen, articulation, pose, *index);
  Vector3d forward = pose[*index], back = pose[*index];
  forward[0] = tilts.most;
  back[0] = tilts.least;
  return {{slope(forward), slope(back)}, {slides.least * radius(joint), slides.most * radius(joint)}};
}

}  // namespace zyga::kinematics
