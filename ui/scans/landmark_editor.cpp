#include "ui/scans/landmark_editor.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QToolButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "ui/commands/scan_edits.h"
#include "ui/parts/panel_parts.h"
#include "ui/scans/scan_choices.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::MarkBy;
using anatomy::WantedMark;
using picture::StandardView;

constexpr Qt::Key kAcceptKey = Qt::Key_A;
constexpr int kSideWidth = 360;        // px
constexpr double kBrushShare = 0.035;  // of the bone's size, at first
constexpr int kMarkRole = Qt::UserRole + 1;

QString howTo(MarkBy by) {
  switch (by) {
    case MarkBy::Point:
      return LandmarkEditor::tr("Click the place.");
    case MarkBy::Ring:
      return LandmarkEditor::tr("Click at least three places round it; Backspace takes the last one back.");
    case MarkBy::Ball:
      return LandmarkEditor::tr("Brush the rounded surface; with Ctrl the brush takes away.");
    case MarkBy::Facet:
      break;
  }
  return LandmarkEditor::tr("Brush the flat surface up to its rim; with Ctrl the brush takes away.");
}

QPushButton* button(const QString& text, const char* name) {
  auto* out = new QPushButton(text);
  out->setObjectName(name);
  out->setAutoDefault(false);
  return out;
}

}  // namespace

LandmarkEditor::LandmarkEditor(Document& document, QWidget* parent)
    : QDialog(parent, Qt::Window),
      document_(document),
      marks_(document),
      view_(new LandmarkView),
      bones_(calmComboBox()),
      list_(new QTreeWidget),
      purpose_(new QLabel),
      told_(mutedLabel()),
      lacking_(mutedLabel()) {
  setObjectName("landmarkEditor");
  setWindowTitle(tr("Landmarks"));
  auto* left = new QVBoxLayout;
  left->setContentsMargins(0, 0, 0, 0);
  left->setSpacing(0);
  left->addWidget(createTop());
  left->addWidget(view_, 1);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addLayout(left, 1);
  layout->addWidget(createSide());
  connect(&marks_, &LandmarkMarks::changed, this, &LandmarkEditor::refresh);
  connect(&marks_, &LandmarkMarks::told, told_, &QLabel::setText);
  connect(view_, &LandmarkView::placed, &marks_, &LandmarkMarks::place);
  connect(view_, &LandmarkView::brushed, this,
          [this](const ScanHit& at, bool away) { marks_.brush(at, brush_->value() / 1000, away); });
  connect(view_, &LandmarkView::strokeEnded, &marks_, &LandmarkMarks::endStroke);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (!(what & Change::Scans)) return;
    fillBones();
    if (document_.hasProject() && !marks_.hasScan()) close();
  });
  resize(1160, 740);
}

