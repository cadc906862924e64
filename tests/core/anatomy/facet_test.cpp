#include "core/anatomy/facet.h"

#include <gtest/gtest.h>

#include <numbers>

namespace zyga::anatomy {
namespace {

double area(const std::vector<Eigen::Vector2d>& p) {
  double twice = 0;
  for (std::size_t i = 0; i < p.size(); ++i) {
    const auto& a = p[i];
    const auto& b = p[(i + 1) % p.size()];
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return 0.5 * twice;
}

TEST(Facet, EllipseHasItsLengthAndItsArea) {
  const auto outline = ellipseOutline(0.08, 0.05);
  EXPECT_NEAR(area(outline), std::numbers::pi / 4 * 0.08 * 0.05, 1e-12);  // closed form
  Facet facet;
  facet.outline = outline;
  EXPECT_NEAR(facet.length(), 0.08, 1e-15);
  EXPECT_NEAR(facet.width(), 0.05, 0.05 * 0.003);
}

TEST(Facet, CornersLieInThePlane) {
  Facet facet;
  facet.centre = {1, 2, 3};
  facet.normal = Eigen::Vector3d(0, -0.6, 0.8);
  facet.slide = Eigen::Vector3d::UnitX();
  facet.outline = ellipseOutline(0.1, 0.06);
  for (std::size_t i = 0; i < facet.outline.size(); ++i) {
    EXPECT_NEAR(facet.normal.dot(facet.corner(i) - facet.centre), 0, 1e-15);
  }
}

TEST(Facet, EmptyOutlineHasNoExtent) {
  EXPECT_EQ(Facet{}.length(), 0);
  EXPECT_EQ(Facet{}.width(), 0);
}

}  // namespace
}  // namespace zyga::anatomy
