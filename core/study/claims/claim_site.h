#pragma once

#include "core/range/scenario.h"
#include "core/study/claims/claim.h"
#include "core/study/reach/extremes.h"
#include "core/study/reach/sagittal_chain.h"

namespace zyga::study {

// What a specimen lacks that a claim is measured on.
inline constexpr reason::Id kClaimNeedsSkull{"claim.no-skull", 0};
inline constexpr reason::Id kClaimNeedsNeck{"claim.no-neck", 0};
inline constexpr reason::Id kClaimNeedsFiveCaudals{"claim.no-five-caudals", 0};
inline constexpr reason::Id kClaimNeedsForefeet{"claim.no-forefeet", 0};
/// The vertebra lacks what the definition of horizontal in use asks for; its id.
inline constexpr reason::Id kClaimNeedsHorizontal{"claim.no-horizontal", 1};

/// What a claim is measured on in one animal as it stands: which joints may bend, which bones tell, and where "ahead"
/// begins. It hangs on the trunk and limbs alone, not on the joints that bend.
struct ClaimSite {
  reason::Reason missing;  ///< why nothing can be measured; empty when all is there
  Chain chain = Chain::Neck;
  std::vector<kinematics::JointIndex> joints;     ///< those that bend, root side first
  std::vector<kinematics::BoneIndex> carried;     ///< all bones that move with them
  std::vector<kinematics::JointIndex> notJudged;  ///< of the chain, but not assessed: they stay
  CarriedSpan span;                               ///< of snouts: from the world's origin to the snout
  /// Level unit direction in which the span of a slope runs: forwards, or backwards for the tail.
  Eigen::Vector3d heading_W = Eigen::Vector3d::UnitX();
  /// On the ground below the foremost forefoot that stands (or below the foremost, where none does), m, and the level
  /// direction that is ahead.
  Eigen::Vector3d p_WForefeet = Eigen::Vector3d::Zero();
  Eigen::Vector3d ahead_W = Eigen::Vector3d::UnitX();

  /// The point of a claim on the ground or in the air, m.
  Eigen::Vector3d pointAt(double ahead, double height) const {
    return p_WForefeet + ahead * ahead_W + height * Eigen::Vector3d::UnitZ();
  }
};

/// What a claim that is no point says of its span (m, in the world): the height of its end, m, or its slope, rad.
double readingOf(const Claim& claim, const ClaimSite& site, const Eigen::Vector3d& span_W);
/// What such a reading lacks of the claimed value, m or rad: not above 0 where it is as claimed.
double missingOf(const Claim& claim, double reading);
/// Readings that differ by less are the same, m or rad.
inline constexpr double kSameReading = 1e-9;

/// How deep the bones that the bending joints carry lie in the ground, by their landmarks, m; 0 over it.
double depthInGround(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const ClaimSite& site);

ClaimSite siteOf(const range::Scenario& scenario, const Claim& claim);

/// The joints on which the foremost three dorsals turn (D3 on D4, D2 on D3, D1 on D2), root side first: those that
/// something judges.
std::vector<kinematics::JointIndex> foremostDorsals(const range::Scenario& scenario);

}  // namespace zyga::study
