#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/anatomy/plan/build_specimen.h"
#include "core/files/project/project.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

using anatomy::FillBy;
using anatomy::Measure;
using testing::HasSubstr;

Project facetsOfTheirOwn() {
  return projectFromTable(
      anatomy::readMeasurementTable("bone,length (mm),facet offset (mm),facet pitch (deg),postzyg height (mm),postzyg "
                                    "radius (mm)\nC6,420,,,190.5,-300\nC7,460,-31.25,-12.5,,\n",
                                    "t.csv")
          .table);
}

const anatomy::Cell& cell(const Project& project, const char* id, Measure measure) {
  return project.table.find(*anatomy::parseBoneId(id))->measures[measure];
}

TEST(ProjectCells, RulesSignsAndStandardErrorsComeBackToTheBit) {
  const Project project = facetsOfTheirOwn();
  const std::string text = writeProjectText(project);
  const Project again = parseProject(text, "t.zyga");
  EXPECT_EQ(again.table, project.table);
  EXPECT_EQ(writeProjectText(again), text);
  EXPECT_EQ(cell(again, "C7", Measure::FacetOffset).value, -0.03125);
  EXPECT_EQ(cell(again, "C7", Measure::FacetHeight).rule.by, FillBy::MatesWith);
  EXPECT_GT(cell(again, "C7", Measure::FacetHeight).standardError, 0);
  EXPECT_THAT(text, HasSubstr("\"facet height (mm)\": [190.5, \"by proportion\", \"mates-with C6\", 19]"));
}

TEST(ProjectCells, AMeasuredCellMayStateItsErrorToo) {
  Project project = facetsOfTheirOwn();
  project.table.find(*anatomy::parseBoneId("C7"))->measures[Measure::Length].standardError = 0.0125;
  const std::string text = writeProjectText(project);
  EXPECT_THAT(text, HasSubstr("\"length (mm)\": [460, \"measured\", \"\", 12.5]"));
  EXPECT_EQ(parseProject(text, "t.zyga").table, project.table);
}

std::string faultIn(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  try {
    parseProject(text.replace(at, from.size(), to), "t.zyga");
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

TEST(ProjectCells, FaultsAreNamed) {
  const std::string text = writeProjectText(facetsOfTheirOwn());
  const std::string height = "[190.5, \"by proportion\", \"mates-with C6\", 19]";
  EXPECT_THAT(faultIn(text, height, "[190.5, \"by proportion\", \"mates-with C6\", -19]"),
              HasSubstr("facet height (mm)"));
  EXPECT_THAT(faultIn(text, height, "[190.5, \"by proportion\", \"mates-with C6\", 19, 1]"),
              HasSubstr("expected [value"));
  EXPECT_THAT(faultIn(text, height, "[-190.5, \"by proportion\", \"mates-with C6\", 19]"),
              HasSubstr("facet height (mm)"));
}

// As a program wrote it that knew neither standard errors nor the facets of the other end.
TEST(ProjectCells, OlderFilesOpenAndBuildTheSame) {
  const Project now = projectFromTable({});
  Project older = now;
  for (auto& row : older.table.rows)
    for (int m = 0; m < anatomy::kMeasureCount; ++m) {
      auto& c = row.measures[static_cast<Measure>(m)];
      c.standardError = 0;
      if (m >= static_cast<int>(Measure::FacetOffset) || m == static_cast<int>(Measure::PostzygLength)) c = {};
    }
  const Project opened = parseProject(writeProjectText(older), "t.zyga");
  ASSERT_EQ(opened.specimen().bones.size(), now.specimen().bones.size());
  for (std::size_t i = 0; i < now.specimen().bones.size(); ++i) {
    const auto &a = opened.specimen().bones[i].facets, &b = now.specimen().bones[i].facets;
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t f = 0; f < a.size(); ++f) {
      EXPECT_EQ(a[f].centre, b[f].centre);
      EXPECT_EQ(a[f].normal, b[f].normal);
      EXPECT_EQ(a[f].outline, b[f].outline);
    }
  }
}

}  // namespace
}  // namespace zyga::files
