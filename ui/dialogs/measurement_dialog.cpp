#include "ui/dialogs/measurement_dialog.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScreen>
#include <QSignalBlocker>
#include <QSortFilterProxyModel>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/plan_table.h"
#include "core/anatomy/tables/blank_table.h"
#include "ui/commands/table_edits.h"
#include "ui/dialogs/measurement_model.h"
#include "ui/dialogs/measurement_view.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::ui {

/// Rows of one part of the animal whose bone's name or id holds what is sought.
class MeasurementFilter : public QSortFilterProxyModel {
 public:
  MeasurementFilter(MeasurementModel& model, QObject* parent) : QSortFilterProxyModel(parent), model_(model) {
    setSourceModel(&model);
  }
  void show(std::optional<anatomy::Region> part, const QString& words) {
    part_ = part;
    words_ = words.trimmed();
    invalidateFilter();
  }

 protected:
  bool filterAcceptsRow(int row, const QModelIndex&) const override {
    const anatomy::BoneName& bone = model_.boneAt(row);
    if (part_ && anatomy::regionOf(bone) != *part_) return false;
    return words_.isEmpty() || boneNameAndId(bone).contains(words_, Qt::CaseInsensitive);
  }

 private:
  MeasurementModel& model_;
  std::optional<anatomy::Region> part_;
  QString words_;
};

namespace {

using anatomy::Measure;
using anatomy::PlanTable;
using anatomy::RegionCounts;

/// A region of the column: how many vertebrae it has, and what the table calls its measured total.
struct ColumnRegion {
  anatomy::BoneKind kind;
  int RegionCounts::*count;
  anatomy::CountBounds PlanTable::*bounds;
  const char* total;
};
constexpr std::array<ColumnRegion, 5> kColumnRegions{
    {{anatomy::BoneKind::Cervical, &RegionCounts::cervical, &PlanTable::cervicals, "neck"},
     {anatomy::BoneKind::Dorsal, &RegionCounts::dorsal, &PlanTable::dorsals, "trunk"},
     {anatomy::BoneKind::Lumbar, &RegionCounts::lumbar, &PlanTable::lumbars, nullptr},
     {anatomy::BoneKind::Sacral, &RegionCounts::sacral, &PlanTable::sacrals, "sacrum"},
     {anatomy::BoneKind::Caudal, &RegionCounts::caudal, &PlanTable::caudals, "tail"}}};

constexpr int kAnyPart = -1;

/// Sum of the lengths of a region's vertebrae, m; of the trunk with those without ribs.
double summedLength(const anatomy::MeasurementTable& table, anatomy::BoneKind kind) {
  double sum = 0;
  for (const anatomy::TableRow& row : table.rows) {
    const bool loins = row.name.kind == anatomy::BoneKind::Lumbar && kind == anatomy::BoneKind::Dorsal;
    if (row.name.kind == kind || loins) sum += row.measures.valueOr(Measure::Length, 0);
  }
  return sum;
}

QString bare(double length) { return QString::number(length * 1000, 'g', 7); }

QLabel* refusalLabel() {
  auto* label = new QLabel;
  label->setObjectName("tableRefusal");
  label->setWordWrap(true);
  label->hide();
  return label;
}

QPushButton* plainButton(const QString& text, const char* name) {
  auto* button = new QPushButton(text);
  button->setObjectName(name);
  button->setAutoDefault(false);
  return button;
}

}  // namespace

