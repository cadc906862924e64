#include <QDockWidget>

#include "app/window/main_window.h"
#include "ui/panels/ground/ground_panel.h"
#include "ui/panels/ground/trackway_panel.h"
#include "ui/parts/panel_title.h"
#include "ui/viewport/viewport.h"

namespace zyga::ui {

/// Mass, balance and trackway; folded it still tells the balance in its title.
void MainWindow::createGroundDock() {
  ground_ = new GroundPanel(document_);
  QDockWidget* dock = createDock("groundDock", tr("Ground"), ground_, Qt::LeftDockWidgetArea);
  auto* title = qobject_cast<PanelTitle*>(dock->titleBarWidget());
  connect(ground_, &GroundPanel::shortChanged, title, &PanelTitle::setSummary);
  connect(ground_, &GroundPanel::shownChanged, viewport_, &Viewport::showOnGround);
}

bool MainWindow::takeTrackway(const QString& file) {
  if (!ground_->takes(file)) return false;
  for (QDockWidget* dock : docks_) {
    if (dock->objectName() != "groundDock") continue;
    dock->show();
    qobject_cast<PanelTitle*>(dock->titleBarWidget())->setFolded(false);
  }
  ground_->trackway()->readTable(file);
  return true;
}

}  // namespace zyga::ui
