#include <QPainterPath>
#include <QPolygonF>
#include <algorithm>

#include "ui/plots/carriage_pen.h"
#include "ui/plots/plot_axes.h"
#include "ui/plots/study_plots.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/study_words.h"

// Figures of the animal from its left side.
namespace zyga::ui {
namespace {

using study::NeckCarriage;

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

/// A frame true to scale, head to the left, that holds all of these points and the ground with `room` (m) around them.
/// The axes are titled for ways ahead and heights.
PlotFrame sideFrame(const QRectF& area, const std::vector<study::Line>& lines, const PlotInk& ink, double room) {
  PlotAxis x{0, 0, translated(QT_TRANSLATE_NOOP("words", "ahead of the neck’s base, m"))},
      y{0, 0, translated(QT_TRANSLATE_NOOP("words", "over the ground, m"))};
  for (const auto& line : lines) {
    for (const auto& p : line) {
      x.min = std::min(x.min, p.x());
      x.max = std::max(x.max, p.x());
      y.min = std::min(y.min, p.y());
      y.max = std::max(y.max, p.y());
    }
  }
  x.min -= room;
  x.max += room;
  y.min = std::min(y.min, 0.0) - 0.4 * room;
  y.max += room;
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

/// Ground line with hatching under it, axes, the animal's lines in muted ink.
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
  for (const auto& line : body) paintLine(painter, before(line, frame.xAxis().min), frame, bones);
}

/// A bar of one metre (or of ten centimetres where a metre would be too long) over the lower right corner.
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
  paintWords(painter, (left + right) / 2 + QPointF(0, 0.5 * ink.size()), metre ? metres(1, 0) : millimetres(0.1, 0),
             Qt::AlignHCenter | Qt::AlignTop, ink, ink.ink);
}

QString wordsOf(const study::ElevationCase& one) {
  if (std::isnan(one.carriage.snoutHeight))
    return filled(translated(QT_TRANSLATE_NOOP("words", "%1: neck %2")), {carriageWord(one.which), degrees(one.slope)});
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1: %2, neck %3")),
                {carriageWord(one.which), metres(one.carriage.snoutHeight), degrees(one.slope)});
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
  x.max += room / frame.perX();
  return {frame.area().adjusted(-room, 0, 0, 0), x, frame.yAxis(), true};
}

/// Where there is no room beside the snouts: each kind of line with its words, under each other.
void paintKey(QPainter& painter, const QRectF& area, const study::Elevation& elevation, const PlotInk& ink) {
  painter.setFont(ink.font);
  const double row = area.height() / static_cast<double>(elevation.cases.size());
  double y = area.top() + 0.5 * row;
  for (const auto& one : elevation.cases) {
    painter.setPen(carriagePen(one.which, ink));
    painter.drawLine(QPointF(area.left(), y), QPointF(area.left() + 3.4 * ink.size(), y));
    paintWords(painter, {area.left() + 4 * ink.size(), y}, wordsOf(one), Qt::AlignLeft | Qt::AlignVCenter, ink,
               ink.ink);
    y += row;
  }
}

void paintNecks(QPainter& painter, const PlotFrame& frame, const study::Elevation& elevation, const PlotInk& ink) {
  paintStage(painter, frame, elevation.body, ink);
  for (const auto& one : elevation.cases) paintLine(painter, one.line, frame, carriagePen(one.which, ink));
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink.ink);
  for (const auto& one : elevation.cases) {
    painter.drawEllipse(frame.at(one.line.back().x(), one.line.back().y()), 0.28 * ink.size(), 0.28 * ink.size());
  }
  paintScaleBar(painter, frame, ink);
}

void paintRegion(QPainter& painter, const PlotFrame& frame, const study::Envelope& envelope, const PlotInk& ink) {
  QList<QPolygonF> polygons;
  for (const auto& outline : envelope.outlines) polygons << polygonOf(outline, frame);
  QColor soft = ink.accent;
  soft.setAlphaF(0.55f);
  painter.setPen(ink.pen(soft, 0.7));
  painter.drawLines(hatchingIn(polygons, 0.75 * ink.size()));
  painter.setPen(ink.pen(ink.accent, 2));
  painter.setBrush(Qt::NoBrush);
  for (const QPolygonF& polygon : polygons) painter.drawPolygon(polygon);
}

