// Drags of every neck bone and of some tail bones of both samples, up, down and to the left, as the window makes them:
// by steps, each searched from the one before.
#include <gtest/gtest.h>

#include <map>
#include <numbers>

#include "core/kinematics/bend.h"
#include "core/kinematics/following.h"
#include "core/range/contact/clear_reach.h"
#include "core/range/contact/contact.h"
#include "core/range/limit_search.h"
#include "core/solid/levelset/level_set.h"
#include "core/solid/mesh/mirrored_half.h"
#include "tests/support/sample_animal.h"

namespace zyga::range {
namespace {

using anatomy::BoneIndex;
using anatomy::BoneKind;
using Eigen::Vector3d;
using kinematics::IkGoal;
using kinematics::IkResult;
using kinematics::JointIndex;
using kinematics::Pose;

constexpr double kDegree = std::numbers::pi / 180;
/// Long tails take long: one bone in so many stands for those beside it.
constexpr int kEachCaudal = 6;

Scenario scenarioOf(const std::string& sample) {
  auto specimen = std::make_shared<const anatomy::Specimen>(test::sampleAnimal(sample));
  solid::SculptOptions options;
  options.cacheFolder = std::filesystem::path(ZYGAPOSE_TEST_CACHE) / "zygapose";
  solid::LevelSetOptions levels;
  levels.mirrorsItself = solid::bonesThatMirrorThemselves(*specimen);
  auto model = std::make_shared<const ContactModel>(
      *specimen, solid::levelSets(solid::sculptAll(*specimen, options), bonesInContactPairs(*specimen), levels));
  const Pose neutral = Pose::neutral(*specimen);
  return {std::move(specimen), {}, neutral, std::move(model)};
}

/// How a bone is dragged in one of the window's views.
struct View {
  const char* name;
  std::array<bool, 3> motions;
  Vector3d way;
  int asked;  ///< the motion that takes the point there
};
const View kViews[] = {{"up in a side view", {true, false, false}, Vector3d::UnitZ(), 0},
                       {"down in a side view", {true, false, false}, -Vector3d::UnitZ(), 0},
                       {"left in a top view", {false, true, false}, Vector3d::UnitY(), 1},
                       {"up", {true, true, false}, Vector3d::UnitZ(), 0},
                       {"down", {true, true, false}, -Vector3d::UnitZ(), 0},
                       {"left", {true, true, false}, Vector3d::UnitY(), 1}};

class DragsOfASample : public testing::TestWithParam<const char*> {
 protected:
  DragsOfASample()
      : ranges_(specimen(), neutral().articulation(), neutral().assumptions(), neutral().contact()),
        start_(neutral().pose()) {}

  const Scenario& neutral() const {
    static std::map<std::string, Scenario> kept;
    const auto found = kept.find(GetParam());
    return found != kept.end() ? found->second : kept.emplace(GetParam(), scenarioOf(GetParam())).first->second;
  }
  const anatomy::Specimen& specimen() const { return neutral().specimen(); }

  std::vector<BoneIndex> neckAndTail() const {
    std::vector<BoneIndex> bones;
    for (std::size_t b = 0; b < specimen().bones.size(); ++b) {
      const BoneKind kind = specimen().bones[b].name.kind;
      const bool tail = kind == BoneKind::Caudal && specimen().bones[b].name.number % kEachCaudal == 0;
      const bool meant = kind == BoneKind::Cervical || kind == BoneKind::Skull || tail;
      if (meant && !kinematics::dragChain(specimen(), {b}).empty()) bones.push_back({b});
    }
    return bones;
  }

