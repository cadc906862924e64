#include "ui/commands/set_bone_record.h"

#include "ui/document/document.h"

namespace zyga::ui {

SetBoneRecord::SetBoneRecord(Document& document, anatomy::BoneIndex bone, BoneRecord after, const QString& text)
    : QUndoCommand(text),
      document_(document),
      bone_(bone),
      before_{document.specimen()[bone].evidence, document.specimen()[bone].source},
      after_(std::move(after)) {}

void SetBoneRecord::undo() { document_.setBoneRecord(bone_, before_.evidence, before_.source); }

void SetBoneRecord::redo() { document_.setBoneRecord(bone_, after_.evidence, after_.source); }

}  // namespace zyga::ui
