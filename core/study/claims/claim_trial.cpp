#include "core/study/claims/claim_trial.h"

#include <algorithm>
#include <cmath>

#include "core/range/findings.h"
#include "core/range/reach_ranges.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using kinematics::IkResult;
using kinematics::JointIndex;
using kinematics::Pose;

/// The joints of the site inside their ranges as the scenario has them, all three angles.
bool withinRange(const range::Scenario& scenario, const ClaimSite& site) {
  return std::all_of(site.joints.begin(), site.joints.end(), [&](JointIndex joint) {
    return range::levelAt(scenario.specimen(), scenario.articulation(), scenario.assumptions(), joint,
                          scenario.pose()[joint]) != range::Level::Beyond;
  });
}

SagittalChain chainOf(const range::Scenario& scenario, const ClaimSite& site, const TrialWays& ways) {
  const anatomy::Specimen& specimen = scenario.specimen();
  if (ways.ranges) return {specimen, scenario.articulation(), site.joints, site.span, scenario.pose(), ways.ranges};
  return {specimen, scenario.articulation(), scenario.assumptions(), site.joints, site.span, scenario.pose()};
}

std::vector<SagittalChain::Link> impossibleIn(const SagittalChain& chain) {
  std::vector<SagittalChain::Link> impossible;
  for (const SagittalChain::Link& link : chain.links())
    if (link.trouble) impossible.push_back(link);
  return impossible;
}

constexpr int kShares = 64;  // looked at between the present pose and the extreme

class SpanTrial final : public ClaimTrial {
 public:
  SpanTrial(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim, const TrialWays& ways)
      : scenario_(scenario),
        present_(scenario.pose()),
        site_(site),
        claim_(claim),
        asPosed_(ways.asPosed),
        chain_(chainOf(scenario, site, ways)) {}

  bool supported() const override {
    if (!chain_.supported()) return false;
    if (shownAsPosed()) return true;
    if (isLevel()) return satisfies(bestReading());
    // A span is so high, or so steep, where it goes so far in one direction.
    if (isHeight()) return chain_.reaches(direction(0), claim_.value - kSameReading);
    return chain_.reaches(direction(claim_.value), -kSameReading);
  }

  ClaimVerdict verdict(const task::Task&) const override {
    ClaimVerdict verdict;
    verdict.pose = chain_.home();
    verdict.links = chain_.links();
    verdict.impossible = impossibleIn(chain_);
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

  std::optional<Pose> farthest() const override {
    return chain_.supported() ? std::optional(extremePose()) : std::nullopt;
  }

  std::vector<Pose> poses() const override {
    constexpr int kOthers = 8;  // between the one with the least bend and the extreme
    std::vector<Pose> poses;
    if (!chain_.supported()) return poses;
    if (shownAsPosed()) poses.push_back(present_);
    const Pose extreme = extremePose();
    if (!satisfies(bestReading(extreme))) return poses;
    const Pose first = firstThatShows(extreme);
    for (int i = 0; i <= kOthers; ++i) {
      Pose pose = first;
      const double share = static_cast<double>(i) / kOthers;
      for (const auto& link : chain_.links())
        chain_.bend(link, std::lerp(first[link.joint][0], extreme[link.joint][0], share), pose);
      if (satisfies(reading(pose))) poses.push_back(std::move(pose));
    }
    return poses;
  }

 private:
  bool isHeight() const { return claim_.kind == ClaimKind::HeadHeight; }
  bool isLevel() const { return claim_.kind == ClaimKind::TailBaseLevel; }

  /// Height of the span's end, m, or its slope, rad.
  double reading(const Pose& pose) const { return readingOf(claim_, site_, chain_.spanOf(pose)); }

  /// 1 where more is wanted, -1 where less is.
  double wanted() const {
    if (isLevel()) return reading(chain_.home()) > 0 ? -1 : 1;
    return claim_.bound == Bound::AtLeast ? 1 : -1;
  }

  bool satisfies(double reading) const { return missing(reading) <= kSameReading; }
  double missing(double reading) const { return missingOf(claim_, reading); }

  bool shownAsPosed() const { return asPosed_ && satisfies(reading(present_)) && withinRange(scenario_, site_); }

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
      chain_.bend(link, std::lerp(pose[link.joint][0], extreme[link.joint][0], share), pose);
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

  const range::Scenario& scenario_;
  const Pose& present_;
  const ClaimSite& site_;
  const Claim& claim_;
  bool asPosed_;
  SagittalChain chain_;
};

/// A joint's ranges, of dorsiflexion no more than a chain's links have; with `alone` as much, whatever the criteria
/// say.
class CutRanges final : public kinematics::JointRanges {
 public:
  CutRanges(const range::ReachRanges& whole, const SagittalChain& chain, bool alone)
      : whole_(whole), chain_(chain), alone_(alone) {}

