#include "core/kinematics/standing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

#include "core/anatomy/build_specimen.h"
#include "core/anatomy/skeleton_parts.h"

namespace zyga::kinematics {
namespace {

TEST(Standing, ForeAndHindFeetMeetTheGround) {
  for (const anatomy::BodyPlan plan : {anatomy::BodyPlan::HighBrowser, anatomy::BodyPlan::LowBrowser}) {
    anatomy::MeasurementTable table;
    table.plan = plan;
    if (plan == anatomy::BodyPlan::LowBrowser) table.counts = {15, 10, 5, 80};
    const anatomy::Specimen s = anatomy::buildSpecimen(anatomy::fillBlanks(table));
    Pose pose = Pose::neutral(s);
    for (const auto& [id, angles] : anatomy::standingAngles(s)) pose[*s.findJoint(id)] = angles;
    const Articulation rest = restArticulation(s);
    const Pose standing = stand(s, rest, pose);
    const Placement X = place(s, rest, standing);
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
    const double trunkSlope = X[s.findBone("D6")->value].linear()(2, 0);
    const double tailSlope = X[s.findBone("Ca5")->value].linear()(2, 0);
    if (plan == anatomy::BodyPlan::HighBrowser) {
      EXPECT_LT(bladeSlope, 65);
      // Common practice, no source: the front of the trunk is raised and the base of the tail runs near level.
      EXPECT_GT(trunkSlope, std::sin(0.1));
      EXPECT_LT(std::abs(tailSlope), std::sin(0.18));
    }
  }
}

}  // namespace
}  // namespace zyga::kinematics
