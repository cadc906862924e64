#include "ui/scans/bring_in_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/marks/scan_guess.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/files/disk/atomic_file.h"
#include "ui/commands/scan_edits.h"
#include "ui/parts/panel_parts.h"
#include "ui/scans/scan_choices.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/scan_size_words.h"
#include "ui/words/scan_words.h"
#include "ui/words/table_words.h"

namespace zyga::ui {
namespace {

using anatomy::ScanUnit;
using anatomy::ScanUp;

QTableWidgetItem* cell(const QString& text) {
  auto* item = new QTableWidgetItem(text);
  item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
  item->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  return item;
}

/// A box in a table's cell, with room around it.
QWidget* framed(QComboBox* box) {
  auto* frame = new QWidget;
  auto* layout = new QVBoxLayout(frame);
  layout->setContentsMargins(kGridStep, kGridStep, kGridStep, kGridStep);
  layout->addStretch(1);
  layout->addWidget(box);
  layout->addStretch(1);
  return frame;
}

QString fileName(const QString& path) { return QFileInfo(path).fileName(); }

void addUnits(QComboBox& box) {
  for (const ScanUnit unit : {ScanUnit::Millimetre, ScanUnit::Centimetre, ScanUnit::Metre})
    box.addItem(unitText(unit), static_cast<int>(unit));
}

void showUnit(QComboBox& box, ScanUnit unit) { box.setCurrentIndex(box.findData(static_cast<int>(unit))); }

}  // namespace

BringInDialog::BringInDialog(Document& document, QWidget* parent)
    : QDialog(parent),
      document_(document),
      sculpted_(anatomy::buildSpecimen(document.project().table)),
      table_(new QTableWidget) {
  setObjectName("bringInDialog");
  setWindowTitle(tr("Import bone scans"));
  setAcceptDrops(true);
  auto* title = new QLabel(tr("Which bones are these?"));
  title->setFont(titleFont(font()));
  createTable();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kGap);
  layout->addWidget(title);
  layout->addWidget(
      mutedLabel(tr("Bone, unit and upward axis are guesses from name and size: set right what is wrong. "
                    "Each bone takes the place of the sculpted one; your files stay as they are.")));
  layout->addWidget(table_, 1);
  unitTold_ = mutedLabel();
  unitTold_->setObjectName("bringInUnit");
  layout->addWidget(unitTold_);
  layout->addWidget(createSizeQuestion());
  layout->addWidget(createFoot());
  connect(&queue_, &ScanQueue::started, this, [this](int ticket) {
    if (Row* row = find(ticket)) row->state = State::Reading;
    refresh();
  });
  connect(&queue_, &ScanQueue::progress, this, [this](int ticket, int percent) {
    if (Row* row = find(ticket)) row->percent = percent;
    refresh();
  });
  connect(&queue_, &ScanQueue::read, this, &BringInDialog::takeRead);
  connect(&queue_, &ScanQueue::failed, this, [this](int ticket, const QString& cause) {
    if (Row* row = find(ticket)) {
      row->state = State::Failed;
      row->trouble = cause;
    }
    refresh();
  });
  connect(&queue_, &ScanQueue::rested, this, &BringInDialog::refresh);
  resize(940, 460);
  refresh();
}

void BringInDialog::createTable() {
  table_->setObjectName("bringInTable");
  table_->setColumnCount(kColumnCount);
  table_->setHorizontalHeaderLabels({tr("File"), tr("Bone"), tr("Unit"), tr("Upward"), tr("Result")});
  table_->setAccessibleName(tr("Files to import"));
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setShowGrid(false);
  table_->setWordWrap(true);
  table_->setTabKeyNavigation(false);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setMinimumSectionSize(40);
  table_->installEventFilter(this);
  QHeaderView& header = *table_->horizontalHeader();
  header.setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  header.setHighlightSections(false);
  header.setSectionResizeMode(kFile, QHeaderView::Fixed);
  header.resizeSection(kFile, 190);
  header.setSectionResizeMode(kBone, QHeaderView::Fixed);
  header.resizeSection(kBone, 224);
  for (const int column : {kUnit, kUp}) {
    header.setSectionResizeMode(column, QHeaderView::Fixed);
    header.resizeSection(column, 88);
  }
  header.setSectionResizeMode(kOutcome, QHeaderView::Stretch);
  connect(table_, &QTableWidget::itemSelectionChanged, this,
          [this] { leaveOut_->setEnabled(table_->selectionModel()->hasSelection()); });
}

