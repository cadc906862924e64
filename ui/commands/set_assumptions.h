#pragma once

#include "core/range/assumptions.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

class Document;

/// Another set of assumptions.
class SetAssumptions : public SetValue<range::Assumptions> {
 public:
  SetAssumptions(Document& document, range::Assumptions after, const QString& text, int mergeKey = 0);
};

}  // namespace zyga::ui
