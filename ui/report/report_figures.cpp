#include "ui/report/report_figures.h"

#include <QBuffer>

#include "ui/plots/plot_file.h"
#include "ui/plots/study_plots.h"

namespace zyga::ui {
namespace {

using report::Figure;

constexpr qreal kColumn = 481;  ///< points, the width of a report's page between its margins

template <class Study>
void add(ReportFigures& figures, Figure which, const std::optional<Study>& study, qreal height,
         void (*paint)(QPainter&, const QRectF&, const Study&, const PlotInk&)) {
  if (!study) return;
  figures[which] = {QSizeF(kColumn, height), [&study = *study, paint](QPainter& painter, const QRectF& area) {
                      paint(painter, area, study, printInk(8));
                    }};
}

ReportFigures plots(const report::Gathered& gathered) {
  ReportFigures figures;
  add(figures, Figure::Elevation, gathered.elevation, 290, paintElevation);
  add(figures, Figure::Envelope, gathered.envelope, 330, paintEnvelope);
  add(figures, Figure::RangeChart, gathered.ranges, 330, paintRangeChart);
  add(figures, Figure::Pressure, gathered.pressure, 220, paintPressure);
  return figures;
}

/// From the <svg> on; ids would clash between figures of one page and are not used by the plots.
std::string inlineSvg(const QByteArray& svg) {
  const auto at = svg.indexOf("<svg");
  return at < 0 ? std::string() : svg.mid(at).toStdString();
}

}  // namespace

ReportFigures reportFigures(const report::Gathered& gathered, const QImage& pose) {
  ReportFigures figures = plots(gathered);
  if (!pose.isNull()) {
    const qreal height = kColumn * pose.height() / pose.width();
    figures[Figure::Pose] = {QSizeF(kColumn, height), [pose](QPainter& painter, const QRectF& area) {
                               painter.setRenderHint(QPainter::SmoothPixmapTransform);
                               painter.drawImage(area, pose);
                             }};
  }
  return figures;
}

std::map<Figure, std::string> htmlFigures(const report::Gathered& gathered, const QImage& pose) {
  std::map<Figure, std::string> out;
  for (const auto& [which, figure] : plots(gathered))
    out[which] = inlineSvg(plotBytes("svg", figure.size, figure.paint));
  if (!pose.isNull()) {
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    pose.save(&buffer, "PNG");
    out[Figure::Pose] = "<img alt=\"The skeleton as posed, from the left\" src=\"data:image/png;base64," +
                        png.toBase64().toStdString() + "\">";
  }
  return out;
}

}  // namespace zyga::ui
