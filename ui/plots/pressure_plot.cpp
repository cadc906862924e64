#include <QObject>
#include <algorithm>

#include "ui/plots/hatching.h"
#include "ui/plots/plot_axes.h"
#include "ui/plots/study_plots.h"

namespace zyga::ui {
namespace {

using study::NeckCarriage;

/// At the heart of an upright sauropod in one view (Seymour & Lillywhite 2000, Proc. R. Soc. B 267:1883), mmHg.
constexpr double kUprightView = 700;

QString nameOf(NeckCarriage which) {
  switch (which) {
    case NeckCarriage::Neutral:
      return QObject::tr("neutral");
    case NeckCarriage::Dorsal:
      return QObject::tr("most dorsiflexed");
    case NeckCarriage::Ventral:
      return QObject::tr("most ventriflexed");
    case NeckCarriage::Highest:
      return QObject::tr("highest");
    case NeckCarriage::Lowest:
      return QObject::tr("lowest");
    case NeckCarriage::Present:
      break;
  }
  return QObject::tr("present");
}

/// From no pressure to a row's, hatched; a thin bar from thin to thick blood at its end.
void paintRow(QPainter& painter, const PlotFrame& frame, const study::Pressure::Row& row, double y, double height,
              const PlotInk& ink) {
  const double zero = frame.xAt(0), end = frame.xAt(row.pressure);
  const QRectF bar = QRectF(QPointF(zero, y - height / 2), QPointF(end, y + height / 2)).normalized();
  const bool present = row.which == NeckCarriage::Present;
  painter.setPen(ink.pen(present ? ink.ink : ink.muted, present ? 1 : 0.7));
  painter.drawLines(hatchingIn({QPolygonF(bar)}, (present ? 0.28 : 0.5) * ink.size()));
  painter.setPen(ink.pen(ink.ink, present ? 2 : 1.2));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(bar);
  const QPointF low(frame.xAt(row.low), y), high(frame.xAt(row.high), y);
  painter.setPen(ink.pen(ink.ink, 2));
  painter.drawLine(low, high);
  for (const QPointF& at : {low, high}) painter.drawLine(at - QPointF(0, 0.3 * height), at + QPointF(0, 0.3 * height));
  painter.setFont(ink.font);
  const QString words = QObject::tr("%1 mmHg, %2 m").arg(tickWord(row.pressure, 1), tickWord(row.column, 0.01));
  paintWords(painter, {std::max({bar.right(), low.x(), high.x()}) + 0.6 * ink.size(), y}, words,
             Qt::AlignLeft | Qt::AlignVCenter, ink, ink.ink);
  const QFontMetricsF metrics(ink.font);
  painter.setPen(ink.ink);
  painter.drawText(QPointF(frame.area().left() - 0.6 * ink.size() - metrics.horizontalAdvance(nameOf(row.which)),
                           y + 0.36 * metrics.ascent()),
                   nameOf(row.which));
}

}  // namespace

void paintPressure(QPainter& painter, const QRectF& area, const study::Pressure& pressure, const PlotInk& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (ink.paper.isValid()) painter.fillRect(area, ink.paper);
  const QFontMetricsF metrics(ink.font);
  double names = 0;
  PlotAxis x{0, kUprightView, QObject::tr("column of blood from heart to head, mmHg")};
  for (const auto& row : pressure.rows) {
    names = std::max(names, metrics.horizontalAdvance(nameOf(row.which)));
    x.least = std::min(x.least, row.low);
    x.most = std::max(x.most, row.high);
  }
  x.least = x.least < 0 ? 1.1 * x.least : 0;
  x.most *= 1.06;
  const QRectF numbers =
      area.marginsRemoved({names + 1.6 * ink.size(), 2 * ink.size(), 1.2 * ink.size(), 3.4 * ink.size()});
  const PlotFrame frame(numbers, x, {0, 1, {}});
  paintXAxis(painter, frame, ink);
  const double step = numbers.height() / static_cast<double>(pressure.rows.size());
  painter.setPen(ink.pen(ink.ink, 1.2, Qt::DashLine));
  painter.drawLine(QPointF(frame.xAt(kUprightView), numbers.top()), QPointF(frame.xAt(kUprightView), numbers.bottom()));
  painter.setFont(ink.small());
  paintWords(painter, {frame.xAt(kUprightView), numbers.top() - 0.5 * ink.size()},
             QObject::tr("upright sauropod in one published view"), Qt::AlignRight, ink, ink.muted);
  for (std::size_t i = 0; i < pressure.rows.size(); ++i) {
    const double y = numbers.top() + (static_cast<double>(i) + 0.5) * step;
    paintRow(painter, frame, pressure.rows[i], y, std::min(0.5 * step, 2.2 * ink.size()), ink);
  }
  painter.setPen(ink.pen(ink.ink, 1.4));
  painter.drawLine(frame.at(0, 0), frame.at(0, 1));
  painter.restore();
}

}  // namespace zyga::ui
