#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/solid/facets/suggest.h"
#include "core/solid/mesh/repair.h"
#include "tests/core/solid/mesh_library.h"

namespace zyga::solid {
namespace {

using anatomy::FacetRole;
using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;

/// A box in a frame, its six sides cut into small squares of about `grain`, two triangles each.
TriangleMesh block(const Eigen::Isometry3d& X_MeshBlock, const Vector3d& size, double grain) {
  TriangleMesh mesh;
  for (int axis = 0; axis < 3; ++axis)
    for (const double end : {-0.5, 0.5}) {
      const int i = (axis + 1) % 3, j = (axis + 2) % 3;
      const int m = std::max(1, static_cast<int>(std::lround(size[i] / grain)));
      const int n = std::max(1, static_cast<int>(std::lround(size[j] / grain)));
      const auto first = static_cast<std::uint32_t>(mesh.positions.size());
      for (int a = 0; a <= m; ++a)
        for (int b = 0; b <= n; ++b) {
          Vector3d p;
          p[axis] = end * size[axis];
          p[i] = (static_cast<double>(a) / m - 0.5) * size[i];
          p[j] = (static_cast<double>(b) / n - 0.5) * size[j];
          mesh.positions.push_back((X_MeshBlock * p).cast<float>());
        }
      const auto at = [&](int a, int b) { return first + static_cast<std::uint32_t>(a * (n + 1) + b); };
      for (int a = 0; a < m; ++a)
        for (int b = 0; b < n; ++b) {
          std::array<std::uint32_t, 3> t{at(a, b), at(a + 1, b), at(a + 1, b + 1)},
              u{at(a, b), at(a + 1, b + 1), at(a, b + 1)};
          if (end < 0) std::swap(t[1], t[2]), std::swap(u[1], u[2]);
          mesh.triangles.push_back(t);
          mesh.triangles.push_back(u);
        }
    }
  return mesh;
}

/// Two vertebrae made of blocks, x cranial, y left, z dorsal: a centrum with an arch, whose facets are plates of known
/// place, size and slope. The caudal one ends at x = 0.
struct BlockPair {
  double disc = 0.006, space = 0.0015;
  double tilt = 40 * kDegree;  ///< of the facets in end view: 0 faces up
  double height = 0.045, spread = 0.020;
  Vector3d plate{0.016, 0.012, 0.004};
  double grain = 0.002;
  bool leftPrezyg = true;

  /// Middle and outward normal of a facet.
  Vector3d normal(bool left, bool prezyg) const {
    const double side = left ? 1 : -1;
    return (prezyg ? 1 : -1) * Vector3d(0, -side * std::sin(tilt), std::cos(tilt));
  }
  Vector3d centre(bool left, bool prezyg) const {
    const Vector3d middle(0, left ? spread : -spread, height);
    return middle - (prezyg ? 1 : -1) * 0.5 * space * normal(left, true);
  }

  /// A plate whose one face is the facet, and a bar from it to the arch.
  void addFacet(TriangleMesh& mesh, bool left, bool prezyg) const {
    const Vector3d n = normal(left, prezyg);
    Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
    X.linear() << Vector3d::UnitX(), n.cross(Vector3d::UnitX()), n;
    X.translation() = centre(left, prezyg) - 0.5 * plate.z() * n;
    mesh = joinedMesh(mesh, block(X, plate, grain));
    Eigen::Isometry3d bar = Eigen::Isometry3d::Identity();
    const double along = (prezyg ? -1 : 1) * 0.016;
    bar.translation() = X.translation() + Vector3d(along, 0, 0);
    mesh = joinedMesh(mesh, block(bar, {0.020, 0.005, 0.005}, grain));
  }

