#include "ui/report/report_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/study/stress/pressure.h"
#include "tests/core/files/example_project.h"
#include "ui/report/report_html.h"
#include "ui/report/report_sections.h"

namespace zyga::ui {
namespace {

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

report::ReportData made(bool claimsOnly = false, bool studies = false) {
  report::ReportOptions options;
  options.claimsOnly = claimsOnly;
  options.studies = studies;
  return *report::buildReport(scenarioOf(project()), project(), "", options);
}

const ReportText& plain() {
  static const ReportText text = reportText(made());
  return text;
}

QStringList headings(const ReportText& text) {
  QStringList out;
  for (const ReportSection& section : text.sections) out << section.heading;
  return out;
}

TEST(ReportText, HoldsEverythingAnAdviserAsksFor) {
  for (const char* heading : {"Pose", "Findings", "Claims", "Specimen", "Evidence", "Assumptions", "Limits of the neck",
                              "Mass and balance", "Angles of every joint", "Cautions"})
    EXPECT_TRUE(headings(plain()).contains(heading)) << heading;
  EXPECT_EQ(plain().title, "Quarry <seven> & more");
  EXPECT_EQ(plain().subtitle, "What the bones support; pose: present pose");
}

TEST(ReportText, StudiesAreSectionsWithFigures) {
  const ReportText text = reportText(made(false, true));
  for (const Figure figure :
       {Figure::Pose, Figure::Elevation, Figure::Envelope, Figure::RangeChart, Figure::Pressure, Figure::Stress})
    EXPECT_TRUE(std::any_of(text.sections.begin(), text.sections.end(), [&](const ReportSection& s) {
      return s.figure == figure;
    })) << static_cast<int>(figure);
}

TEST(ReportText, JointStressHasATableTheOtherViewAndItsSources) {
  const report::ReportData data = made(false, true);
  const ReportText text = reportText(data);
  const auto section = std::find_if(text.sections.begin(), text.sections.end(),
                                    [](const ReportSection& s) { return s.figure == Figure::Stress; });
  ASSERT_NE(section, text.sections.end());
  EXPECT_EQ(section->heading, "Joint stress along the neck");
  ASSERT_EQ(section->tables.size(), 1u);
  const auto* found = data.find<study::JointStress>();
  ASSERT_TRUE(found);
  ASSERT_EQ(section->tables[0].rows.size(), found->joints.size());
  EXPECT_EQ(section->tables[0].rows[0][0].toStdString(), found->joints[0].id);
  const std::string cautions = section->cautions.join(' ').toStdString();
  for (const char* words : {"Christian & Heinrich 1998", "common criticism, no source", "Tsuihiji 2004"})
    EXPECT_THAT(cautions, HasSubstr(words));
}

TEST(ReportText, AStudyThatGaveNothingSaysWhy) {
  report::ReportData data = made();
  data.studies = {{study::StudyKind::Pressure, {nullptr, reason::Reason(study::kNoDorsals)}}};
  const ReportText text = reportText(data);
  const auto section = std::find_if(text.sections.begin(), text.sections.end(),
                                    [](const ReportSection& s) { return s.heading == "Blood pressure"; });
  ASSERT_NE(section, text.sections.end());
  EXPECT_EQ(section->figure, Figure::None);
  EXPECT_EQ(section->sentences,
            QStringList{"This could not be worked out: The specimen has no dorsal vertebrae to place a heart under."});
}

TEST(ReportText, ClaimPageHoldsTheClaimsAndWhatTheyRestOn) {
  const ReportText text = reportText(made(true));
  EXPECT_EQ(headings(text), (QStringList{"Claims", "Assumptions", "Cautions"}));
  const std::string first = text.sections[0].sentences[0].toStdString();
  EXPECT_THAT(first, HasSubstr("1. "));
  EXPECT_THAT(first, HasSubstr("25"));
  EXPECT_THAT(first, HasSubstr("an invented adviser"));
  EXPECT_THAT(first, HasSubstr("Out of range"));
  EXPECT_THAT(first, HasSubstr("xceptionally unlikely: within range in less than "));
  EXPECT_TRUE(text.sections[0].sentences.join('\n').contains("\nFacets of the joints that bend: "));
  EXPECT_TRUE(text.sections[0].cautions.join(' ').contains("Mastrandrea"));
}

TEST(ReportText, IsTheSameEveryTime) { EXPECT_EQ(reportHtml(plain(), {}), reportHtml(reportText(made()), {})); }

TEST(ReportText, HtmlIsOneFileWithEveryTextEscaped) {
  const std::string page = reportHtml(plain(), {{Figure::Pose, "<img alt=\"here\">"}});
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

TEST(ReportText, BareDegreesRoundWithATrueMinusAndNoSignAtZero) {
  EXPECT_EQ(bareDegrees(0.1), "+5.7");
  EXPECT_EQ(bareDegrees(-0.1), QString(QChar(0x2212)) + "5.7");
  EXPECT_EQ(bareDegrees(1e-9), "0.0");
}

}  // namespace
}  // namespace zyga::ui
