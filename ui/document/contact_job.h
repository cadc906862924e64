#pragma once

#include <map>

#include "core/solid/levelset/level_set.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// Makes level sets of the bones that may meet, beside the window, once they have been sculpted, and hands what they
/// tell of contact to Document::setContact. Another specimen drops what is under way; a mesh that has stayed keeps its
/// level set.
class ContactJob : public QObject {
  Q_OBJECT
 public:
  explicit ContactJob(Document& document, QObject* parent = nullptr);
  bool busy() const { return worker_.busy(); }

 signals:
  void busyChanged(bool busy);
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  using FieldsByMesh = std::map<std::shared_ptr<const solid::BoneMesh>, std::shared_ptr<const anatomy::BoneField>>;
  void start();

  FieldsByMesh fields_;
  Document& document_;
  Worker worker_;
};

}  // namespace zyga::ui
