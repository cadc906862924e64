#include "core/study/claims/claim_answer.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "core/range/reach_ranges.h"
#include "core/study/claims/claim_contact.h"
#include "core/study/claims/claim_trial.h"

namespace zyga::study {
namespace {

using kinematics::JointIndex;
using range::Scenario;

/// What contact has to do with a joint that is held at an end of its range; none where it has nothing.
std::optional<range::Stop> contactAtEnd(const ClaimVerdict& verdict, const kinematics::StoppingJoint& held) {
  constexpr double kAtEnd = 1e-3;  // rad
  for (const SagittalChain::Link& link : verdict.links) {
    if (link.joint != held.joint || held.push[0] == 0) continue;
    const bool up = held.push[0] > 0;
    const range::Stop& stop = up ? link.maxStop : link.minStop;
    const bool there = std::abs(verdict.pose[link.joint][0] - (up ? link.max : link.min)) < kAtEnd;
    if (there && stop.kind == range::FindingKind::BoneContact) return stop;
  }
  return std::nullopt;
}

void addStops(const Scenario& scenario, const ClaimVerdict& verdict, ClaimAnswer& answer) {
  const range::ReachRanges ranges(scenario.specimen(), scenario.articulation(), scenario.assumptions());
  for (const auto& held : verdict.stopping) {
    range::JointStop stop = ranges.stopOf(verdict.pose, held);
    if (const auto contact = contactAtEnd(verdict, held)) stop.stop = *contact;
    answer.stopping.push_back({held.joint, held.share, std::move(stop), false});
  }
}

bool byContact(const SagittalChain::Link& link) { return link.trouble->kind == range::FindingKind::BoneContact; }

void addNotAnswered(const ClaimVerdict& verdict, ClaimAnswer& answer) {
  const auto count = std::count_if(verdict.impossible.begin(), verdict.impossible.end(),
                                   [](const SagittalChain::Link& link) { return !byContact(link); });
  for (const SagittalChain::Link& link : verdict.impossible)
    if (!byContact(link))
      answer.notAnswered.push_back(
          {link.joint, 1.0 / static_cast<double>(count), {link.joint, 0, 1, 0, *link.trouble}, true});
}

/// Puts a claim to bones that may collide. `ranges`: of each joint with contact of its own bones; `bare`: without.
class ContactTrial {
 public:
  ContactTrial(const Scenario& scenario, const ClaimSite& site, const Claim& claim, RangeOfJoint ranges,
               const TrialWays& bare = {})
      : scenario_(scenario),
        site_(site),
        claim_(claim),
        ranges_(std::move(ranges)),
        bare_(claimTrial(scenario, site, claim, bare)) {}

  /// The verdict with the ranges that contact leaves, supported where a pose was found in which no bones collide. Where
  /// contact leaves a joint no angle at all, that of the criteria alone, supported by nothing.
  ClaimVerdict verdict(const task::Task& task, ClaimContact& contact) const {
    contact.judged = true;
    ClaimVerdict verdict = clear().trial().verdict(task);
    const bool lacksRange = std::any_of(verdict.impossible.begin(), verdict.impossible.end(),
                                        [](const SagittalChain::Link& link) { return !byContact(link); });
    if (lacksRange || task.cancelled()) return verdict;
    if (!verdict.impossible.empty()) verdict = bare_->verdict(task);
    if (auto pose = clearPose()) return shownBy(*std::move(pose), std::move(verdict), task);
    const std::vector<kinematics::Pose> colliding = bare_->poses();
    contact.onlyColliding = !colliding.empty();
    // The first one has the least bend.
    contact.findings = collisionsOf(scenario_, site_, colliding.empty() ? verdict.pose : colliding.front());
    verdict.supported = false;
    return verdict;
  }

  bool supported() const { return bare_->supported() && clearPose(); }

 private:
  std::optional<kinematics::Pose> clearPose() const {
    for (const ClaimTrial* trial : {&clear().trial(), static_cast<const ClaimTrial*>(bare_.get())})
      for (kinematics::Pose& pose : trial->poses())
        if (!clear().pairs().collide(pose)) return std::move(pose);
    return std::nullopt;
  }

  ClaimVerdict shownBy(kinematics::Pose pose, ClaimVerdict verdict, const task::Task& task) const {
    // The ranges that contact leaves may lack what lies past a place where bones brush each other.
    if (!verdict.supported) verdict = bare_->verdict(task);
    verdict.pose = std::move(pose);
    return verdict;
  }

