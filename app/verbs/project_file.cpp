#include "app/verbs/project_file.h"

#include <QCoreApplication>
#include <algorithm>
#include <iostream>

#include "app/verbs/verb_words.h"
#include "core/range/neutral.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::app {

files::Project openProject(const std::string& file) {
  auto project = files::readProject(file);
  for (const QString& sentence : ui::scansAmissSaid(project.scans)) warn(sentence);
  return project;
}

std::string saveProject(const files::Project& project, const std::string& out, bool forMachines) {
  std::string scans;
  for (const QString& sentence : ui::scansSavedSaid(files::saveProject(project, out)))
    scans += (forMachines ? "" : "  ") + sentence.toStdString() + "\n";
  if (!forMachines) return wroteLine(out) + scans;
  std::cerr << scans;
  return {};
}

ChosenPose choosePose(const files::Project& project, const Arguments& arguments) {
  const auto name = arguments.find("--pose");
  if (!name) return {said(QT_TRANSLATE_NOOP("words", "present pose")), std::nullopt, project.pose};
  const auto& poses = project.poses;
  const auto found = std::find_if(poses.begin(), poses.end(), [&](const auto& named) { return named.name == *name; });
  if (found != poses.end()) return {*name, static_cast<std::size_t>(found - poses.begin()), found->pose};
  QStringList names;
  for (const auto& named : poses) names << "'" + QString::fromStdString(named.name) + "'";
  if (names.isEmpty())
    refuse(QT_TRANSLATE_NOOP("words", "--pose: there is no pose '%1'; the project has no named poses"), {*name});
  refuse(QT_TRANSLATE_NOOP("words", "--pose: there is no pose '%1'; there are %2"), {*name, ui::inOneLine(names)});
}

std::string endingOf(const std::string& file) {
  const auto dot = file.rfind('.');
  return dot == std::string::npos ? "" : file.substr(dot + 1);
}

kinematics::Articulation articulationOf(const files::Project& project) {
  return range::articulate(project.specimen(), project.assumptions);
}

range::Assessment assessmentOf(const files::Project& project, const kinematics::Pose& pose) {
  return range::assess(project.specimen(), articulationOf(project), project.assumptions, pose);
}

}  // namespace zyga::app
