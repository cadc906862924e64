#include <QKeyEvent>
#include <QMouseEvent>
#include <QtMath>
#include <algorithm>
#include <cmath>

#include "core/kinematics/bend.h"
#include "core/kinematics/following.h"
#include "ui/strip/range_strip.h"
#include "ui/strip/shown_bands.h"
#include "ui/strip/strip_words.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"

/// The keyboard and the pointer on the strip. There are no modes: the direction of a drag says what is meant.
namespace zyga::ui {

namespace {

constexpr double kStep = 0.5, kLargeStep = 5;  // degrees
/// Nudges of one joint in one motion that follow each other are one undo step.
constexpr int kNudgeKey = 0x5A0000;

}  // namespace

void RangeStrip::keyPressEvent(QKeyEvent* event) {
  if (columns_.columns.empty()) return QWidget::keyPressEvent(event);
  const bool shift = event->modifiers() & Qt::ShiftModifier;
  const double step = qDegreesToRadians(shift ? kLargeStep : kStep);
  switch (event->key()) {
    case Qt::Key_Left:
      return moveSelection(-1, shift);
    case Qt::Key_Right:
      return moveSelection(+1, shift);
    case Qt::Key_Home:
      return selectEdge(false);
    case Qt::Key_End:
      return selectEdge(true);
    case Qt::Key_Up:
      return nudge(step);
    case Qt::Key_Down:
      return nudge(-step);
    case Qt::Key_0:
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      if (const auto column = selectedColumn()) toNeutral(*column);
      return;
    case Qt::Key_1:
    case Qt::Key_2:
    case Qt::Key_3:
      return setMotion(event->key() - Qt::Key_1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      for (std::size_t i = 0; i < columns_.regions.size(); ++i)
        if (const auto column = selectedColumn();
            column && columns_.regions[i].region == columns_.columns[*column].region)
          return toggleZoom(i);
      return;
    case Qt::Key_Escape:
      if (stepBack()) return;
      break;
    default:
      break;
  }
  QWidget::keyPressEvent(event);
}

void RangeStrip::moveSelection(int step, bool extendSpan) {
  const ColumnSpan visible = layout_.visible();
  const auto selected = selectedColumn();
  std::size_t next = step > 0 ? visible.first : visible.last;
  if (selected) {
    const auto wanted = static_cast<std::ptrdiff_t>(*selected) + step;
    next = static_cast<std::size_t>(
        std::clamp(wanted, static_cast<std::ptrdiff_t>(visible.first), static_cast<std::ptrdiff_t>(visible.last)));
  }
  if (extendSpan && selected) {
    if (!spanAnchor_) spanAnchor_ = *selected;
    setSpan(ColumnSpan{std::min(*spanAnchor_, next), std::max(*spanAnchor_, next)});
  } else if (span_ && !span_->contains(next)) {
    setSpan(std::nullopt);
  }
  select(next);
}

void RangeStrip::selectEdge(bool last) { select(last ? layout_.visible().last : layout_.visible().first); }

/// Axial rotation that is turned by hand stays from then on.
kinematics::Pose RangeStrip::turned(const kinematics::Pose& pose, const std::vector<JointIndex>& joints,
                                    const SpanTurn& span) const {
  kinematics::Pose to =
      kinematics::spreadTurn(document_.specimen(), document_.articulation(), pose, joints, span.weights, span.turn);
  if (motion_ == 2)
    for (const JointIndex joint : joints) to.setAxialTyped(joint, document_.specimen()[joint].hasFacets());
  return to;
}

void RangeStrip::nudge(double delta) {
  const auto selected = selectedColumn();
  if (!selected || press_.gesture != Gesture::None) return;
  const ColumnSpan bent = bentWith(*selected);
  std::vector<JointIndex> joints;
  std::vector<double> widths;
  for (std::size_t i = bent.first; i <= bent.last; ++i) {
    joints.push_back(columns_.columns[i].joint);
    widths.push_back(bands_.upToDate(i).width());
  }
  const auto pose = turned(document_.pose(), joints, spanTurn(widths, motion_, *selected - bent.first, delta));
  const auto column = static_cast<int>(*selected);
  const auto extent = static_cast<int>(bent.last - bent.first);
  document_.changePose(pose, tr("Bend %1").arg(bendName(bent)), kNudgeKey + (extent * 512 + column) * 3 + motion_);
  select(*selected);
}

void RangeStrip::toNeutral(std::size_t column) {
  const ColumnSpan bent = bentWith(column);
  kinematics::Pose pose = document_.pose();
  for (std::size_t i = bent.first; i <= bent.last; ++i)
    kinematics::turnToNeutral(document_.specimen(), document_.articulation(), columns_.columns[i].joint, motion_, pose);
  press_ = {};
  document_.changePose(pose, tr("%1 to neutral").arg(bendName(bent)));
  select(column);
}

void RangeStrip::toggleZoom(std::size_t region) {
  zoomTo(zoom_ == region ? std::nullopt : std::optional(columns_.regions[region].region));
}

bool RangeStrip::stepBack() {
  if (cancelGesture()) return true;
  if (span_) {
    setSpan(std::nullopt);
    return true;
  }
  if (!zoom_) return false;
  zoomTo(std::nullopt);
  return true;
}

namespace {

constexpr qreal kDecidesAfter = 4;  // px
constexpr double kFineShare = 0.2;  // of the usual turn, with Shift
constexpr qreal kMarkReach = 9;     // px around a mark that belong to it

}  // namespace

bool RangeStrip::onMark(const QPointF& point, std::size_t column) const {
  const QPointF away = point - markPlace(column);
  return std::abs(away.x()) <= std::max(layout_.slotWidth() / 2, kMarkReach / 2) && std::abs(away.y()) <= kMarkReach;
}

ColumnSpan RangeStrip::bentWith(std::size_t column) const {
  return span_ && span_->contains(column) ? *span_ : ColumnSpan{column, column};
}

void RangeStrip::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || columns_.columns.empty()) return QWidget::mousePressEvent(event);
  const QPointF point = event->position();
  if (const auto label = layout_.labelAt(point)) return toggleZoom(*label);
  if (!layout_.plot().adjusted(0, 0, 0, layout_.names().height()).contains(point)) return;
  const auto column = layout_.columnAt(point);
  if (!column) return setSpan(std::nullopt);
  press_ = {Gesture::Undecided, point, *column, document_.pose(), {}, {}};
  select(*column);
}

