#include "core/solid/body_guide.h"

#include <gtest/gtest.h>

#include "core/solid/guide_sections.h"
#include "core/solid/level_set.h"
#include "tests/core/solid/posed_animal.h"
#include "tests/support/sample_animal.h"

namespace zyga::solid {
namespace {

class BodyGuide : public testing::TestWithParam<const char*> {
 protected:
  static const RestingAnimal& animal() {
    static std::map<std::string, RestingAnimal> animals;
    return animals.try_emplace(GetParam(), test::sampleAnimal(GetParam()), 1500).first->second;
  }
  static TriangleMesh guide(const PosedSkeleton& skeleton, const GuideThickness& thickness = {}) {
    BodyGuideOptions options;
    options.thickness = thickness;
    return bodyGuide(skeleton, options);
  }
  BoneIndex bone(const std::string& id) const { return *animal().specimen.findBone(id); }
  using BoneIndex = anatomy::BoneIndex;
};

TEST_P(BodyGuide, IsOneClosedSurfaceThatHoldsEveryBone) {
  const TriangleMesh mesh = guide(animal().posed());
  const MeshHealth health = examine(mesh);
  EXPECT_TRUE(health.closed && health.oriented);
  EXPECT_EQ(health.components, 1U);
  const LevelSet inside(mesh, 0.03);
  double deepest = -1;
  for (std::size_t i = 0; i < animal().meshes.size(); ++i) {
    if (!animal().meshes[i]) continue;
    for (const Eigen::Vector3f& p : animal().meshes[i]->levels[0].positions) {
      const Eigen::Vector3d p_W = animal().X_WB[i] * p.cast<double>();
      const double out = inside.distance(p_W.cast<float>());
      if (out > deepest) deepest = out;
      ASSERT_LT(out, 0.01) << animal().specimen.bones[i].id;
    }
  }
  std::cout << "volume " << health.volume << " m3, bones reach to " << deepest * 1000 << " mm of the guide\n";
}

TEST_P(BodyGuide, StandsOffAShankByTheStatedThickness) {
  for (const double thickness : {0.03, 0.08}) {
    GuideThickness t;
    t.lowerLimbs = thickness;
    const LevelSet inside(guide(animal().posed(), t), 0.02);
    // Points of the tibia's outer side, half way down, away from joints and from the fibula.
    const BoneIndex tibia = bone("tibia.L");
    const anatomy::Bone& record = animal().specimen[tibia];
    const double middle = (record.landmark("top").z() + record.landmark("bottom").z()) / 2;
    double least = 1;
    for (const Eigen::Vector3f& p : animal().meshes[tibia.value]->levels[0].positions) {
      if (std::abs(p.z() - middle) > 0.05) continue;
      least = std::min<double>(least, -inside.distance((animal().X_WB[tibia.value] * p.cast<double>()).cast<float>()));
    }
    EXPECT_GT(least, 0.85 * thickness);
    EXPECT_LT(least, 1.35 * thickness);
  }
}

// Crocodiles: 190 % of bone width sideways, 130 % vertically (Mallison 2011, Palaeontol. Electron. 14(2):10A).
TEST_P(BodyGuide, TailIsAMultipleOfTheBones) {
  const TailPreset preset = kTailPresets[2];
  EXPECT_EQ(preset.width, 1.9);
  EXPECT_EQ(preset.height, 1.3);
  GuideThickness t;
  t.tailWidth = preset.width;
  t.tailHeight = preset.height;
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

TEST_P(BodyGuide, FollowsThePose) {
  RestingAnimal bent = animal();
  // The whole tail turned left about its root.
  const anatomy::Joint& root = bent.specimen[*bent.specimen.findJoint("S5-Ca1")];
  const Eigen::Vector3d centre = bent.X_WB[root.proximal.value] * root.centreProximal;
  const Eigen::Isometry3d turn =
      Eigen::Translation3d(centre) * Eigen::AngleAxisd(-0.5, Eigen::Vector3d::UnitZ()) * Eigen::Translation3d(-centre);
  std::vector<bool> turned(bent.specimen.bones.size(), false);
  for (const anatomy::Joint& joint : bent.specimen.joints) {
    const bool here = joint.id == root.id || turned[joint.proximal.value];
    turned[joint.distal.value] = here;
    if (here) bent.X_WB[joint.distal.value] = turn * bent.X_WB[joint.distal.value];
  }
  const TriangleMesh straight = guide(animal().posed()), swung = guide(bent.posed());
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
  options.cancel = &cancel;
  EXPECT_TRUE(bodyGuide(animal().posed(), options).empty());
}

INSTANTIATE_TEST_SUITE_P(BothAnimals, BodyGuide, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::solid
