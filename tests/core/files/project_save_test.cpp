#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QTemporaryDir>
#include <fstream>
#include <functional>
#include <sstream>

#include "core/files/project/project.h"
#include "tests/core/files/example_project.h"
#include "tests/core/files/killed_saves.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using testing::AllOf;
using testing::HasSubstr;

class ProjectSave : public testing::Test {
 protected:
  fs::path folder() const { return folder_.path().toStdString(); }
  static std::string bytes(const fs::path& path) {
    std::ostringstream out;
    out << std::ifstream(path, std::ios::binary).rdbuf();
    return out.str();
  }
  static std::string errorOf(const std::function<void()>& act) {
    try {
      act();
    } catch (const FileError& error) {
      return ui::sayFailure(error).toStdString();
    }
    return "";
  }
  /// Runs `act` in another process and returns the message it ends with.
  static std::string errorInChild(const std::function<void()>& act) {
    std::array<int, 2> ends{};
    if (pipe(ends.data()) != 0) return "no pipe";
    const pid_t child = fork();
    if (child == 0) {
      const auto message = errorOf(act);
      const bool written = write(ends[1], message.data(), message.size()) == static_cast<ssize_t>(message.size());
      _exit(written ? 0 : 1);
    }
    close(ends[1]);
    std::string message;
    std::array<char, 512> part{};
    for (ssize_t n = 0; (n = read(ends[0], part.data(), part.size())) > 0;) message.append(part.data(), n);
    close(ends[0]);
    waitpid(child, nullptr, 0);
    return message;
  }

  Project project_ = example::everything();

 private:
  QTemporaryDir folder_;
};

TEST_F(ProjectSave, ReadsWhatItSaved) {
  const auto path = folder() / "mein Tier é.zyga";
  saveProject(project_, path);
  EXPECT_EQ(bytes(path), writeProjectText(project_));
  EXPECT_EQ(readProject(path).pose, project_.pose);
}

TEST_F(ProjectSave, LeavesNothingElseInTheFolder) {
  saveProject(project_, folder() / "a.zyga");
  saveProject(project_, folder() / "a.zyga");
  EXPECT_EQ(std::distance(fs::directory_iterator(folder()), fs::directory_iterator()), 1);
}

TEST_F(ProjectSave, TellsWhatIsNotThere) {
  const auto path = folder() / "none.zyga";
  EXPECT_THAT(errorOf([&] { readProject(path); }), AllOf(HasSubstr(path.string()), HasSubstr("no such file")));
  EXPECT_THAT(errorOf([&] { readProject(folder()); }), HasSubstr("is a folder"));
  EXPECT_THAT(errorOf([&] { saveProject(project_, folder() / "no" / "a.zyga"); }), HasSubstr("there is no folder"));
  EXPECT_THAT(errorOf([&] { saveProject(project_, folder()); }), HasSubstr("name of a folder"));
  std::ofstream(folder() / "file") << "x";
  EXPECT_THAT(errorOf([&] { saveProject(project_, folder() / "file" / "a.zyga"); }), HasSubstr("not a folder"));
}

TEST_F(ProjectSave, TellsThatTheFolderMayNotBeWritten) {
  const auto path = folder() / "a.zyga";
  saveProject(project_, path);
  const auto before = bytes(path);
  fs::permissions(folder(), fs::perms::owner_read | fs::perms::owner_exec | fs::perms::group_read |
                                fs::perms::group_exec | fs::perms::others_read | fs::perms::others_exec);
  const auto message = errorInChild([&] {
    // Root may write anywhere; nobody may not.
    if (geteuid() == 0 && setuid(65534) != 0) _exit(1);
    project_.table.name = "changed";
    saveProject(project_, path);
  });
  const auto newFile = errorInChild([&] {
    if (geteuid() == 0 && setuid(65534) != 0) _exit(1);
    saveProject(project_, folder() / "b.zyga");
  });
  fs::permissions(folder(), fs::perms::owner_all);
  EXPECT_THAT(message, AllOf(HasSubstr(path.string()), HasSubstr("you may not write this file")));
  EXPECT_THAT(newFile, HasSubstr("you may not write in the folder"));
  EXPECT_EQ(bytes(path), before);
}

TEST_F(ProjectSave, FullDiskLeavesTheOldFileWhole) {
  const auto path = folder() / "a.zyga";
  saveProject(project_, path);
  const auto before = bytes(path);
  const auto message = errorInChild([&] {
    signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{4096, 4096};  // stands for a disk with a page left
    setrlimit(RLIMIT_FSIZE, &limit);
    project_.table.name = "changed";
    saveProject(project_, path);
  });
  EXPECT_THAT(message,
              AllOf(HasSubstr("cannot save " + path.string()), HasSubstr("the old file, if any, is untouched")));
  EXPECT_EQ(bytes(path), before);
}

TEST_F(ProjectSave, KilledSaveLeavesOneOfTheTwoWhole) {
  const auto path = folder() / "a.zyga";
  auto other = project_;
  other.table.name = "the other";
  saveProject(project_, path);
  const std::array<std::string, 2> whole{writeProjectText(project_), writeProjectText(other)};
  whileSavesAreKilled(project_, other, path, 200, [&] { EXPECT_THAT(whole, testing::Contains(bytes(path))); });
}

}  // namespace
}  // namespace zyga::files
