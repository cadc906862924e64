#include <algorithm>
#include <cmath>

#include "core/range/findings.h"
#include "core/study/claims/claim_trial.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using kinematics::Pose;

constexpr double kEqual = 1e-9;  // m or rad
constexpr int kShares = 64;      // looked at between the present pose and the extreme

class SpanTrial final : public ClaimTrial {
 public:
  SpanTrial(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
            const range::Assumptions& assumptions, const Pose& pose, const ClaimSite& site, const Claim& claim)
      : specimen_(specimen),
        articulation_(articulation),
        assumptions_(assumptions),
        present_(pose),
        site_(site),
        claim_(claim),
        chain_(specimen, articulation, assumptions, site.joints, site.span, pose) {}

  bool supported() const override {
    if (!chain_.supported()) return false;
    return shownAsPosed() || satisfies(bestReading());
  }

  ClaimVerdict verdict(const std::atomic<bool>*) const override {
    ClaimVerdict verdict;
    verdict.pose = chain_.home();
    for (const auto& link : chain_.links()) {
      if (!link.trouble.empty()) verdict.impossible.push_back(link);
    }
    if (!verdict.impossible.empty()) return verdict;
    const Pose extreme = extremePose();
    verdict.best = bestReading(extreme);
    if (shownAsPosed()) {
      // A neck swung aside or twisted may show more than one that bends up and down only.
      if (missing(reading(present_)) < missing(*verdict.best)) verdict.best = reading(present_);
      verdict.supported = true;
      verdict.pose = present_;
      return verdict;
    }
    verdict.supported = satisfies(*verdict.best);
    if (verdict.supported) {
      verdict.pose = firstThatShows(extreme);
      return verdict;
    }
    verdict.pose = extreme;
    verdict.shortBy = missing(*verdict.best);
    verdict.stopping = chain_.holding(extreme, direction(reading(extreme)));
    return verdict;
  }

 private:
  bool isHeight() const { return claim_.kind == ClaimKind::HeadHeight; }
  bool isLevel() const { return claim_.kind == ClaimKind::TailBaseLevel; }

  /// Height of the span's end, m, or its slope, rad.
  double reading(const Pose& pose) const {
    const Vector3d span = chain_.spanOf(pose);
    return isHeight() ? span.z() : std::atan2(span.z(), span.dot(site_.heading_W));
  }

  /// 1 where more is wanted, -1 where less is.
  double wanted() const {
    if (isLevel()) return reading(chain_.home()) > 0 ? -1 : 1;
    return claim_.bound == Bound::AtLeast ? 1 : -1;
  }

  bool satisfies(double reading) const { return missing(reading) <= kEqual; }
  double missing(double reading) const {
    if (isLevel()) return std::abs(reading) - claim_.value;
    return claim_.bound == Bound::AtLeast ? claim_.value - reading : reading - claim_.value;
  }

  bool shownAsPosed() const {
    return satisfies(reading(present_)) && holdsAsPosed(specimen_, articulation_, assumptions_, present_, site_);
  }

  /// In which direction the span's end has to go to raise (or lower) the reading.
  Vector3d direction(double slope) const {
    if (isHeight()) return wanted() * Vector3d::UnitZ();
    return wanted() * (std::cos(slope) * Vector3d::UnitZ() - std::sin(slope) * site_.heading_W);
  }

  /// The greatest (or least) reading. A slope is at its greatest where nothing lies farther across its own direction:
  /// found by going across the slope that was reached before, until that brings no more (Dinkelbach 1967, Management
  /// Science 13:492).
  Pose extremePose() const {
    if (isHeight()) return chain_.farthest(direction(0));
    constexpr int kMostRounds = 60;
    Pose pose = chain_.home();
    double slope = reading(pose);
    for (int round = 0; round < kMostRounds; ++round) {
      Pose next = chain_.farthest(direction(slope));
      const double reached = reading(next);
      if (wanted() * (reached - slope) < 1e-10) break;
      pose = std::move(next);
      slope = reached;
    }
    return pose;
  }

  double bestReading() const { return bestReading(extremePose()); }
  double bestReading(const Pose& extreme) const {
    const double end = reading(extreme);
    if (!isLevel()) return end;
    // Level lies between the present slope and the extreme, or the extreme is nearest to it.
    const double home = reading(chain_.home());
    return (home > 0) != (end > 0) ? 0 : end;
  }

  Pose between(const Pose& extreme, double share) const {
    Pose pose = chain_.home();
    for (const auto& link : chain_.links())
      pose[link.joint][0] += share * (extreme[link.joint][0] - pose[link.joint][0]);
    return pose;
  }

  /// On the way to the extreme, every joint by the same share of its way, the first pose that shows the claim.
  Pose firstThatShows(const Pose& extreme) const {
    const auto shows = [&](double share) { return satisfies(reading(between(extreme, share))); };
    double fails = 0, holds = 1;
    if (shows(0)) return chain_.home();
    for (int i = 1; i <= kShares; ++i) {
      const double share = static_cast<double>(i) / kShares;
      if (shows(share)) {
        holds = share;
        break;
      }
      fails = share;
    }
    for (int i = 0; i < 40; ++i) {
      const double middle = (fails + holds) / 2;
      (shows(middle) ? holds : fails) = middle;
    }
    return between(extreme, holds);
  }

  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  const range::Assumptions& assumptions_;
  const Pose& present_;
  const ClaimSite& site_;
  const Claim& claim_;
  SagittalChain chain_;
};

}  // namespace

bool holdsAsPosed(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                  const range::Assumptions& assumptions, const Pose& pose, const ClaimSite& site) {
  return std::all_of(site.joints.begin(), site.joints.end(), [&](kinematics::JointIndex joint) {
    return range::levelAt(specimen, articulation, assumptions, joint, pose[joint]) != range::Level::Beyond;
  });
}

std::unique_ptr<ClaimTrial> spanTrial(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                      const range::Assumptions& assumptions, const Pose& pose, const ClaimSite& site,
                                      const Claim& claim) {
  return std::make_unique<SpanTrial>(specimen, articulation, assumptions, pose, site, claim);
}

std::unique_ptr<ClaimTrial> claimTrial(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                       const range::Assumptions& assumptions, const Pose& pose, const ClaimSite& site,
                                       const Claim& claim) {
  const bool point = claim.kind == ClaimKind::SnoutToGround || claim.kind == ClaimKind::HeadAhead;
  return (point ? pointTrial : spanTrial)(specimen, articulation, assumptions, pose, site, claim);
}

}  // namespace zyga::study
