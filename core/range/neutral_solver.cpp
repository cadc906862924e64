#include "core/range/neutral_solver.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/kinematics/placement.h"
#include "core/linear/linear.h"

namespace zyga::range {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// A turn about the slide lifts a facet's rim; a quarter of its length makes that lift about as bad as an offset.
/// This weight and the next two: program default, no source.
constexpr double kRollWeight = 0.25;
/// The turn along the slide is what cartilage does to facets and must not be resisted; this only holds joints whose
/// facets cannot tell (facets level with the centre of rotation).
constexpr double kPitchWeight = 0.01;
/// Cartilage also lifts both postzygs, which on tilted facets is an offset across the slide. No turn could undo it but
/// a pitch that gives up the centring along the slide, so it counts for little.
constexpr double kLiftWeight = 0.1;
/// Facets farther than this from the joint's own rest do not belong together, rad.
constexpr double kFarthest = std::numbers::pi / 2;
constexpr int kMostSteps = 200;

/// How the facets of one side sit on each other, m.
struct SideOffset {
  double along, across;  ///< of the postzyg's centre, in the mean plane
  double roll, pitch;    ///< misfit of the normals about the slide and along it, times the facets' length
};

/// `along` is taken towards the same end of the joint for both sides, which makes an offset across the slide of one
/// sign on both sides a sideways shift, and of opposite signs a lift.
SideOffset offsetOf(const SideFacets& side, const Eigen::Isometry3d& X_PrePost, const Vector3d& towards) {
  const anatomy::Facet& pre = *side.prezyg;
  const anatomy::Facet& post = *side.postzyg;
  const auto aligned = [&](const Vector3d& slide) -> Vector3d { return slide.dot(towards) < 0 ? -slide : slide; };
  const Vector3d postNormal = X_PrePost.linear() * post.normal;
  const Vector3d slides = aligned(pre.slide) + aligned(X_PrePost.linear() * post.slide);
  const Vector3d mean = (pre.normal - postNormal).normalized();
  const Vector3d along = (slides - mean * mean.dot(slides)).normalized();
  const Vector3d across = mean.cross(along);
  const Vector3d offset = X_PrePost * post.centre - pre.centre;
  const Vector3d tilt = pre.normal + postNormal;
  const double length = 0.5 * (pre.length() + post.length());
  return {offset.dot(along), offset.dot(across), length * tilt.dot(across), length * tilt.dot(along)};
}

/// The length by which a small turn about each of the joint's first two axes carries its facets, both sides together,
/// m a rad. It makes a turn out of parallel faces count as much as the offset the same turn gives the facets: the
/// definition names two demands and prefers neither, so that where they disagree in pitch the answer lies half-way.
Vector2d leversOf(const anatomy::Joint& joint, const std::array<SideFacets, 2>& sides, bool prezygsAreProximal) {
  const Vector3d& centre = prezygsAreProximal ? joint.centreProximal : joint.centreDistal;
  Vector2d squares = Vector2d::Zero();
  for (const SideFacets& side : sides) {
    const Vector3d arm = side.prezyg->centre - centre;
    for (int k = 0; k < 2; ++k) squares[k] += joint.axes[static_cast<std::size_t>(k)].cross(arm).squaredNorm();
  }
  return squares.cwiseSqrt();
}

}  // namespace

NeutralSolver::NeutralSolver(const anatomy::Specimen& specimen, kinematics::JointIndex joint, NeutralBy by)
    : joint_(specimen[joint]), sides_(facetsOf(specimen, joint)), view_(specimen, joint) {
  if (!possible() || by == NeutralBy::Facets) return;
  faceLevers_ = leversOf(joint_, sides_, specimen.caudalBone(joint) == joint_.proximal);
}

Eigen::Isometry3d NeutralSolver::prezygView(const Rest& rest, const Vector3d& angles) const {
  return view_(kinematics::jointTransform(joint_, rest, angles));
}

