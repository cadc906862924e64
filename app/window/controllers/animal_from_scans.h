#pragma once

#include <QObject>

#include "core/files/project/scan_animal.h"
#include "ui/document/worker.h"

namespace zyga::ui {

class FileController;
class JobReadout;
class MessageBar;

/// A folder of scans becomes an animal of its own: read, marked, measured and stood up beside the window, then opened
/// as unsaved work once no other would be lost.
class AnimalFromScans : public QObject {
  Q_OBJECT
 public:
  AnimalFromScans(FileController& files, MessageBar& messages, QWidget& window);

  /// For the status bar.
  QWidget* readout() const;
  /// Asks for folder and body plan; the folder may be known already.
  void ask(const QString& folder = {});
  void make(const QString& folder, anatomy::BodyPlan plan);

 signals:
  /// Somebody wants to see the marks of the scans.
  void marksAsked();

 private:
  using Made = std::shared_ptr<files::ScanAnimal>;
  void adopt(const Made& made, const QString& folder);
  void showAll(const QStringList& sentences);

  FileController& files_;
  MessageBar& messages_;
  QWidget& window_;
  Worker maker_;
  JobReadout* readout_;
};

}  // namespace zyga::ui
