#include "core/solid/mesh/fit.h"

#include <gtest/gtest.h>

#include <numeric>
#include <random>
#include <stdexcept>

#include "tests/core/solid/mesh_library.h"

namespace zyga::solid {
namespace {

using Eigen::Vector3d;

/// An ellipse filled with triangles, in the plane through `centre` across `normal`, long axis `along`.
TriangleMesh disc(const Vector3d& centre, const Vector3d& normal, const Vector3d& along, double length, double width) {
  TriangleMesh mesh;
  constexpr int kRings = 12, kAround = 48;
  const Vector3d across = normal.cross(along);
  const auto at = [&](int ring, int j) -> Eigen::Vector3f {
    const double r = 0.5 * ring / kRings, a = 2 * std::numbers::pi * j / kAround;
    return Vector3d(centre + r * (length * std::cos(a) * along + width * std::sin(a) * across)).cast<float>();
  };
  mesh.positions.push_back(centre.cast<float>());
  for (int ring = 1; ring <= kRings; ++ring)
    for (int j = 0; j < kAround; ++j) mesh.positions.push_back(at(ring, j));
  const auto id = [](int ring, int j) {
    return ring == 0 ? 0u : static_cast<std::uint32_t>(1 + (ring - 1) * kAround + j % kAround);
  };
  for (int ring = 0; ring < kRings; ++ring)
    for (int j = 0; j < kAround; ++j) {
      mesh.triangles.push_back({id(ring, j), id(ring + 1, j), id(ring + 1, j + 1)});
      if (ring > 0) mesh.triangles.push_back({id(ring, j), id(ring + 1, j + 1), id(ring, j + 1)});
    }
  return mesh;
}

std::vector<std::uint32_t> all(const TriangleMesh& mesh) {
  std::vector<std::uint32_t> triangles(mesh.triangles.size());
  std::iota(triangles.begin(), triangles.end(), 0u);
  return triangles;
}

void shake(TriangleMesh& mesh, double sigma, unsigned seed) {
  if (sigma == 0) return;
  std::mt19937 random(seed);
  std::normal_distribution<float> off(0, static_cast<float>(sigma));
  for (auto& p : mesh.positions) p += Eigen::Vector3f{off(random), off(random), off(random)};
}

const Vector3d kCentre(0.2, -0.1, 0.4), kNormal = Vector3d(0.3, -0.5, 0.8).normalized(),
                                        kAlong = kNormal.cross(Vector3d::UnitY()).normalized();

TEST(FitPlane, FindsATiltedDiscUnderNoise) {
  auto mesh = disc(kCentre, kNormal, kAlong, 0.06, 0.04);
  shake(mesh, 0.0002, 5);
  const auto plane = fitPlane(patchOf(mesh, all(mesh)));
  EXPECT_GT(plane.normal.dot(kNormal), std::cos(0.01));
  EXPECT_LT(std::abs((plane.centre - kCentre).dot(kNormal)), 2e-5);
  // Middles of triangles average three corners: the noise is less than a vertex's by about the root of three.
  EXPECT_NEAR(plane.quality.rms, 0.0002 / std::sqrt(3.0), 3e-5);
}

TEST(FitPlane, TrimsWhatWasBrushedBesides) {
  auto mesh = disc(kCentre, kNormal, kAlong, 0.06, 0.04);
  shake(mesh, 0.0001, 6);
  const auto wall = disc(kCentre + 0.034 * kAlong + 0.012 * kNormal, -kAlong, kNormal, 0.024, 0.02);
  const auto both = joinedMesh(mesh, wall);
  const auto plane = fitPlane(patchOf(both, all(both)));
  EXPECT_GT(plane.normal.dot(kNormal), std::cos(0.01));
  EXPECT_LT(plane.quality.kept, 0.93);
  EXPECT_LT(plane.quality.rms, 0.00015);
}

TEST(FitPlane, RefusesNothing) { EXPECT_THROW(fitPlane({}), reason::Failure); }

/// The part of a sphere within `reach` rad of `pole`.
std::vector<std::uint32_t> cap(const TriangleMesh& sphere, const Vector3d& pole, double reach) {
  std::vector<std::uint32_t> out;
  for (std::uint32_t t = 0; t < sphere.triangles.size(); ++t) {
    Vector3d middle = Vector3d::Zero();
    for (const auto v : sphere.triangles[t]) middle += sphere.positions[v].cast<double>() / 3;
    if (middle.normalized().dot(pole) > std::cos(reach)) out.push_back(t);
  }
  return out;
}

TEST(FitSphere, FindsACondyleUnderNoiseAndSaysHowSure) {
  const Vector3d centre(0.5, 0.02, -0.3);
  double before = 0;
  for (const double reach : {1.4, 0.8, 0.5}) {
    auto mesh = sphereMesh(0.05, 60);
    const auto brushed = cap(mesh, Vector3d(1, 0.2, 0.1).normalized(), reach);
    shake(mesh, 0.0001, 8);
    for (auto& p : mesh.positions) p += centre.cast<float>();
    const auto sphere = fitSphere(patchOf(mesh, brushed));
    EXPECT_LT((sphere.centre - centre).norm(), std::max(5 * sphere.centreError, 1e-5)) << reach;
    EXPECT_NEAR(sphere.radius, 0.05, std::max(5 * sphere.centreError, 5e-5)) << reach;
    EXPECT_GT(sphere.centreError, before);  // the less of it is seen, the less is known
    EXPECT_FALSE(sphere.hollow);
    before = sphere.centreError;
  }
}

TEST(FitSphere, KnowsACotyleAndTrimsItsRim) {
  const auto ball = sphereMesh(0.05, 60);
  const auto brushed = cap(ball, Vector3d::UnitX(), 0.9);
  const auto hollow = insideOut(ball);
  const auto sphere = fitSphere(patchOf(hollow, brushed));
  EXPECT_TRUE(sphere.hollow);
  EXPECT_LT(sphere.centre.norm(), 2e-4);
  // A flat rim around it, one eighth of the area, is left out.
  auto patch = patchOf(hollow, brushed);
  const auto rim = disc({0.031, 0, 0.05}, -Vector3d::UnitX(), Vector3d::UnitY(), 0.04, 0.03);
  const auto more = patchOf(rim, all(rim));
  patch.triangles.insert(patch.triangles.end(), more.triangles.begin(), more.triangles.end());
  const auto robust = fitSphere(patch);
  EXPECT_LT(robust.centre.norm(), 1e-3);
  EXPECT_LT(robust.quality.kept, 0.97);
}

TEST(FitSphere, RefusesAFlatPatch) {
  const auto flat = disc(Vector3d::Zero(), Vector3d::UnitZ(), Vector3d::UnitX(), 1, 1);
  EXPECT_THROW(fitSphere(patchOf(flat, all(flat))), reason::Failure);
  EXPECT_THROW(fitSphere({}), reason::Failure);
}

TEST(FitFacet, FindsAnEllipseWithItsAxesAndOutline) {
  auto mesh = disc(kCentre, kNormal, kAlong, 0.06, 0.04);
  shake(mesh, 0.00005, 9);
  const auto fit = fitFacet(patchOf(mesh, all(mesh)), anatomy::FacetRole::PrezygLeft, kAlong);
  EXPECT_LT((fit.facet.centre - kCentre).norm(), 1e-4);
  EXPECT_NEAR(fit.length, 0.06, 6e-4);
  EXPECT_NEAR(fit.width, 0.04, 6e-4);
  EXPECT_NEAR(std::abs(fit.longAxis.dot(kAlong)), 1, 1e-3);
  EXPECT_NEAR(fit.facet.length(), 0.06, 6e-4);
  EXPECT_NEAR(fit.facet.width(), 0.04, 6e-4);
  EXPECT_LT(fit.quality.rms, 0.0001);
}

TEST(FitFacet, KeepsTheDirectionOfSlidingAndTurnsTheOutlineUnderIt) {
  const auto mesh = disc(kCentre, kNormal, kAlong, 0.06, 0.04);
  const Vector3d across = kNormal.cross(kAlong);
  const auto fit = fitFacet(patchOf(mesh, all(mesh)), anatomy::FacetRole::PostzygRight, across + 2 * kNormal);
  EXPECT_NEAR(fit.facet.slide.dot(across), 1, 1e-6);
  EXPECT_NEAR(fit.facet.length(), 0.04, 6e-4);
  EXPECT_NEAR(fit.facet.width(), 0.06, 6e-4);
}

TEST(FitFacet, TheHullHoldsEveryCornerThatWasKept) {
  const auto mesh = disc(kCentre, kNormal, kAlong, 0.06, 0.04);
  const auto fit = fitFacet(patchOf(mesh, all(mesh)), anatomy::FacetRole::PrezygLeft, kAlong, OutlineBy::Hull);
  double area = 0;
  const auto& outline = fit.facet.outline;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const auto &a = outline[i], &b = outline[(i + 1) % outline.size()];
    area += 0.5 * (a.x() * b.y() - a.y() * b.x());
    EXPECT_NEAR((fit.facet.corner(i) - kCentre).dot(kNormal), 0, 1e-6);
  }
  EXPECT_NEAR(area, std::numbers::pi * 0.03 * 0.02, 0.01 * area);  // counter-clockwise: positive
}

TEST(FitFacet, MirroredTwiceIsTheSame) {
  const auto mesh = disc(kCentre, kNormal, kAlong, 0.06, 0.04);
  const anatomy::Facet facet = fitFacet(patchOf(mesh, all(mesh)), anatomy::FacetRole::PrezygLeft, kAlong).facet;
  const auto other = mirrored(facet);
  EXPECT_EQ(other.role, anatomy::FacetRole::PrezygRight);
  const auto n = facet.outline.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Vector3d mirror = facet.corner(i).cwiseProduct(Vector3d(1, -1, 1));
    EXPECT_LT((other.corner(n - 1 - i) - mirror).norm(), 1e-12);
  }
  const auto back = mirrored(other);
  EXPECT_EQ(back.centre, facet.centre);
  EXPECT_EQ(back.outline, facet.outline);
}

TEST(Dab, CoversTheNearSideOnly) {
  const auto plate = joinedMesh(disc({0, 0, 0.001}, Vector3d::UnitZ(), Vector3d::UnitX(), 1, 1),
                                disc({0, 0, -0.001}, -Vector3d::UnitZ(), Vector3d::UnitX(), 1, 1));
  const auto covered = brushTriangles(plate, {0.1, 0, 0.001}, Vector3d::UnitZ(), 0.15, 1.0);
  ASSERT_FALSE(covered.empty());
  const double area = patchOf(plate, covered).area();
  EXPECT_NEAR(area, std::numbers::pi * 0.15 * 0.15, 0.3 * area);
  EXPECT_GT(patchOf(plate, covered).normal.z(), 0);
  EXPECT_TRUE(brushTriangles(plate, {5, 0, 0}, Vector3d::UnitZ(), 0.1, 1.0).empty());
}

}  // namespace
}  // namespace zyga::solid
