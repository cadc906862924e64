#include "core/kinematics/limb_reach.h"

#include <algorithm>
#include <cmath>

#include "core/linear/linear.h"

namespace zyga::kinematics {
namespace {

using anatomy::Specimen;
using Eigen::Vector3d;

// A leg has seven angles or so; room for more keeps the sizes off the heap.
constexpr int kMost = linear::kMostSmall;
using Angles = linear::SmallVector;
using Columns = Eigen::Matrix<double, 6, Eigen::Dynamic, 0, 6, kMost>;
using Square = linear::SmallMatrix;
using Residual = Eigen::Matrix<double, 6, 1>;  // place in m, then turn in rad, both in the world

/// An angle that may change, and between which values.
struct FreeAngle {
  std::size_t joint;  ///< in the leg's list of joints
  int motion;
  double min, max;
};

// The problem.
//
// Unknowns q: the angles of one leg that typed limits leave free. Minimised is
//
//   |W r(q)|^2 + k |q - q0|^2,   min <= q <= max,
//
// where r has six rows: from the middle of the sole to where it shall be (m), and the turn vector from the foot's
// attitude to the one asked for (rad); W weighs tilt and heading of the foot against its place, and the small k pulls
// to the angles the leg comes with, so that of many answers it is the nearest.
//
// Jacobian: an angle turns what lies below it about the axis a through the centre c (both in the world, the angles of
// the same joint before it already applied), so that the sole at p moves by a x (p - c) and the foot turns by a; r
// falls by as much. For the turn vector that is exact where the attitude is right, which is where the search ends.

/// The leg as a function of its free angles.
class Leg {
 public:
  Leg(const Specimen& specimen, const Articulation& articulation, const FootRig& rig, const Pose& pose,
      const Eigen::Isometry3d& X_WCarrier)
      : specimen_(specimen), articulation_(articulation), rig_(rig), X_WCarrier_(X_WCarrier) {
    for (std::size_t i = 0; i < rig.joints.size(); ++i) {
      const anatomy::Joint& joint = specimen[rig.joints[i]];
      angles_.push_back(pose[rig.joints[i]]);
      if (joint.kind == anatomy::JointKind::Fixed || !joint.typed) continue;
      for (int motion = 0; motion < 3; ++motion) {
        const anatomy::AngleLimits& limits = joint.typed->angles[static_cast<std::size_t>(motion)];
        angles_.back()[motion] = std::clamp(angles_.back()[motion], limits.min, limits.max);
        if (limits.min < limits.max && free_.size() < kMost) free_.push_back({i, motion, limits.min, limits.max});
      }
    }
  }

  const std::vector<FreeAngle>& free() const { return free_; }
  Eigen::Index size() const { return static_cast<Eigen::Index>(free_.size()); }
  JointIndex jointOf(Eigen::Index k) const { return rig_.joints[free_[static_cast<std::size_t>(k)].joint]; }

  Angles start() const {
    Angles q(size());
    for (Eigen::Index k = 0; k < size(); ++k) q[k] = angleOf(angles_, k);
    return q;
  }

  /// Knee or elbow bent by a third of what it can, all else at zero: a way out where a straight leg sees no slope.
  Angles bent() const {
    Angles q = Angles::Zero(size());
    const auto hinge = [&](const std::string& id) { return id.starts_with("knee") || id.starts_with("elbow"); };
    for (Eigen::Index k = 0; k < size(); ++k) {
      const FreeAngle& free = free_[static_cast<std::size_t>(k)];
      if (free.motion != 0 || !hinge(specimen_[rig_.joints[free.joint]].id)) continue;
      q[k] = (-free.min > free.max ? free.min : free.max) / 3;
    }
    return q;
  }

  Angles clamped(Angles q) const {
    for (Eigen::Index k = 0; k < size(); ++k) {
      const FreeAngle& free = free_[static_cast<std::size_t>(k)];
      q[k] = std::clamp(q[k], free.min, free.max);
    }
    return q;
  }

  bool atEnd(const Angles& q, Eigen::Index k, double direction) const {
    const FreeAngle& free = free_[static_cast<std::size_t>(k)];
    return direction > 0 ? q[k] >= free.max : q[k] <= free.min;
  }