  Box box(JointIndex joint) const override {
    Box box = whole_.box(joint);
    if (const auto* link = find(joint)) {
      box.min[0] = alone_ ? link->min : std::max(box.min[0], link->min);
      box.max[0] = alone_ ? link->max : std::min(box.max[0], link->max);
    }
    return box;
  }
  Excesses excesses(JointIndex joint, const Vector3d& angles) const override {
    return alone_ && find(joint) ? Excesses{} : whole_.excesses(joint, angles);
  }
  std::optional<Vector3d> inside(JointIndex joint) const override {
    const auto* link = find(joint);
    if (!link) return whole_.inside(joint);
    if (link->trouble) return std::nullopt;
    const double margin = 0.2 * (link->max - link->min);
    Pose pose = chain_.home();
    chain_.bend(*link, std::clamp(0.0, link->min + margin, link->max - margin), pose);
    return pose[joint];
  }
  /// A chain bends up and down only: what a joint could turn besides is not asked, and costs far more to find.
  Vector3d halfWidths(JointIndex joint) const override {
    const auto* link = find(joint);
    return link ? Vector3d(0.5 * (link->max - link->min), 0, 0) : whole_.halfWidths(joint);
  }

 private:
  const SagittalChain::Link* find(JointIndex joint) const {
    for (const SagittalChain::Link& link : chain_.links())
      if (link.joint == joint) return &link;
    return nullptr;
  }

  const range::ReachRanges& whole_;
  const SagittalChain& chain_;
  bool alone_;
};

/// A claimed pose may press so far into soft ground, m. Program default, no source.
constexpr double kInGround = 0.05;

class PointTrial final : public ClaimTrial {
 public:
  PointTrial(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim, const TrialWays& ways)
      : specimen_(scenario.specimen()),
        articulation_(scenario.articulation()),
        scenario_(scenario),
        present_(scenario.pose()),
        site_(site),
        claim_(claim),
        asPosed_(ways.asPosed),
        cut_(static_cast<bool>(ways.ranges)),
        near_(ways.near),
        ranges_(specimen_, articulation_, scenario.assumptions()),
        chain_(chainOf(scenario, site, ways)),
        cutRanges_(ranges_, chain_, ways.rangesAlone) {}

  bool supported() const override {
    return chain_.supported() && (shownAsPosed() || (!outOfReach() && reachedAt(claim_.value).there()));
  }

  ClaimVerdict verdict(const task::Task& task) const override {
    ClaimVerdict verdict;
    verdict.pose = chain_.home();
    verdict.links = chain_.links();
    verdict.impossible = impossibleIn(chain_);
    if (!verdict.impossible.empty()) return verdict;
    Way way = reachedAt(claim_.value);
    verdict.supported = way.there() || shownAsPosed();
    verdict.pose = shownAsPosed() ? present_ : way.reached.pose;
    if (!verdict.supported) {
      verdict.throughGround = way.reached.reached;
      verdict.shortBy = verdict.throughGround ? way.depth : way.reached.distance;
      verdict.stopping = std::move(way.reached.stopping);
    }
    verdict.best = verdict.supported ? farthestFrom(claim_.value, task) : nearestTo(claim_.value, task);
    return verdict;
  }

  std::optional<Pose> farthest() const override {
    return chain_.supported() ? std::optional(reachedAt(claim_.value).reached.pose) : std::nullopt;
  }

  std::vector<Pose> poses() const override {
    std::vector<Pose> poses;
    if (!chain_.supported()) return poses;
    if (shownAsPosed()) poses.push_back(present_);
    for (Way& way : waysTo(claim_.value, false))
      if (way.there()) poses.push_back(std::move(way.reached.pose));
    return poses;
  }

 private:
  /// How the snout gets to a point, and how deep in the ground neck or head then lie, m.
  struct Way {
    IkResult reached;
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
    if (!asPosed_) return false;
    Vector3d miss = pointFor(claim_.value) - chain_.spanOf(present_);
    miss -= left_W() * left_W().dot(miss);
    return miss.norm() <= kinematics::kReachedWithin && withinRange(scenario_, site_);
  }

