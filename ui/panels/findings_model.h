#pragma once

#include <QAbstractListModel>
#include <QHash>
#include <vector>

#include "ui/document/document.h"

namespace zyga::ui {

/// What the bones say about the present pose, one sentence a joint or a contact of two bones, worst first.
class FindingsModel : public QAbstractListModel {
  Q_OBJECT
 public:
  enum Role {
    kLevelRole = Qt::UserRole,
    kContactRole,
    kNameRole,  ///< the joint's name, with which its sentence begins; empty for a contact
    /// A sentence at least as long as the one displayed, for laying out: it searches nothing, so that a drag searches
    /// only for the rows in sight.
    kRoomRole
  };

  explicit FindingsModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

  /// False: only what is near or beyond.
  void setShowAll(bool all);
  std::optional<JointIndex> jointAt(const QModelIndex& index) const;
  /// None where the row is a joint's.
  std::optional<range::ContactFinding> contactAt(const QModelIndex& index) const;
  QModelIndex indexOf(JointIndex joint) const;

 private:
  /// A joint's verdict, or a contact.
  struct Row {
    bool contact = false;
    std::size_t position = 0;  ///< in Assessment::joints or ::contacts
    bool operator==(const Row&) const = default;
  };
  std::vector<Row> order() const;
  range::Severity severityOf(const Row& row) const;
  const range::JointVerdict& verdictOf(const Row& row) const;
  QString sentence(const Row& row) const;
  QString roomySentence(const Row& row) const;
  QString findingsInLines(const Row& row) const;
  void refresh();

  Document& document_;
  bool all_ = false;
  std::vector<Row> rows_;
  mutable QHash<int, QString> said_;  ///< by row, until something changes
};

}  // namespace zyga::ui
