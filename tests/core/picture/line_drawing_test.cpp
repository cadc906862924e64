#include "core/picture/line_drawing.h"

#include <gtest/gtest.h>

#include "core/picture/line_tracing.h"
#include "tests/core/picture/shapes.h"

namespace zyga::picture {
namespace {

using namespace test;
using Eigen::Vector2d;
using Eigen::Vector3d;

Camera fromTheLeft() { return frame(StandardView::Left, {Vector3d(-1, -1, -1), Vector3d(1, 1, 1)}, 1); }

DrawingOptions spaced(double spacing) {
  DrawingOptions options;
  options.spacing = spacing;
  return options;
}

TEST(DrawLines, ABallIsADisc) {
  const auto drawn = drawLines({{sphere(1, 96), at(0, 0, 0)}}, fromTheLeft(), spaced(0.02));
  ASSERT_EQ(drawn.size(), 1U);
  ASSERT_EQ(drawn[0].edges.size(), 1U);
  // What simplifying may take away: its tolerance all round, a fifth of the spacing.
  EXPECT_NEAR(areaOf(drawn[0].edges), M_PI, 2 * M_PI * 0.2 * 0.02);
  for (const Vector2d& p : drawn[0].edges[0]) EXPECT_NEAR(p.norm(), 1, 0.003);  // a seventh of the spacing
  EXPECT_TRUE(drawn[0].folds.empty());
}

TEST(DrawLines, HiddenPartsAreLeftOutAndAreasAddUp) {
  // A small box before the middle of a large one: a hole in the large one, of just the small one's size.
  const std::vector<Instance> boxes{{box(2, 1, 2), at(0, 0, 0)}, {box(0.6, 0.2, 0.4), at(0.1, 1.5, 0.2)}};
  const auto drawn = drawLines(boxes, fromTheLeft(), spaced(0.013));
  ASSERT_EQ(drawn.size(), 2U);
  EXPECT_EQ(drawn[0].edges.size(), 2U);
  EXPECT_NEAR(areaOf(drawn[1].edges), 0.24, 0.002);
  EXPECT_NEAR(areaOf(drawn[0].edges), 4 - 0.24, 0.006);
  DrawingOptions together = spaced(0.013);
  together.asOne = true;
  const auto one = drawLines(boxes, fromTheLeft(), together);
  ASSERT_EQ(one.size(), 1U);
  EXPECT_NEAR(areaOf(one[0].edges), 4, 0.006);
}

TEST(DrawLines, AStepWithinABoneIsAFold) {
  // One mesh of two boxes, one behind the other: the edge of the near one over the far one is drawn.
  auto mesh = std::make_shared<solid::TriangleMesh>(*box(2, 0.2, 2));
  const auto near = box(1, 0.2, 1);
  const auto first = static_cast<std::uint32_t>(mesh->positions.size());
  for (const auto& p : near->positions) mesh->positions.push_back(p + Eigen::Vector3f(0, 1, 0));
  for (const auto& t : near->triangles) mesh->triangles.push_back({t[0] + first, t[1] + first, t[2] + first});
  const auto drawn = drawLines({{mesh, at(0, 0, 0)}}, fromTheLeft(), spaced(0.013));
  ASSERT_EQ(drawn.size(), 1U);
  double length = 0;
  for (const PlaneLine& line : drawn[0].folds)
    for (std::size_t i = 1; i < line.size(); ++i) length += (line[i] - line[i - 1]).norm();
  EXPECT_NEAR(length, 4, 0.15);  // round the near box
}

TEST(DrawLines, AreTheSameWhateverTheThreadCount) {
  DrawingOptions one = spaced(0.03), three = one;
  one.task = task::Task().withThreads(1);
  three.task = task::Task().withThreads(3);
  const std::vector<Instance> balls{{sphere(0.7), at(0, 0, 0)}, {sphere(0.5), at(0.4, 0.9, 0.2)}};
  const auto a = drawLines(balls, fromTheLeft(), one), b = drawLines(balls, fromTheLeft(), three);
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) EXPECT_EQ(a[i].edges, b[i].edges);
}

TEST(DrawLines, RefusesPerspectiveAndTakesNothing) {
  Camera camera = fromTheLeft();
  EXPECT_TRUE(drawLines({}, camera, spaced(0.1)).empty());
  EXPECT_THROW(drawLines({}, camera, spaced(0)), std::invalid_argument);
  camera.perspective = true;
  EXPECT_THROW(drawLines({}, camera, spaced(0.1)), std::invalid_argument);
}

TEST(Simplified, KeepsCornersAndTheTolerance) {
  PlaneLine line;
  for (int i = 0; i <= 100; ++i) line.emplace_back(i, 0.1 * std::sin(i));
  for (int i = 1; i <= 100; ++i) line.emplace_back(100, i);
  const PlaneLine kept = simplified(line, 0.2, false);
  EXPECT_EQ(kept.front(), line.front());
  EXPECT_EQ(kept.back(), line.back());
  EXPECT_EQ(kept.size(), 3U);
}

}  // namespace
}  // namespace zyga::picture
