#include <QDockWidget>
#include <QMenu>

#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/panel_title.h"
#include "ui/panels/studies/studies_panel.h"
#include "ui/viewport/viewport.h"

namespace zyga::ui {

/// What follows from the pose; folded it tells in its title which study is there.
void MainWindow::createStudiesDock() {
  studies_ = new StudiesPanel(document_);
  QDockWidget* dock = createDock("studiesDock", tr("Studies"), studies_, Qt::RightDockWidgetArea);
  auto* title = qobject_cast<PanelTitle*>(dock->titleBarWidget());
  connect(studies_, &StudiesPanel::shortChanged, title, &PanelTitle::setSummary);
  connect(studies_, &StudiesPanel::envelopeChanged, viewport_, &Viewport::showEnvelope);
  connect(studies_, &StudiesPanel::warned, messages_, [this](const QString& words) { messages_->warn(words); });
  connect(studies_, &StudiesPanel::told, messages_, [this](const QString& words) { messages_->tell(words); });
}

/// Every study by name, and the envelope in the view.
void MainWindow::addStudyActions(QMenu& menu) {
  QMenu& studies = *menu.addMenu(tr("St&udies"));
  QDockWidget* dock = findChild<QDockWidget*>("studiesDock");
  for (const StudyKind kind : kStudyKinds) {
    needProject_ += add(studies, ui::title(kind), {}, [this, dock, kind] {
      dock->show();
      qobject_cast<PanelTitle*>(dock->titleBarWidget())->unfold();
      studies_->choose(kind);
      studies_->run();
    });
  }
  studies.addSeparator();
  QAction* draw = add(studies, tr("&Draw the reach envelope"), QKeySequence("Ctrl+Shift+V"), [] {});
  draw->setCheckable(true);
  draw->setChecked(studies_->drawsEnvelope());
  connect(draw, &QAction::toggled, studies_, &StudiesPanel::setDrawsEnvelope);
  connect(studies_, &StudiesPanel::drawsEnvelopeChanged, draw, &QAction::setChecked);
}

}  // namespace zyga::ui
