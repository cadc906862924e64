#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QTemporaryDir>
#include <fstream>
#include <sstream>

#include "core/files/disk/plain_file.h"
#include "core/files/project/project.h"
#include "core/files/project/project_faults.h"
#include "core/files/scan/clean_scan.h"
#include "tests/core/files/example_skeleton.h"
#include "tests/core/files/killed_saves.h"
#include "tests/core/files/zip_bytes.h"
#include "ui/words/say.h"

/// Where the meshes of scans are kept, beside the project or in it, and what is told when they are not there.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using testing::AllOf;
using testing::HasSubstr;

class ScannedProject : public testing::Test {
 protected:
  ScannedProject() {
    anatomy::MeasurementTable table;
    table.name = "Invented beast";
    table.counts = {4, 9, 4, 10};
    project_ = projectFromTable(table);
    addScan("C3", {0.2, 0.1, 0.15});
    addScan("C4", {0.25, 0.1, 0.15});
    project_.setSpecimen(specimenOf(project_.table, project_.scans));
  }

  void addScan(const char* id, const Eigen::Vector3d& half) {
    CleanScan clean;
    clean.mesh = example::boxMesh(half, 4);
    const auto& bone = project_.specimen()[*project_.specimen().findBone(id)];
    project_.scans.push_back(projectScan(clean, bone, anatomy::ScanUnit::Metre, "x.stl"));
  }
  fs::path folder() const { return folder_.path().toStdString(); }
  fs::path path(const std::string& name) const { return folder() / name; }
  fs::path meshOf(std::size_t i) const { return path(project_.scans[i].scan.file); }
  static std::string bytes(const fs::path& path) {
    std::ostringstream out;
    out << std::ifstream(path, std::ios::binary).rdbuf();
    return out.str();
  }
  std::vector<std::string> filesThere() const {
    std::vector<std::string> names;
    for (const auto& entry : fs::recursive_directory_iterator(folder()))
      if (entry.is_regular_file()) names.push_back(fs::relative(entry.path(), folder()).string());
    std::sort(names.begin(), names.end());
    return names;
  }
  static std::string said(const reason::Reason& reason) { return reason.empty() ? "" : ui::say(reason).toStdString(); }
  /// Cause of the trouble with the first scan, its file and what is said of it.
  struct Trouble {
    std::string cause, mend, said;
  };
  static Trouble troubleOf(const ProjectScan& kept) {
    if (kept.trouble.empty()) return {};
    const auto inner = [&](std::size_t i) {
      return std::string(std::get<reason::Inner>(kept.trouble.values.at(i))->id.text);
    };
    return {inner(2), inner(3), said(kept.trouble)};
  }
  Trouble troubleAtOpening() const { return troubleOf(readProject(path("beast.zyga")).scans[0]); }
  static std::string errorOf(const std::function<void()>& act) {
    try {
      act();
    } catch (const FileError& error) {
      return ui::sayFailure(error).toStdString();
    }
    return "";
  }
  void expectWhole(const Project& read) const {
    EXPECT_EQ(writeProjectText(read), writeProjectText(project_));
    ASSERT_EQ(read.scans.size(), project_.scans.size());
    for (std::size_t i = 0; i < read.scans.size(); ++i) {
      ASSERT_TRUE(read.scans[i].mesh) << said(read.scans[i].trouble);
      EXPECT_EQ(read.scans[i].mesh->positions, project_.scans[i].mesh->positions);
      EXPECT_EQ(read.scans[i].mesh->triangles, project_.scans[i].mesh->triangles);
    }
  }
  anatomy::Evidence evidenceOf(const Project& project, const char* id) const {
    return project.specimen()[*project.specimen().findBone(id)].evidence;
  }

  Project project_;

 private:
  QTemporaryDir folder_;
};

class ScansBeside : public ScannedProject {
 protected:
  ScansBeside() { saved_ = saveProject(project_, path("beast.zyga")); }
  ScansSaved saved_;
};

TEST_F(ScansBeside, SavingTellsWhereTheyAre) {
  EXPECT_EQ(saved_.kept, 2u);
  EXPECT_EQ(saved_.folder, path("scans"));
  EXPECT_TRUE(saved_.folderMade);
  const ScansSaved again = saveProject(project_, path("beast.zyga"));
  EXPECT_FALSE(again.folderMade);
  EXPECT_EQ(again.folder, path("scans"));
  expectWhole(readProject(path("beast.zyga")));
}

