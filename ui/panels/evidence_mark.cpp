#include "ui/panels/evidence_mark.h"

#include <QPainter>

#include "ui/theme/theme.h"

namespace zyga::ui {

using anatomy::Evidence;

QPixmap evidenceMark(Evidence evidence, int size, qreal devicePixelRatio) {
  QPixmap mark(QSize(size, size) * devicePixelRatio);
  mark.setDevicePixelRatio(devicePixelRatio);
  mark.fill(Qt::transparent);
  QPainter painter(&mark);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF chip(1.5, 1.5, size - 3, size - 3);
  const QColor edge = mixed(theme().bone(evidence), theme().text, 0.45);
  painter.setPen(QPen(edge, 1, evidence == Evidence::Inferred ? Qt::DotLine : Qt::SolidLine));
  painter.setBrush(theme().bone(evidence));
  painter.drawRoundedRect(chip, 3, 3);
  if (evidence == Evidence::Mirrored || evidence == Evidence::Scaled)
    paintHatching(painter, chip.adjusted(1, 1, -1, -1), edge, evidence == Evidence::Scaled ? 2.5 : 4);
  if (evidence == Evidence::FoundDeformed)
    painter.drawLine(chip.bottomLeft() + QPointF(2, -2), chip.topRight() + QPointF(-2, 2));
  return mark;
}

}  // namespace zyga::ui
