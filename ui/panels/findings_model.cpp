#include "ui/panels/findings_model.h"

#include <algorithm>
#include <cmath>

#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

/// How far the worst criterion lies past its limit, as a share of the limit; below zero inside it.
double excess(const range::JointVerdict& verdict) {
  if (verdict.findings.empty()) return -1;
  const range::Finding& worst = verdict.findings.front();
  const double scale = std::max(std::abs(worst.limit), 1e-9);
  const double past = std::abs(worst.measured) - std::abs(worst.limit);
  return (worst.kind == range::FindingKind::Overlap ? -past : past) / scale;
}

}  // namespace

FindingsModel::FindingsModel(Document& document, QObject* parent) : QAbstractListModel(parent), document_(document) {
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Pose) | Change::Assumptions)) refresh();
  });
  refresh();
}

range::Level FindingsModel::levelOf(const Row& row) const {
  const range::Assessment& found = document_.assessment();
  return row.contact ? found.contacts[row.position].level : found.joints[row.position].level;
}

double FindingsModel::excessOf(const Row& row) const {
  const range::Assessment& found = document_.assessment();
  if (!row.contact) return excess(found.joints[row.position]);
  const double tolerated = std::max(document_.assumptions().contactTolerated, 1e-3);
  return (found.contacts[row.position].depth - tolerated) / tolerated;
}

std::vector<FindingsModel::Row> FindingsModel::order() const {
  std::vector<Row> rows;
  if (!document_.hasProject()) return rows;
  const range::Assessment& found = document_.assessment();
  for (std::size_t i = 0; i < found.joints.size(); ++i)
    if (all_ || found.joints[i].level == range::Level::Near || found.joints[i].level == range::Level::Beyond)
      rows.push_back({false, i});
  for (std::size_t i = 0; i < found.contacts.size(); ++i) rows.push_back({true, i});
  std::stable_sort(rows.begin(), rows.end(), [&](const Row& a, const Row& b) {
    return levelOf(a) != levelOf(b) ? levelOf(a) > levelOf(b) : excessOf(a) > excessOf(b);
  });
  return rows;
}

/// During a drag mostly the words change and not the order, which leaves the view's place in the list alone.
void FindingsModel::refresh() {
  std::vector<Row> rows = order();
  if (rows == rows_) {
    if (!rows_.empty()) emit dataChanged(index(0), index(rowCount() - 1));
    return;
  }
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
}

void FindingsModel::setShowAll(bool all) {
  all_ = all;
  refresh();
}

int FindingsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  if (role == kLevelRole) return static_cast<int>(levelOf(row));
  if (role == kContactRole) return row.contact;
  if (row.contact) {
    const bool words = role == Qt::DisplayRole || role == Qt::ToolTipRole;
    return words ? text(document_.assessment().contacts[row.position].text) : QVariant();
  }
  const range::JointVerdict& verdict = document_.assessment().joints[row.position];
  if (role == Qt::DisplayRole) return text(verdict.sentence);
  if (role != Qt::ToolTipRole) return {};
  QStringList reasons;
  for (const range::Finding& finding : verdict.findings) reasons += text(finding.text);
  return reasons.join('\n');
}

std::optional<JointIndex> FindingsModel::jointAt(const QModelIndex& index) const {
  if (!index.isValid()) return std::nullopt;
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  if (row.contact) return std::nullopt;
  return document_.assessment().joints[row.position].joint;
}

std::optional<range::ContactFinding> FindingsModel::contactAt(const QModelIndex& index) const {
  if (!index.isValid()) return std::nullopt;
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  if (!row.contact) return std::nullopt;
  return document_.assessment().contacts[row.position];
}

QModelIndex FindingsModel::indexOf(JointIndex joint) const {
  for (std::size_t row = 0; row < rows_.size(); ++row)
    if (!rows_[row].contact && document_.assessment().joints[rows_[row].position].joint == joint)
      return index(static_cast<int>(row));
  return {};
}

}  // namespace zyga::ui
