#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/files/project/project.h"
#include "tests/core/files/example_project.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

using testing::HasSubstr;
using testing::Not;

Project locked() {
  auto project = example::everything();
  project.lockedJoints = {project.specimen().findJoint("C6-C7").value(), project.specimen().findJoint("C8-C9").value()};
  std::sort(project.lockedJoints.begin(), project.lockedJoints.end());
  return project;
}

std::string errorOf(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  try {
    parseProject(text.replace(at, from.size(), to), "locks.zyga");
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

TEST(ProjectLocks, ComeBackByName) {
  const auto project = locked();
  const auto text = writeProjectText(project);
  EXPECT_THAT(text, HasSubstr("\"locked_joints\": ["));
  const auto read = parseProject(text, "locks.zyga");
  EXPECT_EQ(read.lockedJoints, project.lockedJoints);
  EXPECT_EQ(writeProjectText(read), text);
}

// Files from before joints could be locked have no such member; a project without locks writes none.
TEST(ProjectLocks, AreOptional) {
  const auto text = writeProjectText(example::everything());
  EXPECT_THAT(text, Not(HasSubstr("locked_joints")));
  EXPECT_TRUE(parseProject(text, "locks.zyga").lockedJoints.empty());
}

TEST(ProjectLocks, WrongNamesAreToldWithTheirPlace) {
  const auto text = writeProjectText(locked());
  EXPECT_THAT(errorOf(text, "[\"C8-C9\", \"C6-C7\"]", "[\"C8-C9\", \"C6-C9\"]"),
              testing::AllOf(HasSubstr("locked_joints[1]"), HasSubstr("no joint \"C6-C9\"")));
  EXPECT_THAT(errorOf(text, "[\"C8-C9\", \"C6-C7\"]", "[\"C6-C7\", \"C6-C7\"]"), HasSubstr("named twice"));
  EXPECT_THAT(errorOf(text, "[\"C8-C9\", \"C6-C7\"]", "\"C6-C7\""), HasSubstr("locked_joints"));
}

}  // namespace
}  // namespace zyga::files
