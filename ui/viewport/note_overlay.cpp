#include "ui/viewport/note_overlay.h"

#include "ui/theme/figures.h"

namespace zyga::ui {

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