QWidget* LandmarkEditor::createTop() {
  auto* top = new QWidget;
  auto* row = new QHBoxLayout(top);
  row->setContentsMargins(kGap, kGridStep, kGap, kGridStep);
  row->setSpacing(kGridStep);
  bones_->setObjectName("landmarkBone");
  bones_->setAccessibleName(tr("Bone to be marked"));
  bones_->setMinimumWidth(220);
  connect(bones_, &QComboBox::activated, this,
          [this] { showBone(anatomy::parseBoneId(bones_->currentData().toString().toStdString()).value()); });
  row->addWidget(bones_);
  row->addStretch(1);
  struct View {
    StandardView view;
    const char* iconName;
    QString words;
  };
  for (const View& v :
       {View{StandardView::Left, "left", tr("Left lateral")}, View{StandardView::Right, "right", tr("Right lateral")},
        View{StandardView::Dorsal, "dorsal", tr("Dorsal")}, View{StandardView::Cranial, "cranial", tr("Cranial")},
        View{StandardView::Caudal, "caudal", tr("Caudal")}}) {
    QToolButton* turn = iconButton(v.iconName, v.words);
    connect(turn, &QToolButton::clicked, this, [this, view = v.view] {
      if (marks_.hasScan()) view_->setPlace(boneFromScan(marks_.scan()));
      view_->showView(view);
    });
    row->addWidget(turn);
  }
  QToolButton* frame = iconButton("frame", tr("Show bone"));
  connect(frame, &QToolButton::clicked, view_, &LandmarkView::frameAll);
  row->addWidget(frame);
  for (const bool redo : {false, true}) {
    QToolButton* step = iconButton(redo ? "redo" : "undo", redo ? tr("Redo") : tr("Undo"));
    step->setObjectName(redo ? "landmarkRedo" : "landmarkUndo");
    QUndoStack& stack = document_.undoStack();
    step->setEnabled(redo ? stack.canRedo() : stack.canUndo());
    connect(&stack, redo ? &QUndoStack::canRedoChanged : &QUndoStack::canUndoChanged, step, &QWidget::setEnabled);
    connect(step, &QToolButton::clicked, &stack, redo ? &QUndoStack::redo : &QUndoStack::undo);
    auto* key = new QAction(this);
    key->setShortcut(redo ? QKeySequence::Redo : QKeySequence::Undo);
    connect(key, &QAction::triggered, &stack, redo ? &QUndoStack::redo : &QUndoStack::undo);
    addAction(key);
    row->addWidget(step);
  }
  auto* back = new QAction(this);
  back->setShortcut(Qt::Key_Backspace);
  connect(back, &QAction::triggered, &marks_, &LandmarkMarks::takeBackPlace);
  addAction(back);
  auto* remove = new QAction(this);
  remove->setShortcut(QKeySequence::Delete);
  connect(remove, &QAction::triggered, &marks_, &LandmarkMarks::takeAway);
  addAction(remove);
  auto* accept = new QAction(this);
  accept->setShortcut(kAcceptKey);
  connect(accept, &QAction::triggered, &marks_, &LandmarkMarks::accept);
  addAction(accept);
  return top;
}

QWidget* LandmarkEditor::createSide() {
  auto* side = new QWidget;
  side->setProperty("role", "panel");
  side->setAttribute(Qt::WA_StyledBackground);
  side->setFixedWidth(kSideWidth);
  list_->setObjectName("landmarkList");
  list_->setAccessibleName(tr("Marks of this bone"));
  list_->setColumnCount(2);
  list_->setHeaderLabels({tr("Mark"), tr("State")});
  list_->setRootIsDecorated(false);
  list_->setUniformRowHeights(true);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->header()->setStretchLastSection(false);
  list_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
  list_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
  connect(list_, &QTreeWidget::currentItemChanged, this, &LandmarkEditor::chooseMark);
  purpose_->setWordWrap(true);
  purpose_->setObjectName("markPurpose");
  told_->setObjectName("markTold");
  lacking_->setObjectName("landmarkMissing");
  auto* title = new QLabel(tr("What its joints still need"));
  title->setProperty("role", "title");
  auto* lackingScroll = scrolling(lacking_);
  lackingScroll->setMaximumHeight(112);
  lacking_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  auto* layout = new QVBoxLayout(side);
  setPanelMargins(*layout);
  layout->addWidget(list_, 1);
  layout->addWidget(purpose_);
  layout->addWidget(createTools());
  layout->addWidget(told_);
  layout->addWidget(title);
  layout->addWidget(lackingScroll);
  layout->addWidget(createActions());
  return side;
}