  /// The ranges that contact leaves cost much more to find than those of the criteria.
  const ClearRanges& clear() const {
    if (!clear_) clear_ = std::make_unique<ClearRanges>(scenario_, site_, claim_, ranges_);
    return *clear_;
  }

  const Scenario& scenario_;
  const ClaimSite& site_;
  const Claim& claim_;
  RangeOfJoint ranges_;
  std::unique_ptr<ClaimTrial> bare_;
  mutable std::unique_ptr<ClearRanges> clear_;
};

/// What a person should know about the pose that is shown.
void lookAround(const Scenario& scenario, const ClaimSite& site, ClaimAnswer& answer) {
  const anatomy::Specimen& specimen = scenario.specimen();
  answer.joints = site.joints.size();
  answer.notJudged = site.notJudged;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const JointIndex joint{j};
    const range::Level level =
        range::levelAt(specimen, scenario.articulation(), scenario.assumptions(), joint, answer.pose[joint]);
    const bool bends = std::find(site.joints.begin(), site.joints.end(), joint) != site.joints.end();
    if (bends && level == range::Level::Near) answer.nearEdge.push_back(joint);
    if (!bends && level == range::Level::Beyond) answer.elsewhereBeyond.push_back(joint);
  }
  constexpr double kSeen = 0.005;  // m
  const double depth =
      depthInGround(specimen, kinematics::forwardKinematics(specimen, scenario.articulation(), answer.pose), site);
  if (depth > kSeen) answer.inGround = depth;
}

/// Puts a claim to the bones under other assumptions, and tells how far the questions have come.
class OtherAssumptions {
 public:
  OtherAssumptions(const Scenario& scenario, const ClaimSite& site, const Claim& claim, const task::Task& task)
      : scenario_(scenario), site_(site), claim_(claim), task_(task), straight_(straightened(scenario, site)) {
    if (!scenario.contact()) return;
    range::Assumptions widest = scenario.assumptions();
    widest.minOverlap = 0;
    ends_ = ContactEnds(scenario, site, widest);
  }

  bool supportedWithOverlap(double share) {
    range::Assumptions assumptions = scenario_.assumptions();
    assumptions.minOverlap = share;
    return supported(assumptions);
  }
  /// Only the part that bends gets other cartilage: the rest stands as it is posed.
  bool supportedWithCartilage(double percent) {
    range::Assumptions assumptions = scenario_.assumptions();
    (site_.chain == Chain::Neck ? assumptions.neck : assumptions.tail) = {range::Cartilage::In::PercentOfCentrum,
                                                                          percent};
    return supported(assumptions);
  }

  /// With the range of every joint that bends wider by so much at both ends, rad; narrower where negative. The pose as
  /// it stands shows nothing here: what soft tissue leaves of a combination of motions is not known.
  bool supportedWidened(double by) {
    if (!asks()) return false;
    const RangeOfJoint bare = [&](JointIndex joint) { return widened(rangeOf(joint), by); };
    const TrialWays ways{bare, true, by > 0};
    if (!scenario_.contact()) return claimTrial(straight_, site_, claim_, ways)->supported();
    const RangeOfJoint ranges = [&](JointIndex joint) {
      return ends_.cut(scenario_.specimen(), scenario_.articulation(), joint, bare(joint));
    };
    return ContactTrial(straight_, site_, claim_, ranges, ways).supported();
  }

 private:
  static Scenario straightened(const Scenario& scenario, const ClaimSite& site) {
    kinematics::Pose pose = scenario.pose();
    for (const JointIndex joint : site.joints) pose[joint].setZero();
    return scenario.withPose(pose);
  }

  /// Of the criteria alone, each found once.
  const range::MotionRange& rangeOf(JointIndex joint) {
    std::optional<range::MotionRange>& known = ranges_[joint.value];
    if (!known)
      known = range::motionRange(scenario_.specimen(), scenario_.articulation(), scenario_.assumptions(), joint,
                                 Eigen::Vector3d::Zero(), 0);
    return *known;
  }

  /// False where the task is cancelled.
  bool asks() {
    constexpr int kAbout = 50;  // questions in all
    if (task_.cancelled()) return false;
    task_.tell(std::min(1.0, static_cast<double>(++asked_) / kAbout));
    return true;
  }

