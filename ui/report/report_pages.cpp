#include "ui/report/report_pages.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPageSize>
#include <QPdfWriter>

#include "core/report/numbers.h"
#include "ui/plots/plot_file.h"
#include "ui/plots/study_plots.h"
#include "ui/report/page_flow.h"
#include "ui/report/report_html.h"
#include "ui/sheets/page_file.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr qreal kColumn = 481;  ///< points, the width of a report's page between its margins

/// Height of a study's figure in that column, points; none for a study that reports do not show.
std::optional<std::pair<Figure, qreal>> placeOf(study::StudyKind kind) {
  switch (kind) {
    case study::StudyKind::Elevation:
      return {{Figure::Elevation, 290}};
    case study::StudyKind::Envelope:
      return {{Figure::Envelope, 330}};
    case study::StudyKind::Range:
      return {{Figure::RangeChart, 330}};
    case study::StudyKind::Pressure:
      return {{Figure::Pressure, 220}};
    case study::StudyKind::Stress:
      return {{Figure::Stress, 280}};
    case study::StudyKind::Spread:
      break;
  }
  return std::nullopt;
}

ReportFigures plotsOf(const report::ReportData& data) {
  ReportFigures figures;
  for (const report::StudyOfKind& study : data.studies) {
    const auto place = placeOf(study.kind);
    if (!place || !study.outcome.result) continue;
    figures[place->first] = {QSizeF(kColumn, place->second),
                             [result = study.outcome.result](QPainter& painter, const QRectF& area) {
                               paintStudy(painter, area, *result, printInk(8));
                             }};
  }
  return figures;
}

/// From the <svg> on; ids would clash between figures of one page and are not used by the plots.
std::string inlineSvg(const QByteArray& svg) {
  const auto at = svg.indexOf("<svg");
  return at < 0 ? std::string() : svg.mid(at).toStdString();
}

constexpr int kResolution = 600;

struct Laid {
  std::vector<PageFlow::Column> columns;
  std::vector<QStringList> rows;
};

Laid laidOut(const ReportTable& table) {
  Laid laid{{}, table.rows};
  for (qsizetype i = 0; i < table.columns.size(); ++i) {
    const auto column = static_cast<std::size_t>(i);
    laid.columns.push_back({table.columns[i], column >= table.words.size() || table.words[column], 0});
  }
  return laid;
}

void set(PageFlow& flow, const ReportTable& table) {
  const auto [columns, rows] = laidOut(table);
  if (!table.caption.isEmpty()) {
    const QString& caption = table.caption;
    flow.keepTogether(flow.heightOf(caption, PageFlow::Style::Small, flow.width()) + flow.tableHeight(columns, rows) +
                      2);
    flow.text(caption, PageFlow::Style::Small);
    flow.space(2);
  }
  flow.table(columns, rows);
  flow.space(8);
}

/// Of a heading and what must not be parted from it: its sentences, and the figure or first table after them.
qreal openingHeight(const PageFlow& flow, const ReportSection& section, const ReportFigures& figures) {
  qreal height = 24;
  for (const auto& sentence : section.sentences)
    height += flow.heightOf(sentence, PageFlow::Style::Body, flow.width()) + 2.5;
  if (const auto figure = figures.find(section.figure); figure != figures.end())
    return height + figure->second.size.height() + 12;
  if (section.tables.empty()) return height;
  const auto [columns, rows] = laidOut(section.tables.front());
  return height + flow.tableHeight(columns, rows) + 24;
}

void set(PageFlow& flow, const ReportSection& section, const ReportFigures& figures) {
  flow.space(14);
  flow.keepTogether(openingHeight(flow, section, figures));
  flow.text(section.heading, PageFlow::Style::Heading);
  flow.space(3);
  for (const auto& sentence : section.sentences) {
    flow.text(sentence, PageFlow::Style::Body);
    flow.space(2.5);
  }
  if (const auto figure = figures.find(section.figure); figure != figures.end()) {
    flow.space(4);
    flow.figure(figure->second.size.height(), figure->second.paint);
    if (!section.figureCaption.isEmpty()) flow.text(section.figureCaption, PageFlow::Style::Small);
  }
  flow.space(4);
  for (const auto& table : section.tables) set(flow, table);
  for (const auto& caution : section.cautions) {
    flow.text(caution, PageFlow::Style::Small);
    flow.space(2);
  }
}

}  // namespace

ReportFigures reportFigures(const report::ReportData& data, const QImage& pose) {
  ReportFigures figures = plotsOf(data);
  if (!pose.isNull()) {
    const qreal height = kColumn * pose.height() / pose.width();
    figures[Figure::Pose] = {QSizeF(kColumn, height), [pose](QPainter& painter, const QRectF& area) {
                               painter.setRenderHint(QPainter::SmoothPixmapTransform);
                               painter.drawImage(area, pose);
                             }};
  }
  return figures;
}

std::map<Figure, std::string> htmlFigures(const report::ReportData& data, const QImage& pose) {
  std::map<Figure, std::string> out;
  for (const auto& [which, figure] : plotsOf(data)) out[which] = inlineSvg(plotBytes("svg", figure.size, figure.paint));
  if (!pose.isNull()) {
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    pose.save(&buffer, "PNG");
    const QString seen = translated(QT_TRANSLATE_NOOP("words", "The skeleton as posed, left lateral view"));
    out[Figure::Pose] = "<img alt=\"" + seen.toHtmlEscaped().toStdString() + "\" src=\"data:image/png;base64," +
                        png.toBase64().toStdString() + "\">";
  }
  return out;
}

QByteArray reportPdf(const ReportText& report, const ReportFigures& figures) {
  const SteadyHashes steady;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter pdf(&buffer);
  pdf.setResolution(kResolution);
  pdf.setPageSize(QPageSize(QPageSize::A4));
  pdf.setPageMargins(QMarginsF());
  pdf.setTitle(report.title);
  pdf.setCreator("Zygapose");
  {
    PageFlow flow(pdf, filled(translated(QT_TRANSLATE_NOOP("words",
                                                           "%1. Not an engineering document; local codes and licensed "
                                                           "practice decide.")),
                              {report.title}));
    flow.text(report.title, PageFlow::Style::Title);
    flow.space(2);
    flow.text(report.subtitle, PageFlow::Style::Subtitle);
    flow.space(6);
    flow.rule(1.2);
    for (const auto& section : report.sections) set(flow, section, figures);
  }
  return withoutClock(bytes);
}

std::string reportBytes(const QString& ending, const report::ReportData& data, const QImage& pose) {
  if (ending == "pdf") return reportPdf(reportText(data), reportFigures(data, pose)).toStdString();
  if (ending == "html") return reportHtml(reportText(data), htmlFigures(data, pose));
  return {};
}

std::string numbersBytes(const QString& ending, const report::ReportData& data) {
  if (ending == "csv") return report::numbersCsv(data);
  if (ending == "json") return report::numbersJson(data, subtitleOf(data).toStdString());
  return {};
}

}  // namespace zyga::ui
