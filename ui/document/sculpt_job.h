#pragma once

#include <QTimer>
#include <filesystem>

#include "core/files/scan/bone_meshes.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// Sculpts the bones of whatever the document holds, beside the window, puts scanned ones in their places and hands all
/// to Document::setMeshes; where bones have to be made, a rough preview of them comes first. Another specimen makes it
/// start again; what it had under way is dropped. Where only scans have changed, it waits until they rest and sculpts
/// nothing anew.
class SculptJob : public QObject {
  Q_OBJECT
 public:
  /// `cacheFolder` empty: nothing is kept on disk.
  SculptJob(Document& document, std::filesystem::path cacheFolder, QObject* parent = nullptr);

  bool busy() const { return worker_.busy() || scansRest_.isActive(); }
  void cancel();
  /// Sculpts now; also done by itself whenever the document is given another specimen.
  void start();

 signals:
  void progress(double share);
  void busyChanged(bool busy);
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  Document& document_;
  std::filesystem::path cacheFolder_;
  std::shared_ptr<const files::BoneMeshes> sculpted_;  ///< what the table gives, without scans
  files::ScanLevels scanLevels_;
  QTimer scansRest_;
  Worker worker_;
};

}  // namespace zyga::ui
