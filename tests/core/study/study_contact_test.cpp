// Contact of bones in studies, stances and reaches of both sample animals: what they say is what band and verdict say.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <random>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/bend.h"
#include "core/kinematics/following.h"
#include "core/kinematics/stand_readings.h"
#include "core/range/contact/clear_reach.h"
#include "core/range/contact/contact.h"
#include "core/range/presets.h"
#include "core/solid/levelset/level_set.h"
#include "core/solid/mesh/mirrored_half.h"
#include "core/study/reach/extremes.h"
#include "core/study/reach/planar_neck.h"
#include "core/study/reach/sagittal_bend.h"
#include "core/study/reach/sagittal_chain.h"
#include "core/study/run.h"
#include "core/study/stances/compare_poses.h"
#include "core/study/stances/stances.h"
#include "tests/support/sample_animal.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using kinematics::JointIndex;
using kinematics::Pose;

range::Scenario scenarioWithContact(const std::string& sample) {
  auto specimen = std::make_shared<const anatomy::Specimen>(test::sampleAnimal(sample));
  solid::SculptOptions options;
  options.cacheFolder = std::filesystem::path(ZYGAPOSE_TEST_CACHE) / "zygapose";
  const auto meshes = solid::sculptAll(*specimen, options);
  solid::LevelSetOptions levels;
  levels.mirrorsItself = solid::bonesThatMirrorThemselves(*specimen);
  auto model = std::make_shared<const range::ContactModel>(
      *specimen, solid::levelSets(meshes, range::bonesInContactPairs(*specimen), levels));
  const Pose neutral = Pose::neutral(*specimen);
  return {std::move(specimen), range::grownAnimal(), neutral, std::move(model)};
}

class WithContact : public testing::TestWithParam<const char*> {
 protected:
  const range::Scenario& neutral() const {
    static std::map<std::string, range::Scenario> kept;
    const auto found = kept.find(GetParam());
    return found != kept.end() ? found->second
                               : kept.emplace(GetParam(), scenarioWithContact(GetParam())).first->second;
  }
  const anatomy::Specimen& specimen() const { return neutral().specimen(); }
  JointIndex joint(const char* id) const { return specimen().findJoint(id).value(); }
  /// The ends of dorsiflexion that contact sets, by joint of the neck.
  int stoppedByContact() const {
    int stopped = 0;
    for (const JointIndex j : jointsOf(specimen(), Chain::Neck)) {
      const auto& band = neutral().motionRange(j, 0);
      for (const auto* stop : {&band.minStop, &band.maxStop}) stopped += stop->kind == range::FindingKind::BoneContact;
    }
    return stopped;
  }
};

INSTANTIATE_TEST_SUITE_P(Both, WithContact, testing::Values("high_browser", "low_browser"),
                         [](const auto& info) { return std::string(info.param).substr(0, 3); });

// For 200 random poses: a joint is out of range by contact where, and only where, its band leaves its angle out; and
// its end is where its limits are.
TEST_P(WithContact, BandVerdictAndLimitsAgree) {
  std::mt19937 random(16);
  std::uniform_int_distribution<std::size_t> anyJoint(0, specimen().joints.size() - 1);
  std::uniform_real_distribution<double> share(-1.4, 1.4);
  std::uniform_int_distribution<int> anyMotion(0, 1);
  int judged = 0, collided = 0;
  for (int pose = 0; pose < 200; ++pose) {
    std::vector<JointIndex> turned;
    Pose posed = neutral().pose();
    while (turned.size() < 3) {
      const JointIndex j{anyJoint(random)};
      const anatomy::Joint& bones = specimen()[j];
      if (!bones.hasFacets() || std::find(turned.begin(), turned.end(), j) != turned.end()) continue;
      const int motion = anyMotion(random);
      const auto& band = neutral().motionRange(j, motion);
      posed[j] = kinematics::withMotion(bones, neutral().articulation()[j], Vector3d::Zero(), motion,
                                        share(random) * std::max(band.max, -band.min));
      turned.push_back(j);
    }
    const range::Scenario scenario = neutral().withPose(posed);
    for (const JointIndex j : turned) {
      const range::JointVerdict& verdict = *scenario.assessment().find(j);
      const bool beyond = verdict.level == range::Level::Beyond;
      const range::JointLimits limits = scenario.limits(j);
      for (const int motion : {0, 1}) {
        const auto& band = scenario.motionRange(j, motion);
        EXPECT_NE(band.holds(posed[j][motion]), beyond) << specimen()[j].id << " " << posed[j].transpose();
        EXPECT_EQ(limits.ends[2 * static_cast<std::size_t>(motion)].angle, band.max);
        EXPECT_EQ(limits.ends[2 * static_cast<std::size_t>(motion) + 1].angle, band.min);
      }
      ++judged;
      collided += verdict.onlyCollides();
    }
  }
  EXPECT_EQ(judged, 600);
  EXPECT_GT(collided, 4);
}

