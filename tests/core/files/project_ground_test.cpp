#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/files/project/project.h"
#include "tests/core/files/example_project.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

using testing::HasSubstr;
using testing::Not;

study::Footprint print(const char* foot) {
  study::Footprint p;
  p.foot = foot;
  return p;
}

Project withGround() {
  auto project = example::everything();
  auto whole = print("LP1 \"deep\"");
  whole.pace = 0.6215;
  whole.nextPace = 0.66;
  whole.stride = 1.0601;
  whole.length = 0.33;
  whole.width = 0.14;
  whole.gauge = 0.355;
  whole.ahead = -0.05;
  project.trackway = {{whole, print("right"), print("")}, 4.586, 1.25, -0.5, 0.1};
  for (const auto part : study::kAllBodyParts) project.densities[part] = 700 + 10.5 * static_cast<int>(part);
  for (const auto part : study::kAllBodyParts)
    project.densities.hullFactors[static_cast<std::size_t>(part)] = 1.1 + 0.15 * static_cast<int>(part);
  return project;
}

std::string errorOf(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  try {
    parseProject(text.replace(at, from.size(), to), "tracks.zyga");
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

TEST(ProjectGround, ComesBackToTheBit) {
  const auto project = withGround();
  const auto text = writeProjectText(project);
  const auto read = parseProject(text, "tracks.zyga");
  EXPECT_EQ(read.trackway, project.trackway);
  EXPECT_EQ(read.densities, project.densities);
  EXPECT_EQ(writeProjectText(read), text);
}

TEST(ProjectGround, APrintTakesOneLineAndTellsItsUnit) {
  EXPECT_THAT(writeProjectText(withGround()),
              HasSubstr("{\"foot\": \"LP1 \\\"deep\\\"\", \"pace_mm\": 621.5, \"next_pace_mm\": 660,"));
}

// Files from before there were trackways have neither member; a project without them writes neither.
TEST(ProjectGround, WithoutThemAllIsAsInANewProject) {
  const auto text = writeProjectText(example::everything());
  EXPECT_THAT(text, Not(HasSubstr("trackway")));
  EXPECT_THAT(text, Not(HasSubstr("densities")));
  const auto read = parseProject(text, "tracks.zyga");
  EXPECT_EQ(read.trackway, study::Trackway{});
  EXPECT_EQ(read.densities, study::Densities{});
  EXPECT_THAT(text, Not(HasSubstr("hull_factors")));
}

TEST(ProjectGround, DamageIsToldWithItsPlaceInTheDocument) {
  const auto text = writeProjectText(withGround());
  EXPECT_THAT(errorOf(text, "\"pace_mm\": 621.5", "\"pace_mm\": \"far\""), HasSubstr("trackway.prints[0].pace_mm"));
  EXPECT_THAT(errorOf(text, "\"next_pace_mm\"", "\"mood\""), HasSubstr("mood"));
  EXPECT_THAT(errorOf(text, "\"hip_multiplier\": 4.586", "\"hip_multiplier\": 0"), HasSubstr("must be more than 0"));
  EXPECT_THAT(errorOf(text, "\"head\": 700", "\"head\": 7"), HasSubstr("densities_kg_m3.head"));
  EXPECT_THAT(errorOf(text, "\"head\": 1.1", "\"head\": 0.9"), HasSubstr("hull_factors.head"));
  EXPECT_THAT(errorOf(text, "\"head\": 1.1", "\"wing\": 1.1"), HasSubstr("wing"));
}

}  // namespace
}  // namespace zyga::files
