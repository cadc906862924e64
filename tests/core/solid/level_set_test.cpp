#include "core/solid/levelset/level_set.h"

#include <gtest/gtest.h>

#include <numbers>
#include <random>
#include <stdexcept>

#include "core/anatomy/plan/build_specimen.h"
#include "core/solid/levelset/level_set_builder.h"

namespace zyga::solid {
namespace {

using Eigen::Vector3f;

/// A closed box about the origin, corners at +-half.
TriangleMesh box(const Vector3f& half) {
  TriangleMesh mesh;
  for (int i = 0; i < 8; ++i) {
    mesh.positions.push_back(half.cwiseProduct(Vector3f(i & 1 ? 1 : -1, i & 2 ? 1 : -1, i & 4 ? 1 : -1)));
  }
  mesh.triangles = {{0, 2, 3}, {0, 3, 1}, {4, 5, 7}, {4, 7, 6}, {0, 1, 5}, {0, 5, 4},
                    {2, 6, 7}, {2, 7, 3}, {0, 4, 6}, {0, 6, 2}, {1, 3, 7}, {1, 7, 5}};
  return mesh;
}

/// Distance from a box in closed form: the part outside it, or the way to the nearest face.
float boxDistance(const Vector3f& p, const Vector3f& half) {
  const Vector3f q = p.cwiseAbs() - half;
  return q.cwiseMax(0).norm() + std::min(q.maxCoeff(), 0.0F);
}

/// Points all over a box widened by `room`.
class Points {
 public:
  Points(const Eigen::AlignedBox3f& box, float room) : box_(box), room_(room) {}
  Vector3f next() {
    const Vector3f share(unit_(random_), unit_(random_), unit_(random_));
    const Vector3f least = box_.min().array() - room_;
    return least + share.cwiseProduct(Vector3f(box_.sizes().array() + 2 * room_));
  }

 private:
  Eigen::AlignedBox3f box_;
  float room_;
  std::mt19937 random_{7};
  std::uniform_real_distribution<float> unit_{0, 1};
};

/// How many times the surface winds around p, by the solid angles of its triangles (Van Oosterom & Strackee 1983, IEEE
/// Trans. Biomed. Eng. 30:125): 1 inside, 0 outside, without any rays or distances.
double winding(const TriangleMesh& mesh, const Vector3f& p) {
  double sum = 0;
  for (const auto& t : mesh.triangles) {
    const Eigen::Vector3d a = (mesh.positions[t[0]] - p).cast<double>(), b = (mesh.positions[t[1]] - p).cast<double>(),
                          c = (mesh.positions[t[2]] - p).cast<double>();
    const double la = a.norm(), lb = b.norm(), lc = c.norm();
    sum += 2 * std::atan2(a.dot(b.cross(c)), la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb);
  }
  return sum / (4 * std::numbers::pi);
}

/// A neck vertebra, all thin sheets, at a coarse level of detail.
const BoneMesh& neckVertebra() {
  static const BoneMesh bone = [] {
    const auto specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::MeasurementTable()));
    return sculptBone(specimen, *specimen.findBone("C8"), 3000);
  }();
  return bone;
}

TEST(LevelSet, KnowsTheDistanceFromABoxAsFarAsItReaches) {
  const Vector3f half(0.15F, 0.1F, 0.06F);
  const LevelSet field(box(half));
  Points points(field.box(), field.reach() * 0.99F);
  for (int i = 0; i < 20000; ++i) {
    const Vector3f p = points.next();
    ASSERT_NEAR(field.distance(p), boxDistance(p, half), field.resolution()) << p.transpose();
  }
}

TEST(LevelSet, FartherOutKnowsTheDistanceToTheSurfacesBox) {
  const Vector3f half(0.15F, 0.1F, 0.06F);
  const LevelSet field(box(half));
  EXPECT_FLOAT_EQ(field.distance({0.15F, 0.1F, 1.06F}), 1);
  EXPECT_FLOAT_EQ(field.estimate({0.15F, 0.1F, 1.06F}).min, 1);
}

TEST(LevelSet, QuickAnswersAreNeverTooHopeful) {
  const LevelSet field(neckVertebra().levels.front());
  Points points(field.box(), field.reach());
  for (int i = 0; i < 20000; ++i) {
    const Vector3f p = points.next();
    const auto quick = field.estimate(p);
    ASSERT_LE(quick.min, field.distance(p) + 1e-5F) << p.transpose();
  }
}

