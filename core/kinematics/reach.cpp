#include "core/kinematics/reach.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/kinematics/reach_chain.h"

namespace zyga::kinematics {
namespace {

using Eigen::MatrixXd;
using Eigen::Vector3d;
using Eigen::VectorXd;

// What a miss may cost in effort, which counts a joint at its limit as one half. The target comes first, then the
// bearings: a millimetre outweighs any bend, a bearing that can't be kept gives way.
constexpr double kMostPointPrice = 1e4;    // a metre
constexpr double kMostBearingPrice = 300;  // a radian
/// Misses smaller than these weigh as squares; below them nothing could be seen.
constexpr double kFinePoint = 1e-3;    // m
constexpr double kFineBearing = 3e-3;  // rad
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

/// Where the point and the bearings stand against what is wished.
struct Miss {
  Vector3d point;                  ///< from the point to the target, m
  std::vector<Vector3d> bearings;  ///< rad
  double bearing() const {
    double sum = 0;
    for (const Vector3d& turn : bearings) sum += turn.squaredNorm();
    return std::sqrt(sum);
  }
};

/// Sequential quadratic programming: at each step the point's and the bearings' motion and the criteria of the ranges
/// are taken as linear, and the best step that they and the trusted length allow is found exactly (Gauss-Newton with
/// the second-order part of the point's motion where the miss stays; damped by the trusted length, Levenberg 1944,
/// Quart. Appl. Math. 2:164; merit with exact penalty and trusted length as in Nocedal & Wright 2006, Numerical
/// Optimization, chapter 18).
class Search {
 public:
  Search(const anatomy::Specimen& specimen, const Articulation& articulation, ReachChain& chain, const Reach& wish,
         const Pose& from)
      : specimen_(&specimen),
        articulation_(&articulation),
        chain_(&chain),
        wish_(&wish),
        across_(Eigen::Matrix3d::Identity() - wish.alongLine_W * wish.alongLine_W.transpose()),
        pose_(from),
        X_WB_(place(specimen, articulation, pose_)),
        miss_(missOf(X_WB_)),
        residual_(Vector3d::Zero()) {}

  void run(int mostSteps) {
    for (; iterations_ < mostSteps && !settled_; ++iterations_) step();
  }

  const Pose& pose() const { return pose_; }
  const Miss& miss() const { return miss_; }
  const Placement& placement() const { return X_WB_; }
  int iterations() const { return iterations_; }

 private:
  Miss missOf(const Placement& X_WB) const {
    Miss miss{across_ * (wish_->p_WTarget - chain_->pointOf(X_WB)), {}};
    const Eigen::Matrix3d& R_WB = X_WB[wish_->bone.value].linear();
    for (const Bearing& bearing : wish_->bearings) miss.bearings.push_back(turnTo(R_WB * bearing.d_B, bearing.d_W));
    return miss;
  }

  double effortOf(const VectorXd& away) const { return 0.5 * away.dot(chain_->reluctance().cwiseProduct(away)); }

  /// Rows: the point, then each bearing, weighted; columns in units.
  void linearise() {
    jacobianInto(*specimen_, *articulation_, pose_, X_WB_, chain_->free(), chain_->pointOf(X_WB_), J_);
    J_.point *= chain_->units().asDiagonal();
    J_.turn *= chain_->units().asDiagonal();
    const auto bearings = static_cast<Eigen::Index>(wish_->bearings.size());
    rows_.resize(3 + 3 * bearings, chain_->size());
    goal_.resize(3 + 3 * bearings);
    rows_.topRows<3>() = across_ * J_.point;
    goal_.head<3>() = miss_.point;
    // A price on the size of a miss as a weight of its square: heavier, the smaller the miss is to be.
    effort_ = std::max(residual_.norm(), kFinePoint) / kMostPointPrice;
    bearingWeight_ = std::sqrt(effort_ * kMostBearingPrice / std::max(bearingResidual_, kFineBearing));
    for (Eigen::Index i = 0; i < bearings; ++i) {
      const Bearing& bearing = wish_->bearings[static_cast<std::size_t>(i)];
      const Vector3d d_W = X_WB_[wish_->bone.value].linear() * bearing.d_B;
      const Eigen::Matrix3d across = Eigen::Matrix3d::Identity() - d_W * d_W.transpose();
      rows_.middleRows<3>(3 + 3 * i) = bearingWeight_ * across * J_.turn;
      goal_.segment<3>(3 + 3 * i) = bearingWeight_ * miss_.bearings[static_cast<std::size_t>(i)];
    }
  }

  /// Inverse of rows' rows + effort + second-order part, by the identity of Woodbury: the effort is so light that the
  /// sum itself would drown it in rounding.
  MatrixXd inverseHessian() const {
    const VectorXd light = effort_ * chain_->reluctance();
    MatrixXd inverse;
    if (residual_.norm() < 1e-6) {
      inverse = light.cwiseInverse().asDiagonal();
    } else {
      inverse = inverseWithCurvature(light);
    }
    const MatrixXd across = rows_ * inverse;
    MatrixXd A = across * rows_.transpose();
    A.diagonal().array() += 1;
    inverse.noalias() -= across.transpose() * A.llt().solve(across);
    return inverse;
  }

