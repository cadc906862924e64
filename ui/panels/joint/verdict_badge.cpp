#include "ui/panels/joint/verdict_badge.h"

#include <QPainter>

#include "ui/theme/figures.h"
#include "ui/theme/theme.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {
constexpr int kShape = 10;
}

VerdictBadge::VerdictBadge(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed); }

void VerdictBadge::show(range::Level level) {
  level_ = level;
  setAccessibleName(words());
  updateGeometry();
  update();
}

QString VerdictBadge::words() const { return text(range::toText(level_)); }

QSize VerdictBadge::sizeHint() const {
  return {kShape + 2 + kGap + fontMetrics().horizontalAdvance(words()), fontMetrics().height() + kGridStep};
}

void VerdictBadge::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintVerdict(painter, QPointF(kShape / 2.0 + 1, height() / 2.0), kShape, level_);
  painter.setPen(theme().text);
  painter.drawText(rect().adjusted(kShape + kGap, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, words());
}

}  // namespace zyga::ui
