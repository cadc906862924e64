#include "core/kinematics/quadratic_program.h"

#include <gtest/gtest.h>

#include <Eigen/LU>
#include <Eigen/QR>
#include <random>

namespace zyga::kinematics {
namespace {

using Eigen::MatrixXd;
using Eigen::Vector2d;
using Eigen::VectorXd;

HalfSpace row(std::initializer_list<std::pair<int, double>> entries, double most) {
  HalfSpace halfSpace;
  for (const auto& [at, value] : entries) halfSpace.add(at, value);
  halfSpace.max = most;
  return halfSpace;
}

TEST(QuadraticProgram, WithoutAnythingInTheWayItIsTheFreeMinimum) {
  VectorXd x;
  ASSERT_TRUE(QuadraticProgram(MatrixXd::Identity(2, 2)).solve(Vector2d(1, 2), {row({{0, 1}}, 5)}, x));
  EXPECT_LT((x - Vector2d(1, 2)).norm(), 1e-14);
}

// The worked example of Goldfarb & Idnani's method in textbook form: the nearest point of a triangle to a corner
// outside it lies on an edge, or at a vertex, both known by construction.
TEST(QuadraticProgram, NearestPointOfATriangle) {
  const std::vector<HalfSpace> triangle{row({{0, -1}}, 0), row({{1, -1}}, 0), row({{0, 1}, {1, 1}}, 1)};
  QuadraticProgram nearest(MatrixXd::Identity(2, 2));
  VectorXd x;
  ASSERT_TRUE(nearest.solve(Vector2d(1, 1), triangle, x));
  EXPECT_LT((x - Vector2d(0.5, 0.5)).norm(), 1e-12);
  ASSERT_TRUE(nearest.solve(Vector2d(3, -1), triangle, x));
  EXPECT_LT((x - Vector2d(1, 0)).norm(), 1e-12);
}

TEST(QuadraticProgram, HalfSpacesWithoutACommonPointAreFound) {
  VectorXd x;
  QuadraticProgram program(MatrixXd::Identity(1, 1));
  EXPECT_FALSE(program.solve(VectorXd::Zero(1), {row({{0, 1}}, -1), row({{0, -1}}, -1)}, x));
}

// The conditions of Karush, Kuhn and Tucker say whether a point is the minimum, without another solver: it lies in
// every half-space, and the slope there is held by the ones it touches, with no negative push.
TEST(QuadraticProgram, RandomProgramsMeetTheConditionsOfAMinimum) {
  std::mt19937 random(11);
  std::normal_distribution<double> normal;
  for (int round = 0; round < 60; ++round) {
    const int n = 3 + round % 25;
    MatrixXd A = MatrixXd::NullaryExpr(n, n, [&] { return normal(random); });
    const MatrixXd H = A.transpose() * A + 0.1 * MatrixXd::Identity(n, n);
    const VectorXd g = VectorXd::NullaryExpr(n, [&] { return 5 * normal(random); });
    std::vector<HalfSpace> halfSpaces;
    for (int i = 0; i < n; ++i) {
      halfSpaces.push_back(row({{i, 1}}, 0.3));
      halfSpaces.push_back(row({{i, -1}}, 0.3));
      halfSpaces.push_back(
          row({{i, normal(random)}, {(i + 1) % n, normal(random)}, {(i + 2) % n, normal(random)}}, 0.2));
    }
    VectorXd x;
    ASSERT_TRUE(QuadraticProgram(H.inverse()).solve(g, halfSpaces, x));
    std::vector<VectorXd> touching;
    for (const HalfSpace& h : halfSpaces) {
      EXPECT_LT(h(x) - h.max, 1e-9);
      if (h(x) < h.max - 1e-8) continue;
      VectorXd dense = VectorXd::Zero(n);
      for (int k = 0; k < h.count; ++k)
        dense[h.at[static_cast<std::size_t>(k)]] += h.normal[static_cast<std::size_t>(k)];
      touching.push_back(dense);
    }
    MatrixXd N(n, static_cast<Eigen::Index>(touching.size()));
    for (std::size_t k = 0; k < touching.size(); ++k) N.col(static_cast<Eigen::Index>(k)) = touching[k];
    const VectorXd slope = g - H * x;
    const VectorXd push = touching.empty() ? VectorXd() : VectorXd(N.colPivHouseholderQr().solve(slope));
    EXPECT_LT((slope - N * push).norm(), 1e-6 * (1 + slope.norm()));
    if (!touching.empty()) {
      EXPECT_GT(push.minCoeff(), -1e-6);
    }
  }
}

}  // namespace
}  // namespace zyga::kinematics
