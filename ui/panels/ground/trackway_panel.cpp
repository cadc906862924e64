#include "ui/panels/ground/trackway_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMimeData>
#include <QSettings>
#include <QSignalBlocker>
#include <QTableView>
#include <QToolButton>

#include "core/files/disk/atomic_file.h"
#include "core/study/ground/trackway_table.h"
#include "ui/commands/project_edits.h"
#include "ui/panels/ground/prints_model.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/ground_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::ui {
namespace {

constexpr char kPrintsDrawnKey[] = "ground/trackwayDrawn";
constexpr char kFolderKey[] = "files/trackwayFolder";
constexpr double kMaxLowered = 0.15;  // of the hip's height: as far as a trunk may come down for feet on prints
constexpr int kRowHeight = 24, kMostPrintRows = 7;

QString tableIn(const QMimeData& data) {
  for (const QUrl& url : data.urls())
    if (url.toLocalFile().endsWith(".csv", Qt::CaseInsensitive)) return url.toLocalFile();
  return {};
}

QLabel* figure(QGridLayout& grid, const char* name, const QString& title) {
  auto* words = mutedLabel(title);
  words->setWordWrap(false);
  auto* label = new QLabel;
  label->setObjectName(name);
  label->setFont(figureFont(label->font()));
  const int row = grid.rowCount();
  grid.addWidget(words, row, 0);
  grid.addWidget(label, row, 1);
  return label;
}

QToolButton* wordButton(const char* name, const QString& words, const QString& tip) {
  auto* button = new QToolButton;
  button->setObjectName(name);
  button->setText(words);
  button->setToolTip(tip);
  button->setFocusPolicy(Qt::TabFocus);
  return button;
}

double hipHeight(const Document& document) {
  const auto hip = document.specimen().findJoint("hip.L");
  if (!hip) return 2;
  const auto& joint = document.specimen()[*hip];
  return (document.placement()[joint.proximal.value] * joint.centreProximal).z();
}

}  // namespace

TrackwayPanel::TrackwayPanel(GroundState& ground, QWidget* parent)
    : QWidget(parent), ground_(ground), model_(new PrintsModel(ground.document(), this)), table_(new QTableView) {
  setAcceptDrops(true);
  table_->setObjectName("prints");
  table_->setAccessibleName(tr("Footprints, distances in cm"));
  table_->setModel(model_);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setDefaultSectionSize(scaledWithText(kRowHeight));
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->horizontalHeader()->setMinimumSectionSize(28);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table_->setFont(figureFont(smallFont(table_->font())));
  table_->setTabKeyNavigation(false);
  auto* heading = new QLabel(tr("Trackway"));
  heading->setProperty("role", "title");
  empty_ = mutedLabel(tr(
      "Drop a table of footprints here (foot, pace_cm, next_pace_cm, stride_cm, length_cm), or type them one by one."));
  empty_->setObjectName("noPrints");
  told_ = mutedLabel();
  told_->setObjectName("trackwayTold");
  told_->hide();
  filled_ = new QWidget;
  auto* filled = new QVBoxLayout(filled_);
  filled->setContentsMargins(0, 0, 0, 0);
  filled->setSpacing(kGap);
  filled->addWidget(table_);
  filled->addLayout(createFigures());
  filled->addLayout(createFitting());
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  layout->addWidget(heading);
  layout->addLayout(createButtons());
  layout->addWidget(told_);
  layout->addWidget(empty_);
  layout->addWidget(filled_);
  connect(model_, &PrintsModel::refused, this, &TrackwayPanel::tell);
  connect(&document(), &Document::changed, this, &TrackwayPanel::refresh);
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] { refreshFigures(); });
  refresh(Change::Everything);
}

bool TrackwayPanel::drawn() const { return drawn_->isChecked(); }