  bool supported(const range::Assumptions& assumptions) {
    if (!asks()) return false;
    const Scenario other = scenario_.withAssumptions(assumptions);
    if (!other.contact()) return claimTrial(other, site_, claim_)->supported();
    // Where contact ends the range of a joint is not searched anew: cartilage only takes its bones farther apart.
    const RangeOfJoint ranges = [&](JointIndex joint) {
      return ends_.cut(other.specimen(), other.articulation(), joint,
                       range::motionRange(other.specimen(), other.articulation(), other.assumptions(), joint,
                                          Eigen::Vector3d::Zero(), 0));
    };
    return ContactTrial(other, site_, claim_, ranges).supported();
  }

  const Scenario& scenario_;
  const ClaimSite& site_;
  const Claim& claim_;
  const task::Task& task_;
  Scenario straight_;  ///< the joints that bend at neutral
  std::map<std::size_t, std::optional<range::MotionRange>> ranges_;
  ContactEnds ends_;
  int asked_ = 0;
};

/// Between a value that holds and one that fails; the last that holds.
template <class Holds>
double bisected(double holds, double fails, double precision, const Holds& holdsAt) {
  while (std::abs(fails - holds) > precision) {
    const double middle = (holds + fails) / 2;
    (holdsAt(middle) ? holds : fails) = middle;
  }
  return holds;
}

/// By bisection, as a looser rule never takes support away.
std::optional<double> overlapNeeded(OtherAssumptions& other) {
  constexpr double kPrecision = 1e-4;  // share
  const auto holds = [&](double share) { return other.supportedWithOverlap(share); };
  if (!holds(0)) return std::nullopt;
  if (holds(1)) return 1;
  return bisected(0, 1, kPrecision, holds);
}

/// By steps, then bisection at both ends of the first run that is supported: cartilage turns the neck up, which serves
/// some claims and harms others.
void askCartilage(OtherAssumptions& other, ClaimAnswer& answer) {
  constexpr double kPrecision = 0.01, kStep = 2.5;  // %
  const auto holds = [&](double percent) { return other.supportedWithCartilage(percent); };
  double least = 0;
  while (least <= kMaxCartilage && !holds(least)) least += kStep;
  if (least > kMaxCartilage) return;
  double most = least;
  while (most < kMaxCartilage && holds(most + kStep)) most += kStep;
  answer.minCartilage = least == 0 ? 0 : bisected(least, least - kStep, kPrecision, holds);
  answer.mostCartilage = most >= kMaxCartilage ? kMaxCartilage : bisected(most, most + kStep, kPrecision, holds);
}

}  // namespace

std::optional<ClaimAnswer> answerClaim(const Scenario& scenario, const Claim& claim, const ClaimOptions& options,
                                       const task::Task& task) {
  ClaimAnswer answer;
  answer.pose = scenario.pose();
  const ClaimSite site = siteOf(scenario, claim);
  answer.unanswerable = !site.missing.empty() ? site.missing : validate(claim);
  if (!answer.unanswerable.empty()) return answer;
  answer.tally = range::tallyOf(scenario.specimen(), site.joints);
  const RangeOfJoint ranges = rangesWithContact(scenario);
  const ClaimVerdict verdict = scenario.contact()
                                   ? ContactTrial(scenario, site, claim, ranges).verdict(task, answer.contact)
                                   : claimTrial(scenario, site, claim)->verdict(task);
  if (task.cancelled()) return std::nullopt;
  addNotAnswered(verdict, answer);
  answer.supported = verdict.supported;
  answer.best = verdict.best;
  answer.shortBy = verdict.shortBy;
  answer.throughGround = verdict.throughGround;
  answer.pose = verdict.pose;
  addStops(scenario, verdict, answer);
  lookAround(scenario, site, answer);
  if (options.needs) {
    OtherAssumptions other(scenario, site, claim, task);
    answer.minOverlap = overlapNeeded(other);
    askCartilage(other, answer);
    if (answer.answered())
      answer.margin = marginOf(answer.supported, [&](double by) { return other.supportedWidened(by); });
  }
  if (options.beside) {
    answer.dorsals = withDorsals(scenario, site, claim, verdict, ranges, task);
    answer.habit = habitOf(scenario, site, claim, verdict);
  }
  if (task.cancelled()) return std::nullopt;
  return answer;
}

}  // namespace zyga::study
