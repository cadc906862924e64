#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/solid/mesh/simplify.h"
#include "core/solid/sdf/levels.h"
#include "core/solid/sdf/mesher.h"

namespace zyga::solid {
namespace {

constexpr double kPi = std::numbers::pi;

TriangleMesh meshOf(const Shape& shape, std::size_t triangles = 20000) {
  return meshSurface(shape, voxelFor(shape, triangles));
}

void expectSound(const TriangleMesh& mesh) {
  const MeshHealth health = examine(mesh);
  EXPECT_TRUE(health.closed);
  EXPECT_TRUE(health.oriented);
  EXPECT_EQ(health.components, 1u);
  EXPECT_GT(health.volume, 0);
}

/// Volumes by closed form (geometry); the surface lies between the facets of a mesh of this fineness to about 0.3 %.
void expectVolume(const Shape& shape, double expected) {
  const TriangleMesh mesh = meshOf(shape);
  expectSound(mesh);
  EXPECT_NEAR(volume(mesh), expected, 0.004 * expected);
}

TEST(Field, VolumesOfPlainSolids) {
  expectVolume(ball({0.1, -0.2, 0.3}, 0.25), 4.0 / 3 * kPi * std::pow(0.25, 3));
  expectVolume(ellipsoid({0, 0, 0}, {0.3, 0.15, 0.1}), 4.0 / 3 * kPi * 0.3 * 0.15 * 0.1);
  expectVolume(roundCone({0, 0, 0}, {0.4, 0.1, 0}, 0.1, 0.1), 4.0 / 3 * kPi * 1e-3 + kPi * 0.01 * std::hypot(0.4, 0.1));
  expectVolume(block(Frame::Identity(), {0.2, 0.15, 0.1}, 0), 8 * 0.2 * 0.15 * 0.1);
  // A ring with a round section, by Pappus: 2 pi R times pi r^2.
  expectVolume(ring(Frame::Identity(), 0.3, 0.3, {0.08, 0.08}), 2 * kPi * 0.3 * kPi * 0.08 * 0.08);
  // A cylinder: loft with equal ends.
  expectVolume(loft(Frame::Identity(), {{-0.2, 0.1, 0.1}, {0.2, 0.1, 0.1}}, 0), kPi * 0.01 * 0.4);
  // A truncated cone: the straight profile through two stations.
  expectVolume(loft(Frame::Identity(), {{0, 0.1, 0.1}, {0.3, 0.2, 0.2}}, 0), kPi * 0.3 / 3 * (0.01 + 0.1 * 0.2 + 0.04));
}

TEST(Field, DistanceOfABallIsExact) {
  const Shape shape = ball({1, 2, 3}, 0.5);
  EXPECT_NEAR(shape.at({1, 2, 3}), -0.5, 1e-6);
  EXPECT_NEAR(shape.at({1, 2, 5}), 1.5, 1e-6);
  EXPECT_TRUE(std::isinf(Shape().at({0, 0, 0})));
}

TEST(Field, RoundConeOfOneBallInsideTheOtherIsTheLargerBall) {
  const Shape shape = roundCone({0, 0, 0}, {0.01, 0, 0}, 0.2, 0.1);
  EXPECT_NEAR(shape.at({0, 0.3, 0}), 0.1, 1e-6);
}

TEST(Field, SmoothCompositionAgreesWithPlainOneAwayFromTheSeam) {
  const Shape a = ball({0, 0, 0}, 0.2), b = ball({0.3, 0, 0}, 0.2);
  const Shape plain = unite({a, b}), smooth = smoothUnion(a, b, 0.05);
  EXPECT_NEAR(plain.at({-0.2, 0, 0}), smooth.at({-0.2, 0, 0}), 1e-6);
  const Point seam(0.15, 0.1, 0);
  // Where both are equal the cubic blend adds a sixth of its width.
  EXPECT_NEAR(smooth.at(seam), plain.at(seam) - 0.05 / 6, 1e-6);
  EXPECT_NEAR(cut(a, b).at({0, 0, 0}), std::max(-0.2, -0.1), 1e-6);
  EXPECT_TRUE(smoothUnion({Shape(), Shape()}, 0.1).empty());
  EXPECT_NEAR(smoothCut(a, Shape(), 0.1).at({0, 0, 0}), -0.2, 1e-6);
}

TEST(Field, MirrorAndPlacement) {
  const Shape shape = roundCone({0, 0.1, 0}, {0.3, 0.4, 0.2}, 0.05, 0.1);
  const Point p(0.2, -0.3, 0.1);
  EXPECT_NEAR(mirrored(shape).at(p), shape.at({0.2, 0.3, 0.1}), 1e-6);
  const Frame frame = frameAlong({1, 2, 3}, {2, 2, 4}, Point::UnitY());
  EXPECT_NEAR(placed(shape, frame).at(frame * p), shape.at(p), 1e-5);
}

Shape tangle() {
  std::vector<Shape> parts;
  for (int i = 0; i < 12; ++i) {
    const double a = 0.7 * i;
    parts.push_back(tube({{Point(0, 0, 0), {0.03, 0.012}},
                          {Point(0.1 * std::cos(a), 0.1 * std::sin(a), 0.02 * i), {0.02, 0.01}},
                          {Point(0.3 * std::cos(a + 0.4), 0.3 * std::sin(a + 0.4), 0.03 * i - 0.1), {0.015, 0.01}}},
                         Point::UnitZ()));
  }
  Shape out = smoothUnion(parts, 0.02);
  out = smoothCut(out, ball({0.1, 0.05, 0}, 0.05), 0.01);
  return intersect(out, halfSpace({0, 0, 0.1}, Point::UnitZ()), 0.01);
}

TEST(Field, PruningKeepsTheFieldWithinTheBand) {
  const Shape shape = tangle();
  for (int i = 0; i < 400; ++i) {
    const Point centre(0.3 * std::sin(1.3 * i), 0.3 * std::sin(2.1 * i + 1), 0.2 * std::sin(0.9 * i + 2));
    const double radius = 0.04, band = 0.02;
    const Shape lean = shape.near(centre, radius, band);
    for (int k = 0; k < 8; ++k) {
      const Point p = centre + 0.55 * radius * Point(k & 1 ? 1 : -1, k & 2 ? 1 : -1, k & 4 ? 1 : -1);
      const double whole = shape.at(p), pruned = lean.at(p);
      if (std::abs(whole) < band)
        EXPECT_NEAR(pruned, whole, 1e-6);
      else
        EXPECT_EQ(pruned < 0, whole < 0);
    }
  }
}

TEST(Mesher, ThinTangledSolidsAreManifoldsAtEveryFineness) {
  for (const double voxel : {0.02, 0.011, 0.006, 0.003}) {
    const TriangleMesh mesh = meshSurface(tangle(), voxel);
    ASSERT_FALSE(mesh.empty());
    expectSound(mesh);
  }
}

TEST(Mesher, TouchingAndAmbiguousSolidsAreManifolds) {
  // Balls that touch at corners of the grid make every ambiguous pattern of signs.
  std::vector<Shape> balls;
  for (int i = 0; i < 27; ++i)
    if (i % 2 == 0) balls.push_back(ball({0.02 * (i % 3), 0.02 * (i / 3 % 3), 0.02 * (i / 9)}, 0.0142));
  for (const double voxel : {0.02, 0.01, 0.0071, 0.005}) expectSound(meshSurface(unite(balls), voxel));
}

TEST(Mesher, SpecksAndClosedHollowsAreDropped) {
  const Shape shape = unite({cut(ball({0, 0, 0}, 0.2), ball({0, 0, 0}, 0.1)), ball({0.4, 0, 0}, 0.02)});
  const TriangleMesh mesh = meshOf(shape);
  expectSound(mesh);
  EXPECT_NEAR(volume(mesh), 4.0 / 3 * kPi * 0.008, 0.004 * 0.0335);
}

TEST(Mesher, NoSurfaceGivesAnEmptyMesh) {
  EXPECT_TRUE(meshSurface(Shape(), 0.01).empty());
  EXPECT_TRUE(meshLevels(Shape(), 1000).levels.empty());
  EXPECT_TRUE(meshLevels(cut(ball({0, 0, 0}, 0.1), ball({0, 0, 0}, 0.2)), 1000).levels.empty());
}

TEST(Mesher, ShadedVerticesLieOnTheSurfaceWithOutwardNormals) {
  const Shape shape = ellipsoid({0, 0, 0}, {0.3, 0.2, 0.15});
  TriangleMesh mesh = meshOf(shape, 4000);
  shade(shape, mesh, 0.05);
  for (std::size_t i = 0; i < mesh.positions.size(); ++i) {
    const Point p = mesh.positions[i].cast<double>();
    EXPECT_NEAR(shape.at(p), 0, 2e-6);
    const Point n = Point(p.x() / 0.09, p.y() / 0.04, p.z() / 0.0225).normalized();
    EXPECT_GT(n.dot(mesh.normals[i].cast<double>()), 0.999);
  }
}

TEST(Mesher, HollowsAreDarkerThanOpenPlaces) {
  const Shape shape = smoothCut(ball({0, 0, 0}, 0.2), roundCone({0, 0, 0}, {0, 0, 0.3}, 0.05, 0.05), 0.01);
  TriangleMesh mesh = meshOf(shape, 8000);
  shade(shape, mesh, 0.2);
  float bottom = 1, open = 0;
  for (std::size_t i = 0; i < mesh.positions.size(); ++i) {
    const Eigen::Vector3f& p = mesh.positions[i];
    if (std::hypot(p.x(), p.y()) < 0.02f && p.z() > -0.1f) bottom = std::min(bottom, mesh.occlusion[i]);
    if (p.z() < -0.15f) open = std::max(open, mesh.occlusion[i]);
  }
  EXPECT_LT(bottom, 0.9f);
  EXPECT_GT(open, 0.97f);
}

TEST(Mesher, LevelsAreSoundAndShrink) {
  const BoneMesh bone = meshLevels(tangle(), 6000);
  ASSERT_EQ(bone.levels.size(), 3u);
  for (const TriangleMesh& level : bone.levels) {
    expectSound(level);
    EXPECT_EQ(level.normals.size(), level.positions.size());
    EXPECT_EQ(level.occlusion.size(), level.positions.size());
  }
  EXPECT_LE(bone.levels[0].triangles.size(), 6000u);
  EXPECT_LT(bone.levels[1].triangles.size(), bone.levels[0].triangles.size() / 3);
  EXPECT_LT(bone.levels[2].triangles.size(), bone.levels[1].triangles.size() / 2);
}

TEST(TriangleMesh, ExaminesOpenAndInsideOutMeshes) {
  TriangleMesh mesh = meshOf(ball({0, 0, 0}, 0.1), 500);
  TriangleMesh open = mesh;
  open.triangles.pop_back();
  EXPECT_FALSE(examine(open).closed);
  TriangleMesh turned = mesh;
  std::swap(turned.triangles[0][1], turned.triangles[0][2]);
  EXPECT_TRUE(examine(turned).closed);
  EXPECT_FALSE(examine(turned).oriented);
  for (auto& t : mesh.triangles) std::swap(t[1], t[2]);
  EXPECT_TRUE(examine(mesh).oriented);
  EXPECT_LT(examine(mesh).volume, 0);
  EXPECT_FALSE(examine(TriangleMesh()).closed);
}

}  // namespace
}  // namespace zyga::solid
