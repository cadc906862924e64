#include "ui/commands/guide_edits.h"

#include "ui/document/document.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

void changeGuideThickness(Document& document, const solid::GuideThickness& thickness) {
  const auto& before = document.project().guide;
  if (before == thickness) return;
  const auto set = [&document](const solid::GuideThickness& t) { document.setGuideThickness(t); };
  document.undoStack().push(
      new SetValue<solid::GuideThickness>(before, thickness, set, Document::tr("thickness of the body guide")));
}

}  // namespace zyga::ui
