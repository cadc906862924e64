#pragma once

#include <QByteArray>

#include "ui/sheets/plate.h"

namespace zyga::ui {

/// pdf, svg, png
const QStringList& plateEndings();

inline constexpr int kWidestPng = 16000;  ///< pixels

/// The plate as the bytes of a PDF, SVG or PNG file, the same bytes every time from the same plate: no clock is in
/// them. `pngWidth`: pixels of a PNG from side to side. Throws std::runtime_error when it cannot be made.
QByteArray plateBytes(const Plate& plate, const QString& ending, int pngWidth);

}  // namespace zyga::ui
