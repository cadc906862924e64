#include "ui/viewport/reach_overlay.h"

#include <cmath>

#include "ui/viewport/overlay.h"

namespace zyga::ui {
namespace {

QPointF point(const Eigen::Vector2d& p) { return {p.x(), p.y()}; }

}  // namespace

void paintShortfall(QPainter& painter, const QRectF& area, const Shortfall& shortfall, const Camera& camera,
                    const Theme& theme) {
  const auto from = camera.project(shortfall.p_WPoint), to = camera.project(shortfall.p_WTarget);
  if (!from || !to) return;
  constexpr qreal kCross = 5, kRing = 4;  // pixels
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  // A light line under the dark one, so that it is seen on bone and on ground alike.
  for (const auto& [colour, width] : {std::pair(withAlpha(theme.panel, 0.8), 4.0), std::pair(theme.text, 1.6)}) {
    painter.setPen(QPen(colour, width, Qt::CustomDashLine, Qt::FlatCap));
    QPen pen = painter.pen();
    pen.setDashPattern({9 / width, 6 / width});
    painter.setPen(pen);
    painter.drawLine(point(*from), point(*to));
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap));
    painter.drawEllipse(point(*from), kRing, kRing);
    for (const qreal side : {-1.0, 1.0}) {
      const QPointF arm(kCross, side * kCross);
      painter.drawLine(point(*to) - arm, point(*to) + arm);
    }
  }
  const QPointF middle = 0.5 * (point(*from) + point(*to));
  paintTag(painter, area, middle, shortfallText(shortfall.length), theme);
}

void paintLocks(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme) {
  painter.setRenderHint(QPainter::Antialiasing);
  for (const JointIndex joint : document.project().lockedJoints) {
    const anatomy::Joint& j = document.specimen()[joint];
    const auto at = camera.project(document.placement()[j.distal.value] * j.centreDistal);
    if (!at) continue;
    // A padlock: body and bow, above the joint so that its verdict stays in sight.
    const QPointF foot = point(*at) - QPointF(0, 10);
    painter.setPen(QPen(theme.panel, 4));
    painter.setBrush(Qt::NoBrush);
    painter.drawArc(QRectF(foot - QPointF(4, 14), QSizeF(8, 10)), 0, 180 * 16);
    painter.setPen(QPen(theme.choice, 1.8));
    painter.drawArc(QRectF(foot - QPointF(4, 14), QSizeF(8, 10)), 0, 180 * 16);
    painter.setPen(QPen(theme.panel, 1.2));
    painter.setBrush(theme.choice);
    painter.drawRoundedRect(QRectF(foot - QPointF(6, 9), QSizeF(12, 9)), 1.5, 1.5);
  }
}

}  // namespace zyga::ui
