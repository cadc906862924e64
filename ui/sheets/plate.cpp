#include "ui/sheets/plate.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPainter>

namespace zyga::ui {
namespace {

/// Paints with a painter in plate units.
struct MarkPainter {
  QPainter& painter;

  static QPointF scaled(const QPointF& mm) { return mm * kPlateUnits; }

  void operator()(const PlateShape& mark) const {
    const PlateInk& ink = mark.ink;
    QPen pen(Qt::NoPen);
    if (ink.line.isValid()) {
      pen = QPen(ink.line, ink.width * kPlateUnits, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
      if (!ink.dash.empty()) {
        QList<qreal> dash;  // a pen counts them in its own width
        for (const double mm : ink.dash) dash += mm / ink.width;
        pen.setDashPattern(dash);
      }
    }
    painter.setPen(pen);
    painter.setBrush(ink.fill.isValid() ? QBrush(ink.fill) : QBrush(Qt::NoBrush));
    painter.drawPath(QTransform::fromScale(kPlateUnits, kPlateUnits).map(mark.path));
  }

  void operator()(const PlateWords& mark) const {
    painter.setFont(plateFont(mark.size, mark.bold));
    painter.setPen(mark.colour);
    const double width = widthOf(mark.words, mark.size, mark.bold);
    const double share = mark.anchor == Qt::AlignRight ? 1 : mark.anchor == Qt::AlignHCenter ? 0.5 : 0;
    painter.drawText(scaled(mark.at - QPointF(share * width, 0)), mark.words);
  }

  void operator()(const PlatePicture& mark) const {
    painter.drawImage(QRectF(scaled(mark.area.topLeft()), mark.area.size() * kPlateUnits), mark.image);
  }

  void operator()(const PlateGroup&) const {}
  void operator()(const PlateGroupEnd&) const {}
};

}  // namespace

void Plate::line(const QPointF& from, const QPointF& to, const PlateInk& ink) {
  QPainterPath path(from);
  path.lineTo(to);
  shape(path, ink);
}

double widthOf(const QString& words, double size, bool bold) {
  return QFontMetricsF(plateFont(size, bold)).horizontalAdvance(words) / kPlateUnits;
}

QStringList brokenWords(const QString& words, double size, double width) {
  QStringList lines;
  QString line;
  for (const QString& word : words.split(' ', Qt::SkipEmptyParts)) {
    const QString longer = line.isEmpty() ? word : line + ' ' + word;
    if (!line.isEmpty() && widthOf(longer, size) > width) {
      lines += line;
      line = word;
    } else {
      line = longer;
    }
  }
  if (!line.isEmpty()) lines += line;
  return lines;
}

QString plateFamily() {
  static const QString family = QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  return family;
}

QFont plateFont(double size, bool bold) {
  QFont font(plateFamily());
  font.setPixelSize(static_cast<int>(size * kPlateUnits + 0.5));
  font.setBold(bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

void paintPlate(QPainter& painter, const Plate& plate, double unitsPerMm) {
  painter.save();
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform |
                         QPainter::LosslessImageRendering);
  painter.scale(unitsPerMm / kPlateUnits, unitsPerMm / kPlateUnits);
  if (plate.paper.isValid()) painter.fillRect(QRectF(QPointF(), plate.size * kPlateUnits), plate.paper);
  for (const PlateMark& mark : plate.marks) std::visit(MarkPainter{painter}, mark);
  painter.restore();
}

}  // namespace zyga::ui
