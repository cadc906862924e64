#include <algorithm>
#include <cmath>

#include "core/range/reach_ranges.h"
#include "core/study/claims/claim_trial.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using kinematics::Pose;
using kinematics::Reached;

/// A claimed pose may press so far into soft ground, m. Author's choice.
constexpr double kInGround = 0.05;

class PointTrial final : public ClaimTrial {
 public:
  PointTrial(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
             const range::Assumptions& assumptions, const Pose& pose, const ClaimSite& site, const Claim& claim)
      : specimen_(specimen),
        articulation_(articulation),
        assumptions_(assumptions),
        present_(pose),
        site_(site),
        claim_(claim),
        ranges_(specimen, articulation, assumptions),
        chain_(specimen, articulation, assumptions, site.joints, site.span, pose) {}

  bool supported() const override { return chain_.supported() && (shownAsPosed() || reachedAt(claim_.value).there()); }

  ClaimVerdict verdict(const std::atomic<bool>* cancel) const override {
    ClaimVerdict verdict;
    verdict.pose = chain_.home();
    for (const auto& link : chain_.links()) {
      if (!link.trouble.empty()) verdict.impossible.push_back(link);
    }
    if (!verdict.impossible.empty()) return verdict;
    Way way = reachedAt(claim_.value);
    verdict.supported = way.there() || shownAsPosed();
    verdict.pose = shownAsPosed() ? present_ : way.reached.pose;
    if (!verdict.supported) {
      verdict.throughGround = way.reached.reached;
      verdict.shortBy = verdict.throughGround ? way.depth : way.reached.distance;
      verdict.stopping = std::move(way.reached.stopping);
    }
    verdict.best = verdict.supported ? farthestFrom(claim_.value, cancel) : nearestTo(claim_.value, cancel);
    return verdict;
  }

 private:
  /// How the snout gets to a point, and how deep in the ground neck or head then lie, m.
  struct Way {
    Reached reached;
    double depth = 0;
    bool there() const { return reached.reached && depth <= kInGround; }
  };

  /// Where the snout goes for a value of the claim: so far ahead on the ground, or so high at the claim's distance.
  Vector3d pointFor(double value) const {
    return claim_.kind == ClaimKind::SnoutToGround ? site_.pointAt(value, 0) : site_.pointAt(claim_.ahead, value);
  }

  /// What counts is where the snout is as seen from the side.
  Vector3d left_W() const { return Vector3d::UnitZ().cross(site_.ahead_W); }

  bool shownAsPosed() const {
    Vector3d miss = pointFor(claim_.value) - chain_.spanOf(present_);
    miss -= left_W() * left_W().dot(miss);
    return miss.norm() <= kinematics::kReachedWithin &&
           holdsAsPosed(specimen_, articulation_, assumptions_, present_, site_);
  }

  double depthOf(const Pose& pose) const {
    return depthInGround(specimen_, kinematics::place(specimen_, articulation_, pose), site_);
  }

  /// Where the easiest way leads through the ground, the head held steeper may bring the neck over it.
  Way reachedAt(double value) const {
    Way best{kinematics::reach(specimen_, articulation_, ranges_, chain_.home(), wishFor(value))};
    best.depth = depthOf(best.reached.pose);
    if (!best.reached.reached) return best;
    for (const double down : {0.5, 1.0, 1.4, 1.8}) {  // rad
      if (best.there()) break;
      kinematics::Reach wish = wishFor(value);
      const Vector3d d_W = std::cos(down) * site_.ahead_W - std::sin(down) * Vector3d::UnitZ();
      wish.bearings.push_back({Vector3d::UnitX(), d_W});
      Way other{kinematics::reach(specimen_, articulation_, ranges_, chain_.home(), wish)};
      other.depth = depthOf(other.reached.pose);
      if (other.reached.reached && other.depth < best.depth) best = std::move(other);
    }
    return best;
  }

  kinematics::Reach wishFor(double value) const {
    kinematics::Reach wish;
    wish.joints = site_.joints;
    wish.motions = {true, false, false};
    wish.bone = site_.span.to;
    wish.p_BPoint = site_.span.p_To;
    wish.p_WTarget = pointFor(value);
    wish.alongLine_W = left_W();
    return wish;
  }

  /// Between a value that is reached and one that is not, to a centimetre; the last that is.
  double boundary(double reached, double missed, const std::atomic<bool>* cancel) const {
    constexpr double kFine = 0.005;  // m
    while (std::abs(missed - reached) > kFine && !(cancel && *cancel)) {
      const double middle = (reached + missed) / 2;
      (reachedAt(middle).there() ? reached : missed) = middle;
    }
    return reached;
  }

  /// No value farther than this from the neck's base can be reached, m.
  double length() const {
    double sum = 0;
    for (const auto joint : specimen_.chainTo(site_.span.to)) {
      sum += specimen_[joint].centreProximal.norm() + specimen_[joint].centreDistal.norm();
    }
    return sum + site_.span.p_To.norm();
  }

  /// The greatest value of all that hang together with one that is reached.
  double farthestFrom(double reached, const std::atomic<bool>* cancel) const {
    const double step = length() / 16;
    double missed = reached + step;
    for (int i = 0; i < 32 && !(cancel && *cancel) && reachedAt(missed).there(); ++i) {
      reached = missed;
      missed += step;
    }
    return boundary(reached, missed, cancel);
  }

  /// The value nearest to one that is missed at which the snout gets there; none where it never does.
  std::optional<double> nearestTo(double missed, const std::atomic<bool>* cancel) const {
    constexpr int kSteps = 24;
    const double step = length() / kSteps;
    for (int i = 1; i <= kSteps; ++i) {
      for (const double value : {missed - i * step, missed + i * step}) {
        if (cancel && *cancel) return std::nullopt;
        // Nobody asks for a head below the ground.
        if (claim_.kind == ClaimKind::HeadAhead && value < -step) continue;
        if (!reachedAt(value).there()) continue;
        return boundary(value, value + (value < missed ? step : -step), cancel);
      }
    }
    return std::nullopt;
  }

  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  const range::Assumptions& assumptions_;
  const Pose& present_;
  const ClaimSite& site_;
  const Claim& claim_;
  range::ReachRanges ranges_;
  SagittalChain chain_;
};

}  // namespace

std::unique_ptr<ClaimTrial> pointTrial(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                       const range::Assumptions& assumptions, const Pose& pose, const ClaimSite& site,
                                       const Claim& claim) {
  return std::make_unique<PointTrial>(specimen, articulation, assumptions, pose, site, claim);
}

}  // namespace zyga::study
