#include "ui/commands/ground_edits.h"

#include "ui/document/document.h"

namespace zyga::ui {

void changeTrackway(Document& document, const study::Trackway& trackway, const QString& text, int mergeKey) {
  const auto& before = document.project().trackway;
  if (before == trackway) return;
  const auto set = [&document](const study::Trackway& t) { document.setTrackway(t); };
  document.undoStack().push(new SetValue<study::Trackway>(before, trackway, set, text, mergeKey));
}

void changeDensities(Document& document, const study::Densities& densities, const QString& text, int mergeKey) {
  const auto& before = document.project().densities;
  if (before == densities) return;
  const auto set = [&document](const study::Densities& d) { document.setDensities(d); };
  document.undoStack().push(new SetValue<study::Densities>(before, densities, set, text, mergeKey));
}

}  // namespace zyga::ui
