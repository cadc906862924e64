#include "core/study/claims/claim_beside.h"

#include <algorithm>
#include <cmath>

#include "core/kinematics/following.h"
#include "core/study/claims/claim_contact.h"

namespace zyga::study {
namespace {

using kinematics::JointIndex;
using kinematics::Pose;
using Link = SagittalChain::Link;

const Link* linkOf(const ClaimVerdict& verdict, JointIndex joint) {
  const auto found = std::find_if(verdict.links.begin(), verdict.links.end(),
                                  [joint](const Link& link) { return link.joint == joint; });
  return found == verdict.links.end() ? nullptr : &*found;
}

range::MotionRange rangeOf(const Link& link) {
  range::MotionRange range;
  range.min = link.min;
  range.max = link.max;
  range.minStop = link.minStop;
  range.maxStop = link.maxStop;
  return range;
}

void turnTo(const range::Scenario& scenario, JointIndex joint, double angle, Pose& pose) {
  pose[joint] = kinematics::withMotion(scenario.specimen()[joint], scenario.articulation()[joint],
                                       Eigen::Vector3d::Zero(), 0, angle);
}

double claimedReading(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim, const Pose& pose) {
  const auto X_WB = kinematics::forwardKinematics(scenario.specimen(), scenario.articulation(), pose);
  const CarriedSpan& s = site.span;
  Eigen::Vector3d span = X_WB[s.to.value] * s.p_To;
  if (s.from) span -= X_WB[s.from->value] * s.p_From;
  return readingOf(claim, site, span);
}

/// Neck and head of one animal that bend from the base until the middle cervical is upright.
class ExtendedNeck {
 public:
  ExtendedNeck(const range::Scenario& scenario, const ClaimSite& site, const ClaimVerdict& verdict)
      : scenario_(scenario), specimen_(scenario.specimen()), verdict_(verdict) {
    const int middle = (specimen_.counts.cervical + 1) / 2;
    middle_ = specimen_.findBone("C" + std::to_string(middle));
    ahead_W_ = site.ahead_W;
  }

  Pose from(Pose pose) const {
    const std::vector<JointIndex> toMiddle = middle_ ? specimen_.chainTo(*middle_) : std::vector<JointIndex>{};
    for (const JointIndex joint : toMiddle) {
      const Link* link = linkOf(verdict_, joint);
      if (link && !extend(*link, pose)) break;
    }
    for (const Link& link : verdict_.links)
      if (specimen_[specimen_[link.joint].distal].name.kind == anatomy::BoneKind::Skull)
        turnTo(scenario_, link.joint, link.min, pose);
    return pose;
  }

 private:
  /// False where the middle cervical has come to stand upright.
  bool extend(const Link& link, Pose& pose) const {
    constexpr int kHalvings = 40;
    double below = std::clamp(0.0, link.min, link.max), past = link.max;
    turnTo(scenario_, link.joint, below, pose);
    if (pastUpright(pose)) return false;
    turnTo(scenario_, link.joint, past, pose);
    if (!pastUpright(pose)) return true;
    for (int i = 0; i < kHalvings; ++i) {
      const double between = 0.5 * (below + past);
      turnTo(scenario_, link.joint, between, pose);
      (pastUpright(pose) ? past : below) = between;
    }
    turnTo(scenario_, link.joint, below, pose);
    return false;
  }

  bool pastUpright(const Pose& pose) const {
    const auto X_WB = kinematics::forwardKinematics(specimen_, scenario_.articulation(), pose);
    const Eigen::Vector3d along_W = X_WB[middle_->value].linear().col(0);
    return along_W.dot(ahead_W_) < 0 && along_W.z() > 0;
  }

  const range::Scenario& scenario_;
  const anatomy::Specimen& specimen_;
  const ClaimVerdict& verdict_;
  std::optional<kinematics::BoneIndex> middle_;
  Eigen::Vector3d ahead_W_;
};

}  // namespace

std::optional<ClaimDorsals> withDorsals(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim,
                                        const ClaimVerdict& without, const RangeOfJoint& ranges,
                                        const task::Task& task) {
  if (site.chain != Chain::Neck || !without.impossible.empty()) return std::nullopt;
  ClaimDorsals dorsals;
  dorsals.joints = foremostDorsals(scenario);
  if (dorsals.joints.empty()) return std::nullopt;
  ClaimSite longer = site;
  longer.joints.insert(longer.joints.begin(), dorsals.joints.begin(), dorsals.joints.end());
  const RangeOfJoint known = [&](JointIndex joint) {
    const Link* link = linkOf(without, joint);
    return link ? rangeOf(*link) : ranges(joint);
  };
  const auto trial = claimTrial(scenario, longer, claim, {known});
  const ClaimVerdict verdict = trial->verdict(task);
  const auto farthest = trial->farthest();
  if (task.cancelled() || !farthest) return std::nullopt;
  dorsals.supported = without.supported || (without.shortBy > 0 && verdict.supported);
  dorsals.best = verdict.best;
  if (verdict.best && without.best) dorsals.gain = *verdict.best - *without.best;
  for (const JointIndex joint : dorsals.joints)
    dorsals.turned.push_back((*farthest)[joint][0] - scenario.pose()[joint][0]);
  return dorsals;
}

std::optional<ClaimHabit> habitOf(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim,
                                  const ClaimVerdict& verdict) {
  if (site.chain != Chain::Neck || isPoint(claim.kind) || !verdict.impossible.empty()) return std::nullopt;
  ClaimHabit habit;
  Pose neutral = scenario.pose();
  for (const JointIndex joint : site.joints) neutral[joint].setZero();
  habit.undeflected = claimedReading(scenario, site, claim, neutral);
  habit.undeflectedShows = missingOf(claim, habit.undeflected) <= kSameReading;
  habit.extendedPose = ExtendedNeck(scenario, site, verdict).from(neutral);
  habit.extended = claimedReading(scenario, site, claim, habit.extendedPose);
  habit.extendedShows = missingOf(claim, habit.extended) <= kSameReading;
  if (scenario.contact()) habit.extendedCollides = MovedPairs(scenario, site).collide(habit.extendedPose);
  constexpr double kSame = 1e-6;  // m or rad
  if (verdict.best && std::abs(*verdict.best - habit.undeflected) > kSame)
    habit.share = (claim.value - habit.undeflected) / (*verdict.best - habit.undeflected);
  return habit;
}

}  // namespace zyga::study
