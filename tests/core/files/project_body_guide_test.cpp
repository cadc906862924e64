#include "core/files/project/project_body_guide.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

#include "tests/core/files/example_project.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

using testing::HasSubstr;
using testing::Not;

Project withGuide() {
  auto project = example::everything();
  project.guide = {0.011, 0.0525, 0.133, 0.07, 0.1111, 0.09, 0.04, 1.9, 1.3};
  return project;
}

std::string errorOf(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  try {
    parseProject(text.replace(at, from.size(), to), "guide.zyga");
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

TEST(ProjectBodyGuide, ComesBackToTheBit) {
  const auto project = withGuide();
  const auto text = writeProjectText(project);
  EXPECT_THAT(text, HasSubstr("\"body_guide\": {\"head_and_feet_mm\": 11, \"neck_mm\": 52.5,"));
  EXPECT_THAT(text, HasSubstr("\"tail_percent_of_bone_width\": 190"));
  const auto read = parseProject(text, "guide.zyga");
  EXPECT_EQ(read.guide, project.guide);
  EXPECT_EQ(writeProjectText(read), text);
}

TEST(ProjectBodyGuide, AFileWithoutItHasTheUsualOne) {
  const auto text = writeProjectText(example::everything());
  EXPECT_THAT(text, Not(HasSubstr("body_guide")));
  EXPECT_EQ(parseProject(text, "old.zyga").guide, solid::GuideThickness{});
}

TEST(ProjectBodyGuide, WrongValuesAreTold) {
  const auto text = writeProjectText(withGuide());
  EXPECT_THAT(errorOf(text, "\"neck_mm\": 52.5", "\"neck_mm\": -1"),
              HasSubstr("body_guide.neck_mm: must be from 0 to 600"));
  EXPECT_THAT(errorOf(text, "bone_width\": 190", "bone_width\": 50"), HasSubstr("must be from 100 to 300"));
  EXPECT_THAT(errorOf(text, "\"neck_mm\"", "\"nek_mm\""), HasSubstr("nek_mm"));
  EXPECT_THAT(errorOf(text, "\"trunk_mm\": 70", "\"trunk_mm\": \"70\""), HasSubstr("body_guide.trunk_mm"));
  auto project = withGuide();
  project.guide.trunk = std::numeric_limits<double>::quiet_NaN();
  EXPECT_THROW(writeProjectText(project), FileError);
}

}  // namespace
}  // namespace zyga::files
