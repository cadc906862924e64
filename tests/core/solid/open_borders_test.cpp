#include "core/solid/mesh/open_borders.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace zyga::solid {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr int kRows = 120, kColumns = 240;

/// A sphere of radius 2 in rings of triangles from pole to pole; `there` says of which triangles' middles.
template <class There>
TriangleMesh ballWhere(const There& there) {
  TriangleMesh mesh;
  for (int i = 1; i < kRows; ++i)
    for (int j = 0; j < kColumns; ++j) {
      const double theta = kPi * i / kRows, phi = 2 * kPi * j / kColumns;
      mesh.positions.emplace_back(2 * std::sin(theta) * std::cos(phi), 2 * std::sin(theta) * std::sin(phi),
                                  2 * std::cos(theta));
    }
  const auto at = [](int i, int j) { return static_cast<std::uint32_t>((i - 1) * kColumns + j % kColumns); };
  mesh.positions.emplace_back(0, 0, 2);
  mesh.positions.emplace_back(0, 0, -2);
  const auto north = static_cast<std::uint32_t>(mesh.positions.size() - 2), south = north + 1;
  const auto add = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c) {
    if (there((mesh.positions[a] + mesh.positions[b] + mesh.positions[c]) / 3)) mesh.triangles.push_back({a, b, c});
  };
  for (int j = 0; j < kColumns; ++j) {
    add(north, at(1, j), at(1, j + 1));
    add(south, at(kRows - 1, j + 1), at(kRows - 1, j));
    for (int i = 1; i + 1 < kRows; ++i) {
      add(at(i, j), at(i + 1, j), at(i + 1, j + 1));
      add(at(i, j), at(i + 1, j + 1), at(i, j + 1));
    }
  }
  return mesh;
}

TEST(OpenBorders, AWholeBallHasNone) {
  const auto found = openBorders(ballWhere([](const Eigen::Vector3f&) { return true; }));
  EXPECT_EQ(found.borders, 0u);
  EXPECT_EQ(found.missing(), 0);
  EXPECT_NEAR(found.area, 16 * kPi, 0.01 * 16 * kPi);
}

// Cut by planes, closed form: a cap of height h of a ball of radius r has the area 2 pi r h and is closed by a disc of
// pi (2 r h - h^2). Tolerance 3 %: borders are steps of the rings.
TEST(OpenBorders, ABallThatIsCutTellsTheDiscsThatCloseIt) {
  for (const double z : {0.0, 1.0, -1.0}) {
    const auto found = openBorders(ballWhere([z](const Eigen::Vector3f& p) { return p.z() > z; }));
    const double there = 2 * kPi * 2 * (2 - z), disc = kPi * (4 - z * z);
    EXPECT_EQ(found.borders, 1u);
    EXPECT_NEAR(found.area, there, 0.03 * there) << z;
    EXPECT_NEAR(found.holes, disc, 0.03 * disc) << z;
    EXPECT_NEAR(found.missing(), disc / (disc + there), 0.02) << z;
    EXPECT_NEAR(found.length, 2 * kPi * std::sqrt(4 - z * z), 0.05 * found.length) << z;
    EXPECT_LT(found.missing(), (2 + z) / 4 + 0.02) << "never more than what is gone";
  }
  const auto both = openBorders(ballWhere([](const Eigen::Vector3f& p) { return std::abs(p.z()) < 1.8F; }));
  EXPECT_EQ(both.borders, 2u);
}

// Faces lost here and there leave small holes, whose flat pieces are nearly what was there.
TEST(OpenBorders, ScatteredLossIsToldWithinATenth) {
  std::mt19937 random(4);
  for (const double share : {0.1, 0.3}) {
    std::bernoulli_distribution lost(share);
    const auto found = openBorders(ballWhere([&](const Eigen::Vector3f&) { return !lost(random); }));
    EXPECT_NEAR(found.missing(), share, 0.1 * share) << share;
  }
  // Where six in ten are gone islands are left, which count as borders of their own.
  std::bernoulli_distribution most(0.6);
  const auto found = openBorders(ballWhere([&](const Eigen::Vector3f&) { return !most(random); }));
  EXPECT_NEAR(found.missing(), 0.6, 0.15);
}

}  // namespace
}  // namespace zyga::solid