  /// The foot's frame, and in `J` how the middle of the sole and the foot's attitude answer to each angle.
  Eigen::Isometry3d place(const Angles& q, Columns* J = nullptr) {
    const std::vector<Vector3d> angles = with(q);
    Eigen::Isometry3d X_WP = X_WCarrier_;
    Eigen::Index column = 0;
    std::array<Vector3d, kMost> axes, centres;
    for (std::size_t i = 0; i < rig_.joints.size(); ++i) {
      const anatomy::Joint& joint = specimen_[rig_.joints[i]];
      const Articulation::Rest& rest = articulation_[rig_.joints[i]];
      const Vector3d centre =
          X_WP * (joint.centreProximal + rest.cartilage * joint.cartilageShareProximal * joint.longAxisProximal);
      Eigen::Matrix3d R = X_WP.linear() * rest.rotation;
      for (int motion = 0; motion < 3; ++motion) {
        const Vector3d& axis = joint.axes[static_cast<std::size_t>(motion)];
        if (column < size() && isFree(column, i, motion)) {
          axes[static_cast<std::size_t>(column)] = R * axis;
          centres[static_cast<std::size_t>(column++)] = centre;
        }
        R = R * Eigen::AngleAxisd(angles[i][motion], axis).toRotationMatrix();
      }
      X_WP = X_WP * jointTransform(joint, rest, angles[i]);
    }
    if (J) {
      const Vector3d p_WSole = X_WP * rig_.p_BSole;
      J->resize(6, size());
      for (Eigen::Index k = 0; k < size(); ++k) {
        const Vector3d& axis = axes[static_cast<std::size_t>(k)];
        J->col(k) << axis.cross(p_WSole - centres[static_cast<std::size_t>(k)]), axis;
      }
    }
    return X_WP;
  }

  void write(const Angles& q, Pose& pose) const {
    const std::vector<Vector3d> angles = with(q);
    for (std::size_t i = 0; i < rig_.joints.size(); ++i) pose[rig_.joints[i]] = angles[i];
  }

 private:
  bool isFree(Eigen::Index k, std::size_t joint, int motion) const {
    const FreeAngle& free = free_[static_cast<std::size_t>(k)];
    return free.joint == joint && free.motion == motion;
  }
  double angleOf(const std::vector<Vector3d>& angles, Eigen::Index k) const {
    const FreeAngle& free = free_[static_cast<std::size_t>(k)];
    return angles[free.joint][free.motion];
  }
  std::vector<Vector3d> with(const Angles& q) const {
    std::vector<Vector3d> angles = angles_;
    for (Eigen::Index k = 0; k < size(); ++k) {
      const FreeAngle& free = free_[static_cast<std::size_t>(k)];
      angles[free.joint][free.motion] = q[k];
    }
    return angles;
  }

  const Specimen& specimen_;
  const Articulation& articulation_;
  const FootRig& rig_;
  Eigen::Isometry3d X_WCarrier_;
  std::vector<Vector3d> angles_;
  std::vector<FreeAngle> free_;
};

/// From the foot's frame to the one asked for.
Residual residual(const FootRig& rig, const Eigen::Isometry3d& X_WFoot, const Eigen::Isometry3d& X_WGoal) {
  const Eigen::AngleAxisd turn(X_WGoal.linear() * X_WFoot.linear().transpose());
  Residual r;
  r << X_WGoal * rig.p_BSole - X_WFoot * rig.p_BSole, turn.angle() * turn.axis();
  return r;
}

/// What a radian of tilt or of heading weighs beside a metre of place.
struct Weights {
  double tilt, heading;
};

struct LegSolution {
  Angles q;
  Residual left;     ///< what remains
  double merit = 0;  ///< what was made small
};

class LegSolver {
 public:
  LegSolver(Leg& leg, const FootRig& rig, const Eigen::Isometry3d& X_WGoal)
      : leg_(leg), rig_(rig), X_WGoal_(X_WGoal), preferred_(leg.start()) {}

  /// Gauss-Newton with Levenberg-Marquardt damping: (J'W^2 J + (k + lambda) I) dq = J'W^2 r + k (q0 - q). Bounds are
  /// kept by projection: angles that lie at an end and would go on stay there, the others are solved for, and the
  /// result is clamped (Kanzow, Yamashita & Fukushima 2004, J. Comput. Appl. Math. 172:375, cited from memory). lambda
  /// falls after a step that improves and rises after one that does not.
  LegSolution solve(Angles q, const Weights& weights) const {
    constexpr int kSteps = 120;
    constexpr double kSettled = 1e-15;
    const Residual w = weightsOf(weights);
    Columns J;
    Eigen::Isometry3d X = leg_.place(q, &J);
    LegSolution best{q, residual(rig_, X, X_WGoal_), 0};
    best.merit = meritOf(best, w);
    double damping = 1e-3;
    for (int step = 0; step < kSteps && damping < 1e8; ++step) {
      LegSolution next;
      next.q = leg_.clamped(best.q + descent(best, J, w, damping));
      X = leg_.place(next.q);
      next.left = residual(rig_, X, X_WGoal_);
      next.merit = meritOf(next, w);
      if (!(next.merit < best.merit)) {
        damping *= 8;
        continue;
      }
      const bool settled = best.merit - next.merit < kSettled * (1 + best.merit);
      best = next;
      damping = std::max(1e-9, damping / 6);
      if (settled) break;
      leg_.place(best.q, &J);
    }
    return best;
  }

