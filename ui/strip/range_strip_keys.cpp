#include <QKeyEvent>
#include <QtMath>
#include <algorithm>

#include "ui/strip/range_strip.h"
#include "ui/strip/span_bend.h"

/// The keyboard on the strip.
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
  const auto pose = bendSpan(document_.pose(), joints, widths, motion_, *selected - bent.first, delta);
  const auto column = static_cast<int>(*selected);
  const auto extent = static_cast<int>(bent.last - bent.first);
  document_.changePose(pose, tr("Bend %1").arg(bendName(bent)), kNudgeKey + (extent * 512 + column) * 3 + motion_);
  select(*selected);
}

void RangeStrip::toNeutral(std::size_t column) {
  const ColumnSpan bent = bentWith(column);
  kinematics::Pose pose = document_.pose();
  for (std::size_t i = bent.first; i <= bent.last; ++i) pose[columns_.columns[i].joint][motion_] = 0;
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

}  // namespace zyga::ui
