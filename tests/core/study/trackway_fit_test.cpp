#include "core/study/ground/trackway_fit.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/study/standing_scenario.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;

StandingFoot footAt(Foot foot, const Vector2d& centre) {
  StandingFoot standing;
  standing.foot = foot;
  standing.soles = {{centre.x(), centre.y(), 0}};
  standing.centre = centre;
  return standing;
}

PlacedPrint printAt(Foot foot, const Vector2d& p_W, double heading = 0) {
  PlacedPrint print;
  print.label = isLeft(foot) ? "LP1" : "RP1";
  print.foot = foot;
  print.p_W = p_W;
  print.heading = heading;
  return print;
}

TEST(FitFeet, TakesTheNearestPrintOfTheSameFoot) {
  const std::vector<PlacedPrint> prints{printAt(Foot::RightHind, {0, 0}), printAt(Foot::LeftHind, {2, 0}),
                                        printAt(Foot::LeftHind, {0.5, 0})};
  const auto fits = fitFeet({footAt(Foot::LeftHind, {0.1, 0}), footAt(Foot::LeftFore, {0, 0})}, prints);
  ASSERT_EQ(fits.size(), 2u);
  EXPECT_EQ(fits[0].print, 2u);
  EXPECT_NEAR((fits[0].miss - Vector2d(-0.4, 0)).norm(), 0, 1e-12);
  EXPECT_FALSE(fits[1].print);
}

TEST(FitFeet, TellsTheMissAlongTheHeadingOfThePrint) {
  // The print heads along world y: a foot at larger y is ahead, at smaller x to the left.
  const std::vector<PlacedPrint> prints{printAt(Foot::LeftHind, {1, 1}, std::acos(0.0))};
  const auto fits = fitFeet({footAt(Foot::LeftHind, {0.9, 1.3})}, prints);
  EXPECT_NEAR((fits[0].miss - Vector2d(0.3, 0.1)).norm(), 0, 1e-12);
}

/// A trackway of this animal's own feet: prints where its hind feet would fall, stride after stride.
Trackway ownTrackway(const std::vector<StandingFoot>& feet, double stride) {
  const double gauge = feet[0].centre.y() - feet[2].centre.y();
  Trackway trackway;
  for (int i = 0; i < 6; ++i) {
    Footprint print;
    print.foot = i % 2 == 0 ? "LP" : "RP";
    print.pace = std::hypot(stride / 2, gauge);
    print.nextPace = print.pace;
    print.stride = stride;
    trackway.prints.push_back(print);
  }
  return trackway;
}

TEST(MovedUnder, BringsThePrintsUnderTheFeet) {
  const range::Scenario animal = standingScenario();
  const auto feet = feetOf(animal.specimen(), animal.placement());
  auto trackway = ownTrackway(feet, 1.6);
  trackway.x = -7;
  trackway.y = 3;
  const auto moved = movedUnder(trackway, feet);
  const auto prints = layOut(moved).prints;
  const auto fits = fitFeet(feet, prints);
  // Side by side on a zigzag: each hind foot is a quarter of the stride away, one ahead and one behind.
  for (const std::size_t hind : {0u, 2u}) {
    ASSERT_TRUE(fits[hind].print);
    EXPECT_NEAR(std::abs(fits[hind].miss.x()), 0.4, 1e-6);
    EXPECT_NEAR(fits[hind].miss.y(), 0, 1e-6);
  }
  EXPECT_NEAR(fits[0].miss.x(), -fits[2].miss.x(), 1e-6);
  EXPECT_EQ(moved.heading, trackway.heading);
}

TEST(MovedUnder, WithoutPrintsStaysWhereItIs) {
  Trackway trackway;
  trackway.x = 5;
  EXPECT_EQ(movedUnder(trackway, {footAt(Foot::LeftHind, {0, 0})}).x, 5);
}

TEST(StepOnto, ShortStepsAreMadeWhereTheTrunkIs) {
  const range::Scenario animal = standingScenario();
  const auto feet = feetOf(animal.specimen(), animal.placement());
  const auto prints = layOut(movedUnder(ownTrackway(feet, 0.2), feet)).prints;
  EXPECT_GT(fitFeet(feet, prints)[0].distance(), 0.04);
  const auto stepped = stepOnto(animal, prints, 0.4);
  ASSERT_EQ(stepped.feet.fits.size(), 2u);  // the hind feet; there are no fore prints
  EXPECT_TRUE(stepped.feet.hold());
  const auto after = fitFeet(feetOf(animal.specimen(), animal.withPose(stepped.feet.pose).placement()), prints);
  for (const std::size_t hind : {0u, 2u}) EXPECT_LT(after[hind].distance(), 1e-3) << hind;
}

TEST(StepOnto, LongStepsBringTheTrunkDown) {
  const range::Scenario animal = standingScenario();
  const auto feet = feetOf(animal.specimen(), animal.placement());
  const auto prints = layOut(movedUnder(ownTrackway(feet, 1.6), feet)).prints;
  const auto stepped = stepOnto(animal, prints, 0.4);
  EXPECT_GT(stepped.lowered, 0);
  EXPECT_LE(stepped.lowered, 0.4);
  EXPECT_TRUE(stepped.feet.hold()) << stepped.feet.worstMiss();
  EXPECT_NEAR(stepped.feet.pose.X_WRoot.translation().z(), animal.pose().X_WRoot.translation().z() - stepped.lowered,
              1e-12);
}

TEST(StepOnto, OutOfReachThePoseThatMissesLeastIsToldWithItsMiss) {
  const range::Scenario animal = standingScenario();
  const auto feet = feetOf(animal.specimen(), animal.placement());
  const auto prints = layOut(movedUnder(ownTrackway(feet, 12), feet)).prints;
  const auto stepped = stepOnto(animal, prints, 0.4);
  EXPECT_FALSE(stepped.feet.hold());
  EXPECT_GT(stepped.feet.worstMiss(), 0.5);
}

}  // namespace
}  // namespace zyga::study
