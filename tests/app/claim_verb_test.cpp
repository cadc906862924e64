#include "core/files/project/project.h"
#include "core/range/neutral.h"
#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class ClaimVerb : public Program {
 protected:
  Ended claim(std::vector<std::string> arguments, const std::string& verb = "claim") {
    if (animal_.empty()) animal_ = smallAnimal();
    arguments.insert(arguments.begin(), {verb, animal_});
    return run(arguments);
  }
  double best() { return claim({"--head-height-m", "29", "--json"}).json()["best_m"].toDouble(); }

  std::string animal_;
};

TEST_F(ClaimVerb, AnUnsupportedHeightTellsWhatStopsItAndWhatItWouldTake) {
  const double best = this->best();
  ASSERT_GT(best, 1);
  const auto ended = claim({"--head-height-m", std::to_string(best + 0.05), "--json"});
  EXPECT_EQ(ended.exit, 1) << ended.err;
  const auto json = ended.json();
  EXPECT_FALSE(json["supported"].toBool());
  EXPECT_TRUE(json["claim"].toString().startsWith("Minimum head height "));
  EXPECT_NEAR(json["best_m"].toDouble(), best, 1e-6);
  EXPECT_NEAR(json["short_by_m"].toDouble(), 0.05, 2e-6);
  EXPECT_FALSE(json["stopping_joints"].toArray().isEmpty());
  EXPECT_EQ(json["stopping_joints"].toArray().size(), json["stopping_words"].toArray().size());
  const double overlap = json["least_overlap"].toDouble();
  EXPECT_GT(overlap, 0);
  EXPECT_LT(overlap, 0.5);
  EXPECT_TRUE(json["joints_near_edge"].isDouble());
  EXPECT_TRUE(json["narrowed_by_deg"].isNull());
  EXPECT_GT(json["widened_by_deg"].toDouble(), 0);
  EXPECT_LT(json["widened_by_deg"].toDouble(), 10);
  const auto dorsals = json["with_foremost_dorsals"].toObject();
  EXPECT_EQ(dorsals["joints"].toArray().size(), 3);
  EXPECT_EQ(dorsals["turned_deg"].toArray().size(), 3);
  EXPECT_NEAR(dorsals["best_m"].toDouble() - json["best_m"].toDouble(), dorsals["gain_m"].toDouble(), 2e-6);
  EXPECT_GT(dorsals["gain_m"].toDouble(), 0);
  const auto habitual = json["habitual"].toObject();
  EXPECT_FALSE(habitual["undeflected_as_claimed"].toBool());
  EXPECT_GT(habitual["undeflected_m"].toDouble(), 0.5);
  EXPECT_LT(habitual["undeflected_m"].toDouble(), best);
  EXPECT_LE(habitual["extended_m"].toDouble(), best + 1e-6);
  EXPECT_GT(habitual["share_from_undeflected"].toDouble(), 1);
  EXPECT_EQ(json["beside_words"].toArray().size(), 3);
  // The assumption it names turns the answer, and a little more does not.
  const auto with = [&](double share) {
    return claim({"--head-height-m", std::to_string(best + 0.05), "--overlap", std::to_string(share)}).exit;
  };
  EXPECT_EQ(with(overlap), 0);
  EXPECT_EQ(with(overlap + 0.001), 1);
}

TEST_F(ClaimVerb, ASupportedHeightWritesThePoseThatShowsIt) {
  const double height = best() - 0.05;
  const auto ended =
      claim({"--head-height-m", std::to_string(height), "--source", "an invented paper, 2020", "--out", "shown.zyga"});
  EXPECT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, AllOf(HasSubstr("Within range: the snout reaches up to "), HasSubstr("minimum overlap"),
                               HasSubstr("assuming "), HasSubstr("wrote shown.zyga")));
  const auto project = files::readProject(path("shown.zyga"));
  ASSERT_EQ(project.claims.size(), 1u);
  EXPECT_EQ(project.claims[0].source, "an invented paper, 2020");
  const auto articulation = range::articulate(project.specimen(), project.assumptions);
  const auto skull = *project.specimen().findBone("skull");
  const auto X_WB = kinematics::forwardKinematics(project.specimen(), articulation, project.pose);
  EXPECT_GE((X_WB[skull.value] * project.specimen()[skull].landmark("snout")).z(), height - 1e-6);
  // The list of the project is answered without naming a claim.
  const auto listed = run({"claim", "shown.zyga", "--json"});
  EXPECT_EQ(listed.exit, 0) << listed.err;
  ASSERT_EQ(listed.json()["claims"].toArray().size(), 1);
  EXPECT_TRUE(listed.json()["claims"].toArray()[0].toObject()["supported"].toBool());
}

