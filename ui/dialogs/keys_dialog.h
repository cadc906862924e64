#pragma once

#include <QDialog>
#include <QList>

class QAction;

namespace zyga::ui {

/// Gestures on the animal and on the strip, and the key of every action.
class KeysDialog : public QDialog {
  Q_OBJECT
 public:
  explicit KeysDialog(const QList<QAction*>& actions, QWidget* parent = nullptr);
};

/// What the program is, and what it is not.
class AboutDialog : public QDialog {
  Q_OBJECT
 public:
  explicit AboutDialog(QWidget* parent = nullptr);
};

}  // namespace zyga::ui
