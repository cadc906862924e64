#include "ui/scans/landmark_editor.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QToolButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "core/range/neutral.h"
#include "ui/commands/scan_edits.h"
#include "ui/parts/panel_parts.h"
#include "ui/scans/scan_choices.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/limit_words.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::ui {
namespace {

using anatomy::MarkBy;
using anatomy::WantedMark;
using picture::StandardView;

constexpr Qt::Key kAcceptKey = Qt::Key_A;
constexpr int kLeastSide = 392, kMostSide = 620;  // px
constexpr double kSideShare = 0.27;               // of the window's width
constexpr double kBrushShare = 0.035;             // of the bone's size, at first
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
  createKeys();
  resize(1160, 740);
}

void LandmarkEditor::resizeEvent(QResizeEvent* event) {
  side_->setFixedWidth(std::clamp(static_cast<int>(kSideShare * width()), kLeastSide, kMostSide));
  QDialog::resizeEvent(event);
}

/// Keys of the editor that mean nothing in a field of numbers work there too: letters, undo and redo.
bool LandmarkEditor::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::ShortcutOverride) return QDialog::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  const bool letter = key->key() >= Qt::Key_A && key->key() <= Qt::Key_Z && !(key->modifiers() & Qt::ControlModifier);
  const bool step = key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo) ||
                    (key->key() == Qt::Key_Z && key->modifiers() & Qt::ControlModifier);
  if (!letter && !step) return QDialog::eventFilter(watched, event);
  event->ignore();
  return true;
}

QWidget* LandmarkEditor::createTop() {
  auto* top = new QWidget;
  auto* row = new QHBoxLayout(top);
  row->setContentsMargins(kGap, kGridStep, kGap, kGridStep);
  row->setSpacing(kGridStep);
  bones_->setObjectName("landmarkBone");
  bones_->setAccessibleName(tr("Bone to be marked"));
  bones_->setMinimumWidth(300);
  bones_->setMaximumWidth(460);
  bones_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  bones_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  connect(bones_, &QComboBox::activated, this,
          [this] { showBone(anatomy::parseBoneId(bones_->currentData().toString().toStdString()).value()); });
  row->addWidget(bones_, 1);
  for (const bool next : {false, true}) {
    QToolButton* step = iconButton(next ? "next" : "previous", next ? tr("Next bone (N)") : tr("Previous bone (P)"));
    step->setObjectName(next ? "nextBone" : "previousBone");
    connect(step, &QToolButton::clicked, this, [this, next] { stepBone(next ? 1 : -1); });
    row->addWidget(step);
  }
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
    row->addWidget(step);
  }
  auto* keys = new QPushButton(tr("Keys"));
  keys->setObjectName("landmarkKeysButton");
  keys->setAutoDefault(false);
  keys->setToolTip(tr("What the keys do here (?)"));
  connect(keys, &QPushButton::clicked, this, &LandmarkEditor::showKeys);
  row->addWidget(keys);
  return top;
}

QWidget* LandmarkEditor::createSide() {
  auto* side = new QWidget;
  side->setProperty("role", "panel");
  side->setAttribute(Qt::WA_StyledBackground);
  side_ = side;
  side->setFixedWidth(kLeastSide);
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
  open_ = mutedLabel();
  open_->setObjectName("landmarkOpen");
  auto* layout = new QVBoxLayout(side);
  setPanelMargins(*layout);
  createSigned();
  layout->insertSpacing(0, kGap);
  layout->addWidget(missing_);
  layout->addWidget(open_);
  layout->addWidget(list_, 1);
  layout->addWidget(doubt_);
  layout->addWidget(showDoubt_, 0, Qt::AlignLeft);
  layout->addWidget(purpose_);
  layout->addWidget(createTools());
  layout->addWidget(told_);
  layout->addWidget(title);
  layout->addWidget(lackingScroll);
  layout->addWidget(createActions());
  return side;
}

void LandmarkEditor::createSigned() {
  for (QLabel** label : {&missing_, &doubt_}) {
    *label = new QLabel;
    (*label)->setWordWrap(true);
    (*label)->setTextFormat(Qt::RichText);
    (*label)->hide();
  }
  missing_->setObjectName("scanMissing");
  doubt_->setObjectName("markDoubt");
  showDoubt_ = button(tr("Show it"), "showDoubt");
  showDoubt_->setToolTip(tr("Goes to the next mark that is in doubt and shows it large (D)"));
  showDoubt_->hide();
  connect(showDoubt_, &QPushButton::clicked, this, &LandmarkEditor::showDoubt);
}

/// Words behind a warning sign.
QString LandmarkEditor::warned(const QString& words) {
  return QString("<span style='color:%1'>\u25B2</span>\u2002%2")
      .arg(theme().beyond.name(), words.toHtmlEscaped().replace('\n', "<br>"));
}

QWidget* LandmarkEditor::createTools() {
  auto* tools = new QWidget;
  brush_ = new UnitSpinBox(QStringLiteral("mm"));
  brush_->setObjectName("brushSize");
  brush_->setAccessibleName(tr("Radius of the brush"));
  brush_->setRange(0.1, 500);
  for (QObject* inner : brush_->children()) inner->installEventFilter(this);
  brush_->installEventFilter(this);
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
    bones_->addItem(bonesEntry(kept.scan), QString::fromStdString(toId(kept.scan.bone)));
  bones_->setCurrentIndex(bones_->findData(QString::fromStdString(toId(bone_))));
}

