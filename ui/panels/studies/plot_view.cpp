#include "ui/panels/studies/plot_view.h"

#include <QFontInfo>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QSettings>
#include <QStyleOption>
#include <algorithm>

#include "ui/theme/typography.h"
#include "ui/words/study_words.h"

namespace zyga::ui {
namespace {

constexpr double kMostSlender = 1.2, kLeastSlender = 0.95;  // height to width
constexpr qreal kPale = 0.45;
constexpr char kSizeKey[] = "studies/plotWindow";

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
  const QSizeF paper = figureSize(kindOf(*result_));
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

PlotWindow::PlotWindow(QWidget* parent) : QDialog(parent) {
  setObjectName("plotWindow");
  resize(QSettings().value(kSizeKey, QSize(880, 640)).toSize());
  setMinimumSize(360, 260);
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, qOverload<>(&QWidget::update));
}

void PlotWindow::show(StudyKind kind, const std::shared_ptr<const StudyResult>& result, bool outOfDate) {
  result_ = result;
  outOfDate_ = outOfDate;
  setWindowTitle(outOfDate ? tr("%1, out of date").arg(title(kind)) : title(kind));
  update();
  if (result_) return QDialog::show();
  hide();
}

void PlotWindow::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), theme().panel);
  if (!result_) return;
  if (outOfDate_) painter.setOpacity(kPale);
  paintStudy(painter, QRectF(rect()).adjusted(kWideGap, kWideGap, -kWideGap, -kWideGap), *result_,
             screenInk(theme(), font()));
}

void PlotWindow::hideEvent(QHideEvent* event) {
  QSettings().setValue(kSizeKey, size());
  QDialog::hideEvent(event);
}

}  // namespace zyga::ui
