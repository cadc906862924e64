#include "core/kinematics/reach.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numbers>

#include "core/kinematics/following.h"
#include "core/kinematics/reach_chain.h"
#include "core/kinematics/reach_forward.h"
#include "core/linear/linear.h"

namespace zyga::kinematics {
namespace {

using Eigen::MatrixXd;
using Eigen::Vector3d;
using Eigen::VectorXd;

// The problem.
//
// Unknowns x: the free angles of the chain, each divided by half the width of its joint's range (its "unit"), so that
// one unit means the same to a stiff joint and to a loose one. Minimised is
//
//   E(x) + P |p(x)| + B |b(x)|,   E = 1/2 sum_i w_i x_i^2,
//
// where x = 0 is the pose the drag started from, w are the weights of the bend style, p is the vector from the point to
// its target (m; without its part along the line of sight where any point of that line will do) and b the turns that
// the directions lack (rad), subject to every criterion of every joint's range, c(x) <= 0, and to its box of angles.
// Norms instead of squares make the penalty exact: for a penalty P above the multiplier of the task the minimum lies on
// the target itself and not beside it. Penalties rise as far as they are needed and no farther than these, in effort,
// which counts a joint at its limit as one half: the target comes first, then the directions. A millimetre outweighs
// any bend; a direction that cannot be kept gives way.
constexpr double kLargestPointPenalty = 1e4;      // a metre
constexpr double kLargestDirectionPenalty = 300;  // a radian
/// Misses smaller than these weigh as squares; below them nothing could be seen.
constexpr double kFinePoint = 1e-3;      // m
constexpr double kFineDirection = 3e-3;  // rad
constexpr int kMostSteps = 80;
constexpr int kMostStepsOfAFrame = 15;  // of a drag, which goes on in the next frame
constexpr double kSettledStep = 2e-4;   // units (half widths of a range)
constexpr double kSettledPoint = 1e-5;  // m

/// Turn that brings a unit vector to another one, as a vector, rad.
Vector3d turnTo(const Vector3d& from, const Vector3d& to) {
  const Vector3d axis = from.cross(to);
  const double s = axis.norm(), c = from.dot(to);
  if (s > 1e-12) return axis * (std::atan2(s, c) / s);
  return c > 0 ? Vector3d::Zero() : Vector3d(std::numbers::pi * from.unitOrthogonal());
}

/// Where the point and the directions stand against the goal.
struct TaskError {
  Vector3d point;                    ///< from the point to the target, m
  std::vector<Vector3d> directions;  ///< rad
  double direction() const {
    double sum = 0;
    for (const Vector3d& turn : directions) sum += turn.squaredNorm();
    return std::sqrt(sum);
  }
};

/// Sequential quadratic programming. At x the task is taken as linear, p(x + d) = p - J d and b(x + d) = b - K d with
/// the Jacobians of the point's place and of the bone's turn, and so is every criterion. The step d minimises
///
///   1/2 |p - J d|^2 + 1/2 beta^2 |b - K d|^2 + epsilon E(x + d)
///
/// over the half-spaces of the criteria, of the boxes and of |d_i| <= trust radius, which is a convex quadratic
/// programme (QuadraticProgram). epsilon is the ratio by which the square of a miss stands for its penalty: d/d|p| of P
/// |p| equals that of |p|^2 / (2 epsilon) at |p| = epsilon P, so epsilon = |p| / P; and beta^2 = epsilon B / |b|
/// likewise.
///
/// Hessian of the model: H = J'J + beta^2 K'K + epsilon diag(w) + S. S is the second-order part that Gauss-Newton
/// leaves out, S_ij = -p . d2p/dx_i dx_j = -p . (a_i x J_j) for an axis a_i nearer to the root than j (the derivative
/// of a lever arm by a turn about an outer axis is its cross product); it counts only where a miss stays, where it
/// tells how a stretched chain resists.
///
/// A step is taken when the penalty function above falls by a part of what the model promises; else the trust radius
/// shrinks. Levenberg 1944, Quart. Appl. Math. 2:164; merit, penalties and trust radius as in Nocedal & Wright 2006,
/// Numerical Optimization, chapter 18.
class Search {
 public:
  Search(const anatomy::Specimen& specimen, const Articulation& articulation, ReachChain& chain, const IkGoal& goal,
         const Pose& from)
      : specimen_(&specimen),
        articulation_(&articulation),
        chain_(&chain),
        goal_(&goal),
        across_(Eigen::Matrix3d::Identity() - goal.alongLine_W * goal.alongLine_W.transpose()),
        pose_(from),
        X_WB_(forwardKinematics(specimen, articulation, pose_)),
        miss_(missOf(X_WB_)),
        residual_(Vector3d::Zero()) {}

