#include "ui/panels/bones_panel.h"

#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTableView>
#include <QToolButton>
#include <QTreeView>
#include <QVBoxLayout>

#include "core/anatomy/summary.h"
#include "ui/panels/bone_record_editor.h"
#include "ui/panels/bones_model.h"
#include "ui/panels/measures_model.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

/// Finds bones by title, id, evidence or source; a region whose title fits shows all its bones.
class BoneFilter : public QSortFilterProxyModel {
 public:
  using QSortFilterProxyModel::QSortFilterProxyModel;

 protected:
  bool filterAcceptsRow(int row, const QModelIndex& parent) const override {
    if (!parent.isValid()) return fits(sourceModel()->index(row, 0).data());
    if (fits(parent.data())) return true;
    for (int column = 0; column < BonesModel::kColumnCount; ++column)
      if (fits(sourceModel()->index(row, column, parent).data())) return true;
    const QModelIndex bone = sourceModel()->index(row, 0, parent);
    return fits(bone.data(BonesModel::kIdRole)) || fits(bone.data(BonesModel::kTitleRole));
  }

 private:
  bool fits(const QVariant& text) const { return filterRegularExpression().match(text.toString()).hasMatch(); }
};

}  // namespace

BonesPanel::BonesPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new BonesModel(document, this)),
      filtered_(new BoneFilter(this)),
      search_(new QLineEdit),
      tree_(new QTreeView),
      detail_(createDetail()),
      hint_(mutedLabel(tr("Choose a bone to see its measures"))),
      found_(mutedLabel()) {
  filtered_->setSourceModel(model_);
  filtered_->setFilterCaseSensitivity(Qt::CaseInsensitive);
  filtered_->setRecursiveFilteringEnabled(true);
  createSearch();
  createTree();
  auto* split = new QSplitter(Qt::Vertical);
  split->setChildrenCollapsible(false);
  split->addWidget(tree_);
  split->addWidget(detail_);
  split->setStretchFactor(0, 1);
  split->setStretchFactor(1, 1);
  split->setSizes({300, 200});
  auto* layout = new QVBoxLayout(this);
  setPanelMargins(*layout);
  auto* table = iconButton("table", tr("Measurement table"));
  table->setObjectName("measurementTableButton");
  connect(table, &QToolButton::clicked, this, &BonesPanel::tableAsked);
  auto* top = new QHBoxLayout;
  top->setSpacing(kGridStep);
  top->addWidget(search_, 1);
  top->addWidget(table);
  layout->addLayout(top);
  found_->setObjectName("completeness");
  found_->setFont(smallFont(font()));
  layout->addWidget(found_);
  layout->addWidget(split, 1);
  layout->addWidget(hint_);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Selection) | Change::Bones)) showSelection();
    if (what & Change::Bones) updateFound();
  });
  showSelection();
  updateFound();
}

void BonesPanel::createSearch() {
  search_->setObjectName("boneSearch");
  search_->setAccessibleName(tr("Find a bone"));
  search_->setPlaceholderText(tr("Find a bone"));
  search_->setClearButtonEnabled(true);
  search_->addAction(icon("search"), QLineEdit::LeadingPosition);
  connect(search_, &QLineEdit::textChanged, this, &BonesPanel::filter);
}

void BonesPanel::createTree() {
  tree_->setObjectName("boneTree");
  tree_->setModel(filtered_);
  tree_->setItemDelegateForColumn(BonesModel::kBone, new BoneTitleDelegate(tree_));
  tree_->setItemDelegateForColumn(BonesModel::kEvidence, new EvidenceDelegate(tree_));
  tree_->setUniformRowHeights(true);
  tree_->setIndentation(16);
  tree_->setExpandsOnDoubleClick(false);
  tree_->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::SelectedClicked);
  tree_->setAccessibleName(tr("Bones by region"));
  QHeaderView& header = *tree_->header();
  // The source is edited below, where there is room for it.
  tree_->hideColumn(BonesModel::kSource);
  header.setStretchLastSection(false);
  header.setSectionResizeMode(BonesModel::kBone, QHeaderView::Stretch);
  header.setSectionResizeMode(BonesModel::kEvidence, QHeaderView::Fixed);
  header.resizeSection(BonesModel::kEvidence, scaledWithText(112));
  connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this, &BonesPanel::takeSelection);
  tree_->setMinimumHeight(leastListHeight());
  connect(tree_, &QTreeView::doubleClicked, this, [this](const QModelIndex& index) {
    if (const auto bone = model_->boneAt(filtered_->mapToSource(index))) emit frameBone(*bone);
  });
}

