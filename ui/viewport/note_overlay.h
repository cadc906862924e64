#pragma once

#include <QPainter>

#include "ui/document/document.h"
#include "ui/theme/theme.h"
#include "ui/viewport/camera.h"

namespace zyga::ui {

/// Numbered marks of the notes where their points are on screen; they move with their bones. The chosen one stands out.
void paintNotes(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme);

}  // namespace zyga::ui
