#include <QAction>
#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QMenuBar>
#include <QSettings>
#include <QToolBar>

#include "app/window/controllers/animal_from_scans.h"
#include "app/window/controllers/file_controller.h"
#include "app/window/controllers/menu_action.h"
#include "app/window/controllers/output_controller.h"
#include "app/window/controllers/pose_actions.h"
#include "app/window/controllers/report_controller.h"
#include "app/window/controllers/scan_controller.h"
#include "app/window/controllers/stance_actions.h"
#include "app/window/controllers/table_controller.h"
#include "app/window/docks/docks.h"
#include "app/window/main_window.h"
#include "app/window/recent_files.h"
#include "app/window/samples.h"
#include "app/window/window_layout.h"
#include "core/kinematics/standing.h"
#include "ui/commands/pose_edits.h"
#include "ui/dialogs/compare_dialog.h"
#include "ui/dialogs/keys_dialog.h"
#include "ui/dialogs/sheet/sheet_dialog.h"
#include "ui/panels/poses_panel.h"
#include "ui/parts/message_bar.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/viewport/viewport.h"
#include "ui/words/say.h"

namespace zyga::ui {

using picture::StandardView;

QAction* MainWindow::add(QMenu& menu, const QString& text, const QKeySequence& key, const std::function<void()>& act,
                         const char* iconName) {
  QAction* action = addMenuAction(menu, this, text, key, act);
  if (iconName) action->setIcon(icon(iconName));
  return action;
}

void MainWindow::createMenus() {
  createFileMenu();
  createEditMenu();
  createPoseMenu();
  createBonesMenu();
  createViewMenu();
  createHelpMenu();
}

void MainWindow::createFileMenu() {
  QMenu& menu = *menuBar()->addMenu(tr("&File"));
  add(menu, tr("&New from a table…"), QKeySequence::New, [this] { files_->chooseTable(); });
  add(menu, tr("New from s&cans…"), QKeySequence("Ctrl+Alt+A"), [this] {
    animals_->ask();
  })->setObjectName("newFromScans");
  open_ = add(
      menu, tr("&Open…"), QKeySequence::Open, [this] { files_->chooseProject(); }, "open");
  recent_->fill(*menu.addMenu(tr("Open &recent")));
  QMenu& samples = *menu.addMenu(tr("Open a sa&mple"));
  for (const QString& file : sampleFiles()) {
    const QString name = QFileInfo(file).completeBaseName().replace('_', ' ');
    samples.addAction(capital(name), this, [this, file] { files_->openQuietly(file); });
  }
  menu.addSeparator();
  save_ = add(
      menu, tr("&Save"), QKeySequence::Save, [this] { files_->save(); }, "save");
  QAction* saveAs = add(menu, tr("Save &as…"), QKeySequence::SaveAs, [this] { files_->saveAs(); });
  menu.addSeparator();
  export_ = add(
      menu, tr("&Export meshes…"), QKeySequence("Ctrl+E"), [this] { output_->exportMeshes(); }, "export");
  picture_ = add(
      menu, tr("Save &picture…"), QKeySequence("Ctrl+P"), [this] { output_->savePicture(); }, "picture");
  QAction* sheet = add(menu, tr("S&heet…"), QKeySequence("Ctrl+Alt+P"), [this] { designSheet(); });
  QAction* report = add(menu, tr("&Report…"), QKeySequence("Ctrl+R"), [this] { report_->writeReport(); });
  menu.addSeparator();
  add(menu, tr("&Quit"), QKeySequence::Quit, [this] { close(); });
  needProject_ += {save_, saveAs, sheet, report};
}

void MainWindow::createEditMenu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Edit"));
  undo_ = document_.undoStack().createUndoAction(this, tr("Undo:"));
  redo_ = document_.undoStack().createRedoAction(this, tr("Redo:"));
  undo_->setShortcut(QKeySequence::Undo);
  redo_->setShortcut(QKeySequence::Redo);
  undo_->setIcon(icon("undo"));
  redo_->setIcon(icon("redo"));
  menu.addActions({undo_, redo_});
  menu.addSeparator();
  add(menu, tr("&Find a bone"), QKeySequence::Find, [this] {
    auto* search = findChild<QLineEdit*>("boneSearch");
    if (!search) return;
    for (PanelDock* dock : layout_->docks())
      if (dock->isAncestorOf(search)) dock->raise();
    search->setFocus(Qt::ShortcutFocusReason);
  });
  menu.addSeparator();
  add(menu, tr("&Settings…"), QKeySequence("Ctrl+,"), [this] { askPreferences(); });
}