  /// The joints at an end of their range that the remaining way would turn on.
  std::vector<JointIndex> stopping(const LegSolution& found) const {
    Columns J;
    leg_.place(found.q, &J);
    const Vector3d way = found.left.head<3>();
    std::vector<JointIndex> joints;
    for (Eigen::Index k = 0; k < leg_.size(); ++k) {
      const double gain = J.col(k).head<3>().dot(way);
      if (std::abs(gain) < 0.05 * way.norm() || !leg_.atEnd(found.q, k, gain)) continue;
      if (joints.empty() || joints.back() != leg_.jointOf(k)) joints.push_back(leg_.jointOf(k));
    }
    return joints;
  }

 private:
  static constexpr double kPull = 1e-8;  ///< m^2/rad^2, towards the preferred angles

  static Residual weightsOf(const Weights& weights) {
    Residual w;
    w << 1, 1, 1, weights.tilt, weights.tilt, weights.heading;
    return w;
  }

  double meritOf(const LegSolution& at, const Residual& w) const {
    return at.left.cwiseProduct(w).squaredNorm() + kPull * (at.q - preferred_).squaredNorm();
  }

  Angles descent(const LegSolution& at, const Columns& J, const Residual& w, double damping) const {
    constexpr double kLongestTurn = 0.3;  // rad: keeps the linearisation honest
    const Columns WJ = w.asDiagonal() * J;
    const Angles g = WJ.transpose() * at.left.cwiseProduct(w) + kPull * (preferred_ - at.q);
    Square A = WJ.transpose() * WJ;
    A.diagonal().array() += kPull + damping * 1e-2;
    Angles held = g;
    for (Eigen::Index k = 0; k < g.size(); ++k) {
      if (g[k] == 0 || !leg_.atEnd(at.q, k, g[k])) continue;
      A.row(k).setZero();
      A.col(k).setZero();
      A(k, k) = 1;
      held[k] = 0;
    }
    Angles dq = linear::solveSymmetric(A, held);
    const double longest = dq.size() > 0 ? dq.cwiseAbs().maxCoeff() : 0;
    return longest > kLongestTurn ? Angles(dq * (kLongestTurn / longest)) : dq;
  }

