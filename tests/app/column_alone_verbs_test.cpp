#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

#include "tests/app/program.h"

/// Animals that are a column alone: mammals and birds to compare with, from a table and from folders of scans.
namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

class ColumnAlone : public Program {
 protected:
  /// A folder of the open bone data; empty where they are absent.
  static std::filesystem::path data(const std::string& folder) {
    const char* given = std::getenv("ZYGAPOSE_DATA");
    const std::filesystem::path path = (given ? given : ZYGAPOSE_SHARED_DATA) + ("/" + folder);
    return std::filesystem::exists(path) ? path : std::filesystem::path();
  }

  std::string madeOf(const std::string& plan) const {
    write("column.csv", "# plan: " + plan + "\nbone,length (mm),evidence,source\nC5,36,found,invented\n");
    EXPECT_EQ(run({"make", "column.csv", "--out", "column.zyga"}).exit, 0);
    return "column.zyga";
  }
};

// What needs a head or feet says so; nothing is made up, and nothing is told of bones that are not there.
TEST_F(ColumnAlone, IsAnsweredOrRefusedWithAReason) {
  for (const char* plan : {"mammal", "bird"}) {
    const std::string column = madeOf(plan);
    const std::vector<std::vector<std::string>> answered{
        {"assess", column},
        {"limits", column},
        {"neutral", column, "--cartilage-percent", "9", "--out", "o.zyga"},
        {"bend", column, "--joint", "C4-C5", "--dorsiflexion", "5", "--out", "o.zyga"},
        {"reach", column, "--bone", "C1", "--to", "0.2,0,0.1", "--free", "--out", "o.zyga"},
        {"study", column, "--kind", "elevation"},
        {"study", column, "--kind", "range"},
        {"study", column, "--kind", "stress"},
        {"claim", column, "--neck-slope-deg", "20"},
        {"claim", column, "--tail-base-deg", "20"},
        {"mass", column},
        {"compare", column, column}};
    for (const auto& verb : answered) {
      const auto ended = run(verb);
      EXPECT_NE(ended.exit, 2) << plan << " " << verb[0] << ": " << ended.err;
      EXPECT_THAT(ended.out, AllOf(Not(HasSubstr("snout")), Not(HasSubstr("skull")), Not(HasSubstr("nan")),
                                   Not(HasSubstr("femur"))))
          << plan << " " << verb[0];
    }
    const std::vector<std::vector<std::string>> refused{
        {"study", column, "--kind", "envelope"},      {"study", column, "--kind", "spread", "--draws", "5"},
        {"study", column, "--kind", "pressure"},      {"claim", column, "--head-height-m", "1"},
        {"claim", column, "--ground-ahead-m", "0.2"}, {"stand", column, "--stance", "drink", "--out", "o.zyga"}};
    for (const auto& verb : refused) {
      const auto ended = run(verb);
      EXPECT_EQ(ended.exit, 2) << plan << " " << verb[0];
      EXPECT_THAT(ended.err, testing::AnyOf(HasSubstr("no skull"), HasSubstr("foot"))) << plan << " " << verb[0];
    }
  }
}

TEST_F(ColumnAlone, IsMadeOfAPlanOrGoesIntoAProjectButNotBoth) {
  const std::string column = madeOf("mammal");
  write("C5.obj", "o C5\n");
  const auto both = run({"scan", "C5.obj", "--plan", "mammal", "--into", column, "--out", "o.zyga"});
  EXPECT_EQ(both.exit, 2);
  EXPECT_THAT(both.err, HasSubstr("leave out one of --plan and --into"));
  const auto unknown = run({"scan", "C5.obj", "--plan", "fish", "--out", "o.zyga"});
  EXPECT_EQ(unknown.exit, 2);
  EXPECT_THAT(unknown.err, AllOf(HasSubstr("'fish'"), HasSubstr("mammal")));
}

// From the whole folder to joints that are assessed, by one verb. Lateral flexion of at least 8 degrees a side with
// axial rotation to the same side: living dogs bend C4-C5 with coupling (Hofstetter et al. 2009, Vet. Surg. 38:49).
TEST_F(ColumnAlone, ADogsFolderAloneMakesAnAssessedColumn) {
  const auto folder = data("dog");
  if (folder.empty()) GTEST_SKIP() << "the open bone data are absent";
  const auto ended = run({"scan", folder.string(), "--plan", "mammal", "--suggest", "--out", "dog.zyga"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, AllOf(HasSubstr("cartilage of the neck"), HasSubstr("is L7,"), HasSubstr("is Ca21,"),
                               HasSubstr("the animal has no femur.L")));
  const auto assessed = run({"assess", "dog.zyga", "--json"}).json();
  const auto limits = run({"limits", "dog.zyga", "--json"}).json();
  for (const char* id : {"C3-C4", "C4-C5", "C5-C6", "C6-C7"}) {
    EXPECT_EQ(levelOf(assessed, id), "supported") << id;
    const auto joint = jointOf(limits, id);
    for (const char* side : {"left", "right"}) {
      const auto end = joint[side].toObject();
      EXPECT_GE(std::abs(end["deg"].toDouble()), 8) << id << " " << side;
    }
  }
  for (const char* id : {"L1-L2", "L3-L4", "L6-L7", "L7-S1"}) EXPECT_EQ(levelOf(assessed, id), "supported") << id;
}

TEST_F(ColumnAlone, AHumanLoinAloneMakesAnAssessedColumn) {
  const auto folder = data("lumbar");
  if (folder.empty()) GTEST_SKIP() << "the open bone data are absent";
  std::vector<std::string> verb{"scan"};
  for (const char* bone : {"L1", "L2", "L3", "L4", "L5", "S1"}) verb.push_back((folder / bone).string() + ".obj");
  verb.insert(verb.end(), {"--plan", "mammal", "--suggest", "--out", "loin.zyga"});
  const auto ended = run(verb);
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto assessed = run({"assess", "loin.zyga", "--json"}).json();
  for (const char* id : {"L1-L2", "L2-L3", "L3-L4", "L4-L5", "L5-S1"})
    EXPECT_EQ(levelOf(assessed, id), "supported") << id;
}

}  // namespace
}  // namespace zyga::app
