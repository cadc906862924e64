#include "core/files/disk/container.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <cerrno>
#include <cstring>
#include <fstream>
#include <sstream>

#include "core/files/disk/plain_file.h"
#include "tests/core/files/zip_bytes.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using example::zipBytes;
using example::ZipEntry;
using testing::AllOf;
using testing::HasSubstr;

class ContainerTest : public testing::Test {
 protected:
  fs::path path(const std::string& name) const { return fs::path(folder_.path().toStdString()) / name; }
  fs::path put(const std::string& name, const std::string& bytes) const {
    std::ofstream(path(name), std::ios::binary) << bytes;
    return path(name);
  }
  static std::string bytes(const fs::path& path) {
    std::ostringstream out;
    out << std::ifstream(path, std::ios::binary).rdbuf();
    return out.str();
  }
  static ContainerEntry entry(std::string name, std::string bytes) {
    const std::size_t size = bytes.size();
    return {std::move(name), size, [bytes = std::move(bytes)] { return bytes; }};
  }
  /// The id of the cause, and the sentence.
  std::pair<std::string, std::string> refusal(const std::string& bytes) const {
    const auto file = put("refused.zip", bytes);
    try {
      const Container container(file);
    } catch (const FileError& error) {
      const auto* cause = std::get_if<reason::Inner>(&error.reason().values.at(1));
      return {std::string(cause ? (*cause)->id.text : ""), ui::sayFailure(error).toStdString()};
    }
    return {"", "no error"};
  }
  static std::string causeOf(const std::function<void()>& act) {
    try {
      act();
    } catch (const FileError& error) {
      return std::string(error.reason().id.text);
    }
    return "no error";
  }

 private:
  QTemporaryDir folder_;
};

TEST_F(ContainerTest, GivesBackWhatWasPutIn) {
  std::string large(3'000'000, 'x');
  for (std::size_t i = 0; i < large.size(); i += 40) large[i] = static_cast<char>(i / 40 * 7 % 251);
  const std::string binary("\0\1PK\3\4\xff", 7);
  writeContainer(path("a.zip"), {entry("project.json", "{}"), entry("scans/C3.ply", large), entry("scans/b", binary),
                                 entry("empty", "")});
  EXPECT_TRUE(isContainer(path("a.zip")));
  const Container container(path("a.zip"));
  EXPECT_EQ(container.read("project.json", 100), "{}");
  EXPECT_TRUE(container.read("scans/C3.ply", 1 << 30) == large);
  EXPECT_EQ(container.read("scans/b", 100), binary);
  EXPECT_EQ(container.read("empty", 0), "");
  EXPECT_TRUE(container.has("scans/b"));
  EXPECT_FALSE(container.has("scans/B"));
  EXPECT_LT(fs::file_size(path("a.zip")), large.size() / 4) << "it is packed";
}

TEST_F(ContainerTest, TheSameEntriesAreTheSameBytes) {
  for (const char* file : {"a.zip", "b.zip"}) {
    setenv("TZ", file[0] == 'a' ? "Asia/Tokyo" : "America/Lima", 1);
    tzset();
    writeContainer(path(file), {entry("project.json", "{\"a\": 1}"), entry("scans/x", std::string(5000, 'y'))});
  }
  setenv("TZ", "UTC", 1);
  tzset();
  EXPECT_EQ(bytes(path("a.zip")), bytes(path("b.zip")));
}

TEST_F(ContainerTest, ReadsWhatOtherToolsWrite) {
  const auto file = put("other.zip", zipBytes({{"scans/", ""}, {"scans/x", "bone"}, {"project.json", "{}"}}));
  const Container container(file);
  EXPECT_EQ(container.read("scans/x", 4), "bone");
  EXPECT_EQ(causeOf([&] { container.read("scans/x", 3); }), "container.too-large-inside");
  EXPECT_EQ(causeOf([&] { container.read("scans/none", 3); }), "container.not-inside");
}