// A plate of a third of a voxel: hardly a sample lies in it, and beside it the nearest triangle's normal tells nothing.
TEST(LevelSet, IsSureOfItsSideBesideAPlateThinnerThanAVoxel) {
  const Vector3f half(0.1F, 0.08F, 0.001F);
  const LevelSet field(box(half), 0.006);
  Points points(field.box(), field.reach() * 0.99F);
  for (int i = 0; i < 20000; ++i) {
    const Vector3f p = points.next();
    ASSERT_NEAR(field.distance(p), boxDistance(p, half), field.resolution()) << p.transpose();
  }
}

TEST(LevelSet, IsSureOfItsSideAroundTheSheetsOfAVertebra) {
  const TriangleMesh& mesh = neckVertebra().levels.front();
  const LevelSet field(mesh);
  Points points(field.box(), 0.02F);
  int inside = 0, tried = 0;
  while (tried < 1500) {
    const Vector3f p = points.next();
    const float distance = field.distance(p);
    if (std::abs(distance) < 0.5F * field.resolution()) continue;
    ++tried;
    const bool truly = winding(mesh, p) > 0.5;
    inside += truly;
    ASSERT_EQ(distance < 0, truly) << p.transpose() << ", " << distance;
  }
  EXPECT_GT(inside, 20);
}

TEST(LevelSet, LinesCrossAClosedMeshAsOftenInAsOut) {
  const TriangleMesh& mesh = neckVertebra().levels.front();
  const auto found = crossings(mesh, {-1, -1, 0.004F, 500, 500});
  ASSERT_GT(found.size(), 2000U);
  for (std::size_t i = 0; i < found.size();) {
    int sum = 0;
    const std::uint32_t line = found[i].line;
    for (; i < found.size() && found[i].line == line; ++i) sum += found[i].entering;
    ASSERT_EQ(sum, 0) << "line " << line;
  }
}

TEST(LevelSet, SpreadsPointsOverTheWholeSurface) {
  const Vector3f half(0.15F, 0.1F, 0.06F);
  const LevelSet field(box(half));
  for (const Vector3f& p : field.surfacePoints()) ASSERT_NEAR(boxDistance(p, half), 0, 1e-6F);
  // Any spot of a face has one near it.
  for (const Vector3f& spot : {Vector3f(0.04F, 0.1F, 0.01F), Vector3f(-0.15F, 0.03F, 0.02F), Vector3f(0, 0, 0.06F)}) {
    float nearest = 1;
    for (const Vector3f& p : field.surfacePoints()) nearest = std::min(nearest, (p - spot).norm());
    EXPECT_LT(nearest, 2 * field.resolution());
  }
}

TEST(LevelSet, RefusesAMeshThatIsNotClosed) {
  TriangleMesh open = box({0.1F, 0.1F, 0.1F});
  open.triangles.pop_back();
  EXPECT_THROW(LevelSet{open}, std::invalid_argument);
  EXPECT_THROW(LevelSet{TriangleMesh{}}, std::invalid_argument);
}

std::shared_ptr<const BoneMesh> bone(TriangleMesh mesh) {
  return std::make_shared<const BoneMesh>(BoneMesh{{std::move(mesh)}});
}

TEST(LevelSets, AreMadeOfTheWantedBonesWithAClosedMesh) {
  TriangleMesh open = box({0.1F, 0.1F, 0.1F});
  open.triangles.pop_back();
  const std::vector<std::shared_ptr<const BoneMesh>> meshes{bone(box({0.1F, 0.1F, 0.1F})), bone(open), nullptr,
                                                            bone(box({0.2F, 0.1F, 0.1F}))};
  std::size_t told = 0;
  LevelSetOptions options;
  options.task = task::Task(
      nullptr,
      [&](double share) {
        EXPECT_LE(share, 1);
        ++told;
      },
      1);
  const SignedDistances fields = levelSets(meshes, {true, true, true, false}, options);
  ASSERT_EQ(fields.size(), 4U);
  EXPECT_TRUE(fields[0] != nullptr);
  EXPECT_TRUE(fields[1] == nullptr && fields[2] == nullptr && fields[3] == nullptr);
  EXPECT_EQ(told, 2U);
}

TEST(LevelSets, AreNotMadeWhenCancelled) {
  const std::atomic<bool> cancel{true};
  LevelSetOptions options;
  options.task = task::Task(&cancel);
  EXPECT_TRUE(levelSets({bone(box({0.1F, 0.1F, 0.1F}))}, {true}, options).empty());
}

}  // namespace
}  // namespace zyga::solid
