#include "core/kinematics/following.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/kinematics/placement.h"

namespace zyga::kinematics {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double kAxialSettled = 1e-12;  // rad
constexpr int kMostAxialSteps = 20;
constexpr double kMostAxial = 1;  // rad: facets asked for more have long left each other

/// The facets of a joint as the last of its three turns finds them: in the frame that the first two have turned, from
/// the centre of rotation, m. Those of the proximal bone stand still, those of the distal bone turn about `axis`.
class AxialView {
 public:
  AxialView(const anatomy::Joint& joint, const Articulation::Rest& rest, const Vector3d& angles)
      : settling_(rest.settling), axis_(joint.axes[2]) {
    const double before = rest.cartilage * joint.cartilageShareProximal;
    const Vector3d proximalCentre = joint.centreProximal + before * joint.longAxisProximal;
    const Vector3d distalCentre = joint.centreDistal - (rest.cartilage - before) * joint.longAxisDistal;
    const Eigen::Matrix3d back = (rest.rotation * jointRotation(joint, {angles[0], angles[1], 0})).transpose();
    for (std::size_t s = 0; s < 2; ++s) {
      const Settling::Side& side = settling_.sides[s];
      const bool pre = settling_.distalHasPostzygs;  // on the proximal bone
      still_[s] = {back * ((pre ? side.prezyg : side.postzyg) - proximalCentre),
                   back * (pre ? side.normal : side.opposed)};
      turning_[s] = {(pre ? side.postzyg : side.prezyg) - distalCentre, pre ? side.opposed : side.normal};
    }
  }

  /// By how much each side's facets stand apart, less how they rest, m, and the slope of that, m/rad.
  void misfit(double axial, Vector2d& g, Vector2d& slope) const {
    const double c = std::cos(axial), d = std::sin(axial);
    const auto turned = [&](const Vector3d& v) -> Vector3d {
      return c * v + d * axis_.cross(v) + (1 - c) * axis_.dot(v) * axis_;
    };
    for (std::size_t s = 0; s < 2; ++s) {
      const Vector3d p = turned(turning_[s].centre), k = turned(turning_[s].normal);
      const Vector3d mean = still_[s].normal + k;
      const double length = mean.norm();
      const auto i = static_cast<Eigen::Index>(s);
      g[i] = slope[i] = 0;
      if (!(length > 1e-6)) continue;  // facets that face the same way ask for nothing
      const Vector3d n = mean / length;
      const Vector3d turn = axis_.cross(k);
      const Vector3d nTurn = (turn - n.dot(turn) * n) / length;
      const double sign = settling_.distalHasPostzygs ? 1 : -1;  // the gap runs from the prezyg to the postzyg
      const Vector3d gap = sign * (p - still_[s].centre);
      g[i] = n.dot(gap) - settling_.sides[s].gapAtRest;
      slope[i] = nTurn.dot(gap) + sign * n.dot(axis_.cross(p));
    }
  }

 private:
  struct Place {
    Vector3d centre, normal;
  };
  const Settling& settling_;
  Vector3d axis_;
  std::array<Place, 2> still_, turning_;
};

}  // namespace

bool axialFollows(const anatomy::Joint& joint, const Articulation::Rest& rest) {
  return !rest.axialTyped && rest.settling.hasFacets && !joint.typed;
}

/// Gauss-Newton in one unknown from zero: the misfits are nearly linear in it, and where both can vanish they do.
double followingAxial(const anatomy::Joint& joint, const Articulation::Rest& rest, const Vector3d& angles) {
  if (!rest.settling.hasFacets || joint.typed || angles.head<2>().isZero(0)) return 0;
  const AxialView view(joint, rest, angles);
  double axial = 0;
  Vector2d g, slope;
  for (int i = 0; i < kMostAxialSteps; ++i) {
    view.misfit(axial, g, slope);
    const double steep = slope.squaredNorm();
    if (!(steep > 0)) break;
    const double step = slope.dot(g) / steep;
    axial = std::clamp(axial - step, -kMostAxial, kMostAxial);
    if (std::abs(step) < kAxialSettled) break;
  }
  return std::isfinite(axial) && std::abs(axial) > kAxialSettled ? axial : 0;
}