  void run(int mostSteps) {
    for (; iterations_ < mostSteps && !settled_; ++iterations_) step();
  }

  const Pose& pose() const { return pose_; }
  const TaskError& miss() const { return miss_; }
  const Placement& placement() const { return X_WB_; }
  int iterations() const { return iterations_; }

 private:
  TaskError missOf(const Placement& X_WB) const {
    TaskError miss{across_ * (goal_->p_WTarget - chain_->pointOf(X_WB)), {}};
    const Eigen::Matrix3d& R_WB = X_WB[goal_->bone.value].linear();
    for (const DirectionConstraint& direction : goal_->directions)
      miss.directions.push_back(turnTo(R_WB * direction.d_B, direction.d_W));
    return miss;
  }

  double effortOf(const VectorXd& away) const { return 0.5 * away.dot(chain_->weights().cwiseProduct(away)); }

  /// Rows: the point, then each direction, weighted; columns in units.
  void linearise() {
    jacobianInto(*specimen_, *articulation_, pose_, X_WB_, chain_->free(), chain_->pointOf(X_WB_), J_);
    J_.point *= chain_->units().asDiagonal();
    J_.turn *= chain_->units().asDiagonal();
    const auto directions = static_cast<Eigen::Index>(goal_->directions.size());
    rows_.resize(3 + 3 * directions, chain_->size());
    sought_.resize(3 + 3 * directions);
    rows_.topRows<3>() = across_ * J_.point;
    sought_.head<3>() = miss_.point;
    // epsilon and beta, see above.
    effort_ = std::max(residual_.norm(), kFinePoint) / kLargestPointPenalty;
    directionWeight_ = std::sqrt(effort_ * kLargestDirectionPenalty / std::max(directionResidual_, kFineDirection));
    for (Eigen::Index i = 0; i < directions; ++i) {
      const DirectionConstraint& direction = goal_->directions[static_cast<std::size_t>(i)];
      const Vector3d d_W = X_WB_[goal_->bone.value].linear() * direction.d_B;
      const Eigen::Matrix3d across = Eigen::Matrix3d::Identity() - d_W * d_W.transpose();
      rows_.middleRows<3>(3 + 3 * i) = directionWeight_ * across * J_.turn;
      sought_.segment<3>(3 + 3 * i) = directionWeight_ * miss_.directions[static_cast<std::size_t>(i)];
    }
  }

  /// Inverse of H = M'M + D, M the weighted rows of the task and D = epsilon diag(w) + S, by the identity of Woodbury,
  /// H^-1 = D^-1 - D^-1 M' (I + M D^-1 M')^-1 M D^-1. The sum itself must not be formed: epsilon is so small that the
  /// effort would be lost in the rounding of M'M.
  MatrixXd inverseHessian() const {
    const VectorXd light = effort_ * chain_->weights();
    MatrixXd inverse;
    if (residual_.norm() < 1e-6) {
      inverse = light.cwiseInverse().asDiagonal();
    } else {
      inverse = inverseWithCurvature(light);
    }
    const MatrixXd across = rows_ * inverse;
    MatrixXd A = across * rows_.transpose();
    A.diagonal().array() += 1;
    inverse.noalias() -= across.transpose() * linear::solvePositive(A, across);
    return inverse;
  }