TEST_F(ContainerTest, WhatIsNoContainerIsToldByItsBytes) {
  EXPECT_FALSE(isContainer(put("text.zip", "{\"schema\": 1}")));
  EXPECT_FALSE(isContainer(put("short.zip", "PK")));
  EXPECT_FALSE(isContainer(path("none.zip")));
  EXPECT_FALSE(isContainer(path("")));
  EXPECT_TRUE(isContainer(put("any.name", zipBytes({}))));
}

TEST_F(ContainerTest, NamesThatLeadOutOfItAreRefused) {
  for (const char* name : {"/etc/passwd", "../secret", "scans/../../secret", "scans\\x", "C:x", "..", "a/.."}) {
    const auto [cause, said] = refusal(zipBytes({{"project.json", "{}"}, {name, "x"}}));
    EXPECT_EQ(cause, "container.entry-outside") << name;
    EXPECT_THAT(said, AllOf(HasSubstr("refused.zip"), HasSubstr(name)));
  }
  EXPECT_EQ(refusal(zipBytes({{"a..b/c...d", "x"}})).second, "no error");
}

TEST_F(ContainerTest, WhatIsThereTwiceEncryptedOrOddlyPackedIsRefused) {
  EXPECT_EQ(refusal(zipBytes({{"a", "x"}, {"b", "y"}, {"a", "z"}})).first, "container.entry-twice");
  EXPECT_EQ(refusal(zipBytes({{"a", "0123456789abcdef", 0, 1}})).first, "container.entry-encrypted");
  EXPECT_EQ(refusal(zipBytes({{"a", "x", 12}})).first, "container.entry-packing") << "bzip2";
  EXPECT_EQ(refusal(zipBytes({{"a", "x", 93}})).first, "container.entry-packing");
}