namespace {

/// What the facets ask for beside some angles, by whole steps of a difference in the first two.
class Around {
 public:
  static constexpr double kStep = 1e-3;  // rad
  Around(const anatomy::Joint& joint, const Articulation::Rest& rest, const Vector3d& angles)
      : joint_(joint), rest_(rest), angles_(angles) {}
  double operator()(double i, double j) const {
    return followingAxial(joint_, rest_, {angles_[0] + i * kStep, angles_[1] + j * kStep, 0});
  }

 private:
  const anatomy::Joint& joint_;
  const Articulation::Rest& rest_;
  const Vector3d& angles_;
};

}  // namespace

Vector2d axialSlope(const anatomy::Joint& joint, const Articulation::Rest& rest, const Vector3d& angles) {
  if (!axialFollows(joint, rest)) return Vector2d::Zero();
  const Around at(joint, rest, angles);
  return Vector2d(at(1, 0) - at(-1, 0), at(0, 1) - at(0, -1)) / (2 * Around::kStep);
}

AxialSlopes axialSlopes(const anatomy::Joint& joint, const Articulation::Rest& rest, const Vector3d& angles) {
  constexpr double h = Around::kStep;
  AxialSlopes slopes;
  if (!axialFollows(joint, rest)) return slopes;
  const Around at(joint, rest, angles);
  const double here = at(0, 0), up = at(1, 0), down = at(-1, 0), left = at(0, 1), right = at(0, -1);
  slopes.first = Vector2d(up - down, left - right) / (2 * h);
  const double mixed = (at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1)) / (4 * h * h);
  slopes.second << (up - 2 * here + down) / (h * h), mixed, mixed, (left - 2 * here + right) / (h * h);
  return slopes;
}

Vector3d toOwn(const anatomy::Joint& joint, const Articulation::Rest& rest, Vector3d angles) {
  if (axialFollows(joint, rest)) angles[2] -= followingAxial(joint, rest, angles);
  return angles;
}

Vector3d fromOwn(const anatomy::Joint& joint, const Articulation::Rest& rest, Vector3d own) {
  if (axialFollows(joint, rest)) own[2] += followingAxial(joint, rest, own);
  return own;
}

Vector3d withMotion(const anatomy::Joint& joint, const Articulation::Rest& rest, const Vector3d& angles, int motion,
                    double value) {
  Vector3d to = angles;
  if (motion == 2 || !axialFollows(joint, rest)) {
    to[motion] = value;
    return to;
  }
  to = toOwn(joint, rest, angles);
  to[motion] = value;
  return fromOwn(joint, rest, to);
}

void turnToNeutral(const anatomy::Specimen& specimen, const Articulation& articulation, JointIndex joint, int motion,
                   Pose& pose) {
  if (motion == 2) {
    pose.setAxialTyped(joint, false);
    Articulation::Rest rest = articulation[joint];
    rest.axialTyped = false;
    Vector3d own = pose[joint];
    own[2] = 0;
    pose[joint] = fromOwn(specimen[joint], rest, own);
    return;
  }
  pose[joint] = withMotion(specimen[joint], articulation[joint], pose[joint], motion, 0);
}

bool hasAxialOf(const Articulation& articulation, const Pose& pose) {
  for (std::size_t j = 0; j < articulation.rests.size(); ++j)
    if (articulation.rests[j].axialTyped != pose.isAxialTyped({j})) return false;
  return true;
}

Articulation withAxialOf(Articulation articulation, const Pose& pose) {
  for (std::size_t j = 0; j < articulation.rests.size(); ++j) articulation.rests[j].axialTyped = pose.isAxialTyped({j});
  return articulation;
}

}  // namespace zyga::kinematics
