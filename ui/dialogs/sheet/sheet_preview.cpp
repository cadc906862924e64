#include "ui/dialogs/sheet/sheet_preview.h"

#include <QPainter>

#include "ui/sheets/page.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {

SheetPreview::SheetPreview(QWidget* parent) : QWidget(parent) {
  setObjectName("sheetPreview");
  setMinimumSize(420, 300);
  setAccessibleName(tr("Preview of the sheet"));
}

void SheetPreview::setPage(Page page) {
  page_ = std::move(page);
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
  if (!fault_.isEmpty() || !page_) {
    painter.setPen(theme().text);
    painter.drawText(room, Qt::AlignCenter | Qt::TextWordWrap, fault_.isEmpty() ? tr("Drawing the sheet…") : fault_);
    return;
  }
  const double scale = std::min(room.width() / page_->size.width(), room.height() / page_->size.height());
  const QSizeF size = page_->size * scale;
  const QRectF sheet(room.center() - QPointF(size.width() / 2, size.height() / 2), size);
  // A transparent page is shown on white all the same, because it will be laid on something.
  painter.fillRect(sheet, QColor(Qt::white));
  painter.translate(sheet.topLeft());
  paintPage(painter, *page_, scale);
  painter.resetTransform();
  painter.setPen(theme().line);
  painter.drawRect(sheet);
}

}  // namespace zyga::ui