void RangeStrip::mouseMoveEvent(QMouseEvent* event) {
  if (press_.gesture == Gesture::Undecided) decide(event->position());
  switch (press_.gesture) {
    case Gesture::None:
      return hover(event->position());
    case Gesture::Undecided:
      return;
    case Gesture::Bend:
      return bendTo(event->position(), event->modifiers() & Qt::ShiftModifier);
    case Gesture::Sweep:
      return sweepTo(event->position());
  }
}

void RangeStrip::decide(const QPointF& point) {
  const QPointF moved = point - press_.place;
  if (std::max(std::abs(moved.x()), std::abs(moved.y())) < kDecidesAfter) return;
  if (std::abs(moved.x()) > std::abs(moved.y())) {
    press_.gesture = Gesture::Sweep;
  } else {
    startBend();
  }
}

void RangeStrip::startBend() {
  press_.gesture = Gesture::Bend;
  press_.bent = bentWith(press_.column);
  press_.widths.clear();
  for (std::size_t i = press_.bent.first; i <= press_.bent.last; ++i)
    press_.widths.push_back(bands_.upToDate(i).width());
  setCursor(Qt::SizeVerCursor);
}

void RangeStrip::bendTo(const QPointF& point, bool fine) {
  const double turn = layout_.angleBetween(point.y() - press_.place.y()) * (fine ? kFineShare : 1);
  std::vector<JointIndex> joints;
  for (std::size_t i = press_.bent.first; i <= press_.bent.last; ++i) joints.push_back(columns_.columns[i].joint);
  document_.previewPose(
      turned(press_.pose, joints, spanTurn(press_.widths, motion_, press_.column - press_.bent.first, turn)));
  const QString words = wordsAt(press_.column);
  const bool one = joints.size() == 1;
  tell(one ? words : tr("%1 bent together, each by its range; here %2").arg(bendName(press_.bent), words));
}

void RangeStrip::sweepTo(const QPointF& point) {
  const std::size_t other = layout_.nearestColumn(point.x());
  setSpan(ColumnSpan{std::min(press_.column, other), std::max(press_.column, other)});
  spanAnchor_ = press_.column;
  tell(tr("%1: drag up or down inside it to bend it, Escape lets it go").arg(bendName(*span_)));
}

void RangeStrip::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) endGesture();
}

void RangeStrip::endGesture() {
  const Press press = press_;
  press_ = {};
  if (press.gesture == Gesture::Bend) document_.commitPreview(tr("Bend %1").arg(bendName(press.bent)));
  if (press.gesture == Gesture::Undecided && span_ && !span_->contains(press.column)) setSpan(std::nullopt);
  unsetCursor();
}

bool RangeStrip::cancelGesture() {
  if (press_.gesture == Gesture::None) return false;
  const bool bending = press_.gesture == Gesture::Bend;
  if (press_.gesture == Gesture::Sweep) setSpan(std::nullopt);
  press_ = {};
  if (bending) document_.cancelPreview();
  unsetCursor();
  return true;
}

void RangeStrip::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const auto column = layout_.columnAt(event->position());
  if (column && onMark(event->position(), *column)) toNeutral(*column);
}

void RangeStrip::leaveEvent(QEvent*) {
  if (hovered_) document_.hoverBone(std::nullopt);
  hovered_.reset();
  hoveredLabel_.reset();
  tell({});
  update();
}

void RangeStrip::hover(const QPointF& point) {
  hoveredLabel_ = layout_.labelAt(point);
  const auto column = hoveredLabel_ ? std::nullopt : layout_.columnAt(point);
  if (column != hovered_) {
    hovered_ = column;
    document_.hoverBone(column ? std::optional(document_.specimen()[columns_.columns[*column].joint].distal)
                               : std::nullopt);
  }
  update();
  if (hoveredLabel_) {
    setCursor(Qt::PointingHandCursor);
    const QString region = regionName(columns_.regions[*hoveredLabel_].region).toLower();
    return tell(zoom_ == hoveredLabel_ ? tr("Click to show the whole column")
                                       : tr("Click to show the %1 alone").arg(region));
  }
  if (!column) {
    unsetCursor();
    return tell({});
  }
  const bool bends = onMark(point, *column) || (span_ && span_->contains(*column));
  setCursor(bends ? Qt::SizeVerCursor : Qt::SizeHorCursor);
  tell(wordsAt(*column) +
       (bends ? tr("  \u00B7  drag up or down to bend") : tr("  \u00B7  drag sideways to choose a span")));
}

}  // namespace zyga::ui
