#include "ui/commands/sheet_edits.h"

#include "ui/document/document.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

void changeSheet(Document& document, const files::Sheet& sheet, const QString& text, int mergeKey) {
  const files::Sheet& before = document.project().sheet;
  if (before == sheet) return;
  const auto set = [&document](const files::Sheet& s) { document.setSheet(s); };
  document.undoStack().push(new SetValue<files::Sheet>(before, sheet, set, text, mergeKey));
}

}  // namespace zyga::ui