  IkGoal goalFor(BoneIndex bone, const std::array<bool, 3>& motions) const {
    IkGoal goal;
    goal.bone = bone;
    goal.joints = kinematics::dragChain(specimen(), bone);
    goal.motions = motions;
    return goal;
  }
  Vector3d placeOf(BoneIndex bone, const Pose& pose) const {
    return kinematics::forwardKinematics(specimen(), neutral().articulation(), pose)[bone.value].translation();
  }
  /// From the base of the chain to the bone, m.
  double length(const IkGoal& goal) const {
    const anatomy::Joint& first = specimen()[goal.joints.front()];
    return (placeOf(goal.bone, start_) - neutral().placement()[first.proximal.value] * first.centreProximal).norm();
  }
  /// rad that count as a whole share of a joint's range; 0 where it has none.
  double unit(JointIndex joint, int motion) const {
    return ranges_.inside(joint) ? std::min(0.6, ranges_.halfWidths(joint)[motion]) : 0;
  }
  /// The chain with every joint turned by the same share of its range.
  Pose turnedAlike(const IkGoal& goal, int motion, double share) const {
    Pose pose = start_;
    for (const JointIndex j : goal.joints) {
      const double turn = share * unit(j, motion);
      pose[j] =
          kinematics::withMotion(specimen()[j], neutral().articulation()[j], pose[j], motion, pose[j][motion] + turn);
    }
    return pose;
  }
  ReachRanges ranges_;
  Pose start_;
};

INSTANTIATE_TEST_SUITE_P(Both, DragsOfASample, testing::Values("high_browser", "low_browser"),
                         [](const auto& info) { return std::string(info.param).substr(0, 3); });

// The band of the strip is Scenario::motionRange: contact of bones counts.
TEST_P(DragsOfASample, NoJointLeavesTheBandThatIsDrawn) {
  int atTheEnd = 0;
  for (const BoneIndex bone : neckAndTail()) {
    for (const View& view : kViews) {
      if (view.motions[0] && view.motions[1]) continue;
      IkGoal goal = goalFor(bone, view.motions);
      constexpr int kFrames = 4;
      const Vector3d begun = placeOf(bone, start_), way = 0.4 * length(goal) * view.way;
      Pose last = start_;
      for (int frame = 1; frame <= kFrames; ++frame) {
        goal.p_WTarget = begun + way * frame / kFrames;
        const Pose from = last;
        last = reachClear(neutral(), ranges_, start_, goal, &from).reached.pose;
      }
      const Scenario posed = neutral().withPose(last);
      for (const JointIndex j : goal.joints) {
        if (last[j] == start_[j]) continue;
        EXPECT_NE(posed.assessment().find(j)->level, Level::Beyond)
            << specimen()[bone].id << " " << view.name << " " << specimen()[j].id;
        const MotionRange& band = posed.motionRange(j, view.asked);
        const double angle = last[j][view.asked];
        EXPECT_FALSE(band.empty) << specimen()[j].id;
        EXPECT_GE(angle, band.min - kBandPrecision)
            << specimen()[bone].id << " " << view.name << " " << specimen()[j].id;
        EXPECT_LE(angle, band.max + kBandPrecision)
            << specimen()[bone].id << " " << view.name << " " << specimen()[j].id;
        atTheEnd += std::min(angle - band.min, band.max - angle) < 0.1 * kDegree;
      }
    }
  }
  EXPECT_GT(atTheEnd, 50) << "else nothing was held";
}

TEST_P(DragsOfASample, TheHeadKeepsItsOrientationWhenAsked) {
  const BoneIndex skull = specimen().findBone("skull").value();
  const Vector3d gaze = neutral().placement()[skull.value].linear().col(0);
  for (const int motion : {0, 1}) {
    for (const double share : {-0.1, -0.05, 0.05, 0.1}) {
      IkGoal goal = goalFor(skull, {true, true, false});
      goal.directions = {{Vector3d::UnitX(), gaze}};
      const Vector3d begun = placeOf(skull, start_);
      const Vector3d way = placeOf(skull, turnedAlike(goal, motion, share)) - begun;
      IkResult last;
      last.pose = start_;
      for (int frame = 1; frame <= 5; ++frame) {
        goal.p_WTarget = begun + way * frame / 5;
        const Pose from = last.pose;
        last = reachClear(neutral(), ranges_, start_, goal, &from).reached;
      }
      EXPECT_TRUE(last.reached) << motion << " " << share;
      EXPECT_LT(last.directionError, 0.5 * kDegree) << motion << " " << share;
    }
  }
}

}  // namespace
}  // namespace zyga::range
