#include "core/range/joint_evaluator.h"

#include <algorithm>
#include <cmath>

#include "core/range/mixed_ground.h"

namespace zyga::range {
namespace {

using anatomy::Side;
using Eigen::Vector3d;

constexpr double kRounding = 1e-9;  // rad; also shares

Level levelOf(bool beyond, bool near) { return beyond ? Level::Beyond : near ? Level::Near : Level::Supported; }

Finding measuredAs(FindingKind kind, Side side, double measured, double limit) {
  Finding finding;
  finding.kind = kind;
  finding.side = side;
  finding.measured = measured;
  finding.limit = limit;
  return finding;
}

/// Near within the margin's share of what lies between full cover and the minimum.
Finding coverCriterion(FindingKind kind, const Assumptions& assumptions, Side side, double share) {
  const double least = assumptions.minOverlap;
  Finding c = measuredAs(kind, side, share, least);
  c.level = levelOf(share < least - kRounding, share < least + assumptions.nearMargin * (1 - least));
  c.excess = least - share;
  return c;
}

Finding overlapCriterion(const Assumptions& assumptions, Side side, const FacetMeasures& measures) {
  const bool byLength = assumptions.overlapBy == OverlapBy::Length;
  Finding c =
      coverCriterion(FindingKind::Overlap, assumptions, side, byLength ? measures.overlapLength : measures.overlapArea);
  // A facet that covers nothing has left its partner, even where no cover is asked for.
  if (measures.overlapArea <= 0) c.level = Level::Beyond;
  return c;
}

/// A pair that has slipped sideways keeps its length: the same minimum holds across the slide, where overlap is by
/// length. Author's choice, no source: the published rule speaks of length alone.
Finding acrossCriterion(const Assumptions& assumptions, Side side, const FacetMeasures& measures) {
  return coverCriterion(FindingKind::OverlapAcross, assumptions, side, measures.overlapWidth);
}

/// What is granted at rest (Rest::pressGranted) comes on top of what is tolerated: the same assumption must not make a
/// joint and condemn it. Near within the margin's share of what is tolerated.
Finding depthCriterion(FindingKind kind, Side side, double measured, double granted, double tolerated, double length,
                       double margin) {
  const double limit = granted + tolerated;
  Finding c = measuredAs(kind, side, std::max(0.0, measured), limit);
  c.level = levelOf(measured > limit + kRounding * length, measured > limit - margin * tolerated + kRounding * length);
  c.excess = length > 0 ? (measured - limit) / length : 0;
  return c;
}

/// Near within the margin's share of the way from zero to the end, so that a joint whose range ends at zero (a
/// straight knee, a shut jaw) rests there quietly.
Finding typedCriterion(int motion, double angle, const anatomy::AngleLimits& limits, double margin) {
  const bool upper = angle - limits.max > limits.min - angle;  // the end it is nearer to or past
  const double end = upper ? limits.max : limits.min;
  const double past = upper ? angle - end : end - angle;
  const double way = std::max(0.0, upper ? end : -end);
  Finding c = measuredAs(FindingKind::TypedLimit, Side::Midline, angle, end);
  c.motion = motion;
  c.level = levelOf(outside(limits, angle), past > -margin * way && way > 0);
  c.excess = past;
  return c;
}

}  // namespace

bool outside(const anatomy::AngleLimits& limits, double angle) {
  return !(angle >= limits.min - kRounding && angle <= limits.max + kRounding);
}

Level Criteria::level() const {
  Level worst = hasCriteria ? Level::Supported : Level::NotJudged;
  for (const Finding& c : *this) worst = std::max(worst, c.level);
  return worst;
}

Stopping stopping(const Criteria& justPast) {
  Stopping stop;
  for (const Finding& c : justPast) {
    if (c.level == Level::Beyond && (!stop.worst || c.excess > stop.worst->excess + 1e-6)) stop.worst = &c;
  }
  stop.both = std::any_of(justPast.begin(), justPast.end(), [&](const Finding& c) {
    return c.level == Level::Beyond && &c != stop.worst && c.kind == stop.worst->kind &&
           c.kind != FindingKind::TypedLimit;
  });
  return stop;
}

JointEvaluator::JointEvaluator(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                               const Assumptions& assumptions, kinematics::JointIndex joint,
                               const NeighbourContact* contact)
    : joint_(specimen[joint]),
      rest_(articulation[joint]),
      assumptions_(assumptions),
      contact_(contact),
      index_(joint),
      view_(specimen, joint),
      onMixedGround_(!assumptions.inferredNeighbours && inferredNeighbour(specimen, joint)) {
  const auto sides = facetsOf(specimen, joint);
  for (std::size_t s = 0; s < 2; ++s) {
    if (sides[s]) pairs_[s].emplace(*sides[s].prezyg, *sides[s].postzyg);
  }
}

void JointEvaluator::addFacets(Criteria& criteria, int side, const FacetMeasures& measures) const {
  const Side name = side == 0 ? Side::Left : Side::Right;
  criteria.add(overlapCriterion(assumptions_, name, measures));
  if (measures.overlapArea <= 0) return;  // no width and no gap without a shared area
  if (assumptions_.overlapBy == OverlapBy::Length) criteria.add(acrossCriterion(assumptions_, name, measures));
  const double length = pairs_[static_cast<std::size_t>(side)]->shorterLength();
  const auto s = static_cast<std::size_t>(side);
  criteria.add(depthCriterion(FindingKind::FacetContact, name, -measures.minGap, rest_.pressGranted[s],
                              assumptions_.facetContactTolerated * length, length, assumptions_.nearMargin));
  criteria.add(depthCriterion(FindingKind::FacetGap, name, measures.maxGap, rest_.gapeGranted[s],
                              assumptions_.facetGapTolerated * length, length, assumptions_.nearMargin));
}

void JointEvaluator::addTyped(Criteria& criteria, const Vector3d& angles) const {
  if (!joint_.typed) return;
  for (int k = 0; k < 3; ++k) {
    const anatomy::AngleLimits& limits = joint_.typed->angles[static_cast<std::size_t>(k)];
    criteria.add(typedCriterion(k, angles[k], limits, assumptions_.nearMargin));
  }
}

Criteria JointEvaluator::criteria(const Vector3d& angles) const {
  Criteria criteria;
  criteria.hasCriteria = hasCriteria();
  if (fixed()) return criteria;
  if (hasFacets()) {
    const Eigen::Isometry3d X_PrePost = prezygView(angles);
    for (int side = 0; side < 2; ++side) {
      const auto& pair = pairs_[static_cast<std::size_t>(side)];
      if (pair) addFacets(criteria, side, pair->measure(X_PrePost));
    }
  }
  addTyped(criteria, angles);
  return criteria;
}

bool JointEvaluator::typedBeyond(const Vector3d& angles) const {
  for (int k = 0; joint_.typed && k < 3; ++k) {
    if (outside(joint_.typed->angles[static_cast<std::size_t>(k)], angles[k])) return true;
  }
  return false;
}

Level JointEvaluator::level(const Vector3d& angles) const {
  if (fixed()) return Level::Supported;
  if (typedBeyond(angles)) return Level::Beyond;
  Criteria typed;
  typed.hasCriteria = hasCriteria();
  addTyped(typed, angles);
  Level worst = typed.level();
  if (!hasFacets()) return worst;
  const Eigen::Isometry3d X_PrePost = prezygView(angles);
  for (int side = 0; side < 2 && worst != Level::Beyond; ++side) {
    const auto& pair = pairs_[static_cast<std::size_t>(side)];
    if (!pair) continue;
    Criteria criteria;
    addFacets(criteria, side, pair->measure(X_PrePost));
    worst = std::max(worst, criteria.level());
  }
  return worst;
}

ContactPlace JointEvaluator::contact(const Vector3d& angles) const {
  return contact_->deepest(index_, kinematics::jointTransform(joint_, rest_, angles), assumptions_.contactTolerated);
}

bool JointEvaluator::contactBeyond(const Vector3d& angles) const {
  return asksContact() && contact_->entersBeyond(index_, kinematics::jointTransform(joint_, rest_, angles),
                                                 assumptions_.contactTolerated);
}

std::optional<FacetMeeting> JointEvaluator::meeting(const Vector3d& angles, int side) const {
  const auto& pair = pairs_[static_cast<std::size_t>(side)];
  return pair ? std::optional(pair->overlap(prezygView(angles))) : std::nullopt;
}

double JointEvaluator::centrumGap(const Vector3d& angles) const {
  const Eigen::Isometry3d X_PD = kinematics::jointTransform(joint_, rest_, angles);
  const Vector3d between = X_PD * joint_.centreDistal - joint_.centreProximal;
  return between.dot(joint_.longAxisProximal) < 0 ? -between.norm() : between.norm();
}

}  // namespace zyga::range
