#include "ui/panels/joint/interval_bar.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {
constexpr qreal kMark = 9;
constexpr qreal kBarHeight = 8;
}  // namespace

IntervalBar::IntervalBar(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void IntervalBar::show(const range::Band& band, double angle, range::Level level, bool typed) {
  band_ = band;
  angle_ = angle;
  level_ = level;
  typed_ = typed;
  update();
}

double IntervalBar::reach() const {
  double reach = std::abs(angle_);
  if (band_.judged && !band_.empty) reach = std::max({reach, std::abs(band_.least), std::abs(band_.most)});
  return std::max(reach, 0.01) * 1.1;
}

qreal IntervalBar::xOf(double angle) const { return width() / 2.0 + angle / reach() * (width() - kMark) / 2; }

void IntervalBar::paintBand(QPainter& painter) {
  const QRectF whole(0, height() / 2.0 - kBarHeight / 2, width(), kBarHeight);
  if (!band_.judged) return paintHatching(painter, whole, withAlpha(theme().notJudged, 0.55), 3.5);
  if (band_.empty) return painter.fillRect(whole, withAlpha(theme().beyond, 0.12));
  const QRectF bar(QPointF(xOf(band_.least), whole.top()), QPointF(xOf(band_.most), whole.bottom()));
  const bool light = theme().scheme == Scheme::Light;
  painter.fillRect(bar, withAlpha(theme().supported, (light ? 0.3 : 0.4) * (typed_ ? 0.4 : 1)));
  painter.setPen(QPen(theme().supported, 1.5));
  painter.drawLine(bar.topLeft(), bar.bottomLeft());
  painter.drawLine(bar.topRight(), bar.bottomRight());
}

void IntervalBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintBand(painter);
  const QPointF zero(xOf(0), height() / 2.0);
  painter.setPen(QPen(mixed(theme().line, theme().muted, 0.6), 1));
  painter.drawLine(QPointF(zero.x(), 1), QPointF(zero.x(), height() - 1));
  const QPointF place(xOf(angle_), height() / 2.0);
  painter.setPen(QPen(withAlpha(theme().verdict(level_), 0.75), 2));
  painter.drawLine(zero, place);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme().panel);
  painter.drawEllipse(place, kMark / 2 + 1.2, kMark / 2 + 1.2);
  paintVerdict(painter, place, kMark, level_);
}

}  // namespace zyga::ui
