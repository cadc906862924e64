#include "ui/viewport/overlay.h"

#include <QFontMetricsF>
#include <QObject>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/theme/typography.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

using range::Level;

constexpr qreal kSymbol = 14, kChosenSymbol = 18;  // pixels
// Closer than this two symbols would read as one.
constexpr qreal kBarRoom = 0.9;

QPointF point(const Eigen::Vector2d& p) { return {p.x(), p.y()}; }

std::optional<QPointF> placeOf(const Document& document, const Camera& camera, JointIndex joint) {
  const anatomy::Joint& j = document.specimen()[joint];
  const auto at = camera.project(document.placement()[j.distal.value] * j.centreDistal);
  if (!at) return std::nullopt;
  return point(*at);
}

Level levelOf(const Document& document, JointIndex joint) {
  const auto* verdict = document.assessment().find(joint);
  return verdict != nullptr ? verdict->level : Level::NotJudged;
}

bool crowded(const std::vector<JointSymbol>& symbols, const JointSymbol& next) {
  return std::any_of(symbols.begin(), symbols.end(), [&](const JointSymbol& s) {
    const QPointF d = s.at - next.at;
    return std::hypot(d.x(), d.y()) < kBarRoom * 0.5 * (s.size + next.size);
  });
}

// The joints somebody is looking at, first so that nothing else takes their room.
std::vector<JointIndex> chosenJoints(const Document& document) {
  std::vector<JointIndex> joints;
  if (const auto selected = document.selectedJoint()) joints.push_back(*selected);
  if (const auto bone = document.hoveredBone())
    if (const auto joint = document.specimen().jointAbove(*bone)) joints.push_back(*joint);
  std::erase_if(joints, [&](JointIndex j) { return document.specimen()[j].kind == anatomy::JointKind::Fixed; });
  return joints;
}

QFont scaled(QFont font, double factor) {
  if (font.pointSizeF() > 0) font.setPointSizeF(font.pointSizeF() * factor);
  return font;
}

}  // namespace

std::vector<JointSymbol> jointSymbols(const Document& document, const Camera& camera) {
  std::vector<JointSymbol> symbols;
  const auto add = [&](JointIndex joint, Level level, qreal size, bool always) {
    const auto at = placeOf(document, camera, joint);
    if (!at) return;
    const JointSymbol symbol{joint, level, *at, size};
    if (always || !crowded(symbols, symbol)) symbols.push_back(symbol);
  };
  const auto chosen = chosenJoints(document);
  for (const JointIndex joint : chosen) add(joint, levelOf(document, joint), kChosenSymbol, true);
  for (const Level level : {Level::Beyond, Level::Near})
    for (const auto& verdict : document.assessment().joints)
      if (verdict.level == level && std::find(chosen.begin(), chosen.end(), verdict.joint) == chosen.end())
        add(verdict.joint, level, kSymbol, false);
  return symbols;
}

void paintSymbols(QPainter& painter, const std::vector<JointSymbol>& symbols, const Theme& theme) {
  painter.setRenderHint(QPainter::Antialiasing);
  // From last to first: the chosen ones end up on top.
  for (auto symbol = symbols.rbegin(); symbol != symbols.rend(); ++symbol) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(withAlpha(theme.panel, 0.86));
    const qreal halo = 0.5 * symbol->size + 4;
    painter.drawEllipse(symbol->at, halo, halo);
    paintVerdict(painter, symbol->at, symbol->size, symbol->level);
  }
}

std::vector<ContactMark> contactMarks(const Document& document, const Camera& camera, std::optional<QPointF> pointer) {
  constexpr qreal kUnderPointer = 11;  // pixels
  std::vector<ContactMark> marks;
  const auto& contacts = document.assessment().contacts;
  for (std::size_t i = 0; i < contacts.size(); ++i) {
    const auto at = camera.project(contacts[i].p_W);
    if (!at) continue;
    ContactMark mark{i, point(*at), false};
    const QPointF away = pointer ? *pointer - mark.at : QPointF(1e6, 0);
    mark.told = std::hypot(away.x(), away.y()) < kUnderPointer;
    for (const BoneIndex bone : {contacts[i].bone, contacts[i].other})
      mark.told = mark.told || document.selectedBone() == bone || document.hoveredBone() == bone;
    marks.push_back(mark);
  }
  return marks;
}

