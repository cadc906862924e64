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

/// A PDF as Qt writes it without the moment of its making: the date is that of PDF 1.4's publication year and the
/// file's identifier is taken from its content.
QByteArray withoutClock(QByteArray pdf);

}  // namespace zyga::ui
