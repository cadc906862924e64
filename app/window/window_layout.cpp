#include "app/window/window_layout.h"

#include <QScreen>
#include <QSettings>
#include <QTabBar>
#include <QTabWidget>

#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

constexpr char kGeometryKey[] = "window/geometry";
constexpr char kStateKey[] = "window/state";
constexpr char kFoldedKey[] = "window/folded";
/// Layouts of an older arrangement of docks are not restored.
constexpr int kStateVersion = 1;
/// From these heights on, px, the panels of the right and of the left side have room unfolded.
constexpr int kTallWindow = 1200, kHighestWindow = 1600;
constexpr int kLowWindow = 900;                     // px; below it the list of bones needs the room of the poses
constexpr int kWidestPanel = 620;                   // px; leaves as much to the animal in a small window
constexpr int kLeftWidth = 312, kRightWidth = 328;  // px

/// Panels that stand behind each other are another arrangement.
int stateVersion() { return kStateVersion + (textIsLarge() ? 100 : 0); }

}  // namespace

WindowLayout::WindowLayout(QMainWindow& window, const Docks& docks) : window_(window), docks_(docks) {
  all_ = QList<PanelDock*>{docks.bones, docks.poses, docks.joint, docks.assumptions, docks.findings} + docks.others;
  all_ += docks.strip;
  for (PanelDock* dock : all_) window_.addDockWidget(dock->side(), dock);
  docks.strip->setFeatures(QDockWidget::NoDockWidgetFeatures);
  docks.strip->setTitleBarWidget(new QWidget);
}

void WindowLayout::restoreSize() {
  const QSettings settings;
  // Unfolded panels would make the window higher than it is asked to be.
  docks_.assumptions->setFolded(true);
  for (PanelDock* dock : docks_.others) dock->setFolded(true);
  if (textIsLarge()) stack();  // below each other they would, too
  const QSize room = window_.screen()->availableSize();
  window_.resize(room.width() * 9 / 10, room.height() * 9 / 10);
  window_.restoreGeometry(settings.value(kGeometryKey).toByteArray());
}

void WindowLayout::arrange() {
  const QSettings settings;
  arrangeAtFirst();
  if (!window_.restoreState(settings.value(kStateKey).toByteArray(), stateVersion())) return;
  const QStringList folded = settings.value(kFoldedKey).toStringList();
  for (PanelDock* dock : all_) dock->setFolded(folded.contains(dock->objectName()));
}

/// The assumptions start folded to one line unless the right side has room for everything.
void WindowLayout::arrangeAtFirst() {
  if (textIsLarge()) {
    for (QTabBar* bar : window_.findChildren<QTabBar*>()) bar->setElideMode(Qt::ElideNone);
    return window_.resizeDocks({docks_.bones}, {kWidestPanel}, Qt::Horizontal);
  }
  window_.resizeDocks({docks_.bones, docks_.joint}, {scaledWithText(kLeftWidth), scaledWithText(kRightWidth)},
                      Qt::Horizontal);
  window_.resizeDocks({docks_.bones, docks_.poses}, {700, 140}, Qt::Vertical);
  for (PanelDock* dock : docks_.others) dock->setFolded(window_.height() < kHighestWindow);
  docks_.poses->setFolded(window_.height() < kLowWindow);
  const bool tall = window_.height() >= kTallWindow;
  docks_.assumptions->setFolded(!tall);
  // A folded panel must not be counted in, or its share is lost to the joint.
  if (tall)
    window_.resizeDocks({docks_.joint, docks_.assumptions, docks_.findings}, {580, 420, 110}, Qt::Vertical);
  else
    window_.resizeDocks({docks_.joint, docks_.findings}, {580, 110}, Qt::Vertical);
}

/// All panels in one place, one before the others.
void WindowLayout::stack() {
  window_.setTabPosition(Qt::RightDockWidgetArea, QTabWidget::North);
  for (PanelDock* dock : all_) {
    if (window_.dockWidgetArea(dock) != Qt::RightDockWidgetArea) continue;
    dock->setFolded(false);
    if (dock != docks_.joint) window_.tabifyDockWidget(docks_.joint, dock);
  }
  docks_.bones->raise();
}

void WindowLayout::keep() const {
  QStringList folded;
  for (const PanelDock* dock : all_)
    if (dock->folded()) folded += dock->objectName();
  QSettings settings;
  settings.setValue(kGeometryKey, window_.saveGeometry());
  settings.setValue(kStateKey, window_.saveState(stateVersion()));
  settings.setValue(kFoldedKey, folded);
}

}  // namespace zyga::ui
