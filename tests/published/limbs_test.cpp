#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/plan/limb_rig.h"
#include "core/kinematics/limb_reach.h"
#include "core/kinematics/shoulder_blade.h"
#include "core/kinematics/stand_readings.h"
#include "core/kinematics/standing.h"

namespace zyga {
namespace {

using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::Joint;
using anatomy::Side;
using anatomy::Specimen;
using Eigen::Vector3d;
using kinematics::Articulation;
using kinematics::Pose;

constexpr double kDegree = std::numbers::pi / 180;

BoneIndex addBone(Specimen& s, BoneKind kind, int number, const std::string& id) {
  anatomy::Bone bone;
  bone.name = {kind, number, 0, Side::Left};
  bone.id = id;
  s.bones.push_back(bone);
  return {s.bones.size() - 1};
}

void addJoint(Specimen& s, const std::string& id, BoneIndex proximal, BoneIndex distal, const Vector3d& centre,
              const anatomy::TypedLimits& limits) {
  Joint joint;
  joint.id = id;
  joint.proximal = proximal;
  joint.distal = distal;
  joint.centreProximal = centre;
  joint.axes = anatomy::limbAxes(Side::Left);
  joint.typed = limits;
  s.joints.push_back(joint);
}

/// A hindleg of three straight segments hanging from a pelvis. The third metatarsal's frame is level as the sole lies
/// flat, so that its own slope, between ankle and sole, is that of the foot.
struct ElephantLeg {
  // Angles of thigh, shank and foot to the vertical at mid-stance of an elephant: Ren et al. 2008, J. Exp. Biol.
  // 211:2735, with erratum; lengths are round numbers for the sum.
  static constexpr double kThigh = 1.000, kShank = 0.620, kFoot = 0.150;
  static constexpr double kThighAngle = 7.5 * kDegree, kShankAngle = 23 * kDegree, kFootAngle = 38 * kDegree;
  Specimen s;
  Articulation rest;

  ElephantLeg() {
    const BoneIndex pelvis = addBone(s, BoneKind::Sacral, 1, "S1"), thigh = addBone(s, BoneKind::Femur, 0, "femur.L"),
                    shank = addBone(s, BoneKind::Tibia, 0, "tibia.L"),
                    foot = addBone(s, BoneKind::Metatarsal, 3, "mt3.L");
    const auto wide = anatomy::typedLimits({-1.5, 1.5}, {-0.3, 0.3}, {-0.3, 0.3});
    addJoint(s, "hip.L", pelvis, thigh, Vector3d::Zero(), wide);
    addJoint(s, "knee.L", thigh, shank, {0, 0, -kThigh}, anatomy::typedLimits({-1.5, 0.05}, {0, 0}, {0, 0}));
    addJoint(s, "ankle.L", shank, foot, {0, 0, -kShank}, wide);
    const double slope = anatomy::standingMetatarsalSlope();
    // The bone stands at its usual slope as the sole lies flat; the sole is where a foot of this length and slope ends.
    const Vector3d p_level(kFoot * std::sin(kFootAngle), 0, -kFoot * std::cos(kFootAngle));
    s.bones[foot.value].landmarks["sole"] = Eigen::AngleAxisd(slope, Vector3d::UnitY()) * p_level;
    rest = kinematics::restArticulation(s);
  }
};

// The joint's height over the sole is the sum of the projections: 1680.3 mm, derived.
TEST(PublishedLimbs, ElephantSegmentAnglesCloseALegToTheGround) {
  const ElephantLeg leg;
  const double height = ElephantLeg::kThigh * std::cos(ElephantLeg::kThighAngle) +
                        ElephantLeg::kShank * std::cos(ElephantLeg::kShankAngle) +
                        ElephantLeg::kFoot * std::cos(ElephantLeg::kFootAngle);
  EXPECT_NEAR(height * 1000, 1680.3, 0.1);
  // Placed with these angles the sole lies that far below the hip: thigh forward, shank back, sole flat.
  Pose pose = Pose::neutral(leg.s);
  pose[*leg.s.findJoint("hip.L")][0] = ElephantLeg::kThighAngle;
  pose[*leg.s.findJoint("knee.L")][0] = -ElephantLeg::kThighAngle - ElephantLeg::kShankAngle;
  pose[*leg.s.findJoint("ankle.L")][0] = ElephantLeg::kShankAngle + anatomy::standingMetatarsalSlope();
  const auto X_WB = kinematics::forwardKinematics(leg.s, leg.rest, pose);
  const auto rig = kinematics::footRig(leg.s, kinematics::Foot::LeftHind);
  const Vector3d p_sole = X_WB[rig.bone.value] * rig.p_BSole;
  EXPECT_NEAR(-p_sole.z() * 1000, 1680.3, 0.1);
  EXPECT_NEAR(kinematics::footPlaces(leg.s, X_WB).front().tilt, 0, 1e-9);
  // And the solver closes the same leg: told where the sole is, it finds thigh and shank again.
  Pose standing = Pose::neutral(leg.s);
  standing[*leg.s.findJoint("knee.L")][0] = -0.1;
  const auto answer = kinematics::setFeet(leg.s, leg.rest, standing, {{rig.foot, X_WB[rig.bone.value]}});
  EXPECT_TRUE(answer.still());
  EXPECT_NEAR(answer.pose[*leg.s.findJoint("hip.L")][0] / kDegree, 7.5, 0.01);
  EXPECT_NEAR(answer.pose[*leg.s.findJoint("knee.L")][0] / kDegree, -30.5, 0.01);
}

// Femur 1500, tibia 960, metatarsal III 215 mm with 9 % cartilage: the rule as quoted by Nedin 1996 (secondary source);
// 2916 mm is derived. Four times a hind print of 720 mm (Alexander 1976) is 2880 mm, within 1.3 %.
TEST(PublishedLimbs, HindlimbBonesWithCartilageGiveTheHipHeightOfThePrint) {
  const double hip = kinematics::straightHindlimb(1.500, 0.960, 0.215, 0.09);
  EXPECT_NEAR(hip * 1000, 2916, 0.5);
  EXPECT_LT(std::abs(hip / (4 * 0.720) - 1), 0.013);
}

// At least 55 degrees to the horizontal, 55 to 65 in three genera: Schwarz, Frey & Meyer 2007, Anat. Rec. 290:32.
TEST(PublishedLimbs, ShoulderBladesTakeEverySlopeThatIsPublished) {
  const Specimen s = anatomy::buildSpecimen(anatomy::fillBlanks({}));
  const Articulation rest = kinematics::restArticulation(s);
  Pose pose = Pose::neutral(s);
  for (const auto& [id, angles] : anatomy::standingAngles(s)) pose[*s.findJoint(id)] = angles;
  pose = kinematics::stand(s, rest, pose);
  EXPECT_NEAR(kinematics::kPublishedBladeSlope.min / kDegree, 55, 1e-9);
  EXPECT_NEAR(kinematics::kPublishedBladeSlope.max / kDegree, 65, 1e-9);
  const double standing =
      kinematics::bladePlace(s, pose, kinematics::forwardKinematics(s, rest, pose), Side::Left).slope;
  EXPECT_NEAR(standing / kDegree, 60, 3) << "the default";
  for (double slope = 55; slope <= 65; slope += 2.5) {
    const Pose placed = kinematics::placeBlade(s, rest, pose, Side::Left, {slope * kDegree, 0});
    EXPECT_NEAR(
        kinematics::bladePlace(s, placed, kinematics::forwardKinematics(s, rest, placed), Side::Left).slope / kDegree,
        slope, 1e-6);
  }
}

}  // namespace
}  // namespace zyga
