#include "ui/commands/set_bone_record.h"

#include "ui/document/document.h"

namespace zyga::ui {

SetBoneRecord::SetBoneRecord(Document& document, anatomy::BoneIndex bone, BoneRecord after, const QString& text)
    : SetValue(
          {document.specimen()[bone].evidence, document.specimen()[bone].source}, std::move(after),
          [&document, bone](const BoneRecord& record) { document.setBoneRecord(bone, record.evidence, record.source); },
          text) {}

}  // namespace zyga::ui
