#include "ui/panels/studies/plot_view.h"

#include <QFontInfo>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStyleOption>
#include <algorithm>

#include "ui/theme/figures.h"

namespace zyga::ui {
namespace {

constexpr double kMostSlender = 1.2, kLeastSlender = 0.95;  // height to width
constexpr qreal kPale = 0.45;

}  // namespace

PlotInk screenInk(const Theme& theme, const QFont& font) {
  PlotInk ink;
  ink.paper = theme.panel;
  ink.ink = theme.text;
  ink.muted = theme.muted;
  ink.line = theme.line;
  ink.accent = theme.choice;
  ink.font = font;
  ink.font.setPixelSize(QFontInfo(font).pixelSize());
  return ink;
}

PlotView::PlotView(QWidget* parent) : QWidget(parent) {
  setObjectName("plotView");
  setFocusPolicy(Qt::TabFocus);
  setCursor(Qt::PointingHandCursor);
  setToolTip(tr("A click shows the figure large"));
  setAccessibleName(tr("Figure of the study"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, qOverload<>(&QWidget::update));
}

void PlotView::show(std::shared_ptr<const StudyResult> result, bool outOfDate) {
  result_ = std::move(result);
  outOfDate_ = outOfDate;
  setVisible(result_ != nullptr);
  updateGeometry();
  update();
}

int PlotView::heightForWidth(int width) const {
  if (!result_) return 0;
  const QSizeF paper = paperSize(*result_);
  return qRound(width * std::clamp(paper.height() / paper.width(), kLeastSlender, kMostSlender));
}

QSize PlotView::sizeHint() const {
  constexpr int kUsualWidth = 280;
  return {kUsualWidth, heightForWidth(kUsualWidth)};
}

void PlotView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  if (!result_) return;
  // Small paper, small words.
  const PlotInk ink = screenInk(theme(), width() < 420 ? smallFont(font()) : font());
  if (outOfDate_) painter.setOpacity(kPale);
  paintStudy(painter, rect(), *result_, ink);
  painter.setOpacity(1);
  if (!hasFocus()) return;
  painter.setPen(QPen(theme().choice, 1.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
}

void PlotView::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && rect().contains(event->pos()) && result_) emit enlargeAsked();
}

void PlotView::keyPressEvent(QKeyEvent* event) {
  const bool pressed = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
  if (pressed && result_) {
    emit enlargeAsked();
  } else {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace zyga::ui
