#include <gtest/gtest.h>

#include <cmath>

#include "core/anatomy/plan/limb_rig.h"

namespace zyga::anatomy {
namespace {

MeasurementTable blankTable(BodyPlan plan) {
  MeasurementTable table;
  table.plan = plan;
  if (plan == BodyPlan::LowBrowser) table.counts = {15, 10, 5, 80};
  return table;
}

const Specimen& animal(BodyPlan plan) {
  static const Specimen high = buildSpecimen(fillBlanks(blankTable(BodyPlan::HighBrowser)));
  static const Specimen low = buildSpecimen(fillBlanks(blankTable(BodyPlan::LowBrowser)));
  return plan == BodyPlan::HighBrowser ? high : low;
}

constexpr BodyPlan kPlans[] = {BodyPlan::HighBrowser, BodyPlan::LowBrowser};

bool isLimb(const BoneName& name) { return name.kind >= BoneKind::Scapula; }

void measure(MeasurementTable& table, const BoneName& name, double millimetres) {
  TableRow row{name, {}, Evidence::Found, ""};
  row.measures[Measure::Length] = {millimetres / 1000, CellOrigin::Measured, {}};
  table.rows.push_back(row);
}

/// Frames with the limbs turned as they stand, in the root's frame.
std::vector<Eigen::Isometry3d> standingFrames(const Specimen& specimen) {
  const auto angles = standingAngles(specimen);
  Specimen turned = specimen;
  for (Joint& joint : turned.joints) {
    const auto turn = angles.find(joint.id);
    if (turn == angles.end()) continue;
    for (int k = 0; k < 3; ++k)
      joint.restRotation = joint.restRotation * Eigen::AngleAxisd(turn->second[k], joint.axes[k]).toRotationMatrix();
  }
  return restFrames(turned);
}

Eigen::Vector3d placeOf(const Specimen& specimen, const std::vector<Eigen::Isometry3d>& X_RB, const std::string& id,
                        const std::string& landmark) {
  const BoneIndex bone = *specimen.findBone(id);
  return X_RB[bone.value] * specimen[bone].landmark(landmark);
}

TEST(LimbBones, AxesSwingTheLimbTheAnatomicalWay) {
  for (Side side : {Side::Left, Side::Right}) {
    const double out = side == Side::Left ? 1 : -1;
    const auto axes = limbAxes(side);
    const Eigen::Vector3d foot(0, 0, -1), face(1, 0, 0);
    EXPECT_GT((Eigen::AngleAxisd(0.3, axes[0]) * foot).x(), 0.2);
    EXPECT_GT((Eigen::AngleAxisd(0.3, axes[1]) * foot).y() * out, 0.2);
    EXPECT_LT((Eigen::AngleAxisd(0.3, axes[2]) * face).y() * out, -0.2);
  }
}

TEST(LimbBones, RightSideIsTheMirrorOfTheLeft) {
  for (BodyPlan plan : kPlans) {
    const Specimen& specimen = animal(plan);
    const auto X_RB = restFrames(specimen);
    const Eigen::Matrix3d mirror = Eigen::Vector3d(1, -1, 1).asDiagonal();
    for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
      const Bone& left = specimen.bones[i];
      if (!isLimb(left.name) || left.name.side != Side::Left) continue;
      const BoneIndex other = *specimen.findBone(toId(mirrored(left.name)));
      EXPECT_TRUE((mirror * X_RB[i].translation()).isApprox(X_RB[other.value].translation(), 1e-9)) << left.id;
      EXPECT_TRUE((mirror * X_RB[i].linear() * mirror).isApprox(X_RB[other.value].linear(), 1e-9)) << left.id;
      for (const auto& [name, p] : left.landmarks)
        EXPECT_TRUE((mirror * p).isApprox(specimen[other].landmark(name), 1e-12)) << left.id << " " << name;
    }
  }
}

TEST(LimbBones, EqualAnglesOnBothSidesGiveMirroredFeet) {
  Specimen specimen = animal(BodyPlan::HighBrowser);
  for (Joint& joint : specimen.joints) {
    if (joint.kind != JointKind::Typed || !isLimb(specimen[joint.distal].name)) continue;
    for (int k = 0; k < 3; ++k)
      joint.restRotation = joint.restRotation * Eigen::AngleAxisd(0.1 * (k + 1), joint.axes[k]).toRotationMatrix();
  }
  const auto X_RB = restFrames(specimen);
  for (const char* foot : {"manus1.2", "manus3.1", "pes1.2", "pes3.4", "scapula", "femur"}) {
    const Eigen::Vector3d left = placeOf(specimen, X_RB, std::string(foot) + ".L", "distal");
    const Eigen::Vector3d right = placeOf(specimen, X_RB, std::string(foot) + ".R", "distal");
    EXPECT_NEAR(left.x(), right.x(), 1e-9) << foot;
    EXPECT_NEAR(left.y(), -right.y(), 1e-9) << foot;
    EXPECT_NEAR(left.z(), right.z(), 1e-9) << foot;
  }
}

TEST(LimbBones, EveryMovingJointHasTypedLimitsThatHoldZeroAndSayWhose) {
  for (BodyPlan plan : kPlans) {
    int moving = 0;
    for (const Joint& joint : animal(plan).joints) {
      const BoneName& name = animal(plan)[joint.distal].name;
      if (!isLimb(name) && regionOf(name) != Region::Skull) continue;
      if (joint.kind == JointKind::Fixed) continue;
      ++moving;
      ASSERT_EQ(joint.kind, JointKind::Typed) << joint.id;
      ASSERT_TRUE(joint.typed) << joint.id;
      EXPECT_EQ(joint.typed->source, kProgramDefault) << joint.id;
      for (const AngleLimits& limits : joint.typed->angles) {
        EXPECT_LE(limits.min, 0) << joint.id;
        EXPECT_GE(limits.max, 0) << joint.id;
        EXPECT_LT(std::abs(limits.min) + std::abs(limits.max), 3.15) << joint.id << ": rad, not degrees";
      }
      EXPECT_GT(joint.typed->angles[0].max - joint.typed->angles[0].min, 0) << joint.id;
    }
    // Head and jaw; a side: blade, shoulder, elbow, wrist, 6 fingers, hip, knee, ankle, 12 toe bones.
    EXPECT_EQ(moving, 2 + 2 * (4 + 6 + 3 + 12));
  }
}

TEST(LimbBones, StandingAnglesAreInsideTheLimits) {
  const Specimen& specimen = animal(BodyPlan::HighBrowser);
  const auto angles = standingAngles(specimen);
  EXPECT_EQ(angles.size(), 8u);
  for (const auto& [id, turn] : angles) {
    const Joint& joint = specimen[*specimen.findJoint(id)];
    for (int k = 0; k < 3; ++k) {
      EXPECT_GE(turn[k], joint.typed->angles[k].min) << id;
      EXPECT_LE(turn[k], joint.typed->angles[k].max) << id;
    }
  }
}

TEST(LimbBones, NothingIsPlacedBeforeWhatCarriesIt) {
  const Specimen& specimen = animal(BodyPlan::LowBrowser);
  std::vector<bool> placed(specimen.bones.size(), false);
  placed[0] = true;
  for (const Joint& joint : specimen.joints) {
    EXPECT_TRUE(placed[joint.proximal.value]) << joint.id;
    EXPECT_FALSE(placed[joint.distal.value]) << joint.id;
    placed[joint.distal.value] = true;
  }
}

// No bone of a standing foot reaches below its sole (common practice, no source: the sole has a pad below the bones).
TEST(LimbBones, BonesStandOnTheirSoles) {
  for (BodyPlan plan : kPlans) {
    const Specimen& specimen = animal(plan);
    const auto X_RB = standingFrames(specimen);
    const double hand = placeOf(specimen, X_RB, "metacarpal3.L", "sole").z();
    const double foot = placeOf(specimen, X_RB, "metatarsal3.L", "sole").z();
    for (const Bone& bone : specimen.bones) {
      if (bone.name.side != Side::Left || !isLimb(bone.name)) continue;
      const Region region = regionOf(bone.name);
      const double ground = region == Region::Manus ? hand : foot;
      if (region != Region::Manus && region != Region::Pes) continue;
      for (const char* name : {"proximal", "distal"})
        EXPECT_GT(placeOf(specimen, X_RB, bone.id, name).z(), ground) << bone.id << " " << name;
    }
  }
}

// Upright forefoot, thigh near vertical, upper arm sloping back: common practice, no source.
TEST(LimbBones, StandsLikeAColumn) {
  const Specimen& specimen = animal(BodyPlan::HighBrowser);
  const auto X_RB = standingFrames(specimen);
  const auto slope = [&](const std::string& id) {
    const Eigen::Vector3d up = X_RB[specimen.findBone(id)->value].linear().col(2);
    return std::atan2(-up.x(), up.z()) * 180 / 3.14159265358979;  // + when the lower end lies forward
  };
  EXPECT_NEAR(slope("femur.L"), 10, 0.01);
  EXPECT_NEAR(slope("tibia.L"), 3, 0.01);
  EXPECT_NEAR(slope("humerus.R"), -15, 0.01);
  EXPECT_NEAR(slope("metacarpal3.R"), 0, 0.01);
  EXPECT_NEAR(slope("metatarsal3.R"), 50, 0.01);
}

TEST(LimbBones, ShoulderBladeLiesOutsideTheRibs) {
  for (BodyPlan plan : kPlans) {
    const Specimen& specimen = animal(plan);
    const auto X_RB = restFrames(specimen);
    const Eigen::Vector3d blade = X_RB[specimen.findBone("scapula.L")->value].translation();
    for (int rib : {2, 3, 4, 5}) {
      const Eigen::Vector3d middle = placeOf(specimen, X_RB, "rib.D" + std::to_string(rib) + ".L", "middle");
      if (std::abs(middle.x() - blade.x()) > 0.15) continue;
      EXPECT_GT(blade.y(), middle.y()) << "rib " << rib;
    }
  }
}

// Metacarpals 204, 266, 255, 236, 208 mm with a humerus of 705, metatarsals 113, 134, 133, 112, 108 with a femur of
// 935: third to humerus 0.362, third to femur 0.142. Tschopp et al. 2015, Palaeontol. Electron. 18.2.44A, read.
TEST(LimbBones, PublishedHandAndFootKeepTheirProportions) {
  MeasurementTable table = blankTable(BodyPlan::HighBrowser);
  measure(table, {BoneKind::Humerus, 0, 0, Side::Left}, 705);
  measure(table, {BoneKind::Femur, 0, 0, Side::Left}, 935);
  const double palm[] = {204, 266, 255, 236, 208}, sole[] = {113, 134, 133, 112, 108};
  for (int digit = 1; digit <= 5; ++digit) {
    measure(table, {BoneKind::Metacarpal, digit, 0, Side::Left}, palm[digit - 1]);
    measure(table, {BoneKind::Metatarsal, digit, 0, Side::Left}, sole[digit - 1]);
  }
  const Specimen specimen = buildSpecimen(fillBlanks(table));
  const auto span = [&](const std::string& id) {
    const Bone& bone = specimen[*specimen.findBone(id)];
    return (bone.landmark("top") - bone.landmark("bottom")).norm();
  };
  for (const std::string side : {".L", ".R"}) {
    EXPECT_NEAR(span("metacarpal3" + side) / span("humerus" + side), 0.362, 0.0005);
    EXPECT_NEAR(span("metatarsal3" + side) / span("femur" + side), 0.142, 0.0005);
    EXPECT_NEAR(span("metacarpal2" + side), 0.266, 1e-9);
    EXPECT_NEAR(span("metatarsal5" + side), 0.108, 1e-9);
  }
}

TEST(LimbBones, MetacarpalsStandInACrescentOpenBehind) {
  const Specimen& specimen = animal(BodyPlan::HighBrowser);
  const auto X_RB = restFrames(specimen);
  const auto at = [&](int digit) {
    return X_RB[specimen.findBone("metacarpal" + std::to_string(digit) + ".L")->value].translation();
  };
  for (int digit = 1; digit < 5; ++digit) EXPECT_LT(at(digit).y(), at(digit + 1).y()) << "thumb innermost";
  EXPECT_GT(at(3).x(), at(2).x());
  EXPECT_GT(at(2).x(), at(1).x());
  EXPECT_GT(at(3).x(), at(4).x());
  EXPECT_GT(at(4).x(), at(5).x());
}

TEST(LimbBones, CoracoidHasGrownIntoTheBlade) {
  const Specimen& specimen = animal(BodyPlan::HighBrowser);
  for (const std::string side : {".L", ".R"})
    EXPECT_EQ(specimen[*specimen.findBone("coracoid" + side)].fusedInto, specimen.findBone("scapula" + side));
}

TEST(LimbBones, JawOpensDownwards) {
  const Specimen& specimen = animal(BodyPlan::HighBrowser);
  const Joint& jaw = specimen[*specimen.findJoint("jaw")];
  const Eigen::Vector3d chin = specimen[jaw.distal].landmark("chin");
  const double widest = jaw.typed->angles[0].min;
  EXPECT_LT(widest, -0.3);
  EXPECT_LT((Eigen::AngleAxisd(widest, jaw.axes[0]) * chin).z(), chin.z());
}

TEST(LimbBones, HeadIsTippedDownAgainstTheNeck) {
  for (BodyPlan plan : kPlans) {
    const Joint& neck = animal(plan)[*animal(plan).findJoint("skull-C1")];
    const Eigen::Vector3d snout = neck.restRotation * Eigen::Vector3d::UnitX();
    const double tip = std::asin(-snout.z()) * 180 / 3.14159265358979;
    EXPECT_GE(tip, 30);
    EXPECT_LE(tip, 40);
  }
}

}  // namespace
}  // namespace zyga::anatomy
