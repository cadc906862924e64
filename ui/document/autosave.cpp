#include "ui/document/autosave.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QStandardPaths>
#include <QUuid>
#include <algorithm>

namespace zyga::ui {
namespace {

constexpr int kInterval = 30'000;  // ms

QString toQString(const std::filesystem::path& path) { return QString::fromStdString(path.string()); }

std::unique_ptr<QLockFile> lockFor(const QString& project) {
  auto lock = std::make_unique<QLockFile>(project.chopped(5) + ".lock");
  lock->setStaleLockTime(0);  // only a dead owner makes a lock stale, never its age
  return lock;
}

Leftover describe(const QFileInfo& project) {
  Leftover leftover;
  leftover.file = project.absoluteFilePath().toStdString();
  leftover.written = project.lastModified();
  QFile about(project.absoluteFilePath().chopped(5) + ".json");
  if (about.open(QIODevice::ReadOnly)) {
    const QJsonObject told = QJsonDocument::fromJson(about.readAll()).object();
    leftover.name = told["specimen"].toString();
    leftover.original = told["original"].toString().toStdString();
  }
  return leftover;
}

/// Meshes of scans lie beside the recovered projects and are shared by them: they go with the last one.
void removeUnusedScans(const std::filesystem::path& folder) {
  QDir recovery(toQString(folder));
  if (recovery.entryList({"*.zyga", "*.lock"}, QDir::Files).isEmpty() && recovery.cd("scans"))
    recovery.removeRecursively();
}

}  // namespace

Autosave::Autosave(Document& document, std::filesystem::path folder, QObject* parent)
    : QObject(parent),
      document_(document),
      folder_(std::move(folder)),
      key_(QUuid::createUuid().toString(QUuid::WithoutBraces)) {
  // Whatever changes the project is a step, done or undone.
  connect(&document_.undoStack(), &QUndoStack::indexChanged, this, [this] { stale_ = true; });
  connect(&document_.undoStack(), &QUndoStack::cleanChanged, this, [this](bool clean) {
    if (clean) discard();
  });
  timer_.setInterval(kInterval);
  connect(&timer_, &QTimer::timeout, this, &Autosave::write);
  timer_.start();
}

Autosave::~Autosave() = default;

std::filesystem::path Autosave::standardFolder() {
  return (QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + "/recovery").toStdString();
}

std::filesystem::path Autosave::file(const char* ending) const { return folder_ / (key_.toStdString() + ending); }

void Autosave::write() {
  if (!stale_ || !document_.hasUnsavedWork() || worker_.busy()) return;
  if (!QDir().mkpath(toQString(folder_)))
    return emit failed(tr("Unsaved work cannot be kept in %1. Save often.").arg(toQString(folder_)));
  if (!lock_) {
    lock_ = lockFor(toQString(file(".zyga")));
    lock_->tryLock(0);
  }
  stale_ = false;
  writeAbout();
  const auto project = std::make_shared<const files::Project>(document_.project());
  const auto work = [this, project, target = file(".zyga")](const Worker::Control&) -> Worker::Delivery {
    files::saveProject(*project, target);
    return [this] { emit written(); };
  };
  worker_.start(work, [this](const QString& cause) {
    emit failed(tr("Unsaved work could not be kept for recovery: %1. Save often.").arg(cause));
  });
}

void Autosave::writeAbout() const {
  QSaveFile about(toQString(file(".json")));
  if (!about.open(QIODevice::WriteOnly)) return;
  about.write(QJsonDocument(QJsonObject{{"specimen", QString::fromStdString(document_.specimen().name)},
                                        {"original", toQString(document_.path())}})
                  .toJson());
  about.commit();
}

void Autosave::discard() {
  worker_.wait();
  QFile::remove(toQString(file(".zyga")));
  QFile::remove(toQString(file(".json")));
  lock_.reset();
  stale_ = true;
  removeUnusedScans(folder_);
}

void Autosave::takeOver(const Leftover& leftover) {
  stale_ = true;
  connect(
      this, &Autosave::written, this, [leftover] { discard(leftover); }, Qt::SingleShotConnection);
  write();
}

std::vector<Leftover> Autosave::leftovers() const {
  std::vector<Leftover> found;
  const QDir folder(toQString(folder_));
  for (const QFileInfo& project : folder.entryInfoList({"*.zyga"}, QDir::Files)) {
    if (project.completeBaseName() == key_) continue;
    if (lockFor(project.absoluteFilePath())->tryLock(0)) found.push_back(describe(project));
  }
  std::sort(found.begin(), found.end(), [](const Leftover& a, const Leftover& b) { return a.written > b.written; });
  return found;
}

void Autosave::discard(const Leftover& leftover) {
  const QString project = toQString(leftover.file);
  QFile::remove(project);
  QFile::remove(project.chopped(5) + ".json");
  removeUnusedScans(leftover.file.parent_path());
}

}  // namespace zyga::ui
