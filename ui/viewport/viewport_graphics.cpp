#include <QBoxLayout>
#include <QOpenGLContext>

#include "ui/viewport/viewport.h"

namespace zyga::ui {

/// A context that the driver has lost is found invalid once it was asked for; only a new one helps.
void Viewport::paintEvent(QPaintEvent* event) {
  QOpenGLWidget::paintEvent(event);
  if (restarting_ || !context() || context()->isValid()) return;
  restarting_ = true;
  QMetaObject::invokeMethod(
      this,
      [this] {
        startGraphicsAnew();
        restarting_ = false;
        emit graphicsRestarted();
      },
      Qt::QueuedConnection);
}

/// A widget gets a new context when it comes into another window, so it is taken out and put back.
void Viewport::startGraphicsAnew() {
  auto* layout = parentWidget() ? qobject_cast<QBoxLayout*>(parentWidget()->layout()) : nullptr;
  if (!layout) return;
  const int place = layout->indexOf(this);
  const int stretch = layout->stretch(place);
  const bool focused = hasFocus();
  layout->removeWidget(this);
  setParent(nullptr);
  layout->insertWidget(place, this, stretch);
  show();
  if (focused) setFocus();
}

}  // namespace zyga::ui
