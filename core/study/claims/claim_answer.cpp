#include "core/study/claims/claim_answer.h"

#include <algorithm>
#include <cmath>

#include "core/range/reach_ranges.h"
#include "core/study/claims/claim_trial.h"

namespace zyga::study {
namespace {

using kinematics::JointIndex;
using range::Scenario;

void addStops(const Scenario& scenario, const ClaimVerdict& verdict, ClaimAnswer& answer) {
  const range::ReachRanges ranges(scenario.specimen(), scenario.articulation(), scenario.assumptions());
  for (const auto& held : verdict.stopping)
    answer.stopping.push_back({held.joint, held.share, ranges.stopOf(verdict.pose, held), false});
  for (const SagittalChain::Link& link : verdict.impossible) {
    const double share = 1.0 / static_cast<double>(verdict.impossible.size());
    answer.stopping.push_back({link.joint, share, {link.joint, 0, 1, 0, *link.trouble}, true});
  }
}

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
      : scenario_(scenario), site_(site), claim_(claim), task_(task) {}

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

 private:
  bool supported(const range::Assumptions& assumptions) {
    constexpr int kAbout = 45;  // questions in all
    if (task_.cancelled()) return false;
    task_.tell(std::min(1.0, static_cast<double>(++asked_) / kAbout));
    const Scenario other = scenario_.withAssumptions(assumptions);
    return claimTrial(other, site_, claim_)->supported();
  }

  const Scenario& scenario_;
  const ClaimSite& site_;
  const Claim& claim_;
  const task::Task& task_;
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
  ClaimVerdict verdict = claimTrial(scenario, site, claim)->verdict(task);
  if (task.cancelled()) return std::nullopt;
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
  }
  if (task.cancelled()) return std::nullopt;
  return answer;
}

}  // namespace zyga::study
