// Contact between the bones of both sample animals: against FCL on the same meshes, and in the poses they come with.
#include <gtest/gtest.h>

#include <fstream>
#include <optional>
#include <random>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/range/contact/contact.h"
#include "core/range/neutral.h"
#include "core/solid/levelset/level_set.h"
#include "core/solid/mesh/mirrored_half.h"
#include "tests/support/fcl_bone.h"

namespace zyga::range {
namespace {

struct Animal {
  anatomy::Specimen specimen;
  std::vector<std::shared_ptr<const solid::BoneMesh>> meshes;
  solid::SignedDistances fields;

  ContactModel model() const { return {specimen, fields}; }
};

Animal read(const std::string& sample) {
  std::stringstream text;
  text << std::ifstream(ZYGAPOSE_SOURCE_DIR "/samples/" + sample).rdbuf();
  Animal animal;
  animal.specimen =
      anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::readMeasurementTable(text.str(), sample).table));
  solid::SculptOptions options;
  options.cacheFolder = std::filesystem::path(ZYGAPOSE_TEST_CACHE) / "zygapose";
  animal.meshes = solid::sculptAll(animal.specimen, options);
  solid::LevelSetOptions levels;
  levels.mirrorsItself = solid::bonesThatMirrorThemselves(animal.specimen);
  animal.fields = solid::levelSets(animal.meshes, bonesInContactPairs(animal.specimen), levels);
  return animal;
}

class ContactOfSample : public testing::TestWithParam<const char*> {
 protected:
  static const Animal& animal() {
    static std::map<std::string, Animal> kept;
    const auto found = kept.find(GetParam());
    return found != kept.end() ? found->second : kept.emplace(GetParam(), read(GetParam())).first->second;
  }

  static void expectFree(const kinematics::Pose& pose, double cartilagePercent) {
    Assumptions assumptions;
    assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = cartilagePercent;
    const auto X_WB =
        kinematics::forwardKinematics(animal().specimen, articulate(animal().specimen, assumptions), pose);
    const auto found = animal().model().contacts(X_WB, assumptions);
    EXPECT_TRUE(found.empty()) << "cartilage " << cartilagePercent
                               << " %: " << animal().specimen[found.front().bone].id;
  }
};

/// As they rest: every sample.
class NoContactOfSample : public ContactOfSample {};

TEST_P(NoContactOfSample, ThereIsNoneInNeutralArticulation) {
  for (const double percent : {0.0, 4.5}) expectFree(kinematics::Pose::neutral(animal().specimen), percent);
}

TEST_P(NoContactOfSample, ThereIsNoneWhereItStands) {
  kinematics::Pose pose = kinematics::Pose::neutral(animal().specimen);
  for (const auto& [id, angles] : anatomy::standingAngles(animal().specimen)) {
    if (const auto joint = animal().specimen.findJoint(id)) pose[*joint] = angles;
  }
  expectFree(pose, 0);
}

// What is left of a sculpted cervical for contact has no shaft of a rib, and all the rest of the bone.
TEST_P(ContactOfSample, OnlyTheShaftsOfCervicalRibsAreLeftOut) {
  const auto& specimen = animal().specimen;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const anatomy::Bone& bone = specimen.bones[i];
    if (bone.name.kind != anatomy::BoneKind::Cervical || bone.name.number < 3) continue;
    const ContactShape whole(animal().fields[i]), shape(animal().fields[i], bendingRibs(bone));
    const Eigen::Vector3d head = bone.landmark("parapophysis.L"), tip = bone.landmark("ribTip.L");
    const double length = bone.measures.value(anatomy::Measure::Length);
    const double height = bone.measures.value(anatomy::Measure::CotyleHeight);
    int taken = 0, elsewhere = 0, shaft = 0;
    const auto onShaft = [&](const Eigen::Vector3f& p) {
      const double along = (p.x() - head.x()) / (tip.x() - head.x());
      if (p.x() > head.x() - 0.2 * length || along > 1.01) return false;
      const Eigen::Vector3d at = head + along * (tip - head);
      return std::abs(std::abs(p.y()) - std::abs(at.y())) < 0.25 * height && std::abs(p.z() - at.z()) < 0.12 * height;
    };
    for (const auto& p : whole.tree->points()) {
      if (!holds(shape.zones, p)) continue;
      ++taken;
      elsewhere += partAt(bone, p.cast<double>()) != BonePart::Rib;
    }
    for (const auto& p : shape.tree->points())
      shaft += p.x() < bone.landmark("caudal").x() - 0.1 * length && onShaft(p);
    EXPECT_GT(taken, 20) << bone.id;
    EXPECT_EQ(shaft, 0) << bone.id << ": behind its centrum there is only rib";
    EXPECT_LT(elsewhere, 0.03 * static_cast<double>(whole.tree->points().size())) << bone.id;
  }
}

