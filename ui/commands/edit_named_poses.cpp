#include "ui/commands/edit_named_poses.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/document/document.h"

namespace zyga::ui {
namespace {

using Poses = std::vector<files::NamedPose>;

QString tr(const char* text) { return QCoreApplication::translate("NamedPoses", text); }

bool taken(const Poses& poses, const std::string& name) {
  return std::any_of(poses.begin(), poses.end(), [&](const files::NamedPose& p) { return p.name == name; });
}

QString freeName(const Poses& poses, const QString& wanted) {
  QString name = wanted;
  for (int n = 2; taken(poses, name.toStdString()); ++n) name = QString("%1 %2").arg(wanted).arg(n);
  return name;
}

void push(Document& document, Poses after, const QString& text) {
  document.undoStack().push(new EditNamedPoses(document, std::move(after), text));
}

}  // namespace

EditNamedPoses::EditNamedPoses(Document& document, Poses after, const QString& text)
    : SetValue(
          document.project().poses, std::move(after),
          [&document](const Poses& poses) { document.setNamedPoses(poses); }, text) {}

void addNamedPose(Document& document, const QString& name) {
  Poses poses = document.project().poses;
  const QString trimmed = name.trimmed();
  const QString kept = freeName(poses, trimmed.isEmpty() ? tr("Pose") : trimmed);
  poses.push_back({kept.toStdString(), document.pose()});
  push(document, std::move(poses), tr("Add pose “%1”").arg(kept));
}

bool renameNamedPose(Document& document, std::size_t index, const QString& name) {
  Poses poses = document.project().poses;
  const std::string wanted = name.trimmed().toStdString();
  if (poses.at(index).name == wanted) return true;
  if (wanted.empty() || taken(poses, wanted)) return false;
  poses[index].name = wanted;
  push(document, std::move(poses), tr("Rename pose to “%1”").arg(name.trimmed()));
  return true;
}

void deleteNamedPose(Document& document, std::size_t index) {
  Poses poses = document.project().poses;
  const QString name = QString::fromStdString(poses.at(index).name);
  poses.erase(poses.begin() + static_cast<std::ptrdiff_t>(index));
  push(document, std::move(poses), tr("Delete pose “%1”").arg(name));
}

void replaceNamedPose(Document& document, std::size_t index) {
  Poses poses = document.project().poses;
  if (poses.at(index).pose == document.pose()) return;
  poses[index].pose = document.pose();
  push(document, std::move(poses),
       tr("Update pose “%1”").arg(QString::fromStdString(document.project().poses[index].name)));
}

}  // namespace zyga::ui
