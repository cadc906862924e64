#pragma once

#include <QApplication>
#include <QTest>
#include <QWidget>

#include "tests/ui/patience.h"

namespace zyga::ui {

/// Gives a window the keyboard; whether it came there. Xvfb has no window manager that would, and a menu that closes
/// late gives it back to the window it belongs to: so it is asked for until a widget of the window has it.
inline bool broughtForward(QWidget& window) {
  const auto has = [&window] {
    const QWidget* focused = QApplication::focusWidget();
    if (window.isActiveWindow() && (!focused || focused->window() == &window)) return true;
    window.activateWindow();
    return false;
  };
  return QTest::qWaitFor(has, kPatience);
}

}  // namespace zyga::ui
