#include "ui/document/set_assumptions.h"

#include "ui/document/document.h"

namespace zyga::ui {

SetAssumptions::SetAssumptions(Document& document, AssumedPose after, const QString& text, int mergeKey)
    : SetValue(
          {document.project().assumptions, document.project().pose}, std::move(after),
          [&document](const AssumedPose& chosen) { document.setAssumptions(chosen.assumptions, chosen.pose); }, text,
          mergeKey) {}

}  // namespace zyga::ui
