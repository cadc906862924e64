#include "core/study/reach/sagittal_chain.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/kinematics/following.h"
#include "core/kinematics/jacobian.h"
#include "core/range/limits.h"

namespace zyga::study {

using Eigen::Vector3d;
using kinematics::Articulation;
using kinematics::JointIndex;
using kinematics::Placement;
using kinematics::Pose;
using kinematics::StoppingJoint;

namespace {

constexpr double kSettledSoon = 1e-6;  // m a round, where only yes or no is asked
constexpr int kMostRounds = 400;

/// The turn within [least, most] at which level * cos + rise * sin is greatest, rad.
double bestTurn(double level, double rise, double least, double most) {
  const double peak = std::atan2(rise, level);
  for (const double turn : {peak, peak - 2 * std::numbers::pi, peak + 2 * std::numbers::pi}) {
    if (turn >= least && turn <= most) return turn;
  }
  const auto at = [&](double turn) { return level * std::cos(turn) + rise * std::sin(turn); };
  return at(most) > at(least) ? most : least;
}

}  // namespace

SagittalChain::SagittalChain(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                             const range::Assumptions& assumptions, const std::vector<JointIndex>& joints,
                             const CarriedSpan& span, const Pose& present, const range::NeighbourContact* contact)
    : SagittalChain(specimen, articulation, joints, span, present, [&](JointIndex joint) {
        return range::motionRange(specimen, articulation, assumptions, joint, Vector3d::Zero(), 0, contact);
      }) {}

SagittalChain::SagittalChain(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                             const std::vector<JointIndex>& joints, const CarriedSpan& span, const Pose& present,
                             const RangeOfJoint& ranges)
    : specimen_(specimen), articulation_(articulation), span_(span), path_(specimen.chainTo(span.to)), home_(present) {
  const std::vector<JointIndex> toFrom = span.from ? specimen.chainTo(*span.from) : std::vector<JointIndex>{};
  for (const JointIndex joint : joints) {
    const range::MotionRange band = ranges(joint);
    const bool both = std::find(toFrom.begin(), toFrom.end(), joint) != toFrom.end();
    Link link{joint, band.min, band.max, both, band.empty ? std::optional(band.minStop) : std::nullopt};
    link.minStop = band.minStop;
    link.maxStop = band.maxStop;
    if (band.empty) link.min = link.max = 0;
    for (const double end : {link.min, link.max}) {
      const Vector3d at = kinematics::withMotion(specimen[joint], articulation[joint], Vector3d::Zero(), 0, end);
      link.leans = link.leans || at[2] != 0;
    }
    bend(link, std::clamp(present[joint][0], link.min, link.max), home_);
    links_.push_back(std::move(link));
  }
}

bool SagittalChain::supported() const {
  return std::all_of(links_.begin(), links_.end(), [](const Link& link) { return !link.trouble; });
}

Vector3d SagittalChain::spanIn(const Placement& X_WB) const {
  const Vector3d end = X_WB[span_.to.value] * span_.p_To;
  return span_.from ? Vector3d(end - X_WB[span_.from->value] * span_.p_From) : end;
}

Vector3d SagittalChain::spanOf(const Pose& pose) const {
  return spanIn(kinematics::forwardKinematics(specimen_, articulation_, pose));
}

void SagittalChain::placeFrom(JointIndex first, const Pose& pose, Placement& X_WB) const {
  for (auto at = std::find(path_.begin(), path_.end(), first); at != path_.end(); ++at) {
    const anatomy::Joint& joint = specimen_[*at];
    X_WB[joint.distal.value] =
        X_WB[joint.proximal.value] * kinematics::jointTransform(joint, articulation_[*at], pose[*at]);
  }
}

SagittalChain::Swing SagittalChain::swing(const Link& link, const Pose& pose, const Placement& X_WB,
                                          const Vector3d& d_W) const {
  const auto axes = link.leans ? kinematics::turningAxes : kinematics::plainAxes;
  const kinematics::TurningAxis axis =
      axes(specimen_[link.joint], articulation_[link.joint], pose[link.joint], X_WB)[0];
  const Vector3d arm = link.carriesBoth ? spanIn(X_WB) : Vector3d(X_WB[span_.to.value] * span_.p_To - axis.p_WCentre);
  const Vector3d& a = axis.direction_W;
  return {d_W.dot(arm - a * a.dot(arm)), d_W.dot(a.cross(arm))};
}

Pose SagittalChain::ascended(Pose pose, const Vector3d& d_W, double enough, double settled) const {
  Placement X_WB = kinematics::forwardKinematics(specimen_, articulation_, pose);
  double before = d_W.dot(spanIn(X_WB));
  for (int round = 0; round < kMostRounds; ++round) {
    for (const Link& link : links_) {
      const Swing s = swing(link, pose, X_WB, d_W);
      const double angle = pose[link.joint][0];
      bend(link, std::clamp(angle + bestTurn(s.level, s.rise, link.min - angle, link.max - angle), link.min, link.max),
           pose);
      placeFrom(link.joint, pose, X_WB);
    }
    const double now = d_W.dot(spanIn(X_WB));
    if (now - before < settled || now >= enough) break;
    before = now;
  }
  return pose;
}

/// No pose takes the span farther than this, m. The joints' axes are alike in a chain that bends in one plane, so that
/// every piece between two joints turns by the sum of the turns before it; each piece is given the best of all sums
/// that the ranges allow, whatever the others take. Infinite where a joint leans or settles.
double SagittalChain::bound(const Vector3d& d_W) const {
  const Placement X_WB = kinematics::forwardKinematics(specimen_, articulation_, home_);
  double sum = 0, least = 0, most = 0;
  std::optional<Vector3d> a;
  Vector3d from = span_.from ? Vector3d(X_WB[span_.from->value] * span_.p_From) : Vector3d(Vector3d::Zero());
  const auto add = [&](const Vector3d& to) {
    const Vector3d piece = to - from;
    from = to;
    if (!a) {
      sum += d_W.dot(piece);
      return;
    }
    const double along = d_W.dot(*a) * a->dot(piece), level = d_W.dot(piece) - along, rise = d_W.dot(a->cross(piece));
    const double turn = bestTurn(level, rise, least, most);
    sum += along + level * std::cos(turn) + rise * std::sin(turn);
  };
  for (const Link& link : links_) {
    const Articulation::Rest& rest = articulation_[link.joint];
    if (link.leans || rest.settling.bound > 0) return std::numeric_limits<double>::infinity();
    const kinematics::TurningAxis axis = kinematics::plainAxes(specimen_[link.joint], rest, home_[link.joint], X_WB)[0];
    if (a && (axis.direction_W - *a).norm() > 1e-9) return std::numeric_limits<double>::infinity();
    if (!link.carriesBoth) add(axis.p_WCentre);
    a = axis.direction_W;
    least += link.min - home_[link.joint][0];
    most += link.max - home_[link.joint][0];
  }
  add(X_WB[span_.to.value] * span_.p_To);
  return sum;
}

bool SagittalChain::reaches(const Vector3d& d_W, double enough) const {
  const Pose up = allAt(true), down = allAt(false);
  for (const Pose* pose : {&home_, &up, &down})
    if (d_W.dot(spanOf(*pose)) >= enough) return true;
  if (bound(d_W) < enough) return false;
  for (const Pose* pose : {&up, &home_, &down})
    if (d_W.dot(spanOf(ascended(*pose, d_W, enough, kSettledSoon))) >= enough) return true;
  return false;
}

void SagittalChain::bend(const Link& link, double angle, Pose& pose) const {
  pose[link.joint] = Vector3d(angle, 0, 0);
  if (link.leans)
    pose[link.joint] =
        kinematics::withMotion(specimen_[link.joint], articulation_[link.joint], Vector3d::Zero(), 0, angle);
}

Pose SagittalChain::allAt(bool upper) const {
  Pose pose = home_;
  for (const Link& link : links_) bend(link, upper ? link.max : link.min, pose);
  return pose;
}

Pose SagittalChain::farthest(const Vector3d& d_W) const {
  const Pose up = allAt(true), down = allAt(false);
  Pose best = ascended(home_, d_W);
  double farthest = d_W.dot(spanOf(best));
  for (const Pose& start : {up, down}) {
    Pose other = ascended(start, d_W);
    const double reached = d_W.dot(spanOf(other));
    if (reached <= farthest + 1e-9) continue;
    best = std::move(other);
    farthest = reached;
  }
  return best;
}

std::vector<StoppingJoint> SagittalChain::holding(const Pose& pose, const Vector3d& d_W) const {
  constexpr double kAtEnd = 1e-9;         // rad
  constexpr double kWorthTelling = 0.03;  // of the worst one
  const Placement X_WB = kinematics::forwardKinematics(specimen_, articulation_, pose);
  std::vector<StoppingJoint> held;
  for (const Link& link : links_) {
    const double rise = swing(link, pose, X_WB, d_W).rise;
    const double angle = pose[link.joint][0];
    const bool atEnd = rise > 0 ? angle >= link.max - kAtEnd : angle <= link.min + kAtEnd;
    const double share = std::abs(rise) * 0.5 * (link.max - link.min);
    if (atEnd && share > 1e-6) held.push_back({link.joint, Vector3d(rise > 0 ? 1 : -1, 0, 0), share});
  }
  std::stable_sort(held.begin(), held.end(), [](const auto& a, const auto& b) { return a.share > b.share; });
  std::erase_if(held, [&](const auto& stop) { return stop.share < kWorthTelling * held.front().share; });
  double sum = 0;
  for (const StoppingJoint& stop : held) sum += stop.share;
  for (StoppingJoint& stop : held) stop.share /= sum;
  return held;
}

}  // namespace zyga::study
