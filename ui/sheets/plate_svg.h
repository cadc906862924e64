#pragma once

#include <QByteArray>

#include "ui/sheets/plate.h"

namespace zyga::ui {

/// The plate as SVG 1.1 whose user unit is a millimetre: shapes as paths, words as words, groups as <g> with their name
/// as id, pictures as embedded PNG.
QByteArray plateSvg(const Plate& plate);

}  // namespace zyga::ui
