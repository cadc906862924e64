#include "core/study/elevation.h"

#include <cmath>

#include "core/study/figures_text.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using kinematics::Pose;

Pose withNeckNeutral(const anatomy::Specimen& specimen, Pose pose) {
  for (const auto joint : jointsOf(specimen, Chain::Neck)) pose[joint] = Vector3d::Zero();
  return pose;
}

/// Of a direction over the horizontal, rad; past the vertical it goes on.
double slopeOf(const Vector3d& direction_W, const SagittalPlane& plane) {
  return std::atan2(direction_W.dot(plane.up_W), direction_W.dot(plane.ahead_W));
}

ElevationCase caseOf(const Subject& subject, NeckCarriage which, const Pose& pose, const SagittalPlane& plane) {
  ElevationCase made;
  made.which = which;
  made.pose = pose;
  made.carriage = carriage(subject.specimen, subject.articulation, pose, Chain::Neck);
  const auto X_WB = kinematics::place(subject.specimen, subject.articulation, pose);
  made.line = neckLine(subject.specimen, X_WB, plane);
  const auto base = subject.specimen[jointsOf(subject.specimen, Chain::Neck).front()].distal;
  made.baseSlope = slopeOf(X_WB[base.value].linear().col(0), plane);
  if (const auto skull = subject.specimen.findBone("skull")) {
    made.headSlope = slopeOf(X_WB[skull->value].linear().col(0), plane);
  }
  return made;
}

std::string sentence(const ElevationCase& one) {
  const std::string slope =
      (one.carriage.slope < 0 ? "falling by " : "rising by ") + degreesWord(std::abs(one.carriage.slope));
  std::string text = capitalised(toText(one.which)) + ": snout " + metresWord(one.carriage.snoutHeight) +
                     " over the ground, neck " + slope + ", its base at " + degreesWord(one.baseSlope) + ".";
  if (one.carriage.lowest < 0) text += " It would be " + metresWord(-one.carriage.lowest) + " in the ground.";
  return text;
}

}  // namespace

std::string_view toText(NeckCarriage carriage) {
  static constexpr std::array<std::string_view, 4> kWords{"neutral", "most dorsiflexed", "most ventriflexed",
                                                          "present pose"};
  return kWords[static_cast<std::size_t>(carriage)];
}

Elevation elevation(const Subject& subject) {
  const auto& [specimen, articulation, assumptions, pose] = subject;
  const auto X_WB = kinematics::place(specimen, articulation, pose);
  Elevation made;
  made.plane = neckPlane(specimen, X_WB);
  made.body = bodyLines(specimen, X_WB, made.plane);
  made.foreFeet = foreFeetAhead(specimen, X_WB, made.plane);
  const Extreme up = extreme(specimen, articulation, assumptions, pose, Chain::Neck, range::Direction::Dorsal);
  const Extreme down = extreme(specimen, articulation, assumptions, pose, Chain::Neck, range::Direction::Ventral);
  const std::array<Pose, 4> poses{withNeckNeutral(specimen, pose), up.pose, down.pose, pose};
  for (const NeckCarriage which : kNeckCarriages) {
    const auto i = static_cast<std::size_t>(which);
    made.cases[i] = caseOf(subject, which, poses[i], made.plane);
  }
  for (const auto& joint : up.joints) {
    if (!joint.judged) made.unjudged.push_back(specimen[joint.joint].id);
  }
  return made;
}

std::vector<std::string> sentences(const Elevation& elevation) {
  std::vector<std::string> all;
  for (const ElevationCase& one : elevation.cases) all.push_back(sentence(one));
  return all;
}

}  // namespace zyga::study
