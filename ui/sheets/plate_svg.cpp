#include "ui/sheets/plate_svg.h"

#include <QBuffer>

#include "ui/sheets/plate_font.h"

namespace zyga::ui {
namespace {

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

  void operator()(const PlateShape& mark) const {
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

  void operator()(const PlateWords& mark) const {
    out += "<text x=\"" + number(mark.at.x()) + "\" y=\"" + number(mark.at.y()) + "\" font-size=\"" +
           number(mark.size) + '"' + paintOf("fill", mark.colour);
    if (mark.anchor == Qt::AlignRight) out += " text-anchor=\"end\"";
    if (mark.anchor == Qt::AlignHCenter) out += " text-anchor=\"middle\"";
    if (mark.bold) out += " font-weight=\"bold\"";
    out += '>' + mark.words.toHtmlEscaped().toUtf8() + "</text>\n";
  }

  void operator()(const PlatePicture& mark) const {
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    mark.image.save(&buffer, "PNG");
    out += "<image x=\"" + number(mark.area.x()) + "\" y=\"" + number(mark.area.y()) + "\" width=\"" +
           number(mark.area.width()) + "\" height=\"" + number(mark.area.height()) +
           "\" preserveAspectRatio=\"none\" xlink:href=\"data:image/png;base64," + png.toBase64() + "\"/>\n";
  }

  void operator()(const PlateGroup& mark) const { out += "<g id=\"" + mark.name.toHtmlEscaped().toUtf8() + "\">\n"; }
  void operator()(const PlateGroupEnd&) const { out += "</g>\n"; }
};

}  // namespace

QByteArray plateSvg(const Plate& plate) {
  const QByteArray width = number(plate.size.width()), height = number(plate.size.height());
  QByteArray out =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
      "xmlns:xlink=\"http://www.w3.org/1999/xlink\" version=\"1.1\" width=\"" +
      width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + ' ' + height + "\" font-family=\"" +
      plateFamily().toHtmlEscaped().toUtf8() + ", sans-serif\">\n<title>" + plate.title.toHtmlEscaped().toUtf8() +
      "</title>\n";
  if (plate.paper.isValid())
    out += "<rect width=\"" + width + "\" height=\"" + height + '"' + paintOf("fill", plate.paper) + "/>\n";
  for (const PlateMark& mark : plate.marks) std::visit(SvgWriter{out}, mark);
  return out + "</svg>\n";
}

}  // namespace zyga::ui
