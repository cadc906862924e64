#include "core/solid/mesh/surface_distance.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "core/solid/mesh/repair.h"
#include "core/solid/mesh/simplify.h"
#include "tests/core/solid/mesh_library.h"

namespace zyga::solid {
namespace {

using Eigen::Vector3d;
using Eigen::Vector3f;

class Dice {
 public:
  Vector3d point(double half) { return {number_(random_) * half, number_(random_) * half, number_(random_) * half}; }

 private:
  std::mt19937 random_{20261130};
  std::uniform_real_distribution<double> number_{-1, 1};
};

std::array<Vector3d, 3> cornersOf(const TriangleMesh& mesh, std::size_t t) {
  return {mesh.positions[mesh.triangles[t][0]].cast<double>(), mesh.positions[mesh.triangles[t][1]].cast<double>(),
          mesh.positions[mesh.triangles[t][2]].cast<double>()};
}

/// Against every triangle.
double distanceByAll(const Vector3d& p, const TriangleMesh& mesh) {
  double best = std::numeric_limits<double>::infinity();
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t)
    best = std::min(best, (nearestOn(cornersOf(mesh, t), p) - p).norm());
  return best;
}

TEST(SurfaceDistance, TheNearestPointOfATriangleIsNearerThanAnyOtherOfIt) {
  Dice dice;
  constexpr int kParts = 60;
  for (int i = 0; i < 200; ++i) {
    const std::array<Vector3d, 3> t{dice.point(1), dice.point(1), dice.point(1)};
    const Vector3d p = dice.point(2);
    const double found = (nearestOn(t, p) - p).norm();
    double best = std::numeric_limits<double>::infinity();
    for (int a = 0; a <= kParts; ++a)
      for (int b = 0; a + b <= kParts; ++b) {
        const Vector3d q = (a * t[0] + b * t[1] + (kParts - a - b) * t[2]) / kParts;
        best = std::min(best, (q - p).norm());
      }
    EXPECT_LE(found, best + 1e-12);
    EXPECT_GE(found, best - 4.0 / kParts) << "and it is one of it";
  }
}

TEST(SurfaceDistance, TheGreatestIsThatOfAllPointsAndTriangles) {
  Dice dice;
  const TriangleMesh ball = sphereMesh(2, 9);
  std::vector<Vector3f> points;
  double most = 0;
  // More than one core looks at at once.
  for (int i = 0; i < 45'000; ++i) {
    points.push_back(dice.point(3).cast<float>());
    most = std::max(most, distanceByAll(points.back().cast<double>(), ball));
  }
  EXPECT_DOUBLE_EQ(greatestDistance(points, ball), most);
  for (std::size_t i = 0; i < 200; ++i)
    EXPECT_DOUBLE_EQ(greatestDistance({points[i]}, ball), distanceByAll(points[i].cast<double>(), ball));
}

TEST(SurfaceDistance, NothingIsFarFromItselfAndEverythingFromNothing) {
  const TriangleMesh ball = sphereMesh(2, 9);
  EXPECT_EQ(greatestDistance(ball.positions, ball), 0);
  EXPECT_EQ(greatestDistance({}, ball), 0);
  EXPECT_EQ(greatestDistance(ball.positions, TriangleMesh()), std::numeric_limits<double>::infinity());
  EXPECT_NEAR(greatestDistance({Vector3f::Zero()}, ball), 2, 0.1);
}

TEST(SurfaceDistance, ASimplifiedBowlKeepsItsBorderAndStaysNear) {
  TriangleMesh bowl = sphereMesh(2, 60);
  std::erase_if(bowl.triangles, [&](const auto& t) {
    return bowl.positions[t[0]].z() > 0 || bowl.positions[t[1]].z() > 0 || bowl.positions[t[2]].z() > 0;
  });
  const Repaired before = repair(bowl);
  const std::size_t wanted = before.mesh.triangles.size() / 4;
  EXPECT_LE(simplifiedWithBorders(before.mesh, wanted).triangles.size(), wanted);
  const Repaired after = repair(carefullySimplifiedWithBorders(before.mesh, wanted));
  EXPECT_LE(after.mesh.triangles.size(), wanted);
  EXPECT_EQ(after.repairs.degenerate, 0u);
  EXPECT_EQ(after.flaws, before.flaws) << "the border is where it was";
  // A quarter of the triangles are twice as wide: sagitta of 12 degrees at radius 2 is 0.011.
  const double error = greatestDistance(before.mesh.positions, after.mesh);
  EXPECT_GT(error, 0);
  EXPECT_LT(error, 0.03);
}

}  // namespace
}  // namespace zyga::solid
