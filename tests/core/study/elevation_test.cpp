#include "core/study/reach/elevation.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/kinematics/standing.h"
#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "tests/support/sample_animal.h"
#include "tests/support/small_neck.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// Snout of a chain of links by hand: (ahead of the base, over the base), m.
Vector2d snoutByHand(const std::vector<double>& links, const std::vector<double>& angles) {
  Vector2d at(0, 0);
  double slope = 0;
  for (std::size_t i = 0; i < links.size(); ++i) {
    slope += angles[i];
    at += links[i] * Vector2d(std::cos(slope), std::sin(slope));
  }
  return at;
}

class SmallElevation : public testing::Test {
 protected:
  Elevation found() const {
    return elevation({std::make_shared<const anatomy::Specimen>(specimen_), assumptions_, articulation_, pose_});
  }

  anatomy::Specimen specimen_ = test::smallNeck();
  range::Assumptions assumptions_ = range::grownAnimal();
  kinematics::Articulation articulation_ = kinematics::restArticulation(specimen_);
  kinematics::Pose pose_ = test::smallPose(specimen_, 3);
};

// A neck of three joints and links of 1, 1, 1 m, head 0.5 m, each joint from -0.3 to 0.4 rad.
TEST_F(SmallElevation, HeadHeightsOfThreeJointsByTrigonometry) {
  const Elevation e = found();
  const auto height = [&](double angle) { return 3 + snoutByHand({1, 1, 1, 0.5}, {angle, angle, angle, 0}).y(); };
  EXPECT_NEAR(e[NeckCarriage::Neutral].carriage.snoutHeight, 3, 1e-12);
  EXPECT_NEAR(e[NeckCarriage::Dorsal].carriage.snoutHeight, height(0.4), 1e-12);
  EXPECT_NEAR(e[NeckCarriage::Ventral].carriage.snoutHeight, height(-0.3), 1e-12);
}

TEST_F(SmallElevation, SlopesOfBaseNeckAndHead) {
  const ElevationCase up = found()[NeckCarriage::Dorsal];
  const Vector2d end = snoutByHand({1, 1, 1}, {0.4, 0.4, 0.4});
  EXPECT_NEAR(up.baseSlope, 0.4, 1e-12);
  EXPECT_NEAR(up.headSlope, 1.2, 1e-12);
  EXPECT_NEAR(up.carriage.slope, std::atan2(end.y(), end.x()), 1e-12);
}

TEST_F(SmallElevation, HeadKeepsItsAngleOnTheNeck) {
  pose_[*specimen_.findJoint("skull-C1")][0] = -0.7;
  const ElevationCase up = found()[NeckCarriage::Dorsal];
  EXPECT_NEAR(up.carriage.snoutHeight, 3 + snoutByHand({1, 1, 1, 0.5}, {0.4, 0.4, 0.4, -0.7}).y(), 1e-12);
}

TEST_F(SmallElevation, LineRunsOverTheCentresOfRotationToTheSnout) {
  const ElevationCase up = found()[NeckCarriage::Dorsal];
  ASSERT_EQ(up.line.size(), 5u);
  const std::vector<double> links{1, 1, 1, 0.5}, angles{0.4, 0.4, 0.4, 0};
  for (std::size_t i = 0; i < 5; ++i) {
    const Vector2d by = snoutByHand({links.begin(), links.begin() + static_cast<std::ptrdiff_t>(i)}, angles);
    EXPECT_NEAR((up.line[i] - Vector2d(0, 3) - by).norm(), 0, 1e-12) << i;
  }
}

TEST_F(SmallElevation, PlaneFollowsTheHeadingAndCountsFromTheGround) {
  pose_.X_WRoot = Eigen::Translation3d(4, -2, 0) * Eigen::AngleAxisd(1.1, Vector3d::UnitZ()) * pose_.X_WRoot;
  const Elevation e = found();
  EXPECT_NEAR((e[NeckCarriage::Neutral].line.back() - Vector2d(3.5, 3)).norm(), 0, 1e-12);
  const Vector3d back = e.plane.inWorld({3.5, 3});
  EXPECT_NEAR((back - pose_.X_WRoot * Vector3d(4.5, 0, 0)).norm(), 0, 1e-12);
}

TEST_F(SmallElevation, JointsNobodyVouchesForAreNamedAndStayNeutral) {
  specimen_.joints[1].typed.reset();
  const Elevation e = found();
  EXPECT_THAT(e.unjudged, testing::ElementsAre(specimen_.joints[1].id));
  EXPECT_NEAR(e[NeckCarriage::Dorsal].headSlope, 0.8, 1e-12);
}

TEST_F(SmallElevation, HasACaseForEachWayOfCarryingTheNeck) {
  const Elevation e = found();
  for (const NeckCarriage which : kNeckCarriages) EXPECT_EQ(e[which].which, which);
  EXPECT_NEAR(e[NeckCarriage::Neutral].slope, 0, 1e-12);
}

TEST_F(SmallElevation, RefusesAnAnimalWithoutNeck) {
  specimen_.bones.resize(1);
  specimen_.joints.clear();
  specimen_.counts.cervical = 0;
  articulation_.rests.clear();
  pose_.angles.clear();
  try {
    found();
    FAIL();
  } catch (const reason::Failure& failure) {
    EXPECT_EQ(failure.reason().id, kNoNeck);
  }
}

TEST(Elevation, OfASampleStaysInsideTheRanges) {
  const anatomy::Specimen specimen = test::sampleAnimal("high_browser");
  const range::Assumptions assumptions = range::grownAnimal();
  const auto articulation = range::articulate(specimen, assumptions);
  const auto pose = kinematics::stand(specimen, articulation, kinematics::Pose::neutral(specimen));
  const Elevation e = elevation({std::make_shared<const anatomy::Specimen>(specimen), assumptions, articulation, pose});
  for (const NeckCarriage which : {NeckCarriage::Neutral, NeckCarriage::Dorsal, NeckCarriage::Ventral}) {
    for (const auto joint : jointsOf(specimen, Chain::Neck)) {
      EXPECT_NE(range::levelAt(specimen, articulation, assumptions, joint, e[which].pose[joint]), range::Level::Beyond);
    }
  }
  EXPECT_GT(e[NeckCarriage::Dorsal].carriage.snoutHeight, e[NeckCarriage::Neutral].carriage.snoutHeight);
  EXPECT_LT(e[NeckCarriage::Ventral].carriage.snoutHeight, e[NeckCarriage::Neutral].carriage.snoutHeight);
  EXPECT_EQ(e.body.size(), 5u) << "column and four legs";
  for (std::size_t leg = 1; leg < 5; ++leg) EXPECT_NEAR(e.body[leg].back().y(), 0, 0.05);
}

}  // namespace
}  // namespace zyga::study
