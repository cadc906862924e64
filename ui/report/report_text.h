#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/report/report.h"

/// A report as it is read, in the language chosen, apart from how it is set on paper or screen.
namespace zyga::ui {

struct ReportTable {
  QString caption;
  QStringList columns;
  std::vector<bool> words;  ///< by column: words stand left, numbers right
  std::vector<QStringList> rows;
};

/// Figures that whoever sets the report draws; None for a section without one.
enum class Figure { None, Pose, Elevation, Envelope, RangeChart, Pressure, Stress };

struct ReportSection {
  QString heading;
  QStringList sentences = {};
  Figure figure = Figure::None;
  QString figureCaption = {};
  std::vector<ReportTable> tables = {};
  QStringList cautions = {};  ///< set smaller
};

struct ReportText {
  QString title;     ///< the specimen
  QString subtitle;  ///< what was looked at: pose and kind of report
  std::vector<ReportSection> sections;
};

ReportText reportText(const report::ReportData& data);
/// What is said of the report as a whole.
QString subtitleOf(const report::ReportData& data);

}  // namespace zyga::ui
