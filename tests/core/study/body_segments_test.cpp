#include "core/study/mass/body_segments.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/core/study/standing_scenario.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;

TEST(BodySegments, CoverEveryPartAndMirrorEachOther) {
  const range::Scenario animal = standingScenario();
  const auto segments = bodySegments(animal);
  std::array<double, kBodyParts> volumes{};
  for (const auto& segment : segments) {
    EXPECT_GT(segment.hullVolume, 0) << idOf(segment.part) << " " << animal.specimen()[segment.bone].id;
    volumes.at(static_cast<std::size_t>(segment.part)) += segment.hullVolume;
  }
  for (const double volume : volumes) EXPECT_GT(volume, 0);
  for (const auto& segment : segments) {
    const auto mirror = mirrored(animal.specimen()[segment.bone].name);
    if (mirror == animal.specimen()[segment.bone].name) continue;
    const auto other = std::find_if(segments.begin(), segments.end(),
                                    [&](const auto& s) { return animal.specimen()[s.bone].name == mirror; });
    ASSERT_NE(other, segments.end());
    EXPECT_NEAR(other->hullVolume, segment.hullVolume, 1e-12);
    EXPECT_NEAR((other->p_BCentre - segment.p_BCentre.cwiseProduct(Vector3d(1, -1, 1))).norm(), 0, 1e-9);
  }
}

// Most of a sauropod is trunk: 70 % of the volume of one, in a comment of Taylor's on his own 2009 model.
TEST(BodySegments, TheTrunkIsMostOfTheBody) {
  for (const auto plan : {anatomy::BodyPlan::HighBrowser, anatomy::BodyPlan::LowBrowser}) {
    const range::Scenario animal = standingScenario(plan);
    double trunk = 0, all = 0;
    for (const auto& segment : bodySegments(animal)) {
      all += segment.hullVolume;
      if (segment.part == BodyPart::Trunk) trunk += segment.hullVolume;
    }
    EXPECT_GT(trunk / all, 0.6);
    EXPECT_LT(trunk / all, 0.9);
  }
}

TEST(BodySegments, ANeckPieceIsNotLongerThanItsVertebra) {
  const range::Scenario animal = standingScenario();
  for (const auto& segment : bodySegments(animal)) {
    if (segment.part != BodyPart::Neck) continue;
    const auto& bone = animal.specimen()[segment.bone];
    EXPECT_TRUE(isVertebra(bone.name.kind)) << bone.id;
    const double width = bone.measures.valueOr(anatomy::Measure::DiapophysisWidth, 0);
    const double height = 3 * bone.measures.valueOr(anatomy::Measure::SpineHeight, 0);
    EXPECT_LT(segment.hullVolume, bone.measures.value(anatomy::Measure::Length) * width * height) << bone.id;
    EXPECT_LT(std::abs(segment.p_BCentre.x()), bone.measures.value(anatomy::Measure::Length) / 2) << bone.id;
  }
}

TEST(Weigh, TheWholeIsTheSumOfItsPartsAndTurnsWithTheAnimal) {
  const range::Scenario animal = standingScenario();
  const auto segments = bodySegments(animal);
  const auto X_WB = animal.placement();
  const auto body = weigh(segments, {}, X_WB);
  double sum = 0;
  for (const double mass : body.byPart) sum += mass;
  EXPECT_NEAR(sum, body.mass.mass, 1e-6);
  EXPECT_NEAR(body.mass.low, 0.8 * body.mass.mass, 1e-6);
  EXPECT_NEAR(body.p_WCentre.y(), 0, 1e-9);

  auto turned = animal.pose();
  const Eigen::Isometry3d X(Eigen::Translation3d(1, 2, 0) * Eigen::AngleAxisd(0.7, Vector3d::UnitZ()));
  turned.X_WRoot = X * animal.pose().X_WRoot;
  const auto moved = weigh(segments, {}, animal.withPose(turned).placement());
  EXPECT_NEAR((moved.p_WCentre - X * body.p_WCentre).norm(), 0, 1e-9);
  EXPECT_NEAR(moved.mass.mass, body.mass.mass, 1e-6);
}

