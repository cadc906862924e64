#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/files/example_project.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

using testing::HasSubstr;

Project withNotes() {
  Project project = example::everything();
  project.notes = {{*anatomy::parseBoneId("skull"),
                    {0.1 / 3, -0.02, 1e-9},
                    "nostril high and \"fleshy\"",
                    anatomy::NoteBasis::LivingRelatives,
                    "invented"},
                   {*anatomy::parseBoneId("C3"), {0, 0, 0.2}, "keel of horn", anatomy::NoteBasis::Conjecture, ""}};
  project.sheet.layout = SheetLayout::Evidence;
  project.sheet.scale = 75;
  project.sheet.person = 0;
  project.sheet.title = "Wall sheet";
  return project;
}

std::string faultOf(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  if (at == std::string::npos) return "the text to damage is missing";
  text.replace(at, from.size(), to);
  try {
    parseProject(text, "a.zyga");
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "no fault";
}

TEST(ProjectNotes, ComeBackToTheBitAndSoDoesTheSheet) {
  const Project project = withNotes();
  const Project back = parseProject(writeProjectText(project), "a.zyga");
  EXPECT_EQ(back.notes, project.notes);
  EXPECT_EQ(back.sheet, project.sheet);
}

TEST(ProjectNotes, WithoutThemNothingIsWritten) {
  const std::string text = writeProjectText(example::everything());
  EXPECT_THAT(text, testing::Not(HasSubstr("\"notes\"")));
  EXPECT_THAT(text, testing::Not(HasSubstr("\"sheet\"")));
  EXPECT_EQ(parseProject(text, "a.zyga").sheet, Sheet{});
}

TEST(ProjectNotes, FaultsAreToldWithTheirPlace) {
  const std::string text = writeProjectText(withNotes());
  EXPECT_THAT(faultOf(text, "\"bone\": \"skull\", \"point_mm\"", "\"bone\": \"horn\", \"point_mm\""),
              HasSubstr("notes[0].bone: there is no bone \"horn\""));
  EXPECT_THAT(faultOf(text, "\"conjecture\"", "\"guess\""), HasSubstr("notes[1].basis"));
  EXPECT_THAT(faultOf(text, "\"layout\": \"evidence\"", "\"layout\": \"poster\""), HasSubstr("sheet.layout"));
  EXPECT_THAT(faultOf(text, "\"scale\": 75", "\"scale\": -75"), HasSubstr("must be 0 or from 1 to 1000"));
}

TEST(ProjectNotes, RefuseToBeWrittenWithoutAPlace) {
  Project project = withNotes();
  project.notes[0].p_B.x() = std::nan("");
  EXPECT_THROW(writeProjectText(project), FileError);
}

}  // namespace
}  // namespace zyga::files