QWidget* BringInDialog::createFoot() {
  summary_ = mutedLabel();
  summary_->setObjectName("bringInSummary");
  progress_ = new QProgressBar;
  progress_->setTextVisible(false);
  progress_->setFixedWidth(160);
  progress_->setAccessibleName(tr("Files read"));
  auto* told = new QHBoxLayout;
  told->setSpacing(kWideGap);
  told->addWidget(summary_, 1);
  told->addWidget(progress_, 0, Qt::AlignVCenter);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  put_ = buttons->addButton(tr("Add to skeleton"), QDialogButtonBox::AcceptRole);
  put_->setObjectName("putInPlace");
  put_->setDefault(true);
  auto* more = buttons->addButton(tr("Add files…"), QDialogButtonBox::ActionRole);
  auto* marks = buttons->addButton(tr("Landmarks from a table…"), QDialogButtonBox::ActionRole);
  leaveOut_ = buttons->addButton(tr("Remove"), QDialogButtonBox::ActionRole);
  leaveOut_->setToolTip(tr("Takes the chosen files out of the list, also while they are being read  (Del)"));
  leaveOut_->setEnabled(false);
  for (QPushButton* button : {more, marks, leaveOut_}) button->setAutoDefault(false);
  connect(more, &QPushButton::clicked, this, &BringInDialog::filesAsked);
  connect(marks, &QPushButton::clicked, this, &BringInDialog::landmarksAsked);
  connect(leaveOut_, &QPushButton::clicked, this, &BringInDialog::removeChosen);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* foot = new QWidget;
  auto* layout = new QVBoxLayout(foot);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  layout->addLayout(told);
  layout->addWidget(buttons);
  return foot;
}

QWidget* BringInDialog::createSizeQuestion() {
  sizeQuestion_ = new QWidget;
  sizeQuestion_->setObjectName("sizeQuestion");
  sizeTold_ = new QLabel;
  sizeTold_->setObjectName("sizeTold");
  sizeTold_->setWordWrap(true);
  keepSize_ = new QRadioButton(tr("&Keep the animal's size"));
  keepSize_->setToolTip(tr("The bones are added with the size they have; the animal stays as it is"));
  fitAnimal_ = new QRadioButton(tr("&Fit the animal to these bones"));
  fitAnimal_->setToolTip(
      tr("The bones keep their size and what is measured on them; every other length of the animal is scaled"));
  otherUnit_ = new QRadioButton(tr("Another &unit:"));
  otherUnit_->setToolTip(tr("All files of the list are in the unit that you choose"));
  unitOfAll_ = calmComboBox();
  unitOfAll_->setObjectName("unitOfAll");
  unitOfAll_->setAccessibleName(tr("Unit of all files"));
  addUnits(*unitOfAll_);
  auto* choices = new QHBoxLayout;
  choices->setSpacing(kWideGap);
  const std::pair<QRadioButton*, const char*> buttons[] = {
      {keepSize_, "keepSize"}, {fitAnimal_, "fitAnimal"}, {otherUnit_, "otherUnit"}};
  for (const auto& [button, name] : buttons) {
    button->setObjectName(name);
    choices->addWidget(button);
    connect(button, &QRadioButton::toggled, this, [this](bool on) {
      if (!on) return;
      askedFactor_ = set_.factor;
      showUnit(*unitOfAll_, set_.unit);
      refresh();
    });
  }
  choices->addWidget(unitOfAll_);
  choices->addStretch(1);
  connect(unitOfAll_, &QComboBox::activated, this,
          [this] { takeUnitForAll(static_cast<ScanUnit>(unitOfAll_->currentData().toInt())); });
  auto* layout = new QVBoxLayout(sizeQuestion_);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGridStep);
  layout->addWidget(sizeTold_);
  layout->addLayout(choices);
  return sizeQuestion_;
}

void BringInDialog::addFiles(const QStringList& files) {
  const std::size_t before = rows_.size();
  for (const QString& file : files) {
    const bool there = std::any_of(rows_.begin(), rows_.end(), [&](const Row& row) { return row.path == file; });
    if (!there) addRow(file);
  }
  guess();
  for (std::size_t i = before; i < rows_.size(); ++i)
    queue_.add(rows_[i].ticket, rows_[i].path.toStdString(), expectedExtent(rows_[i].bone));
  refresh();
}