  /// Inverse of D with the second-order part S, see above; `residual_` is the miss that stays.
  MatrixXd inverseWithCurvature(const VectorXd& light) const {
    const Eigen::Index n = chain_->size();
    MatrixXd S(n, n);
    for (Eigen::Index j = 0; j < n; ++j) {
      const Vector3d column = J_.point.col(j).cross(residual_);
      for (Eigen::Index i = 0; i <= j; ++i) S(i, j) = S(j, i) = -J_.turn.col(i).dot(column);
    }
    for (const ReachChain::Turning& turning : chain_->turning()) bendWithin(turning, S);
    S.diagonal() += light;
    const auto inverse = linear::inverseOfPositive(S);
    return inverse ? *inverse : convexInverse(S, light.minCoeff());
  }

  /// The part of S within one joint whose axial rotation z follows the others, z = f(x_0, x_1) + what is turned by
  /// hand. Then the second derivatives of the point are P_ij + f_j P_i2 + f_i P_j2 + f_i f_j P_22 + f_ij P_2, with P
  /// those of three angles that go each by itself, P_ab = a_a x (a_b x r) for a no farther out than b.
  void bendWithin(const ReachChain::Turning& turning, MatrixXd& S) const {
    const anatomy::Joint& joint = (*specimen_)[turning.joint];
    const Articulation::Rest& rest = (*articulation_)[turning.joint];
    if (!axialFollows(joint, rest)) return;
    const AxialSlopes axial = axialSlopes(joint, rest, pose_[turning.joint]);
    const std::array<TurningAxis, 3> axes = plainAxes(joint, rest, pose_[turning.joint], X_WB_);
    const Vector3d r = chain_->pointOf(X_WB_) - axes[0].p_WCentre;
    const auto P = [&](int a, int b) {
      return axes[static_cast<std::size_t>(std::min(a, b))].direction_W.cross(
          axes[static_cast<std::size_t>(std::max(a, b))].direction_W.cross(r));
    };
    const auto slope = [&](int motion) { return motion < 2 ? axial.first[motion] : 0.0; };
    for (int i = turning.first; i < turning.first + turning.count; ++i) {
      for (int j = turning.first; j <= i; ++j) {
        const int m = chain_->free()[static_cast<std::size_t>(i)].motion;
        const int n = chain_->free()[static_cast<std::size_t>(j)].motion;
        Vector3d bend = P(m, n) + slope(n) * P(m, 2) + slope(m) * P(n, 2) + slope(m) * slope(n) * P(2, 2);
        if (m < 2 && n < 2) bend += axial.second(m, n) * axes[2].direction_W.cross(r);
        S(i, j) = S(j, i) = -residual_.dot(bend) * chain_->units()[i] * chain_->units()[j];
      }
    }
  }

  /// The inverse of the nearest matrix whose eigenvalues are at least `least`. Negative curvature means that a longer
  /// step would gain more and more; the trust radius bounds it then, not the model.
  static MatrixXd convexInverse(const MatrixXd& S, double least) {
    const auto eigen = linear::symmetricEigen(S);
    const VectorXd inverse = eigen.values.cwiseMax(least).cwiseInverse();
    return eigen.vectors * inverse.asDiagonal() * eigen.vectors.transpose();
  }

  void step() {
    linearise();
    const VectorXd away = chain_->deviation(pose_);
    const VectorXd g = rows_.transpose() * sought_ - effort_ * chain_->weights().cwiseProduct(away);
    QuadraticProgram program(inverseHessian());
    for (int attempt = 0; attempt < 12; ++attempt) {
      VectorXd x;
      if (!program.solve(g, chain_->allowed(pose_, trustRadius_), x)) break;
      if (tryStep(away, x)) return;
    }
    settled_ = true;
  }

