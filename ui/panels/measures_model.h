#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "ui/document/document.h"

namespace zyga::ui {

/// The measures of the chosen bone: name, value with its unit, and where the value comes from, with its
/// standard error where that is known.
class MeasuresModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { kMeasure, kValue, kOrigin, kColumnCount };

  explicit MeasuresModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

 private:
  struct Row {
    anatomy::Measure measure;
    anatomy::Cell cell;
  };

  void refresh();

  Document& document_;
  std::vector<Row> rows_;
};

}  // namespace zyga::ui
