#pragma once

#include <atomic>
#include <memory>

#include "core/study/claims/claim_site.h"

namespace zyga::study {

/// What one set of assumptions says of a claim, in numbers.
struct ClaimVerdict {
  bool supported = false;
  /// The most that is supported in the claim's favour, m or rad; none where a reach has no such value, or where a joint
  /// has no supported angle at all. See ClaimAnswer::best.
  std::optional<double> best;
  double shortBy = 0;          ///< what the nearest pose lacks, m or rad; 0 when supported
  bool throughGround = false;  ///< a point is reached only by going through the ground; shortBy is how deep, m
  kinematics::Pose pose;       ///< one that shows it with the least bend, or the nearest there is
  std::vector<kinematics::StoppingJoint> stopping;  ///< worst first; empty when supported
  std::vector<SagittalChain::Link> impossible;      ///< joints without a supported angle
};

/// A claim put to the bones under one set of assumptions. Refers to what it was made from; for one thread at a time.
class ClaimTrial {
 public:
  virtual ~ClaimTrial() = default;
  /// The answer alone, as fast as can be.
  virtual bool supported() const = 0;
  /// `cancel`, where given and set, ends it early with a verdict of no worth.
  virtual ClaimVerdict verdict(const std::atomic<bool>* cancel) const = 0;
};

/// `site` as siteOf gives it, lacking nothing.
std::unique_ptr<ClaimTrial> claimTrial(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                       const range::Assumptions& assumptions, const kinematics::Pose& pose,
                                       const ClaimSite& site, const Claim& claim);

/// The two kinds of trial: heights and slopes, that one direction decides; and points that a snout has to come to.
std::unique_ptr<ClaimTrial> spanTrial(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                      const range::Assumptions& assumptions, const kinematics::Pose& pose,
                                      const ClaimSite& site, const Claim& claim);
std::unique_ptr<ClaimTrial> pointTrial(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                       const range::Assumptions& assumptions, const kinematics::Pose& pose,
                                       const ClaimSite& site, const Claim& claim);

/// The joints of the site inside their ranges as the pose has them, all three angles.
bool holdsAsPosed(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                  const range::Assumptions& assumptions, const kinematics::Pose& pose, const ClaimSite& site);

}  // namespace zyga::study
