#pragma once

#include <QByteArray>
#include <QImage>
#include <QPainter>
#include <QString>
#include <functional>
#include <map>
#include <string>

#include "ui/report/report_text.h"

namespace zyga::ui {

/// A figure of a report: how high it stands on a column so wide (points), and how it is drawn.
struct ReportFigure {
  QSizeF size;
  std::function<void(QPainter&, const QRectF&)> paint;
};
using ReportFigures = std::map<Figure, ReportFigure>;

/// The studies' plots, and the traced picture of the pose (null: none). Shares the studies with `data`.
ReportFigures reportFigures(const report::ReportData& data, const QImage& pose);

/// The same for an HTML page: plots as <svg>, the picture as a PNG inside <img>. Needs a QGuiApplication.
std::map<Figure, std::string> htmlFigures(const report::ReportData& data, const QImage& pose);

/// The report on A4 pages. The same report gives the same bytes: date and identifier of the file are fixed. Needs a
/// QGuiApplication.
QByteArray reportPdf(const ReportText& report, const ReportFigures& figures);

/// The bytes of a report by ending: "pdf" or "html"; empty for another one. `pose`: the traced picture, null for none.
/// Needs a QGuiApplication.
std::string reportBytes(const QString& ending, const report::ReportData& data, const QImage& pose);
/// The bytes of its numbers: "csv" or "json"; empty for another ending.
std::string numbersBytes(const QString& ending, const report::ReportData& data);

}  // namespace zyga::ui