// An animal that is its own mirror image meets itself alike on either side.
TEST_P(ContactOfSample, IsTheSameToTheLeftAndToTheRight) {
  const auto& specimen = animal().specimen;
  const ContactModel model = animal().model();
  const auto articulation = articulate(specimen, Assumptions{});
  int met = 0;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    if (!specimen.joints[j].hasFacets()) continue;
    const auto depth = [&](double lateral) {
      return model.deepest({j}, kinematics::jointTransform(specimen.joints[j], articulation[{j}], {0, lateral, 0}), {})
          .depth;
    };
    // The shapes' grids are not mirror images: narrow ridges differ by most of a voxel of 3 mm.
    // Below 0 nothing touches, and how far apart the bones are is a bound only.
    const double left = std::max(0.0, depth(0.25)), right = std::max(0.0, depth(-0.25));
    EXPECT_NEAR(left, right, 0.002) << specimen.joints[j].id;
    met += left > 0.001;
  }
  EXPECT_GE(met, 3);
}

// Bones that are bent far enough do enter each other, and the joint that did it is told the same.
TEST_P(ContactOfSample, ThereIsSomeWhereATrunkIsBentFarUp) {
  const ContactModel model = animal().model();
  const auto articulation = articulate(animal().specimen, Assumptions{});
  const auto joint = animal().specimen.findJoint("D5-D6").value();
  kinematics::Pose pose = kinematics::Pose::neutral(animal().specimen);
  pose[joint].x() = 0.4;
  const auto found =
      model.contacts(kinematics::forwardKinematics(animal().specimen, articulation, pose), Assumptions{});
  ASSERT_FALSE(found.empty());
  EXPECT_GT(found.front().depth, 0.02);
  const auto X_PD = kinematics::jointTransform(animal().specimen[joint], articulation[joint], pose[joint]);
  EXPECT_NEAR(model.deepest(joint, X_PD, {}).depth, found.front().depth, 0.01);
}

// Whole bones, articulating surfaces and all, at angles that leave some apart and press some into each other.
TEST_P(ContactOfSample, AgreesWithFclToAVoxel) {
  const auto& fields = animal().fields;
  const ContactModel model = animal().model();
  std::vector<ContactShape> shapes(fields.size());
  std::vector<std::optional<test::FclBone>> reference(fields.size());
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (!fields[i]) continue;
    shapes[i] = ContactShape(fields[i]);
    const solid::TriangleMesh& level = solid::sampledLevel(*animal().meshes[i]);
    const bool even = solid::mirrorsItself(animal().specimen.bones[i]);
    reference[i].emplace(even ? solid::mirroredHalf(level).value_or(level) : level);
  }
  const auto articulation = articulate(animal().specimen, Assumptions{});
  std::mt19937 random(23);
  std::uniform_real_distribution<double> angle(-0.1, 0.1);
  int touching = 0, apart = 0;
  for (int turn = 0; turn < 2; ++turn) {
    kinematics::Pose pose = kinematics::Pose::neutral(animal().specimen);
    for (std::size_t j = 0; j < pose.angles.size(); ++j) {
      if (animal().specimen.joints[j].kind != anatomy::JointKind::Fixed) {
        pose.angles[j] = {angle(random), angle(random), angle(random)};
      }
    }
    const auto X_WB = kinematics::forwardKinematics(animal().specimen, articulation, pose);
    for (const ContactPair& pair : model.pairs()) {
      const std::size_t a = pair.a.value, b = pair.b.value;
      const Eigen::Isometry3f X_AB = (X_WB[a].inverse() * X_WB[b]).cast<float>();
      const float ours = contactDepth(shapes[a], shapes[b], X_AB).distance;
      const float voxel = std::max(fields[a]->resolution(), fields[b]->resolution());
      const bool theirs = reference[a]->collides(*reference[b], X_AB);
      const std::string names = animal().specimen.bones[a].id + " and " + animal().specimen.bones[b].id;
      if (std::abs(ours) > voxel) {
        EXPECT_EQ(ours < 0, theirs) << names << ": " << ours;
        EXPECT_EQ(touch(shapes[a], shapes[b], X_AB), theirs) << names << ": " << ours;
      }
      if (!theirs) {  // chevrons of the hind tail are hardly thicker than their voxels
        EXPECT_NEAR(ours, reference[a]->distance(*reference[b], X_AB), 1.2 * voxel) << names;
      }
      ++(theirs ? touching : apart);
    }
  }
  EXPECT_GT(touching, 50);
  EXPECT_GT(apart, 100);
}

std::string nameOf(const testing::TestParamInfo<const char*>& info) { return std::string(info.param).substr(0, 3); }
INSTANTIATE_TEST_SUITE_P(Both, ContactOfSample, testing::Values("high_browser.csv", "low_browser.csv"), nameOf);
INSTANTIATE_TEST_SUITE_P(All, NoContactOfSample,
                         testing::Values("high_browser.csv", "low_browser.csv", "wide_gauge.csv"), nameOf);

}  // namespace
}  // namespace zyga::range
