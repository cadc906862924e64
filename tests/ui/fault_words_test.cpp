#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QTemporaryDir>
#include <fstream>
#include <random>

#include "core/files/disk/plain_file.h"
#include "core/files/export/mesh_export.h"
#include "core/files/json/json.h"
#include "core/files/project/project.h"
#include "core/files/project/project_faults.h"
#include "core/files/scan/scan_precheck.h"
#include "core/files/scan/scan_reader.h"
#include "tests/core/files/example_project.h"
#include "tests/core/files/zip_bytes.h"
#include "ui/words/language.h"
#include "ui/words/say.h"

/// Faults of files in the language of the window. What no form covers stays English and fails. All files are invented.
namespace zyga::ui {
namespace {

/// The English words that are left in what is said, without what the file itself says: places, names in quotes, keys.
QString englishIn(QString said) {
  static const QRegularExpression own(
      "“[^”]*”|\\[[^\\]]*\\]|\\{[^}]*\\}|^[^ ]*，第 \\d+ 列，[^：]*：|可用的有 .*|不在 .* 之中|/\\S*|"
      "\\b(true|false|null|PLY|JSON|UTF-8|Zygapose|glTF|GLB|STL)\\b|\\b\\w*\\.(zyga|glb|json)\\b|\\b[\\w.]*[A-Z]\\w*"
      "\\d?"
      "\\b");
  said.remove(own);
  static const QRegularExpression lower("[a-z]{3,}");
  return lower.match(said).captured();
}

class FaultWords : public testing::Test {
 protected:
  void SetUp() override { speak("zh_CN"); }
  void TearDown() override { speak("en"); }

  static void expectSaid(const std::exception& error) {
    const QString said = sayFailure(error);
    EXPECT_TRUE(said.contains(QRegularExpression("\\p{Han}{2}"))) << error.what();
    EXPECT_EQ(englishIn(said).toStdString(), "") << error.what() << '\n' << said.toStdString();
  }

  template <typename Work>
  static void expectFault(const Work& work) {
    try {
      work();
      ADD_FAILURE() << "no fault";
    } catch (const std::exception& error) {
      expectSaid(error);
    }
  }

  std::filesystem::path file(const char* name, std::string_view bytes) const {
    const auto path = std::filesystem::path(folder_.path().toStdString()) / name;
    std::ofstream(path, std::ios::binary) << bytes;
    return path;
  }
  std::filesystem::path folder() const { return folder_.path().toStdString(); }

