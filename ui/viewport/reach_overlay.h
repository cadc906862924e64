#pragma once

#include <QPainter>

#include "ui/drag/reach_drag.h"
#include "ui/theme/theme.h"
#include "ui/viewport/camera.h"

namespace zyga::ui {

/// A dashed line from the grabbed point to the pointer's target, a cross at the target and the missing length beside
/// it.
void paintShortfall(QPainter& painter, const QRectF& area, const Shortfall& shortfall, const Camera& camera,
                    const Theme& theme);
/// Small squares on the joints that drags leave as they are.
void paintLocks(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme);

}  // namespace zyga::ui