TEST_F(ScansBeside, SavingMakesNoOtherFolder) {
  EXPECT_THAT(errorOf([&] { saveProject(project_, path("new") / "beast.zyga"); }),
              AllOf(HasSubstr("there is no folder"), HasSubstr(path("new").string())));
  EXPECT_FALSE(fs::exists(path("new")));
}

TEST_F(ScansBeside, AMissingOneIsNamedAndItsStandInIsNotSaidToBeFound) {
  EXPECT_EQ(evidenceOf(readProject(path("beast.zyga")), "C3"), anatomy::Evidence::Found);
  fs::remove(meshOf(0));
  const Project read = readProject(path("beast.zyga"));
  const Trouble trouble = troubleOf(read.scans[0]);
  EXPECT_EQ(trouble.cause, "file.no-such-file");
  EXPECT_EQ(trouble.mend, "project.put-scan-back");
  EXPECT_THAT(trouble.said, AllOf(HasSubstr("C3"), HasSubstr(meshOf(0).string()), HasSubstr("sculpted"),
                                  HasSubstr("there is no such file"), HasSubstr("put it back")));
  EXPECT_EQ(evidenceOf(read, "C3"), anatomy::Evidence::Inferred);
  EXPECT_EQ(evidenceOf(read, "C4"), anatomy::Evidence::Found);
  EXPECT_EQ(read.scans[0].scan.evidence, anatomy::Evidence::Found) << "the record is as it was";
  EXPECT_EQ(writeProjectText(read), writeProjectText(project_));
}

TEST_F(ScansBeside, AFolderThatIsGoneIsNamed) {
  fs::remove_all(path("scans"));
  const Trouble trouble = troubleAtOpening();
  EXPECT_EQ(trouble.cause, "file.no-folder");
  EXPECT_THAT(trouble.said, HasSubstr("there is no folder " + path("scans").string()));
}

TEST_F(ScansBeside, AnythingButAPlainFileIsRefusedWithoutBeingOpened) {
  const auto with = [&](const std::function<void()>& put) {
    fs::remove_all(meshOf(0));
    put();
    const Trouble trouble = troubleAtOpening();
    EXPECT_EQ(trouble.cause, "file.not-plain") << trouble.said;
    EXPECT_EQ(trouble.mend, "project.put-plain-file");
    return trouble.said;
  };
  EXPECT_THAT(with([&] { fs::create_directory(meshOf(0)); }), HasSubstr("a folder"));
  EXPECT_THAT(with([&] { ASSERT_EQ(mkfifo(meshOf(0).c_str(), 0600), 0); }), HasSubstr("a pipe"));
  EXPECT_THAT(with([&] { fs::create_symlink("/dev/zero", meshOf(0)); }), HasSubstr("a device"));
  EXPECT_THAT(with([&] {
                ASSERT_EQ(mkfifo(path("pipe").c_str(), 0600), 0);
                fs::create_symlink(path("pipe"), meshOf(0));
              }),
              HasSubstr("a pipe"));
  const auto before = saveProject(project_, path("other.zyga"), ProjectForm::OneFile);
  EXPECT_EQ(before.kept, 2u);
  EXPECT_THAT(errorOf([&] { saveProject(project_, path("beast.zyga")); }),
              AllOf(HasSubstr("a pipe"), HasSubstr("cannot save")));
}

TEST_F(ScansBeside, ASocketALinkToNothingAndALinkToAPlainFile) {
  fs::rename(meshOf(0), path("elsewhere.bin"));
  fs::create_symlink(path("elsewhere.bin"), meshOf(0));
  EXPECT_EQ(troubleAtOpening().said, "") << "a link to the mesh is as good";
  fs::remove(path("elsewhere.bin"));
  EXPECT_EQ(troubleAtOpening().cause, "file.link-to-nothing");
  fs::remove(meshOf(0));
  fs::create_symlink(meshOf(0), meshOf(0));
  EXPECT_EQ(troubleAtOpening().cause, "file.link-loop");
  fs::remove(meshOf(0));
  const int socket = ::socket(AF_UNIX, SOCK_STREAM, 0);
  sockaddr_un address{};
  address.sun_family = AF_UNIX;
  const std::string place = meshOf(0).string();
  ASSERT_LT(place.size(), sizeof address.sun_path);
  place.copy(address.sun_path, place.size());
  ASSERT_EQ(bind(socket, reinterpret_cast<const sockaddr*>(&address), sizeof address), 0);
  EXPECT_THAT(troubleAtOpening().said, HasSubstr("a socket"));
  close(socket);
}

