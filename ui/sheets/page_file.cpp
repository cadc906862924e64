#include "ui/sheets/page_file.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QCryptographicHash>
#include <QHashSeed>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QRegularExpression>
#include <stdexcept>

#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr double kInch = 25.4;  // mm

std::runtime_error failure(const char* english, const QStringList& parts = {}) {
  return std::runtime_error(filled(translated(english), parts).toStdString());
}

QByteArray pdfBytes(const Page& page) {
  const SteadyHashes steady;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter pdf(&buffer);
  pdf.setTitle(page.title);
  pdf.setCreator("Zygapose");
  pdf.setResolution(static_cast<int>(kInch * kPageUnits));
  pdf.setPageSize(QPageSize(page.size, QPageSize::Millimeter, {}, QPageSize::ExactMatch));
  pdf.setPageMargins(QMarginsF());
  QPainter painter;
  if (!painter.begin(&pdf)) throw failure(QT_TRANSLATE_NOOP("words", "the page could not be made"));
  paintPage(painter, page, kPageUnits);
  painter.end();
  return withoutClock(bytes);
}

QByteArray pngBytes(const Page& page, int width) {
  const double unitsPerMm = width / page.size.width();
  const QSize size(width, qRound(page.size.height() * unitsPerMm));
  QImage image(size, QImage::Format_RGBA8888_Premultiplied);
  if (image.isNull())
    throw failure(QT_TRANSLATE_NOOP("words", "there is not enough memory for %1 x %2 pixels; choose a smaller width"),
                  {QString::number(size.width()), QString::number(size.height())});
  image.fill(Qt::transparent);
  image.setDotsPerMeterX(qRound(unitsPerMm * 1000));
  image.setDotsPerMeterY(qRound(unitsPerMm * 1000));
  QPainter painter(&image);
  paintPage(painter, page, unitsPerMm);
  painter.end();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!image.save(&buffer, "PNG")) throw failure(QT_TRANSLATE_NOOP("words", "the page could not be written as PNG"));
  return bytes;
}

/// Micrometres are finer than any printer.
QByteArray number(double mm) {
  QByteArray text = QByteArray::number(mm, 'f', 3);
  while (text.endsWith('0')) text.chop(1);
  if (text.endsWith('.')) text.chop(1);
  return text == "-0" ? "0" : text;
}

QByteArray pathData(const QPainterPath& path) {
  QByteArray data;
  QPointF start, last;
  bool open = false;
  const auto closeIfBack = [&] {
    if (open && last == start) data += 'Z';
    open = false;
  };
  for (int i = 0; i < path.elementCount(); ++i) {
    const QPainterPath::Element element = path.elementAt(i);
    switch (element.type) {
      case QPainterPath::MoveToElement:
        closeIfBack();
        data += 'M';
        start = element;
        open = true;
        break;
      case QPainterPath::LineToElement:
        data += 'L';
        break;
      case QPainterPath::CurveToElement:
        data += 'C';
        break;
      case QPainterPath::CurveToDataElement:
        data += ' ';
        break;
    }
    data += number(element.x) + ' ' + number(element.y);
    last = element;
  }
  closeIfBack();
  return data;
}

QByteArray paintOf(const char* attribute, const QColor& colour) {
  if (!colour.isValid()) return QByteArray(" ") + attribute + "=\"none\"";
  QByteArray text = QByteArray(" ") + attribute + "=\"" + colour.name().toLatin1() + '"';
  if (colour.alpha() < 255) text += QByteArray(" ") + attribute + "-opacity=\"" + number(colour.alphaF()) + '"';
  return text;
}

struct SvgWriter {
  QByteArray& out;

  void operator()(const PageShape& mark) const {
    out += "<path d=\"" + pathData(mark.path) + '"' + paintOf("fill", mark.ink.fill) + paintOf("stroke", mark.ink.line);
    if (mark.ink.fill.isValid() && mark.path.fillRule() == Qt::OddEvenFill) out += " fill-rule=\"evenodd\"";
    if (mark.ink.line.isValid()) {
      out += " stroke-width=\"" + number(mark.ink.width) + "\" stroke-linejoin=\"round\"";
      QByteArrayList dash;
      for (const double mm : mark.ink.dash) dash += number(mm);
      if (!dash.isEmpty()) out += " stroke-dasharray=\"" + dash.join(' ') + '"';
    }
    out += "/>\n";
  }

