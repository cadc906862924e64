#include "core/kinematics/reach_chain.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/kinematics/following.h"
#include "core/kinematics/range_edge.h"

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;

constexpr double kNoRange = 1e-6;     // rad: motions with less are left alone
constexpr double kLeastUnit = 0.02;   // rad: past the ranges a stiff joint gives a little as well
constexpr double kLargestUnit = 0.6;  // rad: farther than this no step is to be trusted

/// How reluctant a joint is to bend from the base, by its place (0 at the base, 1 at the end): the base gives way, what
/// follows keeps its shape. How much so is a program default, no source.
double keepsShape(double place) {
  constexpr double kMost = 40;
  const double t = std::clamp((place - 0.1) / 0.25, 0.0, 1.0);
  return 1 + (kMost - 1) * t * t * (3 - 2 * t);
}

bool isHead(const anatomy::Bone& bone) {
  return bone.name.kind == anatomy::BoneKind::Skull || bone.name.kind == anatomy::BoneKind::Jaw;
}

/// Joints of the head: those that carry the skull, the atlas and what hangs on the skull.
bool isHeadJoint(const anatomy::Specimen& specimen, JointIndex joint) {
  const anatomy::Bone& distal = specimen[specimen[joint].distal];
  return isHead(distal) || (distal.name.kind == anatomy::BoneKind::Cervical && distal.name.number == 1);
}

}  // namespace

ReachChain::ReachChain(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
                       const Pose& start, const IkGoal& goal)
    : specimen_(specimen),
      articulation_(articulation),
      ranges_(ranges),
      goal_(goal),
      home_(start),
      own_(specimen.joints.size()) {
  units_.resize(3 * static_cast<Eigen::Index>(goal.joints.size()));
  for (const JointIndex joint : goal.joints) addTurning(joint, start);
  units_.conservativeResize(size());
  weights_ = Eigen::VectorXd::Ones(size());
  if (goal.style == BendStyle::FromTheBase && turning_.size() > 1) {
    const bool head = isHead(specimen[goal.bone]);
    for (std::size_t i = 0; i < turning_.size(); ++i) {
      if (head && isHeadJoint(specimen, turning_[i].joint)) continue;
      const double place = static_cast<double>(i) / static_cast<double>(turning_.size() - 1);
      weights_.segment(turning_[i].first, turning_[i].count).setConstant(keepsShape(place));
    }
  }
  const std::vector<JointIndex> chain = specimen.chainTo(goal.bone);
  const auto first = turning_.empty() ? chain.end() : std::find(chain.begin(), chain.end(), turning_.front().joint);
  path_.assign(first, chain.end());
}

void ReachChain::addTurning(JointIndex joint, const Pose& start) {
  const std::optional<Vector3d> inside = ranges_.inside(joint);
  if (!inside && !goal_.pastRanges) return;
  const Vector3d halfWidths = ranges_.halfWidths(joint);
  const double least = goal_.pastRanges ? kLeastUnit : kNoRange;
  const Vector3d units = halfWidths.cwiseMax(least).cwiseMin(kLargestUnit);
  std::vector<int> motions;
  for (int motion = 0; motion < 3; ++motion) {
    if (!goal_.motions[static_cast<std::size_t>(motion)]) continue;
    if (goal_.pastRanges || halfWidths[motion] >= kNoRange) motions.push_back(motion);
  }
  if (motions.empty()) return;
  turning_.push_back({joint, static_cast<int>(free_.size()), static_cast<int>(motions.size())});
  for (const int motion : motions) {
    units_[size()] = units[motion];
    free_.push_back({joint, motion});
  }
  if (goal_.pastRanges) return;
  const Vector3d begun = ownOf(start, joint), well = toOwn(specimen_[joint], articulation_[joint], *inside);
  Vector3d anchor = begun;
  for (const int motion : motions) anchor[motion] = well[motion];
  // Where a motion that is not asked for stands so that nothing is supported, the whole joint is brought in.
  if (!ranges_.supports(joint, fromOwn(specimen_[joint], articulation_[joint], anchor)))
    anchor = ranges_.supports(joint, start[joint]) ? begun : well;
  edges_.emplace_back(ranges_, specimen_, articulation_, joint, std::move(motions), units, anchor);
  setOwn(home_, joint, edges_.back().broughtIn(begun));
}

Pose ReachChain::startFrom(const Pose& other) {
  Pose pose = home_;
  for (const Turning& turning : turning_) {
    const Vector3d from = ownOf(other, turning.joint);
    Vector3d own = ownOf(home_, turning.joint);
    for (int c = turning.first; c < turning.first + turning.count; ++c) own[motionOf(c)] = from[motionOf(c)];
    setOwn(pose, turning.joint, own);
  }
  return stepped(pose, Eigen::VectorXd::Zero(size()));
}

