#include <QAction>
#include <QComboBox>
#include <QFrame>
#include <QGridLayout>
#include <QLabel>
#include <QUndoStack>
#include <algorithm>
#include <utility>

#include "core/solid/facets/upright.h"
#include "ui/commands/scan_edits.h"
#include "ui/parts/panel_parts.h"
#include "ui/scans/landmark_editor.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

using picture::StandardView;

constexpr double kBrushStep = 1.25;
constexpr int kRowsOfKeys = 14;  ///< of one column of the list

}  // namespace

void LandmarkEditor::addKey(const QKeySequence& keys, const QString& does, const std::function<void()>& act) {
  auto* action = new QAction(this);
  action->setShortcut(keys);
  connect(action, &QAction::triggered, this, act);
  addAction(action);
  keys_.push_back({keys, does});
}

/// What a person does all the time has a letter; what is rare has Shift with it.
void LandmarkEditor::createKeys() {
  QUndoStack& stack = document_.undoStack();
  addKey(QKeySequence::Undo, tr("Undo"), [&stack] { stack.undo(); });
  addKey(QKeySequence("Ctrl+Shift+Z"), tr("Redo"), [&stack] { stack.redo(); });
  if (!QKeySequence::keyBindings(QKeySequence::Redo).contains(QKeySequence("Ctrl+Shift+Z")))
    addKey(QKeySequence::Redo, tr("Redo"), [&stack] { stack.redo(); });
  addKey(Qt::Key_A, tr("Accept the suggested mark"), [this] { marks_.accept(); });
  addKey(QKeySequence("Shift+A"), tr("Accept all of this bone"), [this] { marks_.acceptAll(); });
  addKey(Qt::Key_Period, tr("Next mark"), [this] { marks_.step(1); });
  addKey(Qt::Key_Comma, tr("Previous mark"), [this] { marks_.step(-1); });
  addKey(QKeySequence::Delete, tr("Remove the mark"), [this] { marks_.takeAway(); });
  addKey(Qt::Key_Backspace, tr("Take the last place back"), [this] { marks_.takeBackPlace(); });
  addKey(Qt::Key_M, tr("Mirror this mark"), [this] { marks_.mirrorCurrent(); });
  addKey(QKeySequence("Shift+M"), tr("Mirror all marks"), [this] { marks_.mirrorAll(); });
  addKey(Qt::Key_D, tr("Show the next mark in doubt"), [this] { showDoubt(); });
  addKey(Qt::Key_N, tr("Next bone"), [this] { stepBone(1); });
  addKey(Qt::Key_P, tr("Previous bone"), [this] { stepBone(-1); });
  addKey(Qt::Key_O, tr("Next bone with open or suggested marks"), [this] { nextOpenBone(); });
  addKey(Qt::Key_U, tr("Turn the bone upright"), [this] { turnUpright(); });
  addKey(Qt::Key_F, tr("Show the whole bone"), [this] { view_->frameAll(); });
  const std::pair<StandardView, QString> views[] = {{StandardView::Left, tr("Left lateral")},
                                                    {StandardView::Right, tr("Right lateral")},
                                                    {StandardView::Dorsal, tr("Dorsal")},
                                                    {StandardView::Cranial, tr("Cranial")},
                                                    {StandardView::Caudal, tr("Caudal")}};
  int number = 0;
  for (const auto& [view, words] : views)
    addKey(static_cast<Qt::Key>(Qt::Key_1 + number++), words, [this, which = view] {
      if (marks_.hasScan() && marks_.scan().placed) view_->setPlace(boneFromScan(marks_.scan()));
      view_->showView(which);
    });
  addKey(Qt::Key_BracketRight, tr("Larger brush"), [this] { scaleBrush(kBrushStep); });
  addKey(Qt::Key_BracketLeft, tr("Smaller brush"), [this] { scaleBrush(1 / kBrushStep); });
  addKey(Qt::Key_Question, tr("These keys"), [this] { showKeys(); });
  addKey(Qt::Key_F1, tr("Help on marks"), [this] { emit helpAsked("marks"); });
  // The view itself has these, while it has the focus.
  keys_.push_back({QKeySequence(Qt::Key_Left), tr("Turn the view; so do the other arrows")});
  keys_.push_back({QKeySequence(Qt::Key_Plus), tr("Magnify; minus goes back")});
  keys_.push_back({QKeySequence(Qt::Key_Return), tr("Mark what lies under the middle of the view")});
}