  void operator()(const PageWords& mark) const {
    out += "<text x=\"" + number(mark.at.x()) + "\" y=\"" + number(mark.at.y()) + "\" font-size=\"" +
           number(mark.size) + '"' + paintOf("fill", mark.colour);
    if (mark.anchor == Qt::AlignRight) out += " text-anchor=\"end\"";
    if (mark.anchor == Qt::AlignHCenter) out += " text-anchor=\"middle\"";
    if (mark.bold) out += " font-weight=\"bold\"";
    out += '>' + mark.words.toHtmlEscaped().toUtf8() + "</text>\n";
  }

  void operator()(const PagePicture& mark) const {
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    mark.image.save(&buffer, "PNG");
    out += "<image x=\"" + number(mark.area.x()) + "\" y=\"" + number(mark.area.y()) + "\" width=\"" +
           number(mark.area.width()) + "\" height=\"" + number(mark.area.height()) +
           "\" preserveAspectRatio=\"none\" xlink:href=\"data:image/png;base64," + png.toBase64() + "\"/>\n";
  }

  void operator()(const PageGroup& mark) const { out += "<g id=\"" + mark.name.toHtmlEscaped().toUtf8() + "\">\n"; }
  void operator()(const PageGroupEnd&) const { out += "</g>\n"; }
};

}  // namespace

const QStringList& pageEndings() {
  static const QStringList endings{"pdf", "svg", "png"};
  return endings;
}

QByteArray pageBytes(const Page& page, const QString& ending, int pngWidth) {
  if (ending == "pdf") return pdfBytes(page);
  if (ending == "svg") return pageSvg(page);
  if (ending == "png") return pngBytes(page, pngWidth);
  throw failure(QT_TRANSLATE_NOOP("words", "a sheet ends in .pdf, .svg or .png"));
}

QByteArray pageSvg(const Page& page) {
  const QByteArray width = number(page.size.width()), height = number(page.size.height());
  QByteArray out =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
      "xmlns:xlink=\"http://www.w3.org/1999/xlink\" version=\"1.1\" width=\"" +
      width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + ' ' + height + "\" font-family=\"" +
      pageFamily().toHtmlEscaped().toUtf8() + ", sans-serif\">\n<title>" + page.title.toHtmlEscaped().toUtf8() +
      "</title>\n";
  if (page.paper.isValid())
    out += "<rect width=\"" + width + "\" height=\"" + height + '"' + paintOf("fill", page.paper) + "/>\n";
  for (const PageMark& mark : page.marks) std::visit(SvgWriter{out}, mark);
  return out + "</svg>\n";
}

SteadyHashes::SteadyHashes() { QHashSeed::setDeterministicGlobalSeed(); }
SteadyHashes::~SteadyHashes() { QHashSeed::resetRandomGlobalSeed(); }

QByteArray withoutClock(QByteArray pdf) {
  const QString text = QString::fromLatin1(pdf);
  static const QRegularExpression date("/(?:CreationDate|ModDate) ?\\(D:(\\d{14})[^)]*\\)");
  for (auto it = date.globalMatch(text); it.hasNext();) {
    const auto match = it.next();
    const qsizetype from = match.capturedStart(1), length = match.capturedEnd(0) - 1 - from;
    // The offset from UTC goes with the date.
    pdf.replace(from, length, QByteArray("20000101000000Z").leftJustified(length, ' ', true));
  }
  static const QRegularExpression identifier("/ID \\[ ?<([0-9A-Fa-f]+)> ?<([0-9A-Fa-f]+)> ?\\]");
  const auto match = identifier.match(text);
  if (!match.hasMatch()) return pdf;
  const auto fill = [&](const QByteArray& bytes) {
    for (const int part : {1, 2}) {
      const qsizetype length = match.capturedLength(part);
      pdf.replace(match.capturedStart(part), length, bytes.leftJustified(length, '0', true));
    }
  };
  fill({});
  fill(QCryptographicHash::hash(pdf, QCryptographicHash::Sha256).toHex());
  return pdf;
}

}  // namespace zyga::ui
