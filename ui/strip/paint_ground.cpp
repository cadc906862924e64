#include <QPainter>
#include <algorithm>

#include "ui/strip/strip_scene.h"
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

}  // namespace zyga::ui
