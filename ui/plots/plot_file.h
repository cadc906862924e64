#pragma once

#include <QByteArray>
#include <QPainter>
#include <QSizeF>
#include <QString>
#include <functional>

namespace zyga::ui {

/// Draws into the area it is given.
using PlotPainter = std::function<void(QPainter& painter, const QRectF& area)>;

/// Endings that plotBytes knows, the usual one first: svg, pdf, png.
const QStringList& plotEndings();

/// A figure of `size` points as the bytes of an SVG, PDF or PNG file; a PNG has four pixels a point. Empty for another
/// ending. Needs a QGuiApplication.
QByteArray plotBytes(const QString& ending, const QSizeF& size, const PlotPainter& paint);

}  // namespace zyga::ui
