#pragma once

#include <QAbstractTableModel>
#include <map>
#include <vector>

#include "core/anatomy/tables/plausibility.h"
#include "ui/document/document.h"

namespace zyga::ui {

/// The measurement table of the document: a row a bone, a column a measure, before them the evidence and behind them
/// the source. Measured cells in plain ink, inferred ones dim; each edit is an undoable step.
class MeasurementModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Role {
    kTakenRole = Qt::UserRole,  ///< bool: a bone of this kind can have the measure
    kMeasuredRole,              ///< bool
    kRemarkRole,                ///< what is remarked on a measured cell; empty where nothing is
    kInferredRole               ///< the value that an empty field would stand for, as text
  };

  explicit MeasurementModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  /// Text as it is typed, of measures and source; the status as a number, of evidence. False, and said by `refused`,
  /// for what cannot be.
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

  /// Why this text cannot stand in this cell; empty when it can.
  QString refusalOf(const QModelIndex& index, const QString& text) const;
  /// Makes all these cells blank, in one step.
  void clear(const QModelIndexList& cells);
  /// Types these texts into these cells, in one step; blank ones leave their cell as it is. All or, where one of them
  /// cannot be, none.
  void fill(const std::vector<std::pair<QModelIndex, QString>>& texts);

  const anatomy::BoneName& boneAt(int row) const { return bones_.at(static_cast<std::size_t>(row)); }
  std::optional<anatomy::Measure> measureAt(int column) const;
  QModelIndex indexOf(const anatomy::BoneName& bone, anatomy::Measure measure) const;
  const std::vector<anatomy::ImplausibleCell>& remarks() const { return remarks_; }
  static QString said(const anatomy::ImplausibleCell& remark);

 signals:
  void refused(const QString& why);
  void remarksChanged();

 private:
  void refresh();
  int sourceColumn() const;
  const anatomy::TableRow& rowAt(int row) const;
  const anatomy::Cell& cellAt(const QModelIndex& index) const;
  QVariant measureData(const QModelIndex& index, anatomy::Measure measure, int role) const;
  QString toolTipOf(const QModelIndex& index, anatomy::Measure measure) const;
  bool setRecord(int row, anatomy::Evidence evidence, const std::string& source, const QString& text);
  bool setMeasure(const QModelIndex& index, anatomy::Measure measure, const QString& typed);

  Document& document_;
  std::vector<anatomy::BoneName> bones_;
  std::vector<anatomy::ImplausibleCell> remarks_;
  std::map<std::pair<anatomy::BoneName, anatomy::Measure>, QString> remarkAt_;
};

}  // namespace zyga::ui
