#include <QObject>
#include <algorithm>

#include "ui/plots/hatching.h"
#include "ui/plots/side_figure.h"
#include "ui/plots/study_plots.h"

namespace zyga::ui {
namespace {

QString metresOf(double value) { return tickWord(value, 0.01) + QObject::tr(" m"); }

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
    const QString words = (envelope.foreFeet ? QObject::tr("%1 to %2 ahead of the fore foot")
                                             : QObject::tr("%1 to %2 ahead of the neck’s base"))
                              .arg(tickWord(stretch.from - origin, 0.01), metresOf(stretch.to - origin));
    painter.setFont(ink.bold());
    const QFontMetricsF metrics(painter.font());
    const double half = metrics.horizontalAdvance(words) / 2;
    const double x = std::clamp((from.x() + to.x()) / 2, frame.area().left() + half, frame.area().right() - half);
    paintWords(painter, QPointF(x, from.y() - 0.6 * ink.size()), words, Qt::AlignHCenter, ink, ink.ink);
  }
}

}  // namespace

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
    paintPlace(painter, place(envelope.highest), QObject::tr("%1 high").arg(metresOf(envelope.highest.y())),
               {0, -0.8 * ink.size()}, Qt::AlignHCenter, ink);
    const QString far = QObject::tr("%1 ahead").arg(metresOf(envelope.farthest.x()));
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
