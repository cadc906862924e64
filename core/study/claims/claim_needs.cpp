#include "core/study/claims/claim_needs.h"

#include <algorithm>

#include "core/range/neutral.h"
#include "core/study/claims/claim_trial.h"

namespace zyga::study {
namespace {

constexpr double kOverlapPrecision = 1e-4;    // share
constexpr double kCartilagePrecision = 0.01;  // %
constexpr double kCartilageStep = 2.5;        // %
constexpr std::size_t kAbout = 45;            // questions, for the progress

class Asking {
 public:
  Asking(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
         const range::Assumptions& assumptions, const kinematics::Pose& pose, const ClaimSite& site, const Claim& claim,
         const ClaimOptions& options)
      : specimen_(specimen),
        articulation_(articulation),
        assumptions_(assumptions),
        pose_(pose),
        site_(site),
        claim_(claim),
        options_(options) {}

  bool cancelled() const { return options_.cancel && *options_.cancel; }

  bool withOverlap(double share) {
    range::Assumptions assumptions = assumptions_;
    assumptions.leastOverlap = share;
    return supported(articulation_, assumptions);
  }

  /// Only the part that bends gets other cartilage: the rest stands as it is posed.
  bool withCartilage(double percent) {
    const range::Cartilage cartilage{range::Cartilage::In::PercentOfCentrum, percent};
    range::Assumptions assumptions = assumptions_;
    (site_.chain == Chain::Neck ? assumptions.neck : assumptions.tail) = cartilage;
    kinematics::Articulation articulation = articulation_;
    for (const kinematics::JointIndex joint : specimen_.chainTo(site_.span.to)) {
      const anatomy::Joint& j = specimen_[joint];
      if (assumptions.cartilageOf(j.region) == assumptions_.cartilageOf(j.region)) continue;
      const double thickness = assumptions.cartilageOf(j.region).thickness(j);
      articulation.rests[joint.value] = range::articulate(specimen_, joint, thickness, assumptions.neutralBy);
    }
    return supported(articulation, assumptions);
  }

 private:
  bool supported(const kinematics::Articulation& articulation, const range::Assumptions& assumptions) {
    if (cancelled()) return false;
    if (options_.progress) options_.progress(std::min(++asked_, kAbout), kAbout);
    return claimTrial(specimen_, articulation, assumptions, pose_, site_, claim_)->supported();
  }

  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  const range::Assumptions& assumptions_;
  const kinematics::Pose& pose_;
  const ClaimSite& site_;
  const Claim& claim_;
  const ClaimOptions& options_;
  std::size_t asked_ = 0;
};

/// Between a value that holds and one that fails; the last that holds.
template <class Holds>
double bisect(double holds, double fails, double precision, const Holds& holdsAt) {
  while (std::abs(fails - holds) > precision) {
    const double middle = (holds + fails) / 2;
    (holdsAt(middle) ? holds : fails) = middle;
  }
  return holds;
}

std::optional<double> overlapNeed(Asking& asking) {
  const auto holds = [&](double share) { return asking.withOverlap(share); };
  if (!holds(0)) return std::nullopt;
  if (holds(1)) return 1;
  return bisect(0, 1, kOverlapPrecision, holds);
}

void cartilageNeed(Asking& asking, ClaimNeeds& needs) {
  const auto holds = [&](double percent) { return asking.withCartilage(percent); };
  double least = 0;
  while (least <= kMostCartilage && !holds(least)) least += kCartilageStep;
  if (least > kMostCartilage) return;
  double most = least;
  while (most < kMostCartilage && holds(most + kCartilageStep)) most += kCartilageStep;
  needs.leastCartilage = least == 0 ? 0 : bisect(least, least - kCartilageStep, kCartilagePrecision, holds);
  needs.mostCartilage =
      most >= kMostCartilage ? kMostCartilage : bisect(most, most + kCartilageStep, kCartilagePrecision, holds);
}

}  // namespace

ClaimNeeds claimNeeds(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                      const range::Assumptions& assumptions, const kinematics::Pose& pose, const ClaimSite& site,
                      const Claim& claim, const ClaimOptions& options) {
  Asking asking(specimen, articulation, assumptions, pose, site, claim, options);
  ClaimNeeds needs;
  needs.leastOverlap = overlapNeed(asking);
  cartilageNeed(asking, needs);
  needs.cancelled = asking.cancelled();
  return needs;
}

}  // namespace zyga::study