QLayout* TrackwayPanel::createButtons() {
  open_ = wordButton("openTrackway", tr("Open table…"), tr("Read footprints from a CSV table"));
  add_ = wordButton("addPrint", tr("Add print"), tr("A further footprint, with the last one's distances"));
  delete_ = wordButton("removePrint", tr("Remove"), tr("Remove the chosen footprint"));
  clear_ = wordButton("clearTrackway", tr("Clear"), tr("Remove all footprints"));
  connect(open_, &QToolButton::clicked, this, &TrackwayPanel::chooseTable);
  connect(add_, &QToolButton::clicked, this, [this] {
    model_->addPrint();
    table_->setCurrentIndex(model_->index(model_->rowCount() - 1, PrintsModel::kFoot));
  });
  connect(delete_, &QToolButton::clicked, this, &TrackwayPanel::remove);
  connect(clear_, &QToolButton::clicked, this, [this] {
    auto trackway = document().project().trackway;
    trackway.prints.clear();
    changeTrackway(document(), trackway, tr("Clear the trackway"));
  });
  // Two by two, so that they fit the narrowest panel.
  auto* grid = new QGridLayout;
  grid->setSpacing(kGridStep);
  grid->setContentsMargins(-4, 0, 0, 0);
  grid->addWidget(open_, 0, 0);
  grid->addWidget(add_, 0, 1);
  grid->addWidget(delete_, 1, 0);
  grid->addWidget(clear_, 1, 1);
  grid->setColumnStretch(2, 1);
  return grid;
}

QLayout* TrackwayPanel::createFigures() {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  grid->setColumnStretch(1, 1);
  rule_ = calmComboBox();
  rule_->setObjectName("hipRule");
  rule_->setAccessibleName(tr("Hip height from the length of the hind print"));
  for (const auto& rule : study::kHipRules) {
    rule_->addItem(tr("%1 × print").arg(rule.multiplier), rule.multiplier);
    rule_->setItemData(rule_->count() - 1, say(rule.source), Qt::ToolTipRole);
  }
  connect(rule_, &QComboBox::activated, this, &TrackwayPanel::chooseRule);
  auto* ruleTitle = mutedLabel(tr("Hip is"));
  ruleTitle->setBuddy(rule_);
  grid->addWidget(ruleTitle, 0, 0);
  grid->addWidget(rule_, 0, 1);
  hip_ = figure(*grid, "trackHip", tr("Hip height"));
  angulation_ = figure(*grid, "trackAngulation", tr("Pace angulation"));
  gauge_ = figure(*grid, "trackGauge", tr("Gauge"));
  stride_ = figure(*grid, "trackStride", tr("Relative stride"));
  speed_ = figure(*grid, "trackSpeed", tr("Speed"));
  caution_ = mutedLabel(speedCaution());
  caution_->setObjectName("speedCaution");
  grid->addWidget(caution_, grid->rowCount(), 0, 1, 2);
  return grid;
}

QLayout* TrackwayPanel::createFitting() {
  auto* column = new QVBoxLayout;
  column->setSpacing(kGridStep);
  auto* heading = new QLabel(tr("The feet on it"));
  heading->setProperty("role", "title");
  under_ = wordButton("moveUnder", tr("Move trackway to feet"),
                      tr("Move the trackway to where it lies best under the feet"));
  step_ = wordButton("stepOn", tr("Place feet on prints"),
                     tr("Put every foot onto its nearest print; the trunk comes down as far as the legs need"));
  connect(under_, &QToolButton::clicked, this, &TrackwayPanel::moveUnder);
  connect(step_, &QToolButton::clicked, this, &TrackwayPanel::stepOn);
  auto* row = new QHBoxLayout;
  row->setSpacing(kGridStep);
  row->setContentsMargins(-4, 0, 0, 0);
  row->addWidget(under_);
  row->addWidget(step_);
  row->addStretch(1);
  fit_ = new QLabel;
  fit_->setObjectName("trackFit");
  fit_->setWordWrap(true);
  gaps_ = mutedLabel();
  gaps_->setObjectName("trackGaps");
  drawn_ = new QCheckBox(tr("Draw the prints"));
  drawn_->setObjectName("trackwayDrawn");
  drawn_->setChecked(QSettings().value(kPrintsDrawnKey, true).toBool());
  connect(drawn_, &QCheckBox::toggled, this, [this](bool drawn) {
    QSettings().setValue(kPrintsDrawnKey, drawn);
    emit drawnChanged(drawn);
  });
  column->addWidget(heading);
  column->addLayout(row);
  column->addWidget(fit_);
  column->addWidget(gaps_);
  column->addWidget(drawn_);
  return column;
}

