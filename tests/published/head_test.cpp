// A21. Marugán-Lobón, Chiappe & Farke 2013, PeerJ 1:e124, abstract, read: against the skull the lateral semicircular
// canal varies by about 50 degrees, so that nothing tells how a head was held: it is never levelled unless asked.
#include <gtest/gtest.h>

#include "core/kinematics/bend.h"
#include "core/kinematics/standing.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/range/reach_ranges.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;
using test::kDegree;

/// The high browser's neck.
struct SampleNeck {
  anatomy::Specimen specimen = test::sampleAnimal("high_browser");
  range::Assumptions assumptions = range::grownAnimal();
  Articulation articulation;
  std::unique_ptr<range::ReachRanges> ranges;
  Pose neutral = Pose::neutral(specimen);
  IkGoal snout;  ///< without a target

  SampleNeck() {
    articulation = range::articulate(specimen, assumptions);
    ranges = std::make_unique<range::ReachRanges>(specimen, articulation, assumptions);
    snout.bone = *specimen.findBone("skull");
    snout.joints = neckChain(specimen);
    snout.p_BPoint = specimen[snout.bone].landmark("snout");
  }
};

const SampleNeck& neck() {
  static const SampleNeck made;
  return made;
}

Placement placed(const Pose& pose) { return forwardKinematics(neck().specimen, neck().articulation, pose); }
/// Of the head's long axis over the horizontal, degrees; the animal faces +x.
double pitchOfHead(const Pose& pose) {
  const Vector3d ahead = placed(pose)[neck().snout.bone.value].linear().col(0);
  return std::atan2(ahead.z(), ahead.x()) / kDegree;
}
Vector3d& headJoint(Pose& pose) { return pose[*neck().specimen.findJoint("skull-C1")]; }

TEST(PublishedHead, ANeckThatRisesTakesTheHeadWithIt) {
  Pose pose = neck().neutral;
  double raised = 0;
  for (const char* id : {"C12-C13", "C11-C12", "C10-C11", "C9-C10"}) {
    pose[*neck().specimen.findJoint(id)].x() = 5 * kDegree;
    raised += 5;
  }
  EXPECT_NEAR(pitchOfHead(pose) - pitchOfHead(neck().neutral), raised, 1e-6);
  // Standing the animal on its feet turns it as a whole, and leaves the joint of the head alone.
  headJoint(pose) = Vector3d(0.1, -0.05, 0.02);
  Pose stood = stand(neck().specimen, neck().articulation, pose);
  EXPECT_EQ(headJoint(stood), headJoint(pose));
}

TEST(PublishedHead, ADragOfTheNeckLeavesTheJointOfTheHeadAlone) {
  IkGoal goal;
  EXPECT_TRUE(goal.directions.empty()) << "no gaze is asked for unless somebody does";
  goal.bone = *neck().specimen.findBone("C4");
  goal.joints = dragChain(neck().specimen, goal.bone);
  const auto X_WB = placed(neck().neutral);
  goal.p_WTarget = X_WB[goal.bone.value] * goal.p_BPoint + Vector3d(-0.2, 0, 0.8);
  Pose start = neck().neutral;
  headJoint(start) = Vector3d(-0.2, 0.1, 0);
  IkResult result = reach(neck().specimen, neck().articulation, *neck().ranges, start, goal);
  EXPECT_EQ(headJoint(result.pose), headJoint(start));
  EXPECT_GT(pitchOfHead(result.pose) - pitchOfHead(start), 5) << "the head goes where the neck takes it";
}

TEST(PublishedHead, ReachingLevelsTheHeadOnlyWhereThatIsAsked) {
  const auto towards = [](double turn, bool level) {
    Pose there = neck().neutral;
    for (const char* id : {"C12-C13", "C11-C12", "C10-C11"}) there[*neck().specimen.findJoint(id)].x() = turn;
    IkGoal goal = neck().snout;
    goal.p_WTarget = placed(there)[goal.bone.value] * goal.p_BPoint;
    if (level) goal.directions = {{Vector3d::UnitX(), Vector3d::UnitX()}};
    const IkResult result = reach(neck().specimen, neck().articulation, *neck().ranges, neck().neutral, goal);
    EXPECT_TRUE(result.reached) << turn;
    return pitchOfHead(result.pose);
  };
  const double up = towards(4 * kDegree, false), down = towards(-4 * kDegree, false);
  EXPECT_GT(up, down + 3) << "left to itself the head goes with the neck";
  EXPECT_NEAR(towards(4 * kDegree, true), 0, 1) << "asked, it is level";
  EXPECT_NEAR(towards(-4 * kDegree, true), 0, 1);
}

}  // namespace
}  // namespace zyga::kinematics
