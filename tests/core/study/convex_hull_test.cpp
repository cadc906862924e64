#include "core/study/mass/convex_hull.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <numbers>
#include <random>

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

std::vector<Vector3d> cube() {
  std::vector<Vector3d> points;
  for (int i = 0; i < 8; ++i) points.emplace_back(i & 1, (i >> 1) & 1, (i >> 2) & 1);
  return points;
}

TEST(ConvexHull, OfACubeWithRubbishInsideAndOnItsFaces) {
  auto points = cube();
  points.insert(points.begin(), {{0.5, 0.5, 0.5}, {0.5, 0.5, 0}, {0.5, 0, 0}, {0, 0, 0}});
  const auto hull = convexHull(points);
  EXPECT_NEAR(hull.volume, 1, 1e-12);
  EXPECT_NEAR((hull.centroid - Vector3d(0.5, 0.5, 0.5)).norm(), 0, 1e-12);
}

TEST(ConvexHull, OfATetrahedron) {
  const auto hull = convexHull({{0, 0, 0}, {1, 0, 0}, {0, 2, 0}, {0, 0, 3}});
  EXPECT_EQ(hull.faces.size(), 4u);
  EXPECT_NEAR(hull.volume, 1, 1e-12);
  EXPECT_NEAR((hull.centroid - Vector3d(0.25, 0.5, 0.75)).norm(), 0, 1e-12);
}

TEST(ConvexHull, OfManyPointsOnABallNearsItsVolume) {
  std::mt19937 random(7);
  std::normal_distribution<double> normal;
  std::vector<Vector3d> points;
  for (int i = 0; i < 1500; ++i) {
    points.push_back(2 * Vector3d{normal(random), normal(random), normal(random)}.normalized());
  }
  const auto hull = convexHull(points);
  const double ball = 4.0 / 3 * std::numbers::pi * 8;
  EXPECT_LT(hull.volume, ball);
  EXPECT_GT(hull.volume, 0.98 * ball);
  // Euler: a hull of triangles over n points has 2n - 4 faces.
  EXPECT_EQ(hull.faces.size(), 2 * points.size() - 4);
}

TEST(ConvexHull, HoldsEveryPointAndDoesNotCareWhereItLies) {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> uniform(-1, 1);
  for (int round = 0; round < 20; ++round) {
    std::vector<Vector3d> points, moved;
    for (int i = 0; i < 60; ++i) points.push_back({uniform(random), uniform(random), uniform(random)});
    const auto hull = convexHull(points);
    for (const auto& [a, b, c] : hull.faces) {
      const Vector3d normal = (points[b] - points[a]).cross(points[c] - points[a]);
      for (const auto& p : points) EXPECT_LE(normal.dot(p - points[a]), 1e-9);
    }
    for (const auto& p : points) moved.push_back(2 * p + Vector3d(100, -50, 7));
    EXPECT_NEAR(convexHull(moved).volume, 8 * hull.volume, 1e-9);
  }
}

TEST(ConvexHull, OfNothingOfALineAndOfAPlaneHasNoVolume) {
  EXPECT_EQ(convexHull({}).volume, 0);
  EXPECT_EQ(convexHull({{1, 2, 3}}).volume, 0);
  EXPECT_EQ(convexHull({{0, 0, 0}, {1, 1, 1}, {2, 2, 2}, {3, 3, 3}}).volume, 0);
  const auto sheet = convexHull({{0, 0, 1}, {2, 0, 1}, {2, 2, 1}, {0, 2, 1}});
  EXPECT_EQ(sheet.volume, 0);
  EXPECT_NEAR((sheet.centroid - Vector3d(1, 1, 1)).norm(), 0, 1e-12);
}

TEST(ConvexPolygon, LeavesOutWhatLiesInsideOrOnItsEdges) {
  const auto corners = convexPolygon({{1, 1}, {0, 0}, {2, 2}, {2, 0}, {1, 0}, {0, 2}, {0.3, 0.4}, {2, 1}, {0, 0}});
  ASSERT_EQ(corners.size(), 4u);
  double twice = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    const auto &a = corners[i], &b = corners[(i + 1) % 4];
    twice += a.x() * b.y() - a.y() * b.x();
  }
  EXPECT_NEAR(twice, 8, 1e-12);  // counter-clockwise
}

TEST(ConvexPolygon, OfFewPoints) {
  EXPECT_TRUE(convexPolygon({}).empty());
  EXPECT_EQ(convexPolygon({{1, 2}, {1, 2}}).size(), 1u);
  EXPECT_EQ(convexPolygon({{0, 0}, {1, 1}, {2, 2}}).size(), 2u);
}

TEST(ConvexPolygon, MiddleIsThatOfTheArea) {
  EXPECT_NEAR((middleOf({{0, 0}, {3, 0}, {0, 3}}) - Vector2d(1, 1)).norm(), 0, 1e-12);
  // A corner more on one edge does not draw it over.
  EXPECT_NEAR((middleOf({{0, 0}, {1, 0}, {2, 0}, {2, 2}, {0, 2}}) - Vector2d(1, 1)).norm(), 0, 1e-12);
  EXPECT_NEAR((middleOf({{0, 0}, {2, 4}}) - Vector2d(1, 2)).norm(), 0, 1e-12);
  EXPECT_EQ(middleOf({}), Vector2d(0, 0));
}

}  // namespace
}  // namespace zyga::study
