#include "core/files/disk/atomic_file.h"
#include "core/files/project/project.h"
#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class MakeVerb : public Program {};

// Giraffatitan brancai MB.R.2180, C2 to C7 (Janensch 1950, as tabulated in Taylor's manuscript data), cm.
constexpr const char* kJanenschNeck =
    "# specimen: MB.R.2180\n# plan: high browser\n"
    "bone,length (cm),cotyle height (cm),cotyle width (cm),evidence,source\n"
    "C2,23.2,10.0,8.2,found,Janensch 1950\nC3,30.6,11.6,12.3,found,Janensch 1950\n"
    "C4,45.7,13.8,13.2,found,Janensch 1950\nC5,56.0,15.2,17.8,found,Janensch 1950\n"
    "C6,69.1,15.0,22.1,found,Janensch 1950\nC7,70.5,22.5,19.8,found,Janensch 1950\n";

TEST_F(MakeVerb, APublishedNeckBecomesAWholeAnimal) {
  write("neck.csv", kJanenschNeck);
  const auto made = run({"make", "neck.csv", "--out", "whole.zyga"});
  ASSERT_EQ(made.exit, 0) << made.err;
  EXPECT_THAT(made.out,
              AllOf(HasSubstr("MB.R.2180"), HasSubstr("18 cells measured"), HasSubstr("inferred and marked")));
  const auto project = files::readProject(path("whole.zyga"));
  double sum = 0;
  for (int number = 2; number <= 7; ++number) {
    const auto* row = project.table.find({anatomy::BoneKind::Cervical, number});
    ASSERT_TRUE(row);
    EXPECT_TRUE(row->measures[anatomy::Measure::Length].measured());
    sum += row->measures.value(anatomy::Measure::Length);
  }
  EXPECT_NEAR(sum, 2.951, 1e-9);
  const auto* femur = project.table.find({anatomy::BoneKind::Femur, 0, 0, anatomy::Side::Left});
  ASSERT_TRUE(femur);
  const auto& cell = femur->measures[anatomy::Measure::Length];
  EXPECT_TRUE(cell.known() && !cell.measured() && !cell.rule.empty());
}

TEST_F(MakeVerb, TheAnimalStandsAndCanBeAssessed) {
  write("neck.csv", kJanenschNeck);
  run({"make", "neck.csv", "--out", "whole.zyga"});
  const auto assessed = run({"assess", "whole.zyga", "--pose", "neutral standing", "--json"});
  EXPECT_EQ(assessed.exit, 0) << assessed.err;
  EXPECT_EQ(assessed.json()["pose"].toString(), "neutral standing");
}

TEST_F(MakeVerb, TellsEveryFaultWithLineAndColumnAndWritesNothing) {
  write("bad.csv", "# plan: high browser\nbone,length (mm),cotyle height (mm)\nC4,abc,100\nX9,300,\nC5,300,-4\n");
  const auto made = run({"make", "bad.csv", "--out", "bad.zyga"});
  EXPECT_EQ(made.exit, 2);
  EXPECT_THAT(made.err, AllOf(HasSubstr("bad.csv:3, column 2"), HasSubstr("bad.csv:4, column 1"),
                              HasSubstr("bad.csv:5, column 3"), HasSubstr("3 faults")));
  EXPECT_FALSE(std::filesystem::exists(path("bad.zyga")));
}

TEST_F(MakeVerb, JsonGivesTheSizes) {
  write("neck.csv", kJanenschNeck);
  const auto json = run({"make", "neck.csv", "--out", "whole.zyga", "--json"}).json();
  EXPECT_EQ(json["cells_measured"].toInt(), 18);
  EXPECT_GT(json["cells_inferred"].toInt(), 500);
  const auto summary = json["summary"].toObject();
  EXPECT_NEAR(summary["column_m"].toDouble() + summary["skull_m"].toDouble(), summary["total_m"].toDouble(), 1e-5);
}