/// A small disc at a place of the outline, and words beside it.
void paintPlace(QPainter& painter, const QPointF& at, const QString& words, const QPointF& away, Qt::Alignment anchor,
                const PlotInk& ink) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink.ink);
  painter.drawEllipse(at, 0.3 * ink.size(), 0.3 * ink.size());
  painter.setFont(ink.bold());
  paintWords(painter, at + away, words, anchor, ink, ink.ink);
}

/// The stretch of ground, as a thick bar on it, with its ends from the fore feet.
void paintGroundStretch(QPainter& painter, const PlotFrame& frame, const study::Envelope& envelope,
                        const PlotInk& ink) {
  const double origin = envelope.foreFeet.value_or(0);
  for (const auto& stretch : envelope.ground) {
    const QPointF from = frame.at(stretch.from, 0), to = frame.at(stretch.to, 0);
    painter.setPen(ink.pen(ink.ink, 5));
    painter.drawLine(from, to);
    const QString words =
        filled(translated(envelope.foreFeet ? QT_TRANSLATE_NOOP("words", "%1 to %2 ahead of the fore foot")
                                            : QT_TRANSLATE_NOOP("words", "%1 to %2 ahead of the neck’s base")),
               {plain(stretch.from - origin, 2), metres(stretch.to - origin)});
    painter.setFont(ink.bold());
    const QFontMetricsF metrics(painter.font());
    const double half = metrics.horizontalAdvance(words) / 2;
    const double x = std::clamp((from.x() + to.x()) / 2, frame.area().left() + half, frame.area().right() - half);
    paintWords(painter, QPointF(x, from.y() - 0.6 * ink.size()), words, Qt::AlignHCenter, ink, ink.ink);
  }
}

}  // namespace

QPen carriagePen(NeckCarriage which, const PlotInk& ink) {
  QPen pen = ink.pen(ink.ink, which == NeckCarriage::Present ? 3.4 : 2);
  if (which == NeckCarriage::Dorsal) pen.setDashPattern({5, 2.5});
  if (which == NeckCarriage::Ventral) pen.setDashPattern({1, 2});
  if (which == NeckCarriage::Highest) pen.setDashPattern({7, 2, 1, 2});
  if (which == NeckCarriage::Lowest) pen.setDashPattern({4, 2, 1, 2, 1, 2});
  if (which == NeckCarriage::Present) pen.setColor(ink.accent);
  return pen;
}

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

void paintEnvelope(QPainter& painter, const QRectF& area, const study::Envelope& envelope, const PlotInk& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (ink.paper.isValid()) painter.fillRect(area, ink.paper);
  std::vector<study::Line> all = envelope.outlines;
  all.push_back(envelope.neck);
  // Of the body only what stands on the ground counts: a long tail would make the reach small.
  for (std::size_t i = 1; i < envelope.body.size(); ++i) all.push_back(envelope.body[i]);
  const PlotFrame frame = sideFrame(area, all, ink, 0.5);
  paintStage(painter, frame, envelope.body, ink);
  paintRegion(painter, frame, envelope, ink);
  QPen neck = ink.pen(ink.ink, 2.6);
  neck.setCapStyle(Qt::RoundCap);
  paintLine(painter, envelope.neck, frame, neck);
  if (!envelope.outlines.empty()) {
    const auto place = [&](const Eigen::Vector2d& p) { return frame.at(p.x(), p.y()); };
    paintPlace(painter, place(envelope.highest),
               filled(translated(QT_TRANSLATE_NOOP("words", "%1 high")), {metres(envelope.highest.y())}),
               {0, -0.8 * ink.size()}, Qt::AlignHCenter, ink);
    const QString far = filled(translated(QT_TRANSLATE_NOOP("words", "%1 ahead")), {metres(envelope.farthest.x())});
    const double room = place(envelope.farthest).x() - frame.area().left();
    const bool left = room > QFontMetricsF(ink.bold()).horizontalAdvance(far) + ink.size();
    paintPlace(painter, place(envelope.farthest), far, {(left ? -0.8 : 0.8) * ink.size(), 0},
               (left ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter, ink);
    paintGroundStretch(painter, frame, envelope, ink);
  }
  paintScaleBar(painter, frame, ink);
  painter.restore();
}

}  // namespace zyga::ui
