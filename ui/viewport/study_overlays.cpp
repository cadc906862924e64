#include "ui/viewport/study_overlays.h"

#include <QObject>
#include <QPainterPath>
#include <cmath>

#include "ui/theme/typography.h"
#include "ui/viewport/overlay.h"
#include "ui/words/numbers.h"

namespace zyga::ui {

namespace {

QPointF pointOf(const Eigen::Vector2d& p) { return {p.x(), p.y()}; }

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
    painter.drawLine(pointOf(*from), pointOf(*to));
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap));
    painter.drawEllipse(pointOf(*from), kRing, kRing);
    for (const qreal side : {-1.0, 1.0}) {
      const QPointF arm(kCross, side * kCross);
      painter.drawLine(pointOf(*to) - arm, pointOf(*to) + arm);
    }
  }
  const QPointF middle = 0.5 * (pointOf(*from) + pointOf(*to));
  paintTag(painter, area, middle, shortfallText(shortfall.length), theme);
}

void paintLocks(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme) {
  painter.setRenderHint(QPainter::Antialiasing);
  for (const JointIndex joint : document.project().lockedJoints) {
    const anatomy::Joint& j = document.specimen()[joint];
    const auto at = camera.project(document.placement()[j.distal.value] * j.centreDistal);
    if (!at) continue;
    // A padlock: body and bow, above the joint so that its verdict stays in sight.
    const QPointF foot = pointOf(*at) - QPointF(0, 10);
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

namespace {

/// Components of an outline in front of the eye; closed when all of it is.
QPainterPath pathOf(const study::Line& outline, const study::SagittalPlane& plane, const Camera& camera) {
  QPainterPath path;
  bool pen = false, whole = true;
  for (const auto& p : outline) {
    const auto at = camera.project(plane.inWorld(p));
    whole = whole && at;
    if (at && pen) path.lineTo(at->x(), at->y());
    if (at && !pen) path.moveTo(at->x(), at->y());
    pen = at.has_value();
  }
  if (whole) path.closeSubpath();
  return path;
}

void paintPlace(QPainter& painter, const QRectF& area, const Eigen::Vector3d& p_W, const QString& words,
                const Camera& camera, const Theme& theme) {
  const auto at = camera.project(p_W);
  if (!at || !area.contains(QPointF(at->x(), at->y()))) return;
  painter.setPen(QPen(theme.panel, 1.5));
  painter.setBrush(theme.choice);
  painter.drawEllipse(QPointF(at->x(), at->y()), 4.5, 4.5);
  paintTag(painter, area, {at->x(), at->y()}, words, theme);
}

}  // namespace

std::vector<GroundMark> envelopeMarks(const study::Envelope& envelope, const Theme& theme) {
  std::vector<GroundMark> marks;
  if (!envelope.space) return marks;
  const auto& strip = envelope.space->strip;
  for (std::size_t i = 0; i + 1 < strip.size(); ++i) {
    // Bearings without reach part the strip.
    const double apart = strip[i + 1].bearing - strip[i].bearing;
    if (apart > 1.5 * (strip[1].bearing - strip[0].bearing) && strip.size() > 2) continue;
    GroundMark patch;
    patch.points = {strip[i].from, strip[i].to, strip[i + 1].to, strip[i + 1].from};
    patch.fill = withAlpha(theme.choice, 0.16);
    marks.push_back(patch);
    for (const auto& [a, b] : {std::pair{strip[i].from, strip[i + 1].from}, std::pair{strip[i].to, strip[i + 1].to}}) {
      GroundMark edge;
      edge.points = {a, b};
      edge.closed = false;
      edge.line = withAlpha(theme.choice, 0.8);
      marks.push_back(edge);
    }
  }
  return marks;
}

void paintEnvelopeOutline(QPainter& painter, const QRectF& area, const study::Envelope& envelope, bool outOfDate,
                          const Camera& camera, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  QPainterPath path;
  for (const auto& outline : envelope.outlines) path.addPath(pathOf(outline, envelope.plane, camera));
  path.setFillRule(Qt::OddEvenFill);
  painter.fillPath(path, withAlpha(theme.choice, outOfDate ? 0.04 : 0.10));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(withAlpha(theme.panel, 0.7), 3.5));
  painter.drawPath(path);
  painter.setPen(QPen(theme.choice, 1.8, outOfDate ? Qt::DashLine : Qt::SolidLine));
  painter.drawPath(path);
  if (!envelope.outlines.empty() && !outOfDate) {
    const auto place = [&](const Eigen::Vector2d& p) { return envelope.plane.inWorld(p); };
    paintPlace(painter, area, place(envelope.highest), QObject::tr("%1 high").arg(metres(envelope.highest.y())), camera,
               theme);
    paintPlace(painter, area, place(envelope.farthest), QObject::tr("%1 ahead").arg(metres(envelope.farthest.x())),
               camera, theme);
  }
  painter.restore();
}

}  // namespace zyga::ui
