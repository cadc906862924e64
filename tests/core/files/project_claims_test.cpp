#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

#include "core/files/project/project.h"
#include "tests/core/files/example_project.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

using study::Bound;
using study::ClaimKind;
using testing::HasSubstr;
using testing::Not;

constexpr double kDegree = std::numbers::pi / 180;

Project withClaims() {
  auto project = example::everything();
  project.claims = {{ClaimKind::HeadHeight, Bound::AtLeast, 8.5, 0, "an invented \"paper\", 2020"},
                    {ClaimKind::NeckSlope, Bound::AtMost, 20 * kDegree},
                    {ClaimKind::NeckBaseSlope, Bound::AtLeast, 40 * kDegree},
                    {ClaimKind::SnoutToGround, Bound::AtLeast, 2.005},
                    {ClaimKind::HeadAhead, Bound::AtLeast, 3, -1.25},
                    {ClaimKind::TailBaseLevel, Bound::AtLeast, 10 * kDegree}};
  return project;
}

std::string errorOf(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  try {
    parseProject(text.replace(at, from.size(), to), "claims.zyga");
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

TEST(ProjectClaims, ComeBackToTheBit) {
  const auto project = withClaims();
  const auto text = writeProjectText(project);
  const auto read = parseProject(text, "claims.zyga");
  EXPECT_EQ(read.claims, project.claims);
  EXPECT_EQ(writeProjectText(read), text);
}

TEST(ProjectClaims, TakeOneLineAndTellTheirUnit) {
  const auto text = writeProjectText(withClaims());
  EXPECT_THAT(text, HasSubstr("{\"kind\": \"head height\", \"value_mm\": 8500, \"source\": \"an invented "
                              "\\\"paper\\\", 2020\"}"));
  EXPECT_THAT(text, HasSubstr("{\"kind\": \"neck slope\", \"bound\": \"at most\", \"value_deg\": 20}"));
  EXPECT_THAT(text, HasSubstr("{\"kind\": \"head ahead\", \"value_mm\": 3000, \"ahead_mm\": -1250}"));
}

// Files from before there were claims have no such member; a project without claims writes none.
TEST(ProjectClaims, OlderFilesHaveNone) {
  const auto text = writeProjectText(example::everything());
  EXPECT_THAT(text, Not(HasSubstr("\"claims\"")));
  EXPECT_TRUE(parseProject(text, "old.zyga").claims.empty());
}

TEST(ProjectClaims, FaultsAreToldWithTheirPlace) {
  const auto text = writeProjectText(withClaims());
  EXPECT_THAT(errorOf(text, "\"kind\": \"head height\"", "\"kind\": \"head size\""),
              HasSubstr("claims[0].kind: \"head size\" is no kind of claim; there are head height, neck slope"));
  EXPECT_THAT(errorOf(text, "\"value_mm\": 8500", "\"value_mm\": 85000"),
              HasSubstr("claims[0]: the value of a claim on head height must be from 0.00\u00A0m to 30.00\u00A0m"));
  EXPECT_THAT(errorOf(text, "\"value_mm\": 8500", "\"value_deg\": 8500"), HasSubstr("claims[0]"));
  EXPECT_THAT(errorOf(text, "\"bound\": \"at most\"", "\"bound\": \"about\""),
              HasSubstr("is not among at least, at most"));
  EXPECT_THAT(errorOf(text, "\"value_mm\": 8500", "\"value_mm\": 8500, \"colour\": 1"), HasSubstr("colour"));
}

TEST(ProjectClaims, RefuseToBeWrittenWithoutANumber) {
  auto project = withClaims();
  project.claims[0].value = std::nan("");
  EXPECT_THROW(writeProjectText(project), FileError);
}

}  // namespace
}  // namespace zyga::files
