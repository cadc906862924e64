#include "ui/viewport/mark_overlays.h"

#include <QPainterPath>
#include <cmath>

#include "ui/theme/typography.h"
#include "ui/viewport/overlay.h"
#include "ui/viewport/scene.h"
#include "ui/words/ground_words.h"
#include "ui/words/numbers.h"

namespace zyga::ui {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr qreal kCentre = 8;  // pixels, radius of the centre of mass
constexpr qreal kRoom = 46;   // pixels between prints whose names and steps are told

std::optional<QPointF> onScreen(const Camera& camera, const Vector3d& p_W) {
  const auto at = camera.project(p_W);
  return at ? std::optional(QPointF(at->x(), at->y())) : std::nullopt;
}
std::optional<QPointF> onScreen(const Camera& camera, const Vector2d& ground) {
  return onScreen(camera, Vector3d(ground.x(), ground.y(), 0));
}

bool edgeOn(const Camera& camera) { return !camera.perspective && std::abs(std::sin(camera.elevation)) < 0.012; }

void paintWord(QPainter& painter, const QPointF& middle, const QString& word, const Theme& theme) {
  const QFontMetricsF metrics(painter.font());
  const QSizeF size(metrics.horizontalAdvance(word) + 6, metrics.height());
  const QRectF box(middle - QPointF(size.width() / 2, size.height() / 2), size);
  painter.setPen(Qt::NoPen);
  painter.setBrush(withAlpha(theme.viewportGround, 0.72));
  painter.drawRoundedRect(box, 3, 3);
  painter.setPen(theme.text);
  painter.drawText(box, Qt::AlignCenter, word);
}

/// From the side: a bar along the ground from the least to the greatest x on screen.
void paintBar(QPainter& painter, const Camera& camera, const std::vector<Vector2d>& points, const QColor& colour,
              qreal below, qreal width) {
  std::optional<QRectF> span;
  for (const auto& p : points) {
    const auto at = onScreen(camera, p);
    if (!at) return;
    const QRectF dot(*at, QSizeF(0.01, 0.01));
    span = span ? span->united(dot) : dot;
  }
  if (!span) return;
  painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap));
  const qreal y = span->center().y() + below;
  painter.drawLine(QPointF(span->left(), y), QPointF(std::max(span->right(), span->left() + 2), y));
}

void paintPrints(QPainter& painter, const study::LaidTrackway& laid, const Camera& camera, const Theme& theme) {
  painter.setFont(smallFont(painter.font()));
  if (edgeOn(camera)) {
    for (const auto& print : laid.prints) {
      const bool left = isLeft(print.foot);
      paintBar(painter, camera, printOutline(print), withAlpha(theme.text, left ? 0.85 : 0.4), left ? 5 : 10, 3);
    }
    return;
  }
  const study::PlacedPrint* before = nullptr;
  for (const auto& print : laid.prints) {
    const auto at = onScreen(camera, print.p_W);
    const auto last = before && !isFore(print.foot) ? onScreen(camera, before->p_W) : std::nullopt;
    if (at && last) {
      const QPointF way = *at - *last;
      if (std::hypot(way.x(), way.y()) > 2 * kRoom) {
        const double pace = (print.p_W - before->p_W).norm();
        paintWord(painter, (*at + *last) / 2, millimetres(pace, 0), theme);
      }
    }
    const double pixels = print.length.value_or(0.12) / camera.metresPerPixelAt({print.p_W.x(), print.p_W.y(), 0});
    if (at && pixels > kRoom / 2) paintWord(painter, *at, printName(print), theme);
    before = &print;
  }
}

/// Quartered disc: the drawing office's sign of a centre of mass.
void paintCentre(QPainter& painter, const QPointF& at, const Theme& theme) {
  const QRectF disc(at - QPointF(kCentre, kCentre), QSizeF(2 * kCentre, 2 * kCentre));
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.panel);
  painter.drawEllipse(disc);
  painter.setBrush(theme.text);
  painter.drawPie(disc, 0, 90 * 16);
  painter.drawPie(disc, 180 * 16, 90 * 16);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(theme.text, 1.5));
  painter.drawEllipse(disc);
}

void paintBalance(QPainter& painter, const QRectF& area, const study::Balance& balance, const Camera& camera,
                  const Theme& theme) {
  const Vector3d& centre = balance.body.p_WCentre;
  const auto at = onScreen(camera, centre);
  const auto foot = onScreen(camera, Vector2d(centre.head<2>()));
  if (!at || !foot) return;
  const auto level = balance.inside() ? range::Level::Supported : range::Level::Beyond;
  if (edgeOn(camera)) paintBar(painter, camera, balance.polygon, theme.verdict(level), 3, 5);
  painter.setPen(QPen(theme.panel, 3.5));
  painter.drawLine(*at, *foot);
  painter.setPen(QPen(theme.text, 1.3, Qt::DashLine));
  painter.drawLine(*at, *foot);
  paintCentre(painter, *at, theme);
  painter.setPen(Qt::NoPen);
  painter.setBrush(withAlpha(theme.panel, 0.9));
  painter.drawEllipse(*foot, 10, 10);
  paintVerdict(painter, *foot, 13, level);
  if (!balance.margin) return;
  const QString words = balance.inside() ? QObject::tr("%1 inside") : QObject::tr("%1 outside");
  paintTag(painter, area, *foot, words.arg(millimetres(std::abs(*balance.margin), 0)), theme);
}

}  // namespace

void paintGround(QPainter& painter, const QRectF& area, const GroundState& ground, const GroundShown& shown,
                 const Camera& camera, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (shown.trackway) paintPrints(painter, ground.laid(), camera, theme);
  painter.restore();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (shown.balance) paintBalance(painter, area, ground.balance(), camera, theme);
  painter.restore();
}

void paintNotes(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme) {
  constexpr qreal kRadius = 10, kPin = 2.5, kAway = 24;  // pixels
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(smallFont(painter.font()));
  const auto& notes = document.project().notes;
  for (std::size_t i = 0; i < notes.size(); ++i) {
    const auto bone = anatomy::boneOf(notes[i], document.specimen());
    const auto at = bone ? camera.project(document.placement()[bone->value] * notes[i].p_B) : std::nullopt;
    if (!at) continue;
    const bool chosen = document.selectedNote() == i;
    const QPointF pin(at->x(), at->y()), bubble = pin + QPointF(0.7 * kAway, -kAway);
    const QColor ink = chosen ? theme.choice : theme.text;
    painter.setPen(QPen(theme.panel, 3));
    painter.drawLine(pin, bubble);
    painter.setPen(QPen(ink, 1.2));
    painter.drawLine(pin, bubble);
    painter.setPen(QPen(theme.panel, 1));
    painter.setBrush(ink);
    painter.drawEllipse(pin, kPin, kPin);
    painter.setPen(QPen(ink, 1.4));
    painter.setBrush(chosen ? theme.choice : theme.panel);
    painter.drawEllipse(bubble, kRadius, kRadius);
    painter.setPen(chosen ? theme.panel : theme.text);
    painter.drawText(QRectF(bubble - QPointF(kRadius, kRadius), QSizeF(2 * kRadius, 2 * kRadius)), Qt::AlignCenter,
                     QString::number(i + 1));
  }
  painter.restore();
}

}  // namespace zyga::ui