void BringInDialog::addRow(const QString& path) {
  Row row;
  row.ticket = nextTicket_++;
  row.path = path;
  const int at = table_->rowCount();
  table_->insertRow(at);
  auto* name = cell(fileName(path));
  name->setToolTip(path);
  table_->setItem(at, kFile, name);
  table_->setItem(at, kOutcome, cell({}));
  fillBoxes(row);
  table_->setCellWidget(at, kBone, framed(row.boneBox));
  table_->setCellWidget(at, kUnit, framed(row.unitBox));
  table_->setCellWidget(at, kUp, framed(row.upBox));
  rows_.push_back(row);
}

void BringInDialog::fillBoxes(Row& row) {
  const QString name = fileName(row.path);
  row.boneBox = boneChoice(sculpted_);
  row.boneBox->setObjectName("bone." + name);
  row.boneBox->setAccessibleName(tr("Bone in %1").arg(name));
  row.unitBox = calmComboBox();
  row.unitBox->setObjectName("unit." + name);
  row.unitBox->setAccessibleName(tr("Unit of %1").arg(name));
  addUnits(*row.unitBox);
  row.upBox = calmComboBox();
  row.upBox->setObjectName("up." + name);
  row.upBox->setAccessibleName(tr("Upward axis of %1").arg(name));
  row.upBox->addItem(tr("Z"), static_cast<int>(ScanUp::Z));
  row.upBox->addItem(tr("Y"), static_cast<int>(ScanUp::Y));
  const int ticket = row.ticket;
  connect(row.boneBox, &QComboBox::currentIndexChanged, this, [this, ticket] {
    Row& changed = *find(ticket);
    changed.bone = chosenBone(*changed.boneBox);
    changed.doubts.clear();
    settleUnits();
    refresh();
  });
  connect(row.unitBox, &QComboBox::activated, this, [this, ticket] {
    Row& changed = *find(ticket);
    changed.unit = static_cast<ScanUnit>(changed.unitBox->currentData().toInt());
    changed.unitChosen = true;
    settleUnits();
    refresh();
  });
  connect(row.upBox, &QComboBox::activated, this, [this, ticket] {
    Row& changed = *find(ticket);
    changed.up = static_cast<ScanUp>(changed.upBox->currentData().toInt());
    changed.upChosen = true;
    refresh();
  });
}

/// Names are guessed from all files together, but nothing that was guessed or chosen before changes.
void BringInDialog::guess() {
  std::vector<std::string> names;
  for (const Row& row : rows_) names.push_back(row.path.toStdString());
  const auto guesses = anatomy::guessBones(names, sculpted_.counts);
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    Row& row = rows_[i];
    if (row.state != State::Waiting || row.bone || !guesses[i]) continue;
    row.doubts = guesses[i]->doubts;
    const QSignalBlocker quiet(*row.boneBox);
    chooseBone(*row.boneBox, guesses[i]->name);
    row.bone = chosenBone(*row.boneBox);
  }
}

void BringInDialog::removeChosen() {
  std::vector<int> chosen;
  for (const QModelIndex& index : table_->selectionModel()->selectedRows()) chosen.push_back(index.row());
  std::sort(chosen.rbegin(), chosen.rend());
  for (const int at : chosen) {
    queue_.drop(rows_[static_cast<std::size_t>(at)].ticket);
    rows_.erase(rows_.begin() + at);
    table_->removeRow(at);
  }
  settleUnits();
  refresh();
}

BringInDialog::Row* BringInDialog::find(int ticket) {
  const auto found =
      std::find_if(rows_.begin(), rows_.end(), [ticket](const Row& row) { return row.ticket == ticket; });
  return found == rows_.end() ? nullptr : &*found;
}

double BringInDialog::expectedExtent(const std::optional<anatomy::BoneName>& bone) const {
  const auto index = bone ? sculpted_.findBone(toId(*bone)) : std::nullopt;
  return index ? anatomy::extentOf(sculpted_[*index]) : anatomy::kUsualExtent;
}

void BringInDialog::takeRead(int ticket, const std::shared_ptr<const files::CleanScan>& scan) {
  Row* row = find(ticket);
  if (!row) return;
  row->state = State::Read;
  row->scan = scan;
  row->missing = scan->flaws.closed() ? QStringList() : missingSaid(solid::openBorders(scan->mesh), {});
  if (!row->upChosen) row->up = scan->up;
  row->upBox->setCurrentIndex(row->upBox->findData(static_cast<int>(row->up)));
  settleUnits();
  refresh();
}

