#pragma once

#include <QPainter>

#include "core/study/reach/envelope.h"
#include "ui/drag/reach_drag.h"
#include "ui/theme/theme.h"
#include "ui/viewport/camera.h"
#include "ui/viewport/scene.h"

namespace zyga::ui {

/// A dashed line from the grabbed point to the pointer's target, a cross at the target and the missing length beside
/// it.
void paintShortfall(QPainter& painter, const QRectF& area, const Shortfall& shortfall, const Camera& camera,
                    const Theme& theme);
/// Small squares on the joints that drags leave as they are.
void paintLocks(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme);

/// The strip of ground that the snout reaches, as patches under the bones.
std::vector<GroundMark> envelopeMarks(const study::Envelope& envelope, const Theme& theme);

/// The outline of the reach over the bones, in the plane of the neck; dashed where it is out of date. `area` is the
/// window in pixels.
void paintEnvelopeOutline(QPainter& painter, const QRectF& area, const study::Envelope& envelope, bool outOfDate,
                          const Camera& camera, const Theme& theme);

}  // namespace zyga::ui
