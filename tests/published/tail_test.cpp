// A19. Díez Díaz et al. 2025, R. Soc. Open Sci.; Conti et al. 2022, Sci. Rep. 12 (both read): chevrons limit downward
// bending of a tail only; the hind caudals of whip tails are rods without zygapophyses, in a diplodocid tail about 10 +
// 40 caudals with them and 30 without.
#include <gtest/gtest.h>

#include "core/range/contact/contact.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/solid/levelset/level_set.h"
#include "core/solid/mesh/mirrored_half.h"
#include "tests/support/sample_animal.h"

namespace zyga::range {
namespace {

using anatomy::BoneKind;
using anatomy::JointIndex;

/// The sample with a whip tail, with the shapes of its tail.
struct Whip {
  anatomy::Specimen specimen = test::sampleAnimal("low_browser");
  Assumptions assumptions = grownAnimal();
  kinematics::Articulation articulation = articulate(specimen, assumptions);
  ContactModel model{specimen, fieldsOfTheTail()};

  solid::SignedDistances fieldsOfTheTail() const {
    solid::SculptOptions options;
    options.cacheFolder = std::filesystem::path(ZYGAPOSE_TEST_CACHE) / "zygapose";
    std::vector<bool> wanted = bonesInContactPairs(specimen);
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      const BoneKind kind = specimen.bones[i].name.kind;
      if (kind != BoneKind::Caudal && kind != BoneKind::Chevron) wanted[i] = false;
    }
    solid::LevelSetOptions levels;
    levels.mirrorsItself = solid::bonesThatMirrorThemselves(specimen);
    return solid::levelSets(solid::sculptAll(specimen, options), wanted, levels);
  }

  std::vector<JointIndex> caudalJoints() const {
    std::vector<JointIndex> joints;
    for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
      if (specimen[specimen.joints[j].proximal].name.kind == BoneKind::Caudal &&
          specimen[specimen.joints[j].distal].name.kind == BoneKind::Caudal)
        joints.push_back({j});
    }
    return joints;
  }

  /// With this joint alone bent: whether a chevron enters a bone, and whether any bone does.
  std::pair<bool, bool> contactsAt(JointIndex joint, const Eigen::Vector3d& angles) const {
    kinematics::Pose pose = kinematics::Pose::neutral(specimen);
    pose[joint] = angles;
    bool chevron = false, any = false;
    for (const ContactFinding& found :
         model.contacts(kinematics::forwardKinematics(specimen, articulation, pose), assumptions)) {
      any = true;
      for (const anatomy::BoneIndex bone : {found.bone, found.other})
        chevron = chevron || specimen[bone].name.kind == BoneKind::Chevron;
    }
    return {chevron, any};
  }
};

const Whip& whip() {
  static const Whip made;
  return made;
}

TEST(PublishedTail, ChevronsLimitDownwardBendingOnly) {
  const Whip& tail = whip();
  constexpr double kFar = 0.5;  // rad: far past what the facets allow
  int stopped = 0, looked = 0;
  for (const JointIndex joint : tail.caudalJoints()) {
    const anatomy::BoneIndex carrier = tail.specimen[joint].proximal;
    if (!tail.specimen.findBone("chevron." + tail.specimen[carrier].id)) continue;
    ++looked;
    stopped += tail.contactsAt(joint, {-kFar, 0, 0}).first;
    EXPECT_FALSE(tail.contactsAt(joint, {kFar, 0, 0}).first) << tail.specimen[joint].id << " bent up";
    for (const double side : {-kFar, kFar})
      EXPECT_FALSE(tail.contactsAt(joint, {0, side, 0}).first) << tail.specimen[joint].id << " bent sideways";
  }
  ASSERT_GT(looked, 15);
  EXPECT_GE(stopped, 5) << "the long chevrons of the front meet; those of the hind tail are short";
  // And the limits say so: what stops a joint going up is never a chevron.
  for (const char* id : {"Ca3-Ca4", "Ca8-Ca9", "Ca14-Ca15"}) {
    const JointIndex joint = tail.specimen.findJoint(id).value();
    const auto up = motionRange(tail.specimen, tail.articulation, tail.assumptions, joint, {0, 0, 0}, 0, &tail.model);
    ASSERT_FALSE(up.empty) << id;
    EXPECT_FALSE(tail.contactsAt(joint, {up.max, 0, 0}).first) << id;
  }
}

TEST(PublishedTail, HindCaudalsAreRodsWithTypedLimitsAndContact) {
  const Whip& tail = whip();
  const auto joints = tail.caudalJoints();
  ASSERT_EQ(joints.size(), 79u);
  std::size_t facets = 0;
  for (std::size_t i = 0; i < joints.size(); ++i) {
    const anatomy::Joint& joint = tail.specimen[joints[i]];
    if (joint.hasFacets()) {
      EXPECT_EQ(facets, i) << "rods lie hind of all others: " << joint.id;
      ++facets;
      continue;
    }
    EXPECT_EQ(joint.kind, anatomy::JointKind::Typed);
    ASSERT_TRUE(joint.typed) << joint.id;
    EXPECT_EQ(joint.typed->source, anatomy::kProgramDefault);
    const auto ends = limits(tail.specimen, tail.articulation, tail.assumptions, joints[i], {0, 0, 0});
    EXPECT_TRUE(ends.judged);
    for (const Direction direction : kDirections) {
      const anatomy::AngleLimits& typed = joint.typed->angles[static_cast<std::size_t>(motionOf(direction))];
      EXPECT_NEAR(ends[direction].angle, signOf(direction) > 0 ? typed.max : typed.min, 1e-9) << joint.id;
    }
  }
  // Facets between 50 caudals, 30 rods behind them, as printed.
  EXPECT_EQ(facets, 49u);
  EXPECT_EQ(joints.size() - facets, 30u);
  // The rods are among the pairs that contact is asked of.
  std::size_t pairs = 0;
  for (const ContactPair& pair : tail.model.pairs()) {
    const auto& [a, b] = std::pair(tail.specimen[pair.a].name, tail.specimen[pair.b].name);
    pairs += a.kind == BoneKind::Caudal && b.kind == BoneKind::Caudal && std::max(a.number, b.number) > 50;
  }
  EXPECT_EQ(pairs, 30u);
}

}  // namespace
}  // namespace zyga::range
