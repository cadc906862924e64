#include <gtest/gtest.h>

#include <random>

#include "core/solid/mesh/triangle_mesh.h"
#include "tests/core/solid/mesh_library.h"

namespace zyga::solid {
namespace {

TriangleMesh boxMesh(const Eigen::Vector3d& size) {
  TriangleMesh mesh;
  for (int i = 0; i < 8; ++i)
    mesh.positions.push_back(
        Eigen::Vector3d(i & 1 ? size.x() : 0, i & 2 ? size.y() : 0, i & 4 ? size.z() : 0).cast<float>());
  mesh.triangles = {{0, 2, 1}, {1, 2, 3}, {4, 5, 6}, {5, 7, 6}, {0, 1, 4}, {1, 5, 4},
                    {2, 6, 3}, {3, 6, 7}, {0, 4, 2}, {2, 4, 6}, {1, 3, 5}, {3, 7, 5}};
  return mesh;
}

/// A box of sides a, b, c: V = abc, second moments about the middle a^2 / 12 each.
TEST(MassProperties, OfABoxAreTheClosedForms) {
  const Eigen::Vector3d size(0.4, 0.1, 0.2);
  const auto mass = massProperties(boxMesh(size));
  EXPECT_NEAR(mass.volume, 0.008, 1e-9);
  EXPECT_NEAR(mass.area, 2 * (0.04 + 0.08 + 0.02), 1e-7);
  EXPECT_TRUE(mass.centroid.isApprox(size / 2, 1e-6));
  EXPECT_TRUE(mass.variances.isApprox(Eigen::Vector3d(0.16, 0.04, 0.01) / 12, 1e-6));
  EXPECT_NEAR(std::abs(mass.axes.col(0).x()), 1, 1e-9);
  EXPECT_NEAR(std::abs(mass.axes.col(1).z()), 1, 1e-9);
}

/// An ellipsoid of half axes a, b, c, turned and moved: second moments a^2 / 5. The polyhedron inscribed in it is a
/// little smaller.
TEST(MassProperties, OfATurnedEllipsoidAreTheClosedForms) {
  const Eigen::Vector3d half(0.5, 0.2, 0.1), centre(3, -2, 1);
  const Eigen::Matrix3d R =
      (Eigen::AngleAxisd(0.7, Eigen::Vector3d::UnitX()) * Eigen::AngleAxisd(-1.1, Eigen::Vector3d::UnitZ()))
          .toRotationMatrix();
  Eigen::Affine3d map = Eigen::Affine3d::Identity();
  map.linear() = R * half.asDiagonal();
  map.translation() = centre;
  const auto mass = massProperties(mapped(sphereMesh(1, 120), map));
  EXPECT_NEAR(mass.volume, 4.0 / 3 * M_PI * half.prod(), 1e-3 * mass.volume);
  EXPECT_TRUE(mass.centroid.isApprox(centre, 1e-6));
  EXPECT_TRUE(mass.variances.isApprox((half.array().square() / 5).matrix(), 1e-3));
  for (int i = 0; i < 3; ++i) EXPECT_NEAR(std::abs(mass.axes.col(i).dot(R.col(i))), 1, 1e-6);
  EXPECT_NEAR(mass.axes.determinant(), 1, 1e-12);
}

/// Against random points inside a body of two boxes that no closed form is written down for.
TEST(MassProperties, AgreeWithSampling) {
  TriangleMesh other = boxMesh({0.1, 0.5, 0.1});
  for (auto& p : other.positions) p += Eigen::Vector3f(0.6f, 0.2f, 0.4f);
  const auto mass = massProperties(joinedMesh(boxMesh({0.4, 0.1, 0.2}), other));
  std::mt19937 random(3);
  std::uniform_real_distribution<double> unit(0, 1);
  constexpr int kPoints = 200000;
  const double first = 0.008, second = 0.005;
  Eigen::Vector3d sum = Eigen::Vector3d::Zero();
  Eigen::Matrix3d squares = Eigen::Matrix3d::Zero();
  for (int i = 0; i < kPoints; ++i) {
    Eigen::Vector3d p{unit(random), unit(random), unit(random)};
    if (unit(random) < first / (first + second))
      p = p.cwiseProduct(Eigen::Vector3d(0.4, 0.1, 0.2));
    else
      p = p.cwiseProduct(Eigen::Vector3d(0.1, 0.5, 0.1)) + Eigen::Vector3d(0.6, 0.2, 0.4);
    sum += p;
    squares += p * p.transpose();
  }
  const Eigen::Vector3d mean = sum / kPoints;
  const Eigen::Matrix3d variance = squares / kPoints - mean * mean.transpose();
  EXPECT_NEAR(mass.volume, first + second, 1e-8);
  EXPECT_TRUE(mass.centroid.isApprox(mean, 5e-3));
  const Eigen::Matrix3d ours = mass.axes * mass.variances.asDiagonal() * mass.axes.transpose();
  EXPECT_TRUE(ours.isApprox(variance, 1e-2)) << ours << "\n\n" << variance;
}

TEST(MassProperties, OfNothingAreNothingAndOfASheetThoseOfItsSurface) {
  EXPECT_EQ(massProperties({}).volume, 0);
  TriangleMesh sheet;
  sheet.positions = {{0, 0, 0}, {2, 0, 0}, {2, 1, 0}, {0, 1, 0}};
  sheet.triangles = {{0, 1, 2}, {0, 2, 3}};
  const auto mass = massProperties(sheet);
  EXPECT_NEAR(mass.volume, 0, 1e-12);
  EXPECT_NEAR(mass.area, 2, 1e-7);
  EXPECT_TRUE(mass.centroid.isApprox(Eigen::Vector3d(1, 0.5, 0), 1e-7));
  EXPECT_NEAR(mass.variances(0), 4.0 / 12, 1e-7);
}

}  // namespace
}  // namespace zyga::solid
