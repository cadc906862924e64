#include "core/solid/flesh/body_guide.h"

#include <gtest/gtest.h>

#include <numbers>

#include "core/solid/mesh/simplify.h"
#include "tests/core/solid/posed_animal.h"
#include "tests/support/sample_animal.h"

namespace zyga::solid {
namespace {

/// How many times the surface winds around p, by the solid angles of its triangles (Van Oosterom & Strackee 1983, IEEE
/// Trans. Biomed. Eng. 30:125): 1 inside, 0 outside.
double winding(const TriangleMesh& mesh, const Eigen::Vector3d& p) {
  double sum = 0;
  for (const auto& t : mesh.triangles) {
    const Eigen::Vector3d a = mesh.positions[t[0]].cast<double>() - p, b = mesh.positions[t[1]].cast<double>() - p,
                          c = mesh.positions[t[2]].cast<double>() - p;
    const double la = a.norm(), lb = b.norm(), lc = c.norm();
    sum += 2 * std::atan2(a.dot(b.cross(c)), la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb);
  }
  return sum / (4 * std::numbers::pi);
}

/// How far a ray from p runs to the mesh, m.
double reach(const TriangleMesh& mesh, const Eigen::Vector3d& p, const Eigen::Vector3d& direction) {
  double nearest = 10;
  for (const auto& t : mesh.triangles) {
    Eigen::Matrix3d m;
    const Eigen::Vector3d a = mesh.positions[t[0]].cast<double>();
    m << direction, a - mesh.positions[t[1]].cast<double>(), a - mesh.positions[t[2]].cast<double>();
    if (std::abs(m.determinant()) < 1e-15) continue;
    const Eigen::Vector3d u = m.inverse() * (a - p);
    if (u[1] >= 0 && u[2] >= 0 && u[1] + u[2] <= 1 && u[0] > 0) nearest = std::min(nearest, u[0]);
  }
  return nearest;
}

class BodyGuide : public testing::TestWithParam<const char*> {
 protected:
  static const RestingAnimal& animal() {
    static std::map<std::string, RestingAnimal> animals;
    return animals.try_emplace(GetParam(), test::sampleAnimal(GetParam()), 600).first->second;
  }
  static TriangleMesh guide(const PosedSkeleton& skeleton, const GuideThickness& thickness = {}) {
    BodyGuideOptions options;
    options.thickness = thickness;
    return bodyGuide(skeleton, options);
  }
  /// Of the usual thickness.
  static const TriangleMesh& usual() {
    static std::map<std::string, TriangleMesh> guides;
    const auto known = guides.find(GetParam());
    return known != guides.end() ? known->second : guides.emplace(GetParam(), guide(animal().posed())).first->second;
  }
  anatomy::BoneIndex bone(const std::string& id) const { return *animal().specimen.findBone(id); }
};

TEST_P(BodyGuide, IsOneClosedSurfaceThatHoldsEveryBone) {
  BodyGuideOptions options;
  options.triangles = 30000;
  const TriangleMesh mesh = bodyGuide(animal().posed(), options);
  EXPECT_LE(mesh.triangles.size(), 30000U);
  const MeshHealth health = examine(mesh);
  EXPECT_TRUE(health.closed && health.oriented);
  EXPECT_EQ(health.components, 1U);
  // Three points of every bone.
  for (std::size_t i = 0; i < animal().meshes.size(); ++i) {
    if (!animal().meshes[i]) continue;
    const auto& points = animal().meshes[i]->levels[0].positions;
    for (const std::size_t k : {std::size_t{0}, points.size() / 2, points.size() - 1})
      ASSERT_GT(winding(mesh, animal().X_WB[i] * points[k].cast<double>()), 0.5) << animal().specimen.bones[i].id;
  }
}

TEST_P(BodyGuide, StandsOffAShankByTheStatedThickness) {
  for (const double thickness : {0.03, 0.08}) {
    GuideThickness t;
    t.lowerLimbs = thickness;
    t.muscle = 0;
    const TriangleMesh mesh = guide(animal().posed(), t);
    // From the middle of the shank straight ahead, where there is no fibula, to the guide and to the bone.
    const anatomy::BoneIndex tibia = bone("tibia.L");
    const anatomy::Bone& record = animal().specimen[tibia];
    const Eigen::Vector3d middle = (record.landmark("top") + record.landmark("bottom")) / 2;
    const Eigen::Isometry3d& X_WB = animal().X_WB[tibia.value];
    const TriangleMesh& shaft = animal().meshes[tibia.value]->levels[0];
    const double least =
        reach(mesh, X_WB * middle, X_WB.linear().col(0)) - reach(shaft, middle, Eigen::Vector3d::UnitX());
    EXPECT_GT(least, 0.85 * thickness);
    EXPECT_LT(least, 1.35 * thickness);
  }
}

// Crocodiles: 190 % of bone width sideways, 130 % vertically (Mallison 2011, Palaeontol. Electron. 14(2):10A).
TEST_P(BodyGuide, TailIsAMultipleOfTheBones) {
  const BuildPreset preset = kBuildPresets[2];
  EXPECT_EQ(preset.tailWidth, 1.9);
  EXPECT_EQ(preset.tailHeight, 1.3);
  GuideThickness t;
  t.tailWidth = preset.tailWidth;
  t.tailHeight = preset.tailHeight;
  t.tailBase = 0;  // which fades out along the tail
  const PosedSkeleton posed = animal().posed();
  const std::vector<GuideSection> sections = guideSections(posed);
  const TriangleMesh mesh = guide(posed, t);
  int seen = 0;
  for (const GuideSection& section : sections) {
    const anatomy::BoneName& name = animal().specimen[section.vertebra].name;
    if (name.kind != anatomy::BoneKind::Caudal || name.number < 22 || name.number > 26) continue;
    const Eigen::Isometry3d X_BW = animal().X_WB[section.vertebra.value].inverse();
    Eigen::AlignedBox2d box;
    for (const Eigen::Vector3f& p_W : mesh.positions) {
      const Eigen::Vector3d p = X_BW * p_W.cast<double>();
      if (std::abs(p.x()) < 0.02 && p.norm() < 1) box.extend(p.tail<2>());
    }
    EXPECT_NEAR(box.sizes().x() / (2 * section.halfWidth), 1.9, 0.12) << section.vertebra.value;
    EXPECT_NEAR(box.sizes().y() / (2 * section.halfHeight), 1.3, 0.12) << section.vertebra.value;
    ++seen;
  }
  EXPECT_EQ(seen, 5);
}

TEST_P(BodyGuide, LeanIsWithinFull) {
  double last = 0;
  for (const BuildPreset& preset : kBuildPresets) {
    GuideThickness t;
    t.tailWidth = preset.tailWidth;
    t.tailHeight = preset.tailHeight;
    t.muscle = preset.muscle;
    const double enclosed = volume(t == GuideThickness() ? usual() : guide(animal().posed(), t));
    EXPECT_GT(enclosed, 1.02 * last);
    last = enclosed;
  }
}

// No rib tip, chevron or process stands out of the skin: the six ends of every bone, along its own axes.
TEST_P(BodyGuide, NoBonePokesThrough) {
  const TriangleMesh mesh = simplified(usual(), 30000);
  for (std::size_t i = 0; i < animal().meshes.size(); ++i) {
    if (!animal().meshes[i]) continue;
    const auto& points = animal().meshes[i]->levels[0].positions;
    for (int axis = 0; axis < 3; ++axis) {
      const auto [low, high] = std::minmax_element(points.begin(), points.end(),
                                                   [axis](const auto& a, const auto& b) { return a[axis] < b[axis]; });
      for (const auto& end : {*low, *high})
        EXPECT_GT(winding(mesh, animal().X_WB[i] * end.cast<double>()), 0.5) << animal().specimen.bones[i].id;
    }
  }
}

TEST_P(BodyGuide, FollowsThePose) {
  RestingAnimal bent = animal();
  // The whole tail turned left about its root.
  const anatomy::Joint& root =
      bent.specimen[*bent.specimen.findJoint("S" + std::to_string(bent.specimen.counts.sacral) + "-Ca1")];
  const Eigen::Vector3d centre = bent.X_WB[root.proximal.value] * root.centreProximal;
  const Eigen::Isometry3d turn =
      Eigen::Translation3d(centre) * Eigen::AngleAxisd(-0.5, Eigen::Vector3d::UnitZ()) * Eigen::Translation3d(-centre);
  std::vector<bool> turned(bent.specimen.bones.size(), false);
  for (const anatomy::Joint& joint : bent.specimen.joints) {
    const bool here = joint.id == root.id || turned[joint.proximal.value];
    turned[joint.distal.value] = here;
    if (here) bent.X_WB[joint.distal.value] = turn * bent.X_WB[joint.distal.value];
  }
  const TriangleMesh &straight = usual(), swung = guide(bent.posed());
  const auto hindmost = [](const TriangleMesh& mesh) {
    return *std::min_element(mesh.positions.begin(), mesh.positions.end(),
                             [](const auto& a, const auto& b) { return a.x() < b.x(); });
  };
  const Eigen::Vector3d expected = turn * hindmost(straight).cast<double>();
  EXPECT_LT((hindmost(swung).cast<double>() - expected).norm(), 0.1);
  EXPECT_TRUE(examine(swung).closed);
  EXPECT_NEAR(volume(swung) / volume(straight), 1, 0.02);
}

TEST_P(BodyGuide, StopsWhenCancelled) {
  std::atomic<bool> cancel{true};
  BodyGuideOptions options;
  options.task = task::Task(&cancel);
  EXPECT_TRUE(bodyGuide(animal().posed(), options).empty());
}

INSTANTIATE_TEST_SUITE_P(BothAnimals, BodyGuide, testing::Values("high_browser", "low_browser", "wide_gauge"));

}  // namespace
}  // namespace zyga::solid