  /// Takes the step when the merit falls by a part of what the linear picture promises.
  bool tryStep(const VectorXd& away, const VectorXd& x) {
    const VectorXd linear = sought_ - rows_ * x;
    const double gainPoint = sought_.head<3>().norm() - linear.head<3>().norm();
    const double gainDirection = directionNorm(sought_) - directionNorm(linear);
    const double before = effortOf(away);
    const double cost = effortOf(away + x) - before;
    raisePenalties(gainPoint, gainDirection, cost);
    const double promised = pointPenalty_ * gainPoint + directionPenalty_ * gainDirection - cost;
    Pose next = chain_->stepped(pose_, x);
    trial_ = X_WB_;
    chain_->placeInto(next, trial_);
    TaskError miss = missOf(trial_);
    const VectorXd nextAway = chain_->deviation(next);
    const double kept = pointPenalty_ * (miss_.point.norm() - miss.point.norm()) +
                        directionPenalty_ * (miss_.direction() - miss.direction()) - (effortOf(nextAway) - before);
    const double length = x.size() ? x.cwiseAbs().maxCoeff() : 0;
    const double moved = x.size() ? (nextAway - away).cwiseAbs().maxCoeff() : 0;
    if (kept <= 0 || kept < 0.05 * promised) {
      const double pointKept = std::abs(miss.point.norm() - miss_.point.norm());
      if (length < kSettledStep && pointKept < kSettledPoint) {
        settled_ = true;
        return true;
      }
      trustRadius_ = 0.3 * std::min(length, trustRadius_);
      return false;
    }
    const double pointMoved = (chain_->pointOf(trial_) - chain_->pointOf(X_WB_)).norm();
    // What remains only because the step was cut to the trust radius is left to the next steps, and is no miss that
    // stays.
    const bool trusting = length > 0.9 * trustRadius_;
    const bool ahead = trusting && linear.head<3>().norm() < 0.9 * sought_.head<3>().norm();
    residual_ = ahead ? Vector3d(Vector3d::Zero()) : Vector3d(linear.head<3>());
    directionResidual_ = ahead ? 0 : directionNorm(linear);
    if (trusting && kept > 0.5 * promised) trustRadius_ = std::min(2.5 * trustRadius_, 2.0);
    pose_ = std::move(next);
    std::swap(X_WB_, trial_);
    miss_ = std::move(miss);
    settled_ = moved < kSettledStep && pointMoved < kSettledPoint;
    return true;
  }

  double directionNorm(const VectorXd& rows) const { return rows.tail(rows.size() - 3).norm() / directionWeight_; }

  /// Raises the penalties so that a miss costs more than the effort of the step that mends it, twice as much (Nocedal &
  /// Wright 2006, equation 18.36), up to the largest ones above.
  void raisePenalties(double gainPoint, double gainDirection, double cost) {
    if (gainPoint > 1e-9) {
      const double needed = 2 * (cost - directionPenalty_ * gainDirection) / gainPoint;
      pointPenalty_ = std::clamp(needed, pointPenalty_, kLargestPointPenalty);
    }
    if (gainDirection > 1e-9 && gainPoint >= 0) {
      directionPenalty_ = std::clamp(2 * cost / gainDirection, directionPenalty_, kLargestDirectionPenalty);
    }
  }

  const anatomy::Specimen* specimen_;
  const Articulation* articulation_;
  ReachChain* chain_;
  const IkGoal* goal_;
  Eigen::Matrix3d across_;  ///< takes away what does not count
  Pose pose_;
  Placement X_WB_, trial_;
  TaskError miss_;
  Vector3d residual_;  ///< of the last step's linear picture
  Jacobian J_;
  MatrixXd rows_;
  VectorXd sought_;
  double directionResidual_ = 0, effort_ = 0, directionWeight_ = 1;
  double trustRadius_ = 0.7;  // units
  double pointPenalty_ = 10, directionPenalty_ = 1;
  int iterations_ = 0;
  bool settled_ = false;
};

}  // namespace

double JointRanges::Excesses::worst() const {
  return count == 0 ? 0 : *std::max_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(count));
}

bool JointRanges::supports(JointIndex joint, const Vector3d& angles) const {
  const Box bounds = box(joint);
  const bool within = (angles.array() >= bounds.min.array()).all() && (angles.array() <= bounds.max.array()).all();
  return within && excesses(joint, angles).worst() <= 0;
}

