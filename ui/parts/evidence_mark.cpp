#include "ui/parts/evidence_mark.h"

#include <QComboBox>
#include <QPainter>

#include "ui/parts/panel_parts.h"
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

QString evidenceWord(Evidence evidence) {
  switch (evidence) {
    case Evidence::Found:
      return QObject::tr("preserved");
    case Evidence::FoundDeformed:
      return QObject::tr("deformed");
    case Evidence::Mirrored:
      return QObject::tr("mirrored");
    case Evidence::Scaled:
      return QObject::tr("scaled");
    case Evidence::Inferred:
      break;
  }
  return QObject::tr("inferred");
}

QComboBox* evidenceChoice(QWidget* parent) {
  QComboBox* box = calmComboBox();
  box->setParent(parent);
  for (const Evidence evidence :
       {Evidence::Found, Evidence::FoundDeformed, Evidence::Mirrored, Evidence::Scaled, Evidence::Inferred})
    box->addItem(evidenceWord(evidence), static_cast<int>(evidence));
  paintEvidenceMarks(*box);
  return box;
}

void paintEvidenceMarks(QComboBox& choice) {
  for (int i = 0; i < choice.count(); ++i)
    choice.setItemIcon(i, evidenceMark(static_cast<Evidence>(choice.itemData(i).toInt()), 14, 2));
}

}  // namespace zyga::ui
