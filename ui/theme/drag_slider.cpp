#include "ui/theme/drag_slider.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QSignalBlocker>
#include <QStyle>

namespace zyga::ui {
namespace {
constexpr int kHandle = 14;  // px with its border, as the style sheet has it
}

DragSlider::DragSlider(QWidget* parent) : QSlider(Qt::Horizontal, parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMinimumWidth(48);
}

int DragSlider::placeOf(int value) const {
  return kHandle / 2 + QStyle::sliderPositionFromValue(minimum(), maximum(), value, width() - kHandle);
}

int DragSlider::valueAt(double x) const {
  return QStyle::sliderValueFromPosition(minimum(), maximum(), qRound(x) - kHandle / 2, width() - kHandle);
}

void DragSlider::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return event->ignore();
  const double x = event->position().x(), handle = placeOf(value());
  grip_ = std::abs(x - handle) <= kHandle / 2.0 ? x - handle : 0;
  setSliderDown(true);
  if (grip_ == 0) setSliderPosition(valueAt(x));
  event->accept();
}

void DragSlider::mouseMoveEvent(QMouseEvent* event) {
  if (isSliderDown()) setSliderPosition(valueAt(event->position().x() - grip_));
}

void DragSlider::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && isSliderDown()) setSliderDown(false);
}

/// Escape belongs to a drag under way before it belongs to any shortcut.
bool DragSlider::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && isSliderDown() &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
    event->accept();
  return QSlider::event(event);
}

void DragSlider::keyPressEvent(QKeyEvent* event) {
  if (!isSliderDown()) return QSlider::keyPressEvent(event);
  if (event->key() != Qt::Key_Escape) return;
  {
    const QSignalBlocker quiet(this);
    setSliderDown(false);
  }
  emit cancelled();
}

void DragSlider::wheelEvent(QWheelEvent* event) {
  if (hasFocus() && !isSliderDown()) return QSlider::wheelEvent(event);
  event->ignore();
}

}  // namespace zyga::ui
