#include "ui/strip/strip_scene.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/theme/theme.h"

namespace zyga::ui {

namespace {

void paintTicks(QPainter& painter, const StripScene& scene) {
  const QRectF& plot = scene.layout.plot();
  for (double tick : axisTicks(scene.layout.reach())) {
    const QColor colour = tick == 0 ? mixed(theme().line, theme().muted, 0.6) : withAlpha(theme().line, 0.8);
    painter.setPen(QPen(colour, 1, tick == 0 ? Qt::SolidLine : Qt::DotLine));
    const qreal y = std::round(scene.layout.yOf(tick)) + 0.5;
    painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
  }
}

/// Regions stand apart by a hairline; the sacrum, which does not bend, is a gap in the plot.
void paintRegions(QPainter& painter, const StripScene& scene) {
  const QRectF& plot = scene.layout.plot();
  for (const StripRegion& region : scene.columns.regions) {
    const QRectF rect = scene.layout.regionRect(region);
    if (rect.width() <= 0) continue;
    if (region.columns == 0)
      painter.fillRect(QRectF(rect.left(), plot.top(), rect.width(), plot.height()), theme().window);
    painter.setPen(QPen(theme().line, 1));
    const qreal x = std::round(rect.left()) + 0.5;
    if (x > plot.left() + 2) painter.drawLine(QPointF(x, rect.top() + 4), QPointF(x, plot.bottom()));
  }
}

void paintSpan(QPainter& painter, const StripScene& scene, const ColumnSpan& span) {
  const QRectF rect = scene.layout.laneRect(span.first).united(scene.layout.laneRect(span.last)) & scene.layout.plot();
  painter.fillRect(rect, withAlpha(theme().choice, 0.16));
  painter.setPen(QPen(theme().choice, 1.5));
  painter.drawLine(rect.topLeft(), rect.bottomLeft());
  painter.drawLine(rect.topRight(), rect.bottomRight());
}

}  // namespace

void paintGround(QPainter& painter, const StripScene& scene) {
  painter.setRenderHint(QPainter::Antialiasing, false);
  paintRegions(painter, scene);
  if (scene.hovered) painter.fillRect(scene.layout.laneRect(*scene.hovered), withAlpha(theme().text, 0.06));
  if (scene.selected) painter.fillRect(scene.layout.laneRect(*scene.selected), withAlpha(theme().choice, 0.22));
  if (scene.span) paintSpan(painter, scene, *scene.span);
  paintTicks(painter, scene);
  if (!scene.focused) return;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme().choice, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(scene.layout.plot().adjusted(-0.5, -0.5, 0.5, 0.5), 3, 3);
}

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

void paintCaps(QPainter& painter, const StripScene& scene, const anatomy::Joint& joint, const range::MotionRange& band,
               const QRectF& bar) {
  // Dotted where only a tolerance of the program's own ends the range.
  const auto cap = [&](const range::Stop& stop, const QLineF& line) {
    const Qt::PenStyle style = range::byDefault(joint, stop) ? Qt::DotLine : Qt::SolidLine;
    painter.setPen(QPen(withAlpha(theme().supported, bandInk().cap), 1.5, style));
    painter.drawLine(line);
  };
  if (band.max <= scene.layout.reach()) cap(band.maxStop, {bar.topLeft(), bar.topRight()});
  if (band.min >= -scene.layout.reach()) cap(band.minStop, {bar.bottomLeft(), bar.bottomRight()});
}

/// A small arrow head at the edge of the plot: it goes on beyond.
void paintGoesOn(QPainter& painter, const QPointF& tip, qreal width, bool upwards, const QColor& colour) {
  const qreal half = std::clamp(width / 2, 2.0, 4.0), height = upwards ? half : -half;
  painter.setPen(QPen(colour, 1.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(QPolygonF{tip + QPointF(-half, height), tip, tip + QPointF(half, height)});
}

void paintBandGoesOn(QPainter& painter, const StripScene& scene, const range::MotionRange& band, const QRectF& bar) {
  const QColor ink = withAlpha(theme().supported, bandInk().cap);
  const QRectF& plot = scene.layout.plot();
  const qreal x = bar.center().x();
  if (band.max > scene.layout.reach()) paintGoesOn(painter, {x, plot.top() + 2}, bar.width(), true, ink);
  if (band.min < -scene.layout.reach()) paintGoesOn(painter, {x, plot.bottom() - 2}, bar.width(), false, ink);
}

void paintBand(QPainter& painter, const StripScene& scene, std::size_t column, const ShownBand& shown) {
  const QRectF bar = barRect(scene, column, shown.band.min, shown.band.max);
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
  paintCaps(painter, scene, scene.document.specimen()[scene.joint(column)], shown.band, bar);
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

namespace {

using anatomy::Bone;
using anatomy::BoneKind;
using anatomy::Measure;

/// Heights of one bone above and below the axis of the centra, m.
struct Heights {
  double above = 0, below = 0;
};

Heights heightsOf(const Bone& bone) {
  if (bone.name.kind == BoneKind::Skull) {
    const double height = bone.measures.valueOr(Measure::Height, 0.3);
    return {height / 2, height / 2};
  }
  const double centrum = bone.measures.valueOr(Measure::CotyleHeight, 0.1);
  return {std::max(centrum / 2, bone.measures.valueOr(Measure::SpineHeight, centrum)), centrum / 2};
}

bool isVisible(const StripScene& scene, const StripStation& station) {
  const QRectF& plot = scene.layout.plot();
  return scene.layout.xOf(station.end()) > plot.left() && scene.layout.xOf(station.start) < plot.right();
}

/// Visible bones in true proportion of height to each other; their lengths are those of the lanes.
struct BoneScale {
  qreal axis = 0;      ///< y of the centra's axis, px
  qreal perMetre = 0;  ///< px

  explicit BoneScale(const StripScene& scene) {
    Heights most{0.01, 0.01};
    for (const StripStation& slot : scene.columns.stations)
      for (const auto bone : slot.bones) {
        const Heights h = heightsOf(scene.document.specimen()[bone]);
        most = {std::max(most.above, h.above), std::max(most.below, h.below)};
      }
    const QRectF& room = scene.layout.bones();
    perMetre = (room.height() - 3) / (most.above + most.below);
    axis = room.bottom() - 1.5 - most.below * perMetre;
  }
};

QPainterPath skullPath(const QRectF& box) {
  // Seen from its left: snout to the left, arched nostril region, eye at the back.
  const auto at = [&box](qreal x, qreal y) {
    return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
  };
  QPainterPath path(at(0.02, 0.55));
  path.cubicTo(at(0.1, 0.25), at(0.3, 0.3), at(0.42, 0.05));
  path.cubicTo(at(0.6, -0.05), at(0.85, 0.05), at(0.97, 0.3));
  path.lineTo(at(0.95, 0.55));
  path.cubicTo(at(0.8, 0.7), at(0.75, 0.95), at(0.62, 0.98));
  path.lineTo(at(0.1, 0.95));
  path.cubicTo(at(0.03, 0.9), at(0.0, 0.7), at(0.02, 0.55));
  path.addEllipse(at(0.7, 0.32), box.width() * 0.08, box.height() * 0.11);
  return path;
}

QPainterPath vertebraPath(qreal left, qreal right, qreal above, qreal below, qreal axis) {
  const qreal width = right - left;
  QPainterPath centrum;
  const qreal round = std::min<qreal>({2.5, width / 3, below});
  centrum.addRoundedRect(QRectF(left, axis - below, width, 2 * below), round, round);
  if (above <= below + 0.5) return centrum;
  // The spine leans back a little, as in most of the column.
  QPainterPath spine(QPointF(left + width * 0.28, axis));
  spine.lineTo(left + width * 0.38, axis - above);
  spine.lineTo(left + width * 0.86, axis - above);
  spine.lineTo(left + width * 0.8, axis);
  spine.closeSubpath();
  return centrum.united(spine);
}

void paintBone(QPainter& painter, const Bone& bone, const QPainterPath& path, bool chosen) {
  const QColor own = theme().bone(bone.evidence);
  const QColor fill = chosen ? mixed(own, theme().choice, 0.65) : own;
  painter.setPen(QPen(chosen ? theme().choice : mixed(own, theme().muted, 0.55), 0.8));
  painter.setBrush(fill);
  painter.drawPath(path);
}

QPainterPath boneShape(const Bone& bone, qreal left, qreal right, const BoneScale& scale) {
  const Heights h = heightsOf(bone);
  const qreal above = std::max<qreal>(1, h.above * scale.perMetre);
  const qreal below = std::max<qreal>(1, h.below * scale.perMetre);
  if (bone.name.kind != BoneKind::Skull) return vertebraPath(left, right, above, below, scale.axis);
  // However wide its lane, the skull keeps its proportions and sits close to the atlas.
  constexpr qreal kLongest = 1.7;
  const qreal width = std::min(right - left, kLongest * (above + below));
  return skullPath(QRectF(right - width, scale.axis - above, width, above + below));
}

void paintStation(QPainter& painter, const StripScene& scene, const BoneScale& scale, const StripStation& station) {
  const qreal left = scene.layout.xOf(station.start);
  const qreal width = scene.layout.xOf(station.end()) - left;
  const bool fused = station.bones.size() > 1;
  const qreal gap = fused ? 0 : std::clamp(width * 0.09, 0.5, 2.0);
  const qreal each = width / static_cast<qreal>(station.bones.size());
  for (std::size_t i = 0; i < station.bones.size(); ++i) {
    const Bone& bone = scene.document.specimen()[station.bones[i]];
    const qreal x0 = left + each * static_cast<qreal>(i) + gap, x1 = left + each * static_cast<qreal>(i + 1) - gap;
    paintBone(painter, bone, boneShape(bone, x0, x1, scale), scene.document.selectedBone() == station.bones[i]);
  }
}

}  // namespace

void paintBones(QPainter& painter, const StripScene& scene) {
  const BoneScale scale(scene);
  painter.save();
  painter.setClipRect(scene.layout.bones().adjusted(0, -1, 0, 1));
  painter.setRenderHint(QPainter::Antialiasing);
  for (const StripStation& station : scene.columns.stations)
    if (isVisible(scene, station)) paintStation(painter, scene, scale, station);
  painter.restore();
}

}  // namespace zyga::ui
