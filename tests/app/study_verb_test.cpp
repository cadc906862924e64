#include <cmath>
#include <numbers>

#include "core/files/project/project.h"
#include "core/study/reach/elevation.h"
#include "core/study/uncertainty/spread.h"
#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::HasSubstr;

class StudyVerb : public Program {
 protected:
  QJsonObject studied(const std::vector<std::string>& options) {
    std::vector<std::string> words{"study", smallAnimal()};
    words.insert(words.end(), options.begin(), options.end());
    words.emplace_back("--json");
    const Ended ended = run(words);
    EXPECT_EQ(ended.exit, 0) << ended.err;
    return ended.json()["study"].toObject();
  }
};

TEST_F(StudyVerb, ElevationIsWhatTheCoreFinds) {
  const QJsonArray cases = studied({"--kind", "elevation"})["cases"].toArray();
  const auto project = files::readProject(path("small.zyga"));
  const auto found = study::elevation(scenarioOf(project));
  ASSERT_EQ(cases.size(), 6);
  for (qsizetype i = 0; i < cases.size(); ++i) {
    const QJsonObject one = cases[i].toObject();
    const auto& expected = found.cases[static_cast<std::size_t>(i)];
    EXPECT_EQ(one["case"].toString().toStdString(), study::toText(expected.which));
    EXPECT_NEAR(one["snout_height_m"].toDouble(), expected.carriage.snoutHeight, 1e-6);
    EXPECT_NEAR(one["neck_slope_deg"].toDouble(), expected.slope * 180 / std::numbers::pi, 1e-5);
  }
}

TEST_F(StudyVerb, EnvelopeHasOutlineAndStrip) {
  const QJsonObject json = studied({"--kind", "envelope", "--outline-only"});
  EXPECT_GT(json["outlines"].toArray()[0].toArray().size(), 50);
  EXPECT_GT(json["area_over_ground_m2"].toDouble(), 0);
  EXPECT_TRUE(json["space"].isNull());
  const double highest = json["highest_m"].toArray()[1].toDouble();
  const QJsonArray cases = studied({"--kind", "elevation"})["cases"].toArray();
  EXPECT_NEAR(highest, cases[3].toObject()["snout_height_m"].toDouble(), 0.05) << "two ways to the highest snout";
}

TEST_F(StudyVerb, RangeListsTheColumn) {
  const QJsonObject json = studied({"--kind", "range"});
  EXPECT_EQ(json["joints"].toArray().size(), 6 + 9 + 1 + 12);
  const QJsonObject joint = json["joints"].toArray()[4].toObject();
  EXPECT_GT(joint["dorsal_deg"].toDouble(), 0);
  EXPECT_LT(joint["ventral_deg"].toDouble(), 0);
  EXPECT_LT(joint["rotations_deg3"].toDouble(), joint["rotations_uncorrected_deg3"].toDouble());
}

TEST_F(StudyVerb, SpreadRepeatsWithItsSeed) {
  const std::vector<std::string> options{"--kind", "spread", "--draws", "20", "--seed", "5"};
  const QJsonObject one = studied(options), again = studied(options);
  EXPECT_EQ(one, again);
  EXPECT_EQ(one["seed"].toInt(), 5);
  const QJsonArray quantities = one["quantities"].toArray();
  ASSERT_EQ(quantities.size(), static_cast<qsizetype>(study::kSpreads.size()));
  for (const auto& value : quantities) {
    const QJsonObject q = value.toObject();
    EXPECT_LE(q["q05"].toDouble(), q["q50"].toDouble());
    EXPECT_LE(q["q50"].toDouble(), q["q95"].toDouble());
  }
  EXPECT_NE(studied({"--kind", "spread", "--draws", "20", "--seed", "6"})["quantities"], one["quantities"]);
}

TEST_F(StudyVerb, AssumptionsGivenAreMeantInEveryDraw) {
  const QJsonObject json = studied({"--kind", "spread", "--draws", "5", "--overlap", "0.4"});
  EXPECT_TRUE(json["errors"].toObject()["least_overlap_percent"].isNull());
}

TEST_F(StudyVerb, PressureTellsBothViewsAndItsCaution) {
  const QJsonObject json = studied({"--kind", "pressure"});
  EXPECT_EQ(json["views"].toArray().size(), 2);
  EXPECT_FALSE(json["caution"].toString().isEmpty());
  for (const auto& value : json["cases"].toArray()) {
    const QJsonObject row = value.toObject();
    EXPECT_NEAR(row["pressure_mmhg"].toDouble(), row["column_m"].toDouble() * 1055 / 13.6, 1e-3);
  }
}

