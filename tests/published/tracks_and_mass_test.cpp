#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/study/ground/trackway_table.h"
#include "core/study/mass/balance.h"
#include "core/study/mass/convex_hull.h"
#include "ui/words/ground_words.h"
#include "ui/words/say.h"

/// Published values about footprints, mass and balance. Each test names the row's source beside it.
namespace zyga::study {
namespace {

constexpr double kDegree = std::numbers::pi / 180;

// Xing et al. 2016, Swiss J. Geosci., doi 10.1007/s00015-016-0229-0, table 1, trackway S1, as printed: hind prints LP1
// to RP2 with length, pace, stride (cm), pace angulation (degrees) and gauge (WAP, cm). The next pace is the next
// row's.
constexpr const char* kXing =
    "foot,pace_cm,next_pace_cm,stride_cm,length_cm\n"
    "S1-LP1,62.0,66.0,106.0,33.0\nS1-RP1,66.0,72.0,104.0,35.0\n"
    "S1-LP2,72.0,58.5,102.5,32.5\nS1-RP2,58.5,69.0,100.0,30.0\n";

TEST(PublishedTracks, paceAngulationOfASauropodTrackway) {
  const auto reading = readTrackwayTable(kXing, "xing.csv");
  ASSERT_TRUE(reading.usable() && reading.messages.empty());
  const std::array<double, 4> printed{112, 98, 103, 103};
  const std::array<double, 4> cosineRule{111.8, 97.7, 103.0, 103.0};  // derived
  for (std::size_t i = 0; i < 4; ++i) {
    const auto values = valuesOf(reading.trackway.prints[i], 4);
    ASSERT_TRUE(values.paceAngulation);
    EXPECT_NEAR(*values.paceAngulation / kDegree, printed[i], 0.5);
    EXPECT_NEAR(*values.paceAngulation / kDegree, cosineRule[i], 0.05);
  }
}

// The same table: gauge printed 35.5, 42.0, 38.0, 40.0 cm, measured on its own; the triangle gives it to 8 %.
TEST(PublishedTracks, gaugeOfASauropodTrackway) {
  const auto prints = readTrackwayTable(kXing, "xing.csv").trackway.prints;
  const std::array<double, 4> printed{35.5, 42.0, 38.0, 40.0};
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_NEAR(*valuesOf(prints[i], 4).gauge * 100, printed[i], 0.08 * printed[i]);
  }
}

// Alexander 1976, Nature 261:129 (read in a later text): hip height 4 x footprint length; 35 cm: 1.40 m.
TEST(PublishedTracks, hipHeightIsFourPrints) {
  Footprint print;
  print.foot = "L";
  print.length = 0.35;
  EXPECT_NEAR(*valuesOf(print, kHipRules[0].multiplier).hipHeight, 1.40, 1e-12);
}

// Alexander 1976, worked example in Martin 2014: stride 2.8 m, hip 1.4 m: relative stride 2.0, 2.948 m/s = 10.61 km/h.
TEST(PublishedTracks, speedOfAWorkedExample) {
  Footprint print;
  print.foot = "L";
  print.length = 0.35;
  print.stride = 2.8;
  const auto values = valuesOf(print, 4);
  EXPECT_NEAR(*values.relativeStride, 2.0, 1e-12);
  EXPECT_NEAR(*values.speed, 2.948, 5e-4);
  EXPECT_NEAR(*values.speed * 3.6, 10.61, 5e-3);
}

// González Riga 2011, An. Acad. Bras. Ciênc. 83:279, abstract: 4.586 times the print in derived titanosaurs; hip
// heights of 211 to 229 cm belong to prints of 46.0 to 49.9 cm (derived). Two strides at 4.7 to 4.9 km/h.
TEST(PublishedTracks, otherMultipliersCanBeChosen) {
  Footprint print;
  print.foot = "L";
  print.length = 0.46;
  EXPECT_NEAR(*valuesOf(print, 4.586).hipHeight, 2.11, 5e-3);
  EXPECT_NE(ui::say(hipSource(4.586)).indexOf("González Riga 2011"), -1);
  // 5.9 is recalled from Thulborn 1990 and could not be verified: it is nobody's but the person's who types it.
  EXPECT_EQ(hipSource(5.9), kOwnHipRule);
}

// Prescott et al. 2025, Biol. Lett. 21:20250191: speeds from tracks on soft ground are too high.
TEST(PublishedTracks, theCautionNamesItsSource) {
  EXPECT_NE(ui::speedCaution().indexOf("soft ground are too high (Prescott et al. 2025"), -1);
}

// Campione & Evans 2012, BMC Biol. 10:60; Lacovara et al. 2014, Sci. Rep. 4:6196: 785 + 910 mm, 59,291 kg, mean error
// 25.63 %.
TEST(PublishedMass, fromCircumferences) {
  const auto mass = massFromCircumferences(0.785, 0.910);
  EXPECT_NEAR(mass.mass, 59291, 0.5);
  EXPECT_NEAR(mass.low, 59291 * (1 - 0.2563), 0.5);
  EXPECT_NEAR(mass.high, 59291 * (1 + 0.2563), 0.5);
}

// Páramo 2025 data set: humerus/femur circumference, mm, and mass, kg.
TEST(PublishedMass, ofSixSauropods) {
  const struct {
    double humerus, femur, mass;
  } rows[] = {{362, 486, 8834.1},  {285, 417, 5255.1},  {327, 514, 8635.0},
              {433, 528, 12459.7}, {495, 825, 29816.6}, {261, 325, 3198.5}};
  for (const auto& row : rows) {
    EXPECT_NEAR(massFromCircumferences(row.humerus / 1000, row.femur / 1000).mass, row.mass, 0.06);
  }
}

// Campione & Evans data: a living elephant, 815.3 mm summed, weighed 6435 kg; predicted 7929 kg, the weighed mass
// inside the error.
TEST(PublishedMass, ofALivingElephant) {
  const auto mass = massFromCircumferences(0.4, 0.4153);
  EXPECT_NEAR(mass.mass, 7929, 0.5);
  EXPECT_LT(mass.low, 6435);
  EXPECT_GT(mass.high, 6435);
}

// Sellers et al. 2012, Biol. Lett. 8:842: hull x 1.21 x density; a unit cube at 800 kg/m3: 968 kg.
TEST(PublishedMass, fromTheHullOfAUnitCube) {
  std::vector<Eigen::Vector3d> cube;
  for (int i = 0; i < 8; ++i) cube.emplace_back(i & 1, (i >> 1) & 1, (i >> 2) & 1);
  EXPECT_NEAR(massFromHulls(convexHull(cube).volume, 800).mass, 968, 1e-9);
}

// Mechanics: the centre of mass 0.5 m before the hind feet on a base of 2.5 m loads the fore feet with 20 %.
TEST(PublishedMass, shareOfTheForeFeet) { EXPECT_NEAR(foreShareOf(0.5, 0, 2.5), 0.20, 1e-12); }

}  // namespace
}  // namespace zyga::study