void BringInDialog::settleUnits() {
  std::vector<anatomy::ScanExtents> named, nameless, taken;
  bool chosen = false;
  for (const Row& row : rows_) {
    if (!row.scan) continue;
    chosen |= row.unitChosen;
    if (row.unitChosen || row.scan->unitFixed) continue;
    (row.bone ? named : nameless).push_back({row.scan->extent, expectedExtent(row.bone)});
  }
  const bool guesses = !named.empty() || !nameless.empty();
  const anatomy::SetUnitGuess guess = anatomy::guessUnitOfSet(named.empty() ? nameless : named);
  std::vector<Row*> sized;
  for (Row& row : rows_) {
    row.size = 0;
    if (!row.scan) continue;
    if (!row.unitChosen) row.unit = row.scan->unitFixed ? row.scan->unitGuess.unit : guess.unit;
    row.doubtsUnit = !row.unitChosen && !row.scan->unitFixed && !guess.sure;
    showUnit(*row.unitBox, row.unit);
    if (!row.bone) continue;
    sized.push_back(&row);
    taken.push_back({row.scan->extent * metresOf(row.unit), expectedExtent(row.bone)});
  }
  const std::vector<double> sizes = anatomy::sizesAmong(taken);
  for (std::size_t i = 0; i < sized.size(); ++i) sized[i]->size = sizes[i];
  const ScanUnit first = sized.empty() ? guess.unit : sized.front()->unit;
  const bool alike = std::all_of(sized.begin(), sized.end(), [first](const Row* row) { return row->unit == first; });
  set_ = {first, guess.sure, anatomy::sizeFactor(taken, ScanUnit::Metre), taken.size()};
  toldUnit_ = guesses && (chosen || !alike) ? guess : set_;
  if (!guesses && !alike) toldUnit_ = {};
  setBy_ = guesses ? files::UnitBy::Size : chosen ? files::UnitBy::Person : files::UnitBy::Format;
}

void BringInDialog::takeUnitForAll(ScanUnit unit) {
  otherUnit_->setChecked(true);
  for (Row& row : rows_) {
    row.unit = unit;
    row.unitChosen = true;
    showUnit(*row.unitBox, unit);
  }
  showUnit(*unitOfAll_, unit);
  settleUnits();
  refresh();
}

bool BringInDialog::sizeAnswered() const {
  return !anatomy::isTenfold(set_.factor) || keepSize_->isChecked() || fitAnimal_->isChecked();
}

std::optional<double> BringInDialog::fitFactor() const {
  return anatomy::isTenfold(set_.factor) && fitAnimal_->isChecked() ? std::optional(set_.factor) : std::nullopt;
}

void BringInDialog::askSize(bool all) {
  const QString told = unitOfSetSaid(toldUnit_, setBy_);
  unitTold_->setText(told.isEmpty() ? told : capital(told) + '.');
  unitTold_->setVisible(!told.isEmpty());
  const bool ask = anatomy::isTenfold(set_.factor);
  // An answer to another question is none.
  if (!ask || (askedFactor_ > 0 && anatomy::isTenfold(set_.factor / askedFactor_))) {
    askedFactor_ = 0;
    for (QRadioButton* answer : {keepSize_, fitAnimal_, otherUnit_}) {
      if (ask && answer == otherUnit_) continue;
      answer->setAutoExclusive(false);
      answer->setChecked(false);
      answer->setAutoExclusive(true);
    }
  }
  if (!otherUnit_->isChecked()) showUnit(*unitOfAll_, set_.unit);
  sizeQuestion_->setVisible(ask && all);
  if (ask) sizeTold_->setText(capital(sizeOfSetSaid(set_.factor)) + ". " + tr("Which is right?"));
}

QString BringInDialog::obstacle(const Row& row) const {
  if (!row.bone) return tr("Its name does not tell which bone it is: choose one.");
  for (const Row& other : rows_)
    if (&other != &row && other.state != State::Failed && other.bone == row.bone)
      return tr("%1 is chosen for the same bone.").arg(fileName(other.path));
  return {};
}

QString BringInDialog::outcome(const Row& row) const {
  switch (row.state) {
    case State::Waiting:
      return tr("Waiting to be read");
    case State::Reading:
      return tr("Reading, %1").arg(percent(row.percent / 100.0));
    case State::Failed:
      return tr("Left out: %1").arg(row.trouble);
    case State::Read:
      break;
  }
  if (const QString hindered = obstacle(row); !hindered.isEmpty()) return hindered;
  QStringList said{sizeInWords(row.scan->mesh, metresOf(row.unit))};
  if (anatomy::isTenfold(row.size)) said += oddSizeSaid(row.size);
  if (!row.missing.isEmpty()) said += tr("incomplete scan: %1").arg(row.missing.join("; "));
  if (row.doubtsUnit) said += tr("the unit is not sure");
  for (const auto& doubt : row.doubts) said += say(doubt);
  if (scanOf(document_, *row.bone)) said += tr("takes the place of the scan that is there");
  if (const auto marks = landmarks_.points.find(*row.bone); marks != landmarks_.points.end())
    said += tr("landmarks from the table: %1").arg(marks->second.size());
  said += repairsSaid(*row.scan, metresOf(row.unit));
  said += flawsSaid(row.scan->flaws, metresOf(row.unit));
  return said.join("; ");
}

