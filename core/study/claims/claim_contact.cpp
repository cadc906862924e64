#include "core/study/claims/claim_contact.h"

#include <algorithm>
#include <cmath>

#include "core/kinematics/following.h"
#include "core/kinematics/placement.h"
#include "core/range/contact/contact.h"
#include "core/range/limit_search.h"

namespace zyga::study {
namespace {

using kinematics::JointIndex;

/// By bone, how many of the joints lie between it and the root.
std::vector<std::size_t> bendsBefore(const anatomy::Specimen& specimen, const std::vector<JointIndex>& joints) {
  std::vector<std::size_t> count(specimen.bones.size(), 0);
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    const bool bends = std::find(joints.begin(), joints.end(), JointIndex{j}) != joints.end();
    count[joint.distal.value] = count[joint.proximal.value] + (bends ? 1 : 0);
  }
  return count;
}

/// How far neutral is bent up from faces of the centra parallel, rad.
double pitchAtRest(const anatomy::Joint& joint, const kinematics::Articulation::Rest& rest) {
  return kinematics::jointAngles(joint, joint.restRotation.transpose() * rest.rotation)[0];
}

}  // namespace

std::vector<range::ContactFinding> collisionsOf(const range::Scenario& scenario, const ClaimSite& site,
                                                const kinematics::Pose& pose) {
  const anatomy::Specimen& specimen = scenario.specimen();
  const std::vector<std::size_t> bends = bendsBefore(specimen, site.joints);
  std::vector<range::ContactFinding> found = scenario.contact()->contacts(
      kinematics::forwardKinematics(specimen, scenario.articulation(), pose), scenario.assumptions());
  std::erase_if(found, [&](const range::ContactFinding& contact) {
    return contact.level != range::Level::Beyond || bends[contact.bone.value] == bends[contact.other.value];
  });
  return found;
}

MovedPairs::MovedPairs(const range::Scenario& scenario, const ClaimSite& site)
    : scenario_(scenario), site_(site), bends_(bendsBefore(scenario.specimen(), site.joints)) {
  const auto& pairs = scenario.contact()->pairs();
  for (std::size_t i = 0; i < pairs.size(); ++i)
    if (bends_[pairs[i].a.value] != bends_[pairs[i].b.value]) pairs_.push_back(i);
}

bool MovedPairs::enter(std::size_t pair, const kinematics::Placement& X_WB) const {
  return scenario_.contact()->entersBeyond(pair, X_WB, scenario_.assumptions().contactTolerated);
}

bool MovedPairs::collide(const kinematics::Pose& pose) const {
  const auto X_WB = kinematics::forwardKinematics(scenario_.specimen(), scenario_.articulation(), pose);
  return std::any_of(pairs_.begin(), pairs_.end(), [&](std::size_t pair) { return enter(pair, X_WB); });
}

std::vector<std::size_t> MovedPairs::colliding(const kinematics::Pose& pose) const {
  const auto X_WB = kinematics::forwardKinematics(scenario_.specimen(), scenario_.articulation(), pose);
  std::vector<std::size_t> found;
  for (const std::size_t pair : pairs_)
    if (enter(pair, X_WB)) found.push_back(pair);
  return found;
}

bool MovedPairs::collide(std::size_t pair, const kinematics::Pose& pose) const {
  return enter(pair, kinematics::forwardKinematics(scenario_.specimen(), scenario_.articulation(), pose));
}

std::vector<JointIndex> MovedPairs::between(std::size_t pair) const {
  const range::ContactPair& bones = scenario_.contact()->pairs()[pair];
  const auto [first, last] = std::minmax(bends_[bones.a.value], bends_[bones.b.value]);
  // Of a chain the joints lie one after the other, root side first.
  return {site_.joints.begin() + static_cast<std::ptrdiff_t>(first),
          site_.joints.begin() + static_cast<std::ptrdiff_t>(last)};
}

ClearRanges::ClearRanges(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim,
                         const RangeOfJoint& ranges)
    : scenario_(scenario), site_(site), pairs_(scenario, site), ranges_(scenario.specimen().joints.size()) {
  constexpr int kMostRounds = 8;
  for (const JointIndex joint : site.joints) ranges_[joint.value] = ranges(joint);
  const bool asPosed = !pairs_.collide(scenario.pose());
  for (int round = 0; round < kMostRounds; ++round) {
    trial_ = claimTrial(scenario, site, claim, {[this](JointIndex joint) { return ranges_[joint.value]; }, asPosed});
    const auto pose = trial_->farthest();
    if (!pose || !giveWay(*pose)) return;
  }
}