/// A list that goes at the next click or key.
void LandmarkEditor::showKeys() {
  auto* list = new QFrame(this, Qt::Popup);
  list->setObjectName("landmarkKeys");
  list->setAttribute(Qt::WA_DeleteOnClose);
  list->setFrameShape(QFrame::StyledPanel);
  auto* grid = new QGridLayout(list);
  grid->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  grid->setHorizontalSpacing(kWideGap);
  grid->setVerticalSpacing(kGridStep);
  for (std::size_t i = 0; i < keys_.size(); ++i) {
    const int row = static_cast<int>(i) % kRowsOfKeys, column = 2 * (static_cast<int>(i) / kRowsOfKeys);
    auto* keys = new QLabel(keys_[i].keys.toString(QKeySequence::NativeText));
    QFont bold = keys->font();
    bold.setBold(true);
    keys->setFont(bold);
    auto* does = new QLabel(keys_[i].does);
    if (column > 0) keys->setContentsMargins(kWideGap, 0, 0, 0);
    grid->addWidget(keys, row, column);
    grid->addWidget(does, row, column + 1);
  }
  list->adjustSize();
  // Below the button, within the editor.
  const QPoint corner = mapToGlobal(QPoint(std::max(0, width() - list->width() - kWideGap), 3 * kWideGap));
  list->move(corner);
  list->show();
}

void LandmarkEditor::stepBone(int places) {
  if (bones_->count() == 0) return;
  const int to = (bones_->currentIndex() + places + bones_->count()) % bones_->count();
  showBone(anatomy::parseBoneId(bones_->itemData(to).toString().toStdString()).value());
}

/// In the order of the list, from the one behind this on; told when there is none.
void LandmarkEditor::nextOpenBone() {
  const auto& scans = document_.project().scans;
  for (int k = 1; k <= bones_->count(); ++k) {
    const int at = (bones_->currentIndex() + k) % bones_->count();
    const auto& scan = scans[static_cast<std::size_t>(at)].scan;
    if (!marks_.openMarks(scan).any()) continue;
    if (scan.bone == bone_) break;
    return showBone(scan.bone);
  }
  told_->setText(marks_.openMarks(marks_.scan()).any() ? tr("Only this bone has marks that are open or suggested.")
                                                       : tr("No bone has marks that are open or suggested."));
}

/// By its marks, as far as they go. Only the view turns: how the bone lies in the animal is said by its marks.
void LandmarkEditor::turnUpright() {
  if (!marks_.hasScan() || !surface_) return;
  const anatomy::Scan& scan = marks_.scan();
  const auto upright = solid::uprightOf(scan, surface_->levels().levels.back());
  Eigen::Affine3d X_WS = boneFromScan(scan);
  if (upright.by != solid::UprightBy::Marks) {
    // Shape does not tell up from down: every other time it stands on its head.
    Eigen::Matrix3d R_WS = upright.R_WS;
    if (upright.by == solid::UprightBy::Shape && std::exchange(turnOver_, !turnOver_))
      R_WS = Eigen::Vector3d(1, -1, -1).asDiagonal() * R_WS;
    X_WS.linear() = scan.scale * R_WS;
    X_WS.translation() = -(X_WS.linear() * surface_->box_S().center());
  }
  view_->setPlace(X_WS);
  view_->showView(StandardView::Left);
  told_->setText(upright.by == solid::UprightBy::Marks       ? tr("Upright by its marks.")
                 : upright.by == solid::UprightBy::SomeMarks ? tr("Upright by the marks there are and its shape.")
                                                             : tr("Upright by its shape alone, which does not tell up "
                                                                  "from down: U again turns it over."));
}

void LandmarkEditor::scaleBrush(double factor) { brush_->setValue(brush_->value() * factor); }

}  // namespace zyga::ui
