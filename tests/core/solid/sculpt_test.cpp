#include "core/solid/sculpt/sculpt.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <Eigen/Geometry>
#include <chrono>
#include <cmath>
#include <filesystem>
#include <fstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/solid/cache/bone_cache.h"
#include "core/solid/sculpt/bone_shape.h"

namespace zyga::solid {
namespace {

using anatomy::BodyPlan;
using anatomy::Bone;
using anatomy::BoneIndex;
using anatomy::Specimen;

Specimen animal(BodyPlan plan) {
  anatomy::MeasurementTable table;
  table.plan = plan;
  if (plan == BodyPlan::LowBrowser) table.counts = {15, 10, 5, 80};
  return anatomy::buildSpecimen(anatomy::fillBlanks(table));
}

const Specimen& highBrowser() {
  static const Specimen specimen = animal(BodyPlan::HighBrowser);
  return specimen;
}

/// An animal with few bones, for tests of the whole process.
Specimen fewBones() {
  Specimen out;
  const Specimen& from = highBrowser();
  for (const char* id : {"S1", "Ca3", "rib.D3.L", "rib.D3.R", "chevron.Ca4"})
    out.bones.push_back(from[*from.findBone(id)]);
  return out;
}

bool sameMesh(const TriangleMesh& a, const TriangleMesh& b) {
  return a.positions == b.positions && a.normals == b.normals && a.occlusion == b.occlusion &&
         a.triangles == b.triangles;
}

bool sameBone(const BoneMesh& a, const BoneMesh& b) {
  if (a.levels.size() != b.levels.size()) return false;
  for (std::size_t i = 0; i < a.levels.size(); ++i)
    if (!sameMesh(a.levels[i], b.levels[i])) return false;
  return true;
}

class Folder {
 public:
  Folder() : path_(std::filesystem::temp_directory_path() / ("zyga-sculpt-" + std::to_string(::getpid()))) {
    std::filesystem::create_directories(path_);
  }
  ~Folder() { std::filesystem::remove_all(path_); }
  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

class EveryBone : public ::testing::TestWithParam<BodyPlan> {};

TEST_P(EveryBone, IsOneClosedOrientedSurface) {
  const Specimen specimen = animal(GetParam());
  SculptOptions options;
  options.triangleBudget = 1500;
  const auto start = std::chrono::steady_clock::now();
  const auto meshes = sculptAll(specimen, options);
  std::cout << meshes.size() << " bones in "
            << std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count() << " s\n";
  ASSERT_EQ(meshes.size(), specimen.bones.size());
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    SCOPED_TRACE(specimen.bones[i].id);
    ASSERT_EQ(meshes[i] == nullptr, specimen.bones[i].fusedInto.has_value());
    if (!meshes[i]) continue;
    ASSERT_EQ(meshes[i]->levels.size(), 3u);
    for (const TriangleMesh& level : meshes[i]->levels) {
      const MeshHealth health = examine(level);
      EXPECT_TRUE(health.closed);
      EXPECT_TRUE(health.oriented);
      EXPECT_EQ(health.components, 1u);
      EXPECT_GT(health.volume, 0);
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Plans, EveryBone, ::testing::Values(BodyPlan::HighBrowser, BodyPlan::LowBrowser));

/// Distance along the facet's normal from a point to the mesh, over triangles that face the same way; the least.
double distanceAlong(const TriangleMesh& mesh, const Point& p, const Point& normal) {
  double best = 1;
  for (const auto& t : mesh.triangles) {
    const Point a = mesh.positions[t[0]].cast<double>(), b = mesh.positions[t[1]].cast<double>(),
                c = mesh.positions[t[2]].cast<double>();
    const Point n = (b - a).cross(c - a);
    if (n.dot(normal) <= 0) continue;
    const double h = n.dot(a - p) / n.dot(normal);
    const Point q = p + h * normal;
    const auto outside = [&](const Point& u, const Point& v) { return (v - u).cross(q - u).dot(n) < -1e-13; };
    if (!outside(a, b) && !outside(b, c) && !outside(c, a)) best = std::min(best, std::abs(h));
  }
  return best;
}

class Facets : public ::testing::TestWithParam<const char*> {};

TEST_P(Facets, AreTheSurfaceOfTheBone) {
  const Specimen& specimen = highBrowser();
  const BoneIndex index = *specimen.findBone(GetParam());
  const BoneMesh mesh = sculptBone(specimen, index, 12000);
  ASSERT_FALSE(specimen[index].facets.empty());
  for (const anatomy::Facet& facet : specimen[index].facets) {
    EXPECT_LT(distanceAlong(mesh.levels[0], facet.centre, facet.normal), 1e-4);
    for (std::size_t i = 0; i < facet.outline.size(); ++i)
      EXPECT_LT(distanceAlong(mesh.levels[0], facet.corner(i), facet.normal), 1e-4) << "corner " << i;
  }
}

INSTANTIATE_TEST_SUITE_P(Vertebrae, Facets,
                         ::testing::Values("C2", "C3", "C7", "C12", "D1", "D6", "D10", "S1", "S5", "Ca5", "Ca20",
                                           "Ca31"));

TEST(Sculpt, NothingLiesOverAFacet) {
  const Specimen& specimen = highBrowser();
  for (const char* id : {"C7", "D6", "Ca5"}) {
    const BoneIndex index = *specimen.findBone(id);
    const Shape shape = shapeOf(specimen, index);
    for (const anatomy::Facet& facet : specimen[index].facets)
      for (std::size_t i = 0; i < facet.outline.size(); ++i)
        EXPECT_GT(shape.at(facet.corner(i) + 0.003 * facet.normal), 0) << id;
  }
}

TEST(Sculpt, CondyleAndCotyleAreCentredOnTheirLandmarks) {
  const Specimen& specimen = highBrowser();
  const BoneIndex index = *specimen.findBone("C7");
  const Bone& bone = specimen[index];
  const Shape shape = shapeOf(specimen, index);
  const Point centre = bone.landmark("cranial"), tip = bone.landmark("condyleTip");
  EXPECT_NEAR(shape.at(tip), 0, 1e-4);
  const double radius = (tip - centre).norm();
  for (const double degrees : {-40.0, 40.0}) {
    const double a = degrees * 3.14159265358979 / 180;
    EXPECT_NEAR(shape.at(centre + radius * Point(std::cos(a), 0, std::sin(a))), 0, 1e-3);
  }
  // The hollow takes the next vertebra's condyle.
  const Bone& next = specimen[*specimen.findBone("C8")];
  const double seat = (next.landmark("condyleTip") - next.landmark("cranial")).norm();
  EXPECT_NEAR(shape.at(bone.landmark("caudal") + Point(seat, 0, 0)), 0, 1e-3);
  EXPECT_GT(shape.at(bone.landmark("caudal") + Point(seat - 0.01, 0, 0)), 0);
}

TEST(Sculpt, TheNeuralCanalIsOpen) {
  const Specimen& specimen = highBrowser();
  for (const char* id : {"C2", "C3", "C7", "C13", "D1", "D6", "D11", "S1", "S3", "Ca1", "Ca8", "Ca20"}) {
    const BoneIndex index = *specimen.findBone(id);
    const Shape shape = shapeOf(specimen, index);
    const double half = 0.5 * specimen[index].measures.value(anatomy::Measure::Length);
    const Point canal = specimen[index].landmark("canal");
    for (double x = -half; x <= half; x += half / 20)
      EXPECT_GT(shape.at(Point(x, canal.y(), canal.z())), 0) << id << " at " << x;
  }
}

TEST(Sculpt, MidlineBonesAreSymmetric) {
  const Specimen& specimen = highBrowser();
  for (const char* id : {"C1", "C2", "C9", "D4", "S2", "Ca6", "chevron.Ca3"}) {
    const Shape shape = shapeOf(specimen, *specimen.findBone(id));
    const Box box = shape.bounds();
    for (int i = 0; i < 500; ++i) {
      const Point share(0.5 + 0.5 * std::sin(1.7 * i), 0.5 + 0.5 * std::sin(2.3 * i + 1),
                        0.5 + 0.5 * std::sin(3.1 * i));
      const Point p = box.min() + share.cwiseProduct(box.diagonal());
      EXPECT_NEAR(shape.at(p), shape.at({p.x(), -p.y(), p.z()}), 1e-6) << id;
    }
  }
}

TEST(Sculpt, RightBonesAreExactMirrorImages) {
  const Specimen& specimen = highBrowser();
  const BoneMesh left = sculptBone(specimen, *specimen.findBone("rib.D4.L"), 2000);
  const BoneMesh right = sculptBone(specimen, *specimen.findBone("rib.D4.R"), 2000);
  ASSERT_EQ(left.levels.size(), right.levels.size());
  for (std::size_t level = 0; level < left.levels.size(); ++level) {
    ASSERT_EQ(left.levels[level].positions.size(), right.levels[level].positions.size());
    for (std::size_t i = 0; i < left.levels[level].positions.size(); ++i)
      EXPECT_EQ(left.levels[level].positions[i].cwiseProduct(Eigen::Vector3f(1, -1, 1)),
                right.levels[level].positions[i]);
    EXPECT_GT(volume(right.levels[level]), 0);
  }
}

TEST(Sculpt, ARightBoneKeepsMeasuresOfItsOwn) {
  Specimen specimen = highBrowser();
  Bone& right = specimen.bones[specimen.findBone("rib.D4.R")->value];
  right.landmarks["tip"].z() -= 0.1;
  const BoneMesh left = sculptBone(specimen, *specimen.findBone("rib.D4.L"), 1000);
  const BoneMesh longer = sculptBone(specimen, *specimen.findBone("rib.D4.R"), 1000);
  EXPECT_GT(volume(longer.levels[0]), 1.01 * volume(left.levels[0]));
}

TEST(Sculpt, IsTheSameEveryTimeAndOnAnyNumberOfThreads) {
  const Specimen specimen = fewBones();
  SculptOptions one, three;
  one.triangleBudget = three.triangleBudget = 2000;
  one.task = task::Task().withThreads(1), three.task = task::Task().withThreads(3);
  const auto a = sculptAll(specimen, one), b = sculptAll(specimen, three);
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) EXPECT_TRUE(sameBone(*a[i], *b[i])) << specimen.bones[i].id;
}

TEST(Sculpt, ReportsProgressToTheEnd) {
  const Specimen specimen = fewBones();
  std::vector<double> told;
  SculptOptions options;
  options.triangleBudget = 500;
  options.task = task::Task(nullptr, [&](double share) { told.push_back(share); });
  sculptAll(specimen, options);
  ASSERT_EQ(told.size(), specimen.bones.size() - 1) << "the two ribs are one solid";
  EXPECT_TRUE(std::is_sorted(told.begin(), told.end()));
  EXPECT_EQ(told.back(), 1);
}

TEST(Sculpt, StopsWhenCancelled) {
  std::atomic<bool> cancel{false};
  SculptOptions options;
  options.triangleBudget = 500;
  options.task = task::Task(&cancel, [&](double) { cancel = true; });
  EXPECT_TRUE(sculptAll(highBrowser(), options).empty());
}

TEST(Sculpt, NamesWhatABoneLacks) {
  Specimen specimen = fewBones();
  specimen.bones[1].landmarks.erase("canal");
  SculptOptions options;
  options.triangleBudget = 500;
  try {
    sculptAll(specimen, options);
    FAIL() << "a vertebra without a canal was sculpted";
  } catch (const std::out_of_range& problem) {
    EXPECT_NE(std::string(problem.what()).find("canal"), std::string::npos);
  }
}

TEST(PreviewMeshes, MakesRoughlyOnlyWhatWasNotKept) {
  const Folder folder;
  const Specimen specimen = fewBones();
  SculptOptions options;
  options.triangleBudget = 12000;
  options.cacheFolder = folder.path();
  const PreviewMeshes all = previewAll(specimen, options);
  EXPECT_TRUE(all.rough);
  ASSERT_EQ(all.meshes.size(), specimen.bones.size());
  EXPECT_TRUE(std::filesystem::is_empty(folder.path())) << "a rough bone is not kept";
  const auto fine = sculptAll(specimen, options);
  for (std::size_t i = 0; i < fine.size(); ++i)
    EXPECT_LT(all.meshes[i]->levels[0].triangles.size(), fine[i]->levels[0].triangles.size());

  const PreviewMeshes kept = previewAll(specimen, options);
  EXPECT_FALSE(kept.rough);
  for (std::size_t i = 0; i < fine.size(); ++i) EXPECT_TRUE(sameBone(*kept.meshes[i], *fine[i]));

  std::filesystem::remove(
      BoneCache(folder.path()).fileOf(BoneCache::Kind::Mesh, shapeKey(specimen, {1}, options.triangleBudget)));
  const PreviewMeshes one = previewAll(specimen, options);
  EXPECT_TRUE(one.rough);
  EXPECT_TRUE(sameBone(*one.meshes[0], *fine[0]));
  EXPECT_LT(one.meshes[1]->levels[0].triangles.size(), fine[1]->levels[0].triangles.size());
}

TEST(ShapeKey, ChangesWithWhateverTheShapeDependsOn) {
  const Specimen& specimen = highBrowser();
  const BoneIndex c7 = *specimen.findBone("C7");
  const std::string key = shapeKey(specimen, c7, 1000);
  EXPECT_EQ(key.size(), 32u);
  EXPECT_EQ(key, shapeKey(specimen, c7, 1000));
  EXPECT_NE(key, shapeKey(specimen, c7, 2000));
  Specimen other = specimen;
  other.bones[c7.value].landmarks["spineTop"].z() += 0.001;
  EXPECT_NE(key, shapeKey(other, c7, 1000));
  other = specimen;
  other.bones[specimen.findBone("C8")->value].measures[anatomy::Measure::CotyleHeight].value += 0.001;
  EXPECT_NE(key, shapeKey(other, c7, 1000)) << "the cotyle takes the next condyle";
  other = specimen;
  other.bones[c7.value].facets[0].centre.x() += 0.001;
  EXPECT_NE(key, shapeKey(other, c7, 1000));
  other = specimen;
  other.bones[specimen.findBone("femur.L")->value].measures[anatomy::Measure::Length].value += 0.001;
  EXPECT_EQ(key, shapeKey(other, c7, 1000));
  // How far along the tail a caudal lies sets its wings, hollows and chevron: another count, another bone.
  const anatomy::BoneIndex ca5 = *specimen.findBone("Ca5"), femur = *specimen.findBone("femur.L");
  other = specimen;
  --other.counts.caudal;
  EXPECT_NE(shapeKey(specimen, ca5, 1000), shapeKey(other, ca5, 1000));
  EXPECT_EQ(shapeKey(specimen, femur, 1000), shapeKey(other, femur, 1000));
}

TEST(MirroredSpecimen, TwiceIsTheSame) {
  const Specimen& specimen = highBrowser();
  const Specimen twice = mirroredSpecimen(mirroredSpecimen(specimen));
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    EXPECT_EQ(twice.bones[i].id, specimen.bones[i].id);
    EXPECT_EQ(shapeKey(twice, {i}, 100), shapeKey(specimen, {i}, 100));
  }
}

}  // namespace
}  // namespace zyga::solid
