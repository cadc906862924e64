#include "ui/report/write_report.h"

#include "core/report/html.h"
#include "ui/report/report_pdf.h"

namespace zyga::ui {

std::string reportBytes(const QString& ending, const report::Gathered& gathered, const QImage& pose) {
  if (ending == "pdf") return reportPdf(gathered.report, reportFigures(gathered, pose)).toStdString();
  if (ending == "html") return report::html(gathered.report, htmlFigures(gathered, pose));
  return {};
}

}  // namespace zyga::ui
