#include <QPainter>
#include <QPainterPath>
#include <cmath>

#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

void paintRing(QPainter& painter, const QPointF& centre, qreal size, const QColor& colour) {
  const qreal stroke = std::max<qreal>(1.5, size * 0.24);
  const qreal radius = (size - stroke) / 2;
  painter.setPen(QPen(colour, stroke));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(centre, radius, radius);
}

void paintTriangle(QPainter& painter, const QPointF& centre, qreal size, const QColor& colour) {
  // Slightly larger than the dot, and hung so that its centre of area lies on the centre.
  const qreal half = size * 0.62;
  const qreal height = half * std::sqrt(3.0);
  QPolygonF triangle;
  triangle << centre + QPointF(0, -height * 2 / 3) << centre + QPointF(half, height / 3)
           << centre + QPointF(-half, height / 3);
  painter.setPen(QPen(colour, std::max<qreal>(1, size * 0.1), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(colour);
  painter.drawPolygon(triangle);
}

void paintHatchedDisc(QPainter& painter, const QPointF& centre, qreal size, const QColor& colour) {
  const QRectF box(centre.x() - size / 2, centre.y() - size / 2, size, size);
  QPainterPath disc;
  disc.addEllipse(box);
  painter.setClipPath(disc, Qt::IntersectClip);
  paintHatching(painter, box, colour, std::max<qreal>(2.5, size / 4));
}

}  // namespace

void paintHatching(QPainter& painter, const QRectF& area, const QColor& colour, qreal spacing) {
  painter.save();
  painter.setClipRect(area, Qt::IntersectClip);
  painter.setPen(QPen(colour, 1));
  // Lines on a lattice of the whole device, so that neighbouring areas continue each other.
  const qreal step = spacing * std::sqrt(2.0);
  const qreal first = std::floor((area.left() + area.top()) / step) * step;
  for (qreal sum = first; sum <= area.right() + area.bottom(); sum += step)
    painter.drawLine(QPointF(sum - area.bottom(), area.bottom()), QPointF(sum - area.top(), area.top()));
  painter.restore();
}

void paintContact(QPainter& painter, const QPointF& centre, qreal size) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const qreal half = size * 0.42;
  painter.setPen(QPen(theme().contact, std::max<qreal>(2, size * 0.26), Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(centre + QPointF(-half, -half), centre + QPointF(half, half));
  painter.drawLine(centre + QPointF(-half, half), centre + QPointF(half, -half));
  painter.restore();
}

void paintVerdict(QPainter& painter, const QPointF& centre, qreal size, range::Level level) {
  const QColor& colour = theme().verdict(level);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  switch (level) {
    case range::Level::Supported:
      painter.setPen(Qt::NoPen);
      painter.setBrush(colour);
      painter.drawEllipse(centre, size / 2, size / 2);
      break;
    case range::Level::Near:
      paintRing(painter, centre, size, colour);
      break;
    case range::Level::Beyond:
      paintTriangle(painter, centre, size, colour);
      break;
    case range::Level::NotJudged:
      paintHatchedDisc(painter, centre, size, colour);
      break;
  }
  painter.restore();
}

}  // namespace zyga::ui
