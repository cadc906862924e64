#include "core/solid/watertight/watertight.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>
#include <stdexcept>

#include "core/solid/mesh/seams.h"
#include "tests/core/solid/posed_animal.h"
#include "tests/support/line_volume.h"
#include "tests/support/sample_animal.h"
#include "ui/words/say.h"

namespace zyga::solid {
namespace {

using testing::HasSubstr;

constexpr double kPi = std::numbers::pi;

double ballVolume(double r) { return 4 * kPi * r * r * r / 3; }

/// What two balls of radius r share whose middles are d apart.
/// https://mathworld.wolfram.com/Sphere-SphereIntersection.html, equation 16 for equal radii.
double lensVolume(double r, double d) { return kPi * (4 * r + d) * (2 * r - d) * (2 * r - d) / 12; }

WatertightOptions at(double voxel) {
  WatertightOptions options;
  options.voxel = voxel;
  return options;
}

void expectSound(const Watertight& made) {
  const MeshHealth health = examine(made.mesh);
  EXPECT_TRUE(health.closed);
  EXPECT_TRUE(health.oriented);
  EXPECT_EQ(health.components, made.pieces);
  EXPECT_NEAR(health.volume, made.volume, 1e-9);
}

LooseBones twoBalls(double radius, double apart) {
  LooseBones bones;
  bones.add(sphereMesh(radius, 60), {0, 0, 1});
  bones.add(sphereMesh(radius, 60), {apart, 0, 1});
  return bones;
}

std::string refusal(const PosedSkeleton& skeleton, const WatertightOptions& options) {
  try {
    watertight(skeleton, options);
  } catch (const reason::Failure& e) {
    return ui::sayFailure(e).toStdString();
  }
  return "made";
}

TEST(Watertight, UnionOfTwoBallsIsTheirSumLessTheLens) {
  for (const double apart : {0.1, 0.3, 0.5}) {
    const LooseBones bones = twoBalls(0.3, apart);
    const Watertight made = watertight(bones.posed(), at(0.006));
    expectSound(made);
    EXPECT_EQ(made.pieces, 1U);
    EXPECT_NEAR(made.volume / (2 * ballVolume(0.3) - lensVolume(0.3, apart)), 1, 0.005) << apart;
  }
}

TEST(Watertight, BonesApartStayPiecesUnlessJointsAreFilled) {
  const LooseBones bones = twoBalls(0.3, 0.62);
  Watertight made = watertight(bones.posed(), at(0.01));
  expectSound(made);
  EXPECT_EQ(made.pieces, 2U);
  EXPECT_NEAR(made.volume / (2 * ballVolume(0.3)), 1, 0.01);
  WatertightOptions filled = at(0.01);
  filled.fillJoints = true;
  made = watertight(bones.posed(), filled);
  expectSound(made);
  EXPECT_EQ(made.pieces, 1U);
  EXPECT_TRUE(made.unfilled.empty());
  EXPECT_GT(made.volume, 2 * ballVolume(0.3));
  EXPECT_LT(made.volume, 1.1 * 2 * ballVolume(0.3));
}

TEST(Watertight, AJointTooWideForCartilageIsToldAndLeftOpen) {
  const LooseBones bones = twoBalls(0.3, 1.2);
  WatertightOptions options = at(0.02);
  options.fillJoints = true;
  const Watertight made = watertight(bones.posed(), options);
  EXPECT_EQ(made.pieces, 2U);
  ASSERT_EQ(made.unfilled.size(), 1U);
  EXPECT_EQ(bones.specimen[made.unfilled[0]].id, "joint1");
}

TEST(Watertight, ClosedHollowsAreFilled) {
  LooseBones bones;
  bones.add(joinedMesh(sphereMesh(0.3, 60), insideOut(sphereMesh(0.2, 60))), {0, 0, 0});
  const Watertight made = watertight(bones.posed(), at(0.008));
  expectSound(made);
  EXPECT_EQ(made.hollows, 1U);
  EXPECT_NEAR(made.volume / ballVolume(0.3), 1, 0.005);
}

TEST(Watertight, AScanWithAHoleIsClosedAndCounted) {
  TriangleMesh open = sphereMesh(0.3, 60);
  open.triangles.erase(open.triangles.begin() + 4000, open.triangles.begin() + 4060);
  EXPECT_FALSE(examine(open).closed);
  EXPECT_TRUE(examine(withHolesClosed(open)).closed);
  EXPECT_TRUE(examine(withHolesClosed(open)).oriented);
  LooseBones bones;
  bones.add(open, {0, 0, 0});
  const Watertight made = watertight(bones.posed(), at(0.01));
  expectSound(made);
  EXPECT_EQ(made.holesClosed, 1U);
  EXPECT_NEAR(made.volume / ballVolume(0.3), 1, 0.01);
}

TEST(Watertight, ASurfaceThatEnclosesNothingIsLeftOutAndTold) {
  LooseBones bones = twoBalls(0.2, 0.3);
  TriangleMesh fan = sphereMesh(0.1, 8);
  fan.triangles.push_back(fan.triangles.front());  // one edge with three triangles
  bones.add(fan, {2, 0, 0});
  const Watertight made = watertight(bones.posed(), at(0.01));
  EXPECT_EQ(made.pieces, 1U);
  ASSERT_EQ(made.leftOut.size(), 1U);
  EXPECT_EQ(made.leftOut[0].value, 2U);
}

TEST(Watertight, AVoxelTooSmallForMemoryIsRefusedWithOneThatFits) {
  const LooseBones bones = twoBalls(0.3, 0.4);
  WatertightOptions options = at(0.0002);
  options.memory = 100 << 20;
  const std::string told = refusal(bones.posed(), options);
  EXPECT_THAT(told, HasSubstr("a voxel of 0.2\u00A0mm would need about"));
  const double smallest = smallestVoxel(bones.posed(), options.memory);
  EXPECT_GT(smallest, 0.0002);
  EXPECT_LT(smallest, 0.01);
  options.voxel = smallest;
  EXPECT_EQ(refusal(bones.posed(), options), "made");
}

TEST(Watertight, AVoxelTooCoarseIsRefused) {
  EXPECT_THAT(refusal(twoBalls(0.02, 0.03).posed(), at(0.5)), HasSubstr("is too coarse"));
  EXPECT_THAT(refusal(LooseBones().posed(), WatertightOptions()), HasSubstr("no bone meshes"));
}

TEST(Watertight, StopsWhenCancelled) {
  const LooseBones bones = twoBalls(0.3, 0.4);
  for (const double share : {0.01, 0.3, 0.75}) {
    std::atomic<bool> cancel{false};
    WatertightOptions options = at(0.005);
    options.task = task::Task(&cancel, [&](double done) {
      if (done >= share) cancel = true;
    });
    EXPECT_TRUE(watertight(bones.posed(), options).mesh.empty()) << share;
  }
}

TEST(Watertight, KeepsToTheTrianglesAskedFor) {
  const LooseBones bones = twoBalls(0.3, 0.7);
  WatertightOptions options = at(0.008);
  options.triangles = 5000;
  const Watertight made = watertight(bones.posed(), options);
  expectSound(made);
  EXPECT_EQ(made.pieces, 2U);
  EXPECT_LE(made.mesh.triangles.size(), 5000U);
  EXPECT_GT(made.mesh.triangles.size(), 4000U);
  EXPECT_NEAR(made.volume / (2 * ballVolume(0.3)), 1, 0.01);
}

class WatertightSample : public testing::TestWithParam<const char*> {};

TEST_P(WatertightSample, IsOneClosedManifoldOfTheBonesVolume) {
  const RestingAnimal animal(test::sampleAnimal(GetParam()), 1500);
  WatertightOptions options = at(0.012);
  options.triangles = 150000;
  options.fillJoints = true;
  const Watertight filled = watertight(animal.posed(), options);
  expectSound(filled);
  EXPECT_LE(filled.mesh.triangles.size(), 150000U);

  const Watertight bare = watertight(animal.posed(), at(0.012));
  expectSound(bare);
  test::LineVolume lines(0.01);
  for (std::size_t i = 0; i < animal.meshes.size(); ++i)
    if (animal.meshes[i]) lines.add(animal.meshes[i]->levels[0], animal.X_WB[i]);
  const double counted = lines.volume();
  std::cout << "counted " << counted << " m3, surface " << bare.volume << " m3 in " << bare.pieces << " pieces of "
            << bare.mesh.triangles.size() << " triangles; filled " << filled.volume << " m3 in " << filled.pieces
            << ", unfilled";
  for (const auto j : filled.unfilled) std::cout << " " << animal.specimen[j].id;
  std::cout << "\n";
  EXPECT_NEAR(bare.volume / counted, 1, 0.01);
  EXPECT_TRUE(bare.leftOut.empty());
  EXPECT_LT(filled.pieces, bare.pieces);
}

INSTANTIATE_TEST_SUITE_P(BothAnimals, WatertightSample, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::solid