  /// Across the way that the nearest pose lacks, the point lies farther out than any pose of the chain.
  bool outOfReach() const {
    if (!near_) return false;
    Pose pose = chain_.home();
    for (const auto& link : chain_.links())
      chain_.bend(link, std::clamp((*near_)[link.joint][0], link.min, link.max), pose);
    const Vector3d p_W = pointFor(claim_.value);
    Vector3d lacks = p_W - chain_.spanOf(pose);
    lacks -= left_W() * left_W().dot(lacks);
    if (lacks.norm() <= kinematics::kReachedWithin) return false;
    const Vector3d d_W = lacks.normalized();
    return !chain_.reaches(d_W, d_W.dot(p_W) - kinematics::kReachedWithin);
  }

  double depthOf(const Pose& pose) const {
    return depthInGround(specimen_, kinematics::forwardKinematics(specimen_, articulation_, pose), site_);
  }

  const kinematics::JointRanges& ranges() const {
    return cut_ ? static_cast<const kinematics::JointRanges&>(cutRanges_) : ranges_;
  }

  Way wayTo(const kinematics::IkGoal& goal) const {
    Way way{kinematics::reach(specimen_, articulation_, ranges(), chain_.home(), goal)};
    way.depth = depthOf(way.reached.pose);
    return way;
  }

  /// The easiest way first, then those with the head held steeper, which may bring the neck over the ground; with
  /// `enough` no more than it takes until one is there.
  std::vector<Way> waysTo(double value, bool enough) const {
    std::vector<Way> ways{wayTo(wishFor(value))};
    if (!ways.front().reached.reached) return ways;
    for (const double down : {0.5, 1.0, 1.4, 1.8}) {  // rad
      if (enough && ways.back().there()) break;
      kinematics::IkGoal goal = wishFor(value);
      const Vector3d d_W = std::cos(down) * site_.ahead_W - std::sin(down) * Vector3d::UnitZ();
      goal.directions.push_back({Vector3d::UnitX(), d_W});
      ways.push_back(wayTo(goal));
    }
    return ways;
  }

  /// Of the ways there the one that lies least in the ground.
  Way reachedAt(double value) const {
    std::vector<Way> ways = waysTo(value, true);
    std::size_t best = 0;
    for (std::size_t i = 1; i < ways.size(); ++i)
      if (ways[i].reached.reached && ways[i].depth < ways[best].depth) best = i;
    return std::move(ways[best]);
  }

  kinematics::IkGoal wishFor(double value) const {
    kinematics::IkGoal goal;
    goal.joints = site_.joints;
    goal.motions = {true, false, false};
    goal.bone = site_.span.to;
    goal.p_BPoint = site_.span.p_To;
    goal.p_WTarget = pointFor(value);
    goal.alongLine_W = left_W();
    return goal;
  }

  /// Between a value that is reached and one that is not, to a centimetre; the last that is.
  double boundary(double reached, double missed, const task::Task& task) const {
    constexpr double kFine = 0.005;  // m
    while (std::abs(missed - reached) > kFine && !task.cancelled()) {
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
  double farthestFrom(double reached, const task::Task& task) const {
    const double step = length() / 16;
    double missed = reached + step;
    for (int i = 0; i < 32 && !task.cancelled() && reachedAt(missed).there(); ++i) {
      reached = missed;
      missed += step;
    }
    return boundary(reached, missed, task);
  }

  /// The value nearest to one that is missed at which the snout gets there; none where it never does.
  std::optional<double> nearestTo(double missed, const task::Task& task) const {
    constexpr int kSteps = 24;
    const double step = length() / kSteps;
    for (int i = 1; i <= kSteps; ++i) {
      for (const double value : {missed - i * step, missed + i * step}) {
        if (task.cancelled()) return std::nullopt;
        // Nobody asks for a head below the ground.
        if (claim_.kind == ClaimKind::HeadAhead && value < -step) continue;
        if (!reachedAt(value).there()) continue;
        return boundary(value, value + (value < missed ? step : -step), task);
      }
    }
    return std::nullopt;
  }

  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  const range::Scenario& scenario_;
  const Pose& present_;
  const ClaimSite& site_;
  const Claim& claim_;
  bool asPosed_, cut_;
  const Pose* near_;
  range::ReachRanges ranges_;
  SagittalChain chain_;
  CutRanges cutRanges_;
};

}  // namespace

std::unique_ptr<ClaimTrial> claimTrial(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim,
                                       const TrialWays& ways) {
  if (isPoint(claim.kind)) return std::make_unique<PointTrial>(scenario, site, claim, ways);
  return std::make_unique<SpanTrial>(scenario, site, claim, ways);
}

}  // namespace zyga::study