MeasurementDialog::MeasurementDialog(Document& document, QWidget* parent)
    : QDialog(parent),
      document_(document),
      model_(new MeasurementModel(document, this)),
      filter_(new MeasurementFilter(*model_, this)),
      view_(new MeasurementView),
      title_(new QLabel),
      plan_(calmComboBox()),
      part_(calmComboBox()),
      search_(new QLineEdit),
      all_(new QCheckBox(tr("All measures"))),
      refusal_(refusalLabel()),
      remarkTitle_(new QLabel),
      remarkList_(new QListWidget) {
  setObjectName("measurementDialog");
  setWindowTitle(tr("Measurement table"));
  setProperty("helpPage", "table");
  title_->setFont(titleFont(font()));
  view_->setModel(filter_);
  auto* cells = new MeasurementCellDelegate(view_);
  view_->setItemDelegate(cells);
  remarkTitle_->setProperty("role", "title");
  remarkList_->setObjectName("tableRemarks");
  remarkList_->setAccessibleName(tr("Remarks"));
  remarkList_->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kGap);
  layout->addWidget(title_);
  layout->addWidget(createSettings());
  layout->addLayout(createTools());
  layout->addWidget(view_, 1);
  layout->addWidget(refusal_);
  layout->addWidget(
      mutedLabel(tr("Plain: measured. Dim: inferred; point at a cell to see by which rule. Type a number "
                    "in mm or degrees to measure a cell, Delete to have it inferred again.")));
  layout->addWidget(remarkTitle_);
  layout->addWidget(remarkList_);
  layout->addLayout(createButtons());
  connect(cells, &MeasurementCellDelegate::refused, this, &MeasurementDialog::tell);
  connect(model_, &MeasurementModel::refused, this, &MeasurementDialog::tell);
  connect(view_, &MeasurementView::clearAsked, this, [this](const QModelIndexList& chosen) {
    QModelIndexList own;
    for (const QModelIndex& index : chosen) own += filter_->mapToSource(index);
    model_->clear(own);
  });
  connect(view_, &MeasurementView::pasted, this, [this](std::vector<std::pair<QModelIndex, QString>> texts) {
    tell({});
    for (auto& [cell, text] : texts) cell = filter_->mapToSource(cell);
    model_->fill(texts);
  });
  connect(model_, &MeasurementModel::remarksChanged, this, [this] {
    tell({});
    refreshSettings();
    refreshParts();
    refreshColumns();
    refreshRemarks();
  });
  connect(remarkList_, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) {
    const auto& remark = model_->remarks().at(static_cast<std::size_t>(remarkList_->row(item)));
    jumpTo(remark.bone, remark.measure);
  });
  connect(remarkList_, &QListWidget::itemActivated, remarkList_, &QListWidget::itemClicked);
  refreshSettings();
  refreshParts();
  part_->setCurrentIndex(std::max(0, part_->findData(static_cast<int>(anatomy::Region::Cervical))));
  refreshColumns();
  refreshRemarks();
  for (int column = 0; column < model_->columnCount(); ++column)
    view_->setColumnWidth(column, view_->horizontalHeader()->sectionSizeHint(column) + 2 * kGridStep);
  view_->setColumnWidth(0, scaledWithText(110));
  view_->setColumnWidth(model_->columnCount() - 1, scaledWithText(240));
  resize(QSize(scaledWithText(1120), scaledWithText(700)).boundedTo(screen()->availableSize() * 0.95));
  view_->setCurrentIndex(filter_->index(0, 1));
  view_->setFocus();
}

MeasurementDialog::~MeasurementDialog() {
  // Fields that lose the focus in the end have nothing to say any more.
  for (const RegionFields& fields : regions_) {
    fields.count->disconnect(this);
    if (fields.total) fields.total->disconnect(this);
  }
  view_->setModel(nullptr);
}

