#pragma once

#include <QAbstractListModel>

#include "ui/document/document.h"

namespace zyga::ui {

/// The named poses. Editing a name is an undoable step; the pose shown as a ghost carries a mark.
class PosesModel : public QAbstractListModel {
  Q_OBJECT
 public:
  explicit PosesModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 private:
  void follow(Changes what);
  void resize();
  bool isPresent(std::size_t row) const;

  Document& document_;
  int rows_ = 0;
};

}  // namespace zyga::ui
