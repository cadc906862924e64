#include "ui/report/report_pdf.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPageSize>
#include <QPdfWriter>

#include "ui/report/page_flow.h"
#include "ui/sheets/repeatable_pdf.h"

namespace zyga::ui {
namespace {

constexpr int kResolution = 600;

QString fromUtf8(const std::string& text) { return QString::fromStdString(text); }

struct Laid {
  std::vector<PageFlow::Column> columns;
  std::vector<QStringList> rows;
};

Laid laidOut(const report::Table& table) {
  Laid laid;
  for (std::size_t i = 0; i < table.columns.size(); ++i)
    laid.columns.push_back({fromUtf8(table.columns[i]), i >= table.words.size() || table.words[i], 0});
  for (const auto& row : table.rows) {
    laid.rows.emplace_back();
    for (const auto& cell : row) laid.rows.back() << fromUtf8(cell);
  }
  return laid;
}

void set(PageFlow& flow, const report::Table& table) {
  const auto [columns, rows] = laidOut(table);
  if (!table.caption.empty()) {
    const QString caption = fromUtf8(table.caption);
    flow.keepTogether(flow.heightOf(caption, PageFlow::Style::Small, flow.width()) + flow.tableHeight(columns, rows) +
                      2);
    flow.text(caption, PageFlow::Style::Small);
    flow.space(2);
  }
  flow.table(columns, rows);
  flow.space(8);
}

/// Of a heading and what must not be parted from it: its sentences, and the figure or first table after them.
qreal openingHeight(const PageFlow& flow, const report::Section& section, const ReportFigures& figures) {
  qreal height = 24;
  for (const auto& sentence : section.sentences)
    height += flow.heightOf(fromUtf8(sentence), PageFlow::Style::Body, flow.width()) + 2.5;
  if (const auto figure = figures.find(section.figure); figure != figures.end())
    return height + figure->second.size.height() + 12;
  if (section.tables.empty()) return height;
  const auto [columns, rows] = laidOut(section.tables.front());
  return height + flow.tableHeight(columns, rows) + 24;
}

void set(PageFlow& flow, const report::Section& section, const ReportFigures& figures) {
  flow.space(14);
  flow.keepTogether(openingHeight(flow, section, figures));
  flow.text(fromUtf8(section.heading), PageFlow::Style::Heading);
  flow.space(3);
  for (const auto& sentence : section.sentences) {
    flow.text(fromUtf8(sentence), PageFlow::Style::Body);
    flow.space(2.5);
  }
  if (const auto figure = figures.find(section.figure); figure != figures.end()) {
    flow.space(4);
    flow.figure(figure->second.size.height(), figure->second.paint);
    if (!section.figureCaption.empty()) flow.text(fromUtf8(section.figureCaption), PageFlow::Style::Small);
  }
  flow.space(4);
  for (const auto& table : section.tables) set(flow, table);
  for (const auto& caution : section.cautions) {
    flow.text(fromUtf8(caution), PageFlow::Style::Small);
    flow.space(2);
  }
}

}  // namespace

QByteArray reportPdf(const report::Report& report, const ReportFigures& figures) {
  const SteadyHashes steady;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter pdf(&buffer);
  pdf.setResolution(kResolution);
  pdf.setPageSize(QPageSize(QPageSize::A4));
  pdf.setPageMargins(QMarginsF());
  pdf.setTitle(fromUtf8(report.title));
  pdf.setCreator("Zygapose");
  {
    PageFlow flow(pdf, QCoreApplication::translate("ReportPdf",
                                                   "%1. Not an engineering document; local codes and "
                                                   "licensed practice decide.")
                           .arg(fromUtf8(report.title)));
    flow.text(fromUtf8(report.title), PageFlow::Style::Title);
    flow.space(2);
    flow.text(fromUtf8(report.subtitle), PageFlow::Style::Subtitle);
    flow.space(6);
    flow.rule(1.2);
    for (const auto& section : report.sections) set(flow, section, figures);
  }
  return withoutClock(bytes);
}

}  // namespace zyga::ui