TEST_F(ClaimVerb, TheProbabilityIsThatOfItsSeedAndSamples) {
  const std::string height = std::to_string(best());
  const auto json = [&](const std::vector<std::string>& more) {
    std::vector<std::string> words{"--head-height-m", height, "--json"};
    words.insert(words.end(), more.begin(), more.end());
    return claim(words).json();
  };
  const auto usual = json({});
  const double probability = usual["probability"].toDouble(-1);
  EXPECT_GE(probability, 0);
  EXPECT_LE(probability, 1);
  EXPECT_EQ(usual["samples"].toInt(), 1000);
  EXPECT_EQ(usual["seed"].toInt(), 1);
  EXPECT_EQ(usual["samples_failed"].toInt(-1), 0);
  EXPECT_GT(usual["probability_standard_error"].toDouble(), 0);
  EXPECT_FALSE(usual["likelihood"].toString().isEmpty());
  EXPECT_TRUE(usual["probability_words"].toString().contains("within range in"));
  EXPECT_EQ(json({"--seed", "1", "--samples", "1000"})["probability"].toDouble(), probability);
  const auto more = json({"--seed", "2", "--samples", "1500"});
  EXPECT_EQ(more["samples"].toInt(), 1500);
  EXPECT_NEAR(more["probability"].toDouble(), probability, 0.1);
  // More is less probable.
  EXPECT_LT(claim({"--head-height-m", std::to_string(best() + 1), "--json"}).json()["probability"].toDouble(),
            probability + 1e-9);
}

TEST_F(ClaimVerb, TellsWhatItRestsOn) {
  const auto json = claim({"--head-height-m", "2", "--json"}).json();
  const auto tally = json["tally"].toObject();
  EXPECT_EQ(tally.keys(), (QStringList{"default", "inferred", "measured", "partly"}));
  EXPECT_EQ(tally["default"].toInt(), 2) << "head and atlas";
  EXPECT_EQ(tally["inferred"].toInt(), 5) << "no facet of the small animal is measured";
  EXPECT_TRUE(json["not_answered"].toArray().isEmpty());
  EXPECT_FALSE(json["contact_judged"].toBool());
  EXPECT_TRUE(json["contacts"].isNull());
  const auto text = claim({"--head-height-m", "2"});
  EXPECT_THAT(text.out,
              AllOf(HasSubstr("of 1000 samples."), HasSubstr("5 inferred, 2 without facets"),
                    HasSubstr("Collisions between bones were not assessed."), HasSubstr("Mastrandrea et al. 2010")));
}

TEST_F(ClaimVerb, JudgesContactUnlessToldNotTo) {
  const auto ended = claim({"--head-height-m", "2", "--json", "--contact"});
  ASSERT_TRUE(ended.exit == 0 || ended.exit == 1) << ended.err;
  EXPECT_TRUE(ended.json()["contact_judged"].toBool());
  EXPECT_TRUE(ended.json()["contacts"].isArray());
  EXPECT_TRUE(ended.json()["only_with_collisions"].isBool());
}

TEST_F(ClaimVerb, AJointWithoutRangeIsNotAnswered) {
  // No facet can cover more than all of its mate.
  const auto ended = claim({"--head-height-m", "2", "--overlap", "1", "--cartilage-percent", "20", "--json"});
  EXPECT_EQ(ended.exit, 1) << ended.err;
  EXPECT_FALSE(ended.json()["not_answered"].toArray().isEmpty());
  EXPECT_TRUE(ended.json()["probability"].isNull());
  EXPECT_TRUE(ended.json()["verdict"].toString().startsWith("Not answered: "));
}

TEST_F(ClaimVerb, EveryKindIsAnswered) {
  const std::vector<std::pair<std::vector<std::string>, const char*>> kinds{
      {{"--neck-slope-deg", "-80"}, "Neck inclination at least \u221280.0°"},
      {{"--neck-slope-deg", "89", "--at-most"}, "Neck inclination at most 89.0°"},
      {{"--neck-base-deg", "5"}, "Neck base inclination at least 5.0°"},
      {{"--ground-ahead-m", "1.5"}, "Snout reaches the ground 1.50\u00A0m ahead of the forefeet"},
      {{"--head-at-m", "1,2.5"}, "Head reaches a height of 2.50\u00A0m, 1.00\u00A0m ahead of the forefeet"},
      {{"--tail-base-deg", "30"}, "Tail base within 30.0° of horizontal"}};
  for (auto [arguments, words] : kinds) {
    arguments.push_back("--json");
    const auto ended = claim(arguments);
    ASSERT_TRUE(ended.exit == 0 || ended.exit == 1) << ended.err;
    EXPECT_EQ(ended.json()["claim"].toString().toStdString(), words);
    EXPECT_EQ(ended.json()["supported"].toBool(), ended.exit == 0);
  }
}

TEST_F(ClaimVerb, TellsBadInput) {
  const std::vector<std::pair<std::vector<std::string>, const char*>> cases{
      {{}, "the project holds no claims"},
      {{"--head-height-m", "high"}, "is not a number"},
      {{"--head-height-m", "31"}, "write metres from 0 to 30"},
      {{"--head-at-m", "2"}, "a distance and a height"},
      {{"--head-at-m", "2,x"}, "'x' is not a number"},
      {{"--head-height-m", "3", "--tail-base-deg", "5"}, "one claim at a time"},
      {{"--head-height-m", "3", "--at-most"}, "--at-most goes with"},
      {{"--source", "somebody"}, "--source goes with a claim"},
      {{"--head-height-m", "3", "--samples", "999"}, "a whole number of samples from 1000 to 100000"},
      {{"--head-height-m", "3", "--seed", "-1"}, "a whole number from 0 to"},
      {{"--neck-base-deg", "95"}, "write degrees from -90 to 90"}};
  for (const auto& [arguments, words] : cases) {
    const auto ended = claim(arguments);
    EXPECT_EQ(ended.exit, 2) << words;
    EXPECT_THAT(ended.err, HasSubstr(words));
    EXPECT_EQ(ended.out, "");
  }
}

}  // namespace
}  // namespace zyga::app
