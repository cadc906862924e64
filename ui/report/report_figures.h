#pragma once

#include <QByteArray>
#include <QImage>
#include <QPainter>
#include <functional>
#include <map>
#include <string>

#include "core/report/gather.h"

namespace zyga::ui {

/// A figure of a report: how high it stands on a column so wide (points), and how it is drawn.
struct ReportFigure {
  QSizeF size;
  std::function<void(QPainter&, const QRectF&)> paint;
};
using ReportFigures = std::map<report::Figure, ReportFigure>;

/// The studies' plots, and the traced picture of the pose (null: none). Refers to `gathered`.
ReportFigures reportFigures(const report::Gathered& gathered, const QImage& pose);

/// The same for an HTML page: plots as <svg>, the picture as a PNG inside <img>. Needs a QGuiApplication.
std::map<report::Figure, std::string> htmlFigures(const report::Gathered& gathered, const QImage& pose);

}  // namespace zyga::ui
