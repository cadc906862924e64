#pragma once

#include <QByteArray>
#include <QFileSystemWatcher>
#include <QLockFile>
#include <QObject>
#include <QTimer>
#include <filesystem>
#include <memory>

namespace zyga::ui {

/// Keeps an eye on the file that a window has open: whether another program changes or removes it, and whether another
/// window has it open too. Nothing is written beside the file; the sign that it is open lies in a folder of our own.
class FileGuard : public QObject {
  Q_OBJECT
 public:
  enum class State { AsTaken, Changed, Missing };

  FileGuard(std::filesystem::path signs, QObject* parent = nullptr);
  ~FileGuard() override;

  /// The file as it lies there now is what the window holds. An empty path: there is nothing to guard.
  void take(const std::filesystem::path& file);
  /// Looks at the file now.
  State look() const;
  /// Whether another window, of this program or of one that runs beside it, has taken the file first.
  bool heldElsewhere() const;

 signals:
  /// The file is another than the one that was taken; told once for each change.
  void strayed(zyga::ui::FileGuard::State state);

 private:
  void notice();
  void watch();

  std::filesystem::path signs_;
  std::filesystem::path file_;
  QByteArray taken_, told_;  ///< checksums; empty for a file that is not there
  std::unique_ptr<QLockFile> sign_;
  QFileSystemWatcher watcher_;
  QTimer settle_;
};

}  // namespace zyga::ui
