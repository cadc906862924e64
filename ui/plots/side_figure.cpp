#include "ui/plots/side_figure.h"

#include <QObject>
#include <algorithm>

#include "ui/plots/hatching.h"

namespace zyga::ui {
namespace {

/// The beginning of a line up to where it leaves the frame backwards.
study::Line before(const study::Line& line, double leastAhead) {
  study::Line kept;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i].x() >= leastAhead) {
      kept.push_back(line[i]);
    } else {
      if (i > 0)
        kept.push_back(line[i - 1] +
                       (line[i - 1].x() - leastAhead) / (line[i - 1].x() - line[i].x()) * (line[i] - line[i - 1]));
      break;
    }
  }
  return kept;
}

}  // namespace

PlotFrame sideFrame(const QRectF& area, const std::vector<study::Line>& lines, const PlotInk& ink, double room) {
  PlotAxis x{0, 0, QObject::tr("ahead of the neck’s base, m")}, y{0, 0, QObject::tr("over the ground, m")};
  for (const auto& line : lines) {
    for (const auto& p : line) {
      x.least = std::min(x.least, p.x());
      x.most = std::max(x.most, p.x());
      y.least = std::min(y.least, p.y());
      y.most = std::max(y.most, p.y());
    }
  }
  x.least -= room;
  x.most += room;
  y.least = std::min(y.least, 0.0) - 0.4 * room;
  y.most += room;
  return PlotFrame::trueToScale(area.marginsRemoved(axisRoom(ink)), x, y, true);
}

QPolygonF polygonOf(const study::Line& line, const PlotFrame& frame) {
  QPolygonF polygon;
  for (const auto& p : line) polygon << frame.at(p.x(), p.y());
  return polygon;
}

void paintLine(QPainter& painter, const study::Line& line, const PlotFrame& frame, const QPen& pen) {
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(polygonOf(line, frame));
}

void paintStage(QPainter& painter, const PlotFrame& frame, const std::vector<study::Line>& body, const PlotInk& ink) {
  paintXAxis(painter, frame, ink);
  paintYAxis(painter, frame, ink);
  const QRectF& area = frame.area();
  const double ground = frame.yAt(0);
  const QRectF under(QPointF(area.left(), ground),
                     QPointF(area.right(), std::min(area.bottom(), ground + 0.7 * ink.size())));
  painter.setPen(ink.pen(ink.muted, 0.7));
  painter.drawLines(hatchingIn({QPolygonF(under)}, 0.5 * ink.size()));
  painter.setPen(ink.pen(ink.ink, 1.4));
  painter.drawLine(under.topLeft(), under.topRight());
  QPen bones = ink.pen(ink.muted, 2.2);
  bones.setCapStyle(Qt::RoundCap);
  for (const auto& line : body) paintLine(painter, before(line, frame.xAxis().least), frame, bones);
}

void paintScaleBar(QPainter& painter, const PlotFrame& frame, const PlotInk& ink) {
  const bool metre = frame.perX() < 0.5 * frame.area().width();
  const double length = frame.perX() * (metre ? 1 : 0.1);
  const QPointF right(frame.area().right() - 0.8 * ink.size(), frame.area().top() + 1.4 * ink.size());
  const QPointF left = right - QPointF(length, 0);
  const QPointF tick(0, 0.35 * ink.size());
  painter.setPen(ink.pen(ink.ink, 1.6));
  painter.drawLine(left, right);
  painter.drawLine(left - tick, left + tick);
  painter.drawLine(right - tick, right + tick);
  painter.setFont(ink.small());
  paintWords(painter, (left + right) / 2 + QPointF(0, 0.5 * ink.size()),
             metre ? QObject::tr("1 m") : QObject::tr("10 cm"), Qt::AlignHCenter | Qt::AlignTop, ink, ink.ink);
}

}  // namespace zyga::ui
