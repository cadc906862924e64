#include <QDockWidget>
#include <QMenu>

#include "app/window/main_window.h"
#include "ui/panels/claims/claims_panel.h"
#include "ui/parts/message_bar.h"
#include "ui/parts/panel_title.h"

namespace zyga::ui {

/// Claims and their answers; folded it tells in its title how many are supported.
void MainWindow::createClaimsDock() {
  claims_ = new ClaimsPanel(document_);
  QDockWidget* dock = createDock("claimsDock", tr("Claims"), claims_, Qt::RightDockWidgetArea);
  auto* title = qobject_cast<PanelTitle*>(dock->titleBarWidget());
  connect(claims_, &ClaimsPanel::shortChanged, title, &PanelTitle::setSummary);
  connect(claims_, &ClaimsPanel::warned, messages_, [this](const QString& words) { messages_->warn(words); });
}

/// The same from the keyboard.
void MainWindow::addClaimActions(QMenu& menu) {
  auto* dock = findChild<QDockWidget*>("claimsDock");
  QMenu& claims = *menu.addMenu(tr("&Claims"));
  needProject_ += add(claims, tr("&Add a claim"), QKeySequence("Ctrl+Shift+C"), [this, dock] {
    dock->show();
    qobject_cast<PanelTitle*>(dock->titleBarWidget())->unfold();
    claims_->add();
  });
  needProject_ += add(claims, tr("&Show the pose of the chosen claim"), QKeySequence("Ctrl+Shift+P"),
                      [this] { claims_->showPose(); });
}

}  // namespace zyga::ui