Vector3d ReachChain::ownOf(const Pose& pose, JointIndex joint) const {
  if (!axialFollows(specimen_[joint], articulation_[joint])) return pose[joint];
  OwnAngles& kept = own_[joint.value];
  for (std::size_t i = 0; i < kept.known; ++i)
    if (kept.angles[i] == pose[joint]) return kept.own[i];
  const std::size_t place = kept.known < kept.own.size() ? kept.known++ : kept.oldest;
  kept.oldest = (place + 1) % kept.own.size();
  kept.angles[place] = pose[joint];
  return kept.own[place] = toOwn(specimen_[joint], articulation_[joint], pose[joint]);
}

void ReachChain::setOwn(Pose& pose, JointIndex joint, const Vector3d& own) const {
  pose[joint] = fromOwn(specimen_[joint], articulation_[joint], own);
}

void ReachChain::placeInto(const Pose& pose, Placement& X_WB) const {
  for (const JointIndex j : path_) {
    const anatomy::Joint& joint = specimen_[j];
    X_WB[joint.distal.value] = X_WB[joint.proximal.value] * jointTransform(joint, articulation_[j], pose[j]);
  }
}

Eigen::VectorXd ReachChain::deviation(const Pose& pose) const {
  Eigen::VectorXd x(size());
  for (const Turning& turning : turning_) {
    const Vector3d away = ownOf(pose, turning.joint) - ownOf(home_, turning.joint);
    for (int c = turning.first; c < turning.first + turning.count; ++c) x[c] = away[motionOf(c)] / units_[c];
  }
  return x;
}

Pose ReachChain::bent(const std::array<double, 3>& shares) {
  Eigen::VectorXd step(size());
  for (int c = 0; c < step.size(); ++c) step[c] = shares[static_cast<std::size_t>(motionOf(c))];
  return stepped(home_, step);
}

Pose ReachChain::stepped(const Pose& pose, const Eigen::VectorXd& step) {
  Pose next = pose;
  for (std::size_t i = 0; i < turning_.size(); ++i) {
    const Turning& turning = turning_[i];
    Vector3d own = ownOf(pose, turning.joint);
    for (int c = turning.first; c < turning.first + turning.count; ++c) own[motionOf(c)] += step[c] * units_[c];
    setOwn(next, turning.joint, edges_.empty() ? own : edges_[i].broughtIn(own));
  }
  return next;
}

void ReachChain::addBounds(const Turning& turning, const Pose& pose, double longest,
                           std::vector<HalfSpace>& halfSpaces) const {
  const JointRanges::Box box = ranges_.box(turning.joint);
  const Vector3d own = ownOf(pose, turning.joint);
  for (int c = turning.first; c < turning.first + turning.count; ++c) {
    const int motion = motionOf(c);
    const double angle = own[motion];
    HalfSpace upper, lower;
    upper.add(c, 1);
    upper.max = goal_.pastRanges ? longest : std::clamp((box.max[motion] - angle) / units_[c], 0.0, longest);
    lower.add(c, -1);
    lower.max = goal_.pastRanges ? longest : std::clamp((angle - box.min[motion]) / units_[c], 0.0, longest);
    halfSpaces.push_back(upper);
    halfSpaces.push_back(lower);
  }
}

std::vector<StoppingJoint> ReachChain::stopping(const JointRanges& ranges, const Pose& pose, const Placement& X_WB,
                                                const Vector3d& miss) const {
  constexpr double kNudge = 1e-2;         // units
  constexpr double kWorthTelling = 0.03;  // of the worst one
  const Jacobian J = jacobian(specimen_, articulation_, pose, X_WB, free_, pointOf(X_WB));
  const Eigen::VectorXd pull = units_.asDiagonal() * (J.point.transpose() * miss.normalized());
  std::vector<StoppingJoint> stopping;
  for (const Turning& turning : turning_) {
    StoppingJoint stop{turning.joint, Vector3d::Zero(), pull.segment(turning.first, turning.count).norm()};
    for (int c = turning.first; c < turning.first + turning.count; ++c) {
      stop.push[motionOf(c)] = pull[c] * units_[c];
    }
    if (stop.share < 1e-4) continue;
    const anatomy::Joint& joint = specimen_[turning.joint];
    const Articulation::Rest& rest = articulation_[turning.joint];
    const Vector3d own = toOwn(joint, rest, pose[turning.joint]);
    const Vector3d further = fromOwn(joint, rest, own + kNudge / stop.share * stop.push);
    stop.push.normalize();
    if (!ranges.supports(turning.joint, further)) stopping.push_back(stop);
  }
  std::sort(stopping.begin(), stopping.end(), [](const auto& a, const auto& b) { return a.share > b.share; });
  std::erase_if(stopping, [&](const auto& stop) { return stop.share < kWorthTelling * stopping.front().share; });
  double sum = 0;
  for (const StoppingJoint& stop : stopping) sum += stop.share;
  for (StoppingJoint& stop : stopping) stop.share /= sum;
  return stopping;
}