/// False where nothing collides, or where nothing helps.
bool ClearRanges::giveWay(const kinematics::Pose& pose) {
  constexpr int kHalvings = 10;
  bool given = false;
  for (const std::size_t pair : pairs_.colliding(pose)) {
    const std::vector<JointIndex> joints = pairs_.between(pair);
    const auto at = [&](double share) {
      kinematics::Pose other = pose;
      for (const JointIndex joint : joints) {
        const range::MotionRange& range = ranges_[joint.value];
        const double neutral = std::clamp(0.0, range.min, range.max);
        other[joint] = kinematics::withMotion(scenario_.specimen()[joint], scenario_.articulation()[joint],
                                              Eigen::Vector3d::Zero(), 0, std::lerp(neutral, pose[joint][0], share));
      }
      return other;
    };
    double free = 0, entering = 1;
    if (pairs_.collide(pair, at(free))) continue;
    for (int i = 0; i < kHalvings; ++i) {
      const double middle = 0.5 * (free + entering);
      (pairs_.collide(pair, at(middle)) ? entering : free) = middle;
    }
    const kinematics::Pose last = at(free);
    range::Stop stop;
    stop.why = range::Stop::Why::Criterion;
    stop.kind = range::FindingKind::BoneContact;
    stop.limit = scenario_.contact()->tolerated(pair, scenario_.assumptions().contactTolerated);
    const range::ContactPair& bones = scenario_.contact()->pairs()[pair];
    stop.parts = range::TouchingParts{{bones.a}, {bones.b}};
    for (const JointIndex joint : joints) {
      range::MotionRange& range = ranges_[joint.value];
      if (last[joint][0] < pose[joint][0]) {
        range.max = last[joint][0];
        range.maxStop = stop;
      } else if (last[joint][0] > pose[joint][0]) {
        range.min = last[joint][0];
        range.minStop = stop;
      } else {
        continue;
      }
      given = true;
    }
  }
  return given;
}

RangeOfJoint rangesWithContact(const range::Scenario& scenario) {
  return [&scenario](JointIndex joint) {
    return range::motionRange(scenario.specimen(), scenario.articulation(), scenario.assumptions(), joint,
                              Eigen::Vector3d::Zero(), 0, scenario.contact());
  };
}

ContactEnds::ContactEnds(const range::Scenario& scenario, const ClaimSite& site, const range::Assumptions& widest)
    : ends_(scenario.specimen().joints.size()) {
  for (const JointIndex joint : site.joints) {
    const range::MotionRange found = range::motionRange(scenario.specimen(), scenario.articulation(), widest, joint,
                                                        Eigen::Vector3d::Zero(), 0, scenario.contact());
    const auto byContact = [](const range::Stop& stop) { return stop.kind == range::FindingKind::BoneContact; };
    const double pitch = pitchAtRest(scenario.specimen()[joint], scenario.articulation()[joint]);
    Ends& ends = ends_[joint.value];
    ends.nowhere = found.empty && byContact(found.minStop);
    ends.minStop = found.minStop;
    ends.maxStop = found.maxStop;
    if (!found.empty && byContact(found.minStop)) ends.min = pitch + found.min;
    if (!found.empty && byContact(found.maxStop)) ends.max = pitch + found.max;
  }
}

void ContactEnds::tighten(const range::Scenario& scenario, const ClaimSite& site, const ClearRanges& clear) {
  if (ends_.empty()) return;
  for (const JointIndex joint : site.joints) {
    const range::MotionRange& range = clear[joint];
    const double pitch = pitchAtRest(scenario.specimen()[joint], scenario.articulation()[joint]);
    Ends& ends = ends_[joint.value];
    if (range.empty) continue;
    if (range.minStop.kind == range::FindingKind::BoneContact && pitch + range.min > ends.min) {
      ends.min = pitch + range.min;
      ends.minStop = range.minStop;
    }
    if (range.maxStop.kind == range::FindingKind::BoneContact && pitch + range.max < ends.max) {
      ends.max = pitch + range.max;
      ends.maxStop = range.maxStop;
    }
  }
}

range::MotionRange ContactEnds::cut(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                    JointIndex joint, range::MotionRange range) const {
  if (ends_.empty() || range.empty) return range;
  const Ends& ends = ends_[joint.value];
  const double pitch = pitchAtRest(specimen[joint], articulation[joint]);
  if (ends.nowhere || ends.min - pitch > range.max || ends.max - pitch < range.min) {
    range.empty = true;
    range.minStop = range.maxStop = ends.nowhere || ends.min - pitch > range.max ? ends.minStop : ends.maxStop;
    return range;
  }
  if (ends.min - pitch > range.min) {
    range.min = ends.min - pitch;
    range.minStop = ends.minStop;
  }
  if (ends.max - pitch < range.max) {
    range.max = ends.max - pitch;
    range.maxStop = ends.maxStop;
  }
  return range;
}

}  // namespace zyga::study