  /// The point's second derivative by two angles is the outer axis' turn of the inner column; held against the miss
  /// that stays it tells how a stretched chain resists.
  MatrixXd inverseWithCurvature(const VectorXd& light) const {
    const Eigen::Index n = chain_->size();
    MatrixXd S(n, n);
    for (Eigen::Index j = 0; j < n; ++j) {
      const Vector3d column = J_.point.col(j).cross(residual_);
      for (Eigen::Index i = 0; i <= j; ++i) S(i, j) = S(j, i) = -J_.turn.col(i).dot(column);
    }
    S.diagonal() += light;
    const Eigen::LLT<MatrixXd> llt(S);
    if (llt.info() != Eigen::Success) return convexInverse(S, light.minCoeff());
    return llt.solve(MatrixXd::Identity(n, n));
  }

  /// Where the miss would fall faster and faster the trusted length holds the step, not the curvature.
  static MatrixXd convexInverse(const MatrixXd& S, double least) {
    const Eigen::SelfAdjointEigenSolver<MatrixXd> eigen(S);
    const VectorXd inverse = eigen.eigenvalues().cwiseMax(least).cwiseInverse();
    return eigen.eigenvectors() * inverse.asDiagonal() * eigen.eigenvectors().transpose();
  }

  void step() {
    linearise();
    const VectorXd away = chain_->away(pose_);
    const VectorXd g = rows_.transpose() * goal_ - effort_ * chain_->reluctance().cwiseProduct(away);
    QuadraticProgram program(inverseHessian());
    for (int attempt = 0; attempt < 12; ++attempt) {
      VectorXd x;
      if (!program.solve(g, chain_->allowed(pose_, trusted_), x)) break;
      if (tryStep(away, x)) return;
    }
    settled_ = true;
  }

  /// Takes the step when the merit falls by a part of what the linear picture promises.
  bool tryStep(const VectorXd& away, const VectorXd& x) {
    const VectorXd linear = goal_ - rows_ * x;
    const double gainPoint = goal_.head<3>().norm() - linear.head<3>().norm();
    const double gainBearing = bearingNorm(goal_) - bearingNorm(linear);
    const double before = effortOf(away);
    const double cost = effortOf(away + x) - before;
    raisePrices(gainPoint, gainBearing, cost);
    const double promised = pricePoint_ * gainPoint + priceBearing_ * gainBearing - cost;
    Pose next = chain_->stepped(pose_, x);
    trial_ = X_WB_;
    chain_->placeInto(next, trial_);
    Miss miss = missOf(trial_);
    const VectorXd nextAway = chain_->away(next);
    const double kept = pricePoint_ * (miss_.point.norm() - miss.point.norm()) +
                        priceBearing_ * (miss_.bearing() - miss.bearing()) - (effortOf(nextAway) - before);
    const double length = x.size() ? x.cwiseAbs().maxCoeff() : 0;
    const double moved = x.size() ? (nextAway - away).cwiseAbs().maxCoeff() : 0;
    if (kept <= 0 || kept < 0.05 * promised) {
      const double pointKept = std::abs(miss.point.norm() - miss_.point.norm());
      if (length < kSettledStep && pointKept < kSettledPoint) {
        settled_ = true;
        return true;
      }
      trusted_ = 0.3 * std::min(length, trusted_);
      return false;
    }
    const double pointMoved = (chain_->pointOf(trial_) - chain_->pointOf(X_WB_)).norm();
    // What the trusted length alone has left over will be made up by the next steps.
    const bool trusting = length > 0.9 * trusted_;
    const bool ahead = trusting && linear.head<3>().norm() < 0.9 * goal_.head<3>().norm();
    residual_ = ahead ? Vector3d(Vector3d::Zero()) : Vector3d(linear.head<3>());
    bearingResidual_ = ahead ? 0 : bearingNorm(linear);
    if (trusting && kept > 0.5 * promised) trusted_ = std::min(2.5 * trusted_, 2.0);
    pose_ = std::move(next);
    std::swap(X_WB_, trial_);
    miss_ = std::move(miss);
    settled_ = moved < kSettledStep && pointMoved < kSettledPoint;
    return true;
  }

  double bearingNorm(const VectorXd& rows) const { return rows.tail(rows.size() - 3).norm() / bearingWeight_; }

  /// A miss costs more effort than the step that mends it (Nocedal & Wright 2006, equation 18.36), up to its price.
  void raisePrices(double gainPoint, double gainBearing, double cost) {
    if (gainPoint > 1e-9) {
      const double needed = 2 * (cost - priceBearing_ * gainBearing) / gainPoint;
      pricePoint_ = std::clamp(needed, pricePoint_, kMostPointPrice);
    }
    if (gainBearing > 1e-9 && gainPoint >= 0) {
      priceBearing_ = std::clamp(2 * cost / gainBearing, priceBearing_, kMostBearingPrice);
    }
  }

