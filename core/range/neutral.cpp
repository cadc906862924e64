#include "core/range/neutral.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/kinematics/placement.h"
#include "core/range/column_joint.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;
using Rest = kinematics::Articulation::Rest;

/// Along the slide on either side; across it, sideways and up; and per side the turn of the normals about the slide and
/// along it, as lengths.
using Residuals = Eigen::Matrix<double, 8, 1>;

/// A turn about the slide lifts a facet's rim; a quarter of its length makes that lift about as bad as an offset.
constexpr double kRollWeight = 0.25;
/// The turn along the slide is what cartilage does to facets and must not be resisted; this only holds joints whose
/// facets cannot tell (facets level with the centre of rotation).
constexpr double kPitchWeight = 0.01;
/// Cartilage also lifts both postzygs, which on tilted facets is an offset across the slide. No turn could undo it but
/// a pitch that gives up the centring along the slide, so it counts for little.
constexpr double kLiftWeight = 0.1;
/// Facets farther than this from the joint's own rest do not belong together, rad.
constexpr double kFarthest = std::numbers::pi / 2;
constexpr int kMostSteps = 60;
constexpr double kSettled = 1e-11;  // rad

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

/// Centres the facets of one joint at a given distance of its centra.
class Centring {
 public:
  Centring(const anatomy::Specimen& specimen, kinematics::JointIndex joint)
      : joint_(specimen[joint]), sides_(facetsOf(specimen, joint)), view_(specimen, joint) {}

  bool possible() const { return sides_[0] && sides_[1]; }
  const anatomy::Joint& joint() const { return joint_; }

  /// Levenberg's damped Gauss-Newton from the joint's own rest rotation.
  Rest solve(double cartilage) const {
    Rest rest{joint_.restRotation, cartilage, 0, false};
    Vector3d angles = Vector3d::Zero();
    Residuals r = residuals(rest, angles);
    double damping = 0;
    for (int step = 0; step < kMostSteps && !rest.solved; ++step) {
      const Eigen::Matrix<double, 8, 3> J = slope(rest, angles);
      Eigen::Matrix3d A = J.transpose() * J;
      A.diagonal() *= 1 + damping;
      const Vector3d change = -A.ldlt().solve(J.transpose() * r);
      if (!change.allFinite()) break;
      const Residuals next = residuals(rest, angles + change);
      rest.solved = change.norm() < kSettled;
      if (next.squaredNorm() <= r.squaredNorm()) {
        angles += change;
        r = next;
        damping *= 0.1;
      } else if (!rest.solved) {
        damping = std::max(10 * damping, 1e-4);
      }
    }
    rest.solved = rest.solved && angles.norm() < kFarthest && facing(rest, angles);
    const double residual = offCentre(rest, angles);
    rest.residual = std::isfinite(residual) ? residual : 0;
    rest.rotation = joint_.restRotation * kinematics::jointRotation(joint_, angles);
    return rest;
  }

 private:
  std::array<SideOffset, 2> offsets(const Rest& rest, const Vector3d& angles) const {
    const Eigen::Isometry3d X_PrePost = view_(kinematics::placeDistal(joint_, rest, angles));
    const Vector3d& towards = sides_[0].prezyg->slide;
    return {offsetOf(sides_[0], X_PrePost, towards), offsetOf(sides_[1], X_PrePost, towards)};
  }

  Residuals residuals(const Rest& rest, const Vector3d& angles) const {
    const auto [left, right] = offsets(rest, angles);
    const double sideways = (left.across + right.across) * std::numbers::sqrt2 / 2;
    const double lift = (left.across - right.across) * std::numbers::sqrt2 / 2;
    Residuals r;
    r << left.along, right.along, sideways, kLiftWeight * lift, kRollWeight * left.roll, kRollWeight * right.roll,
        kPitchWeight * left.pitch, kPitchWeight * right.pitch;
    return r;
  }

  Eigen::Matrix<double, 8, 3> slope(const Rest& rest, const Vector3d& angles) const {
    constexpr double h = 1e-5;
    Eigen::Matrix<double, 8, 3> J;
    for (int k = 0; k < 3; ++k) {
      const Vector3d nudge = h * Vector3d::Unit(k);
      J.col(k) = (residuals(rest, angles + nudge) - residuals(rest, angles - nudge)) / (2 * h);
    }
    return J;
  }

  /// Whether the facets of both sides look at each other.
  bool facing(const Rest& rest, const Vector3d& angles) const {
    const Eigen::Matrix3d R = view_(kinematics::placeDistal(joint_, rest, angles)).linear();
    return std::all_of(sides_.begin(), sides_.end(),
                       [&](const SideFacets& s) { return s.prezyg->normal.dot(R * s.postzyg->normal) < 0; });
  }

  double offCentre(const Rest& rest, const Vector3d& angles) const {
    double sum = 0;
    for (const SideOffset& o : offsets(rest, angles)) sum += o.along * o.along + o.across * o.across;
    return std::sqrt(sum / 4);
  }

  const anatomy::Joint& joint_;
  std::array<SideFacets, 2> sides_;
  PrezygView view_;
};

double angleBetween(const Eigen::Matrix3d& a, const Eigen::Matrix3d& b) {
  return Eigen::AngleAxisd(a.transpose() * b).angle();
}

/// Length along the joint's axes of a disc that is `thickness` thick along its own arc and holds the faces `turn`
/// apart: the axes meet at half the turn, so that the faces part by 2 h tan(turn/2) where the arc is h turn.
double alongAxes(double thickness, double turn) {
  const double half = 0.5 * std::min(turn, 1.0);
  return half < 1e-9 ? thickness : thickness * std::tan(half) / half;
}

}  // namespace

Rest articulate(const anatomy::Specimen& specimen, kinematics::JointIndex joint, double cartilage) {
  const Centring centring(specimen, joint);
  if (!centring.possible()) {
    return {specimen[joint].restRotation, cartilage, 0, !specimen[joint].hasFacets()};
  }
  Rest bare = centring.solve(0);
  if (cartilage == 0) return bare;
  // Thickness is that of a wedge-shaped disc along the arc about the facets, as in the published law: turn = t / h
  // exactly (Taylor 2014, PeerJ 2:e712). The bones part a little farther along their axes, found by iteration.
  Rest rest = centring.solve(cartilage);
  for (int round = 0; round < 8; ++round) {
    const double parted = alongAxes(cartilage, angleBetween(bare.rotation, rest.rotation));
    if (std::abs(parted - rest.cartilage) < 1e-9) break;
    rest = centring.solve(parted);
  }
  rest.solved = rest.solved && bare.solved;
  return rest;
}

kinematics::Articulation articulate(const anatomy::Specimen& specimen, const Assumptions& assumptions) {
  kinematics::Articulation articulation;
  articulation.rests.reserve(specimen.joints.size());
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    const double cartilage = assumptions.cartilageOf(joint.region).thickness(joint);
    articulation.rests.push_back(articulate(specimen, kinematics::JointIndex{j}, cartilage));
  }
  return articulation;
}

}  // namespace zyga::range
