#pragma once

#include <filesystem>

#include "core/files/scan/bone_meshes.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// Makes level sets of the bones that may meet, beside the window, once they have been sculpted, and hands what they
/// tell of contact to Document::setContact. Another specimen drops what is under way; a mesh that has stayed keeps its
/// level set. Until the shapes are there the document's verdicts are provisional, unless making them has failed.
class ContactJob : public QObject {
  Q_OBJECT
 public:
  /// `cacheFolder` empty: nothing is kept on disk.
  ContactJob(Document& document, std::filesystem::path cacheFolder, QObject* parent = nullptr);
  bool busy() const { return worker_.busy(); }
  /// There will be no shapes, as there are no bones to make them of.
  void giveUp() { document_.expectContact(false); }

 signals:
  void busyChanged(bool busy);
  /// For people: what contact has changed about the verdicts since they were provisional.
  void judged(const QString& message);
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  void start();
  void deliver(std::shared_ptr<const range::ContactModel> model);

  files::FieldsByMesh fields_;
  Document& document_;
  const std::filesystem::path cacheFolder_;
  Worker worker_;
};

}  // namespace zyga::ui
