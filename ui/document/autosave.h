#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QTimer>
#include <memory>
#include <vector>

#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// Work that a program left behind which ended without closing.
struct Leftover {
  std::filesystem::path file;      ///< the recovered project
  std::filesystem::path original;  ///< where the work had last been saved; empty when nowhere
  QString name;                    ///< of the specimen
  QDateTime written;
};

/// Writes unsaved work into the recovery folder every half minute, and takes it away again on a clean end.
class Autosave : public QObject {
  Q_OBJECT
 public:
  Autosave(Document& document, std::filesystem::path folder, QObject* parent = nullptr);
  ~Autosave() override;

  static std::filesystem::path standardFolder();

  void setInterval(int milliseconds) { timer_.setInterval(milliseconds); }
  /// Writes now, beside the window, if there is work that neither a file nor the recovery folder holds.
  void write();
  /// The work is safe elsewhere or was given up: takes our file out of the folder.
  void discard();

  /// The document now holds this work: keeps it in our own file, then takes the old one away.
  void takeOver(const Leftover& leftover);

  /// What dead programs have left, newest first. Programs that still run keep theirs.
  std::vector<Leftover> leftovers() const;
  static void discard(const Leftover& leftover);

 signals:
  void written();
  /// For people: cause and mend.
  void failed(const QString& message);

 private:
  std::filesystem::path file(const char* ending) const;
  void writeAbout() const;

  Document& document_;
  std::filesystem::path folder_;
  QString key_;
  std::unique_ptr<QLockFile> lock_;
  QTimer timer_;
  Worker worker_;
  bool stale_ = true;  ///< the recovery folder may be behind the document
};

}  // namespace zyga::ui
