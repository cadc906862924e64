#pragma once

#include <QList>
#include <QMainWindow>

#include "app/window/docks/panel_dock.h"

namespace zyga::ui {

/// Where the panels of the window stand: their first arrangement, what is kept of a person's own, and large text.
class WindowLayout {
 public:
  /// The docks by the part they play in the first arrangement.
  struct Docks {
    PanelDock *bones, *poses, *joint, *assumptions, *findings;
    QList<PanelDock*> others;  ///< start folded unless the window is very high
    PanelDock* strip;          ///< along the bottom, without a title
  };

  /// Takes the docks into the window.
  WindowLayout(QMainWindow& window, const Docks& docks);

  /// All of them, in the order of the menu and of the keyboard.
  const QList<PanelDock*>& docks() const { return all_; }
  PanelDock& assumptions() const { return *docks_.assumptions; }

  /// The window as large as it was last, or as the screen has room for.
  void restoreSize();
  /// The panels as they were last, or as they stand at first; once the window has its size.
  void arrange();
  void keep() const;

 private:
  void arrangeAtFirst();
  void stack();

  QMainWindow& window_;
  Docks docks_;
  QList<PanelDock*> all_;
};

}  // namespace zyga::ui
