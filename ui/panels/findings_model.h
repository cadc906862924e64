#pragma once

#include <QAbstractListModel>
#include <vector>

#include "ui/document/document.h"

namespace zyga::ui {

/// What the bones say about the present pose, one sentence a joint, worst first.
class FindingsModel : public QAbstractListModel {
  Q_OBJECT
 public:
  enum Role { kLevelRole = Qt::UserRole };

  explicit FindingsModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

  /// False: only what is near or beyond.
  void setShowAll(bool all);
  std::optional<JointIndex> jointAt(const QModelIndex& index) const;
  QModelIndex indexOf(JointIndex joint) const;

 private:
  std::vector<std::size_t> order() const;
  void refresh();

  Document& document_;
  bool all_ = false;
  std::vector<std::size_t> rows_;  ///< positions in Assessment::joints
};

}  // namespace zyga::ui