  TriangleMesh bone(bool cranial) const {
    const double s = cranial ? 1 : -1;
    const auto box = [&](const Vector3d& at, const Vector3d& size) {
      Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
      X.translation() = at;
      return block(X, size, grain);
    };
    const double from = s * 0.5 * disc;
    TriangleMesh mesh = box({from + s * 0.020, 0, 0}, {0.040, 0.036, 0.030});
    mesh = joinedMesh(mesh, box({from + s * 0.022, 0.016, 0.028}, {0.014, 0.006, 0.034}));
    mesh = joinedMesh(mesh, box({from + s * 0.022, -0.016, 0.028}, {0.014, 0.006, 0.034}));
    mesh = joinedMesh(mesh, box({from + s * 0.024, 0, 0.047}, {0.014, 0.040, 0.006}));
    mesh = joinedMesh(mesh, box({from + s * 0.026, 0, 0.070}, {0.012, 0.005, 0.042}));
    if (cranial || leftPrezyg) addFacet(mesh, true, !cranial);
    addFacet(mesh, false, !cranial);
    return mesh;
  }
};

void move(TriangleMesh& mesh, const Eigen::Isometry3d& X) {
  for (auto& p : mesh.positions) p = (X * p.cast<double>()).cast<float>();
}

void shake(TriangleMesh& mesh, double sigma, unsigned seed) {
  std::mt19937 random(seed);
  std::normal_distribution<float> off(0, static_cast<float>(sigma));
  for (auto& p : mesh.positions) p += Eigen::Vector3f{off(random), off(random), off(random)};
}

double angle(const Vector3d& a, const Vector3d& b) {
  return std::acos(std::clamp(a.dot(b) / a.norm() / b.norm(), -1.0, 1.0));
}

/// Held against what the blocks were made with, in the place to which they were moved.
void expectFacets(const NeighbourSuggestion& found, const BlockPair& made, const Eigen::Isometry3d& X, double near,
                  double turned) {
  ASSERT_TRUE(found.complete());
  for (const bool left : {true, false})
    for (const bool prezyg : {true, false}) {
      const auto& facet = *(prezyg ? found.prezygs : found.postzygs)[left ? 0 : 1];
      EXPECT_EQ(anatomy::isPrezyg(facet.facet.role), prezyg);
      EXPECT_EQ(anatomy::isLeft(facet.facet.role), left);
      EXPECT_LT((facet.facet.centre - X * made.centre(left, prezyg)).norm(), near) << left << prezyg;
      EXPECT_LT(angle(facet.facet.normal, X.linear() * made.normal(left, prezyg)), turned) << left << prezyg;
      const double area = made.plate.x() * made.plate.y();
      EXPECT_NEAR(facet.shape.area, area, 0.25 * area) << left << prezyg;
      // Over the middle of the joint facets slide along the column.
      EXPECT_LT(angle(facet.facet.slide, X.linear() * Vector3d::UnitX()), 10 * kDegree);
      EXPECT_GT(facet.confidence, 0.8);
      EXPECT_LE(facet.confidence, 1);
      EXPECT_TRUE(std::is_sorted(facet.triangles.begin(), facet.triangles.end()));
    }
  EXPECT_LT(angle(found.axes.cranial, X.linear() * Vector3d::UnitX()), 3 * kDegree);
  EXPECT_LT(angle(found.axes.left, X.linear() * Vector3d::UnitY()), 3 * kDegree);
  EXPECT_LT((found.centre - X.translation()).norm(), 0.003);
  EXPECT_NEAR(found.disc, made.disc, 0.001);
}

TEST(SuggestNeighbours, FindsFacetsAndFacesOfBlocks) {
  for (const double tilt : {5 * kDegree, 40 * kDegree, 70 * kDegree}) {
    BlockPair made;
    made.tilt = tilt;
    const auto found = suggestNeighbours(made.bone(true), made.bone(false));
    expectFacets(found, made, Eigen::Isometry3d::Identity(), 0.0015, 3 * kDegree);
    EXPECT_NEAR(found.jointSpace, made.space, 0.0003);
    EXPECT_GT(found.reach, made.space);
    for (const auto& facet : found.postzygs) {
      EXPECT_LT(facet->shape.planeResidual, 1e-5);
      EXPECT_NEAR(facet->facet.length(), made.plate.x(), 0.3 * made.plate.x());
    }
    EXPECT_NEAR(found.caudalFace.area, 0.036 * 0.030, 1e-4);
    EXPECT_LT(angle(found.caudalFace.normal, -Vector3d::UnitX()), 1 * kDegree);
    EXPECT_LT(angle(found.cranialFace.normal, Vector3d::UnitX()), 1 * kDegree);
  }
}

TEST(SuggestNeighbours, DoesNotHangOnPlaceNorAxesNorUnit) {
  const BlockPair made;
  std::mt19937 random(11);
  std::normal_distribution<double> u;
  for (int i = 0; i < 4; ++i) {
    Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
    X.linear() = Eigen::Quaterniond(u(random), u(random), u(random), u(random)).normalized().toRotationMatrix();
    X.translation() = 0.3 * Vector3d(u(random), u(random), u(random));
    TriangleMesh cranial = made.bone(true), caudal = made.bone(false);
    move(cranial, X);
    move(caudal, X);
    expectFacets(suggestNeighbours(cranial, caudal), made, X, 0.0015, 3 * kDegree);
  }
  TriangleMesh cranial = made.bone(true), caudal = made.bone(false);
  for (auto* mesh : {&cranial, &caudal})
    for (auto& p : mesh->positions) p *= 1000;
  const auto found = suggestNeighbours(cranial, caudal);
  ASSERT_TRUE(found.complete());
  EXPECT_LT((found.postzygs[0]->facet.centre - 1000 * made.centre(true, false)).norm(), 1.5);
}

TEST(SuggestNeighbours, BearsRoughAndOpenMeshesAndTrianglesOfTheirOwn) {
  BlockPair made;
  made.grain = 0.0015;
  TriangleMesh cranial = made.bone(true), caudal = made.bone(false);
  shake(cranial, 0.0001, 3);
  shake(caudal, 0.0001, 4);
  const auto withoutCentrumEnd = [](const TriangleMesh& mesh, double sign) {
    // The far end of the centrum was broken off.
    std::vector<std::array<std::uint32_t, 3>> kept;
    for (const auto& t : mesh.triangles)
      if (!(sign * mesh.positions[t[0]].x() > 0.040f && mesh.positions[t[0]].z() < 0.012f)) kept.push_back(t);
    return withTriangles(mesh, kept);
  };
  cranial = withoutCentrumEnd(cranial, 1);
  expectFacets(suggestNeighbours(cranial, caudal), made, Eigen::Isometry3d::Identity(), 0.002, 5 * kDegree);
  const auto soup = suggestNeighbours(soupOf(cranial), soupOf(caudal));
  expectFacets(soup, made, Eigen::Isometry3d::Identity(), 0.002, 5 * kDegree);
}

TEST(SuggestNeighbours, MirrorImagesGiveMirroredSuggestions) {
  BlockPair made;
  made.leftPrezyg = true;
  TriangleMesh cranial = made.bone(true), caudal = made.bone(false);
  shake(cranial, 0.0001, 5);
  shake(caudal, 0.0001, 6);
  const auto mirror = [](TriangleMesh mesh) {
    for (auto& p : mesh.positions) p.y() = -p.y();
    return insideOut(mesh);
  };
  const auto found = suggestNeighbours(cranial, caudal), mirrored = suggestNeighbours(mirror(cranial), mirror(caudal));
  ASSERT_TRUE(found.complete() && mirrored.complete());
  for (std::size_t s = 0; s < 2; ++s) {
    const auto expected = anatomy::mirrored(found.prezygs[s]->facet);
    const auto& facet = mirrored.prezygs[1 - s]->facet;
    EXPECT_EQ(facet.role, expected.role);
    EXPECT_LT((facet.centre - expected.centre).norm(), 2e-4);
    EXPECT_LT(angle(facet.normal, expected.normal), 1 * kDegree);
  }
}

TEST(SuggestNeighbours, OneSideMissingLeavesTheOtherLessSure) {
  BlockPair made;
  const double whole = suggestNeighbours(made.bone(true), made.bone(false)).prezygs[1]->confidence;
  made.leftPrezyg = false;
  const auto found = suggestNeighbours(made.bone(true), made.bone(false));
  EXPECT_FALSE(found.prezygs[0]);
  EXPECT_FALSE(found.postzygs[0]);
  ASSERT_TRUE(found.prezygs[1] && found.postzygs[1]);
  EXPECT_LT((found.prezygs[1]->facet.centre - made.centre(false, true)).norm(), 0.0015);
  EXPECT_LT(found.prezygs[1]->confidence, 0.8 * whole);
}

TEST(SuggestNeighbours, TheSameEveryTime) {
  const BlockPair made;
  const auto first = suggestNeighbours(made.bone(true), made.bone(false)),
             second = suggestNeighbours(made.bone(true), made.bone(false));
  EXPECT_EQ(first.centre, second.centre);
  for (std::size_t s = 0; s < 2; ++s) {
    EXPECT_EQ(first.postzygs[s]->triangles, second.postzygs[s]->triangles);
    EXPECT_EQ(first.postzygs[s]->facet.normal, second.postzygs[s]->facet.normal);
    EXPECT_EQ(first.prezygs[s]->confidence, second.prezygs[s]->confidence);
  }
}

/// A facet that is part of a cylinder across the slide.
TEST(SuggestNeighbours, TellsHowFacetsBend) {
  BlockPair made;
  made.tilt = 0;
  TriangleMesh cranial = made.bone(true), caudal = made.bone(false);
  constexpr double kRadius = 0.060;
  // Everything that lies about the facets' height is bent about an axis across the column.
  for (auto* mesh : {&cranial, &caudal})
    for (auto& p : mesh->positions)
      if (std::abs(p.z() - made.height) < 0.006f && std::abs(p.x()) < 0.0085f)
        p.z() -= static_cast<float>(p.x() * p.x() / (2 * kRadius));
  const auto found = suggestNeighbours(cranial, caudal);
  ASSERT_TRUE(found.complete());
  for (std::size_t s = 0; s < 2; ++s) {
    EXPECT_NEAR(found.prezygs[s]->shape.radius, -kRadius, 0.2 * kRadius) << "bulges";
    EXPECT_NEAR(found.postzygs[s]->shape.radius, kRadius, 0.2 * kRadius) << "is hollow";
    EXPECT_LT(found.prezygs[s]->shape.cylinderResidual, 0.5 * found.prezygs[s]->shape.planeResidual);
  }
}

reason::Reason whyNot(const TriangleMesh& cranial, const TriangleMesh& caudal) {
  try {
    suggestNeighbours(cranial, caudal);
  } catch (const reason::Failure& failure) {
    return failure.reason();
  }
  return {};
}

TEST(SuggestNeighbours, BadInputGivesAReason) {
  const BlockPair made;
  const TriangleMesh cranial = made.bone(true), caudal = made.bone(false);
  EXPECT_EQ(whyNot({}, caudal), reason::Reason(fault::kNoSurface, {kCranialBone}));
  EXPECT_EQ(whyNot(cranial, {}), reason::Reason(fault::kNoSurface, {kCaudalBone}));
  TriangleMesh flat = cranial;
  for (auto& p : flat.positions) p = Eigen::Vector3f::Constant(1);
  EXPECT_EQ(whyNot(flat, caudal), reason::Reason(fault::kNoSurface, {kCranialBone}));
  TriangleMesh broken = caudal;
  broken.positions[7].x() = std::numeric_limits<float>::quiet_NaN();
  EXPECT_EQ(whyNot(cranial, broken), reason::Reason(fault::kNotFinite, {kCaudalBone}));
  broken = caudal;
  broken.triangles[3][1] = 1u << 30;
  EXPECT_EQ(whyNot(cranial, broken), reason::Reason(fault::kNotFinite, {kCaudalBone}));
  EXPECT_EQ(whyNot(insideOut(cranial), caudal), reason::Reason(fault::kInsideOut, {kCranialBone}));
  TriangleMesh away = caudal;
  for (auto& p : away.positions) p.x() -= 0.2f;
  EXPECT_EQ(whyNot(cranial, away).id, fault::kFarApart);
  // Blocks that face each other with nothing over them.
  const auto cube = [](double x) {
    Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
    X.translation().x() = x;
    return block(X, Vector3d::Constant(0.04), 0.002);
  };
  EXPECT_EQ(whyNot(cube(0.022), cube(-0.022)).id, fault::kNoFacets);
  // The same bone twice faces itself nowhere.
  EXPECT_FALSE(whyNot(cranial, cranial).empty());
}

TEST(MidPlane, IsFoundInATurnedLopsidedPair) {
  const BlockPair made;
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  X.linear() = Eigen::Quaterniond(0.3, -0.5, 0.7, 0.2).normalized().toRotationMatrix();
  X.translation() = Vector3d(0.2, 0.1, -0.4);
  TriangleMesh cranial = made.bone(true), caudal = made.bone(false);
  // A part on the left alone, as of a process that is broken off on the right.
  Eigen::Isometry3d at = Eigen::Isometry3d::Identity();
  at.translation() = Vector3d(0.03, 0.04, 0.01);
  cranial = joinedMesh(cranial, block(at, {0.01, 0.03, 0.008}, 0.002));
  move(cranial, X);
  move(caudal, X);
  const double size = std::min(surfaceSize(cranial), surfaceSize(caudal));
  const FaceSurface a(cranial, size), b(caudal, size);
  const std::array<const FaceSurface*, 2> both{&a, &b};
  const MidPlane plane = findMidPlane(both, X.linear() * Vector3d::UnitX());
  EXPECT_LT(std::min(angle(plane.normal, X.linear().col(1)), angle(-plane.normal, X.linear().col(1))), 1.5 * kDegree);
  EXPECT_LT(std::abs(plane.side(X.translation())), 0.0008);
}

TEST(SurfaceSize, OfABall) {
  EXPECT_NEAR(surfaceSize(sphereMesh(0.5, 60)), 0.5, 0.002);
  EXPECT_EQ(surfaceSize({}), 0);
}

}  // namespace
}  // namespace zyga::solid