void TrackwayPanel::dragEnterEvent(QDragEnterEvent* event) {
  if (document().hasProject() && !tableIn(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void TrackwayPanel::dropEvent(QDropEvent* event) {
  event->acceptProposedAction();
  readTable(tableIn(*event->mimeData()));
}

void TrackwayPanel::chooseTable() {
  auto* dialog = new QFileDialog(this, tr("Open a table of footprints"), QSettings().value(kFolderKey).toString(),
                                 tr("Tables (*.csv)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFile);
  dialog->setOption(QFileDialog::DontUseNativeDialog);
  connect(dialog, &QFileDialog::fileSelected, this, [this, dialog](const QString& file) {
    QSettings().setValue(kFolderKey, dialog->directory().absolutePath());
    readTable(file);
  });
  dialog->open();
}

void TrackwayPanel::readTable(const QString& file) {
  const auto name = QFileInfo(file).fileName().toStdString();
  study::TrackwayReading reading;
  try {
    reading = study::readTrackwayTable(files::readWhole(file.toStdString()), name);
  } catch (const files::FileError& error) {
    return tell(sayFailure(error));
  }
  QStringList words;
  for (const auto& message : reading.messages) {
    const bool fault = message.severity == anatomy::TableMessage::Severity::Error;
    if (fault || reading.usable()) words += say(message);
  }
  if (reading.usable()) {
    auto trackway = document().project().trackway;
    trackway.prints = reading.trackway.prints;
    trackway = study::movedUnder(trackway, study::feetOf(document().specimen(), document().placement()));
    changeTrackway(document(), trackway, tr("Trackway from %1").arg(QFileInfo(file).fileName()));
  } else {
    words.prepend(tr("Nothing was taken from the table:"));
  }
  tell(words.join('\n'));
}

void TrackwayPanel::chooseRule() {
  auto trackway = document().project().trackway;
  trackway.hipMultiplier = rule_->currentData().toDouble();
  changeTrackway(document(), trackway, tr("Hip height from prints"));
}

void TrackwayPanel::moveUnder() {
  const auto feet = study::feetOf(document().specimen(), document().placement());
  changeTrackway(document(), study::movedUnder(document().project().trackway, feet),
                 tr("Move the trackway to the feet"));
}

void TrackwayPanel::stepOn() {
  const auto stepped =
      study::stepOnto(document().scenario(), ground_.laid().prints, kMaxLowered * hipHeight(document()));
  document().changePose(stepped.feet.pose, tr("Place the feet on the prints"));
  QStringList words;
  if (stepped.lowered > 0) words += tr("The trunk came down by %1.").arg(millimetres(stepped.lowered, 0));
  if (!stepped.feet.hold())
    words +=
        tr("Not every foot reaches its print; the worst is %1 away.").arg(millimetres(stepped.feet.worstMiss(), 0));
  tell(words.join(' '));
}

void TrackwayPanel::remove() { model_->removePrint(table_->currentIndex().row()); }

void TrackwayPanel::tell(const QString& words) {
  told_->setText(words);
  told_->setVisible(!words.isEmpty());
}

void TrackwayPanel::refresh(Changes what) {
  const bool open = document().hasProject();
  if (what & Change::Specimen) tell({});
  if (what & Change::Ground) {
    const int rows = model_->rowCount();
    for (QToolButton* button : {open_, add_}) button->setEnabled(open);
    for (QToolButton* button : {delete_, clear_}) button->setEnabled(open && rows > 0);
    empty_->setVisible(rows == 0);
    filled_->setVisible(rows > 0);
    table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() +
                           scaledWithText(kRowHeight) * std::min(rows, kMostPrintRows) + 4);
    if (open) refreshFigures();
  }
  if (open && (what & (Changes(Change::Ground) | Change::Pose | Change::Assumptions))) refreshFit();
}

void TrackwayPanel::refreshFigures() {
  if (!document().hasProject()) return;
  const auto& trackway = document().project().trackway;
  const auto summary = study::summarise(trackway);
  {
    const QSignalBlocker quiet(rule_);
    const int known = rule_->findData(trackway.hipMultiplier);
    rule_->setCurrentIndex(known);
    rule_->setToolTip(say(study::hipSource(trackway.hipMultiplier)));
  }
  hip_->setText(metresRange(summary.hipHeight));
  angulation_->setText(angleRange(summary.paceAngulation));
  gauge_->setText(metresRange(summary.gauge));
  stride_->setText(plainRange(summary.relativeStride, 2));
  speed_->setText(speedRange(summary.speed));
}

void TrackwayPanel::refreshFit() {
  QStringList lines;
  const auto& laid = ground_.laid();
  for (const auto& fit : ground_.fits()) lines += footFitWords(fit, laid.prints) + '.';
  fit_->setText(lines.join('\n'));
  QStringList gaps;
  for (const auto& gap : laid.gaps) gaps += say(gap);
  gaps_->setText(gaps.join('\n'));
  gaps_->setVisible(!gaps.isEmpty());
  under_->setEnabled(!laid.prints.empty());
  step_->setEnabled(!laid.prints.empty());
}

}  // namespace zyga::ui
