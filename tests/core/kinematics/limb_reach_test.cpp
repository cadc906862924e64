#include "core/kinematics/limb_reach.h"

#include <gtest/gtest.h>

#include <numbers>
#include <random>

#include "core/kinematics/standing.h"
#include "tests/core/kinematics/standing_animal.h"

namespace zyga::kinematics {
namespace {

using Eigen::Isometry3d;
using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;

/// The root turned about a point 1.3 m before it, in the middle of the trunk, and moved.
Isometry3d moved(const Pose& pose, const Vector3d& way, const Vector3d& turn) {
  const Vector3d middle = pose.X_WRoot * Vector3d(1.3, 0, 0);
  Isometry3d X(Eigen::AngleAxisd(turn.norm(), turn.normalized()));
  X.translation() = middle - X.linear() * middle + way;
  return X * pose.X_WRoot;
}

void expectInsideTypedRanges(const anatomy::Specimen& s, const Pose& pose) {
  for (const FootRig& rig : footRigs(s)) {
    for (const JointIndex j : rig.joints) {
      if (!s[j].typed) continue;
      for (int k = 0; k < 3; ++k) {
        EXPECT_GE(pose[j][k], s[j].typed->angles[k].min - 1e-12) << s[j].id << " motion " << k;
        EXPECT_LE(pose[j][k], s[j].typed->angles[k].max + 1e-12) << s[j].id << " motion " << k;
      }
    }
  }
}

double soleTravel(const anatomy::Specimen& s, const Articulation& rest, const Pose& a, const Pose& b) {
  const Placement A = forwardKinematics(s, rest, a), B = forwardKinematics(s, rest, b);
  double most = 0;
  for (const SolePoint& sole : solePoints(s))
    most = std::max(most, (A[sole.bone.value] * sole.p_BSole - B[sole.bone.value] * sole.p_BSole).norm());
  return most;
}

TEST(LimbReach, PlantedFeetStayWhileTheTrunkMoves) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> any(-1, 1);
  for (const anatomy::BodyPlan plan : {anatomy::BodyPlan::HighBrowser, anatomy::BodyPlan::LowBrowser}) {
    const StandingAnimal a(plan);
    const std::vector<Foot> all(kFeet.begin(), kFeet.end());
    for (int i = 0; i < 100; ++i) {
      // What the legs can follow: they stand nearly straight, so that up is short.
      const Vector3d way{0.2 * any(random), 0.08 * any(random), -0.20 + 0.08 * any(random)};
      const Vector3d turn = kDegree * Vector3d{1.5 * any(random), 3 * any(random), 2 * any(random)};
      const FeetAnswer answer = moveTrunk(a.s, a.rest, a.pose, moved(a.pose, way, turn), all);
      EXPECT_TRUE(answer.hold()) << "worst miss " << answer.worstMiss() * 1e3 << " mm, way " << way.transpose();
      EXPECT_LT(soleTravel(a.s, a.rest, a.pose, answer.pose), 1e-4);
      expectInsideTypedRanges(a.s, answer.pose);
    }
  }
}

TEST(LimbReach, WhereTheLegsEndTheFeetComeOffAndATrunkThatWaitsStops) {
  const StandingAnimal a;
  const std::vector<Foot> all(kFeet.begin(), kFeet.end());
  const Isometry3d X_WRoot = moved(a.pose, {0, 0, 1.0}, Vector3d::UnitX() * 1e-9);
  const FeetAnswer answer = moveTrunk(a.s, a.rest, a.pose, X_WRoot, all);
  expectInsideTypedRanges(a.s, answer.pose);
  for (const LegFit& fit : answer.fits) {
    EXPECT_GT(fit.miss, 0.3) << toText(fit.foot);
    EXPECT_LT(fit.miss, 1.0) << toText(fit.foot);
  }
  // The trunk that waits for its feet stops on the way, with all of them where they were.
  const FeetAnswer within = moveTrunkWithin(a.s, a.rest, a.pose, X_WRoot, all);
  EXPECT_TRUE(within.hold());
  EXPECT_LT(soleTravel(a.s, a.rest, a.pose, within.pose), 1e-4);
  const double rise = within.pose.X_WRoot.translation().z() - a.pose.X_WRoot.translation().z();
  EXPECT_GT(rise, 0.002);
  EXPECT_LT(rise, 0.5);
}

TEST(LimbReach, TheJointThatStopsAFootIsNamed) {
  const StandingAnimal a;
  const FootRig rig = footRig(a.s, Foot::LeftHind);
  const Placement X_WB = forwardKinematics(a.s, a.rest, a.pose);
  Isometry3d X = X_WB[rig.bone.value];
  // Stretched out behind, farther than the hip turns back but no farther from it than the leg is long.
  X.translation() += Vector3d(-2.5, 0, 2.2);
  const FeetAnswer answer = setFeet(a.s, a.rest, a.pose, {{rig.foot, X}});
  const LegFit& fit = answer.fits.front();
  EXPECT_FALSE(fit.holds());
  EXPECT_EQ(std::count(fit.stopping.begin(), fit.stopping.end(), a.joint("hip.L")), 1);
  EXPECT_NEAR(answer.pose[a.joint("hip.L")][0], a.s[a.joint("hip.L")].typed->angles[0].min, 1e-12);
}

TEST(LimbReach, WhatTheRightLegDoesTheLeftDoesMirrored) {
  const StandingAnimal a;
  for (const bool fore : {true, false}) {
    const Foot left = fore ? Foot::LeftFore : Foot::LeftHind, right = fore ? Foot::RightFore : Foot::RightHind;
    const Placement X_WB = forwardKinematics(a.s, a.rest, a.pose);
    const auto shifted = [&](Foot foot, const Vector3d& way) {
      Isometry3d X = X_WB[footRig(a.s, foot).bone.value];
      X.translation() += way;
      return LegTask{foot, X};
    };
    const FeetAnswer answer =
        setFeet(a.s, a.rest, a.pose, {shifted(left, {0.3, 0.15, 0.2}), shifted(right, {0.3, -0.15, 0.2})});
    EXPECT_TRUE(answer.hold());
    const FootRig l = footRig(a.s, left), r = footRig(a.s, right);
    for (std::size_t i = 0; i < l.joints.size(); ++i)
      EXPECT_TRUE(answer.pose[l.joints[i]].isApprox(answer.pose[r.joints[i]], 1e-6)) << a.s[l.joints[i]].id;
  }
}

TEST(LimbReach, AnyPoseInsideTheRangesIsFoundAgain) {
  // Known by construction: the task is read off a leg whose angles were drawn inside its ranges.
  std::mt19937 random(11);
  std::uniform_real_distribution<double> share(0.02, 0.98);
  const StandingAnimal a;
  int found = 0, all = 0;
  double worst = 0;
  for (int i = 0; i < 100; ++i) {
    for (const FootRig& rig : footRigs(a.s)) {
      Pose drawn = a.pose;
      for (const JointIndex j : rig.joints) {
        if (!a.s[j].typed) continue;
        for (int k = 0; k < 3; ++k) {
          const anatomy::AngleLimits& limits = a.s[j].typed->angles[k];
          drawn[j][k] = limits.min + share(random) * (limits.max - limits.min);
        }
      }
      const Isometry3d X_WFoot = forwardKinematics(a.s, a.rest, drawn)[rig.bone.value];
      const FeetAnswer answer = setFeet(a.s, a.rest, a.pose, {{rig.foot, X_WFoot}});
      ++all;
      found += answer.hold() && answer.fits.front().tilt < 0.5 * kDegree;
      worst = std::max(worst, answer.worstMiss());
      expectInsideTypedRanges(a.s, answer.pose);
    }
  }
  EXPECT_EQ(all, 400);
  EXPECT_GE(found, 396) << "worst miss " << worst * 1e3 << " mm";
}

TEST(LimbReach, ALiftedFootComesDownFlatAndTheOthersStay) {
  const StandingAnimal a;
  for (const Foot foot : kFeet) {
    const FeetAnswer lifted = liftFoot(a.s, a.rest, a.pose, foot, 0.3, 30 * kDegree);
    EXPECT_TRUE(lifted.hold()) << toText(foot);
    const std::vector<Foot> planted = plantedFeet(a.s, forwardKinematics(a.s, a.rest, lifted.pose));
    EXPECT_EQ(planted.size(), 3u) << toText(foot);
    EXPECT_EQ(std::count(planted.begin(), planted.end(), foot), 0) << toText(foot);
    const FeetAnswer down = plantFeet(a.s, a.rest, lifted.pose, {foot});
    EXPECT_TRUE(down.hold()) << toText(foot);
    for (const FootPlace& place_ : footPlaces(a.s, forwardKinematics(a.s, a.rest, down.pose))) {
      EXPECT_NEAR(place_.height, 0, 1e-4) << toText(place_.foot);
      EXPECT_LT(place_.tilt, 0.2 * kDegree) << toText(place_.foot);
    }
  }
}

TEST(LimbReach, AnswersBelongToTheTaskNotToTheWay) {
  const StandingAnimal a;
  const FootRig rig = footRig(a.s, Foot::RightFore);
  Isometry3d X = forwardKinematics(a.s, a.rest, a.pose)[rig.bone.value];
  X.translation() += Vector3d(0.2, 0, 0.1);
  const FeetAnswer once = setFeet(a.s, a.rest, a.pose, {{rig.foot, X}});
  const FeetAnswer again = setFeet(a.s, a.rest, once.pose, {{rig.foot, X}});
  for (const JointIndex j : rig.joints) EXPECT_TRUE(once.pose[j].isApprox(again.pose[j], 1e-5)) << a.s[j].id;
}

}  // namespace
}  // namespace zyga::kinematics
