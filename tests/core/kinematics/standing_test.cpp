#include "core/kinematics/standing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

#include "core/kinematics/limb_reach.h"
#include "core/kinematics/stand_readings.h"
#include "tests/core/kinematics/standing_animal.h"

namespace zyga::kinematics {
namespace {

constexpr double kDegree = std::numbers::pi / 180;

TEST(Standing, ForeAndHindFeetMeetTheGround) {
  for (const anatomy::BodyPlan plan : {anatomy::BodyPlan::HighBrowser, anatomy::BodyPlan::LowBrowser}) {
    const StandingAnimal animal(plan);
    const anatomy::Specimen& s = animal.s;
    const Placement X = forwardKinematics(s, animal.rest, animal.pose);
    double fore = 1e9, hind = 1e9;
    for (const SolePoint& sole : solePoints(s)) {
      const double z = (X[sole.bone.value] * sole.p_BSole).z();
      const bool isFore = anatomy::regionOf(s[sole.bone].name) == anatomy::Region::Manus;
      (isFore ? fore : hind) = std::min(isFore ? fore : hind, z);
    }
    EXPECT_NEAR(fore, 0, 1e-6) << "lowest sole of the fore feet, m";
    EXPECT_NEAR(hind, 0, 1e-6) << "lowest sole of the hind feet, m";
    // The blade stands at 55 degrees to the horizontal or more, 55 to 65 in three genera: Schwarz, Frey & Meyer 2007,
    // Anat. Rec. 290:32.
    const Eigen::Vector3d blade = X[s.findBone("scapula.L")->value].linear().col(2);
    const double bladeSlope = std::atan2(blade.z(), -blade.x()) * 180 / std::numbers::pi;
    EXPECT_GT(bladeSlope, 55);
    EXPECT_LT(bladeSlope, 75);
    const StandReadings r = readStand(s, X);
    EXPECT_NEAR(r.bladeSlope[0] / kDegree, bladeSlope, 1e-9);
    if (plan == anatomy::BodyPlan::HighBrowser) {
      EXPECT_LT(bladeSlope, 65);
      // Common practice, no source: the front of the trunk is raised and the base of the tail runs near level.
      EXPECT_GT(r.trunkSlope, 6 * kDegree);
      EXPECT_LT(r.trunkSlope, 20 * kDegree);
      EXPECT_LT(std::abs(r.tailBaseSlope), 10 * kDegree);
    }
  }
}

double lowestSole(const StandingAnimal& a, const Pose& pose, Foot foot) {
  for (const FootPlace& at : footPlaces(a.s, forwardKinematics(a.s, a.rest, pose))) {
    if (at.foot == foot) return at.height;
  }
  return NAN;
}

TEST(Standing, StandingTwiceIsStandingOnce) {
  const StandingAnimal a;
  const Pose again = stand(a.s, a.rest, a.pose);
  EXPECT_TRUE(again.X_WRoot.isApprox(a.pose.X_WRoot, 1e-9));
  for (std::size_t j = 0; j < a.pose.angles.size(); ++j) EXPECT_TRUE(again.angles[j].isApprox(a.pose.angles[j], 1e-8));
}

TEST(Standing, KeepsItsPlaceAndHeading) {
  const StandingAnimal a;
  Pose elsewhere = a.pose;
  const Eigen::Isometry3d X =
      Eigen::Translation3d(3, -2, 0.7) * Eigen::Isometry3d(Eigen::AngleAxisd(0.8, Eigen::Vector3d::UnitZ()));
  elsewhere.X_WRoot = X * a.pose.X_WRoot;
  const Pose standing = stand(a.s, a.rest, elsewhere);
  Eigen::Isometry3d expected = elsewhere.X_WRoot;
  expected.translation().z() -= 0.7;
  EXPECT_TRUE(standing.X_WRoot.isApprox(expected, 1e-8));
}

TEST(Standing, ShorterLegsOnOneSideRollTheTrunk) {
  const StandingAnimal a;
  const Placement X = forwardKinematics(a.s, a.rest, a.pose);
  const double hips = X[a.s.findBone("femur.L")->value].translation().y();
  const double shoulders = X[a.s.findBone("humerus.L")->value].translation().y();
  constexpr double kRoll = 1.5 * kDegree;
  EXPECT_NEAR(readStand(a.s, X).roll, 0, 1e-9);
  for (const bool left : {true, false}) {
    // The limbs hang from the trunk, so that a roll lowers each by the height its hip or shoulder comes down.
    Pose shorter =
        liftFoot(a.s, a.rest, a.pose, left ? Foot::LeftHind : Foot::RightHind, 2 * hips * std::sin(kRoll), 0).pose;
    shorter =
        liftFoot(a.s, a.rest, shorter, left ? Foot::LeftFore : Foot::RightFore, 2 * shoulders * std::sin(kRoll), 0)
            .pose;
    const Pose standing = stand(a.s, a.rest, shorter);
    for (const Foot foot : kFeet) EXPECT_NEAR(lowestSole(a, standing, foot), 0, 1e-3) << toText(foot);
    const double roll = readStand(a.s, forwardKinematics(a.s, a.rest, standing)).roll;
    EXPECT_NEAR(roll, left ? -kRoll : kRoll, 0.05 * kDegree) << "it leans to the shorter side";
  }
}

TEST(Standing, AFootHeldUpDoesNotCarry) {
  const StandingAnimal a;
  const FeetAnswer lifted = liftFoot(a.s, a.rest, a.pose, Foot::RightFore, 0.35, 0.3);
  const std::vector<Foot> carrying = carryingFeet(a.s, a.rest, lifted.pose);
  EXPECT_EQ(carrying, (std::vector{Foot::LeftHind, Foot::LeftFore, Foot::RightHind}));
  const Pose standing = stand(a.s, a.rest, lifted.pose);
  EXPECT_TRUE(standing.X_WRoot.isApprox(a.pose.X_WRoot, 1e-6));
  EXPECT_NEAR(lowestSole(a, standing, Foot::RightFore), lowestSole(a, lifted.pose, Foot::RightFore), 1e-6);
}

TEST(Standing, NoFootIsEverUnderGroundAndThreeAreOnIt) {
  const StandingAnimal a;
  for (const double bend : {-8.0, -4.0, 4.0, 8.0}) {
    for (const char* id : {"hip.L", "elbow.R"}) {
      Pose pose = a.pose;
      pose[a.joint(id)][0] += bend * kDegree;
      if (pose[a.joint(id)][0] < a.s[a.joint(id)].typed->angles[0].min) continue;
      const Pose standing = stand(a.s, a.rest, pose, {kFeet.begin(), kFeet.end()});
      int on = 0;
      for (const FootPlace& at : footPlaces(a.s, forwardKinematics(a.s, a.rest, standing))) {
        EXPECT_GT(at.height, -1e-6) << id << " " << bend << " " << toText(at.foot);
        on += at.height < 1e-6;
      }
      EXPECT_GE(on, 3) << id << " " << bend;
    }
  }
}

TEST(Standing, ReadingsFollowTheTrunk) {
  const StandingAnimal a;
  const StandReadings r = readStand(a.s, forwardKinematics(a.s, a.rest, a.pose));
  Pose tilted = a.pose;
  tilted.X_WRoot.linear() = Eigen::AngleAxisd(-0.2, Eigen::Vector3d::UnitY()) * tilted.X_WRoot.linear();
  tilted.X_WRoot.translation().z() += 0.5;
  const StandReadings t = readStand(a.s, forwardKinematics(a.s, a.rest, tilted));
  EXPECT_NEAR(t.trunkSlope, r.trunkSlope + 0.2, 1e-9);
  EXPECT_NEAR(t.neckBaseSlope, r.neckBaseSlope + 0.2, 1e-9);
  EXPECT_NEAR(t.tailBaseSlope, r.tailBaseSlope - 0.2, 1e-9);
  EXPECT_NEAR(t.glenoacetabular, r.glenoacetabular, 1e-9);
  EXPECT_NEAR(t.bladeSlope[0], r.bladeSlope[0] - 0.2, 1e-9);
  EXPECT_GT(t.shoulderHeight - t.hipHeight, r.shoulderHeight - r.hipHeight);
  // A trunk of bones: longer than its dorsals less the overhang of hip and shoulder, shorter than presacral plus
  // sacrum.
  EXPECT_GT(r.glenoacetabular, 2.0);
  EXPECT_LT(r.glenoacetabular, 4.2);
}

}  // namespace
}  // namespace zyga::kinematics
