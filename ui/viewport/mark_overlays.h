#pragma once

#include <QPainter>

#include "ui/document/document.h"
#include "ui/ground/ground_state.h"
#include "ui/theme/theme.h"
#include "ui/viewport/camera.h"

namespace zyga::ui {

/// What belongs over the bones: names of the prints and lengths of the steps where there is room, the centre of mass
/// with its plumb line and the margin in words. From the exact side, where the ground is a line, also where prints and
/// support begin and end on it.
void paintGround(QPainter& painter, const QRectF& area, const GroundState& ground, const GroundShown& shown,
                 const Camera& camera, const Theme& theme);

/// Numbered marks of the notes where their points are on screen; they move with their bones. The chosen one stands out.
void paintNotes(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme);

}  // namespace zyga::ui
