#include "ui/panels/measures_model.h"

#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"

namespace zyga::ui {
namespace {

/// The table's order, but what belongs to one facet together.
std::vector<anatomy::Measure> shownOrder() {
  using anatomy::Measure;
  std::vector<Measure> order;
  const auto add = [&order](Measure first, Measure last) {
    for (int m = static_cast<int>(first); m <= static_cast<int>(last); ++m) order.push_back(static_cast<Measure>(m));
  };
  add(Measure::Length, Measure::FacetTilt);
  add(Measure::FacetOffset, Measure::FacetRadius);
  add(Measure::PostzygLength, Measure::PostzygLength);
  add(Measure::PostzygWidth, Measure::PostzygRadius);
  add(Measure::FacetTurn, Measure::Circumference);
  return order;
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
    static const std::vector<anatomy::Measure> order = shownOrder();
    for (const anatomy::Measure measure : order)
      if (measures[measure].known()) rows_.push_back({measure, measures[measure]});
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
  if (role == Qt::ToolTipRole && index.column() == kOrigin) return originOf(row.measure, row.cell);
  if (role != Qt::DisplayRole) return {};
  switch (index.column()) {
    case kMeasure:
      return measureName(row.measure);
    case kValue:
      return measureValue(row.measure, row.cell.value);
    default:
      return originOf(row.measure, row.cell);
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
