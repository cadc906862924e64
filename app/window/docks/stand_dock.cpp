#include <QDockWidget>
#include <QMenu>

#include "app/window/flows/scan_flow.h"
#include "app/window/flows/stance_actions.h"
#include "app/window/main_window.h"
#include "ui/panels/stand_panel.h"
#include "ui/parts/panel_title.h"

namespace zyga::ui {

/// How the animal stands; folded it still tells slope and hip height in its title.
void MainWindow::createStandDock() {
  auto* stand = new StandPanel(document_);
  QDockWidget* dock = createDock("standDock", tr("Stand"), stand, Qt::LeftDockWidgetArea);
  auto* title = qobject_cast<PanelTitle*>(dock->titleBarWidget());
  connect(stand, &StandPanel::shortChanged, title, &PanelTitle::setSummary);
}

void MainWindow::offerFor(BoneIndex bone, const QPoint& global) {
  auto* menu = new QMenu(this);
  menu->setObjectName("boneMenu");
  menu->setAttribute(Qt::WA_DeleteOnClose);
  stances_->addFor(*menu, bone);
  scans_->addFor(*menu, bone);
  addNoteActions(*menu, bone, global);
  if (menu->isEmpty()) return menu->deleteLater();
  document_.selectBone(bone);
  menu->popup(global);
}

}  // namespace zyga::ui
