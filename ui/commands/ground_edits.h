#pragma once

#include "core/study/ground/trackway.h"
#include "core/study/mass/densities.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

class Document;

/// One undoable step to another trackway or other densities; none when nothing changes. Steps with the same non-zero
/// mergeKey that follow each other become one.
void changeTrackway(Document& document, const study::Trackway& trackway, const QString& text, int mergeKey = 0);
void changeDensities(Document& document, const study::Densities& densities, const QString& text, int mergeKey = 0);

}  // namespace zyga::ui
