#include <QDockWidget>
#include <QMenu>

#include "app/window/main_window.h"
#include "ui/panels/studies/studies_panel.h"
#include "ui/parts/message_bar.h"
#include "ui/parts/panel_title.h"
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
  needProject_ += draw;
  connect(studies_, &StudiesPanel::envelopeChanged, draw,
          [draw](const auto& drawn) { draw->setChecked(drawn != nullptr); });
  // To ask for the drawing is to ask for the study, too, where it has not been made.
  connect(draw, &QAction::triggered, studies_, [this, dock](bool wanted) {
    studies_->setDrawsEnvelope(wanted);
    if (!wanted || studies_->job().result(StudyKind::Envelope)) return;
    dock->show();
    qobject_cast<PanelTitle*>(dock->titleBarWidget())->unfold();
    studies_->choose(StudyKind::Envelope);
    studies_->run();
  });
}

}  // namespace zyga::ui