/// Along the slide on either side; across it, sideways and up; per side the turn of the normals about the slide and
/// along it, as lengths; the centra's faces out of parallel in pitch and yaw, as lengths.
NeutralSolver::Residuals NeutralSolver::residuals(const Rest& rest, const Vector3d& angles) const {
  const Eigen::Isometry3d X_PrePost = prezygView(rest, angles);
  const Vector3d& towards = sides_[0].prezyg->slide;
  const SideOffset left = offsetOf(sides_[0], X_PrePost, towards);
  const SideOffset right = offsetOf(sides_[1], X_PrePost, towards);
  const double sideways = (left.across + right.across) * std::numbers::sqrt2 / 2;
  const double lift = (left.across - right.across) * std::numbers::sqrt2 / 2;
  Residuals r;
  r << left.along, right.along, sideways, kLiftWeight * lift, kRollWeight * left.roll, kRollWeight * right.roll,
      kPitchWeight * left.pitch, kPitchWeight * right.pitch, faceLevers_.cwiseProduct(angles.head<2>());
  return r;
}

NeutralSolver::Slope NeutralSolver::slope(const Rest& rest, const Vector3d& angles) const {
  constexpr double h = 1e-5;
  Slope J;
  for (int k = 0; k < 3; ++k) {
    const Vector3d nudge = h * Vector3d::Unit(k);
    J.col(k) = (residuals(rest, angles + nudge) - residuals(rest, angles - nudge)) / (2 * h);
  }
  return J;
}

/// Damped from the first step on, by a share of the mean curvature, so that a direction in which the facets say nothing
/// is left alone instead of being thrown far. Settled when an undamped step could not improve the sum of squares by
/// more than rounding.
bool NeutralSolver::search(const Rest& rest, Vector3d& angles) const {
  Residuals r = residuals(rest, angles);
  double damping = 1e-4;
  for (int step = 0; step < kMostSteps && r.allFinite(); ++step) {
    const Slope J = slope(rest, angles);
    const Eigen::Matrix3d A = J.transpose() * J;
    const Vector3d downhill = -J.transpose() * r;
    const double curvature = A.trace() / 3;
    const auto damped = [&](double share) -> Vector3d {
      const Eigen::Matrix3d raised = A + share * curvature * Eigen::Matrix3d::Identity();
      return linear::solveSymmetric(raised, downhill);
    };
    const double improvable = downhill.dot(damped(1e-12));
    if (!std::isfinite(improvable)) return false;
    if (improvable <= 1e-24 + 1e-15 * r.squaredNorm()) return true;
    // Steps that do not improve are shortened until they do.
    while (true) {
      const Vector3d change = damped(damping);
      const Residuals next = residuals(rest, angles + change);
      if (next.squaredNorm() < r.squaredNorm()) {
        angles += change;
        r = next;
        damping = std::max(0.1 * damping, 1e-12);
        break;
      }
      damping *= 10;
      // Rounding may hide the little that is left to gain.
      if (damping > 1e12) return improvable <= 1e-10 * r.squaredNorm();
    }
  }
  return false;
}

kinematics::Articulation::Rest NeutralSolver::solve(double cartilage) const {
  Rest rest{.rotation = joint_.restRotation, .cartilage = cartilage};
  Vector3d angles = Vector3d::Zero();
  rest.solved = search(rest, angles) && angles.norm() < kFarthest && facing(rest, angles);
  const double residual = offCentre(rest, angles);
  rest.residual = std::isfinite(residual) ? residual : 0;
  rest.rotation = joint_.restRotation * kinematics::jointRotation(joint_, angles);
  return rest;
}

/// Whether the facets of both sides look at each other.
bool NeutralSolver::facing(const Rest& rest, const Vector3d& angles) const {
  const Eigen::Matrix3d R = prezygView(rest, angles).linear();
  return std::all_of(sides_.begin(), sides_.end(),
                     [&](const SideFacets& s) { return s.prezyg->normal.dot(R * s.postzyg->normal) < 0; });
}

double NeutralSolver::offCentre(const Rest& rest, const Vector3d& angles) const {
  const Eigen::Isometry3d X_PrePost = prezygView(rest, angles);
  double sum = 0;
  for (const SideFacets& side : sides_) {
    const SideOffset o = offsetOf(side, X_PrePost, sides_[0].prezyg->slide);
    sum += o.along * o.along + o.across * o.across;
  }
  return std::sqrt(sum / 2);
}

}  // namespace zyga::range
