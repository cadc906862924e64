#include <QObject>
#include <QtMath>
#include <algorithm>

#include "ui/plots/side_figure.h"
#include "ui/plots/study_plots.h"

namespace zyga::ui {
namespace {

using study::NeckCarriage;

/// Kind of line of each way of carrying the neck: full, dashed, dotted, both, and heavy for the present one.
QPen penOf(NeckCarriage which, const PlotInk& ink) {
  QPen pen = ink.pen(ink.ink, which == NeckCarriage::Present ? 3.4 : 2);
  if (which == NeckCarriage::Dorsal) pen.setDashPattern({5, 2.5});
  if (which == NeckCarriage::Ventral) pen.setDashPattern({1, 2});
  if (which == NeckCarriage::Highest) pen.setDashPattern({7, 2, 1, 2});
  if (which == NeckCarriage::Lowest) pen.setDashPattern({4, 2, 1, 2, 1, 2});
  if (which == NeckCarriage::Present) pen.setColor(ink.accent);
  return pen;
}

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

QString wordsOf(const study::ElevationCase& one) {
  return QObject::tr("%1: %2 m, neck %3°")
      .arg(nameOf(one.which), tickWord(one.carriage.snoutHeight, 0.01), tickWord(qRadiansToDegrees(one.slope), 0.1));
}

/// Names beside the snouts; where two would touch, the lower one moves down and a thin line leads to it.
void paintNames(QPainter& painter, const PlotFrame& frame, const study::Elevation& elevation, const PlotInk& ink) {
  std::vector<const study::ElevationCase*> cases;
  for (const auto& one : elevation.cases) cases.push_back(&one);
  const auto snout = [&](const study::ElevationCase& one) {
    return frame.at(one.line.back().x(), one.line.back().y());
  };
  std::sort(cases.begin(), cases.end(), [&](auto* a, auto* b) { return snout(*a).y() < snout(*b).y(); });
  painter.setFont(ink.font);
  const QFontMetricsF metrics(ink.font);
  const double left = frame.area().left() + 0.6 * ink.size();
  double free = frame.area().top() + metrics.ascent();
  const double lowest = frame.area().bottom() - 0.5 * ink.size();
  for (std::size_t i = 0; i < cases.size(); ++i) {
    const double below = static_cast<double>(cases.size() - 1 - i) * 1.35 * ink.size();
    const double y = std::clamp(snout(*cases[i]).y(), free, std::max(free, lowest - below));
    const QString words = wordsOf(*cases[i]);
    const double end = left + metrics.horizontalAdvance(words) + 0.4 * ink.size();
    painter.setPen(ink.pen(ink.muted, 0.8));
    if (snout(*cases[i]).x() > end) painter.drawLine(QPointF(end, y), snout(*cases[i]));
    paintWords(painter, {left, y}, words, Qt::AlignLeft | Qt::AlignVCenter, ink, ink.ink);
    free = y + 1.35 * ink.size();
  }
}

/// Room in front of the snouts, painter's units, where the words stand.
PlotFrame widened(const PlotFrame& frame, double room) {
  PlotAxis x = frame.xAxis();
  x.most += room / frame.perX();
  return {frame.area().adjusted(-room, 0, 0, 0), x, frame.yAxis(), true};
}

/// Where there is no room beside the snouts: each kind of line with its words, under each other.
void paintKey(QPainter& painter, const QRectF& area, const study::Elevation& elevation, const PlotInk& ink) {
  painter.setFont(ink.font);
  const double row = area.height() / static_cast<double>(elevation.cases.size());
  double y = area.top() + 0.5 * row;
  for (const auto& one : elevation.cases) {
    painter.setPen(penOf(one.which, ink));
    painter.drawLine(QPointF(area.left(), y), QPointF(area.left() + 3.4 * ink.size(), y));
    paintWords(painter, {area.left() + 4 * ink.size(), y}, wordsOf(one), Qt::AlignLeft | Qt::AlignVCenter, ink,
               ink.ink);
    y += row;
  }
}

void paintNecks(QPainter& painter, const PlotFrame& frame, const study::Elevation& elevation, const PlotInk& ink) {
  paintStage(painter, frame, elevation.body, ink);
  for (const auto& one : elevation.cases) paintLine(painter, one.line, frame, penOf(one.which, ink));
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink.ink);
  for (const auto& one : elevation.cases) {
    painter.drawEllipse(frame.at(one.line.back().x(), one.line.back().y()), 0.28 * ink.size(), 0.28 * ink.size());
  }
  paintScaleBar(painter, frame, ink);
}

}  // namespace

void paintElevation(QPainter& painter, const QRectF& area, const study::Elevation& elevation, const PlotInk& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (ink.paper.isValid()) painter.fillRect(area, ink.paper);
  std::vector<study::Line> all;
  for (const auto& one : elevation.cases) all.push_back(one.line);
  for (std::size_t i = 1; i < elevation.body.size(); ++i) all.push_back(elevation.body[i]);
  const QFontMetricsF metrics(ink.font);
  double widest = 0;
  for (const auto& one : elevation.cases) widest = std::max(widest, metrics.horizontalAdvance(wordsOf(one)));
  constexpr double kMostForWords = 0.42;  // of the width
  if (widest < kMostForWords * area.width()) {
    const PlotFrame frame = widened(sideFrame(area.adjusted(widest, 0, 0, 0), all, ink, 0.4), widest);
    paintNecks(painter, frame, elevation, ink);
    paintNames(painter, frame, elevation, ink);
  } else {
    const double key = 1.3 * ink.size() * static_cast<double>(elevation.cases.size());
    paintNecks(painter, sideFrame(area.adjusted(0, 0, 0, -key), all, ink, 0.4), elevation, ink);
    paintKey(painter, {area.left() + ink.size(), area.bottom() - key, area.width() - 2 * ink.size(), key}, elevation,
             ink);
  }
  painter.restore();
}

}  // namespace zyga::ui
