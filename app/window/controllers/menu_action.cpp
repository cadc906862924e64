#include "app/window/controllers/menu_action.h"

#include <QAction>
#include <QMenu>

namespace zyga::ui {

QAction* addMenuAction(QMenu& menu, QObject* owner, const QString& text, const QKeySequence& key,
                       const std::function<void()>& act) {
  QAction* action = menu.addAction(text, owner, act);
  action->setShortcut(key);
  QString tip = QString(text).remove('&').remove(QString::fromUtf8("…"));
  if (!key.isEmpty()) tip += QString("  (%1)").arg(key.toString(QKeySequence::NativeText));
  action->setToolTip(tip);
  return action;
}

}  // namespace zyga::ui
