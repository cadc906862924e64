#include "ui/panels/measures_model.h"

#include "ui/theme/figures.h"
#include "ui/theme/theme.h"
#include "ui/theme/words.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

QString valueText(anatomy::Measure measure, const anatomy::Cell& cell) {
  return isAngle(measure) ? degrees(cell.value) : millimetres(cell.value, 0);
}

QString originText(const anatomy::Cell& cell) {
  if (cell.measured()) return MeasuresModel::tr("measured");
  return MeasuresModel::tr("inferred: %1").arg(text(cell.rule));
}

}  // namespace

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
  if (role == Qt::ToolTipRole && index.column() == kOrigin) return originText(row.cell);
  if (role != Qt::DisplayRole) return {};
  switch (index.column()) {
    case kMeasure:
      return text(title(row.measure));
    case kValue:
      return valueText(row.measure, row.cell);
    default:
      return originText(row.cell);
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