namespace {

/// How far a chain is bent to be searched from there, share of half of each range.
constexpr double kThrown = 0.7;

/// Searches from the start, or from `from`. Without a `from`, where the local minimum found misses the target, also
/// from the chain bent far up and far down: a chain held by its limits has several local minima.
Search searched(const anatomy::Specimen& specimen, const Articulation& articulation, ReachChain& chain,
                const IkGoal& goal, const Pose* from) {
  Search best(specimen, articulation, chain, goal, from ? chain.startFrom(*from) : chain.home());
  best.run(from ? kMostStepsOfAFrame : kMostSteps);
  if (from || goal.pastRanges) return best;
  for (const double way : {kThrown, -kThrown}) {
    if (best.miss().point.norm() <= kReachedWithin) break;
    Search other(specimen, articulation, chain, goal, chain.bent({way, 0, 0}));
    other.run(kMostSteps);
    if (other.miss().point.norm() < best.miss().point.norm() - kReachedWithin) best = std::move(other);
  }
  return best;
}

/// A chain, and where the search of it has come.
struct Searched {
  std::shared_ptr<ReachChain> chain;
  Search search;
  double distance() const { return search.miss().point.norm(); }
};

/// What a search that turns forward only asks, and the chain that it is asked of.
struct ForwardQuestion {
  ForwardQuestion(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
                  const Pose& home, const Pose& start, const IkGoal& whole, const AskedMotions& asked)
      : forward(ranges, home, asked),
        goal(withAskedMotions(whole, asked)),
        chain(specimen, articulation, forward, start, goal) {}
  ForwardQuestion(const ForwardQuestion&) = delete;

  ForwardRanges forward;
  IkGoal goal;
  ReachChain chain;
};

/// No joint turns back where the target is met as well, or missed by no more, without: where a drag goes on from a pose
/// in which none does, that is tried first, and else when some do.
Searched evenly(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
                const Pose& start, const IkGoal& goal, const Pose* from) {
  const auto whole = std::make_shared<ReachChain>(specimen, articulation, ranges, start, goal);
  const auto searchWhole = [&] { return Searched{whole, searched(specimen, articulation, *whole, goal, from)}; };
  const auto asked = askedMotions(specimen, articulation, *whole, goal);
  if (!asked) return searchWhole();
  std::shared_ptr<ForwardQuestion> question;
  const auto searchAhead = [&](const Pose* begin) {
    if (!question)
      question = std::make_shared<ForwardQuestion>(specimen, articulation, ranges, whole->home(), start, goal, *asked);
    // The chain lives as long as its question.
    return Searched{{question, &question->chain},
                    searched(specimen, articulation, question->chain, question->goal, begin)};
  };
  std::optional<Searched> ahead;
  const bool goesOnAhead = from && !turnsBack(*whole, *from, *asked);
  if (goesOnAhead) {
    ahead = searchAhead(from);
    if (ahead->distance() <= kReachedWithin) return *ahead;
  }
  Searched found = searchWhole();
  if (!turnsBack(*whole, found.search.pose(), *asked)) return found;
  const double near = std::max(found.distance(), kReachedWithin);
  if (!ahead) ahead = searchAhead(from);
  // A drag may have been led into a corner of its ranges: once more from well inside them. Out of reach that is tried
  // when the first joint turns back, and not in every frame after it.
  const bool worthWhile = goesOnAhead || (from && found.distance() <= kReachedWithin);
  if (worthWhile && ahead->distance() > near) {
    const Pose bent = whole->bent(sharesAhead(*asked, kThrown));
    ahead = searchAhead(&bent);
  }
  return ahead->distance() <= near ? *ahead : found;
}

}  // namespace

IkResult reach(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
               const Pose& start, const IkGoal& goal, const Pose* from) {
  IkResult result;
  result.pose = start;
  if (!goal.p_WTarget.allFinite()) return result;
  const Searched found = evenly(specimen, articulation, ranges, start, goal, from);
  const ReachChain& chain = *found.chain;
  const Search& search = found.search;
  result.pose = search.pose();
  result.p_WPoint = chain.pointOf(search.placement());
  result.distance = search.miss().point.norm();
  result.reached = result.distance <= kReachedWithin;
  for (const Vector3d& turn : search.miss().directions)
    result.directionError = std::max(result.directionError, turn.norm());
  result.iterations = search.iterations();
  if (!result.reached && !goal.pastRanges) {
    result.stopping = chain.stopping(ranges, search.pose(), search.placement(), search.miss().point);
  }
  for (const JointIndex joint : goal.joints) {
    if (!ranges.supports(joint, result.pose[joint])) result.broken.push_back(joint);
  }
  return result;
}

}  // namespace zyga::kinematics
