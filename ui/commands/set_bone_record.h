#pragma once

#include <QUndoCommand>
#include <string>

#include "core/anatomy/specimen.h"

namespace zyga::ui {

class Document;

/// How a bone is known and where that is written.
struct BoneRecord {
  anatomy::Evidence evidence = anatomy::Evidence::Inferred;
  std::string source;
  bool operator==(const BoneRecord&) const = default;
};

class SetBoneRecord : public QUndoCommand {
 public:
  SetBoneRecord(Document& document, anatomy::BoneIndex bone, BoneRecord after, const QString& text);

  void undo() override;
  void redo() override;

 private:
  Document& document_;
  anatomy::BoneIndex bone_;
  BoneRecord before_;
  BoneRecord after_;
};

}  // namespace zyga::ui