QWidget* BonesPanel::createDetail() {
  auto* table = new QTableView;
  table->setMinimumHeight(leastListHeight());
  table->setObjectName("boneMeasures");
  table->setModel(new MeasuresModel(document_, table));
  table->setShowGrid(false);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setWordWrap(false);
  table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table->horizontalHeader()->setMinimumSectionSize(40);
  table->setTabKeyNavigation(false);
  table->setAccessibleName(tr("Measures of the chosen bone"));
  table->verticalHeader()->hide();
  table->verticalHeader()->setDefaultSectionSize(scaledWithText(22));
  table->horizontalHeader()->setStretchLastSection(true);
  table->horizontalHeader()->setHighlightSections(false);
  table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table->horizontalHeader()->setSectionResizeMode(MeasuresModel::kMeasure, QHeaderView::ResizeToContents);
  table->horizontalHeader()->setSectionResizeMode(MeasuresModel::kValue, QHeaderView::ResizeToContents);
  detailTitle_ = new QLabel;
  detailTitle_->setProperty("role", "title");
  auto* detail = new QWidget;
  auto* layout = new QVBoxLayout(detail);
  layout->setContentsMargins(0, 8, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(detailTitle_);
  layout->addWidget(new BoneRecordEditor(document_));
  layout->addWidget(table, 1);
  return detail;
}

void BonesPanel::filter(const QString& words) {
  filtered_->setFilterFixedString(words.trimmed());
  if (words.trimmed().isEmpty())
    showSelection();
  else
    tree_->expandAll();
}

void BonesPanel::updateFound() {
  found_->setVisible(document_.hasProject());
  findChild<QToolButton*>("measurementTableButton")->setEnabled(document_.hasProject());
  if (!document_.hasProject()) return;
  const anatomy::Completeness count = anatomy::completeness(document_.specimen());
  found_->setText(tr("%1 of %2 bones preserved (%3); counting mirrored counterparts %4 (%5)")
                      .arg(count.found)
                      .arg(count.bones)
                      .arg(percent(count.share(), 1))
                      .arg(count.withMirrored)
                      .arg(percent(count.shareWithMirrored(), 1)));
}

void BonesPanel::updateDetailTitle() {
  const bool chosen = document_.hasProject() && document_.selectedBone();
  detail_->setVisible(chosen);
  hint_->setVisible(!chosen);
  if (!chosen) return;
  const anatomy::Bone& bone = document_.specimen()[*document_.selectedBone()];
  const QString words = boneNameAndId(bone.name);
  detailTitle_->setText(
      bone.fusedInto
          ? tr("%1, fused to %2").arg(words, QString::fromStdString(document_.specimen()[*bone.fusedInto].id))
          : words);
}

void BonesPanel::showSelection() {
  updateDetailTitle();
  if (!document_.hasProject() || !document_.selectedBone()) return tree_->selectionModel()->clear();
  const QModelIndex index = filtered_->mapFromSource(model_->indexOf(*document_.selectedBone()));
  if (!index.isValid()) return tree_->selectionModel()->clear();
  tree_->selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
  if (!tree_->viewport()->rect().contains(tree_->visualRect(index)))
    tree_->scrollTo(index, QAbstractItemView::PositionAtCenter);
}

void BonesPanel::takeSelection() {
  const auto bone = model_->boneAt(filtered_->mapToSource(tree_->currentIndex()));
  if (bone) document_.selectBone(bone);
}

}  // namespace zyga::ui
