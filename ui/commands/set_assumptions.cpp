#include "ui/commands/set_assumptions.h"

#include "ui/document/document.h"

namespace zyga::ui {

SetAssumptions::SetAssumptions(Document& document, range::Assumptions after, const QString& text, int mergeKey)
    : SetValue(
          document.assumptions(), after, [&document](const auto& chosen) { document.setAssumptions(chosen); }, text,
          mergeKey) {}

}  // namespace zyga::ui
