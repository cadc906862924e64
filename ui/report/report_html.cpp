#include "ui/report/report_html.h"

#include <QCoreApplication>
#include <string_view>

#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr std::string_view kStyle = R"(
@page { size: A4; margin: 18mm 20mm; }
body { font: 15px/1.5 system-ui, sans-serif; color: #1a1a1a; max-width: 46em; margin: 2.5em auto; padding: 0 1.2em; }
h1 { font-size: 1.7em; font-weight: 600; margin: 0; }
.subtitle { color: #555; margin: .2em 0 2em; padding-bottom: .8em; border-bottom: 2px solid #1a1a1a; }
h2 { font-size: 1.1em; font-weight: 600; margin: 2.2em 0 .6em; break-after: avoid; }
p { margin: .4em 0; }
figure { margin: 1em 0; break-inside: avoid; }
figure svg, figure img { width: 100%; height: auto; display: block; }
figcaption, .caption, .caution { color: #555; font-size: .87em; }
table { border-collapse: collapse; margin: .8em 0; font-size: .93em; }
th { font-weight: 600; text-align: left; border-bottom: 1px solid #1a1a1a; }
th, td { padding: .22em 1.4em .22em 0; vertical-align: top; }
td { border-bottom: 1px solid #ddd; }
.n { text-align: right; font-variant-numeric: tabular-nums; }
.cautions { border-left: 2px solid #999; padding-left: .9em; margin: .8em 0; }
)";

std::string escaped(const QString& text) { return text.toHtmlEscaped().toStdString(); }

void cells(std::string& out, const ReportTable& table, const QStringList& row, const char* tag) {
  out += "<tr>";
  for (qsizetype i = 0; i < row.size(); ++i) {
    const auto column = static_cast<std::size_t>(i);
    const bool number = column < table.words.size() && !table.words[column];
    out += std::string("<") + tag + (number ? " class=\"n\">" : ">") + escaped(row[i]) + "</" + tag + ">";
  }
  out += "</tr>\n";
}

void writeHtml(std::string& out, const ReportTable& table) {
  out += "<table>\n";
  if (!table.caption.isEmpty()) out += "<caption class=\"caption\">" + escaped(table.caption) + "</caption>\n";
  out += "<thead>";
  cells(out, table, table.columns, "th");
  out += "</thead><tbody>\n";
  for (const auto& row : table.rows) cells(out, table, row, "td");
  out += "</tbody></table>\n";
}

void writeHtml(std::string& out, const ReportSection& section, const std::map<Figure, std::string>& figures) {
  out += "<section>\n<h2>" + escaped(section.heading) + "</h2>\n";
  for (const auto& sentence : section.sentences) out += "<p>" + escaped(sentence) + "</p>\n";
  if (const auto figure = figures.find(section.figure); figure != figures.end()) {
    out += "<figure>" + figure->second;
    if (!section.figureCaption.isEmpty()) out += "<figcaption>" + escaped(section.figureCaption) + "</figcaption>";
    out += "</figure>\n";
  }
  for (const ReportTable& table : section.tables) writeHtml(out, table);
  if (!section.cautions.isEmpty()) {
    out += "<div class=\"cautions\">\n";
    for (const auto& caution : section.cautions) out += "<p class=\"caution\">" + escaped(caution) + "</p>\n";
    out += "</div>\n";
  }
  out += "</section>\n";
}

}  // namespace

std::string reportHtml(const ReportText& report, const std::map<Figure, std::string>& figures) {
  //: The code of the language itself, as HTML knows it.
  const QString language = translated(QT_TRANSLATE_NOOP("words", "en"));
  std::string out = "<!DOCTYPE html>\n<html lang=\"" + escaped(language) +
                    "\">\n<head>\n<meta charset=\"utf-8\">\n<title>" + escaped(report.title) + "</title>\n<style>" +
                    std::string(kStyle) + "</style>\n</head>\n<body>\n<h1>" + escaped(report.title) +
                    "</h1>\n<p class=\"subtitle\">" + escaped(report.subtitle) + "</p>\n";
  for (const ReportSection& section : report.sections) writeHtml(out, section, figures);
  return out + "</body>\n</html>\n";
}

}  // namespace zyga::ui
