#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/strip/strip_scene.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

/// How strongly the band's colour stands on the panel; dark ground needs more.
struct BandInk {
  qreal soft, firm, cap;
};
BandInk bandInk() { return theme().scheme == Scheme::Light ? BandInk{0.16, 0.34, 0.85} : BandInk{0.20, 0.42, 0.95}; }

qreal barWidth(const StripLayout& layout) { return std::clamp(layout.slotWidth() * 0.66, 3.0, 22.0); }

QRectF barRect(const StripScene& scene, std::size_t column, double least, double most) {
  const qreal width = barWidth(scene.layout);
  const qreal top = scene.layout.yWithin(most, 0), bottom = scene.layout.yWithin(least, 0);
  return QRectF(scene.layout.xOfColumn(column) - width / 2, top, width, bottom - top);
}

void paintCaps(QPainter& painter, const StripScene& scene, const range::Band& band, const QRectF& bar) {
  painter.setPen(QPen(withAlpha(theme().supported, bandInk().cap), 1.5));
  if (band.most <= scene.layout.reach()) painter.drawLine(bar.topLeft(), bar.topRight());
  if (band.least >= -scene.layout.reach()) painter.drawLine(bar.bottomLeft(), bar.bottomRight());
}

/// A small arrow head at the edge of the plot: it goes on beyond.
void paintGoesOn(QPainter& painter, const QPointF& tip, qreal width, bool upwards, const QColor& colour) {
  const qreal half = std::clamp(width / 2, 2.0, 4.0), height = upwards ? half : -half;
  painter.setPen(QPen(colour, 1.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(QPolygonF{tip + QPointF(-half, height), tip, tip + QPointF(half, height)});
}

void paintBandGoesOn(QPainter& painter, const StripScene& scene, const range::Band& band, const QRectF& bar) {
  const QColor ink = withAlpha(theme().supported, bandInk().cap);
  const QRectF& plot = scene.layout.plot();
  const qreal x = bar.center().x();
  if (band.most > scene.layout.reach()) paintGoesOn(painter, {x, plot.top() + 2}, bar.width(), true, ink);
  if (band.least < -scene.layout.reach()) paintGoesOn(painter, {x, plot.bottom() - 2}, bar.width(), false, ink);
}

void paintBand(QPainter& painter, const StripScene& scene, std::size_t column, const ShownBand& shown) {
  const QRectF bar = barRect(scene, column, shown.band.least, shown.band.most);
  const BandInk ink = bandInk();
  painter.setPen(Qt::NoPen);
  if (shown.typed) {
    // Hollow: somebody's word, not a bone's.
    painter.fillRect(bar, withAlpha(theme().supported, ink.soft / 2));
    painter.setPen(QPen(withAlpha(theme().supported, ink.firm), 1, Qt::DotLine));
    painter.drawLine(bar.topLeft(), bar.bottomLeft());
    painter.drawLine(bar.topRight(), bar.bottomRight());
  } else {
    painter.fillRect(bar, withAlpha(theme().supported, ink.soft));
    if (shown.firmLeast <= shown.firmMost)
      painter.fillRect(barRect(scene, column, shown.firmLeast, shown.firmMost),
                       withAlpha(theme().supported, ink.firm - ink.soft));
  }
  paintCaps(painter, scene, shown.band, bar);
  paintBandGoesOn(painter, scene, shown.band, bar);
}

void paintLane(QPainter& painter, const StripScene& scene, std::size_t column) {
  const auto& shown = scene.bands[column];
  if (!shown) return;
  const QRectF whole = barRect(scene, column, -scene.layout.reach(), scene.layout.reach());
  if (!shown->band.judged) {
    paintHatching(painter, whole, withAlpha(theme().notJudged, 0.55), 3.5);
  } else if (shown->band.empty) {
    painter.fillRect(whole, withAlpha(theme().beyond, 0.10));
  } else {
    paintBand(painter, scene, column, *shown);
  }
}

range::Level levelOf(const StripScene& scene, std::size_t column) {
  const range::JointVerdict* verdict = scene.document.assessment().find(scene.joint(column));
  return verdict ? verdict->level : range::Level::NotJudged;
}

void paintMark(QPainter& painter, const StripScene& scene, std::size_t column) {
  const range::Level level = levelOf(scene, column);
  const QPointF place = markPlace(scene, column);
  const qreal size = markSize(scene.layout);
  const QColor& colour = theme().verdict(level);
  painter.setPen(QPen(withAlpha(colour, 0.75), std::clamp(size / 4, 1.5, 2.5), Qt::SolidLine, Qt::FlatCap));
  const qreal zero = scene.layout.yOf(0);
  if (std::abs(zero - place.y()) > size / 2) painter.drawLine(QPointF(place.x(), zero), place);
  // A rim of the ground's colour keeps the mark apart from the band.
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme().panel);
  painter.drawEllipse(place, size / 2 + 1.2, size / 2 + 1.2);
  paintVerdict(painter, place, size, level);
  const double angle = scene.angle(column);
  if (std::abs(angle) > scene.layout.reach()) {
    const qreal edge = angle > 0 ? scene.layout.plot().top() + 0.5 : scene.layout.plot().bottom() - 0.5;
    paintGoesOn(painter, {place.x(), edge}, size, angle > 0, colour);
  }
}

}  // namespace

qreal markSize(const StripLayout& layout) { return std::clamp(layout.slotWidth() * 0.72, 5.0, 11.0); }

QPointF markPlace(const StripScene& scene, std::size_t column) {
  const qreal inset = markSize(scene.layout) / 2 + 4;
  return {scene.layout.xOfColumn(column), scene.layout.yWithin(scene.angle(column), inset)};
}

void paintBands(QPainter& painter, const StripScene& scene) {
  const ColumnSpan visible = scene.layout.visible();
  painter.setRenderHint(QPainter::Antialiasing);
  for (std::size_t i = visible.first; i <= visible.last; ++i) paintLane(painter, scene, i);
}

void paintMarks(QPainter& painter, const StripScene& scene) {
  const ColumnSpan visible = scene.layout.visible();
  painter.setRenderHint(QPainter::Antialiasing);
  for (std::size_t i = visible.first; i <= visible.last; ++i) paintMark(painter, scene, i);
}

}  // namespace zyga::ui