/// "C5 (cervical vertebra 5): 3 open, 2 suggested"
QString LandmarkEditor::bonesEntry(const anatomy::Scan& scan) const {
  const auto open = marks_.openMarks(scan);
  const QString name = boneNameAndId(scan.bone);
  if (!open.any()) return name;
  if (open.suggested == 0) return tr("%1: %2 open").arg(name).arg(open.lacking);
  if (open.lacking == 0) return tr("%1: %2 suggested").arg(name).arg(open.suggested);
  return tr("%1: %2 open, %3 suggested").arg(name).arg(open.lacking).arg(open.suggested);
}

void LandmarkEditor::showBone(const anatomy::BoneName& bone) {
  const files::ProjectScan* scan = scanOf(document_, bone);
  if (!scan) return;
  bone_ = bone;
  surface_.reset();
  sides_.reset();
  turnOver_ = false;
  setWindowTitle(tr("Landmarks: %1").arg(boneNameAndId(bone)));
  told_->clear();
  marks_.setBone(bone, nullptr);
  fillBones();
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
      surface_ = bone;
      marks_.setSurface(bone);
    };
  };
  preparing_.start(work, [this, X_WS](const QString& cause) { view_->setBone(nullptr, X_WS, cause); });
}

void LandmarkEditor::refresh() {
  if (!marks_.hasScan()) return;
  refreshList();
  refreshDoubts();
  refreshMissing();
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
    const QStringList doubts = doubtsSaid(marks_.doubtsOf(mark));
    item->setIcon(0, verdictIcon(!doubts.isEmpty()        ? range::Level::Beyond
                                 : marks_.suggested(mark) ? range::Level::Near
                                 : !made.isEmpty()        ? range::Level::Supported
                                 : mark.required          ? range::Level::Near
                                                          : range::Level::NotJudged));
    if (!doubts.isEmpty()) item->setText(1, tr("in doubt"));
    item->setForeground(1, doubts.isEmpty() ? theme().muted : theme().beyond);
    item->setToolTip(0, doubts.isEmpty() ? capital(say(mark.purpose)) : doubts.join('\n'));
    item->setToolTip(1, !doubts.isEmpty() ? doubts.join('\n') : made.isEmpty() ? item->text(1) : made);
    if (current == &mark) list_->setCurrentItem(item);
  }
}

/// Of the current mark why it is doubted, else how many are.
void LandmarkEditor::refreshDoubts() {
  const WantedMark* mark = marks_.current();
  const auto now = mark ? marks_.doubtsOf(*mark) : std::vector<anatomy::MarkDoubt>{};
  std::set<std::string> doubted;
  for (const auto& doubt : marks_.doubts()) doubted.insert(doubt.mark);
  doubt_->setVisible(!doubted.empty());
  showDoubt_->setVisible(!doubted.empty());
  if (doubted.empty()) return;
  QStringList lines;
  for (const QString& line : doubtsSaid(now)) lines << line + '.';
  if (lines.isEmpty())
    lines << (doubted.size() == 1 ? tr("One mark can hardly be right.")
                                  : tr("%1 marks can hardly be right.").arg(doubted.size()));
  doubt_->setText(warned(lines.join('\n')));
}

void LandmarkEditor::refreshMissing() {
  const files::ProjectScan* kept = scanOf(document_, bone_);
  if (!kept) return;
  const Eigen::Affine3d lies = boneFromScan(kept->scan);
  if (surface_ && (!sides_ || !lies.isApprox(sidesOf_, 1e-6))) {
    // The coarsest level tells as much, and at once.
    sides_ = solid::oneSidedness(kept->scan, surface_->levels().levels.back());
    sidesOf_ = lies;
  }
  const QStringList missing = missingSaid(kept->borders, sides_);
  missing_->setVisible(!missing.isEmpty());
  if (!missing.isEmpty()) missing_->setText(warned(tr("Incomplete scan: %1.").arg(missing.join("; "))));
}

void LandmarkEditor::showDoubt() {
  const WantedMark* current = marks_.current();
  const WantedMark* mark = marks_.nextDoubted();
  if (!mark) return;
  // The one that is read about is shown first, then the others in turn.
  if (sender() == showDoubt_ && current && !marks_.doubtsOf(*current).empty() && shownDoubt_ != current->name)
    mark = current;
  shownDoubt_ = mark->name;
  const std::string name = mark->name;
  marks_.choose(name);
  view_->setPlace(boneFromScan(marks_.scan()));
  if (const auto p_S = placeOf(marks_.scan(), *marks_.current())) view_->showPlace(*p_S);
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
  const auto open = marks_.openMarks(marks_.scan());
  open_->setText(
      open.lacking == 0 && open.suggested == 0
          ? tr("Every required mark is made.")
          : tr("Required and open: %1; suggested, to be looked at: %2.").arg(open.lacking).arg(open.suggested));
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
    const QString suspects = suspectsSaid(anatomy::suspectsAtEnd(marks_.doubts(), specimen.caudalBone({j}) == *bone));
    const QString articulation =
        articulationWords(specimen, {j}, range::articulationNote(specimen, {j}, document_.articulation()[{j}]));
    for (const auto& reason : lacks) lines += tr("%1: %2").arg(id, say(reason)) + suspects;
    if (!lacks.empty()) continue;
    lines += (articulation.isEmpty() ? tr("%1 can be assessed").arg(id) : articulation) + suspects + '.';
  }
  lacking_->setText(lines.join('\n'));
}

}  // namespace zyga::ui
