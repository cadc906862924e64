#include "core/solid/mesh/fit_circle.h"

#include <Eigen/Dense>
#include <cmath>
#include <stdexcept>

namespace zyga::solid {

using Eigen::Vector3d;

CircleFit fitCircle(std::span<const Vector3d> points) {
  if (points.size() < 3) throw std::invalid_argument("a ring needs at least three places");
  const double n = static_cast<double>(points.size());
  Vector3d middle = Vector3d::Zero();
  for (const Vector3d& p : points) middle += p / n;
  Eigen::Matrix3d scatter = Eigen::Matrix3d::Zero();
  for (const Vector3d& p : points) scatter += (p - middle) * (p - middle).transpose() / n;
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(scatter);
  if (!(solver.eigenvalues()(1) > 1e-6 * solver.eigenvalues()(2)))
    throw std::invalid_argument("the places lie along one line: click round the rim");
  CircleFit fit;
  fit.normal = solver.eigenvectors().col(0);
  const Vector3d u = solver.eigenvectors().col(2), v = fit.normal.cross(u);
  // |q|^2 = 2 c.q + (r^2 - |c|^2), linear in c and the last term.
  Eigen::Matrix3d A = Eigen::Matrix3d::Zero();
  Vector3d b = Vector3d::Zero();
  for (const Vector3d& p : points) {
    const Eigen::Vector2d q((p - middle).dot(u), (p - middle).dot(v));
    const Vector3d row(2 * q.x(), 2 * q.y(), 1);
    A += row * row.transpose();
    b += q.squaredNorm() * row;
  }
  const Vector3d x = A.ldlt().solve(b);
  fit.centre = middle + x.x() * u + x.y() * v;
  fit.radius = std::sqrt(std::max(0.0, x.z() + x.head<2>().squaredNorm()));
  for (const Vector3d& p : points) {
    const Vector3d d = p - fit.centre;
    const double along = d.dot(fit.normal), out = (d - along * fit.normal).norm() - fit.radius;
    fit.rms += (along * along + out * out) / n;
  }
  fit.rms = std::sqrt(fit.rms);
  return fit;
}

}  // namespace zyga::solid
