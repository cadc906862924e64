#include "core/range/reach_ranges.h"

#include <algorithm>
#include <cmath>

#include "core/range/limit_search.h"

namespace zyga::range {

using Eigen::Vector3d;
using kinematics::JointIndex;

namespace {

constexpr double kLeastExcess = 1e-9;

bool judgeable(const JointEvaluator& judge) { return judge.hasFacets() || judge.joint().typed; }

/// Supported angles with every motion near the middle of what it can do from there.
std::optional<Vector3d> middleOf(const JointEvaluator& judge) {
  Vector3d angles = Vector3d::Zero();
  if (!judgeable(judge)) return angles;
  for (int motion = 0; motion < 3; ++motion) {
    const Interval interval = LimitSearch(judge, angles, motion).interval();
    if (interval.empty) continue;
    // Zero where it is well inside, so that a joint at rest stays at rest.
    const double margin = 0.2 * (interval.max - interval.min);
    angles = judge.withMotion(angles, motion, std::clamp(0.0, interval.min + margin, interval.max - margin));
  }
  return judge.beyond(angles) ? std::nullopt : std::optional(angles);
}

}  // namespace

/// A joint, and what is found out about it when it is first asked for.
struct ReachRanges::Known {
  struct Middle {
    std::optional<Vector3d> inside;
    Vector3d halfWidths = Vector3d::Zero();
  };

  explicit Known(JointEvaluator&& made) : judge(std::move(made)) {}

  const Middle& middle() {
    if (middle_) return *middle_;
    middle_.emplace().inside = middleOf(judge);
    for (int motion = 0; motion < 3 && middle_->inside; ++motion) {
      if (!judgeable(judge)) {
        middle_->halfWidths[motion] = kSearchedFar;
        continue;
      }
      const Interval interval = LimitSearch(judge, *middle_->inside, motion).interval();
      if (!interval.empty) middle_->halfWidths[motion] = 0.5 * (interval.max - interval.min);
    }
    return *middle_;
  }

  JointEvaluator judge;

 private:
  std::optional<Middle> middle_;
};

ReachRanges::ReachRanges(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                         const Assumptions& assumptions, const NeighbourContact* contact)
    : specimen_(specimen),
      articulation_(articulation),
      assumptions_(assumptions),
      contact_(contact),
      known_(specimen.joints.size()) {}

ReachRanges::~ReachRanges() = default;

ReachRanges::Known& ReachRanges::known(JointIndex joint) const {
  auto& found = known_[joint.value];
  if (!found) found = std::make_unique<Known>(JointEvaluator(specimen_, articulation_, assumptions_, joint));
  return *found;
}

kinematics::JointRanges::Box ReachRanges::box(JointIndex joint) const {
  Box box{Vector3d::Constant(-kSearchedFar), Vector3d::Constant(kSearchedFar)};
  const auto& typed = specimen_[joint].typed;
  for (int k = 0; typed && k < 3; ++k) {
    box.min[k] = typed->angles[static_cast<std::size_t>(k)].min;
    box.max[k] = typed->angles[static_cast<std::size_t>(k)].max;
  }
  return box;
}

kinematics::JointRanges::Excesses ReachRanges::excesses(JointIndex joint, const Vector3d& angles) const {
  Excesses excesses;
  const JointEvaluator& judge = known(joint).judge;
  if (!judge.hasFacets()) return excesses;
  const Criteria criteria = judge.criteria(angles);
  // A criterion has a place of its own, so that one that has nothing to say at some angles leaves the others in theirs.
  excesses.count = 8;
  excesses.values.fill(-1);
  for (const Finding& c : criteria) {
    if (c.kind == FindingKind::TypedLimit) continue;
    const auto kind = static_cast<std::size_t>(c.kind);  // those of facets come first
    double& value = excesses.values[2 * kind + (c.side == anatomy::Side::Right ? 1 : 0)];
    value = c.level == Level::Beyond ? std::max(c.excess, kLeastExcess) : std::min(c.excess, 0.0);
  }
  return excesses;
}

std::optional<Vector3d> ReachRanges::inside(JointIndex joint) const { return known(joint).middle().inside; }

Vector3d ReachRanges::halfWidths(JointIndex joint) const { return known(joint).middle().halfWidths; }

JointStop ReachRanges::stopOf(const kinematics::Pose& pose, const kinematics::StoppingJoint& stop) const {
  const JointEvaluator& judge = known(stop.joint).judge;
  const Vector3d angles = pose[stop.joint];
  int motion = 0;
  stop.push.cwiseAbs().maxCoeff(&motion);
  const double sign = std::copysign(1.0, stop.push[motion]);
  // Held back before it has begun: bent the other way, or by another motion that has spent the range.
  const double turned = std::max(0.0, sign * angles[motion]);
  return {stop.joint, motion, sign, turned,
          range::stopOf(judge.criteria(judge.fromOwn(judge.toOwn(angles) + 1e-4 * stop.push)))};
}

Vector3d ReachRanges::lastSupported(JointIndex joint, const Vector3d& from, const Vector3d& to) const {
  return range::lastSupported({specimen_, articulation_, assumptions_, joint, contact_}, from, to);
}

}  // namespace zyga::range