QWidget* MeasurementDialog::createSettings() {
  plan_->setObjectName("tablePlan");
  plan_->setAccessibleName(tr("Body plan"));
  for (const anatomy::BodyPlan plan : anatomy::kBodyPlans)
    plan_->addItem(capital(planName(plan)), static_cast<int>(plan));
  connect(plan_, &QComboBox::activated, this, &MeasurementDialog::takePlan);
  auto* settings = new QWidget;
  auto* grid = new QGridLayout(settings);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  auto* plan = new QLabel(tr("Body plan"));
  grid->addWidget(plan, 0, 0);
  grid->addWidget(plan_, 1, 0);
  grid->addWidget(new QLabel(tr("Vertebrae")), 1, 2, Qt::AlignRight | Qt::AlignVCenter);
  grid->addWidget(new QLabel(tr("Measured total, mm")), 2, 2, Qt::AlignRight | Qt::AlignVCenter);
  grid->setColumnMinimumWidth(1, kWideGap);
  for (std::size_t i = 0; i < kColumnRegions.size(); ++i) addRegion(*grid, static_cast<int>(i) + 3);
  grid->setColumnStretch(static_cast<int>(kColumnRegions.size()) + 3, 1);
  return settings;
}

void MeasurementDialog::addRegion(QGridLayout& grid, int column) {
  const std::size_t region = regions_.size();
  const ColumnRegion& what = kColumnRegions[region];
  RegionFields fields{new QSpinBox, what.total ? new QLineEdit : nullptr, new QLabel};
  const QString name = regionName(anatomy::regionOf({what.kind, 1, 0, anatomy::Side::Midline}));
  fields.title->setText(what.total ? name : tr("Of these without ribs"));
  fields.count->setObjectName(QString("tableCount%1").arg(region));
  fields.count->setAccessibleName(tr("Vertebrae: %1").arg(fields.title->text()));
  fields.count->setKeyboardTracking(false);
  grid.addWidget(fields.title, 0, column);
  grid.addWidget(fields.count, 1, column);
  if (fields.total) {
    fields.total->setObjectName(QString("tableTotal%1").arg(region));
    fields.total->setAccessibleName(tr("Measured total: %1").arg(name));
    fields.total->setToolTip(tr("What is not measured is fitted to it"));
    fields.total->setAlignment(Qt::AlignRight);
    fields.total->setFont(figureFont(font()));
    fields.total->setMaximumWidth(scaledWithText(100));
    grid.addWidget(fields.total, 2, column);
    connect(fields.total, &QLineEdit::editingFinished, this, [this, region] { takeTotal(region); });
  }
  connect(fields.count, &QSpinBox::valueChanged, this, [this, region] { takeCount(region); });
  regions_.push_back(fields);
}

QLayout* MeasurementDialog::createTools() {
  part_->setObjectName("tablePart");
  part_->setAccessibleName(tr("Part of the skeleton"));
  search_->setObjectName("tableSearch");
  search_->setAccessibleName(tr("Find a bone"));
  search_->setPlaceholderText(tr("Find a bone"));
  search_->setClearButtonEnabled(true);
  search_->addAction(icon("search"), QLineEdit::LeadingPosition);
  search_->setMaximumWidth(scaledWithText(260));
  all_->setObjectName("tableAllMeasures");
  all_->setToolTip(tr("Also those that facets need not have, such as those of the postzygapophyses"));
  connect(part_, &QComboBox::currentIndexChanged, this, &MeasurementDialog::refreshColumns);
  connect(search_, &QLineEdit::textChanged, this, &MeasurementDialog::refreshColumns);
  connect(all_, &QCheckBox::toggled, this, &MeasurementDialog::refreshColumns);
  auto* row = new QHBoxLayout;
  row->setSpacing(kGap);
  row->addWidget(part_);
  row->addWidget(search_, 1);
  row->addWidget(all_);
  row->addStretch(1);
  QAction* undo = document_.undoStack().createUndoAction(this, tr("Undo:"));
  QAction* redo = document_.undoStack().createRedoAction(this, tr("Redo:"));
  undo->setShortcut(QKeySequence::Undo);
  redo->setShortcut(QKeySequence::Redo);
  undo->setIcon(icon("undo"));
  redo->setIcon(icon("redo"));
  for (QAction* action : {undo, redo}) {
    addAction(action);
    auto* button = new QToolButton;
    button->setDefaultAction(action);
    button->setIconSize({20, 20});
    button->setFocusPolicy(Qt::TabFocus);
    row->addWidget(button);
  }
  return row;
}

