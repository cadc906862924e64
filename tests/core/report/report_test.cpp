#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/anatomy/completeness.h"
#include "core/files/json/json.h"
#include "core/kinematics/stand_readings.h"
#include "core/range/neutral.h"
#include "core/report/gather.h"
#include "core/report/html.h"
#include "core/report/numbers.h"
#include "core/report/words.h"
#include "tests/core/files/example_project.h"

namespace zyga::report {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

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

Report made(bool claimsOnly = false, bool studies = false) {
  Options options;
  options.claimsOnly = claimsOnly;
  options.studies = studies;
  return gather(project(), "present pose", project().pose, options)->report;
}

const Report& plain() {
  static const Report report = made();
  return report;
}

std::vector<std::string> headings(const Report& report) {
  std::vector<std::string> out;
  for (const Section& section : report.sections) out.push_back(section.heading);
  return out;
}

double number(const Report& report, const std::string& key) {
  for (const Number& n : report.numbers)
    if (n.key == key) return n.value;
  return std::nan("");
}

TEST(Report, HoldsEverythingAnAdviserAsksFor) {
  for (const char* heading : {"Pose", "Findings", "Claims", "Specimen", "Evidence", "Assumptions", "Limits of the neck",
                              "Mass and balance", "Angles of every joint", "Cautions"})
    EXPECT_THAT(headings(plain()), Contains(heading));
}

TEST(Report, StudiesAreSectionsWithFigures) {
  const Report report = made(false, true);
  for (const Figure figure : {Figure::Pose, Figure::Elevation, Figure::Envelope, Figure::RangeChart, Figure::Pressure})
    EXPECT_TRUE(std::any_of(report.sections.begin(), report.sections.end(), [&](const Section& s) {
      return s.figure == figure;
    })) << static_cast<int>(figure);
}

TEST(Report, NumbersAreThoseOfTheProject) {
  const auto articulation = range::articulate(project().specimen, project().assumptions);
  const auto X_WB = place(project().specimen, articulation, project().pose);
  EXPECT_EQ(number(plain(), "stand.snout_height"), *kinematics::snoutHeight(project().specimen, X_WB));
  EXPECT_EQ(number(plain(), "completeness.found"),
            static_cast<double>(anatomy::completeness(project().specimen).found));
  const auto& joint = project().specimen.joints;
  const auto c6 = std::find_if(joint.begin(), joint.end(), [](const auto& j) { return j.id == "C6-C7"; });
  EXPECT_NEAR(number(plain(), "joint.C6-C7.flexion"),
              project().pose.angles[static_cast<std::size_t>(c6 - joint.begin())].x() * 180 / M_PI, 1e-12);
  EXPECT_EQ(number(plain(), "claim.1.supported"), 0);
}

TEST(Report, IsTheSameEveryTime) {
  const Report again = made();
  EXPECT_EQ(html(plain(), {}), html(again, {}));
  EXPECT_EQ(numbersCsv(plain()), numbersCsv(again));
  EXPECT_EQ(numbersJson(plain()), numbersJson(again));
}

TEST(Report, ClaimPageHoldsTheClaimsAndWhatTheyRestOn) {
  const Report report = made(true);
  EXPECT_EQ(headings(report), (std::vector<std::string>{"Claims", "Assumptions", "Cautions"}));
  EXPECT_THAT(report.sections[0].sentences[0], HasSubstr("1. "));
  EXPECT_THAT(report.sections[0].sentences[0], HasSubstr("25 m"));
  EXPECT_THAT(report.sections[0].sentences[0], HasSubstr("an invented adviser"));
  EXPECT_THAT(report.sections[0].sentences[0], HasSubstr("Not supported"));
}

TEST(Report, HtmlIsOneFileWithEveryTextEscaped) {
  const std::string page = html(plain(), {{Figure::Pose, "<img alt=\"here\">"}});
  EXPECT_THAT(page, HasSubstr("<h1>Quarry &lt;seven&gt; &amp; more</h1>"));
  EXPECT_THAT(page, Not(HasSubstr("<seven>")));
  EXPECT_THAT(page, HasSubstr("<figure><img alt=\"here\">"));
  for (const char* outside : {"http://", "https://", "src=\"/", "@import"}) EXPECT_THAT(page, Not(HasSubstr(outside)));
  const auto count = [&](const std::string& what) {
    int n = 0;
    for (auto at = page.find(what); at != std::string::npos; at = page.find(what, at + 1)) ++n;
    return n;
  };
  for (const char* tag : {"table", "section", "tr", "td", "th", "p"}) {
    const std::string open = std::string("<") + tag;
    EXPECT_EQ(count(open + ">") + count(open + " "), count(std::string("</") + tag + ">")) << tag;
  }
}

TEST(Report, NumbersReadBackFromCsvAndJson) {
  const std::string csv = numbersCsv(plain());
  EXPECT_THAT(csv, testing::StartsWith("key,value,unit\n"));
  EXPECT_THAT(csv, HasSubstr("\nassumptions.least_overlap,33.3"));
  const std::string text = numbersJson(plain());
  const files::JsonDocument document = files::parseJson(text, "numbers.json");
  const auto numbers = files::JsonPlace(document)["numbers"];
  EXPECT_EQ(numbers["stand.snout_height"]["value"].number(), number(plain(), "stand.snout_height"));
  EXPECT_EQ(numbers["stand.snout_height"]["unit"].string(), "m");
}

TEST(Report, StopsWhenCancelled) {
  std::atomic<bool> cancel{true};
  Options options;
  options.cancel = &cancel;
  EXPECT_FALSE(gather(project(), "present pose", project().pose, options).has_value());
}

TEST(ReportWords, RoundWithATrueMinusAndNoSignAtZero) {
  EXPECT_EQ(fixed(-1.25, 1), "\u22121.2");
  EXPECT_EQ(fixed(-0.01, 1), "0.0");
  EXPECT_EQ(signedDegrees(0.1), "+5.7");
  EXPECT_EQ(signedDegrees(-0.1), "\u22125.7");
  EXPECT_EQ(signedDegrees(1e-9), "0.0");
  EXPECT_EQ(percent(0.453125, 1), "45.3 %");
}

}  // namespace
}  // namespace zyga::report