TEST_F(ScansBeside, AForbiddenOneIsNamed) {
  fs::permissions(folder(), fs::perms(0755));
  fs::permissions(meshOf(0), fs::perms(0));
  const bool root = geteuid() == 0;  // root may read everything; nobody may not
  if (root) {
    ASSERT_EQ(seteuid(65534), 0);
  }
  const Trouble trouble = troubleAtOpening();
  if (root) {
    ASSERT_EQ(seteuid(0), 0);
  }
  EXPECT_EQ(trouble.cause, "file.may-not-read");
  EXPECT_EQ(trouble.mend, "project.allow-reading");
  EXPECT_THAT(trouble.said, AllOf(HasSubstr("you may not read it"), HasSubstr("allow reading it")));
}

TEST_F(ScansBeside, AChangedOneIsNamedAndKeptWhenTheMeshIsSavedAgain) {
  std::ofstream(meshOf(0), std::ios::app) << "x";
  const Trouble trouble = troubleAtOpening();
  EXPECT_EQ(trouble.cause, "project.scan-changed");
  EXPECT_EQ(trouble.mend, "project.take-from-copy");
  const std::string theirs = bytes(meshOf(0));
  const ScansSaved saved = saveProject(project_, path("beast.zyga"));
  ASSERT_EQ(saved.setAside.size(), 1u);
  EXPECT_EQ(bytes(saved.setAside[0]), theirs) << "somebody's work is not overwritten";
  expectWhole(readProject(path("beast.zyga")));
}

TEST_F(ScansBeside, ABitThatTurnedIsSeenWhenTheMeshIsSavedAgain) {
  std::string rotten = bytes(meshOf(0));
  rotten[rotten.size() / 2] ^= 1;
  std::ofstream(meshOf(0), std::ios::binary) << rotten;
  EXPECT_EQ(troubleAtOpening().cause, "project.scan-changed");
  EXPECT_EQ(saveProject(project_, path("beast.zyga")).setAside.size(), 1u);
  EXPECT_EQ(troubleAtOpening().said, "");
}

TEST_F(ScansBeside, AMovedOneIsFoundByItsBytesAndPutBackBySaving) {
  fs::rename(meshOf(0), path("third neck bone.ply"));
  std::ofstream(path("unrelated.ply")) << "ply\nformat ascii 1.0\n";
  Project read = readProject(path("beast.zyga"));
  EXPECT_TRUE(read.scans[0].trouble.empty());
  EXPECT_THAT(said(read.scans[0].moved),
              AllOf(HasSubstr("C3"), HasSubstr(meshOf(0).string()), HasSubstr("third neck bone.ply")));
  EXPECT_EQ(evidenceOf(read, "C3"), anatomy::Evidence::Found);
  expectWhole(read);
  saveProject(read, path("beast.zyga"));
  EXPECT_TRUE(fs::exists(meshOf(0)));
  EXPECT_TRUE(fs::exists(path("third neck bone.ply")));
  EXPECT_TRUE(readProject(path("beast.zyga")).scans[0].moved.empty());
}

TEST_F(ScansBeside, TheyAreFoundInAFolderThatIsNamed) {
  fs::create_directories(path("attic") / "box");
  fs::rename(meshOf(0), path("attic") / "box" / "a.ply");
  fs::rename(meshOf(1), path("attic") / "b.ply");
  ASSERT_EQ(mkfifo((path("attic") / "pipe.ply").c_str(), 0600), 0);
  Project read = readProject(path("beast.zyga"));
  EXPECT_FALSE(read.scans[0].mesh);
  EXPECT_EQ(findScanMeshes(read.scans, path("attic")), 2u);
  EXPECT_TRUE(read.scans[0].trouble.empty());
  expectWhole(read);
  EXPECT_EQ(findScanMeshes(read.scans, path("attic")), 0u) << "nothing is wanted any more";
}