QLayout* MeasurementDialog::createButtons() {
  auto* row = new QHBoxLayout;
  row->setSpacing(kGap);
  auto* open = plainButton(tr("Open a table…"), "openTable");
  auto* save = plainButton(tr("Save the table…"), "saveTable");
  auto* blank = plainButton(tr("Save a blank table…"), "saveBlankTable");
  auto* close = plainButton(tr("Close"), "closeTable");
  open->setToolTip(tr("Takes a CSV file in the place of this table; scans, poses and notes stay"));
  save->setToolTip(tr("Writes what is measured as a CSV file"));
  blank->setToolTip(tr("Writes a CSV file with all bones of this plan and these counts, to be filled in"));
  connect(open, &QPushButton::clicked, this, &MeasurementDialog::openAsked);
  connect(save, &QPushButton::clicked, this, &MeasurementDialog::saveAsked);
  connect(blank, &QPushButton::clicked, this, &MeasurementDialog::blankAsked);
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  for (QPushButton* button : {open, save, blank}) row->addWidget(button);
  row->addStretch(1);
  row->addWidget(close);
  return row;
}

void MeasurementDialog::refreshSettings() {
  if (!document_.hasProject()) return;
  const anatomy::MeasurementTable& table = document_.project().table;
  title_->setText(QString::fromStdString(table.name));
  const QSignalBlocker quiet(plan_);
  plan_->setCurrentIndex(plan_->findData(static_cast<int>(table.plan)));
  const PlanTable& plan = anatomy::planTable(table.plan);
  for (std::size_t i = 0; i < regions_.size(); ++i) {
    const ColumnRegion& what = kColumnRegions[i];
    const RegionFields& fields = regions_[i];
    const QSignalBlocker quietCount(fields.count);
    const anatomy::CountBounds& bounds = plan.*what.bounds;
    fields.count->setRange(bounds.least, bounds.most);
    fields.count->setValue(table.counts.*what.count);
    fields.count->setVisible(bounds.most > 0);
    fields.title->setVisible(bounds.most > 0);
    if (!fields.total) continue;
    const QSignalBlocker quietTotal(fields.total);
    const auto total = table.regionTotals.find(what.total);
    fields.total->setText(total == table.regionTotals.end() ? QString() : bare(total->second));
    fields.total->setPlaceholderText(ui::plain(1000 * summedLength(table, what.kind), 0));
  }
}

void MeasurementDialog::refreshParts() {
  const QSignalBlocker quiet(part_);
  const QVariant chosen = part_->currentData();
  part_->clear();
  part_->addItem(tr("All bones"), kAnyPart);
  for (int row = 0; row < model_->rowCount(); ++row) {
    const anatomy::Region region = anatomy::regionOf(model_->boneAt(row));
    if (part_->findData(static_cast<int>(region)) < 0) part_->addItem(regionName(region), static_cast<int>(region));
  }
  part_->setCurrentIndex(std::max(0, part_->findData(chosen)));
}

void MeasurementDialog::refreshColumns() {
  const int part = part_->currentData().toInt();
  filter_->show(part == kAnyPart ? std::nullopt : std::optional(static_cast<anatomy::Region>(part)), search_->text());
  for (int column = 0; column < model_->columnCount(); ++column) {
    const auto measure = model_->measureAt(column);
    if (!measure) continue;
    bool wanted = false;
    for (int row = 0; row < filter_->rowCount() && !wanted; ++row) {
      const QModelIndex cell = filter_->index(row, column);
      const anatomy::BoneKind kind = model_->boneAt(filter_->mapToSource(cell).row()).kind;
      const auto& needed = anatomy::measuresOf(kind);
      const bool further = std::find(needed.begin(), needed.end(), *measure) == needed.end();
      wanted = anatomy::takesMeasure(kind, *measure) &&
               (!further || all_->isChecked() || cell.data(MeasurementModel::kMeasuredRole).toBool());
    }
    view_->setColumnHidden(column, !wanted);
  }
}