TEST_F(MakeVerb, RefusesAFolderThatIsNotThere) {
  write("neck.csv", kJanenschNeck);
  const auto made = run({"make", "neck.csv", "--out", "no/whole.zyga"});
  EXPECT_EQ(made.exit, 2);
  EXPECT_THAT(made.err, HasSubstr("there is no folder no"));
}

TEST_F(MakeVerb, WhatIsHardToBelieveIsAWarningAtItsCell) {
  std::string neck = kJanenschNeck;
  neck.replace(neck.find("13.8"), 4, "138");
  write("slip.csv", neck);
  const auto made = run({"make", "slip.csv", "--out", "slip.zyga"});
  EXPECT_EQ(made.exit, 0) << made.err;
  EXPECT_THAT(made.err, AllOf(HasSubstr("warning: slip.csv:6, column 3 (C4, cotyle height): C4, cotyle height: 1380.0"),
                              HasSubstr("would be expected from"), HasSubstr("10 times too large?")));
  EXPECT_TRUE(std::filesystem::exists(path("slip.zyga")));
}

TEST_F(MakeVerb, ABlankTableIsWrittenFilledInAndMade) {
  const auto blank = run({"make", "--blank", "blank.csv", "--plan", "low browser"});
  EXPECT_EQ(blank.exit, 0) << blank.err;
  EXPECT_THAT(blank.out, HasSubstr("wrote blank.csv"));
  std::string text = files::readWhole(path("blank.csv"));
  EXPECT_THAT(text, AllOf(HasSubstr("# plan: low browser\n# cervicals: 15\n"), HasSubstr("\nfemur.L,,"),
                          HasSubstr("length (mm)"), HasSubstr("wedge (deg)")));
  EXPECT_TRUE(text.starts_with("# "));
  EXPECT_EQ(run({"make", "blank.csv", "--out", "plan.zyga"}).err, "");
  text.insert(text.find("\nfemur.L,") + 9, "1500");
  write("filled.csv", text.c_str());
  const auto made = run({"make", "filled.csv", "--out", "filled.zyga"});
  EXPECT_EQ(made.exit, 0) << made.err;
  EXPECT_THAT(made.out, HasSubstr("1 cells measured"));
}

TEST_F(MakeVerb, ABlankTableReplacesNothing) {
  write("neck.csv", kJanenschNeck);
  const auto over = run({"make", "--blank", "neck.csv"});
  EXPECT_EQ(over.exit, 2);
  EXPECT_THAT(over.err, HasSubstr("neck.csv is there already and is not written over"));
  EXPECT_EQ(files::readWhole(path("neck.csv")), kJanenschNeck);
  const auto itself = run({"make", "neck.csv", "--out", "./neck.csv"});
  EXPECT_EQ(itself.exit, 2);
  EXPECT_THAT(itself.err, HasSubstr("./neck.csv is the table that is read"));
  EXPECT_EQ(files::readWhole(path("neck.csv")), kJanenschNeck);
  EXPECT_EQ(run({"make", "neck.csv", "--blank", "new.csv"}).exit, 2);
  EXPECT_EQ(run({"make", "--blank", "new.csv", "--out", "new.zyga"}).exit, 2);
  EXPECT_EQ(run({"make", "neck.csv", "--out", "new.zyga", "--plan", "low browser"}).exit, 2);
  EXPECT_THAT(run({"make", "--blank", "new.csv", "--plan", "crawler"}).err, HasSubstr("low browser"));
  EXPECT_FALSE(std::filesystem::exists(path("new.csv")) || std::filesystem::exists(path("new.zyga")));
  EXPECT_THAT(run({"make", "--out", "new.zyga"}).err, HasSubstr("TABLE.csv"));
}

TEST_F(MakeVerb, BothSamplesAreMadeWithoutAWarning) {
  for (const auto* sample : {"high_browser", "low_browser"}) {
    const auto made =
        run({"make", std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/" + sample + ".csv", "--out", "a.zyga"});
    EXPECT_EQ(made.exit, 0) << made.err;
    EXPECT_EQ(made.err, "");
    EXPECT_EQ(run({"assess", "a.zyga"}).exit, 0);
  }
}

}  // namespace
}  // namespace zyga::app
