#include <sys/stat.h>

#include <map>

#include "app/verbs/verbs.h"
#include "core/files/project/project.h"
#include "core/files/scan/clean_scan.h"
#include "tests/app/program.h"
#include "tests/core/files/example_skeleton.h"

namespace zyga::app {
namespace {

namespace fs = std::filesystem;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

/// The small animal with a scanned third cervical, kept beside it and as one file.
class ProjectFileVerbs : public Program {
 protected:
  ProjectFileVerbs() { setCache(ZYGAPOSE_TEST_CACHE); }
  void SetUp() override {
    auto project = files::readProject(path(smallAnimal()));
    files::CleanScan clean;
    clean.mesh = files::example::boxMesh({0.15, 0.05, 0.06}, 4);
    const auto& bone = project.specimen()[*project.specimen().findBone("C3")];
    project.scans.push_back(files::projectScan(clean, bone, anatomy::ScanUnit::Metre, "C3.stl"));
    project.setSpecimen(files::specimenOf(project.table, project.scans));
    mesh_ = project.scans[0].scan.file;
    text_ = files::writeProjectText(project);
    files::saveProject(project, path("scanned.zyga"));
    fs::create_directory(path("packed"));
    files::saveProject(project, path("packed") / "scanned.zygazip");
  }
  static int timesIn(const std::string& text, const std::string& what) {
    int times = 0;
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++times;
    return times;
  }

