#pragma once

#include <QByteArray>

#include "ui/report/report_figures.h"

namespace zyga::ui {

/// The report on A4 pages. The same report gives the same bytes: date and identifier of the file are fixed. Needs a
/// QGuiApplication.
QByteArray reportPdf(const report::Report& report, const ReportFigures& figures);

}  // namespace zyga::ui
