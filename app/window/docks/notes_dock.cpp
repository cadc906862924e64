#include <QDockWidget>
#include <QMenu>

#include "app/window/main_window.h"
#include "ui/commands/note_edits.h"
#include "ui/panels/notes_panel.h"
#include "ui/parts/panel_title.h"
#include "ui/viewport/viewport.h"

namespace zyga::ui {

/// What is pinned to bones; folded it tells in its title how many.
void MainWindow::createNotesDock() {
  notes_ = new NotesPanel(document_);
  QDockWidget* dock = createDock("notesDock", tr("Notes"), notes_, Qt::LeftDockWidgetArea);
  auto* title = qobject_cast<PanelTitle*>(dock->titleBarWidget());
  connect(notes_, &NotesPanel::shortChanged, title, &PanelTitle::setSummary);
  connect(notes_, &NotesPanel::frameBone, viewport_, &Viewport::frameBone);
}

void MainWindow::pinNote(BoneIndex bone, const Eigen::Vector3d& p_B) {
  addNote(document_, bone, p_B);
  for (QDockWidget* dock : docks_) {
    if (dock->objectName() != "notesDock") continue;
    dock->show();
    qobject_cast<PanelTitle*>(dock->titleBarWidget())->unfold();
  }
  notes_->write();
}

/// With the mouse the note goes where the pointer is, from the keyboard to the bone's usual place.
void MainWindow::addNoteActions(QMenu& menu, BoneIndex bone, const QPoint& global) {
  if (!menu.isEmpty()) menu.addSeparator();
  const auto found = viewport_->surfaceAt(viewport_->mapFromGlobal(QPointF(global)));
  const bool here = found && found->bone == bone;
  const Eigen::Vector3d p_B = here ? Eigen::Vector3d(document_.placement()[bone.value].inverse() * found->p_W)
                                   : anatomy::usualPin(document_.specimen()[bone]);
  menu.addAction(tr("Pin a &note here"), this, [this, bone, p_B] { pinNote(bone, p_B); });
}

void MainWindow::addNoteAction(QMenu& menu) {
  QAction* pin = add(menu, tr("Pin a &note to the chosen bone"), QKeySequence("Ctrl+Alt+N"), [this] {
    const auto bone = document_.hasProject() ? document_.selectedBone() : std::nullopt;
    if (bone) pinNote(*bone, anatomy::usualPin(document_.specimen()[*bone]));
  });
  needProject_ += pin;
}

}  // namespace zyga::ui
