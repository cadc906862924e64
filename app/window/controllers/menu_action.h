#pragma once

#include <QKeySequence>
#include <functional>

class QAction;
class QMenu;
class QObject;

namespace zyga::ui {

/// Adds an action of `owner` to a menu; its tool tip is its text with the shortcut behind it.
QAction* addMenuAction(QMenu& menu, QObject* owner, const QString& text, const QKeySequence& key,
                       const std::function<void()>& act);

}  // namespace zyga::ui