void MainWindow::offerFor(BoneIndex bone, const QPoint& global) {
  auto* menu = new QMenu(this);
  menu->setObjectName("boneMenu");
  menu->setAttribute(Qt::WA_DeleteOnClose);
  stances_->addFor(*menu, bone);
  scans_->addFor(*menu, bone);
  notes_->addFor(*menu, bone, global);
  if (menu->isEmpty()) return menu->deleteLater();
  document_.selectBone(bone);
  menu->popup(global);
}

void MainWindow::setPose(const QString& text, const kinematics::Pose& pose) { document_.changePose(pose, text); }

void MainWindow::createPoseMenu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Pose"));
  auto* poses = new PoseActions(document_, *messages_, this);
  poses->addNeutral(menu);
  neutral_ = poses->allNeutral();
  menu.addSeparator();
  poses->addLimits(menu);
  menu.addSeparator();
  stances_ = new StanceActions(document_, *messages_, this);
  stances_->addTo(menu);
  stand_ = stances_->stand();
  connect(viewport_, &Viewport::menuAsked, this, &MainWindow::offerFor);
  needProject_ += reach_->addActions(menu, *this);
  needProject_ += studies_->addActions(menu, *this);
  needProject_ += claims_->addActions(menu, *this);
  QAction* mirror = add(menu, tr("&Mirror left and right"), QKeySequence("Ctrl+M"), [this] {
    setPose(tr("Mirror left and right"), mirrored(document_.specimen(), document_.pose()));
  });
  menu.addSeparator();
  QAction* keep = add(
      menu, tr("&Keep this pose under a name"), QKeySequence("Ctrl+D"), [this] { poses_->addPose(); }, "add-pose");
  QAction* compare = add(menu, tr("C&ompare…"), QKeySequence("Ctrl+Shift+D"), [this] {
    auto* dialog = new CompareDialog(document_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->show();
  });
  needProject_ += poses->actions();
  needProject_ += stances_->actions();
  needProject_ += {mirror, keep, compare};
}

void MainWindow::createBonesMenu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Bones"));
  needProject_ += tables_->addTo(menu);
  menu.addSeparator();
  scans_->addTo(menu);
  menu.addSeparator();
  needProject_ += notes_->addActions(menu, *this);
}

