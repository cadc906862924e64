#include "core/range/contact/clear_reach.h"

#include <algorithm>
#include <cmath>

#include "core/range/contact/contact.h"
#include "core/range/limit_search.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;
using kinematics::IkGoal;
using kinematics::IkResult;
using kinematics::JointIndex;
using kinematics::Pose;

constexpr int kMostRounds = 6;

/// What kinematics::reach tells of a pose that nothing may change.
IkResult asPosed(const Scenario& scenario, const Pose& pose, const IkGoal& goal) {
  IkResult told;
  told.pose = pose;
  const Eigen::Isometry3d X_WBone =
      kinematics::forwardKinematics(scenario.specimen(), scenario.articulation(), pose)[goal.bone.value];
  told.p_WPoint = X_WBone * goal.p_BPoint;
  const Vector3d way = goal.p_WTarget - told.p_WPoint;
  told.distance = (way - way.dot(goal.alongLine_W) * goal.alongLine_W).norm();
  told.reached = told.distance <= kinematics::kReachedWithin;
  for (const auto& [d_B, d_W] : goal.directions) {
    const Vector3d now = X_WBone.linear() * d_B;
    told.directionError = std::max(told.directionError, std::atan2(now.cross(d_W).norm(), now.dot(d_W)));
  }
  return told;
}

class Clearing {
 public:
  Clearing(const Scenario& scenario, const ReachRanges& ranges) : scenario_(scenario), ranges_(ranges) {}

  /// Holds the joints of the goal whose bones enter each other at the last free place of their way, takes them out of
  /// the goal and puts them into `start`; false where none does.
  bool hold(IkGoal& goal, Pose& start, const Pose& wished) {
    const std::size_t before = goal.joints.size();
    std::erase_if(goal.joints, [&](JointIndex joint) {
      const JointEvaluator judge = evaluator(joint);
      if (!judge.contactBeyond(wished[joint])) return false;
      const auto begin = freeStart(judge, joint, start[joint]);
      if (!begin) return false;
      start[joint] = ranges_.lastSupported(joint, *begin, wished[joint]);
      noteStop(judge, joint, start[joint], wished[joint]);
      return true;
    });
    return goal.joints.size() < before;
  }

  std::vector<JointStop> stops;

 private:
  JointEvaluator evaluator(JointIndex joint) const {
    return {scenario_.specimen(), scenario_.articulation(), scenario_.assumptions(), joint, scenario_.contact()};
  }

  /// Where the joint starts from, else the middle of its range, else neutral.
  std::optional<Vector3d> freeStart(const JointEvaluator& judge, JointIndex joint, const Vector3d& start) const {
    const std::optional<Vector3d> inside = ranges_.inside(joint);
    for (const Vector3d& from : {start, inside.value_or(start), Vector3d(Vector3d::Zero())})
      if (!judge.beyond(from) && !judge.contactBeyond(from)) return from;
    return std::nullopt;
  }

  void noteStop(const JointEvaluator& judge, JointIndex joint, const Vector3d& held, const Vector3d& wished) {
    const Vector3d way = judge.toOwn(wished) - judge.toOwn(held);
    int motion = 0;
    way.cwiseAbs().maxCoeff(&motion);
    const double sign = std::copysign(1.0, way[motion]);
    const Vector3d past = judge.fromOwn(judge.toOwn(held) + 2 * kContactPrecision * way.normalized());
    const ContactPlace place = judge.contact(past);
    stops.push_back(
        {joint,
         motion,
         sign,
         std::max(0.0, sign * held[motion]),
         {Stop::Why::Criterion, FindingKind::BoneContact, anatomy::Side::Midline, place.tolerated, place.parts}});
  }

  const Scenario& scenario_;
  const ReachRanges& ranges_;
};

}  // namespace

ClearReach reachClear(const Scenario& scenario, const ReachRanges& ranges, const Pose& start, const IkGoal& goal,
                      const Pose* from) {
  const auto search = [&](const Pose& begin, const IkGoal& wish, const Pose* near) {
    if (wish.joints.empty()) return asPosed(scenario, begin, wish);
    return kinematics::reach(scenario.specimen(), scenario.articulation(), ranges, begin, wish, near);
  };
  ClearReach answer{search(start, goal, from), {}};
  if (scenario.contact() && !goal.pastRanges) {
    Clearing clearing(scenario, ranges);
    IkGoal left = goal;
    Pose begin = start;
    for (int round = 0; round < kMostRounds && clearing.hold(left, begin, answer.reached.pose); ++round) {
      // The joints that are held may not be enough: what the others answer is looked through again.
      Pose near = answer.reached.pose;
      for (const JointStop& stop : clearing.stops) near[stop.joint] = begin[stop.joint];
      answer.reached = search(begin, left, &near);
    }
    // Whatever is left after the last round is held without another search.
    if (clearing.hold(left, begin, answer.reached.pose)) {
      for (const JointStop& stop : clearing.stops) answer.reached.pose[stop.joint] = begin[stop.joint];
      answer.reached = asPosed(scenario, answer.reached.pose, goal);
    }
    if (!answer.reached.reached) answer.stops = std::move(clearing.stops);
  }
  for (const auto& stop : answer.reached.stopping) answer.stops.push_back(ranges.stopOf(answer.reached.pose, stop));
  return answer;
}

}  // namespace zyga::range
