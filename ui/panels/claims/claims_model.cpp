#include "ui/panels/claims/claims_model.h"

#include "ui/commands/claim_edits.h"
#include "ui/panels/findings_model.h"
#include "ui/theme/words.h"

namespace zyga::ui {

ClaimsModel::ClaimsModel(Document& document, ClaimAnswers& answers, QObject* parent)
    : QAbstractListModel(parent), document_(document), answers_(answers) {
  if (document_.hasProject()) rows_ = static_cast<int>(document_.project().claims.size());
  connect(&document_, &Document::changed, this, &ClaimsModel::follow);
  connect(&answers_, &ClaimAnswers::changed, this, [this] {
    if (rows_ > 0) emit dataChanged(index(0), index(rows_ - 1));
  });
}

/// Rows are told to come and go at the end; dataChanged tells the rest.
void ClaimsModel::follow(Changes what) {
  if (!(what & Change::Claims)) return;
  const int wanted = static_cast<int>(document_.project().claims.size());
  if (what == Changes(Change::Everything)) {
    beginResetModel();
    rows_ = wanted;
    return endResetModel();
  }
  if (wanted > rows_) {
    beginInsertRows({}, rows_, wanted - 1);
    rows_ = wanted;
    endInsertRows();
  } else if (wanted < rows_) {
    beginRemoveRows({}, wanted, rows_ - 1);
    rows_ = wanted;
    endRemoveRows();
  }
  if (rows_ > 0) emit dataChanged(index(0), index(rows_ - 1));
}

int ClaimsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }

range::Level ClaimsModel::levelOf(std::size_t row) const {
  const study::ClaimAnswer* answer = answers_.find(row);
  if (!answer || !answer->unanswerable.empty()) return range::Level::NotJudged;
  return answer->supported ? range::Level::Supported : range::Level::Beyond;
}

QString ClaimsModel::verdictWord(std::size_t row) const {
  const study::ClaimAnswer* answer = answers_.find(row);
  if (!answer) return tr("being asked");
  if (!answer->unanswerable.empty()) return tr("not answered");
  return answer->supported ? tr("supported") : tr("not supported");
}

QVariant ClaimsModel::data(const QModelIndex& index, int role) const {
  const auto row = static_cast<std::size_t>(index.row());
  if (!index.isValid() || row >= document_.project().claims.size()) return {};
  const study::Claim& claim = document_.project().claims[row];
  const QString source = QString::fromStdString(claim.source);
  switch (role) {
    case Qt::DisplayRole:
      return source.isEmpty() ? claimName(claim) : tr("%1 (%2)").arg(claimName(claim), source);
    case Qt::AccessibleTextRole:
      return tr("%1: %2").arg(claimName(claim), verdictWord(row));
    case Qt::ToolTipRole:
      return capital(verdictWord(row));
    case FindingsModel::kLevelRole:
      return static_cast<int>(levelOf(row));
    case FindingsModel::kContactRole:
      return false;
    default:
      return {};
  }
}

}  // namespace zyga::ui
