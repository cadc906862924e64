#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/anatomy/summary.h"
#include "core/files/json/json.h"
#include "core/kinematics/stand_readings.h"
#include "core/range/neutral.h"
#include "core/report/numbers.h"
#include "tests/core/files/example_project.h"

namespace zyga::report {
namespace {

using testing::HasSubstr;

const files::Project& project() {
  static const files::Project project = [] {
    files::Project p = files::example::everything();
    p.table.name = "Quarry <seven> & more";
    study::Claim claim = study::usualClaim(study::ClaimKind::HeadHeight);
    claim.value = 25;
    claim.source = "an invented adviser";
    p.claims = {claim, study::usualClaim(study::ClaimKind::TailBaseLevel)};
    return p;
  }();
  return project;
}

range::Scenario scenario() {
  static const range::Scenario only = scenarioOf(project());
  return only;
}

ReportData made(const ReportOptions& options) { return *buildReport(scenario(), project(), "", options); }

ReportOptions without(bool studies, bool claimsOnly = false) {
  ReportOptions options;
  options.studies = studies;
  options.claimsOnly = claimsOnly;
  return options;
}

const ReportData& plain() {
  static const ReportData data = made(without(false));
  return data;
}

double number(const ReportData& data, const std::string& key) {
  for (const Number& n : numbersOf(data))
    if (n.key == key) return n.value;
  return std::nan("");
}

std::string_view unitOf(const ReportData& data, const std::string& key) {
  for (const Number& n : numbersOf(data))
    if (n.key == key) return n.unit;
  return "none";
}

TEST(Report, HoldsStudiesWhenTheyAreAskedFor) {
  const ReportData data = made(without(true));
  ASSERT_EQ(data.studies.size(), kReportStudies.size());
  EXPECT_TRUE(data.find<study::Elevation>());
  EXPECT_TRUE(data.find<study::Envelope>());
  EXPECT_TRUE(data.find<study::RangeChart>());
  EXPECT_TRUE(data.find<study::Pressure>());
  ASSERT_TRUE(data.find<study::JointStress>());
  const auto& stress = *data.find<study::JointStress>();
  EXPECT_EQ(stress.densities, project().densities);
  EXPECT_EQ(number(data, "stress.highest.mean"), stress[study::NeckCarriage::Highest].evenness.mean / 1000);
  EXPECT_EQ(unitOf(data, "stress.highest.mean"), "kPa");
  EXPECT_EQ(number(data, "stress.joint." + stress.joints[0].id + ".force"),
            stress[study::NeckCarriage::Present].joints[0].force);
  EXPECT_GE(number(data, "pressure.lowest.at_heart"), 100);
  EXPECT_TRUE(std::isfinite(number(data, "elevation.highest.snout_height")));
  EXPECT_TRUE(plain().studies.empty());
}

TEST(Report, TakesWhatHasBeenWorkedOutAlready) {
  study::StudyAnswers answers;
  const auto known = answers.run(study::StudyKind::Elevation, scenario()).result;
  ReportOptions options = without(true);
  options.answers = &answers;
  EXPECT_EQ(made(options).studies.front().outcome.result, known);
}

/// A study that the animal lacks something for is there with the reason.
TEST(Report, KeepsWhyAStudyGaveNothing) {
  anatomy::Specimen headless = project().specimen();
  const auto skull = headless.findBone("skull");
  ASSERT_TRUE(skull);
  headless.bones[skull->value].id = "no skull any more";
  const range::Scenario other(std::make_shared<const anatomy::Specimen>(headless), project().assumptions,
                              project().pose);
  files::Project without = project();
  without.claims.clear();
  const ReportData data = *buildReport(other, without, "");
  ASSERT_EQ(data.studies.size(), kReportStudies.size());
  EXPECT_FALSE(data.find<study::Envelope>());
  EXPECT_EQ(data.studies[1].outcome.failure, reason::Reason(study::kNoSnout));
  EXPECT_TRUE(std::isnan(number(data, "reach.highest")));
}

TEST(Report, NumbersAreThoseOfTheProject) {
  const auto articulation = range::articulate(project().specimen(), project().assumptions);
  const auto X_WB = forwardKinematics(project().specimen(), articulation, project().pose);
  EXPECT_EQ(number(plain(), "stand.snout_height"), *kinematics::snoutHeight(project().specimen(), X_WB));
  EXPECT_EQ(number(plain(), "completeness.found"),
            static_cast<double>(anatomy::completeness(project().specimen()).found));
  const auto& joint = project().specimen().joints;
  const auto c6 = std::find_if(joint.begin(), joint.end(), [](const auto& j) { return j.id == "C6-C7"; });
  EXPECT_NEAR(number(plain(), "joint.C6-C7.flexion"),
              project().pose.angles[static_cast<std::size_t>(c6 - joint.begin())].x() * 180 / M_PI, 1e-12);
  EXPECT_EQ(number(plain(), "claim.1.supported"), 0);
}

// Twenty-five metres are out of reach of every animal that may have lived.
TEST(Report, NumbersTellHowProbableAClaimIsAndWhatItRestsOn) {
  EXPECT_LT(number(plain(), "claim.1.probability"), 2);
  EXPECT_GT(number(plain(), "claim.1.probability_standard_error"), 0);
  EXPECT_GT(number(plain(), "claim.1.samples"), 950);
  EXPECT_EQ(unitOf(plain(), "claim.1.probability"), "%");
  double joints = 0;
  for (const char* kind : {"measured", "partly_measured", "inferred", "by_default"})
    joints += number(plain(), std::string("claim.1.joints_") + kind);
  EXPECT_EQ(joints, static_cast<double>(plain().claims[0].answer->joints));
  EXPECT_EQ(number(plain(), "claim.1.joints_not_answered"), 0);
}

/// Slopes of claims are in degrees, as all other angles are.
TEST(Report, NumbersOfClaimsHaveTheUnitsOfTheRest) {
  const auto& tail = plain().claims[1];
  ASSERT_TRUE(traitsOf(tail.claim.kind).angle);
  ASSERT_TRUE(tail.answer->best);
  EXPECT_NEAR(number(plain(), "claim.2.best"), *tail.answer->best * 180 / M_PI, 1e-12);
  EXPECT_EQ(unitOf(plain(), "claim.2.best"), "deg");
  EXPECT_EQ(unitOf(plain(), "claim.1.best"), plain().claims[0].answer->best ? "m" : "none");
}

TEST(Report, IsTheSameEveryTime) {
  const ReportData again = made(without(false));
  EXPECT_EQ(numbersCsv(plain()), numbersCsv(again));
  EXPECT_EQ(numbersJson(plain(), "a pose"), numbersJson(again, "a pose"));
}

TEST(Report, ClaimPageHoldsTheClaimsAndTheAssumptionsAlone) {
  const ReportData data = made(without(true, true));
  ASSERT_EQ(data.claims.size(), 2u);
  EXPECT_EQ(data.claims[0].claim.source, "an invented adviser");
  EXPECT_FALSE(data.claims[0].answer->supported);
  EXPECT_TRUE(data.studies.empty());
  EXPECT_TRUE(std::isfinite(number(data, "claim.1.supported")));
  EXPECT_TRUE(std::isfinite(number(data, "assumptions.least_overlap")));
  EXPECT_TRUE(std::isnan(number(data, "stand.hip_height")));
}

TEST(Report, NumbersReadBackFromCsvAndJson) {
  const std::string csv = numbersCsv(plain());
  EXPECT_THAT(csv, testing::StartsWith("key,value,unit\n"));
  EXPECT_THAT(csv, HasSubstr("\nassumptions.least_overlap,33.3"));
  const std::string text = numbersJson(plain(), "a pose");
  const files::JsonDocument document = files::parseJson(text, "numbers.json");
  const auto numbers = files::JsonPlace(document)["numbers"];
  EXPECT_EQ(numbers["stand.snout_height"]["value"].number(), number(plain(), "stand.snout_height"));
  EXPECT_EQ(numbers["stand.snout_height"]["unit"].string(), "m");
}

TEST(Report, StopsWhenCancelled) {
  const std::atomic<bool> cancel = true;
  EXPECT_FALSE(buildReport(scenario(), project(), "", {}, task::Task(&cancel)).has_value());
}

TEST(Report, TellsHowFarItHasCome) {
  std::vector<double> told;
  ASSERT_TRUE(buildReport(scenario(), project(), "", without(false),
                          task::Task(nullptr, [&](double share) { told.push_back(share); })));
  EXPECT_TRUE(std::is_sorted(told.begin(), told.end()));
  EXPECT_EQ(told.back(), 1);
}

}  // namespace
}  // namespace zyga::report
