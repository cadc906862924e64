#include "ui/plots/plot_axes.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace zyga::ui {
namespace {

/// The least step of 1, 2 or 5 times a power of ten that gives no more than `about` of them.
double stepOf(double span, int about) {
  const double rough = span / std::max(1, about);
  const double power = std::pow(10, std::floor(std::log10(rough)));
  for (const double factor : {1.0, 2.0, 5.0}) {
    if (factor * power >= rough * (1 - 1e-9)) return factor * power;
  }
  return 10 * power;
}

double stepOf(const std::vector<double>& ticks) { return ticks.size() > 1 ? ticks[1] - ticks[0] : 1; }

}  // namespace

std::vector<double> ticksOf(double least, double most, int about) {
  std::vector<double> ticks;
  if (!(most > least)) return ticks;
  const double step = stepOf(most - least, about);
  for (double i = std::ceil(least / step - 1e-9); i * step <= most + 1e-9 * step; ++i) ticks.push_back(i * step);
  return ticks;
}

QString tickWord(double value, double step) {
  const int decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
  QString word = QString::number(std::abs(value) < step * 1e-6 ? 0 : value, 'f', decimals);
  return word.replace(QLatin1Char('-'), QChar(0x2212));
}

PlotFrame PlotFrame::trueToScale(const QRectF& area, PlotAxis x, PlotAxis y, bool xToTheLeft) {
  const double per = std::min(area.width() / (x.max - x.min), area.height() / (y.max - y.min));
  const double lackX = area.width() / per - (x.max - x.min), lackY = area.height() / per - (y.max - y.min);
  x.min -= 0.5 * lackX;
  x.max += 0.5 * lackX;
  // Height grows upwards only: the ground stays where it is.
  y.max += lackY;
  return {area, x, y, xToTheLeft};
}

double PlotFrame::xAt(double x) const {
  const double share = (x - x_.min) / (x_.max - x_.min);
  return area_.left() + (flipped_ ? 1 - share : share) * area_.width();
}

double PlotFrame::yAt(double y) const { return area_.bottom() - (y - y_.min) / (y_.max - y_.min) * area_.height(); }

QMarginsF axisRoom(const PlotInk& ink) {
  return {4.8 * ink.size(), 0.8 * ink.size(), 0.8 * ink.size(), 3.4 * ink.size()};
}

void paintXAxis(QPainter& painter, const PlotFrame& frame, const PlotInk& ink, bool grid) {
  const QRectF& area = frame.area();
  const QFontMetricsF metrics(ink.small());
  const auto ticks =
      ticksOf(frame.xAxis().min, frame.xAxis().max, std::max(2, static_cast<int>(area.width() / (4.5 * ink.size()))));
  painter.setFont(ink.small());
  for (const double tick : ticks) {
    const double x = frame.xAt(tick);
    if (grid) {
      painter.setPen(ink.pen(ink.line, 0.8));
      painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
    }
    painter.setPen(ink.pen(ink.muted));
    painter.drawLine(QPointF(x, area.bottom()), QPointF(x, area.bottom() + 0.3 * ink.size()));
    const QString word = tickWord(tick, stepOf(ticks));
    painter.drawText(
        QPointF(x - metrics.horizontalAdvance(word) / 2, area.bottom() + 0.4 * ink.size() + metrics.ascent()), word);
  }
  painter.setPen(ink.pen(ink.muted));
  painter.drawLine(area.bottomLeft(), area.bottomRight());
  const QString& title = frame.xAxis().title;
  const double width = metrics.horizontalAdvance(title);
  painter.drawText(QPointF(area.center().x() - width / 2, area.bottom() + 1.75 * ink.size() + metrics.ascent()), title);
}

void paintYAxis(QPainter& painter, const PlotFrame& frame, const PlotInk& ink, bool grid) {
  const QRectF& area = frame.area();
  const QFontMetricsF metrics(ink.small());
  const auto ticks =
      ticksOf(frame.yAxis().min, frame.yAxis().max, std::max(2, static_cast<int>(area.height() / (3 * ink.size()))));
  painter.setFont(ink.small());
  double widest = 0;
  for (const double tick : ticks) {
    const double y = frame.yAt(tick);
    if (grid) {
      painter.setPen(ink.pen(ink.line, 0.8));
      painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    }
    painter.setPen(ink.pen(ink.muted));
    painter.drawLine(QPointF(area.left() - 0.3 * ink.size(), y), QPointF(area.left(), y));
    const QString word = tickWord(tick, stepOf(ticks));
    const double width = metrics.horizontalAdvance(word);
    widest = std::max(widest, width);
    painter.drawText(QPointF(area.left() - 0.5 * ink.size() - width, y + 0.36 * metrics.ascent()), word);
  }
  painter.setPen(ink.pen(ink.muted));
  painter.drawLine(area.topLeft(), area.bottomLeft());
  const QString& title = frame.yAxis().title;
  if (title.isEmpty()) return;
  painter.save();
  painter.translate(area.left() - 0.9 * ink.size() - widest - metrics.descent(), area.center().y());
  painter.rotate(-90);
  painter.drawText(QPointF(-metrics.horizontalAdvance(title) / 2, 0), title);
  painter.restore();
}

void paintWords(QPainter& painter, const QPointF& at, const QString& words, Qt::Alignment anchor, const PlotInk& ink,
                const QColor& colour) {
  const QFontMetricsF metrics(painter.font());
  const double width = metrics.horizontalAdvance(words);
  QPointF from = at;
  if (anchor & Qt::AlignRight) from.rx() -= width;
  if (anchor & Qt::AlignHCenter) from.rx() -= width / 2;
  if (anchor & Qt::AlignTop) from.ry() += metrics.ascent();
  if (anchor & Qt::AlignVCenter) from.ry() += 0.36 * metrics.ascent();
  if (ink.paper.isValid()) {
    QPainterPath path;
    path.addText(from, painter.font(), words);
    painter.strokePath(path, QPen(ink.paper, 0.3 * ink.size(), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  }
  painter.setPen(colour);
  painter.drawText(from, words);
}

}  // namespace zyga::ui
