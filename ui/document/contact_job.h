#pragma once

#include <filesystem>

#include "core/files/scan/bone_meshes.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// Makes level sets of the bones that may meet, beside the window, once they have been sculpted, and hands what they
/// tell of contact to Document::setContact. Another specimen drops what is under way; a mesh that has stayed keeps its
/// level set.
class ContactJob : public QObject {
  Q_OBJECT
 public:
  /// `cacheFolder` empty: nothing is kept on disk.
  ContactJob(Document& document, std::filesystem::path cacheFolder, QObject* parent = nullptr);
  bool busy() const { return worker_.busy(); }

 signals:
  void busyChanged(bool busy);
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  void start();

  files::FieldsByMesh fields_;
  Document& document_;
  const std::filesystem::path cacheFolder_;
  Worker worker_;
};

}  // namespace zyga::ui