TEST(Weigh, ADenserNeckWeighsMoreAndPullsForwards) {
  const range::Scenario animal = standingScenario();
  const auto segments = bodySegments(animal);
  const auto X_WB = animal.placement();
  Densities dense;
  dense[BodyPart::Neck] *= 2;
  const auto before = weigh(segments, {}, X_WB), after = weigh(segments, dense, X_WB);
  const auto neck = static_cast<std::size_t>(BodyPart::Neck);
  EXPECT_NEAR(after.byPart[neck], 2 * before.byPart[neck], 1e-9);
  EXPECT_NEAR(after.mass.mass - before.mass.mass, before.byPart[neck], 1e-6);
  EXPECT_GT(after.p_WCentre.x(), before.p_WCentre.x());
}

TEST(Weigh, TheFleshIsWhatLiesOutsideTheHulls) {
  const range::Scenario animal = standingScenario();
  const auto segments = bodySegments(animal);
  Densities densities;
  const auto tail = static_cast<std::size_t>(BodyPart::Tail);
  densities.hullFactors[tail] = 1.6;
  const BodyMass body = weigh(segments, densities, animal.placement());
  const BodyMass usual = weigh(segments, {}, animal.placement());
  std::array<double, kBodyParts> bare{};
  for (const BodySegment& segment : segments)
    bare[static_cast<std::size_t>(segment.part)] += segment.hullVolume * densities[segment.part];
  for (std::size_t part = 0; part < kBodyParts; ++part) {
    EXPECT_NEAR(body.byPart[part] - body.flesh[part], bare[part], 1e-6) << part;
    EXPECT_NEAR(body.byPart[part], bare[part] * (part == tail ? 1.6 : 1.21), 1e-6) << part;
  }
  EXPECT_LT(body.p_WCentre.x(), usual.p_WCentre.x()) << "a heavier tail pulls back";
  EXPECT_EQ(body.densities, densities);
}

TEST(Weigh, PartsHaveErrorsOfTheirOwn) {
  const range::Scenario animal = standingScenario();
  const auto segments = bodySegments(animal);
  const BodyMass body = weigh(segments, {}, animal.placement());
  for (std::size_t part = 0; part < kBodyParts; ++part) {
    const double error =
        std::sqrt(kDensityErrors[part] * kDensityErrors[part] + kHullFactorErrors[part] * kHullFactorErrors[part]);
    EXPECT_NEAR(body.ranges[part].high / body.byPart[part], 1 + error, 1e-12);
    EXPECT_NEAR(body.ranges[part].low / body.byPart[part], 1 - error, 1e-12);
  }
  // The centre of mass moves as it does when the tail really is so much denser.
  Densities heavy;
  heavy[BodyPart::Tail] *= body.ranges[static_cast<std::size_t>(BodyPart::Tail)].high / body[BodyPart::Tail];
  const Vector3d moved = weigh(segments, heavy, animal.placement()).p_WCentre - body.p_WCentre;
  EXPECT_NEAR((shiftOfCentre(body, BodyPart::Tail) - moved).norm(), 0, 1e-9);
  EXPECT_LT(moved.x(), -0.01);
}

TEST(BonePoints, ReachTheOutsideOfTheBone) {
  const range::Scenario animal = standingScenario();
  const auto& femur = animal.specimen()[*animal.specimen().findBone("femur.L")];
  double least = 1e9, most = -1e9;
  for (const auto& p : bonePoints(femur)) {
    least = std::min(least, p.z());
    most = std::max(most, p.z());
  }
  EXPECT_NEAR(most - least, femur.measures.value(anatomy::Measure::Length), 1e-9);
}

}  // namespace
}  // namespace zyga::study
