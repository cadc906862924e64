#include "core/kinematics/reach_chain.h"

#include <algorithm>
#include <cmath>

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;

constexpr double kNoRange = 1e-6;      // rad: motions with less are left alone
constexpr double kLeastUnit = 0.02;    // rad: past the ranges a stiff joint gives a little as well
constexpr double kLargestUnit = 0.6;   // rad: farther than this no step is to be trusted
constexpr double kDifference = 1e-5;   // rad
constexpr double kBroughtInTo = 1e-9;  // share of the way to the anchor

/// How reluctant a joint is to bend from the base, by its place (0 at the base, 1 at the end): the base gives way, what
/// follows keeps its shape. How much so is the author's choice.
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

Vector3d clampedTo(const JointRanges::Box& box, const Vector3d& angles) {
  return angles.cwiseMax(box.least).cwiseMin(box.most);
}

}  // namespace

ReachChain::ReachChain(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
                       const Pose& start, const Reach& wish)
    : specimen_(specimen), articulation_(articulation), ranges_(ranges), wish_(wish), home_(start) {
  units_.resize(3 * static_cast<Eigen::Index>(wish.joints.size()));
  for (const JointIndex joint : wish.joints) addTurning(joint, start);
  units_.conservativeResize(size());
  reluctance_ = Eigen::VectorXd::Ones(size());
  if (wish.style == BendStyle::FromTheBase && turning_.size() > 1) {
    const bool head = isHead(specimen[wish.bone]);
    for (std::size_t i = 0; i < turning_.size(); ++i) {
      if (head && isHeadJoint(specimen, turning_[i].joint)) continue;
      const double place = static_cast<double>(i) / static_cast<double>(turning_.size() - 1);
      reluctance_.segment(turning_[i].first, turning_[i].count).setConstant(keepsShape(place));
    }
  }
  const std::vector<JointIndex> chain = specimen.chainTo(wish.bone);
  const auto first = turning_.empty() ? chain.end() : std::find(chain.begin(), chain.end(), turning_.front().joint);
  path_.assign(first, chain.end());
}

void ReachChain::addTurning(JointIndex joint, const Pose& start) {
  const std::optional<Vector3d> inside = ranges_.inside(joint);
  if (!inside && !wish_.pastRanges) return;
  const Vector3d halfWidths = ranges_.halfWidths(joint);
  Turning turning{joint, static_cast<int>(free_.size()), 0, ranges_.box(joint), start[joint]};
  for (int motion = 0; motion < 3; ++motion) {
    if (!wish_.motions[static_cast<std::size_t>(motion)]) continue;
    if (!wish_.pastRanges && halfWidths[motion] < kNoRange) continue;
    const double least = wish_.pastRanges ? kLeastUnit : kNoRange;
    units_[size()] = std::clamp(halfWidths[motion], least, kLargestUnit);
    free_.push_back({joint, motion});
    ++turning.count;
    if (inside) turning.anchor[motion] = (*inside)[motion];
  }
  if (turning.count == 0) return;
  if (!wish_.pastRanges) {
    // Where a motion that is not asked for stands so that nothing is supported, the whole joint is brought in.
    if (!ranges_.supports(joint, turning.anchor)) {
      turning.anchor = ranges_.supports(joint, start[joint]) ? start[joint] : *inside;
    }
    home_[joint] = broughtIn(turning, start[joint]);
  }
  turning_.push_back(turning);
}

Pose ReachChain::homeWith(const Pose& other) const {
  Pose pose = home_;
  for (const FreeMotion& angle : free_) pose[angle.joint][angle.motion] = other[angle.joint][angle.motion];
  return stepped(pose, Eigen::VectorXd::Zero(size()));
}

void ReachChain::placeInto(const Pose& pose, Placement& X_WB) const {
  for (const JointIndex j : path_) {
    const anatomy::Joint& joint = specimen_[j];
    X_WB[joint.distal.value] = X_WB[joint.proximal.value] * placeDistal(joint, articulation_[j], pose[j]);
  }
}

