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
#include "core/range/presets.h"
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
  return {std::move(specimen), grownAnimal(), neutral, std::move(model)};
}

/// Ranges in which one motion may not go back beyond where it starts.
class ForwardOnly final : public kinematics::JointRanges {
 public:
  ForwardOnly(const kinematics::JointRanges& ranges, const Pose& start, int motion, double sense)
      : ranges_(ranges), start_(start), motion_(motion), sense_(sense) {}
  Box box(JointIndex joint) const override {
    Box box = ranges_.box(joint);
    (sense_ > 0 ? box.min : box.max)[motion_] = start_[joint][motion_];
    return box;
  }
  Excesses excesses(JointIndex joint, const Vector3d& angles) const override { return ranges_.excesses(joint, angles); }
  std::optional<Vector3d> inside(JointIndex joint) const override {
    const auto inside = ranges_.inside(joint);
    const Box within = box(joint);
    return inside ? std::optional<Vector3d>(inside->cwiseMax(within.min).cwiseMin(within.max)) : std::nullopt;
  }
  Vector3d halfWidths(JointIndex joint) const override { return ranges_.halfWidths(joint); }

 private:
  const kinematics::JointRanges& ranges_;
  const Pose& start_;
  int motion_;
  double sense_;
};

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
  IkResult reached(const IkGoal& goal, const kinematics::JointRanges& ranges, const Pose* from = nullptr) const {
    return kinematics::reach(specimen(), neutral().articulation(), ranges, start_, goal, from);
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
  /// The sense of turning alike that takes the bone the way it is dragged.
  double senseOf(const IkGoal& goal, const View& view) const {
    const Vector3d moved = placeOf(goal.bone, turnedAlike(goal, view.asked, 1e-4)) - placeOf(goal.bone, start_);
    const double cosine = moved.normalized().dot(view.way);
    EXPECT_GT(std::abs(cosine), 0.5) << specimen()[goal.bone].id << " " << view.name << " is no such drag";
    return std::copysign(1.0, cosine);
  }

  /// rad by which the joint that turns farthest against the sense does so.
  double mostBackward(const IkGoal& goal, const Pose& pose, int motion, double sense) const {
    double most = 0;
    for (const JointIndex j : goal.joints) most = std::max(most, sense * (start_[j][motion] - pose[j][motion]));
    return most;
  }

  ReachRanges ranges_;
  Pose start_;
};

INSTANTIATE_TEST_SUITE_P(Both, DragsOfASample, testing::Values("high_browser", "low_browser"),
                         [](const auto& info) { return std::string(info.param).substr(0, 3); });

// A joint turns back when it turns by more than three quarters of a degree (less is not seen) against the sense in
// which all turning alike take the bone the way it is dragged. It needs to where the chain turning in that motion and
// sense alone neither meets the target nor comes as near.
TEST_P(DragsOfASample, NoJointTurnsBackUnlessTheTargetNeedsIt) {
  constexpr double kBack = 0.75 * kDegree;
  int drags = 0, back = 0;
  const auto check = [&](IkGoal goal, const View& view, const IkResult& answer, const char* how) {
    ++drags;
    const double sense = senseOf(goal, view);
    const double most = mostBackward(goal, answer.pose, view.asked, sense);
    if (most <= kBack) return;
    ++back;
    goal.motions = {view.asked == 0, view.asked == 1, false};
    const IkResult without = reached(goal, ForwardOnly(ranges_, start_, view.asked, sense));
    EXPECT_GT(without.distance, std::max(answer.distance, kinematics::kReachedWithin))
        << specimen()[goal.bone].id << " " << view.name << ", " << how << ": a joint turns back by " << most / kDegree
        << " degrees for " << answer.distance << " m";
  };
  for (const BoneIndex bone : neckAndTail()) {
    // All bones in all views, at both lengths and every caudal, were tried by hand; that takes minutes.
    const anatomy::BoneName& name = specimen()[bone].name;
    const bool stands = name.kind == BoneKind::Skull || name.number % (name.kind == BoneKind::Caudal ? 12 : 4) == 0;
    for (const View& view : kViews) {
      if (!stands && view.motions[0] && view.motions[1]) continue;
      for (const double share : {0.04, 0.16}) {
        if (!stands && share < 0.1) continue;
        IkGoal goal = goalFor(bone, view.motions);
        constexpr int kFrames = 3;
        const Vector3d begun = placeOf(bone, start_), way = share * length(goal) * view.way;
        IkResult last;
        last.pose = start_;
        for (int frame = 1; frame <= kFrames; ++frame) {
          goal.p_WTarget = begun + way * frame / kFrames;
          const Pose from = last.pose;
          last = reached(goal, ranges_, &from);
        }
        check(goal, view, last, "dragged");
        if (share > 0.1) check(goal, view, reached(goal, ranges_), "at once");
      }
    }
  }
  EXPECT_GT(drags, 100);
  EXPECT_LT(back, drags / 2) << "most drags need none";
}

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
