#pragma once

#include <string>

#include "core/anatomy/specimen.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

class Document;

/// How a bone is known and where that is written.
struct BoneRecord {
  anatomy::Evidence evidence = anatomy::Evidence::Inferred;
  std::string source;
  bool operator==(const BoneRecord&) const = default;
};

class SetBoneRecord : public SetValue<BoneRecord> {
 public:
  SetBoneRecord(Document& document, anatomy::BoneIndex bone, BoneRecord after, const QString& text);
};

}  // namespace zyga::ui
