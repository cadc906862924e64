#pragma once

#include <QPixmap>

#include "core/anatomy/specimen.h"

namespace zyga::ui {

/// The sign of an evidence status: a chip in the bone's tone; hatched where the bone was borrowed from elsewhere, with
/// a broken edge where it is inferred. `size` in device-independent pixels.
QPixmap evidenceMark(anatomy::Evidence evidence, int size, qreal devicePixelRatio);

}  // namespace zyga::ui