void BringInDialog::refresh() {
  int over = 0, fit = 0;
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const Row& row = rows_[i];
    const int at = static_cast<int>(i);
    over += row.state == State::Read || row.state == State::Failed;
    fit += ready(row);
    QTableWidgetItem* told = table_->item(at, kOutcome);
    const QString words = outcome(row);
    if (told->text() == words) continue;
    told->setText(words);
    told->setToolTip(words);
    const bool bad = row.state == State::Failed || (row.state == State::Read && !ready(row));
    const bool odd = row.state == State::Read && anatomy::isTenfold(row.size);
    told->setForeground(bad || odd ? theme().text : theme().muted);
    const bool incomplete = row.state == State::Read && !row.missing.isEmpty();
    told->setIcon(row.state == State::Failed || (incomplete && !bad) ? verdictIcon(range::Level::Beyond)
                  : bad || odd                                       ? verdictIcon(range::Level::Near)
                                                                     : QIcon());
    for (QComboBox* box : {row.boneBox, row.unitBox, row.upBox}) box->setEnabled(row.state != State::Failed);
    table_->resizeRowToContents(at);
  }
  const int all = static_cast<int>(rows_.size());
  progress_->setVisible(over < all);
  progress_->setRange(0, std::max(1, all));
  progress_->setValue(over);
  askSize(over == all && fit > 0);
  put_->setEnabled(over == all && fit > 0 && sizeAnswered());
  if (all == 0)
    summary_->setText(tr("Drop mesh files here, or add them: PLY, OBJ, STL, glTF, COLLADA and others."));
  else if (over < all)
    summary_->setText(tr("Read %1 of %2. Cancel stops it, and nothing has changed.").arg(over).arg(all));
  else if (fit > 0 && !sizeAnswered())
    summary_->setText(tr("Say which size is right; then they can be added."));
  else if (fit < all)
    summary_->setText(tr("%1 of %2 can be added to the skeleton; the others are left out.").arg(fit).arg(all));
  else
    summary_->setText(all == 1 ? tr("It can be added to the skeleton.")
                               : tr("All %1 can be added to the skeleton.").arg(all));
  if (const auto factor = fitFactor(); factor && over == all && fit > 0)
    summary_->setText(summary_->text() + ' ' +
                      tr("The animal becomes %1 times as large as it is.").arg(sizeFactorText(*factor)));
}

QString BringInDialog::takeLandmarks(const QString& file) {
  try {
    const auto reading = anatomy::readLandmarkTable(files::readWhole(file.toStdString()), file.toStdString());
    if (!reading.usable()) return say(reading.messages);
    for (const auto& [bone, points] : reading.table.points) landmarks_.points[bone] = points;
  } catch (const std::exception& error) {
    return sayFailure(error);
  }
  refresh();
  return {};
}

std::vector<files::ProjectScan> BringInDialog::scans() const {
  std::vector<files::ProjectScan> out;
  for (const Row& row : rows_) {
    if (!ready(row)) continue;
    const anatomy::Bone& bone = sculpted_[*sculpted_.findBone(toId(*row.bone))];
    files::CleanScan clean = *row.scan;
    clean.up = row.up;
    auto scan = files::projectScan(clean, bone, row.unit, row.path.toStdString());
    if (const auto marks = landmarks_.points.find(*row.bone); marks != landmarks_.points.end()) {
      for (const auto& [name, p] : marks->second) setLandmark(scan.scan, bone, name, p);
    }
    out.push_back(std::move(scan));
  }
  return out;
}

void BringInDialog::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void BringInDialog::dropEvent(QDropEvent* event) {
  QStringList files;
  for (const QUrl& url : event->mimeData()->urls())
    if (url.isLocalFile()) files += url.toLocalFile();
  event->acceptProposedAction();
  addFiles(files);
}

bool BringInDialog::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
    removeChosen();
    return true;
  }
  return QDialog::eventFilter(watched, event);
}

}  // namespace zyga::ui
