#pragma once

#include <memory>

#include "core/study/claims/claim_site.h"
#include "core/task/task.h"

namespace zyga::study {

/// What one set of assumptions says of a claim, in numbers.
struct ClaimVerdict {
  bool supported = false;
  /// The best value in the claim's favour, m or rad; none where a reach has no such value, or where a joint has no
  /// supported angle at all. See ClaimAnswer::best.
  std::optional<double> best;
  double shortBy = 0;          ///< what the nearest pose lacks, m or rad; 0 when supported
  bool throughGround = false;  ///< a point is reached only by going through the ground; shortBy is how deep, m
  kinematics::Pose pose;       ///< one that shows it with the least bend, or the nearest there is
  std::vector<kinematics::StoppingJoint> stopping;  ///< worst first; empty when supported
  std::vector<SagittalChain::Link> impossible;      ///< joints without a supported angle
  std::vector<SagittalChain::Link> links;           ///< every joint that bends, with the ends of its range
};

/// How a claim is tried beside the criteria of the scenario's joints.
struct TrialWays {
  /// What each joint supports, in the place of its criteria alone; it may only be less than those allow.
  RangeOfJoint ranges = {};
  /// The present pose may show the claim as it is, where its joints are within range.
  bool asPosed = true;
  /// `ranges` may also be more than the criteria allow, and hold alone.
  bool rangesAlone = false;
  /// Points: a pose near to the one that comes nearest to it, such as that of a similar animal. supported() asks there
  /// first whether the point lies farther out than the chain goes that way, and makes no search where it does.
  const kinematics::Pose* near = nullptr;
};

/// A claim put to the bones of one scenario. Refers to the scenario, site and claim it was made from; one thread at a
/// time may use it.
class ClaimTrial {
 public:
  virtual ~ClaimTrial() = default;
  /// Whether the claim is supported, without the search for the best value and the pose: much faster than verdict().
  virtual bool supported() const = 0;
  /// Where the task is cancelled it ends early, and the verdict must not be used.
  virtual ClaimVerdict verdict(const task::Task& task) const = 0;
  /// Some poses that show the claim, the least bent first; none where it is not supported.
  virtual std::vector<kinematics::Pose> poses() const = 0;
  /// The pose that goes farthest in the claim's favour; of points the easiest way there, or the nearest. None where a
  /// joint has no supported angle.
  virtual std::optional<kinematics::Pose> farthest() const = 0;
};

/// `site` as siteOf gives it, with nothing missing. Heights and slopes are decided by one direction, in which the chain
/// goes as far as it can; points (isPoint) by bringing the snout there.
std::unique_ptr<ClaimTrial> claimTrial(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim,
                                       const TrialWays& ways = {});

}  // namespace zyga::study
