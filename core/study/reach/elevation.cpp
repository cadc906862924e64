#include "core/study/reach/elevation.h"

#include <algorithm>
#include <cmath>

#include "core/study/reach/planar_neck.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using kinematics::Pose;

/// The snout as far in a direction of the plane as neck and head bring it.
Pose farthestPose(const PlanarNeck& neck, const Eigen::Vector2d& direction) {
  Pose pose = neck.neutral;
  const std::vector<double> angles = farthestAngles(neck.chain, neck.tip, direction);
  for (std::size_t i = 0; i < neck.joints.size(); ++i) pose[neck.joints[i]] = Vector3d(angles[i], 0, 0);
  return pose;
}

/// Every joint of the neck, but not the head's, at its own end.
Pose poseAtEnds(const range::Scenario& scenario, const PlanarNeck& neck, bool dorsal) {
  Pose pose = scenario.pose();
  const auto ofNeck = jointsOf(scenario.specimen(), Chain::Neck);
  for (std::size_t i = 0; i < neck.joints.size(); ++i) {
    if (std::find(ofNeck.begin(), ofNeck.end(), neck.joints[i]) == ofNeck.end()) continue;
    pose[neck.joints[i]] = Vector3d(dorsal ? neck.chain[i].max : neck.chain[i].min, 0, 0);
  }
  return pose;
}

Pose withNeckNeutral(const anatomy::Specimen& specimen, Pose pose) {
  for (const auto joint : jointsOf(specimen, Chain::Neck)) pose[joint] = Vector3d::Zero();
  return pose;
}

/// Of a direction over the horizontal, rad; past the vertical it goes on.
double slopeOf(const Vector3d& direction_W, const SagittalPlane& plane) {
  return std::atan2(direction_W.dot(plane.up_W), direction_W.dot(plane.ahead_W));
}

ElevationCase caseOf(const range::Scenario& scenario, NeckCarriage which, const Pose& pose,
                     const SagittalPlane& plane) {
  const anatomy::Specimen& specimen = scenario.specimen();
  ElevationCase made;
  made.which = which;
  made.pose = pose;
  made.carriage = carriage(specimen, scenario.articulation(), pose, Chain::Neck);
  const auto X_WB = kinematics::forwardKinematics(specimen, scenario.articulation(), pose);
  made.line = neckLine(specimen, X_WB, plane);
  // The head's joint: the neck ends there.
  const std::size_t end = made.line.size() - (specimen.findBone("skull") ? 2 : 1);
  const Eigen::Vector2d chord = made.line[end] - made.line.front();
  made.slope = std::atan2(chord.y(), chord.x());
  const auto base = specimen[jointsOf(specimen, Chain::Neck).front()].distal;
  made.baseSlope = slopeOf(X_WB[base.value].linear().col(0), plane);
  if (const auto skull = specimen.findBone("skull")) {
    made.headSlope = slopeOf(X_WB[skull->value].linear().col(0), plane);
  }
  return made;
}

}  // namespace

std::string_view toText(NeckCarriage carriage) {
  static constexpr std::array<std::string_view, kNeckCarriages.size()> kWords{
      "neutral", "most dorsiflexed", "most ventriflexed", "highest", "lowest", "present pose"};
  return kWords[static_cast<std::size_t>(carriage)];
}

Elevation elevation(const range::Scenario& scenario) {
  const anatomy::Specimen& specimen = scenario.specimen();
  const Pose& pose = scenario.pose();
  const kinematics::Placement& X_WB = scenario.placement();
  Elevation made;
  made.plane = neckPlane(specimen, X_WB);
  made.body = bodyLines(specimen, X_WB, made.plane);
  made.foreFeet = foreFeetAhead(specimen, X_WB, made.plane);
  const PlanarNeck neck = planarNeck(scenario);
  const std::array<Pose, kNeckCarriages.size()> poses{
      withNeckNeutral(specimen, pose), poseAtEnds(scenario, neck, true), poseAtEnds(scenario, neck, false),
      farthestPose(neck, {0, 1}),      farthestPose(neck, {0, -1}),      pose};
  for (const NeckCarriage which : kNeckCarriages) {
    const auto i = static_cast<std::size_t>(which);
    made.cases[i] = caseOf(scenario, which, poses[i], made.plane);
  }
  made.unjudged = neck.unjudged;
  made.contactJudged = scenario.contact() != nullptr;
  return made;
}

}  // namespace zyga::study