  Leg& leg_;
  const FootRig& rig_;
  Eigen::Isometry3d X_WGoal_;
  Angles preferred_;
};

bool inPlace(const LegSolution& found) { return found.left.head<3>().norm() < 1e-5; }

/// Full task first; where that costs the place, the heading goes, then the tilt.
LegSolution solveInOrder(const LegSolver& solver, const Angles& seed) {
  constexpr Weights kAll{0.3, 0.3}, kFlat{0.3, 1e-3}, kPlace{1e-3, 1e-4};
  LegSolution found = solver.solve(seed, kAll);
  if (!inPlace(found)) found = solver.solve(found.q, kFlat);
  if (!inPlace(found)) found = solver.solve(found.q, kPlace);
  return found;
}

LegFit fitOf(Foot foot, const FootRig& rig, const Eigen::Isometry3d& X_WFoot, const Eigen::Isometry3d& X_WGoal) {
  LegFit fit;
  fit.foot = foot;
  const Residual left = residual(rig, X_WFoot, X_WGoal);
  fit.miss = left.head<3>().norm();
  fit.turn = -left[5];
  const Vector3d up = X_WFoot.linear() * rig.up_B, upGoal = X_WGoal.linear() * rig.up_B;
  fit.tilt = std::atan2(up.cross(upGoal).norm(), up.dot(upGoal));
  return fit;
}

LegFit setFoot(const Specimen& specimen, const Articulation& articulation, const Placement& X_WB, const LegTask& task,
               Pose& pose) {
  const FootRig rig = footRig(specimen, task.foot);
  const BoneIndex carrier = specimen[rig.joints.front()].proximal;
  Leg leg(specimen, articulation, rig, pose, X_WB[carrier.value]);
  const LegSolver solver(leg, rig, task.X_WFoot);
  LegSolution found = solveInOrder(solver, leg.start());
  if (!inPlace(found)) {
    const LegSolution other = solveInOrder(solver, leg.bent());
    if (other.left.head<3>().norm() < found.left.head<3>().norm() - 1e-6) found = other;
  }
  leg.write(found.q, pose);
  LegFit fit = fitOf(task.foot, rig, leg.place(found.q), task.X_WFoot);
  if (!fit.still()) fit.stopping = solver.stopping(found);
  return fit;
}

/// Part of the way from one frame to another, turning and moving evenly.
Eigen::Isometry3d between(const Eigen::Isometry3d& from, const Eigen::Isometry3d& to, double share) {
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  X.linear() = Eigen::Quaterniond(from.linear()).slerp(share, Eigen::Quaterniond(to.linear())).toRotationMatrix();
  X.translation() = from.translation() + share * (to.translation() - from.translation());
  return X;
}

}  // namespace

bool FeetAnswer::hold() const {
  return std::all_of(fits.begin(), fits.end(), [](const LegFit& fit) { return fit.holds(); });
}

bool FeetAnswer::still() const {
  return std::all_of(fits.begin(), fits.end(), [](const LegFit& fit) { return fit.still(); });
}

double FeetAnswer::worstMiss() const {
  double worst = 0;
  for (const LegFit& fit : fits) worst = std::max(worst, fit.miss);
  return worst;
}

FeetAnswer setFeet(const Specimen& specimen, const Articulation& articulation, const Pose& pose,
                   const std::vector<LegTask>& tasks) {
  FeetAnswer answer{pose, {}};
  const Placement X_WB = forwardKinematics(specimen, articulation, pose);
  for (const LegTask& task : tasks) answer.fits.push_back(setFoot(specimen, articulation, X_WB, task, answer.pose));
  return answer;
}

FeetAnswer plantFeet(const Specimen& specimen, const Articulation& articulation, const Pose& pose,
                     const std::vector<Foot>& feet) {
  const Placement X_WB = forwardKinematics(specimen, articulation, pose);
  std::vector<LegTask> tasks;
  for (const Foot foot : feet) {
    const FootRig rig = footRig(specimen, foot);
    tasks.push_back({foot, flatOnGround(rig, X_WB[rig.bone.value])});
  }
  return setFeet(specimen, articulation, pose, tasks);
}

FeetAnswer liftFoot(const Specimen& specimen, const Articulation& articulation, const Pose& pose, Foot foot,
                    double height, double droop) {
  const FootRig rig = footRig(specimen, foot);
  const Placement X_WB = forwardKinematics(specimen, articulation, pose);
  const Eigen::Isometry3d& X_WFoot = X_WB[rig.bone.value];
  // About the transverse axis of the trunk, through the middle of the sole.
  const Vector3d left_W = pose.X_WRoot.linear().col(1);
  Eigen::Isometry3d X_WGoal = X_WFoot;
  X_WGoal.linear() = Eigen::AngleAxisd(droop, left_W) * X_WFoot.linear();
  const Vector3d p_WSole = X_WFoot * rig.p_BSole + Vector3d(0, 0, height);
  X_WGoal.translation() = p_WSole - X_WGoal.linear() * rig.p_BSole;
  return setFeet(specimen, articulation, pose, {{foot, X_WGoal}});
}

FeetAnswer moveTrunk(const Specimen& specimen, const Articulation& articulation, const Pose& pose,
                     const Eigen::Isometry3d& X_WRootNew, const std::vector<Foot>& planted) {
  const Placement X_WB = forwardKinematics(specimen, articulation, pose);
  std::vector<LegTask> tasks;
  for (const Foot foot : planted) tasks.push_back({foot, X_WB[footRig(specimen, foot).bone.value]});
  Pose moved = pose;
  moved.X_WRoot = X_WRootNew;
  return setFeet(specimen, articulation, moved, tasks);
}

FeetAnswer moveTrunkWithin(const Specimen& specimen, const Articulation& articulation, const Pose& pose,
                           const Eigen::Isometry3d& X_WRootNew, const std::vector<Foot>& planted) {
  const auto share = [&](double t) {
    return moveTrunk(specimen, articulation, pose, between(pose.X_WRoot, X_WRootNew, t), planted);
  };
  FeetAnswer whole = share(1);
  if (whole.still()) return whole;
  double low = 0, high = 1;
  FeetAnswer held = share(0);
  if (!held.still()) return whole;  // a foot that was not still before does not bind the trunk
  for (int step = 0; step < 14; ++step) {
    const double middle = (low + high) / 2;
    FeetAnswer tried = share(middle);
    if (tried.still()) {
      low = middle;
      held = std::move(tried);
    } else {
      high = middle;
      whole = std::move(tried);
    }
  }
  // What stops it is told by the first step that does not hold.
  for (std::size_t i = 0; i < held.fits.size(); ++i) held.fits[i].stopping = whole.fits[i].stopping;
  return held;
}

}  // namespace zyga::kinematics
