#pragma once

#include <vector>

#include "core/range/evidence.h"
#include "core/range/findings.h"
#include "core/range/scenario.h"
#include "core/study/claims/claim.h"
#include "core/study/claims/claim_beside.h"
#include "core/study/claims/claim_margin.h"
#include "core/task/task.h"

namespace zyga::study {

struct ClaimOptions {
  /// Also ask what it would take: the overlap, the cartilage and the margin of all ranges at which the answer changes.
  bool needs = true;
  /// Also tell what stands beside the answer: what the foremost dorsals would give, and what is claimed in the postures
  /// that have been published as habitual.
  bool beside = true;
};

/// Cartilage is looked at up to this, % of the centrum's length: well past the most that is known of living necks
/// (juvenile giraffe 24 %, Taylor & Wedel 2013, PLoS ONE 8(10):e78214).
inline constexpr double kMaxCartilage = 40;

/// A joint that keeps a claim from being supported, and what holds it.
struct ClaimStop {
  kinematics::JointIndex joint;
  double share = 0;  ///< its part in it; all of them add up to 1
  range::JointStop stop;
  bool atNoAngle = false;  ///< the joint has no supported angle at all, for the reason of `stop`
};

/// What contact of bones says of a claim.
struct ClaimContact {
  bool judged = false;  ///< the scenario knows the shapes of its bones
  /// Poses within the ranges of the facets show the claim, but in all that were found bones collide.
  bool onlyColliding = false;
  /// The bones that collide, worst first: with onlyColliding in the pose with the least bend that would show the claim;
  /// else in the pose that is shown, moved against each other by the joints that bend.
  std::vector<range::ContactFinding> findings;
};

/// What the bones say of a claim.
struct ClaimAnswer {
  reason::Reason unanswerable;  ///< what the specimen lacks or the claim has wrong; empty where there is an answer
  bool supported = false;
  /// Of heights and slopes the highest (or lowest) that is supported; of the tail the slope nearest to level. Of
  /// points: where supported, how far ahead, or how high, the snout still gets; else the nearest value at which it
  /// would. m or rad; none where there is no such value.
  std::optional<double> best;
  double shortBy = 0;          ///< what the nearest pose lacks, m or rad; 0 when supported
  bool throughGround = false;  ///< a point is reached only with neck or head in the ground; shortBy is how deep
  kinematics::Pose pose;       ///< shows the claim with the least bend, every joint by the same share; or the nearest
  std::vector<ClaimStop> stopping;  ///< worst first; empty when supported

  /// The assumption "minimum overlap" at and below which the claim is supported, all else as it is, share; none where
  /// no value does.
  std::optional<double> minOverlap;
  /// The minimum cartilage in the part that bends (neck or tail) at which it is supported, all else as it is, % of the
  /// centrum's length, and the maximum up to which it then stays so; none where no value up to kMaxCartilage does.
  std::optional<double> minCartilage, mostCartilage;

  std::size_t joints = 0;                               ///< how many may bend
  std::vector<kinematics::JointIndex> nearEdge;         ///< of those, near the limit of their range in `pose`
  std::vector<kinematics::JointIndex> notJudged;        ///< of the neck or tail, not assessed: they stay as posed
  std::vector<kinematics::JointIndex> elsewhereBeyond;  ///< out of range in what stays as posed
  double inGround = 0;                                  ///< how deep neck, head or tail lie in the ground in `pose`, m

  /// Joints that bend but have no supported angle at all: the claim is neither supported nor refuted.
  std::vector<ClaimStop> notAnswered;
  ClaimContact contact;
  range::EvidenceTally tally;  ///< what the joints that bend rest on

  std::optional<ClaimMargin> margin;    ///< none where it was not asked for or the claim is not answered
  std::optional<ClaimDorsals> dorsals;  ///< of claims on neck and head where something judges those joints
  std::optional<ClaimHabit> habit;      ///< of heights and slopes of neck and head

  bool answered() const { return unanswerable.empty() && notAnswered.empty(); }
};

/// Asks the bones about a claim. Trunk, limbs and feet stay as the scenario has them; neck and head, or the tail's
/// base, bend up and down only, each joint inside its range. Points are reached over the ground; heights and slopes do
/// not ask for it. Where the scenario has its contact model, contact of bones ends ranges as well, and a claim is
/// supported only by a pose in which no bones collide that the bending joints move against each other; a few poses that
/// show it are tried. The same input gives the same answer to the bit. None when the task was cancelled. Some
/// milliseconds for heights and slopes, up to a second or two for points and with contact.
std::optional<ClaimAnswer> answerClaim(const range::Scenario& scenario, const Claim& claim,
                                       const ClaimOptions& options = {}, const task::Task& task = {});

}  // namespace zyga::study
