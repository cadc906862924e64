#pragma once

#include <QAbstractTableModel>

#include "ui/document/document.h"

namespace zyga::ui {

/// The footprints of the project, one row a print, distances in cm. A cleared cell is unknown. Every edit is one
/// undoable step.
class PrintsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { kFoot, kPace, kNextPace, kStride, kLength, kGauge, kAhead, kColumnCount };

  explicit PrintsModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

  /// Another print at the end, named on from the last one and with its distances: rows are mostly alike.
  void addPrint();
  void removePrint(int row);

 signals:
  /// What was typed cannot be, in words.
  void refused(const QString& why);

 private:
  void follow(Changes what);
  const study::Footprint* at(int row) const;

  Document& document_;
  int rows_ = 0;
};

}  // namespace zyga::ui
