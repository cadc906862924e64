#pragma once

#include <QObject>
#include <functional>

#include "ui/document/document.h"
#include "ui/document/file_guard.h"
#include "ui/document/open_file.h"
#include "ui/document/worker.h"

namespace zyga::ui {

class Autosave;
class MessageBar;
class RecentFiles;
class ScansAmiss;
struct Leftover;

/// Opening and saving, with the questions that go with it. Nothing here waits: dialogs and reading go on beside the
/// window, and what was open stays until the new file has been read without a fault.
class FileController : public QObject {
  Q_OBJECT
 public:
  /// `signs`: folder for the signs that tell other windows which files are open.
  FileController(Document& document, MessageBar& messages, RecentFiles& recent, QWidget& window,
                 const std::filesystem::path& signs);

  void chooseTable();
  void chooseProject();
  /// Reads a project or table; by its ending.
  void open(const QString& file);
  /// As open, for a file that is not worth remembering (a sample, recovered work).
  void openQuietly(const QString& file);
  /// Takes up work that an earlier run left behind; it stays unsaved work.
  void recover(const Leftover& leftover, Autosave& autosave);
  /// Shows an animal that no file has yet, as unsaved work; what was open must be safe (whenSafe).
  void openUnsaved(files::Project project);
  void save(std::function<void()> then = {});
  void saveAs(std::function<void()> then = {});
  /// Runs `then` once no unsaved work would be lost: at once, or after the person has saved or given it up.
  void whenSafe(std::function<void()> then);

  /// Watches over the document's file from now on.
  void guardFile();

  /// Says what is amiss with the scans of the open project, if anything.
  void tellScansAmiss();

  bool busy() const;

 signals:
  void opened();
  /// Where it went, for people.
  void saved(const QString& place);

 private:
  void read(const QString& file, bool remember);
  void receive(const Opened& opened, bool remember);
  void adopt(Opened opened, bool remember);
  void writeTo(const QString& file, files::ProjectForm form, const std::function<void()>& then);
  void tellStrayed(FileGuard::State state);
  void askBeforeReplacing(const std::function<void()>& then);
  QString startFolder() const;

  Document& document_;
  MessageBar& messages_;
  RecentFiles& recent_;
  QWidget& window_;
  Worker reader_;
  FileGuard guard_;
  ScansAmiss* amiss_;
  QString toldPlace_;  ///< of scans, as it was last told
};

}  // namespace zyga::ui