TEST_F(StudyVerb, PressureAddsThePerfusionAtTheHeart) {
  const QJsonObject json = studied({"--kind", "pressure"});
  EXPECT_EQ(json["perfusion_mmhg"].toDouble(), 100);
  for (const auto& value : json["cases"].toArray()) {
    const QJsonObject row = value.toObject();
    EXPECT_NEAR(row["at_heart_mmhg"].toDouble(), 100 + std::max(0.0, row["pressure_mmhg"].toDouble()), 1e-5);
  }
}

// Force by the formula from the parts that are given, and stress by the area.
TEST_F(StudyVerb, StressGivesTheLoadsOfEveryJointAndPosture) {
  const QJsonObject json = studied({"--kind", "stress"});
  ASSERT_EQ(json["cases"].toArray().size(), 6);
  for (const auto& value : json["cases"].toArray()) {
    const QJsonObject posture = value.toObject();
    const QJsonArray joints = posture["joints"].toArray();
    ASSERT_EQ(joints.size(), 6 - 1) << "the atlas is weight";
    double sum = 0, square = 0;
    for (const auto& one : joints) {
      const QJsonObject load = one.toObject();
      const double force = std::abs(load["moment_n_m"].toDouble()) / load["lever_m"].toDouble() +
                           load["mass_kg"].toDouble() * 9.80665 * load["cosine_to_vertical"].toDouble();
      EXPECT_NEAR(load["force_n"].toDouble(), force, 1e-3 * (1 + std::abs(force)));
      const double stress = load["stress_pa"].toDouble();
      EXPECT_NEAR(stress * load["area_m2"].toDouble(), load["force_n"].toDouble(), 1e-3 * (1 + std::abs(force)));
      sum += stress;
      square += stress * stress;
    }
    const double mean = sum / 5;
    EXPECT_NEAR(posture["mean_stress_pa"].toDouble(), mean, 1e-3);
    if (mean > 0)
      EXPECT_NEAR(posture["coefficient_of_variation"].toDouble(), std::sqrt(square / 5 - mean * mean) / mean, 1e-5);
    else
      EXPECT_TRUE(posture["coefficient_of_variation"].isNull());
  }
  EXPECT_EQ(json["views"].toArray().size(), 2);
  EXPECT_THAT(json["views"].toArray()[1].toString().toStdString(), HasSubstr("common criticism, no source"));
  EXPECT_EQ(json["even_bends"].toArray().size(), 41);
  EXPECT_EQ(json["mass_kg"].toArray().size(), 3);
}

TEST_F(StudyVerb, TensionLowerDownPressesTheJointsHarder) {
  const auto mean = [&](const char* share) {
    return studied({"--kind", "stress", "--tension", share})["cases"]
        .toArray()[0]
        .toObject()["mean_stress_pa"]
        .toDouble();
  };
  EXPECT_GT(mean("0.5"), 1.3 * mean("1"));
}

TEST_F(StudyVerb, WritesNumbersAndFigureOfEveryEnding) {
  smallAnimal();
  for (const char* ending : {"svg", "pdf", "png"}) {
    const std::string figure = std::string("figure.") + ending;
    const Ended ended = run({"study", "small.zyga", "--kind", "elevation", "--out", "numbers.json", "--plot", figure});
    EXPECT_EQ(ended.exit, 0) << ended.err;
    EXPECT_THAT(ended.out, HasSubstr("wrote " + figure));
    EXPECT_GT(bytes(figure).size(), 1000u);
  }
  EXPECT_TRUE(QJsonDocument::fromJson(QByteArray::fromStdString(bytes("numbers.json"))).isObject());
}

TEST_F(StudyVerb, SaysWhatIsWrongBeforeItWorks) {
  smallAnimal();
  const auto refused = [&](const std::vector<std::string>& options, const char* words) {
    std::vector<std::string> all{"study", "small.zyga"};
    all.insert(all.end(), options.begin(), options.end());
    const Ended ended = run(all);
    EXPECT_EQ(ended.exit, 2);
    EXPECT_THAT(ended.err, HasSubstr(words));
  };
  refused({}, "--kind");
  refused({"--kind", "dreams"}, "'dreams' is not among elevation, envelope, range, spread, pressure, stress");
  refused({"--kind", "elevation", "--plot", "figure.gif"}, "must end in .svg, .pdf or .png");
  refused({"--kind", "elevation", "--out", "numbers.txt"}, "must end in .json");
  refused({"--kind", "elevation", "--out", "/nowhere/numbers.json"}, "/nowhere");
  refused({"--kind", "spread", "--overlap-between", "0.5,0.2"}, "smaller number first");
  refused({"--kind", "spread", "--draws", "-3"}, "--draws");
  refused({"--kind", "stress", "--tension", "0"}, "--tension");
}

}  // namespace
}  // namespace zyga::app
