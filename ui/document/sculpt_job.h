#pragma once

#include <filesystem>

#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// Sculpts the bones of whatever the document holds, beside the window, and hands them to Document::setMeshes. Another
/// specimen makes it start again; what it had under way is dropped.
class SculptJob : public QObject {
  Q_OBJECT
 public:
  /// `cacheFolder` empty: nothing is kept on disk.
  SculptJob(Document& document, std::filesystem::path cacheFolder, QObject* parent = nullptr);

  /// The user's cache folder for sculpted bones.
  static std::filesystem::path standardCacheFolder();

  bool busy() const { return worker_.busy(); }
  void cancel() { worker_.cancel(); }
  /// Sculpts now; also done by itself whenever the document is given another specimen.
  void start();

 signals:
  void progress(int done, int total);
  void busyChanged(bool busy);
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  Document& document_;
  std::filesystem::path cacheFolder_;
  Worker worker_;
};

}  // namespace zyga::ui