// From neutral, where chart, planar neck and chains measure, each gives the band's own ends.
TEST_P(WithContact, StudiesUseTheRangesOfTheStrip) {
  if (std::string(GetParam()) == "high_browser") {
    ASSERT_GT(stoppedByContact(), 0) << "else this shows nothing";
  }
  const PlanarNeck planar = planarNeck(neutral());
  for (std::size_t i = 0; i < planar.joints.size(); ++i) {
    const auto& band = neutral().motionRange(planar.joints[i], 0);
    EXPECT_EQ(planar.chain[i].min, band.min);
    EXPECT_EQ(planar.chain[i].max, band.max);
  }
  const auto chart = rangeChart(neutral());
  ASSERT_TRUE(chart->contactJudged);
  for (const RangeChart::Row& row : chart->rows) {
    EXPECT_EQ(row.limits[range::Direction::Dorsal].angle, neutral().motionRange(row.joint, 0).max) << row.id;
    EXPECT_EQ(row.limits[range::Direction::Left].angle, neutral().motionRange(row.joint, 1).max) << row.id;
    EXPECT_EQ(row.level, neutral().assessment().find(row.joint)->level) << row.id;
  }
  const SagittalBend bend(specimen(), neutral().articulation(), neutral().assumptions(), neutral().contact());
  const auto joints = jointsOf(specimen(), Chain::Neck);
  CarriedSpan span;
  span.to = specimen()[joints.back()].distal;
  const SagittalChain chain(specimen(), neutral().articulation(), neutral().assumptions(), joints, span,
                            neutral().pose(), neutral().contact());
  for (std::size_t i = 0; i < joints.size(); ++i) {
    const auto& band = neutral().motionRange(joints[i], 0);
    EXPECT_NEAR(bend.range(joints[i]).max, band.judged ? 0.99 * std::max(0.0, band.max) : 0, 1e-12);
    EXPECT_EQ(chain.links()[i].min, band.empty ? 0 : band.min);
  }
}

// No posture that a study shows as one at the end of the range is out of range: each joint at its own limit is as far
// as its bones let it.
TEST_P(WithContact, ElevationShowsNoPostureThatTheWindowWouldMark) {
  const Elevation with = elevation(neutral());
  const Elevation without = elevation(neutral().withContact(nullptr));
  EXPECT_TRUE(with.contactJudged);
  EXPECT_FALSE(without.contactJudged);
  for (const NeckCarriage which :
       {NeckCarriage::Dorsal, NeckCarriage::Ventral, NeckCarriage::Highest, NeckCarriage::Lowest}) {
    Pose inside = with[which].pose;
    for (const JointIndex j : neckJoints(specimen())) inside[j] *= 0.999;  // off the very end
    const range::Scenario posed = neutral().withPose(inside);
    for (const JointIndex j : jointsOf(specimen(), Chain::Neck))
      EXPECT_NE(posed.assessment().find(j)->level, range::Level::Beyond) << toText(which) << " " << specimen()[j].id;
  }
  EXPECT_GE(with[NeckCarriage::Lowest].carriage.snoutHeight, without[NeckCarriage::Lowest].carriage.snoutHeight - 1e-6);
  EXPECT_LE(with[NeckCarriage::Highest].carriage.snoutHeight,
            without[NeckCarriage::Highest].carriage.snoutHeight + 1e-6);
  EXPECT_GE(with[NeckCarriage::Ventral].slope, without[NeckCarriage::Ventral].slope - 1e-9);
}

TEST_P(WithContact, RotationVolumeIsNeverLargerThanWithout) {
  int smaller = 0;
  for (const JointIndex j : jointsOf(specimen(), Chain::Neck)) {
    const auto with =
        supportedRotations(specimen(), neutral().articulation(), neutral().assumptions(), j, neutral().contact());
    const auto without = supportedRotations(specimen(), neutral().articulation(), neutral().assumptions(), j);
    EXPECT_LE(with.corrected, 1.03 * without.corrected) << specimen()[j].id << ": cells differ in size";
    smaller += with.corrected < 0.97 * without.corrected;
  }
  // Where bones of the high browser's neck meet, little is left to lose.
  if (std::string(GetParam()) == "low_browser") {
    EXPECT_GT(smaller, 0);
  }
}

