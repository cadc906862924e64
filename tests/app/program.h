#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "tests/ui/patience.h"

namespace zyga::app {

/// How one run of the program ended.
struct Ended {
  int exit = -1;
  std::string out, err;

  QJsonObject json() const {
    QJsonParseError error{};
    const auto document = QJsonDocument::fromJson(QByteArray::fromStdString(out), &error);
    EXPECT_EQ(error.error, QJsonParseError::NoError) << error.errorString().toStdString() << "\n" << out;
    return document.object();
  }
};

inline QJsonObject jointOf(const QJsonObject& json, const QString& id) {
  for (const auto& joint : json["joints"].toArray())
    if (joint.toObject()["id"].toString() == id) return joint.toObject();
  ADD_FAILURE() << "no joint " << id.toStdString();
  return {};
}
inline QString levelOf(const QJsonObject& assessed, const QString& id) {
  return jointOf(assessed, id)["level"].toString();
}

/// Runs the real executable in a folder of its own, without a display.
class Program : public testing::Test {
 protected:
  /// Verbs that judge contact would sculpt a whole animal first, which takes many seconds where nothing is in the
  /// cache: without a word about contact they are run with --no-contact.
  Ended run(std::vector<std::string> arguments) const {
    static const std::set<std::string> judging{"assess", "limits",  "study",  "stand",
                                               "reach",  "compare", "report", "claim"};
    const auto speaks = [](const std::string& word) {
      return word == "--contact" || word == "--no-contact" || word == "--help";
    };
    if (!arguments.empty() && judging.contains(arguments.front()) &&
        std::none_of(arguments.begin(), arguments.end(), speaks))
      arguments.emplace_back("--no-contact");
    return runAsTyped(arguments);
  }

  Ended runAsTyped(const std::vector<std::string>& arguments) const {
    QProcess process;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.remove("DISPLAY");
    environment.remove("WAYLAND_DISPLAY");
    environment.insert("XDG_CACHE_HOME", cache_);
    process.setProcessEnvironment(environment);
    process.setWorkingDirectory(folder_.path());
    QStringList words;
    for (const auto& argument : arguments) words << QString::fromStdString(argument);
    process.start(ZYGAPOSE_PROGRAM, words);
    EXPECT_TRUE(process.waitForFinished(ui::kPatience));
    EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
    return {process.exitCode(), process.readAllStandardOutput().toStdString(),
            process.readAllStandardError().toStdString()};
  }

  std::filesystem::path path(const std::string& name) const {
    return std::filesystem::path(folder_.path().toStdString()) / name;
  }
  std::string write(const std::string& name, const std::string& text) const {
    std::ofstream(path(name)) << text;
    return name;
  }
  std::string bytes(const std::string& name) const {
    std::ostringstream out;
    out << std::ifstream(path(name), std::ios::binary).rdbuf();
    return out.str();
  }

  /// A small invented animal with a measured bit of neck, as a project.
  std::string smallAnimal() const {
    write("small.csv",
          "# specimen: Small invented animal\n# plan: high browser\n"
          "# cervicals: 6\n# dorsals: 9\n# sacrals: 4\n# caudals: 12\n"
          "bone,length (mm),evidence,source\nC3,300,found,invented\nC4,310,found,invented\n");
    EXPECT_EQ(run({"make", "small.csv", "--out", "small.zyga"}).exit, 0);
    return "small.zyga";
  }

  void setCache(const QString& folder) { cache_ = folder; }

 private:
  QTemporaryDir folder_;
  QString cache_ = folder_.path() + "/cache";
};

}  // namespace zyga::app
