#include "core/solid/mesh/repair.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <random>

#include "core/solid/mesh/simplify.h"
#include "tests/core/solid/mesh_library.h"
#include "ui/words/scan_words.h"

namespace zyga::solid {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

std::string said(const Repaired& repaired) {
  files::CleanScan scan;
  scan.repairs = repaired.repairs;
  return ui::repairsSaid(scan).join("\n").toStdString();
}

TEST(Repair, LeavesAGoodMeshAlone) {
  const TriangleMesh sphere = sphereMesh(1, 24);
  const Repaired out = repair(sphere);
  EXPECT_EQ(out.repairs, Repairs{});
  EXPECT_EQ(out.mesh.positions, sphere.positions);
  EXPECT_EQ(out.mesh.triangles, sphere.triangles);
  EXPECT_TRUE(out.flaws.closed());
  EXPECT_EQ(out.flaws.surfaces, 1u);
  EXPECT_THAT(said(out), IsEmpty());
  EXPECT_TRUE(ui::flawsSaid(out.flaws, 1).isEmpty());
}

TEST(Repair, WeldsASoupAndFindsItClosed) {
  const TriangleMesh sphere = sphereMesh(1, 24);
  const Repaired out = repair(soupOf(sphere));
  EXPECT_EQ(out.mesh.positions.size(), sphere.positions.size());
  EXPECT_EQ(out.repairs.welded, 3 * sphere.triangles.size() - sphere.positions.size());
  EXPECT_TRUE(out.flaws.closed());
  EXPECT_NEAR(volume(out.mesh), volume(sphere), 1e-6);
}

TEST(Repair, NegativeAndPositiveZeroAreOnePlace) {
  TriangleMesh mesh = soupOf(sphereMesh(1, 8));
  for (std::size_t i = 0; i < mesh.positions.size(); i += 2)
    for (float& x : mesh.positions[i])
      if (x == 0) x = -0.0f;
  EXPECT_TRUE(repair(std::move(mesh)).flaws.closed());
}

TEST(Repair, ClosesSeamsWithinTheWeldDistanceOnly) {
  for (const double shift : {1e-7, 1e-3}) {
    TriangleMesh soup = soupOf(sphereMesh(1, 24));
    std::mt19937 random(1);
    std::uniform_real_distribution<float> off(-static_cast<float>(shift), static_cast<float>(shift));
    for (Eigen::Vector3f& p : soup.positions) p += Eigen::Vector3f{off(random), off(random), off(random)};
    const Repaired out = repair(std::move(soup));
    EXPECT_EQ(out.flaws.closed(), shift < 1e-6);
    EXPECT_EQ(out.repairs.seamsClosed > 0, shift < 1e-6);
  }
}

TEST(Repair, DropsBadIndicesAndPointsThatAreNoNumbers) {
  TriangleMesh mesh = sphereMesh(1, 12);
  const std::size_t before = mesh.triangles.size();
  mesh.triangles[3][1] = 1'000'000;
  mesh.positions[mesh.triangles.back()[0]].y() = std::numeric_limits<float>::infinity();
  const Repaired out = repair(mesh);
  EXPECT_EQ(out.repairs.badIndices, 1u);
  EXPECT_GT(out.repairs.notFinite, 0u);
  EXPECT_EQ(out.mesh.triangles.size(), before - 1 - out.repairs.notFinite);
  EXPECT_FALSE(out.flaws.closed());
  for (const auto& p : out.mesh.positions) EXPECT_TRUE(p.allFinite());
  EXPECT_THAT(said(out), HasSubstr("no number"));
}

TEST(Repair, AMillionPointsThatAreNoNumbersTakeNoTime) {
  TriangleMesh mesh;
  mesh.positions.assign(300'000, Eigen::Vector3f::Constant(std::numeric_limits<float>::quiet_NaN()));
  for (std::uint32_t i = 0; i + 2 < mesh.positions.size(); i += 3) mesh.triangles.push_back({i, i + 1, i + 2});
  EXPECT_TRUE(repair(std::move(mesh)).mesh.empty());
}

TEST(Repair, DropsDuplicatesAndKeepsTheFirst) {
  TriangleMesh mesh = sphereMesh(1, 12);
  const std::size_t before = mesh.triangles.size();
  const auto t = mesh.triangles[10];
  mesh.triangles.push_back({t[1], t[2], t[0]});
  mesh.triangles.push_back({t[1], t[0], t[2]});
  const Repaired out = repair(std::move(mesh));
  EXPECT_EQ(out.repairs.duplicates, 2u);
  EXPECT_EQ(out.mesh.triangles.size(), before);
  EXPECT_TRUE(out.flaws.closed());
}

/// A vertex put on the edge between two triangles, the triangle of three points on a line between them.
TEST(Repair, TakesSliversOutWithoutOpeningTheSurface) {
  TriangleMesh mesh = sphereMesh(1, 12);
  const auto a = mesh.triangles[30][0], b = mesh.triangles[30][1], c = mesh.triangles[30][2];
  const auto m = static_cast<std::uint32_t>(mesh.positions.size());
  mesh.positions.push_back((mesh.positions[a] + mesh.positions[b]) / 2);
  mesh.triangles[30] = {a, m, c};
  mesh.triangles.push_back({m, b, c});
  mesh.triangles.push_back({a, b, m});
  const double before = volume(mesh);
  const Repaired out = repair(std::move(mesh));
  EXPECT_EQ(out.repairs.degenerate, 1u);
  EXPECT_TRUE(out.flaws.closed());
  EXPECT_NEAR(volume(out.mesh), before, 1e-6);
}

TEST(Repair, GivesTrianglesOneSenseAndTurnsThemOutwards) {
  TriangleMesh mesh = sphereMesh(1, 24);
  std::mt19937 random(7);
  std::size_t over = 0;
  for (auto& t : mesh.triangles)
    if (random() % 4 == 0) {
      std::swap(t[1], t[2]);
      ++over;
    }
  const double expected = volume(sphereMesh(1, 24));
  const Repaired out = repair(mesh);
  EXPECT_EQ(out.repairs.turned, over);
  EXPECT_NEAR(volume(out.mesh), expected, 1e-9);
  EXPECT_TRUE(examine(out.mesh).oriented);

  for (auto& t : mesh.triangles) std::swap(t[1], t[2]);
  const Repaired inside = repair(mesh);
  EXPECT_EQ(inside.repairs.insideOut, 1u);
  EXPECT_NEAR(volume(inside.mesh), expected, 1e-9);
}

TEST(Repair, AHollowStaysAHollow) {
  TriangleMesh outer = sphereMesh(1, 24), inner = insideOut(sphereMesh(0.5, 16));
  const double expected = volume(outer) + volume(inner);
  const Repaired kept = repair(joinedMesh(outer, inner));
  EXPECT_EQ(kept.flaws.cavities, 1u);
  EXPECT_EQ(kept.repairs.insideOut, 0u);
  EXPECT_NEAR(volume(kept.mesh), expected, 1e-9);
  // The same inside out as a whole.
  const Repaired turned = repair(joinedMesh(insideOut(outer), insideOut(inner)));
  EXPECT_EQ(turned.flaws.cavities, 1u);
  EXPECT_NEAR(volume(turned.mesh), expected, 1e-9);
  // A separate bone beside it that is inside out is put right.
  TriangleMesh beside = insideOut(sphereMesh(0.5, 16));
  for (auto& p : beside.positions) p.x() += 3;
  const Repaired two = repair(joinedMesh(outer, beside));
  EXPECT_EQ(two.repairs.insideOut, 1u);
  EXPECT_NEAR(volume(two.mesh), volume(outer) - volume(beside), 1e-9);
}

TEST(Repair, ReportsHolesWithTheLongestBorder) {
  TriangleMesh mesh = sphereMesh(1, 48);
  const double z = 0.9;
  std::erase_if(mesh.triangles, [&](const auto& t) {
    return std::all_of(t.begin(), t.end(), [&](auto v) { return mesh.positions[v].z() > z; });
  });
  const auto low = std::find_if(mesh.triangles.begin(), mesh.triangles.end(), [&](const auto& t) {
    return std::all_of(t.begin(), t.end(), [&](auto v) { return std::abs(mesh.positions[v].z()) < 0.2; });
  });
  mesh.triangles.erase(low);
  const Repaired out = repair(std::move(mesh));
  EXPECT_EQ(out.flaws.holes, 2u);
  EXPECT_FALSE(out.flaws.closed());
  // The border is near the circle of latitude at z: 2 pi sqrt(1 - z^2), one ring of triangles off at most.
  const double circle = 2 * std::numbers::pi * std::sqrt(1 - z * z);
  EXPECT_NEAR(out.flaws.longestHole, circle, 0.15 * circle);
  EXPECT_THAT(ui::flawsSaid(out.flaws, 0.001).join("\n").toStdString(),
              HasSubstr("2 holes left open, the longest border 2."));
}

TEST(Repair, ReportsEdgesWithMoreThanTwoTriangles) {
  TriangleMesh fins;
  fins.positions = {{0, 0, 0}, {0, 0, 1}, {1, 0, 0}, {0, 1, 0}, {-1, -1, 0}};
  fins.triangles = {{0, 1, 2}, {0, 1, 3}, {0, 1, 4}};
  EXPECT_EQ(repair(std::move(fins)).flaws.nonManifoldEdges, 1u);
}

TEST(Repair, TellsAOneSidedSurface) {
  // A strip of paper joined with half a turn.
  constexpr std::uint32_t kSteps = 24;
  TriangleMesh strip;
  for (std::uint32_t i = 0; i < kSteps; ++i) {
    const float a = 2 * std::numbers::pi_v<float> * static_cast<float>(i) / kSteps;
    for (const float s : {-0.3f, 0.3f}) {
      const float r = 1 + s * std::cos(a / 2);
      strip.positions.emplace_back(r * std::cos(a), r * std::sin(a), s * std::sin(a / 2));
    }
  }
  for (std::uint32_t i = 0; i < kSteps; ++i) {
    const std::uint32_t a = 2 * i, b = 2 * i + 1;
    const bool last = i + 1 == kSteps;
    const std::uint32_t c = last ? 1 : a + 2, d = last ? 0 : b + 2;
    strip.triangles.push_back({a, c, b});
    strip.triangles.push_back({b, c, d});
  }
  EXPECT_GT(repair(std::move(strip)).flaws.twisted, 0u);
}

TEST(Repair, EndsSoonWhenCancelled) {
  const std::atomic<bool> cancel{true};
  RepairOptions options;
  options.task = task::Task(&cancel);
  EXPECT_TRUE(repair(sphereMesh(1, 24), options).mesh.empty());
}

TEST(DisplayLevels, KeepTheWholeMeshAndStayNearIt) {
  const TriangleMesh sphere = sphereMesh(1, 96);
  const BoneMesh bone = displayLevels(sphere, 500);
  ASSERT_GE(bone.levels.size(), 3u);
  EXPECT_EQ(bone.levels.front().triangles, sphere.triangles);
  EXPECT_LE(bone.levels.back().triangles.size(), 2000u);
  for (const TriangleMesh& level : bone.levels) {
    EXPECT_EQ(level.normals.size(), level.positions.size());
    EXPECT_NEAR(volume(level), volume(sphere), 0.04 * volume(sphere));
  }
}

}  // namespace
}  // namespace zyga::solid
