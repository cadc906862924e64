#pragma once

#include <QByteArray>

#include "ui/report/report_figures.h"

namespace zyga::ui {

/// The report on A4 pages. The same report gives the same bytes: date and identifier of the file are fixed. Needs a
/// QGuiApplication.
QByteArray reportPdf(const report::Report& report, const ReportFigures& figures);

/// A PDF without what changes from one run to the next: its date is put to the first day of 2000 and its identifier, if
/// there is one, to zeros, in place, so that nothing else moves.
QByteArray withoutClock(QByteArray pdf);

}  // namespace zyga::ui
