#include "app/window/docks/docks.h"

#include <QMenu>

#include "app/window/controllers/menu_action.h"
#include "ui/commands/pose_edits.h"
#include "ui/commands/project_edits.h"
#include "ui/panels/claims/claims_panel.h"
#include "ui/panels/ground/ground_panel.h"
#include "ui/panels/ground/trackway_panel.h"
#include "ui/panels/notes_panel.h"
#include "ui/panels/reach_panel.h"
#include "ui/panels/stand_panel.h"
#include "ui/panels/studies/studies_panel.h"
#include "ui/parts/message_bar.h"
#include "ui/viewport/viewport.h"

namespace zyga::ui {

namespace {

/// The panel of a dock that keeps no pointer of its own to it.
template <class Panel>
Panel& panelOf(const PanelDock& dock) {
  return *qobject_cast<Panel*>(&dock.content());
}

}  // namespace

GroundDock::GroundDock(Document& document, Viewport& view)
    : PanelDock("groundDock", tr("Ground"), new GroundPanel(document), Qt::LeftDockWidgetArea),
      panel_(&panelOf<GroundPanel>(*this)) {
  connect(panel_, &GroundPanel::shortChanged, this, &PanelDock::setSummary);
  connect(panel_, &GroundPanel::shownChanged, &view, &Viewport::showOnGround);
}

bool GroundDock::takeTrackway(const QString& file) {
  if (!panel_->takes(file)) return false;
  show();
  setFolded(false);
  panel_->trackway()->readTable(file);
  return true;
}

StandDock::StandDock(Document& document)
    : PanelDock("standDock", tr("Stand"), new StandPanel(document), Qt::LeftDockWidgetArea) {
  connect(&panelOf<StandPanel>(*this), &StandPanel::shortChanged, this, &PanelDock::setSummary);
}

ReachDock::ReachDock(Document& document, Viewport& view)
    : PanelDock("reachDock", tr("Reach"), new ReachPanel(document, view.reachSettings()), Qt::LeftDockWidgetArea),
      document_(document),
      view_(view) {
  connect(&panelOf<ReachPanel>(*this), &ReachPanel::shortChanged, this, &PanelDock::setSummary);
}

QList<QAction*> ReachDock::addActions(QMenu& menu, QWidget& owner) {
  ReachSettings& settings = view_.reachSettings();
  QMenu& reach = *menu.addMenu(tr("&Reach"));
  const auto toggle = [&](const QString& text, const char* key, auto set) {
    QAction* action = addMenuAction(reach, &owner, text, QKeySequence(key), [] {});
    action->setCheckable(true);
    connect(action, &QAction::toggled, &settings, set);
    return action;
  };
  QAction* base = toggle(tr("Bend from the &base"), "Ctrl+Shift+E", [&settings](bool on) {
    settings.setStyle(on ? kinematics::BendStyle::FromTheBase : kinematics::BendStyle::Even);
  });
  QAction* past = toggle(tr("&Past the ranges"), "Ctrl+Shift+R", [&settings](bool on) { settings.setPastRanges(on); });
  QAction* gaze = toggle(tr("Keep the &gaze"), "Ctrl+Shift+K", [&settings](bool on) { settings.setKeepsGaze(on); });
  QAction* lock = addMenuAction(reach, &owner, tr("&Lock or unlock the chosen joint"), QKeySequence("Ctrl+K"), [this] {
    const auto joint = document_.hasProject() ? document_.selectedJoint() : std::nullopt;
    if (joint) lockOrUnlock(document_, *joint);
  });
  connect(&settings, &ReachSettings::changed, &owner, [&settings, base, past, gaze] {
    base->setChecked(settings.style() == kinematics::BendStyle::FromTheBase);
    past->setChecked(settings.pastRanges());
    gaze->setChecked(settings.keepsGaze());
  });
  return {base, past, gaze, lock};
}

StudiesDock::StudiesDock(Document& document, Viewport& view, MessageBar& messages)
    : PanelDock("studiesDock", tr("Studies"), new StudiesPanel(document), Qt::RightDockWidgetArea),
      panel_(&panelOf<StudiesPanel>(*this)) {
  connect(panel_, &StudiesPanel::shortChanged, this, &PanelDock::setSummary);
  connect(panel_, &StudiesPanel::envelopeChanged, &view, &Viewport::showEnvelope);
  connect(panel_, &StudiesPanel::warned, &messages, [&messages](const QString& words) { messages.warn(words); });
  connect(panel_, &StudiesPanel::told, &messages, [&messages](const QString& words) { messages.tell(words); });
}

const std::shared_ptr<study::StudyAnswers>& StudiesDock::answers() const { return panel_->job().answers(); }

QList<QAction*> StudiesDock::addActions(QMenu& menu, QWidget& owner) {
  QMenu& studies = *menu.addMenu(tr("St&udies"));
  QList<QAction*> added;
  for (const StudyKind kind : kStudyKinds) {
    added += addMenuAction(studies, &owner, ui::title(kind), {}, [this, kind] {
      reveal();
      panel_->choose(kind);
      panel_->run();
    });
  }
  studies.addSeparator();
  QAction* draw = addMenuAction(studies, &owner, tr("&Draw the feeding envelope"), QKeySequence("Ctrl+Shift+V"), [] {});
  draw->setCheckable(true);
  connect(panel_, &StudiesPanel::envelopeChanged, draw,
          [draw](const auto& drawn) { draw->setChecked(drawn != nullptr); });
  // To ask for the drawing is to ask for the study, too, where it has not been made.
  connect(draw, &QAction::triggered, panel_, [this](bool wanted) {
    panel_->setDrawsEnvelope(wanted);
    if (!wanted || panel_->job().result(StudyKind::Envelope)) return;
    reveal();
    panel_->choose(StudyKind::Envelope);
    panel_->run();
  });
  added += draw;
  return added;
}

ClaimsDock::ClaimsDock(Document& document, MessageBar& messages)
    : PanelDock("claimsDock", tr("Claims"), new ClaimsPanel(document), Qt::RightDockWidgetArea),
      panel_(&panelOf<ClaimsPanel>(*this)) {
  connect(panel_, &ClaimsPanel::shortChanged, this, &PanelDock::setSummary);
  connect(panel_, &ClaimsPanel::warned, &messages, [&messages](const QString& words) { messages.warn(words); });
}

bool ClaimsDock::answering() const { return panel_->answering(); }

QList<QAction*> ClaimsDock::addActions(QMenu& menu, QWidget& owner) {
  QMenu& claims = *menu.addMenu(tr("&Claims"));
  QAction* add = addMenuAction(claims, &owner, tr("&Add a claim"), QKeySequence("Ctrl+Shift+C"), [this] {
    reveal();
    panel_->add();
  });
  QAction* show = addMenuAction(claims, &owner, tr("&Show the pose of the chosen claim"), QKeySequence("Ctrl+Shift+P"),
                                [this] { panel_->showPose(); });
  return {add, show};
}

NotesDock::NotesDock(Document& document, Viewport& view)
    : PanelDock("notesDock", tr("Notes"), new NotesPanel(document), Qt::LeftDockWidgetArea),
      document_(document),
      view_(view),
      panel_(&panelOf<NotesPanel>(*this)) {
  connect(panel_, &NotesPanel::shortChanged, this, &PanelDock::setSummary);
  connect(panel_, &NotesPanel::frameBone, &view, &Viewport::frameBone);
}

void NotesDock::pin(BoneIndex bone, const Eigen::Vector3d& p_B) {
  addNote(document_, bone, p_B);
  reveal();
  panel_->write();
}

void NotesDock::addFor(QMenu& menu, BoneIndex bone, const QPoint& global) {
  if (!menu.isEmpty()) menu.addSeparator();
  const auto found = view_.surfaceAt(view_.mapFromGlobal(QPointF(global)));
  const bool here = found && found->bone == bone;
  const Eigen::Vector3d p_B = here ? Eigen::Vector3d(document_.placement()[bone.value].inverse() * found->p_W)
                                   : anatomy::usualPin(document_.specimen()[bone]);
  menu.addAction(tr("Pin a &note here"), this, [this, bone, p_B] { pin(bone, p_B); });
}

/// From the keyboard a note goes to the bone's usual place.
QList<QAction*> NotesDock::addActions(QMenu& menu, QWidget& owner) {
  return {addMenuAction(menu, &owner, tr("Pin a &note to the chosen bone"), QKeySequence("Ctrl+Alt+N"), [this] {
    const auto bone = document_.hasProject() ? document_.selectedBone() : std::nullopt;
    if (bone) pin(*bone, anatomy::usualPin(document_.specimen()[*bone]));
  })};
}

}  // namespace zyga::ui