 private:
  QTemporaryDir folder_;
};

std::string richText() {
  auto project = files::example::everything();
  project.claims = {{study::ClaimKind::HeadHeight, study::Bound::AtLeast, 8.5, 0, "invented"},
                    {study::ClaimKind::NeckSlope, study::Bound::AtMost, 0.4}};
  project.trackway.prints.emplace_back();
  project.notes = {{*anatomy::parseBoneId("skull"), Eigen::Vector3d(0.1, 0.2, 0.3), "invented", {}, {}}};
  for (const auto part : study::kAllBodyParts) project.densities[part] = 900;
  project.lockedJoints = {project.specimen().findJoint("C6-C7").value()};
  return files::writeProjectText(project);
}

/// A text with one token in the place of another, or one character too few.
std::string spoilt(std::string text, std::mt19937& random) {
  static constexpr std::string_view kOthers[] = {"-7", "0.5",  "1e999", "99999999", "\"what\"", "[]",
                                                 "{}", "null", "",      "true",     "\"",       "\"\\x\"",
                                                 "01", "\xff", "[1]",   "\"C5\""};
  const auto at = text.find_first_of("\"0123456789[{", random() % text.size());
  if (at == std::string::npos) return text.substr(0, text.size() / 2);
  const auto end = std::min(text.find_first_of(",:]}\n", at), text.size());
  if (random() % 8 == 0) return text.erase(at, 1);
  return text.replace(at, end - at, kOthers[random() % std::size(kOthers)]);
}

TEST_F(FaultWords, OfSpoiltProjectsAreKnown) {
  const std::string whole = richText();
  ASSERT_NO_THROW(files::parseProject(whole, "p.zyga"));
  // The members before and after the long list of bones get their share.
  const auto bones = whole.find("\"bones\"");
  ASSERT_NE(bones, std::string::npos);
  std::mt19937 random(20);
  int faults = 0;
  for (int i = 0; i < 700; ++i) {
    try {
      files::parseProject(spoilt(whole, random), "p.zyga");
    } catch (const files::FileError& error) {
      ++faults;
      expectSaid(error);
    }
    if (HasFailure()) break;
  }
  EXPECT_GE(faults, 150);
}

TEST_F(FaultWords, KeepWhatTheFileSays) {
  const auto at = [](reason::Reason cause) {
    return reason::Reason(files::fault::kAtMember,
                          {reason::text("p.zyga"), reason::Count{3}, reason::Count{5},
                           reason::text("bones[2].evidence"), reason::inner(std::move(cause))});
  };
  EXPECT_EQ(say(at({files::fault::kNoEvidence, {files::shown("a number, found \"x\"")}})),
            QString::fromUtf8("p.zyga:3，第 5 列，bones[2].evidence：“a number, found \\\"x\\\"”不是一种证据"));
  EXPECT_EQ(
      say(reason::Reason(files::fault::kDamagedAt,
                         {reason::text("p.zyga"), reason::Count{3}, reason::Count{5},
                          reason::inner({files::fault::kFoundInstead,
                                         {reason::inner(files::fault::kExpectedMemberEnd), reason::text("x")}})})),
      QString::fromUtf8("p.zyga:3，第 5 列：成员之后应为“,”或“}”，但这里是“x”；文件已损坏或被手工改过"));
  EXPECT_EQ(say(reason::Reason(files::fault::kCannotOpen,
                               {reason::text("/a/50%7 %8.zyga"), reason::inner(files::fault::kNoSuchFile)})),
            QString::fromUtf8("无法打开 /a/50%7 %8.zyga：没有这个文件"));
  EXPECT_EQ(sayFailure(std::runtime_error("what nobody has ever said")), "what nobody has ever said");
}

TEST_F(FaultWords, OfFilesAndFoldersAreKnown) {
  const auto project = files::example::everything();
  expectFault([&] { files::saveProject(project, folder() / "none" / "a.zyga"); });
  expectFault([&] { files::saveProject(project, folder()); });
  expectFault([&] { files::saveProject(project, file("plain", "x") / "a.zyga"); });
  expectFault([&] { files::readProject(folder() / "none.zyga"); });
  expectFault([&] { files::readProject(folder()); });
  expectFault([&] { files::readScan(folder(), {}); });
  for (int error = 1; error < 134; ++error) expectSaid(files::FileError(files::systemCause(error)));
}

TEST_F(FaultWords, OfProjectsInOneFileAreKnown) {
  using files::example::zipBytes;
  const auto refused = [&](const std::string& bytes) {
    const auto path = file("a.zygazip", bytes);
    expectFault([&] { files::readProject(path); });
  };
  refused(zipBytes({{"project.json", "{}"}}).substr(0, 70));
  refused(zipBytes({{"notes.txt", "x"}}));
  refused(zipBytes({{"../X", "x"}}));
  refused(zipBytes({{"X", "x"}, {"X", "y"}}));
  refused(zipBytes({{"X", "0123456789abcdef", 0, 1}}));
  refused(zipBytes({{"X", "x", 93}}));
  refused(zipBytes({{"X", "x", 8, 0, 4'000'000'000u}}));
  refused(zipBytes({{"project.json", "{}", 8}}));
}

TEST_F(FaultWords, OfScansThatAreNotInTheirPlaceAreKnown) {
  auto project = files::example::everything();
  files::ProjectScan kept;
  kept.scan.bone = *anatomy::parseBoneId("C5");
  for (const char* place : {"scans/A", "scans/B", "/X"}) {
    kept.scan.file = place;
    project.scans.push_back(kept);
  }
  std::filesystem::create_directories(folder() / "scans" / "A");
  files::loadScanMeshes(project.scans, folder() / "a.zyga");
  for (const auto& scan : project.scans) expectSaid(files::FileError(scan.trouble));
}

TEST_F(FaultWords, OfScansAreKnown) {
  const auto refused = [&](const char* name, std::string_view bytes) {
    const auto path = file(name, bytes);
    expectFault([&] { files::checkScanHead(path); });
  };
  refused("empty.ply", "");
  refused("endless.ply", "ply\nformat ascii 1.0\n");
  refused("type.ply", "ply\nformat ascii 1.0\nelement vertex 3\nproperty rather x\nend_header\n");
  refused("count.ply", "ply\nformat ascii 1.0\nelement vertex many\nproperty float x\nend_header\n");
  refused("room.ply", "ply\nformat binary_little_endian 1.0\nelement vertex 90000000\nproperty float x\nend_header\n");
  refused("short.stl", "\x01\x02");
  refused("room.stl", std::string(80, '\0') + "\xff\xff\xff\x0f" + std::string(20, '\0'));
  refused("none.gltf", "[]");
  refused("broken.gltf", "{\"a\": }");
  refused("packed.gltf", "{\"extensionsRequired\": [\"KHR_draco_mesh_compression\"]}");
  refused("short.glb", "glTF");
  refused("cut.glb", std::string("glTF\x02\0\0\0\xff\xff\0\0\x10\0\0\0JSON", 20));
  refused("face.off", "OFF\n3 1 0\n0 0 0\n1 0 0\n0 1 0\n3 0 1 7\n");
}

}  // namespace
}  // namespace zyga::ui