Eigen::VectorXd ReachChain::away(const Pose& pose) const {
  Eigen::VectorXd x(size());
  for (Eigen::Index c = 0; c < x.size(); ++c) {
    const FreeMotion& angle = free_[static_cast<std::size_t>(c)];
    x[c] = (pose[angle.joint][angle.motion] - home_[angle.joint][angle.motion]) / units_[c];
  }
  return x;
}

Vector3d ReachChain::broughtIn(const Turning& turning, Vector3d angles) const {
  angles = clampedTo(turning.box, angles);
  if (ranges_.excesses(turning.joint, angles).worst() <= 0) return angles;
  const Vector3d out = angles - turning.anchor;
  const auto at = [&](double back) -> Vector3d { return turning.anchor + (1 - back) * out; };
  // A step leaves its range by little, so the edge is looked for from outside.
  double outside = 0, inside = 1e-5;
  while (inside < 1 && ranges_.excesses(turning.joint, at(inside)).worst() > 0) {
    outside = inside;
    inside *= 8;
  }
  inside = std::min(inside, 1.0);
  for (int i = 0; i < 40 && inside - outside > std::max(kBroughtInTo, 1e-3 * inside); ++i) {
    const double middle = 0.5 * (inside + outside);
    (ranges_.excesses(turning.joint, at(middle)).worst() > 0 ? outside : inside) = middle;
  }
  return at(inside);
}

Pose ReachChain::stepped(const Pose& pose, const Eigen::VectorXd& step) const {
  Pose next = pose;
  for (const Turning& turning : turning_) {
    Vector3d& angles = next[turning.joint];
    for (int c = turning.first; c < turning.first + turning.count; ++c) {
      angles[free_[static_cast<std::size_t>(c)].motion] += step[c] * units_[c];
    }
    if (!wish_.pastRanges) angles = broughtIn(turning, angles);
  }
  return next;
}

std::vector<HalfSpace> ReachChain::allowed(const Pose& pose, double longest) const {
  std::vector<HalfSpace> halfSpaces;
  halfSpaces.reserve(4 * free_.size());
  for (const Turning& turning : turning_) {
    const Vector3d& angles = pose[turning.joint];
    for (int c = turning.first; c < turning.first + turning.count; ++c) {
      const int motion = free_[static_cast<std::size_t>(c)].motion;
      const double up = wish_.pastRanges ? longest : (turning.box.most[motion] - angles[motion]) / units_[c];
      const double down = wish_.pastRanges ? longest : (angles[motion] - turning.box.least[motion]) / units_[c];
      HalfSpace upper, lower;
      upper.add(c, 1);
      upper.most = std::clamp(up, 0.0, longest);
      lower.add(c, -1);
      lower.most = std::clamp(down, 0.0, longest);
      halfSpaces.push_back(upper);
      halfSpaces.push_back(lower);
    }
    if (!wish_.pastRanges) addCriteria(turning, angles, halfSpaces);
  }
  return halfSpaces;
}

void ReachChain::addCriteria(const Turning& turning, const Vector3d& angles, std::vector<HalfSpace>& halfSpaces) const {
  const JointRanges::Excesses here = ranges_.excesses(turning.joint, angles);
  if (here.count == 0) return;
  std::array<HalfSpace, JointRanges::kMostCriteria> edges;
  for (int c = turning.first; c < turning.first + turning.count; ++c) {
    Vector3d nudged = angles;
    nudged[free_[static_cast<std::size_t>(c)].motion] += kDifference;
    const JointRanges::Excesses there = ranges_.excesses(turning.joint, nudged);
    for (std::size_t k = 0; k < here.count; ++k) {
      edges[k].add(c, (there.values[k] - here.values[k]) * units_[c] / kDifference);
    }
  }
  for (std::size_t k = 0; k < here.count; ++k) {
    double squared = 0;
    for (const double n : edges[k].normal) squared += n * n;
    if (squared < 1e-12) continue;  // says nothing about the way on
    const double length = std::sqrt(squared);
    for (double& n : edges[k].normal) n /= length;
    edges[k].most = std::max(0.0, -here.values[k]) / length;
    halfSpaces.push_back(edges[k]);
  }
}

}  // namespace zyga::kinematics
