#include "ui/panels/measures_model.h"

#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"

namespace zyga::ui {

MeasuresModel::MeasuresModel(Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Selection) | Change::Bones)) refresh();
  });
  refresh();
}

void MeasuresModel::refresh() {
  beginResetModel();
  rows_.clear();
  if (document_.hasProject() && document_.selectedBone()) {
    const anatomy::Measures& measures = document_.specimen()[*document_.selectedBone()].measures;
    for (int m = 0; m < anatomy::kMeasureCount; ++m) {
      const auto measure = static_cast<anatomy::Measure>(m);
      if (measures[measure].known()) rows_.push_back({measure, measures[measure]});
    }
  }
  endResetModel();
}

int MeasuresModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int MeasuresModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kColumnCount; }

QVariant MeasuresModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  if (role == Qt::TextAlignmentRole && index.column() == kValue)
    return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
  if (role == Qt::ForegroundRole && !row.cell.measured() && index.column() != kMeasure) return theme().muted;
  if (role == Qt::ToolTipRole && index.column() == kOrigin) return originOf(row.cell);
  if (role != Qt::DisplayRole) return {};
  switch (index.column()) {
    case kMeasure:
      return measureName(row.measure);
    case kValue:
      return measureValue(row.measure, row.cell.value);
    default:
      return originOf(row.cell);
  }
}

QVariant MeasuresModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole && section == kValue)
    return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case kMeasure:
      return tr("Measure");
    case kValue:
      return tr("Value");
    default:
      return tr("Origin");
  }
}

}  // namespace zyga::ui