  const anatomy::Specimen* specimen_;
  const Articulation* articulation_;
  ReachChain* chain_;
  const Reach* wish_;
  Eigen::Matrix3d across_;  ///< takes away what does not count
  Pose pose_;
  Placement X_WB_, trial_;
  Miss miss_;
  Vector3d residual_;  ///< of the last step's linear picture
  Jacobian J_;
  MatrixXd rows_;
  VectorXd goal_;
  double bearingResidual_ = 0, effort_ = 0, bearingWeight_ = 1;
  double trusted_ = 0.7;  // units
  double pricePoint_ = 10, priceBearing_ = 1;
  int iterations_ = 0;
  bool settled_ = false;
};

/// The joints that would bring the point nearer if their range let them, by how far.
std::vector<StoppingJoint> stoppingJoints(const anatomy::Specimen& specimen, const Articulation& articulation,
                                          const JointRanges& ranges, const ReachChain& chain, const Search& search) {
  constexpr double kNudge = 1e-2;         // units
  constexpr double kWorthTelling = 0.03;  // of the worst one
  const Jacobian J = jacobian(specimen, articulation, search.pose(), search.placement(), chain.free(),
                              chain.pointOf(search.placement()));
  const VectorXd pull = chain.units().asDiagonal() * (J.point.transpose() * search.miss().point.normalized());
  std::vector<StoppingJoint> stopping;
  for (const ReachChain::Turning& turning : chain.turning()) {
    StoppingJoint stop{turning.joint, Vector3d::Zero(), pull.segment(turning.first, turning.count).norm()};
    for (int c = turning.first; c < turning.first + turning.count; ++c) {
      stop.push[chain.free()[static_cast<std::size_t>(c)].motion] = pull[c] * chain.units()[c];
    }
    if (stop.share < 1e-4) continue;
    const Vector3d further = search.pose()[turning.joint] + kNudge / stop.share * stop.push;
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

}  // namespace

double JointRanges::Excesses::worst() const {
  return count == 0 ? 0 : *std::max_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(count));
}

bool JointRanges::supports(JointIndex joint, const Vector3d& angles) const {
  const Box bounds = box(joint);
  const bool within = (angles.array() >= bounds.least.array()).all() && (angles.array() <= bounds.most.array()).all();
  return within && excesses(joint, angles).worst() <= 0;
}

namespace {

/// Searches from the start, or from `from`; where the start has no memory of a drag and its valley ends short of the
/// target, from a neck thrown up and one thrown down as well: a chain that hangs on its limits has several.
Search searched(const anatomy::Specimen& specimen, const Articulation& articulation, ReachChain& chain,
                const Reach& wish, const Pose* from) {
  constexpr double kThrown = 0.7;  // of the range
  Search best(specimen, articulation, chain, wish, from ? chain.homeWith(*from) : chain.home());
  best.run(from ? kMostStepsOfAFrame : kMostSteps);
  if (from || wish.pastRanges) return best;
  for (const double way : {kThrown, -kThrown}) {
    if (best.miss().point.norm() <= kReachedWithin) break;
    VectorXd thrown = VectorXd::Zero(chain.size());
    for (Eigen::Index c = 0; c < chain.size(); ++c) {
      if (chain.free()[static_cast<std::size_t>(c)].motion == 0) thrown[c] = way;
    }
    Search other(specimen, articulation, chain, wish, chain.stepped(chain.home(), thrown));
    other.run(kMostSteps);
    if (other.miss().point.norm() < best.miss().point.norm() - kReachedWithin) best = std::move(other);
  }
  return best;
}

}  // namespace

Reached reach(const anatomy::Specimen& specimen, const Articulation& articulation, const JointRanges& ranges,
              const Pose& start, const Reach& wish, const Pose* from) {
  Reached result;
  result.pose = start;
  if (!wish.p_WTarget.allFinite()) return result;
  ReachChain chain(specimen, articulation, ranges, start, wish);
  const Search search = searched(specimen, articulation, chain, wish, from);
  result.pose = search.pose();
  result.p_WPoint = chain.pointOf(search.placement());
  result.distance = search.miss().point.norm();
  result.reached = result.distance <= kReachedWithin;
  for (const Vector3d& turn : search.miss().bearings) result.bearingOff = std::max(result.bearingOff, turn.norm());
  result.iterations = search.iterations();
  if (!result.reached && !wish.pastRanges) {
    result.stopping = stoppingJoints(specimen, articulation, ranges, chain, search);
  }
  for (const JointIndex joint : wish.joints) {
    if (!ranges.supports(joint, result.pose[joint])) result.broken.push_back(joint);
  }
  return result;
}

}  // namespace zyga::kinematics
