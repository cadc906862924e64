#include "core/study/claims/claim_answer.h"

#include <algorithm>

#include "core/range/findings.h"
#include "core/range/reach_ranges.h"
#include "core/study/claims/claim_needs.h"
#include "core/study/claims/claim_trial.h"

namespace zyga::study {
namespace {

using kinematics::JointIndex;

void addStops(const anatomy::Specimen& specimen, const range::ReachRanges& ranges, const ClaimVerdict& verdict,
              ClaimAnswer& answer) {
  for (const auto& stop : verdict.stopping)
    answer.stopping.push_back({stop.joint, stop.share, ranges.stopWords(verdict.pose, stop)});
  for (const auto& link : verdict.impossible) {
    const double share = 1.0 / static_cast<double>(verdict.impossible.size());
    answer.stopping.push_back({link.joint, share, specimen[link.joint].id + " at no angle: " + link.trouble});
  }
}

/// What a person should know about the pose that is shown.
void lookAround(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                const range::Assumptions& assumptions, const ClaimSite& site, ClaimAnswer& answer) {
  answer.joints = site.joints.size();
  answer.notJudged = site.notJudged;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const JointIndex joint{j};
    const range::Level level = range::levelAt(specimen, articulation, assumptions, joint, answer.pose[joint]);
    const bool bends = std::find(site.joints.begin(), site.joints.end(), joint) != site.joints.end();
    if (bends && level == range::Level::Near) answer.nearEdge.push_back(joint);
    if (!bends && level == range::Level::Beyond) answer.elsewhereBeyond.push_back(joint);
  }
  constexpr double kSeen = 0.005;  // m
  const double depth = depthInGround(specimen, kinematics::place(specimen, articulation, answer.pose), site);
  if (depth > kSeen) answer.inGround = depth;
}

}  // namespace

ClaimAnswer answerClaim(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                        const range::Assumptions& assumptions, const kinematics::Pose& pose, const Claim& claim,
                        const ClaimOptions& options) {
  ClaimAnswer answer;
  answer.pose = pose;
  const ClaimSite site = siteOf(specimen, articulation, pose, claim);
  answer.unanswerable = !site.lacking.empty() ? site.lacking : faultOf(claim);
  if (!answer.unanswerable.empty()) return answer;
  ClaimVerdict verdict = claimTrial(specimen, articulation, assumptions, pose, site, claim)->verdict(options.cancel);
  answer.supported = verdict.supported;
  answer.best = verdict.best;
  answer.shortBy = verdict.shortBy;
  answer.throughGround = verdict.throughGround;
  answer.pose = verdict.pose;
  addStops(specimen, range::ReachRanges(specimen, articulation, assumptions), verdict, answer);
  lookAround(specimen, articulation, assumptions, site, answer);
  if (options.needs) {
    const ClaimNeeds needs = claimNeeds(specimen, articulation, assumptions, pose, site, claim, options);
    answer.leastOverlap = needs.leastOverlap;
    answer.leastCartilage = needs.leastCartilage;
    answer.mostCartilage = needs.mostCartilage;
  }
  answer.cancelled = options.cancel && *options.cancel;
  return answer;
}

}  // namespace zyga::study
