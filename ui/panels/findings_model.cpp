#include "ui/panels/findings_model.h"

#include <algorithm>

#include "core/range/explain.h"
#include "ui/words/range_words.h"

namespace zyga::ui {
namespace {

bool hasOwnFindings(const range::JointVerdict& verdict) {
  return std::any_of(verdict.findings.begin(), verdict.findings.end(),
                     [](const range::Finding& f) { return f.kind != range::FindingKind::BoneContact; });
}

/// As long as what explain() may say of a joint, without its search.
range::Explanation longest(const range::JointVerdict& verdict, const Eigen::Vector3d& angles) {
  range::Explanation room;
  for (int motion = 0; motion < 3; ++motion)
    if (angles[motion] != 0) {
      const double angle = angles[motion];
      room.motions.push_back({motion, angle, angle, range::MotionState::How::PastByItself});
    }
  if (room.motions.empty() && verdict.level >= range::Level::Near)
    room.remark = range::Explanation::Remark::NeutralPose;
  return room;
}

}  // namespace

FindingsModel::FindingsModel(Document& document, QObject* parent) : QAbstractListModel(parent), document_(document) {
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Pose) | Change::Assumptions | Change::Contact)) refresh();
  });
  refresh();
}

range::Severity FindingsModel::severityOf(const Row& row) const {
  const range::Assessment& found = document_.assessment();
  return row.contact ? found.contacts[row.position].severity() : found.joints[row.position].severity();
}

std::vector<FindingsModel::Row> FindingsModel::order() const {
  std::vector<Row> rows;
  if (!document_.hasProject()) return rows;
  const range::Assessment& found = document_.assessment();
  // A joint whose bones collide and that has nothing else to tell is told by its contact.
  for (std::size_t i = 0; i < found.joints.size(); ++i)
    if (all_ || hasOwnFindings(found.joints[i])) rows.push_back({false, i});
  for (std::size_t i = 0; i < found.contacts.size(); ++i) rows.push_back({true, i});
  std::stable_sort(rows.begin(), rows.end(),
                   [&](const Row& a, const Row& b) { return worse(severityOf(a), severityOf(b)); });
  return rows;
}

/// During a drag mostly the words change and not the order, which leaves the view's place in the list alone.
void FindingsModel::refresh() {
  said_.clear();
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
  switch (role) {
    case kLevelRole:
      return static_cast<int>(severityOf(row).level);
    case kContactRole:
      return row.contact;
    case kNameRole:
      return row.contact ? QString() : QString::fromStdString(document_.specimen()[verdictOf(row).joint].id);
    case kRoomRole:
      return row.contact ? sentence(row) : roomySentence(row);
    case Qt::DisplayRole: {
      QString& said = said_[index.row()];
      if (said.isEmpty()) said = sentence(row);
      return said;
    }
    case Qt::ToolTipRole:
      return row.contact ? sentence(row) : findingsInLines(row);
    default:
      return {};
  }
}

const range::JointVerdict& FindingsModel::verdictOf(const Row& row) const {
  return document_.assessment().joints[row.position];
}

QString FindingsModel::sentence(const Row& row) const {
  if (row.contact) return contactWords(document_.specimen(), document_.assessment().contacts[row.position]);
  return verdictSentence(document_.scenario(), verdictOf(row));
}

QString FindingsModel::roomySentence(const Row& row) const {
  const range::JointVerdict& verdict = verdictOf(row);
  return verdictSentence(document_.specimen(), document_.assumptions(), verdict,
                         longest(verdict, document_.pose()[verdict.joint]));
}

QString FindingsModel::findingsInLines(const Row& row) const {
  QStringList lines;
  for (const range::Finding& finding : verdictOf(row).findings)
    lines += findingWords(document_.specimen(), document_.assumptions(), verdictOf(row).joint, finding);
  return lines.join('\n');
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
