#pragma once

#include "core/solid/flesh/guide_thickness.h"

namespace zyga::ui {

class Document;

/// One undoable step to other thicknesses of the body guide; none when nothing changes.
void changeGuideThickness(Document& document, const solid::GuideThickness& thickness);

}  // namespace zyga::ui
