#include "core/range/contact/clear_reach.h"

#include <algorithm>
#include <cmath>

#include "core/kinematics/following.h"
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
      if (wished[joint] == start[joint] || !enters(joint, wished[joint])) return false;
      const JointEvaluator judge = evaluator(joint);
      const auto begin = freeStart(judge, joint, start[joint]);
      if (!begin) return false;
      start[joint] = ranges_.lastSupported(joint, *begin, wished[joint]);
      noteStop(judge, joint, start[joint], wished[joint]);
      held.push_back(joint);
      return true;
    });
    return goal.joints.size() < before;
  }

  /// The same for all joints of the goal between two bones that several joints move against each other.
  bool holdBetween(IkGoal& goal, Pose& start, const Pose& wished) {
    const ContactModel& contact = *scenario_.contact();
    const ContactTolerance& tolerance = scenario_.assumptions().contactTolerated;
    const kinematics::Placement X_WB =
        kinematics::forwardKinematics(scenario_.specimen(), scenario_.articulation(), wished);
    for (std::size_t pair = 0; pair < contact.pairs().size(); ++pair) {
      if (contact.movers(pair).size() < 2) continue;
      std::vector<JointIndex> moved;
      for (const JointIndex joint : contact.movers(pair)) {
        if (std::find(goal.joints.begin(), goal.joints.end(), joint) != goal.joints.end()) moved.push_back(joint);
      }
      if (moved.empty() || !contact.entersBeyond(pair, X_WB, tolerance)) continue;
      const auto free = lastFree(pair, moved, start, wished);
      if (!free) continue;
      for (const JointIndex joint : moved) start[joint] = (*free)[joint];
      noteStop(pair, moved, start, wished);
      std::erase_if(goal.joints,
                    [&](JointIndex joint) { return std::find(moved.begin(), moved.end(), joint) != moved.end(); });
      return true;
    }
    return false;
  }

  std::vector<JointStop> stops;
  std::vector<JointIndex> held;

 private:
  JointEvaluator evaluator(JointIndex joint) const {
    return {scenario_.specimen(), scenario_.articulation(), scenario_.assumptions(), joint, scenario_.contact()};
  }

  /// What JointEvaluator::contactBeyond says, without the making of one: every joint is asked in every frame of a drag.
  bool enters(JointIndex joint, const Vector3d& angles) const {
    const anatomy::Joint& bones = scenario_.specimen()[joint];
    if (bones.kind == anatomy::JointKind::Fixed) return false;
    const auto X_PD = kinematics::jointTransform(bones, scenario_.articulation()[joint], angles);
    return scenario_.contact()->entersBeyond(joint, X_PD, scenario_.assumptions().contactTolerated);
  }

  /// Where the joint starts from, else the middle of its range, else neutral.
  std::optional<Vector3d> freeStart(const JointEvaluator& judge, JointIndex joint, const Vector3d& start) const {
    const std::optional<Vector3d> inside = ranges_.inside(joint);
    for (const Vector3d& from : {start, inside.value_or(start), Vector3d(Vector3d::Zero())})
      if (!judge.beyond(from) && !judge.contactBeyond(from)) return from;
    return std::nullopt;
  }

  /// The wished pose with these joints the part of their way from the start, in their own angles.
  Pose partWay(const std::vector<JointIndex>& moved, const Pose& start, const Pose& wished, double part) const {
    Pose pose = wished;
    for (const JointIndex j : moved) {
      const anatomy::Joint& joint = scenario_.specimen()[j];
      const auto& rest = scenario_.articulation()[j];
      const Vector3d from = kinematics::toOwn(joint, rest, start[j]), to = kinematics::toOwn(joint, rest, wished[j]);
      pose[j] = kinematics::fromOwn(joint, rest, from + part * (to - from));
    }
    return pose;
  }

  /// The last pose on the joints' common way, by steps of three degrees and then bisecting, at which neither the pair
  /// nor a range stops them; none when the start does not serve.
  std::optional<Pose> lastFree(std::size_t pair, const std::vector<JointIndex>& moved, const Pose& start,
                               const Pose& wished) const {
    constexpr double kStep = 0.052;  // rad
    double farthest = 0;
    for (const JointIndex j : moved) farthest = std::max(farthest, (wished[j] - start[j]).norm());
    const auto freeAt = [&](double part) -> std::optional<Pose> {
      Pose pose = partWay(moved, start, wished, part);
      for (const JointIndex j : moved)
        if (part > 0 && !ranges_.supports(j, pose[j])) return std::nullopt;
      const auto X_WB = kinematics::forwardKinematics(scenario_.specimen(), scenario_.articulation(), pose);
      if (scenario_.contact()->entersBeyond(pair, X_WB, scenario_.assumptions().contactTolerated)) return std::nullopt;
      return pose;
    };
    std::optional<Pose> last = freeAt(0);
    if (!last) return last;
    double free = 0, stopped = 1;
    const int steps = std::max(1, static_cast<int>(std::ceil(farthest / kStep)));
    for (int i = 1; i <= steps; ++i) {
      stopped = static_cast<double>(i) / steps;
      auto pose = freeAt(stopped);
      if (!pose) break;
      last = std::move(pose);
      free = stopped;
    }
    while ((stopped - free) * farthest > kContactPrecision) {
      const double middle = 0.5 * (free + stopped);
      auto pose = freeAt(middle);
      (pose ? free : stopped) = middle;
      if (pose) last = std::move(pose);
    }
    return last;
  }

  /// Told of the joint that would have gone on farthest.
  void noteStop(std::size_t pair, const std::vector<JointIndex>& moved, const Pose& free, const Pose& wished) {
    double most = -1;
    JointStop stop;
    for (const JointIndex joint : moved) {
      const Vector3d way = wished[joint] - free[joint];
      int motion = 0;
      const double turn = way.cwiseAbs().maxCoeff(&motion);
      held.push_back(joint);
      if (turn <= most) continue;
      most = turn;
      const double sign = std::copysign(1.0, way[motion]);
      stop = {joint, motion, sign, std::max(0.0, sign * free[joint][motion]), {}};
    }
    const auto X_WB = kinematics::forwardKinematics(scenario_.specimen(), scenario_.articulation(), wished);
    const ContactPlace place = scenario_.contact()->place(pair, X_WB, scenario_.assumptions().contactTolerated);
    stop.stop = {Stop::Why::Criterion, FindingKind::BoneContact, anatomy::Side::Midline, place.tolerated, place.parts};
    stops.push_back(stop);
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
    const auto holds = [&] {
      return clearing.hold(left, begin, answer.reached.pose) || clearing.holdBetween(left, begin, answer.reached.pose);
    };
    for (int round = 0; round < kMostRounds && holds(); ++round) {
      // The joints that are held may not be enough: what the others answer is looked through again.
      Pose near = answer.reached.pose;
      for (const JointIndex joint : clearing.held) near[joint] = begin[joint];
      answer.reached = search(begin, left, &near);
    }
    // Whatever is left after the last round is held without another search.
    while (holds()) {
      for (const JointIndex joint : clearing.held) answer.reached.pose[joint] = begin[joint];
      answer.reached = asPosed(scenario, answer.reached.pose, goal);
    }
    if (!answer.reached.reached) answer.stops = std::move(clearing.stops);
  }
  for (const auto& stop : answer.reached.stopping) answer.stops.push_back(ranges.stopOf(answer.reached.pose, stop));
  return answer;
}

}  // namespace zyga::range
