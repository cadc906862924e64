#include "core/picture/bone_scene.h"

#include <gtest/gtest.h>

#include "tests/core/picture/shapes.h"

namespace zyga::picture {
namespace {

using namespace test;
using Eigen::Vector3f;

BoneScene boxAtTwoMetres() { return {{box(1, 1, 1)}, {at(2, 0, 0)}, BoneScene::Build::Repeatable}; }

TEST(BoneScene, ClearanceStopsAtTheReach) {
  const BoneScene scene = boxAtTwoMetres();
  const Ray towards{Vector3f::Zero(), Vector3f::UnitX()};
  EXPECT_NEAR(scene.clearance(towards, 10), 1.5f, 1e-6);
  EXPECT_FLOAT_EQ(scene.clearance(towards, 1), 1);
  EXPECT_FLOAT_EQ(scene.clearance({Vector3f::Zero(), Vector3f::UnitY()}, 10), 10);
}

TEST(BoneScene, BlockedWithinReachOnly) {
  const BoneScene scene = boxAtTwoMetres();
  const Ray towards{Vector3f::Zero(), Vector3f::UnitX()};
  EXPECT_TRUE(scene.blocked(towards));
  EXPECT_FALSE(scene.blocked(towards, 1.49f));
  EXPECT_FALSE(scene.blocked({Vector3f::Zero(), -Vector3f::UnitX()}));
}

TEST(BoneScene, BoundsFollowTheBones) {
  BoneScene scene = boxAtTwoMetres();
  EXPECT_TRUE(scene.bounds().isApprox({Eigen::Vector3d(1.5, -0.5, -0.5), Eigen::Vector3d(2.5, 0.5, 0.5)}));
  scene.move({at(0, 0, 7)});
  EXPECT_TRUE(scene.bounds().isApprox({Eigen::Vector3d(-0.5, -0.5, 6.5), Eigen::Vector3d(0.5, 0.5, 7.5)}));
  EXPECT_TRUE(BoneScene({}, {}, BoneScene::Build::Fast).bounds().isEmpty());
}

TEST(BoneScene, SmoothNormalsComeFromTheMesh) {
  const BoneScene scene({sphere(1, 12)}, {at(0, 0, 0)}, BoneScene::Build::Repeatable);
  const Vector3f direction = Vector3f(-1, -0.3f, -0.2f).normalized();
  const auto hit = scene.nearest({-3 * direction + Vector3f(0.1f, 0.05f, 0), direction});
  ASSERT_TRUE(hit);
  // Interpolated normals of a sphere of 12 rings lie within a quarter of a degree of the radius; its faces do not.
  EXPECT_GT(hit->normal_W.normalized().dot(hit->p_W.normalized()), std::cos(0.25 * M_PI / 180));
  EXPECT_LT(hit->face_W.dot(direction), 0);
}

TEST(BoneScene, EveryBuildMeetsTheSameTriangles) {
  std::mt19937 random(7);
  const BoneScene::Meshes meshes{triangleSoup(random, 4000)};
  const BoneScene one(meshes, {at(0, 0, 0)}, BoneScene::Build::Repeatable);
  const BoneScene two(meshes, {at(0, 0, 0)}, BoneScene::Build::Repeatable);
  for (int i = 0; i < 2000; ++i) {
    const Eigen::Vector3d origin = randomPoint(random, 5), direction = (randomPoint(random, 1) - origin).normalized();
    const Ray ray{origin.cast<float>(), direction.cast<float>()};
    const auto a = one.nearest(ray), b = two.nearest(ray);
    ASSERT_EQ(a.has_value(), b.has_value());
    if (!a) continue;
    EXPECT_EQ(a->triangle, b->triangle);
    EXPECT_EQ(a->distance, b->distance);
  }
}

}  // namespace
}  // namespace zyga::picture