TEST_F(ScansBeside, ARecordThatLeadsOutIsNeitherSearchedNorWritten) {
  Project read = readProject(path("beast.zyga"));
  read.scans[0].mesh = nullptr;
  read.scans[0].scan.file = "../escaped.ply";
  loadScanMeshes(read.scans, path("beast.zyga"));
  EXPECT_EQ(troubleOf(read.scans[0]).cause, "project.scan-elsewhere");
  EXPECT_EQ(findScanMeshes(read.scans, folder()), 0u);
  EXPECT_EQ(saveProject(read, path("again.zyga")).lost, std::vector<std::string>{"C3"});
  EXPECT_FALSE(fs::exists(folder().parent_path() / "escaped.ply"));
}

class OneFile : public ScannedProject {};

TEST_F(OneFile, HoldsAllAndNothingLiesBesideIt) {
  const ScansSaved saved = saveProject(project_, path("beast.zygazip"));
  EXPECT_EQ(saved.kept, 2u);
  EXPECT_TRUE(saved.folder.empty());
  EXPECT_EQ(filesThere(), std::vector<std::string>{"beast.zygazip"});
  expectWhole(readProject(path("beast.zygazip")));
  const Container container(path("beast.zygazip"));
  EXPECT_EQ(container.read("project.json", 1 << 24), writeProjectText(project_));
  EXPECT_EQ(container.read(project_.scans[0].scan.file, 1 << 24), scanPly(*project_.scans[0].mesh));
}

TEST_F(OneFile, IsTheSameBytesEachTime) {
  saveProject(project_, path("a.zygazip"));
  saveProject(readProject(path("a.zygazip")), path("b.zygazip"));
  EXPECT_EQ(bytes(path("a.zygazip")), bytes(path("b.zygazip")));
}

TEST_F(OneFile, StaysOneUnderAnyNameUntilItIsSavedElsewhere) {
  saveProject(project_, path("beast.zygazip"));
  fs::rename(path("beast.zygazip"), path("beast.zyga"));
  EXPECT_EQ(formFor(path("beast.zyga")), ProjectForm::OneFile);
  saveProject(readProject(path("beast.zyga")), path("beast.zyga"));
  EXPECT_TRUE(isContainer(path("beast.zyga")));
  EXPECT_EQ(filesThere(), std::vector<std::string>{"beast.zyga"});
  saveProject(readProject(path("beast.zyga")), path("unpacked.zyga"));
  EXPECT_FALSE(isContainer(path("unpacked.zyga")));
  EXPECT_EQ(bytes(path("unpacked.zyga")), writeProjectText(project_));
  expectWhole(readProject(path("unpacked.zyga")));
  EXPECT_EQ(filesThere().size(), 4u);
}

TEST_F(OneFile, ABoneMirroredFromAnotherSharesItsMesh) {
  project_.scans.clear();
  addScan("humerus.L", {0.3, 0.05, 0.05});
  ProjectScan right = project_.scans[0];
  right.scan = anatomy::mirroredScan(right.scan);
  project_.scans.push_back(right);
  project_.setSpecimen(specimenOf(project_.table, project_.scans));
  saveProject(project_, path("beast.zygazip"));
  expectWhole(readProject(path("beast.zygazip")));
}

TEST_F(OneFile, AMeshThatIsDamagedInItIsNamedAndKeptAsItIs) {
  saveProject(project_, path("beast.zygazip"));
  std::string whole = bytes(path("beast.zygazip"));
  // By name C3 comes before C4: amid its packed bytes.
  whole[(whole.find(project_.scans[0].scan.file) + whole.find(project_.scans[1].scan.file)) / 2] ^= 1;
  std::ofstream(path("beast.zygazip"), std::ios::binary) << whole;
  Project read = readProject(path("beast.zygazip"));
  const Trouble trouble = troubleOf(read.scans[0]);
  EXPECT_EQ(trouble.cause, "container.damaged-inside");
  EXPECT_THAT(trouble.said, HasSubstr("beast.zygazip/" + project_.scans[0].scan.file));
  EXPECT_TRUE(read.scans[1].mesh);
  EXPECT_EQ(evidenceOf(read, "C3"), anatomy::Evidence::Inferred);
  const ScansSaved saved = saveProject(read, path("beast.zygazip"));
  EXPECT_EQ(saved.lost, std::vector<std::string>{"C3"});
  EXPECT_EQ(troubleOf(readProject(path("beast.zygazip")).scans[0]).cause, "container.damaged-inside")
      << "what may be mended is still there";
}

