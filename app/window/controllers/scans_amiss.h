#pragma once

#include <QObject>
#include <filesystem>

#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

class MessageBar;

/// Scans of the open project that are missing, forbidden, changed or found elsewhere: one message names each with its
/// file, the cause, what stands in for it and what to do. It stays until it is closed or another project is opened.
class ScansAmiss : public QObject {
  Q_OBJECT
 public:
  ScansAmiss(Document& document, MessageBar& messages, QWidget& window);

  /// Says what there is to say of the project that is open.
  void tell();
  /// Looks for meshes in a folder and those in it, beside the window; what is found is taken in as one undo step.
  void lookIn(const QString& folder);
  bool busy() const { return searcher_.busy(); }

 private:
  void chooseFolder();
  void showAll();
  void take(const std::vector<files::ProjectScan>& found, const QString& folder);

  Document& document_;
  MessageBar& messages_;
  QWidget& window_;
  Worker searcher_;
};

}  // namespace zyga::ui
