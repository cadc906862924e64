#include "core/picture/picker.h"

#include <gtest/gtest.h>

#include "tests/core/picture/shapes.h"

namespace zyga::picture {
namespace {

using Eigen::Vector3d;
using namespace test;

struct Crossing {
  std::size_t instance = 0;
  double distance = 0;
  Vector3d face_W = Vector3d::Zero();
  double clearance = 1;  ///< least barycentric coordinate: how far inside the triangle
};

/// Möller & Trumbore 1997, J. Graphics Tools 2(1):21, in double precision.
std::optional<Crossing> cross(const Vector3d& a, const Vector3d& b, const Vector3d& c, const Vector3d& origin,
                              const Vector3d& direction) {
  const Vector3d ab = b - a, ac = c - a, p = direction.cross(ac);
  const double det = ab.dot(p);
  if (std::abs(det) < 1e-14) return std::nullopt;
  const Vector3d s = origin - a, q = s.cross(ab);
  const double u = s.dot(p) / det, v = direction.dot(q) / det, t = ac.dot(q) / det;
  if (u < 0 || v < 0 || u + v > 1 || t <= 0) return std::nullopt;
  return Crossing{0, t, ab.cross(ac).normalized(), std::min({u, v, 1 - u - v})};
}

using Meshes = std::vector<MeshPointer>;
using Frames = std::vector<Eigen::Isometry3d>;

/// All crossings, nearest first.
std::vector<Crossing> allCrossings(const Meshes& meshes, const Frames& X_WB, const Vector3d& origin,
                                   const Vector3d& direction) {
  std::vector<Crossing> found;
  for (std::size_t i = 0; i < meshes.size(); ++i)
    for (const auto& t : meshes[i]->triangles) {
      const auto corner = [&](int k) -> Vector3d { return X_WB[i] * meshes[i]->positions[t[k]].cast<double>(); };
      auto hit = cross(corner(0), corner(1), corner(2), origin, direction);
      if (hit) hit->instance = i, found.push_back(*hit);
    }
  std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.distance < b.distance; });
  return found;
}

/// Rays that pass within rounding of an edge, or of two surfaces at once, may be answered either way.
bool clearCut(const std::vector<Crossing>& all) {
  for (const Crossing& c : all)
    if (c.clearance < 1e-4) return false;
  return all.size() < 2 || all[1].distance - all[0].distance > 1e-4;
}

void expectAgreement(const Picker& picker, const Meshes& meshes, const Frames& X_WB, std::mt19937& random) {
  int hits = 0, misses = 0;
  for (int i = 0; i < 1500; ++i) {
    const Vector3d target = X_WB[static_cast<std::size_t>(i) % X_WB.size()] * randomPoint(random, 0.8);
    const Vector3d origin = randomPoint(random, 5), direction = (target - origin).normalized();
    const auto all = allCrossings(meshes, X_WB, origin, direction);
    if (!clearCut(all)) continue;
    const auto hit = picker.pick(origin, direction);
    ASSERT_EQ(hit.has_value(), !all.empty()) << i;
    if (!hit) {
      ++misses;
      continue;
    }
    ++hits;
    EXPECT_EQ(hit->instance, all[0].instance) << i;
    const double slope = std::abs(all[0].face_W.dot(direction));
    EXPECT_NEAR(hit->distance, all[0].distance, 2e-6 / slope) << i;
    EXPECT_TRUE(hit->p_W.isApprox(origin + hit->distance * direction, 1e-12)) << i;
    EXPECT_NEAR(std::abs(hit->normal_W.dot(all[0].face_W)), 1, 1e-5) << i;
    EXPECT_LE(hit->normal_W.dot(direction), 1e-6) << "turned to the viewer";
  }
  EXPECT_GT(hits, 100);
  EXPECT_GT(misses, 20);
}

class PickerOnSoup : public ::testing::Test {
 protected:
  std::mt19937 random_{20240601};
  Meshes meshes_{triangleSoup(random_, 60), triangleSoup(random_, 40), triangleSoup(random_, 20)};
  Picker picker_{meshes_};
};

TEST_F(PickerOnSoup, AgreesWithBruteForceBeforeAnyMove) {
  expectAgreement(picker_, meshes_, Frames(3, Eigen::Isometry3d::Identity()), random_);
}

TEST_F(PickerOnSoup, AgreesWithBruteForceAfterEachMove) {
  for (int i = 0; i < 3; ++i) {
    const Frames X_WB{randomFrame(random_), randomFrame(random_), randomFrame(random_)};
    picker_.move(X_WB);
    expectAgreement(picker_, meshes_, X_WB, random_);
  }
}

TEST(Picker, FindsTheNearerOfTwo) {
  Picker picker({box(1, 1, 1), box(1, 1, 1)});
  picker.move({at(0, 0, 0), at(3, 0, 0)});
  const auto fromFront = picker.pick({10, 0, 0}, -Vector3d::UnitX());
  ASSERT_TRUE(fromFront);
  EXPECT_EQ(fromFront->instance, 1u);
  EXPECT_NEAR(fromFront->distance, 6.5, 1e-9);
  EXPECT_TRUE(fromFront->normal_W.isApprox(Vector3d::UnitX(), 1e-6));
  const auto fromBehind = picker.pick({-10, 0.1, 0.2}, Vector3d::UnitX());
  ASSERT_TRUE(fromBehind);
  EXPECT_EQ(fromBehind->instance, 0u);
  EXPECT_NEAR(fromBehind->distance, 9.5, 1e-9);
}

TEST(Picker, OneMeshMayStandInSeveralPlaces) {
  const MeshPointer shared = sphere(0.5);
  Picker picker({shared, shared});
  picker.move({at(0, 0, 0), at(0, 5, 0)});
  EXPECT_EQ(picker.pick({10, 0, 0}, -Vector3d::UnitX())->instance, 0u);
  EXPECT_EQ(picker.pick({10, 5, 0}, -Vector3d::UnitX())->instance, 1u);
}

TEST(Picker, MissesBesideAndBehind) {
  const Picker picker({box(1, 1, 1)});
  EXPECT_FALSE(picker.pick({10, 0.501, 0}, -Vector3d::UnitX()));
  EXPECT_TRUE(picker.pick({10, 0.499, 0}, -Vector3d::UnitX()));
  EXPECT_FALSE(picker.pick({10, 0, 0}, Vector3d::UnitX()));
}

TEST(Picker, BonesWithoutAMeshKeepTheirNumberAndAreNeverHit) {
  Picker picker({nullptr, std::make_shared<solid::TriangleMesh>(), box(1, 1, 1)});
  picker.move({at(0, 0, 0), at(0, 0, 0), at(0, 0, 0)});
  EXPECT_EQ(picker.pick({10, 0, 0}, -Vector3d::UnitX())->instance, 2u);
  EXPECT_FALSE(Picker({}).pick({10, 0, 0}, -Vector3d::UnitX()));
  EXPECT_FALSE(Picker({nullptr}).pick({10, 0, 0}, -Vector3d::UnitX()));
}

TEST(Picker, RefusesAnotherNumberOfFrames) {
  Picker picker({box(1, 1, 1)});
  EXPECT_THROW(picker.move({}), std::invalid_argument);
  EXPECT_THROW(picker.move({at(0, 0, 0), at(0, 0, 0)}), std::invalid_argument);
}

TEST(Picker, CanBeMovedFromHandToHand) {
  Picker first({box(1, 1, 1)});
  Picker second = std::move(first);
  EXPECT_TRUE(second.pick({10, 0, 0}, -Vector3d::UnitX()));
}

}  // namespace
}  // namespace zyga::picture