std::vector<HalfSpace> ReachChain::allowed(const Pose& pose, double longest) {
  std::vector<HalfSpace> halfSpaces;
  halfSpaces.reserve(4 * free_.size());
  for (const Turning& turning : turning_) addBounds(turning, pose, longest, halfSpaces);
  for (std::size_t i = 0; i < edges_.size(); ++i) {
    edges_[i].addHalfSpaces(ownOf(pose, turning_[i].joint), turning_[i].first, halfSpaces);
  }
  return halfSpaces;
}

namespace {

using Eigen::Vector3d;

constexpr double kDifference = 1e-5;  // rad
/// Slopes serve as long as the joint stays this near, units.
constexpr double kSameSlopes = 0.03;

Vector3d nowhere() { return Vector3d::Constant(std::numeric_limits<double>::quiet_NaN()); }

}  // namespace

RangeEdge::RangeEdge(const JointRanges& ranges, const anatomy::Specimen& specimen, const Articulation& articulation,
                     JointIndex joint, std::vector<int> motions, const Vector3d& units, const Vector3d& anchor)
    : ranges_(ranges),
      bones_(specimen[joint]),
      rest_(articulation[joint]),
      joint_(joint),
      motions_(std::move(motions)),
      units_(units),
      anchor_(anchor),
      box_(ranges.box(joint)),
      worstAtAnchor_(asked(anchor).worst()),
      asked_(nowhere()),
      slopesAt_(nowhere()) {}

JointRanges::Excesses RangeEdge::asked(const Vector3d& own) const {
  return ranges_.excesses(joint_, fromOwn(bones_, rest_, own));
}

const JointRanges::Excesses& RangeEdge::excesses(const Vector3d& angles) {
  if (angles != asked_) {
    answer_ = asked(angles);
    asked_ = angles;
  }
  return answer_;
}

Vector3d RangeEdge::broughtIn(Vector3d angles) {
  angles = angles.cwiseMax(box_.min).cwiseMin(box_.max);
  double out = excesses(angles).worst();
  if (out <= 0) return angles;
  // Regula falsi on the way to the anchor, aimed a little inside; any answer just inside the edge will do.
  const double enough = -0.3 * out;
  double outside = 0, inside = 1, in = worstAtAnchor_;
  for (int i = 0; i < 30; ++i) {
    const double aim = outside + (inside - outside) * std::clamp(1.1 * out / (out - in), 0.01, 0.99);
    const double back = i % 4 == 3 ? 0.5 * (outside + inside) : aim;
    const Vector3d there = angles + back * (anchor_ - angles);
    const double worst = excesses(there).worst();
    if (worst > 0) {
      outside = back;
      out = worst;
      continue;
    }
    if (worst >= enough) return there;
    inside = back;
    in = worst;
  }
  return angles + inside * (anchor_ - angles);
}

void RangeEdge::linearise(const Vector3d& angles, const JointRanges::Excesses& here) {
  slopes_.fill(Vector3d::Zero());
  for (const int motion : motions_) {
    Vector3d nudged = angles;
    nudged[motion] += kDifference;
    const JointRanges::Excesses there = asked(nudged);
    for (std::size_t k = 0; k < here.count; ++k) {
      slopes_[k][motion] = (there.values[k] - here.values[k]) * units_[motion] / kDifference;
    }
  }
  slopesAt_ = angles;
}

void RangeEdge::addHalfSpaces(const Vector3d& angles, int first, std::vector<HalfSpace>& halfSpaces) {
  const JointRanges::Excesses here = excesses(angles);
  if (here.count == 0) return;
  const double strayed = (angles - slopesAt_).cwiseQuotient(units_).norm();
  if (!(strayed < kSameSlopes)) linearise(angles, here);
  for (std::size_t k = 0; k < here.count; ++k) {
    const double length = slopes_[k].norm();
    if (length < 1e-6) continue;  // says nothing about the way on
    HalfSpace edge;
    for (std::size_t m = 0; m < motions_.size(); ++m) {
      edge.add(first + static_cast<int>(m), slopes_[k][motions_[m]] / length);
    }
    edge.max = std::max(0.0, -here.values[k]) / length;
    halfSpaces.push_back(edge);
  }
}

}  // namespace zyga::kinematics
