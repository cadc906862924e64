#include "core/kinematics/reach_forward.h"

#include <algorithm>
#include <cmath>

namespace zyga::kinematics {

using Eigen::Vector3d;

std::optional<AskedMotions> askedMotions(const anatomy::Specimen& specimen, const Articulation& articulation,
                                         const ReachChain& chain, const IkGoal& goal) {
  constexpr double kAskedFrom = 0.5, kNothingUpTo = 0.1;  // cosines
  if (goal.pastRanges || goal.style != BendStyle::Even || !goal.directions.empty()) return std::nullopt;
  const Placement X_WB = forwardKinematics(specimen, articulation, chain.home());
  const Vector3d p_WPoint = chain.pointOf(X_WB);
  const Eigen::Matrix3d across = Eigen::Matrix3d::Identity() - goal.alongLine_W * goal.alongLine_W.transpose();
  const Vector3d way = across * (goal.p_WTarget - p_WPoint);
  const Jacobian J = jacobian(specimen, articulation, chain.home(), X_WB, chain.free(), p_WPoint);
  AskedMotions asked{};
  for (int motion = 0; motion < 3; ++motion) {
    Vector3d alike = Vector3d::Zero();
    for (Eigen::Index c = 0; c < chain.size(); ++c)
      if (chain.free()[static_cast<std::size_t>(c)].motion == motion) alike += chain.units()[c] * J.point.col(c);
    alike = across * alike;
    const double lengths = alike.norm() * way.norm();
    const double cosine = lengths > 1e-9 ? alike.dot(way) / lengths : 0;
    Asked& of = asked[static_cast<std::size_t>(motion)];
    if (std::abs(cosine) > kAskedFrom)
      of = cosine > 0 ? Asked::Positive : Asked::Negative;
    else if (std::abs(cosine) > kNothingUpTo)
      of = Asked::Any;
  }
  const bool any =
      std::any_of(asked.begin(), asked.end(), [](Asked of) { return of == Asked::Positive || of == Asked::Negative; });
  return any ? std::optional(asked) : std::nullopt;
}

bool turnsBack(const ReachChain& chain, const Pose& pose, const AskedMotions& asked) {
  const Eigen::VectorXd away = chain.deviation(pose);
  for (Eigen::Index c = 0; c < away.size(); ++c) {
    const Asked of = asked[static_cast<std::size_t>(chain.free()[static_cast<std::size_t>(c)].motion)];
    if (of == Asked::Positive && away[c] < -kTurnsBack) return true;
    if (of == Asked::Negative && away[c] > kTurnsBack) return true;
  }
  return false;
}

std::array<double, 3> sharesAhead(const AskedMotions& asked, double share) {
  std::array<double, 3> shares{};
  for (std::size_t motion = 0; motion < asked.size(); ++motion) {
    if (asked[motion] == Asked::Positive) shares[motion] = share;
    if (asked[motion] == Asked::Negative) shares[motion] = -share;
  }
  return shares;
}

IkGoal withAskedMotions(IkGoal goal, const AskedMotions& asked) {
  for (std::size_t motion = 0; motion < asked.size(); ++motion)
    goal.motions[motion] = goal.motions[motion] && asked[motion] != Asked::Nothing;
  return goal;
}

JointRanges::Box ForwardRanges::box(JointIndex joint) const {
  Box box = ranges_.box(joint);
  for (int motion = 0; motion < 3; ++motion) {
    const Asked of = asked_[static_cast<std::size_t>(motion)];
    if (of == Asked::Positive) box.min[motion] = home_[joint][motion];
    if (of == Asked::Negative) box.max[motion] = home_[joint][motion];
  }
  return box;
}

std::optional<Vector3d> ForwardRanges::inside(JointIndex joint) const {
  const std::optional<Vector3d> inside = ranges_.inside(joint);
  if (!inside) return inside;
  const Box within = box(joint);
  return inside->cwiseMax(within.min).cwiseMin(within.max).eval();
}

}  // namespace zyga::kinematics
