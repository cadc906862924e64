#include "ui/panels/poses_model.h"

#include <QFont>

#include "ui/commands/pose_edits.h"
#include "ui/theme/icons.h"

namespace zyga::ui {

PosesModel::PosesModel(Document& document, QObject* parent) : QAbstractListModel(parent), document_(document) {
  connect(&document_, &Document::changed, this, &PosesModel::follow);
  if (document_.hasProject()) rows_ = static_cast<int>(document_.project().poses.size());
}

void PosesModel::follow(Changes what) {
  if (what & Change::Specimen) {
    beginResetModel();
    rows_ = static_cast<int>(document_.project().poses.size());
    return endResetModel();
  }
  if (what & Change::NamedPoses) resize();
  if (what & (Changes(Change::NamedPoses) | Change::Compared | Change::Pose))
    if (rows_ > 0) emit dataChanged(index(0), index(rows_ - 1));
}

/// Rows are told to come and go at the end; dataChanged tells the rest.
void PosesModel::resize() {
  const int wanted = static_cast<int>(document_.project().poses.size());
  if (wanted > rows_) {
    beginInsertRows({}, rows_, wanted - 1);
    rows_ = wanted;
    endInsertRows();
  } else if (wanted < rows_) {
    beginRemoveRows({}, wanted, rows_ - 1);
    rows_ = wanted;
    endRemoveRows();
  }
}

int PosesModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }

bool PosesModel::isPresent(std::size_t row) const { return document_.project().poses[row].pose == document_.pose(); }

QVariant PosesModel::data(const QModelIndex& index, int role) const {
  const auto row = static_cast<std::size_t>(index.row());
  if (!index.isValid() || row >= document_.project().poses.size()) return {};
  const bool ghost = document_.comparedPose() == row;
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return QString::fromStdString(document_.project().poses[row].name);
    case Qt::DecorationRole:
      return ghost ? QVariant(icon("compare")) : QVariant();
    case Qt::FontRole: {
      QFont font;
      font.setWeight(isPresent(row) ? QFont::DemiBold : QFont::Normal);
      return font;
    }
    case Qt::ToolTipRole:
      if (ghost) return tr("Shown as a ghost");
      return isPresent(row) ? tr("The present pose") : tr("Double-click to take this pose");
    default:
      return {};
  }
}

bool PosesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole) return false;
  return renameNamedPose(document_, static_cast<std::size_t>(index.row()), value.toString());
}

Qt::ItemFlags PosesModel::flags(const QModelIndex& index) const {
  return QAbstractListModel::flags(index) | (index.isValid() ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

}  // namespace zyga::ui