  std::string mesh_, text_;
};

TEST_F(ProjectFileVerbs, EveryVerbThatReadsAProjectNamesAScanThatIsMissing) {
  fs::remove(path(mesh_));
  const std::string p = "scanned.zyga";
  std::map<std::string, std::vector<std::string>> runs{
      {"assess", {p}},
      {"neutral", {p, "--json"}},
      {"limits", {p, "--joint", "C3-C4"}},
      {"stand", {p, "--out", "o.zyga"}},
      {"reach", {p, "--bone", "skull", "--to", "5,0,3", "--out", "o.zyga"}},
      {"bend", {p, "--joint", "C3-C4", "--dorsiflexion", "1", "--out", "o.zyga"}},
      {"export", {p, "--triangles", "200", "--out", "o.stl"}},
      {"picture", {p, "--view", "left", "--width", "240", "--out", "o.png"}},
      {"sheet", {p, "--layout", "side", "--bones", "outline", "--out", "o.svg"}},
      {"compare", {"small.zyga", p}},
      {"report", {p, "--no-studies", "--out", "o.html"}},
      {"mass", {p}},
      {"study", {p, "--kind", "elevation", "--out", "o.json"}},
      {"claim", {p, "--head-height-m", "2"}}};
  for (const Verb& verb : verbs()) {
    if (verb.spec.file.find("FILE.zyga") == std::string_view::npos) continue;
    const std::string name(verb.spec.name);
    ASSERT_TRUE(runs.contains(name)) << name << " reads a project: run it here";
    std::vector<std::string> words = runs[name];
    words.insert(words.begin(), name);
    const auto ended = run(words);
    EXPECT_NE(ended.exit, 2) << name << ": " << ended.err;
    EXPECT_THAT(ended.err, AllOf(HasSubstr("warning: "), HasSubstr("C3"), HasSubstr(mesh_), HasSubstr("sculpted"),
                                 HasSubstr("there is no such file"), HasSubstr("put it back")))
        << name;
    EXPECT_EQ(timesIn(ended.err, "there is no such file"), 1) << name << ": " << ended.err;
    if (name == "neutral") {
      EXPECT_FALSE(ended.json().isEmpty()) << "what machines read stays clean";
    }
  }
}

TEST_F(ProjectFileVerbs, AScanThatIsAPipeKeepsNobodyWaiting) {
  fs::remove(path(mesh_));
  ASSERT_EQ(mkfifo(path(mesh_).c_str(), 0600), 0);
  const auto ended = run({"assess", "scanned.zyga"});
  EXPECT_NE(ended.exit, 2);
  EXPECT_THAT(ended.err, AllOf(HasSubstr(mesh_), HasSubstr("it is a pipe, not a plain file")));
}

TEST_F(ProjectFileVerbs, SavingTellsWhereTheScansAre) {
  const auto beside =
      run({"bend", "scanned.zyga", "--joint", "C3-C4", "--dorsiflexion", "1", "--out", "packed/b.zyga"});
  EXPECT_EQ(beside.exit, 0) << beside.err;
  EXPECT_THAT(beside.out, AllOf(HasSubstr("wrote packed/b.zyga"), HasSubstr("new folder packed/scans")));
  const auto again = run({"bend", "scanned.zyga", "--joint", "C3-C4", "--dorsiflexion", "1", "--out", "packed/b.zyga"});
  EXPECT_THAT(again.out, AllOf(HasSubstr("in the folder packed/scans"), Not(HasSubstr("new folder"))));
  const auto inside = run({"bend", "scanned.zyga", "--joint", "C3-C4", "--dorsiflexion", "1", "--out", "b.zygazip"});
  EXPECT_THAT(inside.out, AllOf(HasSubstr("wrote b.zygazip"), HasSubstr("inside the project file")));
  const auto machine = run({"neutral", "scanned.zyga", "--json", "--out", "n.zygazip"});
  EXPECT_FALSE(machine.json().isEmpty());
  EXPECT_THAT(machine.err, HasSubstr("inside the project file"));
  EXPECT_THAT(run({"bend", "small.zyga", "--joint", "C3-C4", "--dorsiflexion", "1", "--out", "s.zyga"}).out,
              Not(HasSubstr("scans")));
}

TEST_F(ProjectFileVerbs, NoFolderIsMadeUnasked) {
  const auto ended = run({"bend", "scanned.zyga", "--joint", "C3-C4", "--dorsiflexion", "1", "--out", "none/b.zyga"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_THAT(ended.err, HasSubstr("there is no folder none"));
  EXPECT_FALSE(fs::exists(path("none")));
}

TEST_F(ProjectFileVerbs, OneFileGoesThroughAllVerbsAndBack) {
  const std::string one = "packed/scanned.zygazip";
  ASSERT_EQ(run({"bend", one, "--joint", "C3-C4", "--dorsiflexion", "1", "--out", one}).exit, 0);
  EXPECT_TRUE(files::isContainer(path(one)));
  EXPECT_FALSE(fs::exists(path("packed") / "scans"));
  const auto assessed = run({"assess", one, "--json"});
  EXPECT_NE(assessed.exit, 2);
  EXPECT_EQ(assessed.err, "");
  EXPECT_EQ(run({"export", one, "--triangles", "200", "--out", "one.stl"}).exit, 0);
  ASSERT_EQ(run({"bend", "scanned.zyga", "--joint", "C3-C4", "--dorsiflexion", "1", "--out", "two.zyga"}).exit, 0);
  EXPECT_EQ(run({"export", "two.zyga", "--triangles", "200", "--out", "two.stl"}).exit, 0);
  EXPECT_TRUE(bytes("one.stl") == bytes("two.stl"));
  ASSERT_EQ(run({"bend", one, "--joint", "C3-C4", "--dorsiflexion", "0", "--out", "packed/back.zyga"}).exit, 0);
  EXPECT_EQ(bytes("packed/" + mesh_), bytes(mesh_));
  ASSERT_EQ(run({"make", "small.csv", "--out", "made.zygazip"}).exit, 0);
  EXPECT_TRUE(files::isContainer(path("made.zygazip")));
}

TEST_F(ProjectFileVerbs, ADamagedOneFileIsOneMessageAndNothingIsWritten) {
  const std::string whole = bytes("packed/scanned.zygazip");
  write("cut.zygazip", whole.substr(0, whole.size() / 2));
  const auto ended = run({"bend", "cut.zygazip", "--joint", "C3-C4", "--dorsiflexion", "1", "--out", "b.zyga"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_THAT(ended.err, AllOf(HasSubstr("cut.zygazip"), HasSubstr("cut short or damaged")));
  EXPECT_EQ(timesIn(ended.err, "\n"), 1);
  EXPECT_FALSE(fs::exists(path("b.zyga")));
}

}  // namespace
}  // namespace zyga::app
