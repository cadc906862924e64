#include "core/kinematics/settling.h"

#include <Eigen/Dense>
#include <cmath>

namespace zyga::kinematics {
namespace {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

/// What the facets ask for: their misfit g and the rows n_s.
struct Demand {
  Vector2d misfit = Vector2d::Zero();
  Eigen::Matrix<double, 2, 3> normals = Eigen::Matrix<double, 2, 3>::Zero();
};

Demand demandOf(const Settling& settling, const Eigen::Isometry3d& X_PrePost) {
  Demand demand;
  for (int s = 0; s < 2; ++s) {
    const Settling::Side& side = settling.sides[static_cast<std::size_t>(s)];
    const Vector3d mean = side.normal + X_PrePost.linear() * side.opposed;
    const double length = mean.norm();
    if (!(length > 1e-6)) continue;  // facets that face the same way ask for nothing
    const Vector3d n = mean / length;
    demand.normals.row(s) = n;
    demand.misfit[s] = n.dot(X_PrePost * side.postzyg - side.prezyg) - side.gapAtRest;
  }
  return demand;
}

/// The least of E: d = -N' (N N' + h)^-1 g with the stiffness h = k / (1 - |d|^2 / b^2) that the faces have at d. In
/// the eigenvectors of N N', of eigenvalues l_i, |d|^2 = sum of l_i g_i^2 / (l_i + h)^2. What is left of the equation
/// for h,
///
///   |d(h)|^2 - b^2 (1 - k / h),
///
/// is convex and falls from h = k on, so that Newton's steps from there rise to its one root and never pass it.
Vector3d leastMisfit(const Demand& demand, double bound) {
  Eigen::SelfAdjointEigenSolver<Matrix2d> eigen;
  eigen.computeDirect(demand.normals * demand.normals.transpose());
  const Eigen::Array2d l = eigen.eigenvalues().cwiseMax(0);
  const Vector2d g = eigen.eigenvectors().transpose() * demand.misfit;
  const Eigen::Array2d lg = l * g.array().square();
  double h = kFaceStiffness;
  for (int step = 0; step < 200; ++step) {
    const Eigen::Array2d held = l + h;
    const double left = (lg / held.square()).sum() - bound * bound * (1 - kFaceStiffness / h);
    const double slope = -2 * (lg / held.cube()).sum() - bound * bound * kFaceStiffness / (h * h);
    const double rise = -left / slope;
    if (!(rise > 1e-15 * h)) break;
    h += rise;
  }
  const Vector2d share = (g.array() / (l + h)).matrix();
  return -demand.normals.transpose() * (eigen.eigenvectors() * share);
}

}  // namespace

Vector2d facetMisfit(const Settling& settling, const Eigen::Isometry3d& X_PrePost) {
  return demandOf(settling, X_PrePost).misfit;
}

Vector3d settled(const Settling& settling, const Eigen::Isometry3d& X_PrePost) {
  if (!(settling.bound > 0)) return Vector3d::Zero();
  const Vector3d d = leastMisfit(demandOf(settling, X_PrePost), settling.bound);
  return d.allFinite() ? d : Vector3d::Zero();
}

}  // namespace zyga::kinematics
