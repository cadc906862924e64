#include "ui/sheets/plate_paint.h"

#include <QPainter>

#include "ui/sheets/plate_font.h"

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