TEST_P(WithContact, StancesHoldWhatTheyPromise) {
  for (const Stance stance : kStances) {
    const StanceAnswer answer = takeStance(neutral(), stance);
    EXPECT_TRUE(answer.contactJudged);
    const range::Scenario posed = neutral().withPose(answer.pose);
    const range::Assessment& assessment = posed.assessment();
    std::size_t beyond = 0, apart = 0;
    for (const auto& verdict : assessment.joints) beyond += verdict.level == range::Level::Beyond;
    for (const auto& contact : assessment.contacts) apart += contact.level == range::Level::Beyond && !contact.joint;
    EXPECT_EQ(answer.beyond.size(), beyond) << idOf(stance);
    EXPECT_EQ(answer.contacts.size(), apart) << idOf(stance);
    for (const JointIndex j : answer.beyond) ADD_FAILURE() << idOf(stance) << ": " << specimen()[j].id;
    for (const auto& contact : answer.contacts)
      ADD_FAILURE() << idOf(stance) << ": " << specimen()[contact.bone].id << " in " << specimen()[contact.other].id
                    << " by " << contact.depth;
  }
}

// The snout sought up, down, aside and back at the body: the pose is never past a contact, and what stops it is told.
TEST_P(WithContact, AReachStopsWhereBonesWouldCollide) {
  const auto skull = specimen().findBone("skull").value();
  const range::ReachRanges ranges(specimen(), neutral().articulation(), neutral().assumptions(), neutral().contact());
  const Vector3d snout = neutral().placement()[skull.value] * specimen()[skull].landmark("snout");
  const Vector3d base = neutral().placement()[specimen().findBone("D1")->value].translation();
  int stopped = 0;
  for (const Vector3d& way : {Vector3d(0, 0, 9), Vector3d(0, 0, -9), Vector3d(0, 6, 0), Vector3d(-20, 3, 0),
                              Vector3d(-20, 0, -2), Vector3d(-1, 0, 1)}) {
    kinematics::IkGoal goal;
    goal.bone = skull;
    goal.p_BPoint = specimen()[skull].landmark("snout");
    goal.p_WTarget = way.x() == -20 ? Vector3d(base + Vector3d(0, way.y(), way.z())) : Vector3d(snout + way);
    goal.joints = kinematics::dragChain(specimen(), skull);
    const range::ClearReach answer = range::reachClear(neutral(), ranges, neutral().pose(), goal);
    const range::Scenario posed = neutral().withPose(answer.reached.pose);
    for (const JointIndex j : goal.joints)
      EXPECT_FALSE(posed.assessment().find(j)->onlyCollides()) << way.transpose() << " " << specimen()[j].id;
    EXPECT_NEAR((posed.placement()[skull.value] * goal.p_BPoint - answer.reached.p_WPoint).norm(), 0, 1e-9);
    EXPECT_NEAR((answer.reached.p_WPoint - goal.p_WTarget).norm(), answer.reached.distance, 1e-9);
    for (const range::JointStop& stop : answer.stops) stopped += stop.stop.kind == range::FindingKind::BoneContact;
  }
  // In both samples: where no two neighbours of the neck collide, bones farther apart still do.
  EXPECT_GT(stopped, 0);
}

TEST_P(WithContact, ReachSpaceIsNoLargerThanWithout) {
  ReachSpaceOptions coarse;
  coarse.spacing = 0.7;  // at 1 the search without contact misses rays of the low browser
  coarse.bearings = 12;
  coarse.precision = 0.05;
  const auto with = reachSpace(neutral(), coarse), without = reachSpace(neutral().withContact(nullptr), coarse);
  EXPECT_LE(with->volumeWithGround, 1.01 * without->volumeWithGround);
}

TEST_P(WithContact, AnswersAreKeptApartFromThoseWithoutIt) {
  StudyAnswers answers;
  const auto with = answers.run(StudyKind::Elevation, neutral()).result;
  const auto without = answers.run(StudyKind::Elevation, neutral().withContact(nullptr)).result;
  EXPECT_TRUE(contactJudged(*with));
  EXPECT_FALSE(contactJudged(*without));
  EXPECT_EQ(answers.run(StudyKind::Elevation, neutral()).result, with);
}

// Ribs of sculpted vertebrae bend: none of them ends a range of the neck.
TEST_P(WithContact, NoCervicalRibStopsASculptedNeck) {
  for (const JointIndex j : jointsOf(specimen(), Chain::Neck)) {
    for (const int motion : {0, 1, 2}) {
      const auto& band = neutral().motionRange(j, motion);
      for (const auto* stop : {&band.minStop, &band.maxStop}) {
        if (!stop->parts) continue;
        EXPECT_NE(stop->parts->first.part, range::BonePart::Rib) << specimen()[j].id << " " << motion;
        EXPECT_NE(stop->parts->second.part, range::BonePart::Rib) << specimen()[j].id << " " << motion;
      }
    }
  }
}

}  // namespace
}  // namespace zyga::study
