#pragma once

#include "core/study/claims/claim_answer.h"
#include "core/study/claims/claim_site.h"

namespace zyga::study {

/// What a claim would take, and asking stops when told so.
struct ClaimNeeds {
  std::optional<double> leastOverlap;                   ///< share
  std::optional<double> leastCartilage, mostCartilage;  ///< %
  bool cancelled = false;
};

/// Overlap by bisection, as a looser rule never takes support away. Cartilage by steps, then bisection at both ends of
/// the first run that is supported: it turns the neck up, which serves some claims and harms others.
ClaimNeeds claimNeeds(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                      const range::Assumptions& assumptions, const kinematics::Pose& pose, const ClaimSite& site,
                      const Claim& claim, const ClaimOptions& options);

}  // namespace zyga::study
