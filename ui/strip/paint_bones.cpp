#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/strip/strip_scene.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
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
