#include "core/solid/mesh/mass_properties.h"

#include <Eigen/Eigenvalues>
#include <Eigen/Geometry>
#include <cmath>

namespace zyga::solid {

namespace {

/// Weight, first and second moments of a region, relative to a point.
struct Moments {
  double weight = 0;
  Eigen::Vector3d first = Eigen::Vector3d::Zero();
  Eigen::Matrix3d second = Eigen::Matrix3d::Zero();

  /// A simplex of these corners and this weight: its second moment is w / ((n)(n+1)) (sum v v^T + s s^T), s the sum of
  /// its n corners (for n = 4, Blow & Binstock 2004, "How to find the inertia tensor of a 3D solid body", form known
  /// from memory; the tests hold it against closed forms).
  template <class Corners>
  void addSimplex(double w, const Corners& corners) {
    const double n = static_cast<double>(corners.cols());
    const Eigen::Vector3d sum = corners.rowwise().sum();
    weight += w;
    first += w / n * sum;
    second += w / (n * (n + 1)) * (corners * corners.transpose() + sum * sum.transpose());
  }
};

Eigen::Vector3d middleOf(const TriangleMesh& mesh) {
  Eigen::AlignedBox3d box;
  for (const auto& t : mesh.triangles)
    for (const std::uint32_t v : t) box.extend(mesh.positions[v].cast<double>());
  return box.isEmpty() ? Eigen::Vector3d::Zero() : Eigen::Vector3d(box.center());
}

struct Integrals {
  Moments solid, surface;
};

/// About a point in the middle of the mesh, where the sums lose least; with holes, the cones over them close there.
Integrals integrate(const TriangleMesh& mesh, const Eigen::Vector3d& about) {
  Integrals out;
  Eigen::Matrix<double, 3, 4> tetrahedron = Eigen::Matrix<double, 3, 4>::Zero();
  for (const auto& t : mesh.triangles) {
    Eigen::Matrix3d corners;
    for (int i = 0; i < 3; ++i) corners.col(i) = mesh.positions[t[static_cast<std::size_t>(i)]].cast<double>() - about;
    tetrahedron.leftCols<3>() = corners;
    out.solid.addSimplex(corners.determinant() / 6, tetrahedron);
    out.surface.addSimplex((corners.col(1) - corners.col(0)).cross(corners.col(2) - corners.col(0)).norm() / 2,
                           corners);
  }
  return out;
}

void setAxes(const Moments& moments, MassProperties& out) {
  const Eigen::Vector3d offset = moments.first / moments.weight;
  const Eigen::Matrix3d variance = moments.second / moments.weight - offset * offset.transpose();
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(variance);
  out.variances = solver.eigenvalues().reverse();
  out.axes = solver.eigenvectors().rowwise().reverse();
  if (out.axes.determinant() < 0) out.axes.col(2) *= -1;
}

}  // namespace

MassProperties massProperties(const TriangleMesh& mesh) {
  MassProperties out;
  if (mesh.triangles.empty()) return out;
  const Eigen::Vector3d about = middleOf(mesh);
  const Integrals sums = integrate(mesh, about);
  out.area = sums.surface.weight;
  out.volume = sums.solid.weight;
  const bool sheet = std::abs(out.volume) < 1e-6 * std::pow(out.area, 1.5);
  const Moments& moments = sheet ? sums.surface : sums.solid;
  if (!(moments.weight != 0)) return out;
  out.centroid = about + moments.first / moments.weight;
  setAxes(moments, out);
  return out;
}

}  // namespace zyga::solid