TEST_F(OneFile, AMeshThatIsNotInItIsNamedOrFoundBeside) {
  std::ofstream(path("beast.zygazip"), std::ios::binary)
      << example::zipBytes({{"project.json", writeProjectText(project_)}});
  EXPECT_EQ(troubleOf(readProject(path("beast.zygazip")).scans[0]).cause, "container.not-inside");
  saveProject(project_, path("beast.zyga"));
  const Project read = readProject(path("beast.zygazip"));
  expectWhole(read);
  EXPECT_THAT(said(read.scans[0].moved), HasSubstr(meshOf(0).string()));
}

TEST_F(OneFile, FaultsNameFileAndCause) {
  const auto refused = [&](const std::string& what) {
    std::ofstream(path("beast.zygazip"), std::ios::binary) << what;
    return errorOf([&] { readProject(path("beast.zygazip")); });
  };
  const std::string text = writeProjectText(project_);
  EXPECT_THAT(refused(example::zipBytes({{"notes.txt", "x"}})),
              AllOf(HasSubstr("beast.zygazip"), HasSubstr("project.json")));
  EXPECT_THAT(refused(example::zipBytes({{"project.json", "{\"schema\": }"}})),
              HasSubstr("beast.zygazip/project.json:1, column 12"));
  EXPECT_THAT(refused(example::zipBytes({{"project.json", text}}).substr(0, 900)), HasSubstr("cut short or damaged"));
  EXPECT_THAT(refused(example::zipBytes({{"project.json", text}, {"../x", "y"}})), HasSubstr("leads out of it"));
  std::string damaged = example::zipBytes({{"project.json", text}});
  damaged[200] ^= 4;
  EXPECT_THAT(refused(damaged), AllOf(HasSubstr("project.json"), HasSubstr("damaged inside")));
}

TEST_F(OneFile, AFullDiskOrAKilledSaveLeavesTheOldOneWhole) {
  const auto file = path("beast.zygazip");
  saveProject(project_, file);
  const std::string before = bytes(file);
  const pid_t full = fork();
  if (full == 0) {
    signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{4096, 4096};
    setrlimit(RLIMIT_FSIZE, &limit);
    project_.table.name = "changed";
    const std::string told = errorOf([&] { saveProject(project_, file); });
    _exit(told.find("cannot save") != std::string::npos &&
                  told.find("larger than the system permits") != std::string::npos
              ? 0
              : 1);
  }
  int status = 0;
  waitpid(full, &status, 0);
  EXPECT_EQ(status, 0);
  EXPECT_EQ(bytes(file), before);
  EXPECT_EQ(filesThere(), std::vector<std::string>{"beast.zygazip"});

  auto other = project_;
  other.table.name = "the other";
  saveProject(other, path("other.zygazip"));
  const std::array<std::string, 2> whole{before, bytes(path("other.zygazip"))};
  whileSavesAreKilled(project_, other, file, 40, [&] { EXPECT_THAT(whole, testing::Contains(bytes(file))); });
}

TEST_F(OneFile, AnotherProjectGivesTheScansThatAreMissing) {
  saveProject(project_, path("beast.zygazip"));
  fs::create_directory(path("recovery"));
  std::ofstream(path("recovery") / "lost.zyga") << writeProjectText(project_);
  Project lost = readProject(path("recovery") / "lost.zyga");
  EXPECT_FALSE(lost.scans[0].mesh);
  EXPECT_TRUE(takeScansOf(lost, path("beast.zygazip")));
  expectWhole(lost);
  EXPECT_EQ(evidenceOf(lost, "C3"), anatomy::Evidence::Found);
}

}  // namespace
}  // namespace zyga::files
