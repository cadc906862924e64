#include "core/solid/mesh/facing.h"

#include <gtest/gtest.h>

#include "tests/core/solid/mesh_library.h"

namespace zyga::solid {
namespace {

/// Two balls of radius 1 with a gap of 0.02 between them along x: middles nearer than the reach lie on caps.
TEST(FacingPatches, AreTheCapsOfTwoBallsThatNearlyMeet) {
  const TriangleMesh left = sphereMesh(1, 60);
  TriangleMesh right = left;
  for (auto& p : right.positions) p.x() += 2.02f;
  constexpr double kReach = 0.1;
  const auto patches = facingPatches(left, right, kReach);
  ASSERT_EQ(patches.size(), 1u);
  // At height h over the axis the gap is 0.02 + 2 (1 - sqrt(1 - h^2)), so that h is near sqrt(reach - 0.02).
  const double h2 = kReach - 0.02;
  const double cap = 2 * std::numbers::pi * (1 - std::sqrt(1 - h2));
  EXPECT_NEAR(patches[0].area, cap, 0.15 * cap);
  EXPECT_NEAR(patches[0].middle.x(), 1, 0.05);
  EXPECT_NEAR(patches[0].middle.y(), 0, 0.02);
  EXPECT_TRUE(facingPatches(left, right, 0.01).empty());
}

TEST(FacingPatches, ASurfaceSeenFromBehindDoesNotFace) {
  const TriangleMesh ball = sphereMesh(1, 40), shell = sphereMesh(1.02, 40);
  EXPECT_TRUE(facingPatches(ball, shell, 0.1).empty());
  EXPECT_EQ(facingPatches(ball, insideOut(shell), 0.1).size(), 1u);
}

}  // namespace
}  // namespace zyga::solid