TEST_F(ContainerTest, SizesThatCannotBeTrueAreRefusedBeforeAnythingIsUnpacked) {
  const auto [cause, said] = refusal(zipBytes({{"project.json", "{}"}, {"bomb", "x", 8, 0, 4'000'000'000u}}));
  EXPECT_EQ(cause, "container.entry-swells");
  EXPECT_THAT(said, AllOf(HasSubstr("bomb"), HasSubstr("GB")));
  // A bomb that is honest about itself: zeros, a thousandfold.
  writeContainer(path("zeros.zip"), {entry("zeros", std::string(40'000'000, '\0'))});
  EXPECT_EQ(refusal(bytes(path("zeros.zip"))).first, "container.entry-swells");
  std::vector<ZipEntry> many;
  for (int i = 0; i < 10001; ++i) many.push_back({std::to_string(i), ""});
  EXPECT_EQ(refusal(zipBytes(many)).first, "container.crowded");
}

TEST_F(ContainerTest, EntriesThatShareTheirBytesAreAddedUp) {
  // One stored entry of a megabyte that a thousand entries of the directory point at.
  std::string whole = zipBytes({{"a000", std::string(1'000'000, 'x')}});
  const std::size_t start = whole.find("PK\1\2", 1'000'000), end = whole.find("PK\5\6", start);
  const std::string record = whole.substr(start, end - start);
  whole.resize(start);
  std::string directory;
  for (int i = 0; i < 1000; ++i) {
    std::string one = record;
    const std::string name = std::to_string(1000 + i);
    one.replace(one.size() - 4, 4, name);
    directory += one;
  }
  whole += directory + "PK\5\6";
  example::put(whole, 0, 4);
  example::put(whole, 1000, 2);
  example::put(whole, 1000, 2);
  example::put(whole, directory.size(), 4);
  example::put(whole, start, 4);
  example::put(whole, 0, 2);
  EXPECT_EQ(refusal(whole).first, "container.swells");
}

TEST_F(ContainerTest, EveryCutAndEveryFlippedByteIsAFaultOrHarmless) {
  const std::string text(2000, 'q');
  writeContainer(path("good.zip"), {entry("project.json", "{\"a\": 1}"), entry("scans/x", text)});
  const std::string good = bytes(path("good.zip"));
  const auto tryOut = [&](const std::string& name, const std::string& what) {
    try {
      const Container container(put("tried.zip", what));
      EXPECT_EQ(container.read("project.json", 1000), "{\"a\": 1}") << name;
      EXPECT_EQ(container.read("scans/x", 10000), text) << name;
      return false;
    } catch (const FileError&) {
      return true;
    }
  };
  for (std::size_t size = 0; size + 1 < good.size(); ++size)
    EXPECT_TRUE(tryOut("cut to " + std::to_string(size), good.substr(0, size)));
  int faults = 0;
  for (std::size_t at = 0; at < good.size(); ++at) {
    std::string flipped = good;
    flipped[at] = static_cast<char>(flipped[at] ^ 0x10);
    faults += tryOut("flipped " + std::to_string(at), flipped);
  }
  EXPECT_GT(faults, static_cast<int>(good.size()) / 3);
}

TEST_F(ContainerTest, AnEntryThatFailsLeavesTheOldFileAndNothingElse) {
  writeContainer(path("a.zip"), {entry("project.json", "{}")});
  const std::string before = bytes(path("a.zip"));
  const ContainerEntry failing{"scans/x", 5, []() -> std::string { throw FileError(fault::kDiskFull); }};
  EXPECT_EQ(causeOf([&] { writeContainer(path("a.zip"), {entry("project.json", "[]"), failing}); }), "file.disk-full");
  EXPECT_EQ(bytes(path("a.zip")), before);
  EXPECT_EQ(std::distance(fs::directory_iterator(path("")), fs::directory_iterator()), 1);
  EXPECT_EQ(causeOf([&] { writeContainer(path("none") / "a.zip", {entry("project.json", "{}")}); }),
            "file.cannot-save");
}

TEST_F(ContainerTest, KeepsDamagedEntriesOfTheFormerOne) {
  std::string damaged = zipBytes({{"project.json", "{}"}, {"scans/x", "bone"}, {"other", "o"}});
  damaged[damaged.find("bone")] = 'B';  // no longer what its sum says
  const auto file = put("a.zip", damaged);
  writeContainer(file, {entry("project.json", "[]")}, {"scans/x", "scans/none"});
  const Container container(file);
  EXPECT_EQ(container.read("project.json", 10), "[]");
  EXPECT_FALSE(container.has("other"));
  EXPECT_EQ(container.read("scans/x", 10), "Bone");
}

TEST(SystemCause, IsSaidInWordsOfOurOwn) {
  for (int error = 1; error < 134; ++error) {
    const std::string said = ui::say(systemCause(error)).toStdString();
    EXPECT_GT(said.size(), 10u) << error;
    EXPECT_THAT(said, testing::Not(HasSubstr(strerror(error)))) << error;
  }
  EXPECT_EQ(ui::say(systemCause(ENOSPC)).toStdString(), "the disk is full");
  EXPECT_EQ(ui::say(systemCause(133)).toStdString(), "the system reports error 133");
}

TEST_F(ContainerTest, ReplacesWhereALinkLeadsAndKeepsRights) {
  writeContainer(path("a.zip"), {entry("project.json", "{}")});
  fs::permissions(path("a.zip"), fs::perms(0640));
  fs::create_symlink(path("a.zip"), path("link.zip"));
  writeContainer(path("link.zip"), {entry("project.json", "[]")});
  EXPECT_TRUE(fs::is_symlink(path("link.zip")));
  EXPECT_EQ(Container(path("a.zip")).read("project.json", 10), "[]");
  EXPECT_EQ(fs::status(path("a.zip")).permissions(), fs::perms(0640));
}

}  // namespace
}  // namespace zyga::files
