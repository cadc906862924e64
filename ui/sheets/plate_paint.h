#pragma once

#include "ui/sheets/plate.h"

class QPainter;

namespace zyga::ui {

/// Paints a plate with a painter whose units are `unitsPerMm` to a millimetre, from the painter's origin.
void paintPlate(QPainter& painter, const Plate& plate, double unitsPerMm);

}  // namespace zyga::ui