void MeasurementDialog::refreshRemarks() {
  remarkList_->clear();
  for (const anatomy::ImplausibleCell& remark : model_->remarks()) {
    auto* item = new QListWidgetItem(MeasurementModel::said(remark), remarkList_);
    item->setToolTip(tr("Go to the cell"));
  }
  const int count = static_cast<int>(model_->remarks().size());
  remarkTitle_->setText(count == 0   ? tr("No measured cell is hard to believe")
                        : count == 1 ? tr("One measured cell is hard to believe")
                                     : tr("%n measured cells are hard to believe", nullptr, count));
  remarkList_->setVisible(count > 0);
  int height = 2 * kGap;
  for (int row = 0; row < count; ++row) height += remarkList_->sizeHintForRow(row);
  remarkList_->setFixedHeight(std::min(scaledWithText(110), height));
}

void MeasurementDialog::showBone(const anatomy::BoneName& bone) {
  const int part = part_->findData(static_cast<int>(anatomy::regionOf(bone)));
  if (part >= 0) part_->setCurrentIndex(part);
  const QModelIndex cell = filter_->mapFromSource(model_->indexOf(bone, Measure::Length));
  if (!cell.isValid()) return;
  view_->setCurrentIndex(cell);
  view_->scrollTo(cell, QAbstractItemView::PositionAtCenter);
}

void MeasurementDialog::jumpTo(const anatomy::BoneName& bone, Measure measure) {
  const QModelIndex own = model_->indexOf(bone, measure);
  if (!own.isValid()) return;
  if (!filter_->mapFromSource(own).isValid()) {
    search_->clear();
    part_->setCurrentIndex(std::max(0, part_->findData(static_cast<int>(anatomy::regionOf(bone)))));
  }
  const QModelIndex cell = filter_->mapFromSource(own);
  view_->setColumnHidden(cell.column(), false);
  view_->setCurrentIndex(cell);
  view_->scrollTo(cell, QAbstractItemView::PositionAtCenter);
  view_->setFocus(Qt::OtherFocusReason);
}

void MeasurementDialog::tell(const QString& why) {
  refusal_->setVisible(!why.isEmpty());
  QPalette palette = refusal_->palette();
  palette.setColor(QPalette::WindowText, theme().beyond);
  refusal_->setPalette(palette);
  refusal_->setText(why);
}

void MeasurementDialog::told(const Obstacle& obstacle) {
  if (!obstacle.any()) return;
  refreshSettings();
  tell(filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {say(obstacle.cause), say(obstacle.mend)}));
}

void MeasurementDialog::takePlan() {
  const auto plan = static_cast<anatomy::BodyPlan>(plan_->currentData().toInt());
  told(changePlan(document_, plan, tr("Body plan: %1").arg(planName(plan))));
}

void MeasurementDialog::takeCount(std::size_t region) {
  RegionCounts counts = document_.project().table.counts;
  const RegionFields& fields = regions_[region];
  counts.*kColumnRegions[region].count = fields.count->value();
  told(changeCounts(document_, counts, tr("%1: %2 vertebrae").arg(fields.title->text()).arg(fields.count->value())));
}

void MeasurementDialog::takeTotal(std::size_t region) {
  const std::string name = kColumnRegions[region].total;
  const RegionFields& fields = regions_[region];
  const auto& totals = document_.project().table.regionTotals;
  const auto before = totals.find(name);
  const QString typed = fields.total->text().trimmed();
  if (typed == (before == totals.end() ? QString() : bare(before->second))) return;
  const QString text = tr("Measured total: %1").arg(fields.title->text());
  if (typed.isEmpty()) return changeTotal(document_, name, std::nullopt, text);
  const TypedValue total = readTyped(Measure::Length, typed);
  if (total.refused()) return told({total.cause, total.mend});
  changeTotal(document_, name, total.value, text);
}

}  // namespace zyga::ui