void MainWindow::createViewMenu() {
  QMenu& menu = *menuBar()->addMenu(tr("&View"));
  struct Row {
    StandardView view;
    QString text;
    const char* iconName;
  };
  const Row rows[] = {{StandardView::Left, tr("From the &left"), "left"},
                      {StandardView::Right, tr("From the &right"), "right"},
                      {StandardView::Dorsal, tr("&Dorsal"), "dorsal"},
                      {StandardView::Cranial, tr("&Cranial"), "cranial"},
                      {StandardView::Caudal, tr("Ca&udal"), "caudal"},
                      {StandardView::ThreeQuarter, tr("&Three-quarter"), "three-quarter"},
                      {StandardView::Ventral, tr("&Ventral"), "ventral"}};
  // 7 is taken by what follows.
  constexpr Qt::Key kKeys[] = {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5, Qt::Key_6, Qt::Key_8};
  const Qt::Key* key = kKeys;
  for (const Row& row : rows)
    views_ += add(
        menu, row.text, QKeySequence(Qt::CTRL | *key++), [this, view = row.view] { viewport_->showView(view); },
        row.iconName);
  menu.addSeparator();
  perspective_ = add(
      menu, tr("&Perspective"), QKeySequence("Ctrl+7"),
      [this] { viewport_->setPerspective(perspective_->isChecked()); }, "perspective");
  perspective_->setCheckable(true);
  connect(viewport_, &Viewport::cameraChanged, this,
          [this] { perspective_->setChecked(viewport_->camera().perspective); });
  frameAll_ = add(
      menu, tr("Frame &all"), QKeySequence("Ctrl+0"), [this] { viewport_->frameAll(); }, "frame");
  add(menu, tr("Frame the c&hosen bone"), QKeySequence("Ctrl+9"), [this] { frameSelection(); });
  menu.addSeparator();
  dark_ = add(
      menu, tr("Dar&k"), QKeySequence("Ctrl+L"), [this] { setDark(dark_->isChecked()); }, "dark");
  dark_->setCheckable(true);
  dark_->setChecked(theme().scheme == Scheme::Dark);
  QMenu& panels = *menu.addMenu(tr("Pa&nels"));
  for (PanelDock* dock : layout_->docks()) panels.addAction(dock->toggleViewAction());
  add(panels, tr("Go to the next panel"), QKeySequence("F6"), [this] { nextPane(); });
}

void MainWindow::createHelpMenu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Help"));
  add(menu, tr("&How joints are judged"), QKeySequence("Shift+F1"), [this] { openHelp(); });
  add(menu, tr("&Keys and gestures"), QKeySequence::HelpContents, [this] {
    auto* dialog = new KeysDialog(findChildren<QAction*>(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
  });
  add(menu, tr("&About Zygapose"), {}, [this] {
    auto* dialog = new AboutDialog(this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
  });
}

void MainWindow::createToolBar() {
  QToolBar& bar = *addToolBar(tr("Tools"));
  bar.setObjectName("toolBar");
  bar.setMovable(false);
  bar.setIconSize({20, 20});
  bar.addActions({open_, save_});
  bar.addSeparator();
  bar.addActions({undo_, redo_});
  bar.addSeparator();
  bar.addActions({neutral_, stand_});
  bar.addSeparator();
  bar.addActions(views_);
  bar.addSeparator();
  bar.addActions({perspective_, frameAll_});
  bar.addSeparator();
  bar.addActions({picture_, export_});
  auto* space = new QWidget;
  space->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  bar.addWidget(space);
  bar.addAction(dark_);
}

void MainWindow::frameSelection() {
  if (!document_.hasProject()) return;
  if (const auto bone = document_.selectedBone()) return viewport_->frameBone(*bone);
  viewport_->frameAll();
}

void MainWindow::nextPane() {
  qsizetype at = -1;
  for (qsizetype i = 0; i < panes_.size(); ++i)
    if (panes_[i]->isAncestorOf(QApplication::focusWidget()) || panes_[i] == QApplication::focusWidget()) at = i;
  for (qsizetype step = 1; step <= panes_.size(); ++step) {
    QWidget* pane = panes_[(at + step) % panes_.size()];
    for (PanelDock* dock : layout_->docks())  // one behind others comes to the front
      if (dock->isAncestorOf(pane) && dock->toggleViewAction()->isChecked()) dock->raise();
    if (!pane->isVisible()) continue;
    if (pane->focusPolicy() & Qt::TabFocus) return pane->setFocus(Qt::TabFocusReason);
    for (QWidget* child : pane->findChildren<QWidget*>())
      if ((child->focusPolicy() & Qt::TabFocus) && child->isVisible() && child->isEnabled())
        return child->setFocus(Qt::TabFocusReason);
  }
}

void MainWindow::designSheet() {
  if (!document_.hasProject()) return;
  if (document_.meshes().empty())
    return messages_->tell(tr("The bones are still being sculpted. Try again when they are on screen."));
  auto* dialog = new SheetDialog(document_, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  // As large as the window, so that the page can be judged.
  dialog->resize(size().boundedTo(QSize(1320, 820)) - QSize(40, 60));
  dialog->open();
}

}  // namespace zyga::ui