QWidget* LandmarkEditor::createTools() {
  auto* tools = new QWidget;
  brush_ = new UnitSpinBox(QStringLiteral("mm"));
  brush_->setObjectName("brushSize");
  brush_->setAccessibleName(tr("Radius of the brush"));
  brush_->setRange(0.1, 500);
  connect(brush_, &QDoubleSpinBox::valueChanged, this, [this](double mm) { view_->setBrushRadius(mm / 1000); });
  outline_ = calmComboBox();
  outline_->setObjectName("facetOutline");
  outline_->setAccessibleName(tr("Outline of the facet"));
  outline_->addItem(tr("ellipse"), static_cast<int>(solid::OutlineBy::Ellipse));
  outline_->addItem(tr("as brushed"), static_cast<int>(solid::OutlineBy::Hull));
  connect(outline_, &QComboBox::activated, this, [this] {
    marks_.setOutlineBy(static_cast<solid::OutlineBy>(outline_->currentData().toInt()));
    if (!marks_.patch().empty()) marks_.endStroke();
  });
  brushRow_ = new QWidget;
  auto* row = new QHBoxLayout(brushRow_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGap);
  row->addWidget(new QLabel(tr("Brush")));
  row->addWidget(brush_);
  row->addStretch(1);
  row->addWidget(outline_);
  accept_ = button(tr("Accept"), "acceptMark");
  accept_->setToolTip(tr("Takes the suggested mark for made and goes on to the next (%1)")
                          .arg(QKeySequence(kAcceptKey).toString(QKeySequence::NativeText)));
  auto* acceptAll = button(tr("Accept all of this bone"), "acceptMarks");
  connect(accept_, &QPushButton::clicked, &marks_, &LandmarkMarks::accept);
  connect(acceptAll, &QPushButton::clicked, &marks_, &LandmarkMarks::acceptAll);
  suggestedRow_ = new QWidget;
  auto* suggested = new QHBoxLayout(suggestedRow_);
  suggested->setContentsMargins(0, 0, 0, 0);
  suggested->setSpacing(kGap);
  suggested->addWidget(accept_);
  suggested->addWidget(acceptAll);
  suggested->addStretch(1);
  takeAway_ = button(tr("Remove mark"), "takeMarkAway");
  mirrorOne_ = button(tr("Mirror this one"), "mirrorMark");
  connect(takeAway_, &QPushButton::clicked, &marks_, &LandmarkMarks::takeAway);
  connect(mirrorOne_, &QPushButton::clicked, &marks_, &LandmarkMarks::mirrorCurrent);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(kGap);
  buttons->addWidget(takeAway_);
  buttons->addWidget(mirrorOne_);
  buttons->addStretch(1);
  auto* layout = new QVBoxLayout(tools);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  layout->addWidget(suggestedRow_);
  layout->addWidget(brushRow_);
  layout->addLayout(buttons);
  return tools;
}

QWidget* LandmarkEditor::createActions() {
  auto* actions = new QWidget;
  mirrorAll_ = button(tr("Mirror all"), "mirrorMarks");
  mirrorAll_->setToolTip(tr("Makes the missing partner of every mark, across the mid-plane of the bone"));
  connect(mirrorAll_, &QPushButton::clicked, &marks_, &LandmarkMarks::mirrorAll);
  auto* first = new QHBoxLayout;
  first->setSpacing(kGap);
  first->addWidget(mirrorAll_);
  first->addWidget(createStraighten());
  first->addWidget(createMeasures());
  first->addStretch(1);
  auto* in = button(tr("Import landmarks…"), "landmarksIn");
  auto* out = button(tr("Export landmarks…"), "landmarksOut");
  connect(in, &QPushButton::clicked, this, [this] { ask(false); });
  connect(out, &QPushButton::clicked, this, [this] { ask(true); });
  auto* second = new QHBoxLayout;
  second->setSpacing(kGap);
  second->addWidget(in);
  second->addWidget(out);
  second->addStretch(1);
  auto* layout = new QVBoxLayout(actions);
  layout->setContentsMargins(0, kGap, 0, 0);
  layout->setSpacing(kGap);
  layout->addLayout(first);
  layout->addLayout(second);
  return actions;
}

void LandmarkEditor::fillBones() {
  const QSignalBlocker quiet(bones_);
  bones_->clear();
  if (!document_.hasProject()) return;
  for (const auto& kept : document_.project().scans)
    bones_->addItem(boneNameAndId(kept.scan.bone), QString::fromStdString(toId(kept.scan.bone)));
  bones_->setCurrentIndex(bones_->findData(QString::fromStdString(toId(bone_))));
}

void LandmarkEditor::showBone(const anatomy::BoneName& bone) {
  const files::ProjectScan* scan = scanOf(document_, bone);
  if (!scan) return;
  bone_ = bone;
  fillBones();
  setWindowTitle(tr("Landmarks: %1").arg(boneNameAndId(bone)));
  told_->clear();
  marks_.setBone(bone, nullptr);
  prepare();
}

void LandmarkEditor::prepare() {
  const files::ProjectScan& scan = *scanOf(document_, bone_);
  const Eigen::Affine3d X_WS = boneFromScan(scan.scan);
  if (!scan.mesh) return view_->setBone(nullptr, X_WS, say(scan.trouble));
  view_->setBone(nullptr, X_WS, tr("Preparing the bone"));
  const auto work = [this, mesh = scan.mesh, X_WS](const Worker::Control&) -> Worker::Delivery {
    auto bone = std::make_shared<const ScanSurface>(mesh);
    return [this, bone, X_WS] {
      view_->setBone(bone, X_WS, {});
      const QSignalBlocker quiet(brush_);
      brush_->setValue(1000 * kBrushShare * bone->box_S().sizes().maxCoeff());
      view_->setBrushRadius(brush_->value() / 1000);
      marks_.setSurface(bone);
    };
  };
  preparing_.start(work, [this, X_WS](const QString& cause) { view_->setBone(nullptr, X_WS, cause); });
}

