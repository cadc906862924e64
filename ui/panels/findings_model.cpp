#include "ui/panels/findings_model.h"

#include <algorithm>
#include <cmath>

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

bool worse(const range::JointVerdict& a, const range::JointVerdict& b) {
  return a.level != b.level ? a.level > b.level : excess(a) > excess(b);
}

}  // namespace

FindingsModel::FindingsModel(Document& document, QObject* parent) : QAbstractListModel(parent), document_(document) {
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Pose) | Change::Assumptions)) refresh();
  });
  refresh();
}

std::vector<std::size_t> FindingsModel::order() const {
  std::vector<std::size_t> rows;
  if (!document_.hasProject()) return rows;
  const auto& joints = document_.assessment().joints;
  for (std::size_t i = 0; i < joints.size(); ++i)
    if (all_ || joints[i].level == range::Level::Near || joints[i].level == range::Level::Beyond) rows.push_back(i);
  std::stable_sort(rows.begin(), rows.end(), [&](std::size_t a, std::size_t b) { return worse(joints[a], joints[b]); });
  return rows;
}

/// During a drag mostly the words change and not the order, which leaves the view's place in the list alone.
void FindingsModel::refresh() {
  std::vector<std::size_t> rows = order();
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
  const auto& verdict = document_.assessment().joints[rows_[static_cast<std::size_t>(index.row())]];
  if (role == Qt::DisplayRole) return QString::fromStdString(verdict.sentence);
  if (role == kLevelRole) return static_cast<int>(verdict.level);
  if (role != Qt::ToolTipRole) return {};
  QStringList reasons;
  for (const range::Finding& finding : verdict.findings) reasons += QString::fromStdString(finding.text);
  return reasons.join('\n');
}

std::optional<JointIndex> FindingsModel::jointAt(const QModelIndex& index) const {
  if (!index.isValid()) return std::nullopt;
  return document_.assessment().joints[rows_[static_cast<std::size_t>(index.row())]].joint;
}

QModelIndex FindingsModel::indexOf(JointIndex joint) const {
  for (std::size_t row = 0; row < rows_.size(); ++row)
    if (document_.assessment().joints[rows_[row]].joint == joint) return index(static_cast<int>(row));
  return {};
}

}  // namespace zyga::ui
