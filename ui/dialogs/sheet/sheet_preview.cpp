#include "ui/dialogs/sheet/sheet_preview.h"

#include <QPainter>

#include "ui/sheets/plate.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"

namespace zyga::ui {

SheetPreview::SheetPreview(QWidget* parent) : QWidget(parent) {
  setObjectName("sheetPreview");
  setMinimumSize(420, 300);
  setAccessibleName(tr("Preview of the sheet"));
}

void SheetPreview::setPlate(Plate plate) {
  plate_ = std::move(plate);
  fault_.clear();
  update();
}

void SheetPreview::setFault(const QString& fault) {
  fault_ = fault;
  update();
}

void SheetPreview::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), theme().viewportGround);
  const QRectF room = QRectF(rect()).adjusted(kWideGap, kWideGap, -kWideGap, -kWideGap);
  if (!fault_.isEmpty() || !plate_) {
    painter.setPen(theme().text);
    painter.drawText(room, Qt::AlignCenter | Qt::TextWordWrap, fault_.isEmpty() ? tr("Drawing the sheet…") : fault_);
    return;
  }
  const double scale = std::min(room.width() / plate_->size.width(), room.height() / plate_->size.height());
  const QSizeF size = plate_->size * scale;
  const QRectF page(room.center() - QPointF(size.width() / 2, size.height() / 2), size);
  // A transparent page is shown on white all the same, because it will be laid on something.
  painter.fillRect(page, QColor(Qt::white));
  painter.translate(page.topLeft());
  paintPlate(painter, *plate_, scale);
  painter.resetTransform();
  painter.setPen(theme().line);
  painter.drawRect(page);
}

}  // namespace zyga::ui
