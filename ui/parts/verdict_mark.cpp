#include "ui/parts/verdict_mark.h"

#include <QPainter>

#include "ui/theme/theme.h"

namespace zyga::ui {

void VerdictMark::setLevel(range::Level level) {
  level_ = level;
  update();
}

/// As high as a line of text, so that the shape stands beside the first one at any size of text.
QSize VerdictMark::sizeHint() const { return {16, fontMetrics().height()}; }

void VerdictMark::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintVerdict(painter, QPointF(8, height() / 2.0), 12, level_);
}

}  // namespace zyga::ui