void LandmarkEditor::refresh() {
  if (!marks_.hasScan()) return;
  refreshList();
  refreshTools();
  refreshLacking();
  view_->setPatch(marks_.patch());
  view_->setMarks(marks_.shown());
}

void LandmarkEditor::refreshList() {
  const QSignalBlocker quiet(list_);
  const auto& wanted = marks_.wanted();
  if (list_->topLevelItemCount() != static_cast<int>(wanted.size())) {
    list_->clear();
    for (std::size_t i = 0; i < wanted.size(); ++i) list_->addTopLevelItem(new QTreeWidgetItem);
  }
  const WantedMark* current = marks_.current();
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const WantedMark& mark = wanted[i];
    QTreeWidgetItem* item = list_->topLevelItem(static_cast<int>(i));
    const QString made = marks_.made(mark);
    item->setText(0, capital(markName(mark)));
    item->setText(1, !made.isEmpty() ? marks_.madeBriefly(mark) : mark.required ? tr("required") : tr("optional"));
    item->setData(0, kMarkRole, QString::fromStdString(mark.name));
    item->setIcon(0, verdictIcon(marks_.suggested(mark) ? range::Level::Near
                                 : !made.isEmpty()      ? range::Level::Supported
                                 : mark.required        ? range::Level::Near
                                                        : range::Level::NotJudged));
    item->setForeground(1, theme().muted);
    item->setToolTip(0, capital(say(mark.purpose)));
    item->setToolTip(1, made.isEmpty() ? item->text(1) : made);
    if (current == &mark) list_->setCurrentItem(item);
  }
}

void LandmarkEditor::chooseMark() {
  if (const QTreeWidgetItem* item = list_->currentItem())
    marks_.choose(item->data(0, kMarkRole).toString().toStdString());
}

void LandmarkEditor::refreshTools() {
  const WantedMark* mark = marks_.current();
  if (!mark) return;
  purpose_->setText(QString("%1. %2").arg(capital(say(mark->purpose)), howTo(mark->by)));
  const bool brushes = mark->by == MarkBy::Ball || mark->by == MarkBy::Facet;
  brushRow_->setVisible(brushes);
  outline_->setVisible(mark->by == MarkBy::Facet);
  view_->setTool(brushes ? LandmarkView::Tool::Brush : LandmarkView::Tool::Place);
  suggestedRow_->setVisible(!marks_.scan().suggested.empty());
  accept_->setEnabled(marks_.suggested(*mark).has_value());
  takeAway_->setEnabled(marks_.isMade(*mark) || !marks_.patch().empty());
  const bool paired = mark->role || mark->name.ends_with(".L") || mark->name.ends_with(".R");
  mirrorOne_->setVisible(paired);
  mirrorOne_->setEnabled(marks_.isMade(*mark) && marks_.scan().placed);
  const bool midline = bone_.side == anatomy::Side::Midline;
  mirrorAll_->setEnabled(midline && marks_.scan().placed);
}

void LandmarkEditor::refreshLacking() {
  const auto& specimen = document_.specimen();
  const auto records = files::recordsOf(document_.project().scans);
  const auto bone = specimen.findBone(toId(bone_));
  QStringList lines;
  if (!marks_.scan().placed) lines += tr("The bone lies by a guess: its landmarks do not suffice yet.");
  for (std::size_t j = 0; bone && j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    if (!joint.hasFacets() || (joint.proximal != *bone && joint.distal != *bone)) continue;
    const auto lacks = anatomy::missingInputs(specimen, {j}, records);
    const QString id = QString::fromStdString(joint.id);
    if (lacks.empty()) lines += tr("%1 can be assessed.").arg(id);
    for (const auto& reason : lacks) lines += tr("%1: %2").arg(id, say(reason));
  }
  lacking_->setText(lines.join('\n'));
}

}  // namespace zyga::ui
