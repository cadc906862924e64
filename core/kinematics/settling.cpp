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

/// The least of E where the faces are held by `stiffness`: d = -N' (N N' + k)^-1 g.
Vector3d leastMisfit(const Demand& demand, double stiffness) {
  const Matrix2d A = demand.normals * demand.normals.transpose() + stiffness * Matrix2d::Identity();
  return -demand.normals.transpose() * (A.inverse() * demand.misfit);
}

}  // namespace

Vector2d facetMisfit(const Settling& settling, const Eigen::Isometry3d& X_PrePost) {
  return demandOf(settling, X_PrePost).misfit;
}

Vector3d settled(const Settling& settling, const Eigen::Isometry3d& X_PrePost) {
  if (!(settling.bound > 0)) return Vector3d::Zero();
  const Demand demand = demandOf(settling, X_PrePost);
  Vector3d d = leastMisfit(demand, kFaceStiffness);
  if (!(d.norm() > settling.bound)) return d.allFinite() ? d : Vector3d::Zero();
  // On the bound the stiffness is the multiplier at which |d| is the bound: 1/|d| is nearly linear in it (Hebden's
  // iteration for trust regions; More & Sorensen 1983, SIAM J. Sci. Stat. Comput. 4:553), found by the secant of both.
  double low = kFaceStiffness, lowShort = 1 / d.norm() - 1 / settling.bound;
  double high = 2 * kFaceStiffness * d.norm() / settling.bound + 2;
  while (leastMisfit(demand, high).norm() > settling.bound) high *= 4;
  for (int step = 0; step < 60 && high - low > 1e-12 * high; ++step) {
    const double highShort = 1 / leastMisfit(demand, high).norm() - 1 / settling.bound;
    double k = low - lowShort * (high - low) / (highShort - lowShort);
    if (!(k > low && k < high)) k = 0.5 * (low + high);
    d = leastMisfit(demand, k);
    const double miss = 1 / d.norm() - 1 / settling.bound;
    if (std::abs(miss) < 1e-12 / settling.bound) break;
    if (miss < 0) {
      low = k;
      lowShort = miss;
    } else {
      high = k;
    }
  }
  return d;
}

}  // namespace zyga::kinematics
