#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class GroundVerbs : public Program {};

// Xing et al. 2016, Swiss J. Geosci., table 1: pace angulation printed 112, 98, 103, 103 degrees. The last row is bare.
constexpr const char* kXing =
    "foot,pace_cm,next_pace_cm,stride_cm,length_cm\n"
    "LP1,62.0,66.0,106.0,33.0\nRP1,66.0,72.0,104.0,35.0\nLP2,72.0,58.5,102.5,32.5\nRP2,58.5,69.0,100.0,30.0\nLP3,,,,\n";

TEST_F(GroundVerbs, TrackwayGivesTheFiguresOfEachPrint) {
  write("tracks.csv", kXing);
  const auto ended = run({"trackway", "tracks.csv", "--json"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto json = ended.json();
  const auto rows = json["rows"].toArray();
  ASSERT_EQ(rows.size(), 5);
  const double printed[] = {112, 98, 103, 103};
  for (int i = 0; i < 4; ++i) {
    EXPECT_NEAR(rows[i].toObject()["pace_angulation_deg"].toDouble(), printed[i], 0.5);
  }
  EXPECT_NEAR(rows[1].toObject()["hip_height_m"].toDouble(), 1.40, 1e-6);
  EXPECT_NEAR(rows[1].toObject()["relative_stride"].toDouble(), 1.04 / 1.40, 1e-6);
  EXPECT_NEAR(rows[1].toObject()["speed_m_s"].toDouble(),
              0.25 * std::sqrt(9.81) * std::pow(1.04, 1.67) * std::pow(1.4, -1.17), 1e-5);
  for (const char* key : {"pace_angulation_deg", "hip_height_m", "relative_stride", "speed_m_s"}) {
    EXPECT_TRUE(rows[4].toObject()[key].isNull()) << key;
  }
  EXPECT_THAT(json["caution"].toString().toStdString(), HasSubstr("Prescott et al. 2025"));
}

TEST_F(GroundVerbs, TrackwayTakesAnotherMultiplier) {
  write("tracks.csv", kXing);
  const auto json = run({"trackway", "tracks.csv", "--hip-multiplier", "4.586", "--json"}).json();
  EXPECT_NEAR(json["rows"].toArray()[1].toObject()["hip_height_m"].toDouble(), 0.35 * 4.586, 1e-6);
  EXPECT_THAT(json["hip_source"].toString().toStdString(), HasSubstr("2011"));
  EXPECT_EQ(run({"trackway", "tracks.csv", "--hip-multiplier", "no"}).exit, 2);
}

TEST_F(GroundVerbs, TrackwayForPeopleSaysUnknownAndGivesTheCaution) {
  write("tracks.csv", kXing);
  const auto ended = run({"trackway", "tracks.csv"});
  EXPECT_EQ(ended.exit, 0);
  EXPECT_THAT(ended.out, AllOf(HasSubstr("LP1"), HasSubstr("111.8"), HasSubstr("unknown"), HasSubstr("Alexander 1976"),
                               HasSubstr("soft ground are too high")));
}

TEST_F(GroundVerbs, TrackwayTellsEveryFault) {
  write("bad.csv", "foot,pace_cm,stride_cm\nL,abc,3\nR,5,-1\n");
  const auto ended = run({"trackway", "bad.csv"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_THAT(ended.err, AllOf(HasSubstr("bad.csv:2, column 2"), HasSubstr("bad.csv:3, column 3")));
  EXPECT_EQ(run({"trackway", "none.csv"}).exit, 2);
}

// Campione & Evans 2012; Lacovara et al. 2014: 785 + 910 mm, 59,291 kg, mean error 25.63 %.
TEST_F(GroundVerbs, MassFromCircumferences) {
  const auto json = run({"mass", "--humerus-mm", "785", "--femur-mm", "910", "--json"}).json();
  EXPECT_NEAR(json["mass_kg"].toDouble(), 59291, 0.5);
  EXPECT_NEAR(json["low_kg"].toDouble(), 59291 * 0.7437, 1);
  EXPECT_NEAR(json["high_kg"].toDouble(), 59291 * 1.2563, 1);
  EXPECT_THAT(
      run({"mass", "--humerus-mm", "785", "--femur-mm", "910"}).out,
      AllOf(HasSubstr("59.3\u00A0t"), HasSubstr("25.63\u00A0%"), HasSubstr("not a bound"), HasSubstr("estimate")));
}

TEST_F(GroundVerbs, MassAsksForWhatItNeeds) {
  EXPECT_THAT(run({"mass", "--humerus-mm", "785"}).err, HasSubstr("--femur-mm"));
  EXPECT_EQ(run({"mass"}).exit, 2);
  EXPECT_EQ(run({"mass", "--humerus-mm", "0", "--femur-mm", "910"}).exit, 2);
  EXPECT_THAT(run({"mass", "--pose", "x", "--humerus-mm", "785", "--femur-mm", "910"}).err, HasSubstr("--pose needs"));
}

TEST_F(GroundVerbs, MassOfAProjectWithItsBalance) {
  const auto file = smallAnimal();
  const auto ended = run({"mass", file, "--json"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto json = ended.json();
  EXPECT_GT(json["low_kg"].toDouble(), 100);
  EXPECT_LT(json["low_kg"].toDouble(), json["mass_kg"].toDouble());
  EXPECT_LT(json["mass_kg"].toDouble(), json["high_kg"].toDouble());
  double sum = 0;
  for (const auto& part : json["parts"].toArray()) sum += part.toObject()["mass_kg"].toDouble();
  EXPECT_NEAR(sum, json["mass_kg"].toDouble(), 1e-2);
  EXPECT_TRUE(json["balance"].toObject()["inside"].toBool());
  EXPECT_GT(json["balance"].toObject()["margin_m"].toDouble(), 0);
  EXPECT_EQ(json["by_circumference"].toObject()["circumferences"].toString(), "inferred");
  const auto dense = run({"mass", file, "--density", "trunk=1000", "--density", "hind_limbs=900", "--json"}).json();
  EXPECT_GT(dense["mass_kg"].toDouble(), json["mass_kg"].toDouble());
  EXPECT_THAT(run({"mass", file, "--density", "wing=3"}).err, HasSubstr("write neck=600"));
  const auto fleshy = run({"mass", file, "--hull-factor", "tail=1.5", "--json"}).json();
  EXPECT_LT(fleshy["centre_of_mass_m"].toArray()[0].toDouble(), json["centre_of_mass_m"].toArray()[0].toDouble());
  EXPECT_LT(json["tail_error_moves_centre_m"].toDouble(), 0);
  for (const auto& value : fleshy["parts"].toArray()) {
    const auto part = value.toObject();
    const double factor = part["hull_factor"].toDouble();
    EXPECT_EQ(factor, part["part"].toString() == "tail" ? 1.5 : 1.21);
    EXPECT_NEAR(part["outside_hull_kg"].toDouble(), part["mass_kg"].toDouble() * (1 - 1 / factor), 1e-3);
    EXPECT_LT(part["low_kg"].toDouble(), part["mass_kg"].toDouble());
    EXPECT_GT(part["density_error_percent"].toDouble(), 0);
    EXPECT_GT(part["hull_factor_error_percent"].toDouble(), 0);
  }
  EXPECT_THAT(run({"mass", file, "--hull-factor", "tail=0.5"}).err, HasSubstr("--hull-factor tail"));
  EXPECT_THAT(run({"mass", file, "--hull-factor", "wing=3"}).err, HasSubstr("write tail=1.4"));
  // A trunk of air is no animal's, and the two estimates say so.
  EXPECT_TRUE(run({"mass", file, "--density", "trunk=100", "--hull-factor", "trunk=1", "--json"})
                  .json()["disagreement"]
                  .toString()
                  .contains("do not overlap"));
  EXPECT_THAT(run({"mass", file}).out, AllOf(HasSubstr("centre of mass"), HasSubstr("not an engineering document")));
}

}  // namespace
}  // namespace zyga::app
