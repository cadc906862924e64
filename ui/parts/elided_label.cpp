#include "ui/parts/elided_label.h"

#include <QPainter>

#include "ui/theme/theme.h"

namespace zyga::ui {

ElidedLabel::ElidedLabel(bool muted, QWidget* parent) : QWidget(parent), muted_(muted) {
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void ElidedLabel::setText(const QString& text) {
  if (text == text_) return;
  text_ = text;
  setAccessibleName(text);
  setToolTip(text);
  updateGeometry();
  update();
}

QSize ElidedLabel::sizeHint() const {
  return {text_.isEmpty() ? 0 : fontMetrics().horizontalAdvance(text_) + 1, fontMetrics().height() + 4};
}

QSize ElidedLabel::minimumSizeHint() const { return {0, fontMetrics().height() + 4}; }

void ElidedLabel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(muted_ ? theme().muted : theme().text);
  painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter, fontMetrics().elidedText(text_, Qt::ElideRight, width()));
}

}  // namespace zyga::ui
