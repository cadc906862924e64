#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <random>
#include <stdexcept>
#include <vector>

#include "core/solid/mesh/fit.h"

namespace zyga::solid {
namespace {

using Eigen::Vector3d;

std::vector<Vector3d> around(const Vector3d& centre, const Vector3d& normal, double radius, int count, double noise) {
  std::mt19937 random(7);
  std::normal_distribution<double> off;
  const Vector3d u = normal.unitOrthogonal(), v = normal.cross(u);
  std::vector<Vector3d> points;
  for (int i = 0; i < count; ++i) {
    const double a = 2 * M_PI * i / count;
    points.push_back(centre + radius * (std::cos(a) * u + std::sin(a) * v) +
                     noise * Vector3d{off(random), off(random), off(random)});
  }
  return points;
}

TEST(FitCircle, FindsAKnownCircleExactlyAndThroughNoise) {
  const Vector3d centre(0.3, -1.2, 0.7), normal = Vector3d(1, -2, 0.5).normalized();
  const auto exact = fitCircle(around(centre, normal, 0.08, 5, 0));
  EXPECT_LT((exact.centre - centre).norm(), 1e-12);
  EXPECT_NEAR(exact.radius, 0.08, 1e-12);
  EXPECT_NEAR(std::abs(exact.normal.dot(normal)), 1, 1e-12);
  EXPECT_LT(exact.rms, 1e-12);
  const auto noisy = fitCircle(around(centre, normal, 0.08, 24, 0.001));
  // The centre of n places scattered by s is known to about s sqrt(2 / n).
  EXPECT_LT((noisy.centre - centre).norm(), 4 * 0.001 * std::sqrt(2.0 / 24));
}

TEST(FitCircle, RefusesWhatNoCircleGoesThrough) {
  EXPECT_THROW(fitCircle(around({0, 0, 0}, Vector3d::UnitZ(), 1, 2, 0)), reason::Failure);
  const std::vector<Vector3d> line{{0, 0, 0}, {1, 1, 1}, {2, 2, 2}, {5, 5, 5}};
  EXPECT_THROW(fitCircle(line), reason::Failure);
}

}  // namespace
}  // namespace zyga::solid