void paintContacts(QPainter& painter, const QRectF& area, const Document& document,
                   const std::vector<ContactMark>& marks, const Theme& theme) {
  painter.setRenderHint(QPainter::Antialiasing);
  // From last to first: the deepest ends up on top.
  for (auto mark = marks.rbegin(); mark != marks.rend(); ++mark) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(withAlpha(theme.panel, 0.86));
    const qreal size = mark->told ? kChosenSymbol : kSymbol;
    painter.drawEllipse(mark->at, 0.5 * size + 2, 0.5 * size + 2);
    paintContact(painter, mark->at, size);
    if (!mark->told) continue;
    const double depth = document.assessment().contacts[mark->index].depth;
    paintTag(painter, area, mark->at, millimetres(depth, 0), theme);
  }
}

void paintBendBase(QPainter& painter, const Document& document, const Camera& camera, const Theme& theme) {
  const auto joint = document.bendBase();
  if (!joint) return;
  const auto at = placeOf(document, camera, *joint);
  if (!at) return;
  painter.setRenderHint(QPainter::Antialiasing);
  // A pin whose point rests on the joint, beside the verdict's symbol and not on it.
  QPainterPath pin;
  pin.moveTo(*at - QPointF(0, 9));
  pin.lineTo(*at - QPointF(5.5, 19));
  pin.arcTo(QRectF(*at - QPointF(6.5, 29), QSizeF(13, 13)), 210, -240);
  pin.closeSubpath();
  painter.setPen(QPen(theme.panel, 1.5));
  painter.setBrush(theme.choice);
  painter.drawPath(pin);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.panel);
  painter.drawEllipse(*at - QPointF(0, 22.5), 2.2, 2.2);
}

void paintTag(QPainter& painter, const QRectF& area, const QPointF& at, const QString& text, const Theme& theme) {
  const QFontMetricsF metrics(painter.font());
  QRectF box(at + QPointF(16, 14), QSizeF(metrics.horizontalAdvance(text) + 16, metrics.height() + 8));
  if (box.right() > area.right() - 4) box.moveRight(at.x() - 10);
  if (box.bottom() > area.bottom() - 4) box.moveBottom(at.y() - 10);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.line, 1));
  painter.setBrush(withAlpha(theme.panel, 0.94));
  painter.drawRoundedRect(box.translated(0.5, 0.5), 4, 4);
  painter.setPen(theme.text);
  painter.drawText(box, Qt::AlignCenter, text);
}

void paintSticks(QPainter& painter, const Document& document, const std::vector<Sticks>& sticks, const Camera& camera,
                 const Theme& theme) {
  painter.setRenderHint(QPainter::Antialiasing);
  const auto& X_WB = document.placement();
  QPainterPath lines;
  for (std::size_t b = 0; b < sticks.size() && b < X_WB.size(); ++b)
    for (const auto& [from, to] : sticks[b]) {
      const auto a = camera.project(X_WB[b] * from), e = camera.project(X_WB[b] * to);
      if (!a || !e) continue;
      lines.moveTo(point(*a));
      lines.lineTo(point(*e));
    }
  const bool dark = theme.scheme == Scheme::Dark;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(
      QPen(dark ? theme.boneFound : mixed(theme.boneFound, theme.text, 0.45), 2, Qt::SolidLine, Qt::RoundCap));
  painter.drawPath(lines);
}

void paintProgress(QPainter& painter, const QRectF& area, double share, const Theme& theme) {
  const qreal width = 220, x = area.center().x() - 0.5 * width, y = area.bottom() - 34;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(theme.muted);
  painter.drawText(QRectF(x, y - 24, width, 20), Qt::AlignCenter,
                   QObject::tr("Sculpting bones, %1").arg(percent(share)));
  painter.setPen(Qt::NoPen);
  painter.setBrush(withAlpha(theme.muted, 0.25));
  painter.drawRoundedRect(QRectF(x, y, width, 4), 2, 2);
  painter.setBrush(theme.choice);
  painter.drawRoundedRect(QRectF(x, y, width * share, 4), 2, 2);
}

void paintInvitation(QPainter& painter, const QRectF& area, const Theme& theme) {
  const QFont plain = painter.font();
  const QPointF middle = area.center();
  painter.setFont(scaled(plain, 1.5));
  painter.setPen(theme.text);
  painter.drawText(QRectF(area.left(), middle.y() - 44, area.width(), 36), Qt::AlignCenter,
                   QObject::tr("Drop a measurement table or a project here"));
  painter.setFont(plain);
  painter.setPen(theme.muted);
  painter.drawText(QRectF(area.left(), middle.y() + 2, area.width(), 24), Qt::AlignCenter,
                   QObject::tr("or open the sample from the File menu to see a whole animal"));
}

}  // namespace zyga::ui
