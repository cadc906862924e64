#include "ui/document/file_guard.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>

namespace zyga::ui {
namespace {

constexpr int kSettle = 200;  // ms that a file must rest: a program may write it piece by piece

QString toQString(const std::filesystem::path& path) { return QString::fromStdString(path.string()); }

QByteArray checksumOf(const std::filesystem::path& path) {
  QFile file(toQString(path));
  if (!file.open(QIODevice::ReadOnly)) return {};
  QCryptographicHash hash(QCryptographicHash::Sha256);
  return hash.addData(&file) ? hash.result() : QByteArray();
}

/// The same for every way to write the path of one file.
QString signName(const std::filesystem::path& file) {
  std::error_code failed;
  const auto plain = std::filesystem::weakly_canonical(file, failed);
  const QByteArray path = QByteArray::fromStdString((failed ? file : plain).string());
  return "open-" + QCryptographicHash::hash(path, QCryptographicHash::Sha256).toHex().left(16) + ".lock";
}

}  // namespace

FileGuard::FileGuard(std::filesystem::path signs, QObject* parent) : QObject(parent), signs_(std::move(signs)) {
  settle_.setSingleShot(true);
  settle_.setInterval(kSettle);
  connect(&settle_, &QTimer::timeout, this, &FileGuard::notice);
  connect(&watcher_, &QFileSystemWatcher::fileChanged, &settle_, qOverload<>(&QTimer::start));
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, &settle_, qOverload<>(&QTimer::start));
}

FileGuard::~FileGuard() = default;

void FileGuard::take(const std::filesystem::path& file) {
  if (!watcher_.files().isEmpty()) watcher_.removePaths(watcher_.files());
  if (!watcher_.directories().isEmpty()) watcher_.removePaths(watcher_.directories());
  settle_.stop();
  if (file != file_) sign_.reset();
  file_ = file;
  taken_ = told_ = {};
  if (file_.empty()) return;
  taken_ = told_ = checksumOf(file_);
  watch();
  if (sign_ && sign_->isLocked()) return;
  QDir().mkpath(toQString(signs_));
  sign_ = std::make_unique<QLockFile>(toQString(signs_) + '/' + signName(file_));
  sign_->setStaleLockTime(0);  // only a dead owner makes a sign stale, never its age
  sign_->tryLock(0);
}

void FileGuard::watch() {
  // A file that is replaced in one step is a new one for the watcher; its folder tells.
  const QString file = toQString(file_);
  if (QFile::exists(file) && !watcher_.files().contains(file)) watcher_.addPath(file);
  const QString folder = toQString(file_.parent_path());
  if (QDir(folder).exists() && !watcher_.directories().contains(folder)) watcher_.addPath(folder);
}

FileGuard::State FileGuard::look() const {
  if (file_.empty()) return State::AsTaken;
  const QByteArray now = checksumOf(file_);
  if (now == taken_) return State::AsTaken;
  return now.isEmpty() ? State::Missing : State::Changed;
}

bool FileGuard::heldElsewhere() const {
  return sign_ && !sign_->isLocked() && sign_->error() == QLockFile::LockFailedError;
}

void FileGuard::notice() {
  if (file_.empty()) return;
  watch();
  const QByteArray now = checksumOf(file_);
  if (now == told_) return;
  told_ = now;
  const State state = look();
  if (state != State::AsTaken) emit strayed(state);
}

}  // namespace zyga::ui
