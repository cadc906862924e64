#include <QDockWidget>
#include <QMenu>

#include "app/window/main_window.h"
#include "ui/commands/lock_joints.h"
#include "ui/panels/reach_panel.h"
#include "ui/parts/panel_title.h"
#include "ui/viewport/viewport.h"

namespace zyga::ui {

/// How drags reach; folded it tells in its title what differs from the usual.
void MainWindow::createReachDock() {
  auto* reach = new ReachPanel(document_, viewport_->reachSettings());
  QDockWidget* dock = createDock("reachDock", tr("Reach"), reach, Qt::LeftDockWidgetArea);
  auto* title = qobject_cast<PanelTitle*>(dock->titleBarWidget());
  connect(reach, &ReachPanel::shortChanged, title, &PanelTitle::setSummary);
}

/// The same from the keyboard.
void MainWindow::addReachActions(QMenu& menu) {
  ReachSettings& settings = viewport_->reachSettings();
  QMenu& reach = *menu.addMenu(tr("&Reach"));
  const auto toggle = [&](const QString& text, const char* key, auto set) {
    QAction* action = add(reach, text, QKeySequence(key), [] {});
    action->setCheckable(true);
    connect(action, &QAction::toggled, &settings, set);
    return action;
  };
  QAction* base = toggle(tr("Bend from the &base"), "Ctrl+Shift+E", [&settings](bool on) {
    settings.setStyle(on ? kinematics::BendStyle::FromTheBase : kinematics::BendStyle::Even);
  });
  QAction* past = toggle(tr("&Past the ranges"), "Ctrl+Shift+R", [&settings](bool on) { settings.setPastRanges(on); });
  QAction* gaze = toggle(tr("Keep the &gaze"), "Ctrl+Shift+K", [&settings](bool on) { settings.setKeepsGaze(on); });
  QAction* lock = add(reach, tr("&Lock or unlock the chosen joint"), QKeySequence("Ctrl+K"), [this] {
    const auto joint = document_.hasProject() ? document_.selectedJoint() : std::nullopt;
    if (joint) lockOrUnlock(document_, *joint);
  });
  connect(&settings, &ReachSettings::changed, this, [&settings, base, past, gaze] {
    base->setChecked(settings.style() == kinematics::BendStyle::FromTheBase);
    past->setChecked(settings.pastRanges());
    gaze->setChecked(settings.keepsGaze());
  });
  needProject_ += {base, past, gaze, lock};
}

}  // namespace zyga::ui
